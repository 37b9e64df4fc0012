package place

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ToSteps works out the edit that sets new openings at whole steps of what is placed by a
// click, as a tape finds them: along a face from the mark that sheets measure from, in a
// ceiling or floor from the left upper corner of the room. One that a stud holds goes by the
// finest step that is shown, so that the stud still holds it. What is at its step, what is
// there already and what would not fit stays.
func ToSteps(ix *index.Index, openings []plan.ID) (made edit.ToSteps) {
	s := ix.Plan().Header.System()
	for _, id := range openings {
		o, _ := ix.Plan().Opening(id)
		if o == nil || o.Status != plan.StatusNew {
			continue
		}
		to := edit.StepPlace{ID: id, At: atStep(ix, o, s), Height: o.Height.Value}
		if o.Height.Value.Rounded(s.Step()) != o.Height.Value {
			to.Height = o.Height.Value.Rounded(s.Placing())
		}
		if to.At == o.At && to.Height == o.Height.Value {
			continue
		}
		if next, err := (edit.ToSteps{Places: []edit.StepPlace{to}}).Apply(ix.Plan()); err == nil {
			made.Places, ix = append(made.Places, to), ix.Updated(next)
		}
	}
	return made
}

// atStep returns where an opening is once it stands at its step.
func atStep(ix *index.Index, o *plan.Opening, s unit.System) plan.Anchor {
	at, step := o.At, s.Placing()
	if at.Part == plan.PartCeiling || at.Part == plan.PartFloor {
		if room := ix.RoomOf(at.Host); room != nil {
			corner := room.Outline().Box().Min
			away := at.At.Sub(corner)
			at.At = corner.Add(geom.Point{X: away.X.Rounded(step), Y: away.Y.Rounded(step)})
		}
		return at
	}
	f, ok := frame.FaceOf(ix, at.Host)
	if at.Part != plan.PartFace || !ok {
		at.Along = at.Along.Rounded(step)
		return at
	}
	ref, _ := ix.Side(at.Host)
	switch f.Framed().HoldOn(o, ref.Room).By {
	case frame.ByNailLeft, frame.ByNailRight, frame.ByBracket:
		step = s.Step()
	}
	mark, _ := frame.Nearest(f.Tapes(), at.Along)
	at.Along = mark.At + (at.Along - mark.At).Rounded(step)
	return at
}
