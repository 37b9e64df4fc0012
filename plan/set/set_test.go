package set

import (
	"encoding/json"
	"errors"
	"maps"
	"slices"
	"strings"
	"testing"

	v2 "github.com/go-json-experiment/json"
	"pgregory.net/rapid"
)

// noun is the least that a set holds.
type noun struct {
	ID       string `json:"id"`
	Question string `json:"question"`
}

func (n *noun) Key() string { return n.ID }

// checkShape holds what a set's chunks promise: at most chunkMax in each, none empty,
// keys in order, leaves equally deep, height counted from there, a root that parts something,
// low the least key below, and marks those of what is there.
func checkShape(t rapid.TB, s Set[string, *noun]) {
	t.Helper()
	depths := map[int]bool{}
	var walk func(c *chunk[string, *noun], depth int) (n int)
	walk = func(c *chunk[string, *noun], depth int) (n int) {
		if len(c.items) > chunkMax || len(c.kids) > chunkMax || len(c.items)+len(c.kids) == 0 {
			t.Fatalf("a chunk holds %d nouns and %d chunks", len(c.items), len(c.kids))
		}
		if marks := slices.Concat(marksOf(c.items, (*noun).Key), marksOf(c.kids, (*chunk[string, *noun]).least)); !slices.Equal(c.marks, marks) {
			t.Fatalf("marks %x, of what is there %x", c.marks, marks)
		}
		if c.isLeaf() {
			depths[depth] = true
			if c.height != 0 {
				t.Fatalf("a leaf has the height %d", c.height)
			}
			if c.low != c.items[0].ID {
				t.Fatalf("low is %s, the least key %s", c.low, c.items[0].ID)
			}
			return len(c.items)
		}
		if c.low != c.kids[0].low {
			t.Fatalf("low is %s, that of the first below %s", c.low, c.kids[0].low)
		}
		for _, kid := range c.kids {
			if kid.height != c.height-1 {
				t.Fatalf("a chunk of height %d stands in one of %d", kid.height, c.height)
			}
			n += walk(kid, depth+1)
		}
		return n
	}
	n := 0
	if s.root != nil {
		if len(s.root.kids) == 1 {
			t.Fatal("the root holds nothing but one chunk")
		}
		n = walk(s.root, 0)
	}
	if n != s.Len() || len(depths) > 1 {
		t.Fatalf("%d nouns at depths %v, Len says %d", n, depths, s.Len())
	}
	keys := slices.Collect(maps.Keys(maps.Collect(keyed(s))))
	if slices.Sort(keys); len(keys) != n {
		t.Fatal("a key stands twice")
	}
	i := 0
	for id := range keyed(s) {
		if id != keys[i] {
			t.Fatal("nouns are not in the order of IDs")
		}
		i++
	}
}

// drawSet changes a set and a map in the same ways.
func drawSet(t *rapid.T, s Set[string, *noun], model map[string]*noun, span int) (Set[string, *noun], map[string]*noun) {
	model = maps.Clone(model)
	if model == nil {
		model = map[string]*noun{}
	}
	for range rapid.IntRange(0, 12).Draw(t, "bursts") {
		from, n := rapid.IntRange(0, span).Draw(t, "from"), rapid.IntRange(1, 200).Draw(t, "n")
		remove := rapid.IntRange(0, 2).Draw(t, "remove") == 0
		for i := range n {
			// A step prime to the span, so that keys come in no order.
			id := key((from + i*7919) % span)
			if remove {
				s = s.Without(id)
				delete(model, id)
				continue
			}
			d := &noun{ID: id}
			s = s.With(d)
			model[id] = d
		}
	}
	return s, model
}

func key(n int) string {
	digits := []byte("daaaaaaaa")
	for i := len(digits) - 1; n > 0; i-- {
		digits[i] = "abcdefghijkmnpqrstuvwxyz23456789"[n%32]
		n /= 32
	}
	return string(digits)
}

func TestSetIsAMap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		span := rapid.SampledFrom([]int{3, 100, 4000}).Draw(t, "span")
		before, _ := drawSet(t, Set[string, *noun]{}, nil, span)
		kept := slices.Collect(before.All())
		s, model := drawSet(t, before, maps.Collect(keyed(before)), span)
		checkShape(t, s)
		if !maps.Equal(maps.Collect(keyed(s)), model) {
			t.Fatal("the set holds other nouns than the map")
		}
		for i := range span {
			if got, ok := s.Get(key(i)); got != model[key(i)] || ok != (model[key(i)] != nil) {
				t.Fatalf("Get(%s) = %v, %v", key(i), got, ok)
			}
		}
		if !slices.Equal(kept, slices.Collect(before.All())) {
			t.Fatal("the set before was changed")
		}
	})
}

func TestSetDiffFindsWhatMapsDo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		span := rapid.SampledFrom([]int{3, 100, 4000}).Draw(t, "span")
		a, was := drawSet(t, Set[string, *noun]{}, nil, span)
		b, now := drawSet(t, a, was, span)
		var want []Differing[string, *noun]
		for i := range span {
			if x, y := was[key(i)], now[key(i)]; x != y {
				want = append(want, Differing[string, *noun]{x, y})
			}
		}
		slices.SortFunc(want, func(x, y Differing[string, *noun]) int { return strings.Compare(idOf(x), idOf(y)) })
		if got := a.Diff(b); !slices.Equal(got, want) {
			t.Fatalf("Diff finds %d changes, want %d", len(got), len(want))
		}
	})
}

func idOf(c Differing[string, *noun]) string {
	if c.Old != nil {
		return c.Old.ID
	}
	return c.New.ID
}

func TestNewSetInAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.SampledFrom([]int{0, 1, 47, 48, 49, 64, 65, 48*48 + 1, 5000}).Draw(t, "n")
		var nouns []*noun
		for i := range n {
			nouns = append(nouns, &noun{ID: key(i * 7919 % 5003)})
		}
		s, err := New(nouns...)
		if err != nil {
			t.Fatal(err)
		}
		checkShape(t, s)
		if s.Len() != n {
			t.Fatalf("%d nouns of %d", s.Len(), n)
		}
		s, _ = drawSet(t, s, nil, 5003)
		checkShape(t, s)
	})
}

func TestSetRefuses(t *testing.T) {
	a := &noun{ID: key(1)}
	if _, err := New(a, a); err == nil {
		t.Error("a set took one ID twice")
	}
	if _, err := New(a, nil); err == nil {
		t.Error("a set took nil")
	}
	for text, want := range map[string]error{
		`[null]`:                    nil,
		`[{"id":"a"},{"id":"a"}]`:   ErrTwice,
		`[{"id":1}]`:                nil,
		`{"id":"a"}`:                nil,
		`[{"id":"a"},{"id":"b"},7]`: nil,
	} {
		for name, read := range readers {
			var s Set[string, *noun]
			if err := read([]byte(text), &s); err == nil || want != nil && !errors.Is(err, want) || s.Len() != 0 {
				t.Errorf("%s reads %s as %d nouns, %v", name, text, s.Len(), err)
			}
		}
	}
}

// Both packages for JSON read and write a set.
var (
	readers = map[string]func([]byte, any) error{
		"encoding/json": json.Unmarshal,
		"version 2":     func(data []byte, to any) error { return v2.Unmarshal(data, to) },
	}
	writers = map[string]func(any) ([]byte, error){
		"encoding/json": json.Marshal,
		"version 2":     func(from any) ([]byte, error) { return v2.Marshal(from) },
	}
)

func TestSetJSON(t *testing.T) {
	s, _ := New(&noun{ID: key(2)}, &noun{ID: key(1), Question: "How high?"})
	const want = `[{"id":"daaaaaaab","question":"How high?"},{"id":"daaaaaaac","question":""}]`
	for name, write := range writers {
		text, err := write(s)
		if err != nil || string(text) != want {
			t.Errorf("%s writes %s, %v, want %s", name, text, err, want)
		}
		var back Set[string, *noun]
		if err := readers[name](text, &back); err != nil || !slices.EqualFunc(slices.Collect(s.All()), slices.Collect(back.All()), func(a, b *noun) bool { return *a == *b }) {
			t.Errorf("%s reads back %v, %v", name, slices.Collect(back.All()), err)
		}
		if text, _ := write(Set[string, *noun]{}); string(text) != "[]" {
			t.Errorf("%s writes an empty set as %s", name, text)
		}
	}
}

// keyed yields a set's nouns by their IDs.
func keyed(set Set[string, *noun]) func(func(string, *noun) bool) {
	return func(yield func(string, *noun) bool) {
		for noun := range set.All() {
			if !yield(noun.Key(), noun) {
				return
			}
		}
	}
}
