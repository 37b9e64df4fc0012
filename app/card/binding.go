package card

import (
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// subject is the thing of the plan that a card is of.
type subject[T any] struct {
	*Context // of the card, as it is shown now
	id       plan.ID
	get      func(*index.Index, plan.ID) *T // nil: it is gone
	put      func(T) edit.Edit              // puts a changed copy in its place
}

// now returns a copy of the thing; of one that is gone, nothing.
func (s subject[T]) now() (copied T) {
	if x := s.get(s.Index, s.id); x != nil {
		copied = *x
	}
	return copied
}

// whole binds all of the thing.
func (s subject[T]) whole() binding[T] { return binding[T]{s.now, s.put} }

// binding joins a value of the plan to a row of a card: how it is read, and the edit
// that puts another in its place.
type binding[V any] struct {
	read func() V
	edit func(V) edit.Edit
}

// of binds a part of what is bound.
func of[T, V any](whole binding[T], at func(*T) *V) binding[V] {
	return binding[V]{
		read: func() V {
			x := whole.read()
			return *at(&x)
		},
		edit: func(v V) edit.Edit {
			x := whole.read()
			*at(&x) = v
			return whole.edit(x)
		},
	}
}

// bound binds a part of a thing.
func bound[T, V any](s subject[T], at func(*T) *V) binding[V] { return of(s.whole(), at) }

// item binds the i-th of a list; one that is gone reads as nothing and stays gone.
func item[E any](list binding[[]E], i int) binding[E] {
	return binding[E]{
		read: func() (e E) {
			if all := list.read(); i < len(all) {
				e = all[i]
			}
			return e
		},
		edit: func(e E) edit.Edit {
			all := slices.Clone(list.read())
			if i < len(all) {
				all[i] = e
			}
			return list.edit(all)
		},
	}
}

// with is the edit that puts one more at the end of a list.
func with[E any](list binding[[]E], e E) edit.Edit {
	return list.edit(append(slices.Clone(list.read()), e))
}

// without is the edit that takes the i-th out of a list.
func without[E any](list binding[[]E], i int) edit.Edit {
	all := slices.Clone(list.read())
	if i < len(all) {
		all = slices.Delete(all, i, i+1)
	}
	return list.edit(all)
}

// try makes an edit; its refusal is said in the voice of the window.
func (c *Context) try(e edit.Edit) error { return c.fault(c.Window.Do(e)) }

// do makes an edit whose refusal has no field to stand beside: the window shows it.
func (c *Context) do(e edit.Edit) { _ = c.Window.Do(e) }
