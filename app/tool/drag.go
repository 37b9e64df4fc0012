package tool

import (
	"slices"
	"studbay/fill/frame"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// drag is one thing, or several, on the way to another place. Its edits are each from
// the plan as it was when the drag began.
type drag interface {
	name() words.Text
	// to returns the edit that brings it to the pointer, or nil where it cannot go
	// there, with what is shown meanwhile.
	to(Window, Pointer, *typing) (edit.Edit, Preview)
	// back returns the edit that puts it where it was.
	back() edit.Edit
}

// dragOf returns the drag of what was pressed, or nil for a rubber band.
func dragOf(t Window, p Pointer, under plan.ID) drag {
	p = through(t, p, under)
	if side, ok := chosenCorner(t, p); ok {
		ref, _ := t.Index().Side(side)
		return &dragCorner{side, ref.Side().Start}
	}
	if u, e := chosenEdge(t, p); e != noEdge {
		return &dragEdge{u, e}
	}
	if f, i, ok := chosenStud(t, p); ok && i >= 0 {
		return newDragStud(f, i)
	}
	along := alongOf(t, p, under)
	if u, ok := uprightOf(t.Plan(), under); ok && p.OnUnfold && along != nil {
		return &dragUpright{along, u, p.Height}
	}
	return along
}

// alongOf returns the drag of what was pressed as it goes in plan.
func alongOf(t Window, p Pointer, under plan.ID) drag {
	if isOneOfSeveral(t, under) {
		return dragSeveral(p, t.Selection())
	}
	switch under.Kind() {
	case plan.KindOpening:
		if o, _ := t.Plan().Opening(under); o != nil {
			return &dragOpening{o, p}
		}
	case plan.KindBreak:
		if b, _ := t.Plan().Break(under); b != nil && (!p.OnUnfold || b.At.Host == p.Side) {
			s, _ := faceOf(t.Index(), b.At.Host, p.At)
			return &dragBreak{b, s.along - b.At.Along, place.SwitchesOf(t.Index(), b)}
		}
	case plan.KindFixture:
		if f, _ := t.Plan().Fixture(under); f != nil {
			return newDragFixture(t, p, f)
		}
	case plan.KindSide:
		if ref, ok := t.Index().Side(under); ok && !p.OnUnfold {
			return &dragSide{under, ref.Line(), [2]plan.ID{t.NewID(plan.KindSide), t.NewID(plan.KindSide)}}
		}
	case plan.KindRoom:
		if r := t.Index().RoomOf(under); r != nil && slices.Contains(t.Selection(), under) {
			return &dragRoom{t.Index(), r, p.At}
		}
	}
	return nil
}

// chosenCorner returns the side at whose left end a corner of a chosen room, or of the
// room of a chosen side, is pointed at.
func chosenCorner(t Window, p Pointer) (plan.ID, bool) {
	if p.OnUnfold || p.Symbol != "" {
		return "", false
	}
	for _, id := range t.Selection() {
		room := id
		if ref, ok := t.Index().Side(id); ok && id.Kind() == plan.KindSide {
			room = ref.Room.ID
		}
		if room.Kind() != plan.KindRoom {
			continue
		}
		if side, ok := cornerAt(t.Index(), room, p); ok {
			return side, true
		}
	}
	return "", false
}

// dragOpening moves one opening, on its face, to another, or up and down in the
// unfolded room.
type dragOpening struct {
	was  *plan.Opening
	from Pointer
}

// isUp reports whether a drag in the unfolded room goes up or down more than along.
func (d *dragOpening) isUp(p Pointer) bool {
	return p.OnUnfold && (p.Side != d.from.Side || (p.Height-d.from.Height).Abs() > p.At.Distance(d.from.At))
}

func (d *dragOpening) name() words.Text { return edit.MoveOpening{}.Name() }

func (d *dragOpening) back() edit.Edit { return edit.ChangeOpening{Opening: *d.was} }

func (d *dragOpening) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	if typed.text != "" && typed.of == 0 && d.isUp(p) {
		typed.of = 'h' // the length typed is as the drag goes
	}
	s, ok := spotFor(t, p, typed, d.was.Kind, d.was.ID)
	preview := Preview{Moving: []plan.ID{d.was.ID}, Snap: s.snap}
	if !ok {
		return nil, preview
	}
	place, _ := t.Index().Place(s.anchor)
	if !s.snap.IsZero() {
		preview.SnapAt = &place.Foot
	}
	if s.anchor.Part == plan.PartFace {
		preview.Dims = distances(t, s.side, s.anchor.Along, d.was.ID)
	}
	move := told(edit.MoveOpening{ID: d.was.ID, To: s.anchor}, d.was, s.side, t, typed)
	if !p.OnUnfold || place.Room == nil {
		return move, preview
	}
	h := frame.HeightAt(d.was, place.Room, s.height)
	if l, ok := typed.size(t.System(), 'h'); ok {
		h.Value = l
	}
	return edit.Steps{Label: d.name(), Edits: []edit.Edit{move, edit.SetHeight{ID: d.was.ID, Height: h}}}, preview
}

// told is the move of a thing along a side that also keeps from which corner its distance was
// typed, where that is another than before.
func told(move edit.Edit, was plan.Thing, side onSide, t Window, typed *typing) edit.Edit {
	if _, isTyped := typed.place(t.System()); !isTyped || side.ref == nil || *plan.FromOf(was) == side.from {
		return move
	}
	return edit.Steps{Label: move.Name(), Edits: []edit.Edit{move, arrange.MeasureFrom{ID: was.Key(), From: side.from}}}
}

// dragBreak moves one break; grip is how far from its left end it was taken. With the
// control key its switches go along.
type dragBreak struct {
	was      *plan.Break
	grip     unit.Length
	switches []plan.ID
}

func (d *dragBreak) name() words.Text { return edit.MoveBreak{}.Name() }

// back takes no step: a gesture's edits are each from where it began.
func (d *dragBreak) back() edit.Edit { return arrange.Move{} }

func (d *dragBreak) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	var preview Preview
	side, ok := faceAt(t, p, func(s *plan.Side) bool { return s.Kind == plan.SideWall || s.Kind == plan.SideGlass })
	if !ok {
		return nil, preview
	}
	side = d.ownFace(t, p, side)
	at := side.along - d.grip
	if l, ok := typed.place(t.System()); ok {
		side, at, preview.Snap = fromCorner(t, side, l, d.was.Width)
	} else if !p.Shift {
		at, preview.Snap = restWithin(breakStops(side, d.was.Width), at, p.Reach, side.length()-d.was.Width, t.System().Placing())
	}
	moved := *d.was
	moved.At = plan.OnFace(side.id(), between(at, 0, side.length()-d.was.Width))
	preview.Lines, preview.Dims = breakLines(t, side, moved)
	if len(d.switches) > 0 && p.Control {
		return arrange.MoveDoor{ID: d.was.ID, To: moved.At, With: d.switches}, preview
	}
	return told(edit.MoveBreak{ID: d.was.ID, To: moved.At}, d.was, side, t, typed), preview
}

// ownFace returns the face that holds the break where the pointer is at the other face of
// the same partition: a door dragged along its wall keeps the way it swings.
func (d *dragBreak) ownFace(t Window, p Pointer, side onSide) onSide {
	for _, c := range t.Index().Cuts(side.id()) {
		if c.Break.ID == d.was.ID && !c.IsOwn {
			if own, ok := faceOf(t.Index(), c.Break.At.Host, p.At); ok {
				return own
			}
		}
	}
	return side
}

// dragFixture moves one fixture; grip is from its corner, or its centre on a floor, to
// where it was taken.
type dragFixture struct {
	was  *plan.Fixture
	grip geom.Point
}

func newDragFixture(t Window, p Pointer, f *plan.Fixture) *dragFixture {
	if f.At.Part == plan.PartFace {
		s, _ := faceOf(t.Index(), f.At.Host, p.At)
		return &dragFixture{f, geom.Point{X: s.along - f.At.Along}}
	}
	return &dragFixture{f, p.At.Sub(f.At.At)}
}

func (d *dragFixture) name() words.Text { return edit.MoveFixture{}.Name() }

func (d *dragFixture) back() edit.Edit { return edit.MoveFixture{ID: d.was.ID, To: d.was.At} }

func (d *dragFixture) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	var preview Preview
	var side onSide
	moved := *d.was
	switch d.was.At.Part {
	case plan.PartFace:
		var ok bool
		if side, ok = faceAt(t, p, nil); !ok {
			return nil, preview
		}
		at := side.along - d.grip.X
		if l, ok := typed.place(t.System()); ok {
			side, at, preview.Snap = fromCorner(t, side, l, d.was.Width)
		} else if !p.Shift {
			at, preview.Snap = restWithin(fixtureStops(t.Index(), side, d.was.Width, d.was.ID), at, p.Reach, side.length()-d.was.Width, t.System().Placing())
		}
		moved.At = plan.OnFace(side.id(), between(at, 0, side.length()-d.was.Width))
		preview.Dims = besides(t, side, moved.At.Along, moved.At.Along+moved.Width)
	case plan.PartFloor, plan.PartCeiling:
		at := p.At.Sub(d.grip)
		room := roomAt(t.Index(), t.Level(), at)
		if room == nil {
			return nil, preview
		}
		if !p.Shift {
			p.At = at
			at, preview.Snap = flatRest(t, p, room, "")
		}
		moved.At.Host, moved.At.At = room.ID, at
	default:
		return nil, preview // what stands on another fixture is moved by its card
	}
	outline, _ := t.Index().Footprint(&moved)
	preview.Lines = append(preview.Lines, outline.Edges()...)
	return told(edit.MoveFixture{ID: d.was.ID, To: moved.At}, d.was, side, t, typed), preview
}
