package nest

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"studbay/plan/unit"
)

func in(eighths ...int64) (all []Piece) {
	for i, e := range eighths {
		all = append(all, Piece{unit.Length(e) * unit.Inch / 8, fmt.Sprint(i)})
	}
	return all
}

// TestCutByHand cuts sets that can be worked out on paper.
func TestCutByHand(t *testing.T) {
	for _, tt := range []struct {
		name   string
		pieces []Piece
		boards int
		rest   string // of the emptiest, in inches
		source string
	}{
		{"nothing", nil, 0, "", "empty sum"},
		{"a whole board", in(768), 1, "0", "96 = 96, no cut"},
		{"two halves lose a kerf", in(384, 384), 2, "47-7/8", "48 + 1/8 + 48 is more than 96"},
		{"two that come out even", in(383, 384), 1, "0", "47-7/8 + 1/8 + 48 = 96"},
		{"less than a kerf is left", in(384, 382), 1, "0", "48 + 1/8 + 47-3/4 leaves 1/8, which the last cut takes"},
		{"four bays of a stud at 16", in(116, 116, 116, 116, 116, 116), 1, "8-1/4", "6 × 14-1/2 + 6 × 1/8 = 87-3/4 of 96"},
		{"seventeen blocks of a house", in(180, 180, 180, 180, 180, 116, 116, 116, 116, 116, 116, 106, 106, 83, 83, 69, 69), 3, "", "263-7/8 of wood: 3 boards by the sum"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			l := Cut(Usual, tt.pieces)
			if len(l.Boards) != tt.boards || !l.Fewest {
				t.Fatalf("%d boards, fewest %v; want %d (%s)", len(l.Boards), l.Fewest, tt.boards, tt.source)
			}
			closes(t, l, len(tt.pieces))
			if tt.rest != "" {
				if got := l.Boards[len(l.Boards)-1].Rest.Inches(16); got != tt.rest+`"` && got != tt.rest {
					t.Errorf("the longest offcut is %s, want %s (%s)", got, tt.rest, tt.source)
				}
			}
		})
	}
}

// closes holds that each board closes: pieces, kerfs and offcut are the board.
func closes(t *testing.T, l List, pieces int) {
	t.Helper()
	n := 0
	for _, b := range l.Boards {
		sum := b.Kerfs + b.Rest
		for _, p := range b.Pieces {
			sum += p.Length
			n++
		}
		if sum != l.Stock.Board || b.Rest < 0 {
			t.Errorf("a board sums to %v with %v left", sum, b.Rest)
		}
		if marks := b.Marks(l.Stock); marks[len(marks)-1] > l.Stock.Board {
			t.Errorf("a mark lies past the end: %v", marks)
		}
	}
	if n+len(l.TooLong) != pieces {
		t.Errorf("%d pieces cut and %d too long of %d", n, len(l.TooLong), pieces)
	}
}

// TestCutAgainstEveryPacking compares small sets with every way there is to part them.
func TestCutAgainstEveryPacking(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		var sizes []int64
		for range 1 + random.IntN(8) {
			sizes = append(sizes, []int64{69, 83, 106, 116, 180, 240, 300, 384, 400, 500, 768}[random.IntN(11)])
		}
		pieces := in(sizes...)
		l := Cut(Usual, pieces)
		boards, rest := everyPacking(pieces)
		if len(l.Boards) != boards || l.Boards[len(l.Boards)-1].Rest != rest {
			t.Fatalf("%v: %d boards and %v left, every packing tried gives %d and %v", sizes, len(l.Boards), l.Boards[len(l.Boards)-1].Rest, boards, rest)
		}
		if !l.Fewest || !l.Longest || l.Least > boards {
			t.Errorf("%v: fewest %v, longest %v, at least %d of %d", sizes, l.Fewest, l.Longest, l.Least, boards)
		}
		closes(t, l, len(pieces))
	}
}

// everyPacking tries each way to part pieces into boards, with no pruning: the fewest
// boards, and the longest offcut that so few leave.
func everyPacking(pieces []Piece) (fewest int, rest unit.Length) {
	fewest = len(pieces) + 1
	var bins [][]Piece
	var put func(i int)
	put = func(i int) {
		if i == len(pieces) {
			longest := unit.Length(0)
			for _, b := range bins {
				left := Usual.Board
				for n, p := range b {
					left -= p.Length
					if n > 0 {
						left -= Usual.Kerf
					}
				}
				if left < 0 {
					return
				}
				longest = max(longest, left-min(left, Usual.Kerf))
			}
			if len(bins) < fewest || len(bins) == fewest && longest > rest {
				fewest, rest = len(bins), longest
			}
			return
		}
		for k := range bins {
			bins[k] = append(bins[k], pieces[i])
			put(i + 1)
			bins[k] = bins[k][:len(bins[k])-1]
		}
		bins = append(bins, []Piece{pieces[i]})
		put(i + 1)
		bins = bins[:len(bins)-1]
	}
	put(0)
	return fewest, rest
}

// TestTooLong keeps apart what no board holds.
func TestTooLong(t *testing.T) {
	l := Cut(Usual, in(769, 100))
	if len(l.TooLong) != 1 || len(l.Boards) != 1 {
		t.Errorf("%d too long, %d boards", len(l.TooLong), len(l.Boards))
	}
}
