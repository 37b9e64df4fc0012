package card

import (
	"cmp"
	"studbay/app/card/bind"
	"studbay/fill/flat"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

func anchorOf(x *plan.Opening) *plan.Anchor { return &x.At }

// placed is an opening of which another place is a move.
func placed(s opening) opening {
	s.Put = func(x plan.Opening) edit.Edit { return edit.MoveOpening{ID: x.ID, To: x.At} }
	return s
}

func isOnFace[T any](s bind.Subject[T], at func(*T) *plan.Anchor) func() bool {
	return func() bool {
		now := s.Now()
		return at(&now).Part == plan.PartFace
	}
}

var openingPlace = distance[plan.Opening]{
	at:    anchorOf,
	from:  func(x *plan.Opening) *plan.ID { return &x.From },
	width: func(plan.Opening) unit.Length { return 0 }, // its place is that of its middle
	moved: placed,
}

// hasHeight reports whether the height of the opening means something.
func hasHeight(o plan.Opening) bool {
	return o.At.Part != plan.PartCeiling && o.At.Part != plan.PartFloor && o.At.Part != plan.PartTop
}

func heightRow(s opening) bind.Row {
	height := bind.Told(s, func(o plan.Opening) unit.Length { return o.Height.Value }, func(o plan.Opening, l unit.Length) edit.Edit {
		return arrange.SetHeights{Things: []plan.ID{o.ID}, Value: l}
	})
	line := bind.Part(s, func(o *plan.Opening) *plan.BoxLine { return &o.Height.To })
	return bind.Named(s.Context, func() string { return heightLabel(s.Context, line) }, height, bind.Heights(s.Context)).ShowIf(s.Only(hasHeight).Has)
}

// heightLabel says to which line of the box the height is given.
func heightLabel(c *bind.Context, of bind.Value[plan.BoxLine]) string {
	switch line, isSame := of.Read(); {
	case !isSame:
		return c.Say("opening.height.any", "Height")
	case line == plan.BoxBottom:
		return c.Say("opening.height.bottom", "Height to bottom")
	case line == plan.BoxTop:
		return c.Say("opening.height.top", "Height to top")
	}
	return c.Say("opening.height.centre", "Height to center")
}

// restated is a part of how the height is said: said another way, the box does not move.
func restated[V any](s opening, at func(*plan.Height) *V) bind.Value[V] {
	return bind.Told(s, func(o plan.Opening) V { return *at(&o.Height) }, func(o plan.Opening, v V) edit.Edit {
		said := o.Height
		*at(&said) = v
		place, _ := s.Index.Place(o.At)
		return edit.SetHeight{ID: o.ID, Height: frame.Restated(&o, place.Room, said.To, said.From)}
	})
}

func heightLineRow(s opening) bind.Row {
	line := restated(s, func(h *plan.Height) *plan.BoxLine { return &h.To })
	return bind.Choice(s.Context, s.Say("opening.line", "Height goes to"), "", line, func() []bind.Option[plan.BoxLine] {
		return []bind.Option[plan.BoxLine]{
			{Value: plan.BoxCentre, Text: words.New("line.centre", "the center of the box")},
			{Value: plan.BoxBottom, Text: words.New("line.bottom", "the bottom of the box")},
			{Value: plan.BoxTop, Text: words.New("line.top", "the top of the box")},
		}
	}).ShowIf(s.Only(hasHeight).Has)
}

func heightFloorRow(s opening) bind.Row {
	floor := restated(s, func(h *plan.Height) *plan.Datum { return &h.From })
	floor = bind.One(func() plan.Datum { return cmp.Or(s.Now().Height.From, plan.FinishedFloor) }, floor.Edit)
	return bind.Choice(s.Context, s.Say("opening.datum", "Measured from"), "", floor, func() []bind.Option[plan.Datum] {
		return []bind.Option[plan.Datum]{
			{Value: plan.FinishedFloor, Text: words.New("datum.finished", "the finished floor")},
			{Value: plan.Subfloor, Text: words.New("datum.subfloor", "the subfloor")},
		}
	}).ShowIf(s.Only(hasHeight).Has)
}

// sheetAxis is one of the two ways that an opening in a ceiling or floor is measured: to the
// wall at the left of the sheet, or to the one above it.
type sheetAxis int

// The axes.
const (
	acrossSheet sheetAxis = iota
	downSheet
)

// wallFrom returns the wall that an opening in a ceiling or floor is measured from, and how
// far it is, or false where it has none that way.
func wallFrom(c *bind.Context, at plan.Anchor, axis sheetAxis) (side plan.ID, away unit.Length, ok bool) {
	room := c.Index.RoomOf(at.Host)
	if room == nil || at.Part != plan.PartCeiling && at.Part != plan.PartFloor {
		return "", 0, false
	}
	for _, d := range flat.ToWalls(room, at.At) {
		isAcross := d.To.Y == d.From.Y
		if d.To.X < d.From.X && isAcross && axis == acrossSheet || d.To.Y < d.From.Y && !isAcross && axis == downSheet {
			return d.Wall, d.Length, true
		}
	}
	return "", 0, false
}

// fromWall is the distance of an opening in a ceiling or floor from a wall.
func fromWall(axis sheetAxis) bind.Maker[plan.Opening] {
	return func(s opening) bind.Row {
		from := func() (plan.ID, unit.Length, bool) { return wallFrom(s.Context, s.Now().At, axis) }
		label := func() string {
			side, _, _ := from()
			return wallLabel(s.Context, side)
		}
		return bind.Named(s.Context, label, bind.One(func() unit.Length {
			_, away, _ := from()
			return away
		}, func(l unit.Length) edit.Edit {
			at := s.Now().At
			_, away, _ := from()
			by := geom.Point{X: l - away}
			if axis == downSheet {
				by = geom.Point{Y: l - away}
			}
			at.At = at.At.Add(by)
			return edit.MoveOpening{ID: s.ID(), To: at}
		}), bind.Lengths(s.Context)).ShowIf(func() bool {
			_, _, ok := from()
			return ok
		})
	}
}

// wallLabel names the wall that a distance is from.
func wallLabel(c *bind.Context, side plan.ID) string {
	ref, ok := c.Index.Side(side)
	if !ok {
		return c.Say("from-wall.none", "From the wall")
	}
	return c.Say("from-wall", "From {0} wall", render.FaceNames(c.Index, ref.Room)[ref.At])
}
