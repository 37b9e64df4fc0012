package card

import (
	"slices"
	"strings"
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

// fromLeft is the distance of a thing from the left end of the wall that it is on.
func fromLeft[T any](at func(*T) *plan.Anchor) bind.Maker[T] {
	return fromEnd(at, func(T) unit.Length { return 0 }, false)
}

// fromRight is the distance of the right edge of a thing of a width from the right end of
// the wall that it is on.
func fromRight[T any](at func(*T) *plan.Anchor, width func(T) unit.Length) bind.Maker[T] {
	return fromEnd(at, width, true)
}

// fromEnd is a distance from an end of the wall that a thing is on, named after the corner
// there.
func fromEnd[T any](at func(*T) *plan.Anchor, width func(T) unit.Length, isRight bool) bind.Maker[T] {
	return func(s bind.Subject[T]) bind.Row {
		away := bind.Told(s, func(x T) unit.Length {
			end := wallEnd(s.Context, at(&x).Host, isRight)
			if isRight {
				return plan.FromRight(end.At, at(&x).Along, width(x))
			}
			return at(&x).Along - end.At
		}, func(x T, l unit.Length) edit.Edit {
			a := at(&x)
			a.Host, a.Along = frame.OnWall(s.Index, a.Host, wallEnd(s.Context, a.Host, isRight).AwayFrom(l, width(x)))
			return s.Put(x)
		})
		return bind.Named(s.Context, func() string {
			now := s.Now()
			return cornerLabel(s.Context, at(&now).Host, isRight)
		}, away, bind.Lengths(s.Context))
	}
}

// wallEnd is where the wall of a face ends, left or right: past the face where the wall goes
// straight on.
func wallEnd(c *bind.Context, side plan.ID, isRight bool) frame.Mark {
	f, ok := frame.FaceOf(c.Index, side)
	if !ok {
		return frame.Mark{IsRight: isRight}
	}
	left, right := f.Ends()
	if isRight {
		return right
	}
	return left
}

// lengthOf returns how long a face is, 0 where it is none.
func lengthOf(c *bind.Context, side plan.ID) unit.Length {
	if ref, ok := c.Index.Side(side); ok {
		return ref.Line().Length()
	}
	return 0
}

// cornerLabel names the distance from one end of the wall of a face.
func cornerLabel(c *bind.Context, side plan.ID, isRight bool) string {
	switch wind, beyond, ok := windAt(c, side, isRight); {
	case ok && beyond != nil:
		return c.Say("from-corner.beyond", "From {0} corner in {1}", wind, c.RoomName(beyond))
	case ok:
		return c.Say("from-corner", "From {0} corner", wind)
	}
	if isRight {
		return c.Say("opening.from-right", "From right corner")
	}
	return c.Say("opening.from-left", "From left corner")
}

// cornerName names one end of the wall of a face.
func cornerName(c *bind.Context, side plan.ID, isRight bool) string {
	switch wind, beyond, ok := windAt(c, side, isRight); {
	case ok && beyond != nil:
		return c.Say("corner.beyond", "{0} corner in {1}", wind, c.RoomName(beyond))
	case ok:
		return c.Say("corner.wind", "{0} corner", wind)
	}
	if isRight {
		return c.Say("corner.right", "right corner")
	}
	return c.Say("corner.left", "left corner")
}

// windAt names one end of the wall of a face by the face that meets it there, as the
// unfolded room does, and the room beyond where the wall ends in that. Where it has no
// plain name, or the thing is on no face, left and right are as seen standing in the room.
func windAt(c *bind.Context, side plan.ID, isRight bool) (wind words.Text, beyond *plan.Room, ok bool) {
	ref, ok := c.Index.Side(side)
	if !ok {
		return wind, nil, false
	}
	end := wallEnd(c, side, isRight)
	if end.Past != nil && end.Past.Room.ID != ref.Room.ID {
		beyond = end.Past.Room
	}
	wind = render.EndName(c.Index, ref, end)
	return wind, beyond, strings.HasPrefix(wind.ID, "wind.")
}

// distance is how the place of a thing along its face is told: where it stands, from what
// its distance is kept, and how wide it is to the right of its place.
type distance[T any] struct {
	at    func(*T) *plan.Anchor
	from  func(*T) *plan.ID
	width func(T) unit.Length
	moved func(bind.Subject[T]) bind.Subject[T] // to put it at another place; nil: as any change
}

// kept is from what the distance of a thing is told: the face at its right end, another
// thing on its face, or else its left corner.
func (d distance[T]) kept(s bind.Subject[T]) func() plan.ID {
	return func() plan.ID {
		now := s.Now()
		return frame.KeptFrom(s.Index, d.at(&now).Host, *d.from(&now))
	}
}

// corners are the fields of the distance from either corner.
func (d distance[T]) corners(s bind.Subject[T]) (left, right bind.Row) {
	if d.moved != nil {
		s = d.moved(s)
	}
	return fromLeft(d.at)(s), fromRight(d.at, d.width)(s)
}

// row is the one distance that is kept, and the choice from what it is told.
func (d distance[T]) row(s bind.Subject[T]) bind.Row {
	kept := d.kept(s)
	now := func() plan.Anchor { x := s.Now(); return *d.at(&x) }
	corner := func(isRight bool) words.Text {
		return words.New("plain", "{0}", cornerName(s.Context, now().Host, isRight))
	}
	choose := bind.Choice(s.Context, s.Say("apart.from", "Distance from"), "",
		bind.One(kept, func(id plan.ID) edit.Edit { return arrange.MeasureFrom{ID: s.ID(), From: id} }),
		func() []bind.Option[plan.ID] {
			options := []bind.Option[plan.ID]{{Text: corner(false)}}
			if right := frame.RightOf(s.Index, now().Host); right != "" {
				options = append(options, bind.Option[plan.ID]{Value: right, Text: corner(true)})
			}
			for _, other := range besides(s.Context, now().Host, s.ID()) {
				options = append(options, bind.Option[plan.ID]{Value: other, Text: words.New("plain", "{0}", s.TagOf(other))})
			}
			return options
		})
	apart := func() (unit.Length, bool) { return arrange.Apart(s.Index.Plan(), s.ID(), kept()) }
	away := bind.Named(s.Context, func() string { return s.Say("apart.label", "From {0}", s.TagOf(kept())) }, bind.One(
		func() unit.Length { l, _ := apart(); return l },
		func(l unit.Length) edit.Edit { return arrange.SetApart{ID: s.ID(), From: kept(), Away: l} },
	), bind.Lengths(s.Context))
	left, right := d.corners(s)
	return bind.Column(look.Grid/2, choose,
		left.ShowIf(func() bool { return kept() == "" }),
		right.ShowIf(func() bool { return kept().Kind() == plan.KindSide }),
		away.ShowIf(func() bool { _, ok := apart(); return ok }),
	).ShowIf(isOnFace(s, d.at))
}

// others are the distances that are not kept.
func (d distance[T]) others(s bind.Subject[T]) bind.Row {
	kept := d.kept(s)
	left, right := d.corners(s)
	return bind.Column(look.Grid/2,
		left.ShowIf(func() bool { return kept() != "" }),
		right.ShowIf(func() bool { return kept().Kind() != plan.KindSide }),
	).ShowIf(isOnFace(s, d.at))
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
