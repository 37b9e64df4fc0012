package board

import (
	"math"

	"studbay/app/tool"
	"studbay/plan/geom"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// asideUnits is how far a live dimension stands off what it measures.
const asideUnits = 30

// dim draws a live dimension: its line with a stroke at each end, and its text on a
// ground of paper in the middle.
func (s *scribe) dim(d tool.Dim) {
	a, b := s.at(d.From), s.at(d.To)
	ink, k := s.pic.Theme.Ink, s.density
	if off := direction(d.Aside); off != (scene.Point{}) {
		footA, footB := a, b
		a, b = a.Add(off.Mul(asideUnits*k)), b.Add(off.Mul(asideUnits*k))
		s.add(shape{kind: lineShape, a: footA, b: a.Add(off.Mul(4 * k)), width: k, color: s.pic.Theme.Muted},
			shape{kind: lineShape, a: footB, b: b.Add(off.Mul(4 * k)), width: k, color: s.pic.Theme.Muted})
	}
	v := b.Sub(a)
	n := math.Hypot(v.X, v.Y)
	if n < 1 {
		return
	}
	across := v.Turned().Mul(4 * k / n)
	s.add(shape{kind: lineShape, a: a, b: b, width: k, color: ink},
		shape{kind: lineShape, a: a.Sub(across), b: a.Add(across), width: 1.5 * k, color: ink},
		shape{kind: lineShape, a: b.Sub(across), b: b.Add(across), width: 1.5 * k, color: ink})
	middle := a.Add(b).Mul(0.5)
	s.note(d.Text, middle, ink, true)
}

// note writes a text on a ground of its own, about its middle or from its left.
func (s *scribe) note(text string, at scene.Point, ink scene.Color, middle bool) {
	if text == "" {
		return
	}
	run := scene.Run{Text: text, Size: 10.5 * s.density, Weight: glyph.Bold}
	w, h := run.Width()+12*s.density, 16*s.density
	corner := scene.Point{X: at.X, Y: at.Y - h/2}
	if middle {
		corner.X -= w / 2
	}
	s.add(shape{kind: boxShape, a: corner, b: corner.Add(scene.Point{X: w, Y: h}), fill: s.pic.Theme.Paper, color: s.pic.Theme.Line, width: s.density},
		shape{kind: textShape, a: corner.Add(scene.Point{X: 5 * s.density, Y: 1 * s.density}), text: text, bold: true, size: 10.5, color: ink})
}

// snap marks the snap in force with its name, and what has been typed.
func (s *scribe) snap(p tool.Preview) {
	t := s.pic.Theme
	var by *scene.Point
	if p.SnapAt != nil {
		at, half := s.at(*p.SnapAt), 5*s.density
		s.add(shape{kind: ringShape, a: scene.Point{X: at.X - half, Y: at.Y - half}, b: scene.Point{X: at.X + half, Y: at.Y + half},
			width: 1.5 * s.density, color: t.Accent})
		by = &at
	} else if s.pointer != nil {
		by = s.pointer
	}
	if by == nil {
		return
	}
	beside := by.Add(scene.Point{X: 16 * s.density, Y: 22 * s.density})
	if len(p.Dims) > 0 {
		beside.Y = by.Y + (asideUnits+20)*s.density // clear of the dimensions
	}
	if p.Typed != "" {
		s.note(p.Typed+" |", beside, t.Ink, false)
		beside.Y += 20 * s.density
	}
	if !p.Snap.IsZero() {
		s.note(s.pic.Voice.Say(p.Snap), beside, t.Accent, false)
	}
}

// direction returns a vector of the plan at length one.
func direction(v geom.Point) scene.Point {
	x, y := v.X.Millimetres(), v.Y.Millimetres()
	if x == 0 && y == 0 {
		return scene.Point{}
	}
	n := math.Hypot(x, y)
	return scene.Point{X: x / n, Y: y / n}
}
