package edit_test

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"testing"
)

// as makes an ID for each that a copy wants.
func as(c arrange.Clip) (ids []plan.ID) {
	made := plantest.NewIDs(99)
	for _, id := range c.IDs() {
		ids = append(ids, made.New(id.Kind()))
	}
	return ids
}

// A bench goes with the sink on it and the opening in its front; both stay on it.
func TestAFixtureIsDuplicatedWithWhatIsOnIt(t *testing.T) {
	p := after(t, shed(t), arrange.Move{Things: []plan.ID{bench}, By: at(0, 2*ft)}, edit.ChangeFixture{Fixture: func() plan.Fixture {
		f, _ := shed(t).Fixture(bench)
		small := *f
		small.At.Along, small.Width = 0, 4*ft
		return small
	}()})
	c := arrange.ClipOf(p, []plan.ID{bench, front})
	if c.Len() != 3 {
		t.Fatalf("%d things were taken up, want bench, sink and opening", c.Len())
	}
	ids := as(c)
	now := after(t, p, arrange.Duplicate{Clip: c, As: ids, Level: ground, Step: ft})
	outer := c.Outer(ids)
	if len(outer) != 1 || anchorIn(t, now, outer[0]) != plan.OnFace(west, 4*ft) {
		t.Fatalf("the copies %v are not one bench 4 ft along", outer)
	}
	l := now.Level(ground)
	onCopy := 0
	for f := range l.Fixtures.All() {
		if f.At.Host == outer[0] {
			onCopy++
		}
	}
	for o := range l.Openings.All() {
		if o.At.Host == outer[0] {
			onCopy++
			if was, _ := p.Opening(front); o.Tag == was.Tag {
				t.Errorf("the copy has the tag %s too", o.Tag)
			}
		}
	}
	if onCopy != 2 {
		t.Errorf("%d things stand on the copy, want 2", onCopy)
	}
}

// Openings that reach over most of their side, 3 and 9 ft along 12, are copied one step on,
// or one back where the side ends.
func TestOpeningsFarApartAreDuplicatedBesideEach(t *testing.T) {
	for _, tt := range []struct{ last, first, second plan.Anchor }{
		{plan.OnFace(north, 9*ft), plan.OnFace(north, 4*ft), plan.OnFace(north, 10*ft)},
		{plan.OnFace(north, 12*ft), plan.OnFace(north, 2*ft), plan.OnFace(north, 11*ft)},
	} {
		p := after(t, shed(t), edit.MoveOpening{ID: n2, To: tt.last})
		c := arrange.ClipOf(p, []plan.ID{n1, n2})
		ids := as(c)
		p = after(t, p, arrange.Duplicate{Clip: c, As: ids, Level: ground, Step: ft})
		if a, b := anchorIn(t, p, ids[0]), anchorIn(t, p, ids[1]); a != tt.first || b != tt.second {
			t.Errorf("with the last at %v copies are at %v and %v", tt.last.Along, a, b)
		}
	}
}

// A bench and an opening that have no room beside them are not set over one another.
func TestWhatHasWidthIsNotDuplicatedOverItself(t *testing.T) {
	p := shed(t)
	f, _ := p.Fixture(bench)
	p = after(t, p, edit.ChangeFixture{Fixture: func() plan.Fixture { wide := *f; wide.At.Along, wide.Width = 0, 6*ft; return wide }()})
	c := arrange.ClipOf(p, []plan.ID{bench})
	refused(t, p, arrange.Duplicate{Clip: c, As: as(c), Level: ground, Step: ft}, plan.ErrNoRoom)
}

// A copy of the shed stands 12 ft and a partition to the right, with all that is in it.
func TestARoomIsDuplicatedWithAllInIt(t *testing.T) {
	c := arrange.ClipOf(shed(t), []plan.ID{shedRoom})
	ids := as(c)
	p := after(t, shed(t), arrange.Duplicate{Clip: c, As: ids, Level: ground, Partition: 4 * in, Step: ft})
	l := p.Level(ground)
	if l.Rooms.Len() != 2 || l.Openings.Len() != 8 || l.Fixtures.Len() != 6 || l.Breaks.Len() != 4 {
		t.Fatalf("%d rooms, %d openings, %d fixtures, %d breaks; want twice 1, 4, 3, 2", l.Rooms.Len(), l.Openings.Len(), l.Fixtures.Len(), l.Breaks.Len())
	}
	if r, _ := p.Room(c.Outer(ids)[0]); r == nil || r.Outline().Box().Min != at(12*ft+4*in, 0) {
		t.Errorf("the copy is %+v, want one at 12 ft 4 in", r)
	}
}

// The north side's openings go to the south side as far along; the lamp stays in its
// room, being as far from its corner.
func TestPasteOntoASide(t *testing.T) {
	c := arrange.ClipOf(shed(t), []plan.ID{n1, n2, lamp})
	ids := as(c)
	p := after(t, shed(t), arrange.Paste{Clip: c, As: ids, Onto: south})
	for i, want := range []plan.Anchor{plan.OnFace(south, 3*ft), plan.OnFace(south, 9*ft), plan.OnCeiling(shedRoom, at(6*ft, 5*ft))} {
		if got := anchorIn(t, p, ids[i]); got != want {
			t.Errorf("the %d. is at %+v, want %+v", i, got, want)
		}
	}
}

// In another room each goes to the face that looks the same way; in another plan there is
// nowhere to go until one is said.
func TestPasteIntoAnotherPlan(t *testing.T) {
	made := plantest.NewIDs(5)
	room := plan.NewRoom(made.New(plan.KindRoom), "Barn", plan.UseUtility,
		geom.Polygon{at(20*ft, 20*ft), at(28*ft, 20*ft), at(28*ft, 30*ft), at(20*ft, 30*ft)}, made.Row(plan.KindSide, 4))
	room.Ceiling = 8 * ft
	other := after(t, plan.New("Barn", ground), edit.AddRoom{Level: ground, Room: room})
	c := arrange.ClipOf(shed(t), []plan.ID{n2, lamp, window})
	refused(t, other, arrange.Paste{Clip: c, As: as(c), Level: ground}, plan.ErrGone)
	ids := as(c)
	p := after(t, other, arrange.Paste{Clip: c, As: ids, Level: ground, Onto: room.ID})
	for i, want := range []plan.Anchor{
		plan.OnFace(room.Sides[0].ID, 8*ft), // 9 ft is past its end
		plan.OnCeiling(room.ID, at(26*ft, 25*ft)),
		plan.OnFace(room.Sides[1].ID, 3*ft),
	} {
		if got := anchorIn(t, p, ids[i]); got != want {
			t.Errorf("the %d. is at %+v, want %+v", i, got, want)
		}
	}
	if o, _ := p.Opening(ids[0]); o.Circuit != "" {
		t.Errorf("it is on circuit %s of the other plan", o.Circuit)
	}
}

// The joists of a copy run beside its own wall: they are as far from it as those of the room.
func TestJoistsGoWithACopyOfTheirRoom(t *testing.T) {
	p := shed(t)
	room, _ := p.Room(shedRoom)
	now := *room
	now.Joists = plan.Joists{Along: now.Sides[1].ID, Spacing: 16 * in, First: 10 * in}
	p = after(t, p, edit.ChangeRoom{Room: now})
	c := arrange.ClipOf(p, []plan.ID{shedRoom})
	ids := as(c)
	p = after(t, p, arrange.Duplicate{Clip: c, As: ids, Level: ground, Partition: 4 * in, Step: ft})
	copied, _ := p.Room(c.Outer(ids)[0])
	if got := copied.Joists; got.Along != copied.Sides[1].ID || got.Spacing != 16*in || got.First != 10*in {
		t.Errorf("the joists of the copy are %+v, want beside %s", got, copied.Sides[1].ID)
	}
}
