package frame

import (
	"cmp"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ByTape returns the edit that puts the studs of a wall where the readings of a tape say, and
// keeps the readings as they were typed. No spacing carries them on past the last.
func ByTape(ix *index.Index, side plan.ID, tape plan.Tape) edit.Edit {
	ref, ok := ix.Side(side)
	if !ok {
		return edit.SetTape{Side: side, Tape: tape}
	}
	return byTape(ix, ref, ref.Side().Studs.Thick, tape)
}

func byTape(ix *index.Index, ref *plan.SideRef, thick unit.Length, tape plan.Tape) edit.Edit {
	face, _ := FaceOf(ix, ref.Key())
	var places []plan.StudPlace
	for _, at := range tape.At {
		places = append(places, plan.StudPlace{At: centreOf(at, tape, ref, face.Length, cmp.Or(thick, StudThick)), State: plan.StudMeasured})
	}
	return edit.Steps{Label: edit.SetStuds{}.Name(), Edits: []edit.Edit{face.WithStuds(places), edit.SetTape{Side: ref.Key(), Tape: tape}}}
}

// centreOf returns how far from the left end of a face the middle of a stud is that a tape
// reads.
func centreOf(at unit.Length, tape plan.Tape, ref *plan.SideRef, length, thick unit.Length) unit.Length {
	switch tape.Edge {
	case plan.NearEdge:
		at += thick / 2
	case plan.FarEdge:
		at -= thick / 2
	}
	sides := ref.Room.Sides
	by := 1
	if !tape.FromRight {
		by = len(sides) - 1
	}
	if tape.Framing { // the finish of the wall that it meets in the corner covers so much
		at -= SetProud(sides[(ref.At+by)%len(sides)])
	}
	if tape.FromRight {
		at = length - at
	}
	return at
}

// TapeOn returns the readings of a tape along a side. Where none were typed they have the
// meaning that those of another side of the room have, so that it is asked once.
func TapeOn(ix *index.Index, side plan.ID) plan.Tape {
	ref, ok := ix.Side(side)
	if !ok {
		return plan.Tape{}
	}
	tape := ref.Side().Tape
	if len(tape.At) > 0 || !tape.IsZero() {
		return tape
	}
	for _, s := range ref.Room.Sides {
		if len(s.Tape.At) > 0 {
			return plan.Tape{FromRight: s.Tape.FromRight, Framing: s.Tape.Framing, Edge: s.Tape.Edge}
		}
	}
	return tape
}

// WithThick returns the edit that says how thick the studs of a side are along the wall. What
// a tape read at their edges tells other middles from then on.
func WithThick(ix *index.Index, side plan.ID, thick unit.Length) edit.Edit {
	ref, ok := ix.Side(side)
	if !ok {
		return edit.ChangeSide{}
	}
	s := *ref.Side()
	s.Studs.Thick = thick
	all := edit.Steps{Label: edit.ChangeSide{Side: s}.Name(), Edits: []edit.Edit{edit.ChangeSide{Side: s}}}
	if tape := s.Tape; len(tape.At) > 0 && tape.Edge != plan.Centers {
		all.Edits = append(all.Edits, byTape(ix, ref, thick, tape))
	}
	return all
}
