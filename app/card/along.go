package card

import (
	"slices"
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

// fromLeft is the distance of a thing from the left end of its face.
func fromLeft[T any](at func(*T) *plan.Anchor) bind.Maker[T] {
	return func(s bind.Subject[T]) bind.Row {
		along := func(x *T) *unit.Length { return &at(x).Along }
		return alongRow(s, at, bind.Part(s, along), false)
	}
}

// fromRight is the distance of the right edge of a thing of a width from the right end of
// its face.
func fromRight[T any](at func(*T) *plan.Anchor, width func(T) unit.Length) bind.Maker[T] {
	return func(s bind.Subject[T]) bind.Row {
		along := bind.Part(s, func(x *T) *unit.Length { return &at(x).Along })
		// other turns a distance from one end into that from the other.
		other := func(l unit.Length) unit.Length {
			now := s.Now()
			return plan.FromRight(lengthOf(s.Context, at(&now).Host), l, width(now))
		}
		return alongRow(s, at, bind.One(
			func() unit.Length { return other(along.Now()) },
			func(l unit.Length) edit.Edit { return along.Edit(other(l)) },
		), true)
	}
}

// alongRow is a field of a distance along a face, named after the corner it is from.
func alongRow[T any](s bind.Subject[T], at func(*T) *plan.Anchor, of bind.Value[unit.Length], isRight bool) bind.Row {
	return bind.Named(s.Context, func() string {
		now := s.Now()
		return cornerLabel(s.Context, at(&now).Host, isRight)
	}, of, bind.Lengths(s.Context))
}

// lengthOf returns how long a face is, 0 where it is none.
func lengthOf(c *bind.Context, side plan.ID) unit.Length {
	if ref, ok := c.Index.Side(side); ok {
		return ref.Line().Length()
	}
	return 0
}

// cornerLabel names the distance from one end of a face by the face that meets it
// there, as the unfolded room does: "From west corner". Where it has no plain name, or
// the thing is on no face, left and right are as seen standing in the room.
func cornerLabel(c *bind.Context, side plan.ID, isRight bool) string {
	if ref, ok := c.Index.Side(side); ok {
		n := len(ref.Room.Sides)
		next := ref.At + n - 1
		if isRight {
			next = ref.At + 1
		}
		if name := render.FaceNames(c.Index, ref.Room)[next%n]; strings.HasPrefix(name.ID, "wind.") {
			return c.Say("from-corner", "From {0} corner", name)
		}
	}
	if isRight {
		return c.Say("opening.from-right", "From right corner")
	}
	return c.Say("opening.from-left", "From left corner")
}

// apartRow is the distance of a thing on a face from another thing on it, which is kept
// with the thing until another is chosen.
func apartRow[T any](at func(*T) *plan.Anchor, from func(*T) *plan.ID) bind.Maker[T] {
	return func(s bind.Subject[T]) bind.Row {
		kept := bind.Told(s, func(x T) plan.ID { return *from(&x) }, func(_ T, id plan.ID) edit.Edit { return edit.MeasureFrom{ID: s.ID(), From: id} })
		corners := words.New("apart.corners", "the corners")
		choose := bind.Choice(s.Context, s.Say("apart.from", "Distance from"), s.Voice.Say(corners), kept, func() []bind.Option[plan.ID] {
			options := []bind.Option[plan.ID]{{Text: corners}}
			now := s.Now()
			for _, other := range besides(s.Context, at(&now).Host, s.ID()) {
				options = append(options, bind.Option[plan.ID]{Value: other, Text: words.New("plain", "{0}", s.TagOf(other))})
			}
			return options
		})
		apart := func() (unit.Length, bool) { return edit.Apart(s.Index.Plan(), s.ID(), kept.Now()) }
		away := bind.Named(s.Context, func() string { return s.Say("apart.label", "From {0}", s.TagOf(kept.Now())) }, bind.One(
			func() unit.Length { l, _ := apart(); return l },
			func(l unit.Length) edit.Edit { return edit.SetApart{ID: s.ID(), From: kept.Now(), Away: l} },
		), bind.Lengths(s.Context)).ShowIf(func() bool { _, ok := apart(); return ok })
		return bind.Column(look.Grid/2, choose, away).ShowIf(isOnFace(s, at))
	}
}

// besides lists what else stands on a face.
func besides(c *bind.Context, host, but plan.ID) (all []plan.ID) {
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
