package frame

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// MaxSetBack is how far behind a surface of gypsum, tile, plaster or other noncombustible
// material the front of a box, ring or extension may end: 1/4 in; behind a combustible one
// not at all (NEC 314.20).
const MaxSetBack = unit.Inch / 4

// AllowedSetBack returns how far behind the face of a side a ring may end.
func AllowedSetBack(s *plan.Side) unit.Length {
	if n := len(s.Finish); n > 0 && s.Finish[n-1].Combustible {
		return 0
	}
	return MaxSetBack
}

// IsUndecided reports whether a layer of a side is not settled.
func IsUndecided(s *plan.Side) bool {
	return slices.ContainsFunc(s.Finish, func(l plan.Layer) bool { return l.Undecided })
}

// RingsPassing lists the raises of the catalogue's rings that fit the box of an opening and
// its gangs, and end neither before the face of a side nor farther behind than is allowed,
// the least first.
func RingsPassing(o *plan.Opening, s *plan.Side) (raises []unit.Length) {
	box := BoxOf(o.Assembly)
	if box == nil {
		return nil
	}
	most := SetProud(s)
	for _, add := range part.All().Adds {
		if add.Kind == part.Ring && add.FitsOn(box.Shape) && add.Gangs == o.Gangs &&
			most-AllowedSetBack(s) <= add.Raise && add.Raise <= most {
			raises = append(raises, add.Raise)
		}
	}
	slices.Sort(raises)
	return slices.Compact(raises)
}
