// Package fullsize draws at full size what is laid on a wall or a board: the cut-outs of a
// plan's boxes as templates, and a tape with the height of every box on it. One millimeter of
// paper is one millimeter of the building; for a page that is enlarged as a whole it is laid out
// k times as large, which is less than once.
package fullsize

import (
	"cmp"
	"math"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// CutOut is one hole to cut in board, with the new openings that take it.
type CutOut struct {
	part.Outline
	// Plate is what covers it once the wall is finished, where that is larger; else nothing.
	Plate part.Outline
	// Box is the outline of a box behind board that its ring alone comes through: two heads of
	// the ring's screws stand out of it there. The zero value where there is none.
	Box      part.Outline
	Openings []*plan.Opening // in the order of their tags
}

// hole tells cut-outs apart: all of one have the same plate and the same box behind them.
type hole struct{ cut, plate, box part.Outline }

func holeOf(o *plan.Opening) (h hole) {
	h.cut = frame.CutoutOf(o)
	if plate := frame.PlateOf(o); plate.Width > h.cut.Width && plate.Height > h.cut.Height {
		h.plate = plate
	}
	if body, ok := frame.BodyOf(o.Assembly); ok && body.HasRing {
		if b := frame.BoxOf(o.Assembly); b != nil && b.Width > h.cut.Width && b.Height > h.cut.Height {
			h.box = part.Outline{Width: b.Width, Height: b.Height, IsRound: b.Shape == part.OctagonShape}
		}
	}
	return h
}

// CutOutOf returns the cut-out of one opening.
func CutOutOf(o *plan.Opening) CutOut {
	h := holeOf(o)
	return CutOut{Outline: h.cut, Plate: h.plate, Box: h.box, Openings: []*plan.Opening{o}}
}

// CutOuts lists the cut-outs of the new openings in walls and ceilings of a plan, the
// smallest first. What sits in a floor, in a cabinet or outdoors is not cut out of board.
func CutOuts(ix *index.Index) (all []CutOut) {
	at := map[hole]int{}
	for _, l := range ix.Plan().Levels {
		for o := range l.Openings.All() {
			if o.Status != plan.StatusNew || isOutdoors(ix, o) || o.At.Part != plan.PartFace && o.At.Part != plan.PartCeiling {
				continue
			}
			h := holeOf(o)
			n, seen := at[h]
			if !seen {
				n = len(all)
				at[h] = n
				all = append(all, CutOut{Outline: h.cut, Plate: h.plate, Box: h.box})
			}
			all[n].Openings = append(all[n].Openings, o)
		}
	}
	for _, c := range all {
		slices.SortFunc(c.Openings, func(a, b *plan.Opening) int { return plan.CompareTags(a.Tag, b.Tag) })
	}
	slices.SortFunc(all, func(a, b CutOut) int {
		return cmp.Or(cmp.Compare(a.Height, b.Height), cmp.Compare(a.Width, b.Width), compareBools(a.IsRound, b.IsRound),
			cmp.Compare(a.Plate.Width, b.Plate.Width), cmp.Compare(a.Box.Width, b.Box.Width))
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

// The heads of the two screws of a ring: common practice, so far from two corners of the box.
const (
	headIn   = 3 * unit.Inch / 8
	headWide = 3 * unit.Inch / 8
)

// Heads are where the screw heads of the ring are from the middle, to the right and down: upper
// left and lower right as one stands before it. None where no box is behind the board.
func (c CutOut) Heads() []scene.Point {
	if c.Box.IsZero() {
		return nil
	}
	x, y := scene.MM(c.Box.Width/2-headIn), scene.MM(c.Box.Height/2-headIn)
	return []scene.Point{{X: -x, Y: -y}, {X: x, Y: y}}
}

// Draw draws the template about a middle: the outline of what comes through the board, the
// center lines by which it is laid on the marks of a wall, thin and dashed the plate that will
// cover it, and dotted the box behind with the heads of its ring's screws.
func (c CutOut) Draw(k float64, middle scene.Point, edge, center scene.Pen) []scene.Item {
	w, h := scene.MM(c.Width)*k, scene.MM(c.Height)*k
	across := scene.Point{X: w/2 + past}
	down := scene.Point{Y: h/2 + past}
	items := []scene.Item{
		scene.Stroke{Path: scene.LinePath(middle.Sub(across), middle.Add(across)), Pen: center},
		scene.Stroke{Path: scene.LinePath(middle.Sub(down), middle.Add(down)), Pen: center},
		scene.Stroke{Path: pathOf(k, c.Outline, middle), Pen: edge},
	}
	plate, box := center, center
	plate.Dash, box.Dash = []float64{2.4, 1.2}, []float64{0.5, 0.9}
	if !c.Plate.IsZero() {
		items = append(items, scene.Stroke{Path: pathOf(k, c.Plate, middle), Pen: plate})
	}
	if !c.Box.IsZero() {
		items = append(items, scene.Stroke{Path: pathOf(k, c.Box, middle), Pen: box})
	}
	for _, at := range c.Heads() {
		items = append(items, scene.Stroke{Path: scene.Circle(middle.Add(at.Mul(k)), scene.MM(headWide)*k/2), Pen: edge})
	}
	return items
}

func pathOf(k float64, o part.Outline, middle scene.Point) scene.Path {
	if o.IsRound {
		return scene.Circle(middle, scene.MM(o.Width)*k/2)
	}
	return scene.RectAround(middle, scene.MM(o.Width)*k, scene.MM(o.Height)*k).Path()
}

// Extent returns the room that Draw takes, in millimeters as they are laid out.
func (c CutOut) Extent(k float64) (wide, tall float64) {
	wide, tall = scene.MM(c.Width)*k+2*past, scene.MM(c.Height)*k+2*past
	for _, o := range []part.Outline{c.Plate, c.Box} {
		wide, tall = max(wide, scene.MM(o.Width)*k+2), max(tall, scene.MM(o.Height)*k+2)
	}
	return wide, tall
}

// Tile is a part of a template that is larger than the paper, as large as fits: where its
// middle is from the middle of the whole.
type Tile struct {
	Across, Down int // which of how many it is, from the upper left, from 0 on
	Middle       scene.Point
}

// Tiles parts a template into pieces of a size at most, in millimeters, that meet edge to edge;
// all are equally large. The zero size of a piece is no paper.
func (c CutOut) Tiles(k float64, wide, tall float64) (all []Tile, w, h float64) {
	fullWide, fullTall := c.Extent(k)
	across, down := int(math.Ceil(fullWide/wide)), int(math.Ceil(fullTall/tall))
	w, h = fullWide/float64(across), fullTall/float64(down)
	for y := range down {
		for x := range across {
			all = append(all, Tile{x, y, scene.Point{X: (float64(x)+0.5)*w - fullWide/2, Y: (float64(y)+0.5)*h - fullTall/2}})
		}
	}
	return all, w, h
}
