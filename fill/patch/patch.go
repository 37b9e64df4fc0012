// Package patch lists what is closed again after boxes are set in walls that stand: which part
// of which face is opened, and of what layers new board comes even with the finish beside it.
package patch

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// Patch is a part of a face that was laid open.
type Patch struct {
	Room     *plan.Room
	Side     *plan.Side
	From, To unit.Length // along the face, from its left end
	// Finish is what closes it, as far as anybody says; else none.
	Finish []plan.Layer
	// Beside is how thick the finish of the wall beside it is, Thick how thick that of the
	// patch is: of the usual board where nobody says.
	Beside, Thick unit.Length
}

// Furring returns how much has to be put under the board to bring it even with the finish
// beside it; below 0 it stands proud by so much.
func (p Patch) Furring() unit.Length { return p.Beside - p.Thick }

// Of lists the patches of a plan, room by room as a level holds them.
func Of(p plan.Plan) (all []Patch) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			for i, s := range r.Sides {
				if s.Kind == plan.SideWall {
					all = append(all, on(r, s, r.Segment(i).Length())...)
				}
			}
		}
	}
	return all
}

// on lists those of a face: its opened parts, or all of it where it is opened as a whole but
// for the parts that are not.
func on(r *plan.Room, s *plan.Side, length unit.Length) (all []Patch) {
	add := func(from, to unit.Length, finish []plan.Layer, beside unit.Length) {
		if from < to {
			one := Patch{Room: r, Side: s, From: from, To: to, Finish: finish, Beside: beside, Thick: plan.Thickness(finish)}
			if len(finish) == 0 {
				one.Thick = part.UsualBoard
			}
			all = append(all, one)
		}
	}
	at, whole := unit.Length(0), plan.Thickness(s.Finish)
	for _, z := range s.Zones {
		if s.Condition == plan.ConditionOpened {
			add(at, min(z.From, length), nil, whole)
		}
		if z.Condition == plan.ConditionOpened {
			add(z.From, min(z.To, length), z.Finish, whole)
		}
		at = z.To
	}
	if s.Condition == plan.ConditionOpened {
		add(at, length, nil, whole)
	}
	return all
}
