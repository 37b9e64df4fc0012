package arrange

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AlignHeights sets things at the height of another of their kind: openings as that is
// given, to the same line of the box and from the same floor; doors and windows with
// their heads in line; fixtures with their bottoms. Things of other kinds, and what is in
// a ceiling or a floor, stay.
type AlignHeights struct {
	To     plan.ID
	Things []plan.ID
}

// Name returns "Align heights".
func (AlignHeights) Name() words.Text { return words.New("edit.align-heights", "Align heights") }

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where one does not fit at that height.
func (e AlignHeights) Apply(p plan.Plan) (plan.Plan, error) {
	to, _ := p.Find(e.To)
	if to == nil {
		return plan.Plan{}, plan.Gone(e.To.Kind())
	}
	var edits []edit.Edit
	for _, id := range e.Things {
		t, _ := p.Find(id)
		switch t := t.(type) {
		case nil:
			return plan.Plan{}, plan.Gone(id.Kind())
		case *plan.Opening:
			if as, ok := to.(*plan.Opening); ok && hasHeight(as) && hasHeight(t) {
				edits = append(edits, edit.SetHeight{ID: id, Height: as.Height})
			}
		case *plan.Break:
			if as, ok := to.(*plan.Break); ok {
				now := *t
				if now.Sill > 0 {
					now.Sill += as.Head - t.Head
				}
				now.Head = as.Head
				edits = append(edits, edit.ChangeBreak{Break: now})
			}
		case *plan.Fixture:
			if as, ok := to.(*plan.Fixture); ok && t.At.Part == plan.PartFace {
				now := *t
				now.Bottom = as.Bottom
				edits = append(edits, edit.ChangeFixture{Fixture: now})
			}
		}
	}
	return inTurn(p, edits)
}

func hasHeight(o *plan.Opening) bool {
	return !isFlat(o.At) && o.At.Part != plan.PartTop
}

// SetHeights sets what the heights of several openings say, each to the line and from the
// floor that it is given by. What is in a ceiling or a floor, and what is no opening, stays.
type SetHeights struct {
	Things []plan.ID
	Value  unit.Length
}

// Name returns "Set heights".
func (SetHeights) Name() words.Text { return words.New("edit.heights", "Set heights") }

// Apply fails with ErrGone where one of the openings is not in the plan, else as SetHeight
// does.
func (e SetHeights) Apply(p plan.Plan) (plan.Plan, error) {
	return edit.EachOpening(e.Things, func(id plan.ID) edit.Edit { return setValue{id, e.Value} }).Apply(p)
}

// setValue sets the figure of a height and no more.
type setValue struct {
	id    plan.ID
	value unit.Length
}

func (setValue) Name() words.Text { return SetHeights{}.Name() }

func (e setValue) Apply(p plan.Plan) (plan.Plan, error) {
	return edit.ChangedOpening(p, e.id, func(o *plan.Opening) {
		if hasHeight(o) {
			o.Height.Value = e.value
		}
	})
}
