package fill

import (
	"studbay/plan"
	"studbay/plan/unit"
)

// HeightSaid returns the height of an opening said to another line of its box and from
// another floor: the box does not move.
func HeightSaid(ix *plan.Index, o plan.Opening, to plan.BoxLine, from plan.Datum) plan.Height {
	_, high := BoxSize(&o)
	var floor unit.Length
	if place, ok := ix.Place(o.At); ok && place.Room != nil {
		floor = place.Room.FloorThickness()
	}
	return o.Height.Restated(to, from, high, floor)
}
