package plan

import "testing"

// A kind of a level that brings no way of its own to be put in is put into the set of its
// level, and of no level it is refused.
func TestANounOfALevelIsPutIntoItsSet(t *testing.T) {
	s := newSpoilable()
	p := s.plan()
	breaks := *kindOf(KindBreak).(*row[Break, *Break])
	breaks.put = nil
	other := s.door
	other.ID, other.At.Along = "bbbbbbbbb", other.At.Along*6
	q, err := breaks.putIn(p, p.Levels[0], &other)
	if err != nil || q.Levels[0].Breaks.Len() != 2 || p.Levels[0].Breaks.Len() != 1 {
		t.Errorf("%d there of 2, %v", q.Levels[0].Breaks.Len(), err)
	}
	if _, err := breaks.putIn(p, nil, &other); err == nil {
		t.Error("of no level it is put in")
	}
}
