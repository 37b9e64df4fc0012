package card

import (
	"cmp"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

func anchorOf(x *plan.Opening) *plan.Anchor { return &x.At }

// placed binds where the opening is: another place is a move.
func placed(s subject[plan.Opening]) subject[plan.Opening] {
	s.put = func(x plan.Opening) edit.Edit { return edit.MoveOpening{ID: x.ID, To: x.At} }
	return s
}

func (s subject[T]) isOnFace(at func(*T) *plan.Anchor) func() bool {
	return func() bool {
		now := s.now()
		return at(&now).Part == plan.PartFace
	}
}

// isFlat reports whether a height means nothing there.
func isFlat(at plan.Anchor) bool {
	return at.Part == plan.PartCeiling || at.Part == plan.PartFloor || at.Part == plan.PartTop
}

func openingFromLeft(s subject[plan.Opening]) row {
	return fromLeft(anchorOf)(placed(s)).showIf(s.isOnFace(anchorOf))
}

func openingFromRight(s subject[plan.Opening]) row {
	middle := func(plan.Opening) unit.Length { return 0 } // its place is that of its middle
	return fromRight(anchorOf, middle)(placed(s)).showIf(s.isOnFace(anchorOf))
}

// hasHeight reports whether the height of the opening means something.
func hasHeight(s subject[plan.Opening]) func() bool {
	return func() bool { return !isFlat(s.now().At) }
}

// heightOf binds the height: another is an edit of its own.
func heightOf(s subject[plan.Opening]) binding[plan.Height] {
	s.put = func(x plan.Opening) edit.Edit { return edit.SetHeight{ID: x.ID, Height: x.Height} }
	return bound(s, func(x *plan.Opening) *plan.Height { return &x.Height })
}

func heightRow(s subject[plan.Opening]) row {
	height := of(heightOf(s), func(h *plan.Height) *unit.Length { return &h.Value })
	f := field(s.Context, heightLabel(s), height, heights(s.Context))
	return row{f, func() {
		f.SetLabel(heightLabel(s))
		f.Update()
	}}.showIf(hasHeight(s))
}

// heightLabel says to which line of the box the height is given.
func heightLabel(s subject[plan.Opening]) string {
	switch s.now().Height.To {
	case plan.BoxBottom:
		return s.say("opening.height.bottom", "Height to bottom")
	case plan.BoxTop:
		return s.say("opening.height.top", "Height to top")
	}
	return s.say("opening.height.centre", "Height to center")
}

// restated binds a part of how the height is said: said another way, the box does not
// move.
func restated[V any](s subject[plan.Opening], at func(*plan.Height) *V) binding[V] {
	height := heightOf(s)
	return binding[V]{
		read: of(height, at).read,
		edit: func(v V) edit.Edit {
			o := s.now()
			said := o.Height
			*at(&said) = v
			place, _ := s.Index.Place(o.At)
			return height.edit(frame.Restated(&o, place.Room, said.To, said.From))
		},
	}
}

func heightLineRow(s subject[plan.Opening]) row {
	line := restated(s, func(h *plan.Height) *plan.BoxLine { return &h.To })
	return choiceOf(s.Context, s.say("opening.line", "Height goes to"), line, func(*Context) []option[plan.BoxLine] {
		return []option[plan.BoxLine]{
			{value: plan.BoxCentre, text: words.New("line.centre", "the center of the box")},
			{value: plan.BoxBottom, text: words.New("line.bottom", "the bottom of the box")},
			{value: plan.BoxTop, text: words.New("line.top", "the top of the box")},
		}
	}).showIf(hasHeight(s))
}

func heightFloorRow(s subject[plan.Opening]) row {
	floor := restated(s, func(h *plan.Height) *plan.Datum { return &h.From })
	floor.read = func() plan.Datum { return cmp.Or(s.now().Height.From, plan.FinishedFloor) }
	return choiceOf(s.Context, s.say("opening.datum", "Measured from"), floor, func(*Context) []option[plan.Datum] {
		return []option[plan.Datum]{
			{value: plan.FinishedFloor, text: words.New("datum.finished", "the finished floor")},
			{value: plan.Subfloor, text: words.New("datum.subfloor", "the subfloor")},
		}
	}).showIf(hasHeight(s))
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
func (c *Context) wallFrom(at plan.Anchor, axis sheetAxis) (side plan.ID, away unit.Length, ok bool) {
	if at.Part != plan.PartCeiling && at.Part != plan.PartFloor {
		return "", 0, false
	}
	room := c.Index.RoomOf(at.Host)
	if room == nil {
		return "", 0, false
	}
	for _, d := range frame.ToWalls(room, at.At) {
		isAcross := d.To.Y == d.From.Y
		if d.To.X < d.From.X && isAcross && axis == acrossSheet || d.To.Y < d.From.Y && !isAcross && axis == downSheet {
			return d.Wall, d.Length, true
		}
	}
	return "", 0, false
}

// fromWall is the distance of an opening in a ceiling or floor from a wall.
func fromWall(axis sheetAxis) rowOf[plan.Opening] {
	return func(s subject[plan.Opening]) row {
		from := func() (plan.ID, unit.Length, bool) { return s.wallFrom(s.now().At, axis) }
		f := field(s.Context, "", binding[unit.Length]{
			read: func() unit.Length {
				_, away, _ := from()
				return away
			},
			edit: func(l unit.Length) edit.Edit {
				at := s.now().At
				_, away, _ := from()
				by := geom.Point{X: l - away}
				if axis == downSheet {
					by = geom.Point{Y: l - away}
				}
				at.At = at.At.Add(by)
				return edit.MoveOpening{ID: s.id, To: at}
			},
		}, lengths(s.Context))
		return row{f, func() {
			side, _, _ := from()
			f.SetLabel(s.wallLabel(side))
			f.Update()
		}}.showIf(func() bool {
			_, _, ok := from()
			return ok
		})
	}
}

// wallLabel names the wall that a distance is from.
func (c *Context) wallLabel(side plan.ID) string {
	ref, ok := c.Index.Side(side)
	if !ok {
		return c.say("from-wall.none", "From the wall")
	}
	return c.say("from-wall", "From {0} wall", render.FaceNames(c.Index, ref.Room)[ref.At])
}
