package frame

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// HoldIn returns how the box of an opening that is not on a face is held: in a ceiling, a
// floor, or on a cabinet.
func HoldIn(o *plan.Opening, room *plan.Room) (h Hold) {
	h.State = plan.StudAssumed
	if o.At.Part == plan.PartCeiling {
		if h.Bay, h.HasBay = JoistBay(room, o.At.At); h.HasBay {
			h.State = stateOf(h.Bay, plan.StudMeasured)
		}
	}
	box := BoxOf(o.Assembly)
	switch {
	case box == nil:
		if o.Assembly.Box == "" && o.Assembly.Code == "" && comesWithItsOwn(o) {
			h.By = ByItsOwn
		}
	case o.At.Part == plan.PartFloor:
		h.By = ByFloor
	case o.At.Part != plan.PartCeiling:
		h.By = ByBoard // the panel of a cabinet
	default:
		if h.By = wayOf(box.Mounting); h.By == ByBlock {
			h.holdAtJoist(o, room)
		}
	}
	return h
}

// holdAtJoist says of a box in a ceiling that wants a joist whether it has one, and what
// stands in for it.
func (h *Hold) holdAtJoist(o *plan.Opening, room *plan.Room) {
	h.By = ByJoist
	if off, ok := JoistOff(room, o); !ok || off <= AcrossJoists(room, o)/2+StudThick/2+Touching {
		return
	}
	h.By = ByBlock
	if h.Bay.Left != nil && h.Bay.Right != nil {
		h.Block = &Block{Length: h.Bay.Clear(), IsOverhead: true}
	}
}

// AcrossJoists returns how much the box of an opening in a ceiling takes square to the joists
// of it. Boxes are square to the sheet: under joists that run aslant it is their longer side.
func AcrossJoists(room *plan.Room, o *plan.Opening) unit.Length {
	front, line := FrontOf(o), room.Segment(room.SideAt(room.Joists.Along))
	switch {
	case line.A.Y == line.B.Y:
		return front.Height
	case line.A.X == line.B.X:
		return front.Width
	}
	return max(front.Width, front.Height)
}

// JoistOff returns how far the centre of an opening in a ceiling is from that of the
// nearest joist. It reports false where the joists are not known.
func JoistOff(room *plan.Room, o *plan.Opening) (off unit.Length, ok bool) {
	below, above, out, ok := joistsAt(room, o.At.At)
	switch {
	case !ok:
		return 0, false
	case below == nil:
		return above.At - out, true
	case above == nil:
		return out - below.At, true
	}
	return min(out-below.At, above.At-out), true
}

// JoistBay returns the space between two joists of a ceiling that a place is in, by their
// near faces, as far from the wall that they run beside; Left is the joist nearer to it. Of
// joists that were taped one by one the place may have one at one hand only: the bay ends at
// the place there. It reports false where the joists are not known.
func JoistBay(room *plan.Room, at geom.Point) (b Bay, ok bool) {
	below, above, out, ok := joistsAt(room, at)
	if !ok {
		return Bay{}, false
	}
	b = Bay{From: out, To: out, Left: below, Right: above}
	if below != nil {
		b.From = below.Right()
	}
	if above != nil {
		b.To = above.Left()
	}
	return b, true
}

// joistsAt returns the joists to either hand of a place in a ceiling, nil past the first and
// the last of those told one by one, and how far out from the wall that they run beside the
// place is. One right above the place is the first of the two. A layout goes on past the
// walls of the room: joists are laid over them. It reports false where nobody tells the
// joists.
func joistsAt(room *plan.Room, at geom.Point) (below, above *Stud, out unit.Length, ok bool) {
	if room == nil || room.Joists.Spacing <= 0 && len(room.Joists.Places) == 0 {
		return nil, nil, 0, false
	}
	i := room.SideAt(room.Joists.Along)
	if i < 0 {
		return nil, nil, 0, false
	}
	_, out = geom.FrameOf(room.Segment(i)).Project(at)
	for _, p := range room.Joists.Places {
		if joist := (Stud{At: p.At, Kind: CommonStud, State: p.State}); p.At <= out {
			below = &joist
		} else if above == nil {
			above = &joist
		}
	}
	if len(room.Joists.Places) > 0 {
		return below, above, out, true
	}
	spacing, state := room.Joists.Spacing, plan.StudStated
	if room.Joists.First == 0 {
		state = plan.StudAssumed
	}
	past := (out - cmp.Or(room.Joists.First, spacing)) % spacing
	if past < 0 {
		past += spacing
	}
	below = &Stud{At: out - past, Kind: CommonStud, State: state}
	return below, &Stud{At: out - past + spacing, Kind: CommonStud, State: state}, out, true
}

// JoistsBetween lists how far from the wall that the joists of a ceiling run beside their
// centers are, from one distance to another, in order; nothing where they are not known. What
// is below zero lies on the other side of that wall's line.
func JoistsBetween(room *plan.Room, from, to unit.Length) (all []unit.Length) {
	if _, _, _, ok := joistsAt(room, geom.Point{}); !ok {
		return nil
	}
	spacing := room.Joists.Spacing
	if len(room.Joists.Places) > 0 {
		for _, p := range room.Joists.Places {
			if from <= p.At && p.At <= to {
				all = append(all, p.At)
			}
		}
		return all
	}
	first := cmp.Or(room.Joists.First, spacing)
	for at := first - (first-from)/spacing*spacing; at <= to; at += spacing {
		if at >= from {
			all = append(all, at)
		}
	}
	return all
}

// JoistsTaped returns the edit that puts the joists of a ceiling where a tape found them, from
// the wall that they run beside; none leaves them to their spacing.
func JoistsTaped(room plan.Room, at []unit.Length) edit.Edit {
	var places []plan.StudPlace
	for _, l := range at {
		places = append(places, plan.StudPlace{At: l, State: plan.StudMeasured})
	}
	room.Joists.Places = ordered(places)
	return edit.ChangeRoom{Room: room}
}

// FromJoistWall returns how far a place in a ceiling is from the wall that its joists run
// beside. It reports false where the joists are not known.
func FromJoistWall(room *plan.Room, at geom.Point) (unit.Length, bool) {
	_, _, out, ok := joistsAt(room, at)
	return out, ok
}

// JoistIn returns the joist that stands in the place of a box or a housing in a ceiling, and
// how much of its width that takes: none where it is held under the framing or on the surface,
// or touches a joist no deeper than Touching.
func JoistIn(room *plan.Room, o *plan.Opening) (in Stud, by unit.Length) {
	below, above, out, ok := joistsAt(room, o.At.At)
	if !ok || !isSetIn(o) {
		return Stud{}, 0
	}
	half := AcrossJoists(room, o) / 2
	for _, s := range []*Stud{below, above} {
		if s == nil {
			continue
		}
		if over := min(out+half, s.Right()) - max(out-half, s.Left()); over > max(by, Touching) {
			in, by = *s, over
		}
	}
	return in, by
}

// isSetIn reports whether an opening in a ceiling takes the space between joists. A hole no
// wider than a joist is bored.
func isSetIn(o *plan.Opening) bool {
	box := BoxOf(o.Assembly)
	if box == nil {
		return IsHoused(o) && FrontOf(o).Width > StudThick
	}
	switch box.Mounting {
	case part.Joist, part.Surface, part.InMasonry, part.OnRaceways, part.InFloor:
		return false
	}
	return true
}

// BesideJoists lists where the center of a box in a ceiling could come to stand against the
// joists of its bay and the one in its place, the nearest first: whole steps of a tape from the
// wall that they run beside, within the room and in no joist. There are none under joists that
// run aslant to the sheet.
func BesideJoists(room *plan.Room, o *plan.Opening, step unit.Length) (places []geom.Point) {
	below, above, out, ok := joistsAt(room, o.At.At)
	if !ok {
		return nil
	}
	line, half := room.Segment(room.SideAt(room.Joists.Along)), AcrossJoists(room, o)/2
	if line.A.X != line.B.X && line.A.Y != line.B.Y {
		return nil
	}
	into, outline := geom.FrameOf(line).Out(), room.Outline()
	var outs []unit.Length
	for _, s := range []*Stud{below, above} {
		if s != nil {
			outs = append(outs, s.Left()-half, s.Right()+half)
		}
	}
	slices.SortStableFunc(outs, func(a, b unit.Length) int { return cmp.Compare((a - out).Abs(), (b - out).Abs()) })
	for _, want := range outs {
		to := OnTape(want, step)[0]
		at := o.At.At
		if line.A.Y == line.B.Y {
			at.Y += signed(into.Y, to-out)
		} else {
			at.X += signed(into.X, to-out)
		}
		moved := *o
		moved.At.At = at
		_, away := outline.Nearest(at)
		if _, by := JoistIn(room, &moved); by == 0 && to != out && outline.InteriorContains(at) && away >= half {
			places = append(places, at)
		}
	}
	return places
}

// signed returns a length with the sign of a way.
func signed(way, l unit.Length) unit.Length {
	if way < 0 {
		return -l
	}
	return l
}
