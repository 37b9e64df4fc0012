package remodel

import (
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
)

// Move is the edit that moves an existing opening to another place: the new one is like it
// in a box of its kind, which nobody has chosen for what is in the wall already.
func Move(p plan.Plan, old *plan.Opening, to plan.Anchor) edit.Succeed {
	by := successor(p, old, old.Kind, to)
	by.Gangs, by.Devices, by.Note = old.Gangs, old.Devices, old.Note
	return edit.Succeed{Old: old.ID, By: by, Status: plan.StatusMoved}
}

// Replace is the edit that puts an opening of a kind in the place of an existing one.
func Replace(p plan.Plan, old *plan.Opening, kind string) edit.Succeed {
	return edit.Succeed{Old: old.ID, By: successor(p, old, kind, old.At), Status: plan.StatusReplaced}
}

func successor(p plan.Plan, old *plan.Opening, kind string, at plan.Anchor) plan.Opening {
	by := place.ForWall(p, part.NewOpening(p.Header.System(), kind, at))
	by.ID = rule.IDsFor([]any{old}, "succeeds", kind).Next()
	if old.Height != (plan.Height{}) {
		by.Height = old.Height
	}
	return by
}
