package plan

import (
	"iter"
	"reflect"
	"slices"
)

// Changes is what differs between two plans, noun by noun; Changed gives the nouns of
// one kind. A noun that went to another level is removed from one and added to the other.
type Changes struct {
	Header bool                // the header differs
	Order  bool                // levels were added, removed or reordered
	Levels []Differing[*Level] // whose own fields differ, added or removed
	kinds  []changesOfKind     // as the table of kinds
}

// OnLevel is a change of a noun on one level; Level is empty for what is on none.
type OnLevel[T Noun] struct {
	Level ID
	Differing[T]
}

// changesOfKind is a []OnLevel of the noun of one kind, and how many they are.
type changesOfKind struct {
	list any
	n    int
}

// Changed returns the changes of one kind of noun, level by level, in the order of IDs.
func Changed[T Noun](c Changes) []OnLevel[T] {
	for _, k := range c.kinds {
		if list, ok := k.list.([]OnLevel[T]); ok {
			return list
		}
	}
	return nil
}

// IsEmpty reports whether nothing differs.
func (c Changes) IsEmpty() bool {
	return !c.Header && !c.Order && len(c.Levels) == 0 &&
		!slices.ContainsFunc(c.kinds, func(k changesOfKind) bool { return k.n > 0 })
}

// Diff returns what differs between two plans. What both share is not visited.
func Diff(old, now Plan) (c Changes) {
	c.Header = old.Header != now.Header
	pairs := append(c.pairLevels(old.Levels, now.Levels), pair{"", holder{&old, nil}, holder{&now, nil}})
	table := kinds()
	c.kinds = make([]changesOfKind, len(table))
	for i, k := range table {
		c.kinds[i] = k.diff(pairs)
	}
	return c
}

// pair is one holder of sets before and after.
type pair struct {
	level    ID
	old, now holder
}

// pairLevels notes how the levels themselves differ and returns those that do, each
// beside itself; one that came or went, beside an empty one.
func (c *Changes) pairLevels(old, now []*Level) (pairs []pair) {
	find := func(list []*Level, id ID) *Level { return Plan{Levels: list}.Level(id) }
	add := func(a, b *Level) {
		if a != b {
			pairs = append(pairs, c.pairLevel(a, b))
		}
	}
	c.Order = !slices.EqualFunc(old, now, func(a, b *Level) bool { return a.ID == b.ID })
	for _, l := range old {
		add(l, find(now, l.ID))
	}
	for _, l := range now {
		if find(old, l.ID) == nil {
			add(nil, l)
		}
	}
	return pairs
}

func (c *Changes) pairLevel(old, now *Level) pair {
	a, b := old, now
	switch {
	case a == nil:
		a = &Level{ID: b.ID}
	case b == nil:
		b = &Level{ID: a.ID}
	}
	if old == nil || now == nil || !sameNoun(a.bare(), b.bare()) {
		c.Levels = append(c.Levels, Differing[*Level]{Old: old, New: now})
	}
	return pair{b.ID, holder{nil, a}, holder{nil, b}}
}

// bare returns the level with nothing on it: what it says of itself.
func (l *Level) bare() *Level {
	now := *l
	for _, k := range kinds() {
		k.empty(holder{nil, &now})
	}
	return &now
}

// diff returns the changes of one kind.
func (r *row[N, P]) diff(pairs []pair) changesOfKind {
	var all []OnLevel[P]
	for _, p := range pairs {
		if old := r.in(p.old); old != nil {
			all = append(all, onLevel(p.level, old.Diff(*r.in(p.now)))...)
		}
	}
	return changesOfKind{all, len(all)}
}

func onLevel[T Noun](level ID, changes []Differing[T]) []OnLevel[T] {
	if len(changes) == 0 {
		return nil
	}
	out := make([]OnLevel[T], 0, len(changes))
	for _, c := range changes {
		out = append(out, OnLevel[T]{level, c})
	}
	return out
}

// All yields each noun that differs, before and after, kind by kind; nil stands for one
// that is not there.
func (c Changes) All() iter.Seq2[Thing, Thing] {
	return func(yield func(old, now Thing) bool) {
		for _, k := range kinds() {
			for old, now := range k.changed(c) {
				if !yield(old, now) {
					return
				}
			}
		}
	}
}

// changed gives the nouns of the kind that differ, nil for none.
func (r *row[N, P]) changed(c Changes) iter.Seq2[Thing, Thing] {
	thing := func(noun P) Thing {
		if noun == nil {
			return nil
		}
		return noun
	}
	return func(yield func(old, now Thing) bool) {
		for _, x := range Changed[P](c) {
			if !yield(thing(x.Old), thing(x.New)) {
				return
			}
		}
	}
}

// Equal reports whether two plans say the same: the same header, levels in the same
// order and nouns of the same IDs with the same fields, what is kept of newer files
// included. Lists and maps with nothing in them equal absent ones. What both share is
// not visited.
func Equal(a, b Plan) bool {
	return sameNoun(a.Header, b.Header) && sameLevels(a.Levels, b.Levels) && sameNoun(a.Extra, b.Extra) &&
		sameSets(holder{&a, nil}, holder{&b, nil})
}

func sameLevels(a, b []*Level) bool { return slices.EqualFunc(a, b, sameLevel) }

func sameLevel(a, b *Level) bool {
	if a == b {
		return true
	}
	return sameNoun(a.bare(), b.bare()) && sameSets(holder{nil, a}, holder{nil, b})
}

// sameSets reports whether all sets that two holders have say the same.
func sameSets(a, b holder) bool {
	return !slices.ContainsFunc(kinds(), func(k kind) bool { return !k.equal(a, b) })
}

func (r *row[N, P]) equal(a, b holder) bool {
	if set := r.in(a); set != nil {
		return sameSet(*set, *r.in(b))
	}
	return true
}

func sameSet[T Noun](a, b Set[T]) bool {
	if a.Len() != b.Len() {
		return false
	}
	return !slices.ContainsFunc(a.Diff(b), func(c Differing[T]) bool { return !sameNoun(c.Old, c.New) })
}

func sameNoun[T any](a, b T) bool { return same(reflect.ValueOf(a), reflect.ValueOf(b)) }

// same is reflect.DeepEqual, but that empty slices and maps equal nil ones.
func same(a, b reflect.Value) bool {
	switch a.Kind() {
	case reflect.Pointer:
		if a.IsNil() || b.IsNil() || a.Pointer() == b.Pointer() {
			return a.Pointer() == b.Pointer()
		}
		return same(a.Elem(), b.Elem())
	case reflect.Struct:
		for i := range a.NumField() {
			if !same(a.Field(i), b.Field(i)) {
				return false
			}
		}
		return true
	case reflect.Slice:
		for i := range min(a.Len(), b.Len()) {
			if !same(a.Index(i), b.Index(i)) {
				return false
			}
		}
		return a.Len() == b.Len()
	case reflect.Map:
		for _, key := range a.MapKeys() {
			if other := b.MapIndex(key); !other.IsValid() || !same(a.MapIndex(key), other) {
				return false
			}
		}
		return a.Len() == b.Len()
	}
	return a.Equal(b)
}

// Tally counts nouns that one plan has and another has not, and those that both have but
// say otherwise.
type Tally struct{ Added, Altered, Gone int }

// IsZero reports whether nothing differs.
func (t Tally) IsZero() bool { return t == Tally{} }

// Difference is how many nouns of two plans differ. A difference of header or levels
// alone is not in it: Equal tells of that.
type Difference struct{ Rooms, Openings, Others Tally }

// Compare counts what is other in a plan than in an older one, by what nouns say: two
// plans read from two files share none.
func Compare(old, now Plan) (d Difference) {
	c := Diff(old, now)
	for _, k := range kinds() {
		k.compare(c, &d)
	}
	return d
}

func (r *row[N, P]) compare(c Changes, d *Difference) {
	t := &d.Others
	if r.counted != nil {
		t = r.counted(d)
	}
	for _, x := range Changed[P](c) {
		count(t, x.Differing)
	}
}

func count[T Noun](t *Tally, c Differing[T]) {
	var none T
	switch {
	case c.Old == none:
		t.Added++
	case c.New == none:
		t.Gone++
	case !sameNoun(c.Old, c.New):
		t.Altered++
	}
}

// Same reports whether two nouns say the same, whether or not they are one value; what is
// kept of newer files counts. Nil is the same as nil alone.
func Same[N any](a, b *N) bool { return sameNoun(a, b) }
