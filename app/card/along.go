package card

import (
	"strings"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/render"
)

// fromLeft is the distance of a thing from the left end of its face.
func fromLeft[T any](at func(*T) *plan.Anchor) rowOf[T] {
	return func(s subject[T]) row {
		along := func(x *T) *unit.Length { return &at(x).Along }
		return s.alongRow(bound(s, at), bound(s, along), false)
	}
}

// fromRight is the distance of the right edge of a thing of a width from the right end of
// its face.
func fromRight[T any](at func(*T) *plan.Anchor, width func(T) unit.Length) rowOf[T] {
	return func(s subject[T]) row {
		anchor := bound(s, at)
		// other turns a distance from one end into that from the other.
		other := func(l unit.Length) unit.Length { return s.lengthOf(anchor.read().Host) - width(s.now()) - l }
		return s.alongRow(anchor, binding[unit.Length]{
			read: func() unit.Length { return other(anchor.read().Along) },
			edit: func(l unit.Length) edit.Edit {
				a := anchor.read()
				a.Along = other(l)
				return anchor.edit(a)
			},
		}, true)
	}
}

// alongRow is a field of a distance along a face, named after the corner it is from.
func (c *Context) alongRow(at binding[plan.Anchor], of binding[unit.Length], isRight bool) row {
	f := field(c, c.cornerLabel(at.read().Host, isRight), of, lengths(c))
	return row{f, func() {
		f.SetLabel(c.cornerLabel(at.read().Host, isRight))
		f.Update()
	}}
}

// lengthOf returns how long a face is, 0 where it is none.
func (c *Context) lengthOf(side plan.ID) unit.Length {
	if ref, ok := c.Index.Side(side); ok {
		return ref.Line().Length()
	}
	return 0
}

// cornerLabel names the distance from one end of a face by the face that meets it
// there, as the unfolded room does: "From west corner". Where it has no plain name, or
// the thing is on no face, left and right are as seen standing in the room.
func (c *Context) cornerLabel(side plan.ID, isRight bool) string {
	if ref, ok := c.Index.Side(side); ok {
		n := len(ref.Room.Sides)
		next := ref.At + n - 1
		if isRight {
			next = ref.At + 1
		}
		if name := render.FaceNames(c.Index, ref.Room)[next%n]; strings.HasPrefix(name.ID, "wind.") {
			return c.say("from-corner", "From {0} corner", name)
		}
	}
	if isRight {
		return c.say("opening.from-right", "From right corner")
	}
	return c.say("opening.from-left", "From left corner")
}
