package draft

import (
	"math"

	"studbay/plan"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// Label is a line of text that belongs to something drawn.
type Label struct {
	ID       plan.ID
	Area     *Area
	Run      scene.Run  // its place is not settled yet
	From     scene.Rect // what it belongs to: a body
	Into     scene.Point
	IsRinged bool // a ring stands round the body
}

// RingRadius is that of the ring round an opening with a finding, in bodies.
const RingRadius = 1.02

// TextSize returns the box that a line of text takes.
func TextSize(run scene.Run) (w, h float64) {
	m := glyph.MetricsOf(run.Weight, run.Size)
	return run.Width(), m.CapHeight + m.Descent
}

// Padded is the box a text wants to itself.
func (d *Drawing) Padded(box scene.Rect) scene.Rect { return box.Expanded(0.16 * d.Medium.Text) }

// compass are the ways a tag may stand from its body, by what the stem does: beside
// it first, then beyond it, then askew.
var compass = struct{ upright, lying, flat [8]scene.Point }{
	upright: [8]scene.Point{{X: 1}, {X: -1}, {Y: 1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}, {Y: -1}},
	lying:   [8]scene.Point{{X: 1}, {Y: 1}, {Y: -1}, {X: 1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: 1}, {X: -1, Y: -1}, {X: -1}},
	flat:    [8]scene.Point{{X: 1}, {X: -1}, {Y: 1}, {Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}},
}

// ways returns the ways of a label in order, turned so that they point into the room.
func (l *Label) ways() [8]scene.Point {
	switch {
	case l.Into == scene.Point{}:
		return compass.flat
	case math.Abs(l.Into.Y) >= math.Abs(l.Into.X):
		return turned(compass.upright, scene.Point{X: 1, Y: math.Copysign(1, l.Into.Y)})
	}
	return turned(compass.lying, scene.Point{X: math.Copysign(1, l.Into.X), Y: 1})
}

func turned(ways [8]scene.Point, sign scene.Point) [8]scene.Point {
	for i := range ways {
		ways[i] = scene.Point{X: ways[i].X * sign.X, Y: ways[i].Y * sign.Y}
	}
	return ways
}

// Beside tries the places round the body.
func (d *Drawing) Beside(l *Label) bool {
	gap := 0.32 * d.Medium.Symbol
	if l.IsRinged {
		gap = (RingRadius-0.5)*d.Medium.Symbol + 0.22*d.Medium.Text
	}
	w, h := TextSize(l.Run)
	around := l.From.Expanded(gap)
	middle := l.From.Middle()
	for _, way := range l.ways() {
		at := scene.Point{
			X: middle.X + way.X*(around.Width()+w)/2,
			Y: middle.Y + way.Y*(around.Height()+h)/2,
		}
		if way.X != 0 && way.Y != 0 {
			// Askew, it may come nearer the corner of the body.
			at.Y = middle.Y + way.Y*(l.From.Height()+h)/2
		}
		box := scene.RectAround(at, w, h)
		if l.Area.Holds(box) && d.Obstacles.IsFree(d.Padded(box)) {
			d.Write(l, box)
			return true
		}
	}
	return false
}

// Write settles a label in its box.
func (d *Drawing) Write(l *Label, box scene.Rect, more ...scene.Item) {
	run := l.Run
	run.At = scene.Point{X: box.Min.X, Y: box.Min.Y + glyph.MetricsOf(run.Weight, run.Size).CapHeight}
	d.Obstacles.Text(box, l.ID)
	d.Put(l.ID, render.LayerLabels, append(more, run)...)
}
