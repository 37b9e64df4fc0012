package frame

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// RatedAt returns what is said of the fire rating of the wall at a place along a side; either
// face may say it.
func RatedAt(s *index.SideView, along unit.Length) (plan.Rating, bool) {
	if s.Side.Rated {
		return s.Side.Rating, true
	}
	for _, b := range s.Behind {
		if b.Side.Rated && b.From <= along && along <= b.To {
			return b.Side.Rating, true
		}
	}
	return plan.Rating{}, false
}
