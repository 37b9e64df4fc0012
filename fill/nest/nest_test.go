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

// TestTooLong keeps apart what no board holds; a piece without a length is none.
func TestTooLong(t *testing.T) {
	l := Cut(Usual, in(769, 100, 0))
	if len(l.TooLong) != 1 || len(l.Boards) != 1 || len(l.Boards[0].Pieces) != 1 {
		t.Errorf("%d too long, boards %v", len(l.TooLong), l.Boards)
	}
	if l := Cut(Usual, []Piece{{Length: 1}}); len(l.Boards) != 1 || l.Boards[0].Rest != Usual.Board-Usual.Kerf-1 {
		t.Errorf("a nanometer is cut from %v", l.Boards)
	}
}

// TestMarks adds pieces and kerfs up by hand.
func TestMarks(t *testing.T) {
	want := []string{`10"`, `30-1/8"`, `60-1/4"`} // 10, + 1/8 + 20, + 1/8 + 30
	for i, at := range (Board{Pieces: in(80, 160, 240)}).Marks(Usual) {
		if got := at.Inches(16); got != want[i] {
			t.Errorf("cut %d is marked at %s, want %s", i, got, want[i])
		}
	}
}

// TestCutGoesByThePieces alone: in whatever order they come, the list is one, and of the
// least boards by the sum: so many boards, a kerf more each, as hold all pieces with a kerf.
func TestCutGoesByThePieces(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 100 {
		var sizes []int64
		for range 1 + random.IntN(9) {
			sizes = append(sizes, []int64{60, 69, 83, 116, 180, 300, 384, 500}[random.IntN(8)])
		}
		pieces := in(sizes...)
		want := Cut(Usual, pieces)
		for range 3 {
			random.Shuffle(len(pieces), func(i, j int) { pieces[i], pieces[j] = pieces[j], pieces[i] })
			if got := Cut(Usual, pieces); fmt.Sprint(got) != fmt.Sprint(want) {
				t.Fatalf("%v in another order: %v, want %v", sizes, got, want)
			}
		}
		least := 0
		for rest := sizesWithKerfs(sizes); rest > 0; rest -= 769 {
			least++
		}
		if want.Least != least {
			t.Errorf("%v: at least %d boards, want %d", sizes, want.Least, least)
		}
	}
}

func sizesWithKerfs(sizes []int64) (sum int64) {
	for _, s := range sizes {
		sum += s + 1
	}
	return sum
}

// TestBoundByHand: a board and a kerf hold the pieces and a kerf each, to the nanometre.
func TestBoundByHand(t *testing.T) {
	room := Usual.Board + Usual.Kerf
	two := func(over unit.Length) []Piece {
		half := room/2 - Usual.Kerf
		return []Piece{{Length: half}, {Length: room - half - 2*Usual.Kerf + over}}
	}
	for _, tt := range []struct {
		pieces []Piece
		want   int
	}{{nil, 0}, {in(1), 1}, {in(768), 1}, {in(384, 383), 1}, {in(384, 384), 2}, {in(768, 768), 2}, {two(0), 1}, {two(1), 2}, {two(-1), 1}} {
		if got := bound(Usual, tt.pieces); got != tt.want {
			t.Errorf("%v: at least %d, want %d", tt.pieces, got, tt.want)
		}
	}
}

// TestGreedyByHand puts pieces on the fullest board that has room, in eighths of an inch of
// 769: 96 in and a kerf.
func TestGreedyByHand(t *testing.T) {
	for _, tt := range []struct {
		pieces []Piece
		want   string
		source string
	}{
		{in(384, 383), "[[0 1]]", "385 and 384 are 769"},
		{in(384, 384), "[[0] [1]]", "385 and 385 are 770"},
		{in(500, 450, 200), "[[0 2] [1]]", "268 are left and 318"},
		{in(500, 400, 300, 60), "[[0] [1 2 3]]", "268 are left and 368 - 301 = 67"},
		{in(500, 450, 400, 200, 100, 60), "[[0 3 5] [1 4] [2]]", "268, 318, 368; 67, 318, 368; 67, 217, 368"},
	} {
		f := &search{stock: Usual, pieces: tt.pieces, room: Usual.Board + Usual.Kerf}
		f.greedy()
		if got := fmt.Sprint(f.best); got != tt.want {
			t.Errorf("%s, want %s (%s)", got, tt.want, tt.source)
		}
	}
}

// TestSearchFromTheWorst looks for the fewest boards from a board a piece on, over pieces
// that fill boards without or nearly without an offcut, which the greedy way often misses.
func TestSearchFromTheWorst(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	for range 150 {
		var sizes []int64
		for range 3 {
			left := int64(769 - random.IntN(2)*random.IntN(20))
			for range 1 + random.IntN(2) {
				piece := 20 + random.Int64N(left/2)
				sizes, left = append(sizes, piece), left-piece-1
			}
			sizes = append(sizes, left-1)
		}
		sizes = sizes[:min(len(sizes), 8)]
		random.Shuffle(len(sizes), func(i, j int) { sizes[i], sizes[j] = sizes[j], sizes[i] })
		pieces := in(sizes...)
		boards, rest := everyPacking(pieces)
		if l := Cut(Usual, pieces); len(l.Boards) != boards || l.Boards[boards-1].Rest != rest || !l.Fewest || !l.Longest {
			t.Errorf("%v: %d boards, %v left, want %d and %v", sizes, len(l.Boards), l.Boards[len(l.Boards)-1].Rest, boards, rest)
		}
		f := &search{stock: Usual, pieces: pieces, room: Usual.Board + Usual.Kerf}
		for i := range pieces {
			f.best = append(f.best, []int{i})
		}
		f.rest = f.room
		if sure := f.fewer(0); !sure || len(f.best) != boards {
			t.Errorf("%v: from a board a piece to %d, sure %v, want %d", sizes, len(f.best), sure, boards)
		}
		if sure := f.longer(); !sure || f.rest != max(rest, 0)+min(Usual.Kerf, f.rest) {
			t.Errorf("%v: the longest is %v, sure %v, want %v and a kerf", sizes, f.rest, sure, rest)
		}
	}
}
