package fill

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// edges says whether a face ends where its side does: not where the wall goes straight on.
type edges struct{ left, right bool }

// edgesOf looks at the sides before and after one.
func edgesOf(v plan.RoomView, i int) edges {
	before, here, after := v.Sides[(i+len(v.Sides)-1)%len(v.Sides)], v.Sides[i], v.Sides[(i+1)%len(v.Sides)]
	return edges{!goesOn(before, here), !goesOn(here, after)}
}

// goesOn reports whether a wall goes straight on from one side to the next.
func goesOn(a, b plan.SideView) bool {
	return a.Side.Kind == plan.SideWall && b.Side.Kind == plan.SideWall &&
		geom.Orientation(a.Line.A, a.Line.B, b.Line.B) == 0 && !geom.OnSegment(b.Line.B, a.Line.A, a.Line.B)
}

// pastEdge finds a box that runs past an end of its face, into the floor or into the
// ceiling, where none can be built. Its remedies put it where nothing else is.
func pastEdge(v plan.RoomView, s *plan.SideView, ends edges, boxes []placedBox, at placedBox, grid unit.Length) (found []Finding) {
	tell := func(message words.Text, fits bool, moved rect, remedy Remedy) {
		f := placeFinding(v, s, at.o)
		f.Severity, f.Message = Stop, message
		f.Why = words.New("rule.box-place.edge.why", "There the wall ends: no box can be set in it.")
		if fits && isFree(s, boxes, at.o, moved) {
			f.Remedies = []Remedy{remedy}
		}
		found = append(found, f)
	}
	left, right := ends.left && at.left < 0, ends.right && at.right > s.Length
	if left || right {
		half := setIn(at.right-at.left, s.Length, grid)
		along, label := half, words.New("rule.box-place.left", "Set it {0} from the left corner", half)
		if !left {
			along, label = s.Length-half, words.New("rule.box-place.right", "Set it {0} from the right corner", half)
		}
		tell(pastCorner(at.o, max(-at.left, at.right-s.Length)), at.right-at.left <= s.Length, at.moved(along-at.o.At.Along), setAlong(at.o, along, label))
	}
	high := at.top - at.bottom
	low, isLow := setIn(high, v.Room.Ceiling, grid), v.Room.Ceiling == 0 || high <= v.Room.Ceiling
	switch over := at.top - v.Room.Ceiling; {
	case at.bottom < 0:
		tell(words.New("rule.box-place.floor", "{0} runs into the floor by {1}", at.o.Tag, words.Height(-at.bottom)),
			isLow, at.centred(low), setCentre(at.o, v.Room, low, high))
	case v.Room.Ceiling > 0 && over > 0:
		tell(words.New("rule.box-place.ceiling", "{0} runs into the ceiling by {1}", at.o.Tag, words.Height(over)),
			isLow, at.centred(v.Room.Ceiling-low), setCentre(at.o, v.Room, v.Room.Ceiling-low, high))
	}
	return found
}

// setIn returns how far from an edge the middle of a box of a size is set: half of it, up
// to the step, but in the middle where there is no room for that.
func setIn(size, room, step unit.Length) unit.Length {
	half := (size + 2*step - 1) / (2 * step) * step
	if 2*half > room && size <= room {
		return room / 2
	}
	return half
}

// isFree reports whether a box may stand so: in no break and on no other box.
func isFree(s *plan.SideView, boxes []placedBox, o *plan.Opening, at rect) bool {
	return !slices.ContainsFunc(boxes, func(b placedBox) bool { return b.o != o && b.meets(at) }) &&
		!slices.ContainsFunc(s.Cuts, func(c plan.Cut) bool { return at.meets(rect{c.From, c.To, c.Break.Sill, c.Break.Head}) })
}

func pastCorner(o *plan.Opening, by unit.Length) words.Text {
	return words.New("rule.box-place.corner", "{0} runs past the corner by {1}", o.Tag, words.Height(by))
}

func setAlong(o *plan.Opening, along unit.Length, label words.Text) Remedy {
	return Remedy{Label: label, Edit: plan.MoveOpening{ID: o.ID, To: plan.OnFace(o.At.Host, along)}}
}

// setCentre sets the centre of a box, its height measured as it was: to the same line of
// the box and from the same floor.
func setCentre(o *plan.Opening, room *plan.Room, centre, high unit.Length) Remedy {
	return Remedy{
		Label: words.New("rule.box-place.centre", "Set its centre at {0}", words.Height(centre)),
		Edit: plan.SetHeight{ID: o.ID, Height: plan.CentreAt(centre).Restated(
			cmp.Or(o.Height.To, plan.BoxCentre), cmp.Or(o.Height.From, plan.FinishedFloor), high, room.FloorThickness())},
	}
}
