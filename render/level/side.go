package level

import (
	"math"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// glassThickness is drawn between the two lines of a glass side with nothing behind
// it: a 2 in frame, common practice.
const glassThickness = 2 * unit.Inch

// postSpacing is the most between two posts of a railing, for drawing only.
const postSpacing = 6 * unit.Foot

// lightSide draws a side without a wall body.
func (d *drawing) lightSide(w wall) []scene.Item {
	switch w.side.Side.Kind {
	case plan.SideGlass:
		return d.glass(w)
	case plan.SideRailing:
		return d.railing(w)
	}
	return d.openSide(w)
}

// glass draws two thin lines with a pane between them.
func (d *drawing) glass(w wall) (items []scene.Item) {
	f := d.face(w.side.Frame)
	for _, b := range w.bodies {
		t := b.thickness
		if !b.backed && t < glassThickness {
			t = glassThickness
		}
		for _, s := range uncut(w.side, b.from, b.to) {
			deep := -t.Millimetres()
			items = append(items,
				scene.Fill{Path: f.box(s.from, 0, s.to, deep), Color: d.Theme.Surface},
				scene.Stroke{Path: f.box(s.from, 0, s.to, deep), Pen: d.InkPen(1)},
				scene.Stroke{Path: f.line(s.from, deep/2, s.to, deep/2), Pen: d.MutedPen()})
		}
	}
	return items
}

// railing draws a thin line with a post at each end and at even steps between.
func (d *drawing) railing(w wall) (items []scene.Item) {
	f := d.face(w.side.Frame)
	post := max(44, 3*d.Medium.Pixel/d.Medium.Scale) // about a 2×2 in post, in millimetres
	for _, s := range uncut(w.side, 0, w.side.Length) {
		items = append(items, scene.Stroke{Path: f.line(s.from, 0, s.to, 0), Pen: d.InkPen(1.25)})
		n := max(1, int(math.Ceil((s.to-s.from)/postSpacing.Millimetres())))
		for i := range n + 1 {
			x := s.from + (s.to-s.from-post)*float64(i)/float64(n)
			items = append(items, scene.Fill{Path: f.box(x, -post/2, x+post, post/2), Color: d.Theme.Ink})
		}
	}
	return items
}

// openSide draws a dashed hairline, from the same end whichever room draws it, so
// that the dashes of two rooms that flow together fall on each other.
func (d *drawing) openSide(w wall) []scene.Item {
	a, b := d.Medium.ToScene(w.side.Line.A), d.Medium.ToScene(w.side.Line.B)
	if b.X < a.X || b.X == a.X && b.Y < a.Y {
		a, b = b, a
	}
	return []scene.Item{scene.Stroke{Path: scene.LinePath(a, b), Pen: d.Dashed(d.MutedPen(), 6, 4)}}
}
