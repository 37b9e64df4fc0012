package set

import (
	"fmt"
	"iter"
	"slices"
	"strings"
	"testing"
)

// IDs as numbers, by hand: the letters are 0x61 to 0x69, what is not there is 0, and what
// follows the eighth is not looked at.
func TestMarkIsTheBeginningOfAnID(t *testing.T) {
	for id, want := range map[string]uint64{
		"":          0,
		"a":         0x61 << 56,
		"ab":        0x6162 << 48,
		"abcdefgh":  0x6162636465666768,
		"abcdefghi": 0x6162636465666768,
	} {
		if got := markOf(id); got != want {
			t.Errorf("the mark of %q is %x, want %x", id, got, want)
		}
	}
}

// orders are ways through the numbers below n; 7919 is prime, and no n here is a multiple.
var orders = []func(i, n int) int{
	func(i, n int) int { return i },
	func(i, n int) int { return n - 1 - i },
	func(i, n int) int { return i * 7919 % n },
}

// keyings name the nouns: keys that differ in their first eight bytes, only behind them, and
// partly so.
var keyings = []func(int) string{
	key,
	func(n int) string { return "daaaaaaaa" + key(n) },
	func(n int) string { return key(n / 100)[1:] + key(n%100) },
}

// Three levels of chunks are built up and taken down in each order; at every width of a chunk
// the set holds what was put in and not taken out.
func TestSetGrowsAndShrinksInAnyOrder(t *testing.T) {
	for i, in := range orders {
		for j, out := range orders {
			keyed := (i + j) % len(keyings)
			t.Run(fmt.Sprint("in by order ", i, ", out by ", j, ", keys ", keyed), func(t *testing.T) {
				growAndShrink(t, 2500, keyings[keyed], in, out)
			})
		}
	}
}

func growAndShrink(t *testing.T, n int, keyed func(int) string, in, out func(i, n int) int) {
	nouns := inOrder(n, keyed)
	held := make([]*noun, n)
	check := func(s Set[string, *noun], i int) {
		if i%250 > 1 && s.Len() > chunkMax+2 {
			return
		}
		checkShape(t, s)
		want := slices.DeleteFunc(slices.Clone(held), func(n *noun) bool { return n == nil })
		if got := slices.Collect(s.All()); !slices.Equal(got, want) || s.Len() != len(want) {
			t.Fatalf("after %d: %d nouns, Len says %d, want %d in order", i, len(got), s.Len(), len(want))
		}
	}
	var s Set[string, *noun]
	for i := range n {
		at := in(i, n)
		s, held[at] = s.With(nouns[at]), nouns[at]
		check(s, i)
	}
	for i, noun := range nouns {
		if got, ok := s.Get(noun.ID); got != noun || !ok {
			t.Fatalf("Get(%d) = %v, %t", i, got, ok)
		}
	}
	for i := range n {
		at := out(i, n)
		s, held[at] = s.Without(nouns[at].ID), nil
		check(s, i)
		if _, ok := s.Get(nouns[at].ID); ok {
			t.Fatalf("%d is still there", at)
		}
	}
	if s != (Set[string, *noun]{}) {
		t.Error("a set with nothing left in it differs from the zero value")
	}
}

// A chunk is full with chunkMax, and the next makes two halves of it; a new set leaves room.
func TestChunksHoldSoMany(t *testing.T) {
	var s Set[string, *noun]
	for i, noun := range inOrder(chunkMax+1, key) {
		s = s.With(noun)
		if i == chunkMax-1 && !s.root.isLeaf() {
			t.Errorf("%d stand in more than one chunk", s.Len())
		}
	}
	if got := s.root.kids; len(got) != 2 || len(got[0].items) != 32 || len(got[1].items) != 33 {
		t.Errorf("65 stand in %d chunks, want 32 and 33", len(got))
	}
	for n, want := range map[int][]int{48: {48}, 49: {48, 1}, 48 * 48: slices.Repeat([]int{48}, 48), 48*48 + 1: {48, 1}} {
		s, err := New(inOrder(n, key)...)
		if err != nil {
			t.Fatal(err)
		}
		var got []int
		for _, kid := range s.root.kids {
			got = append(got, len(kid.items)+len(kid.kids))
		}
		if s.root.isLeaf() {
			got = []int{len(s.root.items)}
		}
		if !slices.Equal(got, want) {
			t.Errorf("a new set of %d has chunks of %v, want %v", n, got, want)
		}
	}
}

// Marks that stay the same are shared: of a noun replaced, and of the chunks above.
func TestReplacedNounSharesMarks(t *testing.T) {
	s := numbered(3000)
	after := s.With(&noun{ID: key(1234)})
	for a, b := s.root, after.root; a != nil && b != nil; {
		if &a.marks[0] != &b.marks[0] {
			t.Fatalf("at height %d the marks were written anew", a.height)
		}
		i := a.kidFor(key(1234))
		if a.isLeaf() {
			break
		}
		a, b = a.kids[i], b.kids[i]
	}
}

func numbered(n int) Set[string, *noun] {
	var s Set[string, *noun]
	for _, noun := range inOrder(n, key) {
		s = s.With(noun)
	}
	return s
}

// inOrder returns so many nouns in the order of their IDs.
func inOrder(n int, keyed func(int) string) (nouns []*noun) {
	for i := range n {
		nouns = append(nouns, &noun{ID: keyed(i)})
	}
	slices.SortFunc(nouns, func(a, b *noun) int { return strings.Compare(a.ID, b.ID) })
	return nouns
}

// Whoever looks through a set may stop at any noun.
func TestAllStopsWhereItIsLeft(t *testing.T) {
	for _, n := range []int{1, 50, 200, 5000} {
		s, nouns := numbered(n), inOrder(n, key)
		for _, stop := range []int{0, n / 3, n - 1} {
			next, done := iter.Pull(s.All())
			for i := range stop + 1 {
				if got, ok := next(); !ok || *got != *nouns[i] {
					t.Fatalf("noun %d of %d is %v", i, n, got)
				}
			}
			done()
			seen := 0
			for range s.All() {
				if seen++; seen > stop {
					break
				}
			}
			if seen != stop+1 {
				t.Errorf("of %d nouns %d were seen, want %d", n, seen, stop+1)
			}
		}
	}
}

// counted counts how often its key is asked for.
type counted struct {
	id    string
	asked *int
}

func (n *counted) Key() string { *n.asked++; return n.id }

// A comparison costs what differs: of many nouns no more are looked at than stand in the
// chunks that were changed.
func TestDiffLooksAtLittle(t *testing.T) {
	asked := 0
	var s Set[string, *counted]
	for i := range 10_000 {
		s = s.With(&counted{key(i), &asked})
	}
	for name, after := range map[string]Set[string, *counted]{
		"the same":    s,
		"one changed": s.With(&counted{key(5000), &asked}),
		"one added":   s.With(&counted{key(5000) + "a", &asked}),
		"one removed": s.Without(key(5000)),
		"the first":   s.Without(key(0)),
		"the last":    s.Without(key(9_999)),
	} {
		asked = 0
		changes := s.Diff(after)
		want := 1
		if name == "the same" {
			want = 0
		}
		// Of each of two leaves with up to 65 nouns every key is asked for, for each step.
		if len(changes) != want || asked > want*4*(chunkMax+1) {
			t.Errorf("%s: %d changes, want %d; %d keys of %d asked for", name, len(changes), want, asked, s.Len())
		}
	}
}
