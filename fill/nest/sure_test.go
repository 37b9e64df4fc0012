package nest

import (
	"testing"

	"studbay/plan/unit"
)

// TestWhatIsSaidToBeSure of many pieces: no search tries all ways to part sixty different
// ones, so that only sums tell. Of equal ones, or of small ones on boards that are equally
// full, all ways that differ are few, and are tried.
func TestWhatIsSaidToBeSure(t *testing.T) {
	var different []int64
	for i := range int64(60) {
		different = append(different, 101+i)
	}
	if l := Cut(Usual, in(different...)); !l.Longest == (l.Boards[len(l.Boards)-1].Rest+Usual.Kerf >= left(l)) || l.Fewest != (len(l.Boards) == l.Least) {
		t.Errorf("sixty different: %d boards of at least %d, fewest %v; longest %v", len(l.Boards), l.Least, l.Fewest, l.Longest)
	}
	var equal []int64
	for range 24 {
		equal = append(equal, 240)
	}
	if l := Cut(Usual, in(equal...)); !l.Longest || !l.Fewest || len(l.Boards) != 8 {
		t.Errorf("twenty-four of 30 in: %d boards, longest %v, want 8, three on each", len(l.Boards), l.Longest)
	}
	if l := Cut(Usual, in(400, 400, 400, 400, 400, 31, 30, 29, 28, 27, 26, 25, 24, 23, 22)); !l.Longest || !l.Fewest || len(l.Boards) != 5 {
		t.Errorf("five of 50 in and ten small: %d boards, longest %v", len(l.Boards), l.Longest)
	}
	// Full boards but for the last: all that is left is in one piece.
	var full []int64
	for range 20 {
		full = append(full, 500, 267)
	}
	if l := Cut(Usual, in(append(full, 100)...)); !l.Longest || !l.Fewest || len(l.Boards) != 21 {
		t.Errorf("twenty full boards: %d, longest %v", len(l.Boards), l.Longest)
	}
}

// left is what all boards have left, with a kerf each.
func left(l List) (sum unit.Length) {
	for _, b := range l.Boards {
		sum += l.Stock.Board + l.Stock.Kerf
		for _, p := range b.Pieces {
			sum -= p.Length + l.Stock.Kerf
		}
	}
	return sum
}
