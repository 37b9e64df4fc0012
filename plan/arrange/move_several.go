package arrange

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Move moves things together by a way of the sheet: what is on a face as far along it as
// the way goes, what is in a ceiling or on a floor and whole rooms by all of it, a side as
// far across itself. What stands on a thing that moves goes along with it and is not moved
// by itself.
type Move struct {
	Things []plan.ID
	By     geom.Point
	Joints []plan.ID // for each side among the things, in their order, two as MoveSide has them
}

// Name returns "Move opening" or what else it is, or for several that they move together.
func (e Move) Name() words.Text {
	if len(e.Things) == 1 {
		switch e.Things[0].Kind() {
		case plan.KindOpening:
			return edit.MoveOpening{}.Name()
		case plan.KindBreak:
			return edit.MoveBreak{}.Name()
		case plan.KindFixture:
			return edit.MoveFixture{}.Name()
		case plan.KindRoom:
			return edit.MoveRoom{}.Name()
		case plan.KindSide:
			return edit.MoveSide{}.Name()
		}
	}
	return words.New("edit.move", "Move what is selected")
}

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where one does not fit where it would come to. A way across a face moves nothing on it.
func (e Move) Apply(p plan.Plan) (plan.Plan, error) {
	var edits []edit.Edit
	sides := 0
	for _, id := range plan.Distinct(e.Things) {
		t, _ := p.Find(id)
		if t == nil {
			return plan.Plan{}, plan.Gone(id.Kind())
		}
		if id.Kind() == plan.KindSide {
			if joints := e.Joints; len(joints) >= 2*sides+2 {
				edits = append(edits, slide(p, id, e.By, [2]plan.ID{joints[2*sides], joints[2*sides+1]})...)
			}
			sides++
			continue
		}
		if rides(p, t, e.Things) {
			continue
		}
		if at := plan.AnchorOf(t); at != nil {
			edits = append(edits, placing{id, shifted(p, *at, e.By), 0})
		} else if id.Kind() == plan.KindRoom {
			edits = append(edits, edit.MoveRoom{ID: id, By: e.By})
		}
	}
	return inTurn(p, edits)
}

// inTurn makes edits one after another; one that another is in the way of comes after it.
func inTurn(p plan.Plan, edits []edit.Edit) (plan.Plan, error) {
	for len(edits) > 0 {
		var later []edit.Edit
		var why error
		for _, e := range edits {
			next, err := e.Apply(p)
			if err == nil {
				p = next
				continue
			}
			if later = append(later, e); why == nil {
				why = err
			}
		}
		if len(later) == len(edits) {
			return plan.Plan{}, why
		}
		edits = later
	}
	return p, nil
}

// isFlat reports whether an anchor is a point of a ceiling or a floor.
func isFlat(a plan.Anchor) bool { return a.Part == plan.PartCeiling || a.Part == plan.PartFloor }

// rides reports whether a thing stands on one of the things, or on what stands on one.
func rides(p plan.Plan, t plan.Thing, things []plan.ID) bool {
	among := make(map[plan.ID]bool, len(things))
	for _, id := range things {
		among[id] = true
	}
	for range plan.MaxStack + 1 {
		at := plan.AnchorOf(t)
		if at == nil {
			return false
		}
		if among[at.Host] {
			return true
		}
		if at.Part == plan.PartFace {
			ref, _ := p.Side(at.Host)
			return ref != nil && among[ref.Room.ID]
		}
		if t, _ = p.Find(at.Host); t == nil {
			return false
		}
	}
	return false
}

// slide returns the edit that moves a side across itself as far as a way of the sheet
// goes that way, if it does.
func slide(p plan.Plan, id plan.ID, way geom.Point, joints [2]plan.ID) []edit.Edit {
	ref, _ := p.Side(id)
	if ref == nil {
		return nil
	}
	_, off := ref.Line().Project(ref.Line().A.Add(way))
	if off == 0 {
		return nil
	}
	return []edit.Edit{edit.MoveSide{Side: id, By: -off, Joints: joints, Clamp: true}}
}

// leastStep is below what a tape shows: a way that goes less far along a face is one
// across it.
const leastStep = unit.Millimetre / 8

// shifted returns an anchor moved by a way of the sheet.
func shifted(p plan.Plan, a plan.Anchor, way geom.Point) plan.Anchor {
	if isFlat(a) {
		a.At = a.At.Add(way)
		return a
	}
	dir, ok := facing(p, a, 0)
	if !ok {
		return a
	}
	along, out := dir.Project(way)
	if along.Abs() >= leastStep {
		a.Along += along
	}
	if a.Part == plan.PartTop && out.Abs() >= leastStep {
		a.Out += out
	}
	return a
}

// facing returns the directions along and out of the face that an anchor is on, from the
// origin of the sheet.
func facing(p plan.Plan, a plan.Anchor, depth int) (geom.Frame, bool) {
	switch a.Part {
	case plan.PartFace:
		ref, _ := p.Side(a.Host)
		if ref == nil {
			return geom.Frame{}, false
		}
		f := geom.FrameOf(ref.Line())
		f.Origin = geom.Point{}
		return f, true
	case plan.PartCeiling, plan.PartFloor:
		return geom.FrameAt(geom.Point{}), true
	}
	on, _ := p.Fixture(a.Host)
	if on == nil || depth == plan.MaxStack {
		return geom.Frame{}, false
	}
	f, ok := facing(p, on.At, depth+1)
	if isFlat(on.At) {
		f = f.Turned(on.Turn)
	}
	switch a.Part {
	case plan.PartLeft:
		f = f.Turned(1)
	case plan.PartBack:
		f = f.Turned(2)
	case plan.PartRight:
		f = f.Turned(3)
	}
	return f, ok
}
