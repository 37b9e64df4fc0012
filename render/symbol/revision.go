package symbol

import (
	"math"
	"strconv"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// Cloud returns the line that builders draw round what a revision changed: arcs that
// bulge outward along a box, each about as wide as a bump.
func Cloud(box scene.Rect, bump float64) (p scene.Path) {
	corners := []scene.Point{box.Min, {X: box.Max.X, Y: box.Min.Y}, box.Max, {X: box.Min.X, Y: box.Max.Y}}
	for i, from := range corners {
		along := corners[(i+1)%4].Sub(from)
		long := math.Hypot(along.X, along.Y)
		n := max(1, int(math.Round(long/bump)))
		step := along.Mul(1 / float64(n))
		out := scene.Point{X: step.Y, Y: -step.X} // the box runs clockwise as seen
		for k := range n {
			a := from.Add(step.Mul(float64(k)))
			b := a.Add(step)
			if p.IsEmpty() {
				p.MoveTo(a)
			}
			p.CubicTo(a.Add(out.Mul(cloudSwell)), b.Add(out.Mul(cloudSwell)), b)
		}
	}
	return *p.Close()
}

// cloudSwell is how far the handles of an arc stand out, in its width: the arc itself
// comes to three quarters of it.
const cloudSwell = 0.55

// RevisionDelta is the triangle with the number of a revision in it, upright, its
// sides so long, about a middle.
func RevisionDelta(number int, middle scene.Point, side float64, ink, paper scene.Color) []scene.Item {
	high := side * math.Sqrt(3) / 2
	triangle := scene.Polygon(
		scene.Point{X: middle.X, Y: middle.Y - 0.6*high},
		scene.Point{X: middle.X + side/2, Y: middle.Y + 0.4*high},
		scene.Point{X: middle.X - side/2, Y: middle.Y + 0.4*high})
	text := scene.Run{
		At: scene.Point{X: middle.X, Y: middle.Y + 0.16*high}, Text: strconv.Itoa(number), Size: 0.5 * side,
		Weight: glyph.Bold, Align: scene.Center, VAlign: scene.Middle, Color: ink,
	}
	if wide := text.Width(); wide > 0.52*side {
		text.Size *= 0.52 * side / wide
	}
	return []scene.Item{
		scene.Fill{Path: triangle, Color: paper},
		scene.Stroke{Path: triangle, Pen: scene.Pen{Width: 0.07 * side, Color: ink}},
		text,
	}
}

// MoveArrow is a line from an old place to the new one with a full head at its end, for
// a pen of a width. It is empty where both are nearer than the head is long.
func MoveArrow(from, to scene.Point, width float64, ink scene.Color) []scene.Item {
	along := to.Sub(from)
	long := math.Hypot(along.X, along.Y)
	head := 7 * width
	if long <= head {
		return nil
	}
	unit := along.Mul(1 / long)
	neck := to.Sub(unit.Mul(head))
	side := unit.Turned().Mul(head * 0.38)
	return []scene.Item{
		scene.Stroke{Path: scene.LinePath(from, neck), Pen: scene.Pen{Width: width, Color: ink}},
		scene.Fill{Path: scene.Polygon(to, neck.Add(side), neck.Sub(side)), Color: ink},
	}
}
