package remodel

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// MovedFrom returns the old place of an opening that was moved, and how far it is from there
// to the new one: along the wall where both are on one, else straight in the plan. It reports
// false for one that was not moved.
func MovedFrom(ix *index.Index, o *plan.Opening) (old *plan.Opening, by unit.Length, ok bool) {
	if o.Was == "" {
		return nil, 0, false
	}
	if old, _ = ix.Plan().Opening(o.Was); old == nil || old.Status != plan.StatusMoved {
		return nil, 0, false
	}
	if old.At.Host == o.At.Host && o.At.Part == plan.PartFace {
		return old, (o.At.Along - old.At.Along).Abs(), true
	}
	from, _ := ix.Place(old.At)
	to, _ := ix.Place(o.At)
	return old, geom.Segment{A: from.Foot, B: to.Foot}.Length(), true
}
