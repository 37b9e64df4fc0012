package card

import (
	"slices"
	"strings"

	"studbay/app/look"
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

// apartRow is the distance of a thing on a face from another thing on it, which is kept
// with the thing until another is chosen.
func apartRow[T any](at func(*T) *plan.Anchor, from func(*T) *plan.ID) rowOf[T] {
	return func(s subject[T]) row {
		kept := func() plan.ID {
			now := s.now()
			return *from(&now)
		}
		choose := s.choice(s.say("apart.from", "Distance from"), s.say("apart.corners", "the corners"), func() []look.Option {
			options := []look.Option{{Label: s.say("apart.corners", "the corners"), Now: kept() == "", Do: func() { s.do(edit.MeasureFrom{ID: s.id}) }}}
			now := s.now()
			for _, other := range s.besides(at(&now).Host, s.id) {
				options = append(options, look.Option{Label: s.shortName(other), Now: kept() == other, Do: func() { s.do(edit.MeasureFrom{ID: s.id, From: other}) }})
			}
			return options
		})
		away := field(s.Context, "", binding[unit.Length]{
			read: func() unit.Length {
				l, _ := edit.Apart(s.Index.Plan(), s.id, kept())
				return l
			},
			edit: func(l unit.Length) edit.Edit { return edit.SetApart{ID: s.id, From: kept(), Away: l} },
		}, lengths(s.Context))
		shown := row{away, func() {
			away.SetLabel(s.say("apart.label", "From {0}", s.shortName(kept())))
			away.Update()
		}}.showIf(func() bool {
			_, ok := edit.Apart(s.Index.Plan(), s.id, kept())
			return ok
		})
		return column(look.Grid/2, row{choose.object, choose.update}, shown).showIf(s.isOnFace(at))
	}
}

// besides lists what else stands on a face.
func (c *Context) besides(host, but plan.ID) (all []plan.ID) {
	for _, o := range c.Index.OpeningsOn(host) {
		all = append(all, o.ID)
	}
	for _, b := range c.Index.BreaksOn(host) {
		all = append(all, b.ID)
	}
	for _, f := range c.Index.FixturesOn(host) {
		all = append(all, f.ID)
	}
	return slices.DeleteFunc(all, func(id plan.ID) bool { return id == but })
}

// shortName names a thing on a face in a word or two.
func (c *Context) shortName(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return o.Tag
	}
	return c.Voice.Say(p.Text(id))
}
