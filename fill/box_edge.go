package fill

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// pastEdge finds a box that runs past an end of its face, into the floor or into the
// ceiling, where none can be built.
func pastEdge(v plan.RoomView, s *plan.SideView, at placedBox, grid unit.Length) (found []Finding) {
	tell := func(message words.Text, remedies ...Remedy) {
		f := placeFinding(v, s, at.o)
		f.Severity, f.Message, f.Remedies = Stop, message, remedies
		f.Why = words.New("rule.box-place.edge.why", "There the wall ends: no box can be set in it.")
		found = append(found, f)
	}
	half := upTo(grid, (at.right-at.left+1)/2)
	switch fits := 2*half <= s.Length; {
	case at.left < 0 && fits:
		tell(pastCorner(at.o, -at.left), setAlong(at.o, half, words.New("rule.box-place.left", "Set it {0} from the left corner", half)))
	case at.right > s.Length && fits:
		tell(pastCorner(at.o, at.right-s.Length), setAlong(at.o, s.Length-half, words.New("rule.box-place.right", "Set it {0} from the right corner", half)))
	case at.left < 0 || at.right > s.Length:
		tell(pastCorner(at.o, max(-at.left, at.right-s.Length)))
	}
	low := upTo(grid, (at.top-at.bottom+1)/2)
	switch over := at.top - v.Room.Ceiling; {
	case at.bottom < 0:
		tell(words.New("rule.box-place.floor", "{0} runs into the floor by {1}", at.o.Tag, words.Height(-at.bottom)), setCentre(at.o, low))
	case v.Room.Ceiling > 2*low && over > 0:
		tell(words.New("rule.box-place.ceiling", "{0} runs into the ceiling by {1}", at.o.Tag, words.Height(over)), setCentre(at.o, v.Room.Ceiling-low))
	}
	return found
}

func pastCorner(o *plan.Opening, by unit.Length) words.Text {
	return words.New("rule.box-place.corner", "{0} runs past the corner by {1}", o.Tag, words.Height(by))
}

// upTo returns the least multiple of a step that is not below l.
func upTo(step, l unit.Length) unit.Length { return (l + step - 1) / step * step }

func setAlong(o *plan.Opening, along unit.Length, label words.Text) Remedy {
	return Remedy{Label: label, Edit: plan.MoveOpening{ID: o.ID, To: plan.OnFace(o.At.Host, along)}}
}

func setCentre(o *plan.Opening, centre unit.Length) Remedy {
	return Remedy{
		Label: words.New("rule.box-place.centre", "Set its centre at {0}", words.Height(centre)),
		Edit:  plan.SetHeight{ID: o.ID, Height: plan.CentreAt(centre)},
	}
}
