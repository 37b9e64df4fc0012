package bind

import (
	"reflect"
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// Subject is what a card is of: one thing of the plan, or several of a kind.
type Subject[T any] struct {
	*Context // of the card, as it is shown now
	IDs      []plan.ID
	Get      func(*index.Index, plan.ID) *T // nil: it is gone
	Put      func(T) edit.Edit              // puts a changed copy in its place
	only     func(T) bool                   // nil: all of them
}

// ID returns the first of them.
func (s Subject[T]) ID() plan.ID { return s.IDs[0] }

// All returns copies of the things that are there.
func (s Subject[T]) All() (all []T) {
	for _, id := range s.IDs {
		if x := s.Get(s.Index, id); x != nil && (s.only == nil || s.only(*x)) {
			all = append(all, *x)
		}
	}
	return all
}

// Now returns a copy of the first that is there; where none is, nothing.
func (s Subject[T]) Now() (x T) {
	if all := s.All(); len(all) > 0 {
		x = all[0]
	}
	return x
}

// Only is those of them that something is true of.
func (s Subject[T]) Only(is func(T) bool) Subject[T] {
	s.only = is
	return s
}

// Has reports whether there is one of them.
func (s Subject[T]) Has() bool { return len(s.All()) > 0 }

// Value joins a value of the plan to a row: how it is read, and the edit that puts another
// in its place.
type Value[V any] struct {
	Read func() (v V, isSame bool) // not the same: several things differ in it
	Edit func(V) edit.Edit
}

// Now returns the value, or nothing where things differ in it.
func (v Value[V]) Now() V {
	now, _ := v.Read()
	return now
}

// One is a value of which there is one.
func One[V any](read func() V, edit func(V) edit.Edit) Value[V] {
	return Value[V]{func() (V, bool) { return read(), true }, edit}
}

// Told is a value that things tell by their own way, and the edit of each that changes it.
func Told[T, V any](s Subject[T], read func(T) V, change func(T, V) edit.Edit) Value[V] {
	return Value[V]{
		Read: func() (same V, isSame bool) {
			for i, x := range s.All() {
				v := read(x)
				if i > 0 && !reflect.DeepEqual(v, same) {
					var none V
					return none, false
				}
				same = v
			}
			return same, true
		},
		Edit: func(v V) edit.Edit {
			var all edit.Steps
			for _, x := range s.All() {
				all.Edits = append(all.Edits, change(x, v))
			}
			return all
		},
	}
}

// Part is a part of each of the things.
func Part[T, V any](s Subject[T], at func(*T) *V) Value[V] {
	return Told(s, func(x T) V { return *at(&x) }, func(x T, v V) edit.Edit {
		*at(&x) = v
		return s.Put(x)
	})
}

// Of is a part of a value. Of several things that differ in the whole, another part makes
// the whole the same.
func Of[W, V any](whole Value[W], at func(*W) *V) Value[V] {
	return Value[V]{
		Read: func() (V, bool) {
			w, isSame := whole.Read()
			return *at(&w), isSame
		},
		Edit: func(v V) edit.Edit {
			w := whole.Now()
			*at(&w) = v
			return whole.Edit(w)
		},
	}
}

// Item is the i-th of a list; one that is gone reads as nothing and stays gone.
func Item[E any](list Value[[]E], i int) Value[E] {
	return Of(list, func(all *[]E) *E {
		if i >= len(*all) {
			return new(E)
		}
		*all = slices.Clone(*all)
		return &(*all)[i]
	})
}

// With is the edit that puts one more at the end of a list.
func With[E any](list Value[[]E], e E) edit.Edit {
	return list.Edit(append(slices.Clone(list.Now()), e))
}

// Without is the edit that takes the i-th out of a list.
func Without[E any](list Value[[]E], i int) edit.Edit {
	all := slices.Clone(list.Now())
	if i < len(all) {
		all = slices.Delete(all, i, i+1)
	}
	return list.Edit(all)
}
