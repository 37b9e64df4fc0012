package plan

import (
	"iter"
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
	for i, l := range old {
		if i >= len(now) || now[i].ID != l.ID {
			c.Order = true
		}
		add(l, find(now, l.ID))
	}
	for i, l := range now {
		if i >= len(old) || old[i].ID != l.ID {
			c.Order = true
		}
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
		c.Levels = append(c.Levels, Differing[*Level]{old, now})
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
