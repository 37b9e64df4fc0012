package frame

import (
	"studbay/fill/part"
	"studbay/plan"
)

// CutoutOf returns the hole in the finish for an opening, centred on its box: for the
// collar where the box carries a ring, for the box itself where it carries none, for the
// housing of a kind that comes with one.
func CutoutOf(o *plan.Opening) part.Outline {
	_, adds := part.Known(o.Assembly)
	for _, add := range adds {
		if add.Kind == part.Ring {
			return add.Collar
		}
	}
	return FrontOf(o)
}
