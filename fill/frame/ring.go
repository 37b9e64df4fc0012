package frame

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// AllowedSetBack returns how far behind the face of a side a ring may end: as far as the
// edition has it, but not at all behind a combustible surface (NEC 314.20).
func AllowedSetBack(s *plan.Side, most unit.Length) unit.Length {
	if n := len(s.Finish); n > 0 && s.Finish[n-1].Combustible {
		return 0
	}
	return most
}

// IsUndecided reports whether a layer of a side is not settled.
func IsUndecided(s *plan.Side) bool {
	return slices.ContainsFunc(s.Finish, func(l plan.Layer) bool { return l.Undecided })
}

// RingsPassing lists the raises of the catalogue's rings that fit the box of an opening and
// its gangs, and end neither before the face of a side nor farther behind than is allowed,
// the least first. SetBack is what the edition allows.
func RingsPassing(o *plan.Opening, s *plan.Side, setBack unit.Length) (raises []unit.Length) {
	return RingsAmong(part.All().Adds, o, s, setBack)
}

// RingsAmong does as RingsPassing with other rings to choose from than the catalogue's.
func RingsAmong(all []*part.Add, o *plan.Opening, s *plan.Side, setBack unit.Length) (raises []unit.Length) {
	box := BoxOf(o.Assembly)
	if box == nil {
		return nil
	}
	most, allowed := SetProud(s), AllowedSetBack(s, setBack)
	for _, add := range all {
		if add.Kind == part.Ring && add.FitsOn(box.Shape) && add.Gangs == o.Gangs &&
			most-allowed <= add.Raise && add.Raise <= most {
			raises = append(raises, add.Raise)
		}
	}
	slices.Sort(raises)
	return slices.Compact(raises)
}
