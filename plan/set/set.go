// Package set holds nouns of a plan as an immutable set in the order of their keys.
//
// Nouns are pointers never written after they are in a set. A changed set shares all but one
// chunk and its spine with the old one, and Diff passes what two sets share, so that an edit
// and a comparison cost what they change and not what a plan holds.
package set

import (
	"cmp"
	"encoding/binary"
	"encoding/json"
	"errors"
	"fmt"
	"iter"
	"math/bits"
	"slices"

	v2 "github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Noun is what a Set holds: a pointer never written after it is in a plan.
type Noun[K ~string] interface {
	comparable
	Key() K
}

// chunkMax is how many nouns, or chunks, stand in one chunk: an edit copies one
// chunk and its spine.
const chunkMax = 64

// chunkNew is how many stand in one chunk of a new set: what is added next finds room.
const chunkNew = chunkMax * 3 / 4

// Set is an immutable set of nouns in the order of their IDs. With and Without
// return a changed set that shares all but one chunk and its spine with the old
// one. The zero value is empty.
type Set[K ~string, T Noun[K]] struct {
	root *chunk[K, T]
	n    int
}

// chunk is a leaf (items) or a spine (kids); low is the least key below it and height
// the number of chunks from it down to a leaf: 0 for a leaf, the same for all kids. The marks
// of the items, or of the least keys of the kids, stand beside them: what is looked for is
// found without fetching the others from all over the memory. The first and the last of them
// tell where to look.
type chunk[K ~string, T Noun[K]] struct {
	low    K
	height int
	marks  []uint64
	first  uint64
	last   uint64
	items  []T
	kids   []*chunk[K, T]
}

// markOf returns the beginning of an ID as a number: of two IDs whose marks differ the lesser
// has the lesser.
func markOf[K ~string](id K) uint64 {
	var begin [8]byte
	copy(begin[:], id)
	return binary.BigEndian.Uint64(begin[:])
}

// firstFrom returns the place of the first mark that is not less than one, in a list from
// the first, which is the least, to the last. It begins where that would be if marks were
// spread evenly, as those of IDs are nearly: most of the list is then not fetched.
func firstFrom(marks []uint64, first, last, mark uint64) int {
	switch {
	case mark <= first:
		return 0
	case mark > last:
		return len(marks)
	}
	high, low := bits.Mul64(mark-first, uint64(len(marks)-1))
	guess, _ := bits.Div64(high, low, last-first)
	i := int(guess)
	for marks[i] < mark {
		i++
	}
	for i > 0 && marks[i-1] >= mark {
		i--
	}
	return i
}

func (c *chunk[K, T]) isLeaf() bool { return c.kids == nil }

// ErrTwice is returned where two nouns of a set share an ID.
var ErrTwice = errors.New("stands twice")

// New returns a set of the nouns in any order. It fails with ErrTwice where two share
// an ID, and where one is nil.
func New[K ~string, T Noun[K]](nouns ...T) (Set[K, T], error) {
	var none T
	if i := slices.Index(nouns, none); i >= 0 {
		return Set[K, T]{}, fmt.Errorf("noun %d is empty", i)
	}
	sorted := slices.Clone(nouns)
	slices.SortFunc(sorted, func(a, b T) int { return cmp.Compare(a.Key(), b.Key()) })
	for i := 1; i < len(sorted); i++ {
		if sorted[i].Key() == sorted[i-1].Key() {
			return Set[K, T]{}, fmt.Errorf("id %q: %w", string(sorted[i].Key()), ErrTwice)
		}
	}
	var row []*chunk[K, T]
	for part := range slices.Chunk(sorted, chunkNew) {
		row = append(row, leaf(slices.Clone(part), marksOf(part, T.Key)))
	}
	for len(row) > 1 {
		var up []*chunk[K, T]
		for part := range slices.Chunk(row, chunkNew) {
			up = append(up, spine(slices.Clone(part), marksOf(part, (*chunk[K, T]).least)))
		}
		row = up
	}
	if len(row) == 0 {
		return Set[K, T]{}, nil
	}
	return Set[K, T]{row[0], len(sorted)}, nil
}

func leaf[K ~string, T Noun[K]](items []T, marks []uint64) *chunk[K, T] {
	return &chunk[K, T]{low: items[0].Key(), items: items, marks: marks, first: marks[0], last: marks[len(marks)-1]}
}

func spine[K ~string, T Noun[K]](kids []*chunk[K, T], marks []uint64) *chunk[K, T] {
	return &chunk[K, T]{low: kids[0].low, height: kids[0].height + 1, kids: kids, marks: marks, first: marks[0], last: marks[len(marks)-1]}
}

func (c *chunk[K, T]) least() K { return c.low }

func marksOf[K ~string, E any](list []E, key func(E) K) []uint64 {
	marks := make([]uint64, len(list))
	for i, e := range list {
		marks[i] = markOf(key(e))
	}
	return marks
}

// Len returns how many nouns the set holds.
func (s Set[K, T]) Len() int { return s.n }

// Get returns the noun with the ID, and whether there is one.
func (s Set[K, T]) Get(id K) (T, bool) {
	c := s.root
	for c != nil && !c.isLeaf() {
		c = c.kids[c.kidFor(id)]
	}
	if c != nil {
		if i, ok := c.find(id); ok {
			return c.items[i], true
		}
	}
	var none T
	return none, false
}

// kidFor returns which kid may hold the ID: the last that does not begin after it.
func (c *chunk[K, T]) kidFor(id K) int {
	mark := markOf(id)
	i := firstFrom(c.marks, c.first, c.last, mark)
	for i < len(c.kids) && c.marks[i] == mark && c.kids[i].low <= id {
		i++
	}
	return max(i-1, 0)
}

// find returns where the ID stands or would stand in a leaf, and whether it is there.
func (c *chunk[K, T]) find(id K) (int, bool) {
	mark := markOf(id)
	i := firstFrom(c.marks, c.first, c.last, mark)
	for ; i < len(c.items) && c.marks[i] == mark; i++ {
		if key := c.items[i].Key(); key >= id {
			return i, key == id
		}
	}
	return i, false
}

// All yields the nouns in the order of their IDs.
func (s Set[K, T]) All() iter.Seq[T] {
	return func(yield func(T) bool) { s.root.all(yield) }
}

func (c *chunk[K, T]) all(yield func(T) bool) bool {
	if c == nil {
		return true
	}
	for _, item := range c.items {
		if !yield(item) {
			return false
		}
	}
	for _, kid := range c.kids {
		if !kid.all(yield) {
			return false
		}
	}
	return true
}

// With returns the set with the noun in it, in place of one with the same ID.
func (s Set[K, T]) With(noun T) Set[K, T] {
	if s.root == nil {
		return Set[K, T]{leaf([]T{noun}, []uint64{markOf(noun.Key())}), 1}
	}
	grown := 0
	parts := s.root.with(noun, &grown)
	root := parts[0]
	if len(parts) == 2 {
		root = spine(parts, marksOf(parts, (*chunk[K, T]).least))
	}
	return Set[K, T]{root, s.n + grown}
}

// with returns the one or two chunks that stand for c with the noun in it. Marks that stay
// the same are shared.
func (c *chunk[K, T]) with(noun T, grown *int) []*chunk[K, T] {
	if c.isLeaf() {
		i, found := c.find(noun.Key())
		if found {
			items := slices.Clone(c.items)
			items[i] = noun
			return []*chunk[K, T]{leaf(items, c.marks)}
		}
		*grown = 1
		return halves(replaced(c.items, i, 0, noun), replaced(c.marks, i, 0, markOf(noun.Key())), leaf[K, T])
	}
	i := c.kidFor(noun.Key())
	parts := c.kids[i].with(noun, grown)
	marks := c.marks
	if len(parts) > 1 || parts[0].low != c.kids[i].low {
		marks = replaced(marks, i, 1, marksOf(parts, (*chunk[K, T]).least)...)
	}
	return halves(replaced(c.kids, i, 1, parts...), marks, spine[K, T])
}

// replaced returns the list with others in place of so many of it from i on.
func replaced[E any](list []E, i, many int, by ...E) []E {
	return slices.Concat(list[:i], by, list[i+many:])
}

// halves wraps the list in one chunk, or in two where one would be too long.
func halves[K ~string, T Noun[K], E any](list []E, marks []uint64, wrap func([]E, []uint64) *chunk[K, T]) []*chunk[K, T] {
	if len(list) <= chunkMax {
		return []*chunk[K, T]{wrap(list, marks)}
	}
	mid := len(list) / 2
	return []*chunk[K, T]{
		wrap(slices.Clone(list[:mid]), slices.Clone(marks[:mid])),
		wrap(slices.Clone(list[mid:]), slices.Clone(marks[mid:])),
	}
}

// Without returns the set without the noun of that ID, if it was there.
func (s Set[K, T]) Without(id K) Set[K, T] {
	if _, ok := s.Get(id); !ok {
		return s
	}
	root := s.root.without(id)
	for root != nil && len(root.kids) == 1 {
		root = root.kids[0]
	}
	return Set[K, T]{root, s.n - 1}
}

// without returns c less the noun, or nil where nothing is left.
func (c *chunk[K, T]) without(id K) *chunk[K, T] {
	if c.isLeaf() {
		i, _ := c.find(id)
		if len(c.items) == 1 {
			return nil
		}
		return leaf(replaced(c.items, i, 1), replaced(c.marks, i, 1))
	}
	i := c.kidFor(id)
	kid := c.kids[i].without(id)
	switch {
	case kid == nil && len(c.kids) == 1:
		return nil
	case kid == nil:
		return spine(replaced(c.kids, i, 1), replaced(c.marks, i, 1))
	case kid.low == c.kids[i].low:
		return spine(replaced(c.kids, i, 1, kid), c.marks)
	}
	return spine(replaced(c.kids, i, 1, kid), replaced(c.marks, i, 1, markOf(kid.low)))
}

// MarshalJSON writes the nouns as an array in the order of their IDs.
func (s Set[K, T]) MarshalJSON() ([]byte, error) {
	return json.Marshal(slices.AppendSeq(make([]T, 0, s.n), s.All()))
}

// UnmarshalJSON reads an array of nouns. It fails where two share an ID or one is null.
func (s *Set[K, T]) UnmarshalJSON(data []byte) error {
	var nouns []T
	if err := json.Unmarshal(data, &nouns); err != nil {
		return err
	}
	set, err := New(nouns...)
	*s = set
	return err
}

// MarshalJSONTo writes the nouns as an array in the order of their IDs.
func (s Set[K, T]) MarshalJSONTo(to *jsontext.Encoder) error {
	return v2.MarshalEncode(to, slices.AppendSeq(make([]T, 0, s.n), s.All()))
}

// UnmarshalJSONFrom reads an array of nouns. It fails with ErrTwice where two share an ID.
func (s *Set[K, T]) UnmarshalJSONFrom(from *jsontext.Decoder) error {
	var nouns []T
	if err := v2.UnmarshalDecode(from, &nouns); err != nil {
		return err
	}
	set, err := New(nouns...)
	*s = set
	return err
}
