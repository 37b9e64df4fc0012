package frame

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// The hole for the collar of a ring: as the front of a steel device box of its gangs,
// whose devices it takes (3 × 2 by Table 314.16(A); the step is that of standard plates);
// of a ring to round 3-1/2 in, from memory.
const (
	collarWidth  = 2 * unit.Inch
	collarHeight = 3 * unit.Inch
	collarRound  = 7 * unit.Inch / 2
)

// CutoutOf returns the hole in the finish for an opening, centred on its box: for the
// collar where the box carries a ring, for the box itself where it carries none, for the
// housing of a kind that comes with one.
func CutoutOf(o *plan.Opening) part.Outline {
	for _, add := range addsOf(o.Assembly) {
		if add.Kind == part.Ring {
			return collar(add.Gangs)
		}
	}
	return FrontOf(o)
}

func collar(gangs int) part.Outline {
	if gangs <= 0 {
		return part.Outline{Width: collarRound, Height: collarRound, IsRound: true}
	}
	return part.Outline{Width: collarWidth + unit.Length(gangs-1)*gangStep, Height: collarHeight}
}
