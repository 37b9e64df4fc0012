// Package fullsize draws at full size what is laid on a wall or a board: the cut-outs of a
// plan's boxes as templates, and a tape with the height of every box on it. One millimeter of
// its scenes is one millimeter of the building.
package fullsize

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render/scene"
)

// CutOut is one hole to cut in board, with the new openings that take it.
type CutOut struct {
	part.Outline
	Openings []*plan.Opening // in the order of their tags
}

// CutOuts lists the cut-outs of the new openings in walls and ceilings of a plan, the
// smallest first. What sits in a floor, in a cabinet or outdoors is not cut out of board.
func CutOuts(ix *index.Index) (all []CutOut) {
	at := map[part.Outline]int{}
	for _, l := range ix.Plan().Levels {
		for o := range l.Openings.All() {
			if o.Status != plan.StatusNew || isOutdoors(ix, o) || o.At.Part != plan.PartFace && o.At.Part != plan.PartCeiling {
				continue
			}
			hole := frame.CutoutOf(o)
			n, seen := at[hole]
			if !seen {
				n = len(all)
				at[hole] = n
				all = append(all, CutOut{Outline: hole})
			}
			all[n].Openings = append(all[n].Openings, o)
		}
	}
	for _, c := range all {
		slices.SortFunc(c.Openings, func(a, b *plan.Opening) int { return plan.CompareTags(a.Tag, b.Tag) })
	}
	slices.SortFunc(all, func(a, b CutOut) int {
		return cmp.Or(cmp.Compare(a.Height, b.Height), cmp.Compare(a.Width, b.Width), compareBools(a.IsRound, b.IsRound))
	})
	return all
}

// isOutdoors reports whether an opening is in the outer face of a house.
func isOutdoors(ix *index.Index, o *plan.Opening) bool {
	at, ok := ix.Place(o.At)
	return ok && at.Room != nil && at.Room.Use == plan.UseOutdoors
}

// compareBools sets false before true.
func compareBools(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	}
	return 1
}

// past is how far the center lines of a template run beyond its outline, in millimeters.
const past = 4.0

// Draw draws the template about a middle: the outline of what comes
// through the board, and the center lines by which it is laid on the marks of a wall.
func (c CutOut) Draw(middle scene.Point, edge, center scene.Pen) []scene.Item {
	w, h := scene.MM(c.Width), scene.MM(c.Height)
	outline := scene.RectAround(middle, w, h).Path()
	if c.IsRound {
		outline = scene.Circle(middle, w/2)
	}
	across := scene.Point{X: w/2 + past}
	down := scene.Point{Y: h/2 + past}
	return []scene.Item{
		scene.Stroke{Path: scene.LinePath(middle.Sub(across), middle.Add(across)), Pen: center},
		scene.Stroke{Path: scene.LinePath(middle.Sub(down), middle.Add(down)), Pen: center},
		scene.Stroke{Path: outline, Pen: edge},
	}
}

// Extent returns the room that Draw takes, in millimeters.
func (c CutOut) Extent() (wide, tall float64) {
	return scene.MM(c.Width) + 2*past, scene.MM(c.Height) + 2*past
}
