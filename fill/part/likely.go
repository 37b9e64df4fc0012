package part

import (
	"studbay/plan"
	"studbay/plan/unit"
)

// insideUnder and insideOver are how much less and more a box may measure inside than the size
// it is sold by: its walls and round corners take up to 1/4 in, a tape reads up to 1/8 in too
// much (common practice).
const (
	insideUnder = unit.Inch / 4
	insideOver  = unit.Inch / 8
)

// LikelyBoxes returns the boxes of Table 314.16(A), in the order of the catalogue, that may
// measure so inside, upright or lying; of one size with clamps and without only one. None
// where not all three were measured.
func (c *Catalogue) LikelyBoxes(in plan.Inside) (likely []*Box) {
	if !in.IsWhole() {
		return nil
	}
	type size struct {
		outline Outline
		depth   unit.Length
		shape   Shape
	}
	seen := map[size]bool{}
	for _, b := range c.Boxes {
		if b.Basis != ByTable || b.Outline().IsZero() || !isNear(in.Depth, b.Depth) {
			continue
		}
		upright := isNear(in.Width, b.Width) && isNear(in.Height, b.Height)
		lying := isNear(in.Width, b.Height) && isNear(in.Height, b.Width)
		if key := (size{b.Outline(), b.Depth, b.Shape}); (upright || lying) && !seen[key] {
			seen[key] = true
			likely = append(likely, b)
		}
	}
	return likely
}

func isNear(measured, sold unit.Length) bool {
	return measured >= sold-insideUnder && measured <= sold+insideOver
}
