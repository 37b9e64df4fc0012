// Package nest cuts pieces from stock lengths: as few boards as can be, and of the ways to
// do with so few the one that leaves the longest offcut. It knows lengths and nothing of
// what they are for.
//
// A cut between two pieces takes a kerf, and so does the one that parts the last piece from
// the offcut, but no more than is left. Pieces, kerfs and offcut of a board sum to the
// board exactly.
package nest

import (
	"cmp"
	"slices"

	"studbay/plan/unit"
)

// Piece is one length to be cut.
type Piece struct {
	Length unit.Length
	For    string // what it is for, as it is marked on the board
}

// Stock is what pieces are cut from.
type Stock struct {
	Board unit.Length
	Kerf  unit.Length
}

// Usual is a stud of 96 in and a saw of 1/8 in: common practice.
var Usual = Stock{Board: 96 * unit.Inch, Kerf: unit.Inch / 8}

// Board is one board with what is cut from it, from its left end.
type Board struct {
	Pieces []Piece
	Rest   unit.Length // the offcut
	Kerfs  unit.Length // of all its cuts
}

// Marks returns where on the board each cut is marked, by a tape from its left end: the end
// of each piece, kerfs counted.
func (b Board) Marks(s Stock) (marks []unit.Length) {
	at := unit.Length(0)
	for _, p := range b.Pieces {
		at += p.Length
		marks = append(marks, at)
		at += s.Kerf
	}
	return marks
}

// List is pieces cut from boards.
type List struct {
	Stock  Stock
	Boards []Board
	// Least is how many boards there must be at least, by the sum of pieces and kerfs.
	Least int
	// Fewest says that no cutting does with fewer boards: there are as few as Least, or every
	// way was tried. Longest says the same of the greatest offcut.
	Fewest, Longest bool
	TooLong         []Piece // longer than the stock
}

// most is how many steps a search takes before it is content with what it has.
const most = 300_000

// Cut cuts pieces from stock. The same pieces give the same list, in whatever order.
func Cut(s Stock, pieces []Piece) List {
	l := List{Stock: s}
	var fit []Piece
	for _, p := range pieces {
		switch {
		case p.Length > s.Board:
			l.TooLong = append(l.TooLong, p)
		case p.Length > 0:
			fit = append(fit, p)
		}
	}
	slices.SortStableFunc(fit, func(a, b Piece) int {
		return cmp.Or(cmp.Compare(b.Length, a.Length), cmp.Compare(a.For, b.For))
	})
	l.Least = bound(s, fit)
	find := &search{stock: s, pieces: fit, room: s.Board + s.Kerf}
	find.greedy()
	l.Fewest = find.fewer(l.Least)
	l.Longest = find.longer()
	for _, b := range find.best {
		l.Boards = append(l.Boards, s.board(fit, b))
	}
	slices.SortStableFunc(l.Boards, func(a, b Board) int { return cmp.Compare(a.Rest, b.Rest) })
	return l
}

// bound is the sum of all pieces, a kerf each, over a board and a kerf, rounded up: the last
// piece of a board needs no cut where it comes out even.
func bound(s Stock, pieces []Piece) int {
	sum := unit.Length(0)
	for _, p := range pieces {
		sum += p.Length + s.Kerf
	}
	room := s.Board + s.Kerf
	return int((sum + room - 1) / room)
}

func (s Stock) board(pieces []Piece, taken []int) (b Board) {
	left := s.Board
	for _, i := range taken {
		b.Pieces = append(b.Pieces, pieces[i])
		left -= pieces[i].Length
		kerf := min(s.Kerf, left)
		left -= kerf
		b.Kerfs += kerf
	}
	b.Rest = left
	return b
}

// search packs pieces, the longest first, each with its kerf, into boards with one more.
type search struct {
	stock  Stock
	pieces []Piece
	room   unit.Length // of a board with one kerf more
	best   [][]int
	bins   []bin
	steps  int
	wanted int         // boards at most
	rest   unit.Length // of the best so far, where the longest offcut is looked for
	found  bool
}

type bin struct {
	left   unit.Length
	pieces []int
}

func (f *search) need(i int) unit.Length { return f.pieces[i].Length + f.stock.Kerf }

// greedy puts each piece on the fullest board that has room for it.
func (f *search) greedy() {
	var bins []bin
	for i := range f.pieces {
		at := -1
		for k := range bins {
			if bins[k].left >= f.need(i) && (at < 0 || bins[k].left < bins[at].left) {
				at = k
			}
		}
		if at < 0 {
			at, bins = len(bins), append(bins, bin{left: f.room})
		}
		bins[at].left -= f.need(i)
		bins[at].pieces = append(bins[at].pieces, i)
	}
	f.keep(bins)
}

func (f *search) keep(bins []bin) {
	f.best = nil
	f.rest = 0
	for _, b := range bins {
		f.best = append(f.best, slices.Clone(b.pieces))
		f.rest = max(f.rest, b.left)
	}
}

// fewer looks for packings of fewer boards, down to the bound. It reports whether there is
// surely none of fewer than it found.
func (f *search) fewer(least int) bool {
	for len(f.best) > least {
		f.wanted, f.steps, f.found, f.bins = len(f.best)-1, 0, false, nil
		complete := f.place(0, f.keepFirst)
		if !f.found {
			return complete
		}
	}
	return true
}

// longer looks for packings of as many boards with a longer offcut. It reports whether
// there is surely none.
func (f *search) longer() bool {
	f.wanted, f.steps, f.bins = len(f.best), 0, nil
	total := unit.Length(f.wanted) * f.room
	for i := range f.pieces {
		total -= f.need(i)
	}
	return f.place(0, func() bool {
		var longest unit.Length
		for _, b := range f.bins {
			longest = max(longest, b.left)
		}
		if longest > f.rest {
			f.keep(f.bins)
		}
		return f.rest >= total // nothing could be longer than all that is left
	}) || f.rest >= total
}

func (f *search) keepFirst() bool {
	f.keep(f.bins)
	f.found = true
	return true
}

// place tries a piece on every board that differs, and on one more. Done is asked of each
// packing whether it is enough. It reports whether every way was tried; a search that is
// done has not to try the others.
func (f *search) place(i int, done func() bool) (complete bool) {
	_, complete = f.from(i, done)
	return complete
}

func (f *search) from(i int, done func() bool) (stop, complete bool) {
	if f.steps++; f.steps > most {
		return true, false
	}
	if i == len(f.pieces) {
		return done(), true
	}
	need := f.need(i)
	first := 0
	if i > 0 && f.pieces[i-1].Length == f.pieces[i].Length {
		first = f.holding(i - 1) // equal pieces go on boards from left to right
	}
	tried := map[unit.Length]bool{}
	for k := first; k < len(f.bins); k++ {
		b := f.bins[k]
		if b.left < need || tried[b.left] {
			continue
		}
		tried[b.left] = true
		f.bins[k] = bin{b.left - need, append(slices.Clone(b.pieces), i)}
		stop, complete := f.from(i+1, done)
		f.bins[k] = b
		if stop {
			return true, complete
		}
	}
	if len(f.bins) >= f.wanted {
		return false, true
	}
	f.bins = append(f.bins, bin{f.room - need, []int{i}})
	stop, complete = f.from(i+1, done)
	f.bins = f.bins[:len(f.bins)-1]
	return stop, complete
}

// holding returns the board that a piece is on.
func (f *search) holding(piece int) int {
	return slices.IndexFunc(f.bins, func(b bin) bool { return slices.Contains(b.pieces, piece) })
}
