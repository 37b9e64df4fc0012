package wall

import (
	"slices"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// pastEdge finds a box that runs past an end of its face, into the floor or into the
// ceiling, where none can be built. Its remedies put it where nothing else is.
func pastEdge(v rule.SideView, boxes []pile, at placedBox, grid unit.Length) (found []rule.Finding) {
	tell := func(message words.Text, fits bool, moved frame.Rect, remedy rule.Remedy) {
		f := placeFinding(v, at.o)
		f.Severity, f.Message = rule.Stop, message
		f.Why = words.New("rule.box-place.edge.why", "There the wall ends: two things cannot be in one place (common practice).")
		if fits && isFree(v, boxes, at.o, moved) {
			f.Remedies = []rule.Remedy{remedy}
		}
		found = append(found, f)
	}
	onLeft, onRight := frame.RunsOn(v.Room, v.Side.ID)
	left, right := at.Left < 0 && !onLeft, at.Right > v.Length && !onRight
	if left || right {
		half := setIn(at.Right-at.Left, v.Length, grid)
		along, label := half, words.New("rule.box-place.left", "Set it {0} from the left corner", half)
		if !left {
			along, label = v.Length-half, words.New("rule.box-place.right", "Set it {0} from the right corner", half)
		}
		tell(pastCorner(at.o, max(-at.Left, at.Right-v.Length)), at.Right-at.Left <= v.Length, at.Moved(along-at.o.At.Along), setAlong(at.o, along, label))
	}
	high := at.Top - at.Bottom
	low, isLow := setIn(high, v.Room.Ceiling, grid), high <= v.Room.Ceiling
	switch over := at.Top - v.Room.Ceiling; {
	case at.Bottom < 0:
		tell(words.New("rule.box-place.floor", "{0} runs into the floor by {1}", at.o.Tag, words.Height(-at.Bottom)),
			isLow, at.Centred(low), setCentre(at.o, v.Room, low))
	case over > 0:
		tell(words.New("rule.box-place.ceiling", "{0} runs into the ceiling by {1}", at.o.Tag, words.Height(over)),
			isLow, at.Centred(v.Room.Ceiling-low), setCentre(at.o, v.Room, v.Room.Ceiling-low))
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
func isFree(v rule.SideView, boxes []pile, o *plan.Opening, at frame.Rect) bool {
	return !slices.ContainsFunc(boxes, func(b pile) bool { return b.isOther(o) && b.Meets(at) }) &&
		!slices.ContainsFunc(v.Cuts, func(c index.Cut) bool { return at.Meets(frame.RectOfCut(c)) })
}

// setBeside offers to set a box along its wall as near as it can be set clear of the others,
// of breaks and of the ends. One that is there already stays where it is.
func setBeside(v rule.SideView, boxes []pile, at placedBox, step unit.Length) []rule.Remedy {
	if at.o.Status != plan.StatusNew {
		return nil
	}
	half := (at.Right - at.Left) / 2
	best, found := unit.Length(0), false
	beside := func(left, right unit.Length) {
		for _, along := range []unit.Length{down(left-half, step), up(right+half, step)} {
			moved := at.Moved(along - at.o.At.Along)
			isNearer := !found || (along-at.o.At.Along).Abs() < (best-at.o.At.Along).Abs()
			if isNearer && moved.Left >= 0 && moved.Right <= v.Length && isFree(v, boxes, at.o, moved) {
				best, found = along, true
			}
		}
	}
	for _, b := range boxes {
		if b.isOther(at.o) {
			beside(b.Left, b.Right)
		}
	}
	for _, c := range v.Cuts {
		beside(c.From, c.To)
	}
	if !found {
		return nil
	}
	label := words.New("rule.flat-place.move", "Move {0} by {1}, clear of what it meets", at.o.Tag, words.Height((best - at.o.At.Along).Abs()))
	return []rule.Remedy{setAlong(at.o, best, label)}
}

// up and down round a place to a step, to the right or to the left.
func up(l, step unit.Length) unit.Length   { return -down(-l, step) }
func down(l, step unit.Length) unit.Length { return l - (l%step+step)%step }

func pastCorner(o *plan.Opening, by unit.Length) words.Text {
	return words.New("rule.box-place.corner", "{0} runs past the corner by {1}", o.Tag, words.Height(by))
}

func setAlong(o *plan.Opening, along unit.Length, label words.Text) rule.Remedy {
	return rule.Remedy{Label: label, Edit: edit.MoveOpening{ID: o.ID, To: plan.OnFace(o.At.Host, along)}}
}

// setCentre sets the centre of a box, its height measured as it was: to the same line of
// the box and from the same floor.
func setCentre(o *plan.Opening, room *plan.Room, centre unit.Length) rule.Remedy {
	return rule.Remedy{
		Label: words.New("rule.box-place.centre", "Set its center at {0}", words.Height(centre)),
		Edit:  edit.SetHeight{ID: o.ID, Height: frame.HeightAt(o, room, centre)},
	}
}
