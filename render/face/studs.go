package face

import (
	"strconv"

	"studbay/plan"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// studs writes the number of each stud in a disc over it, filled where the stud was
// measured or stated and in dashes where it is assumed, and over that how far its near
// edge is from the left end. It returns where that ends.
func (d *drawing) studs() (top float64) {
	all := d.Face.studs
	if len(all) == 0 {
		return d.top
	}
	radius := 0.82 * d.m.Text
	at := make([]float64, len(all))
	for i, s := range all {
		at[i] = d.m.ToStrip(s.At, 0).X
	}
	y := d.top - 0.7*d.m.Text - radius
	top = y
	for i, x := range scene.Spread(at, 2.1*radius, d.left-radius, d.right+radius) {
		s := all[i]
		d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: at[i], Y: d.top}, scene.Point{X: x, Y: y + radius}), Pen: d.pen(2)})
		d.disc(scene.Point{X: x, Y: y}, radius, strconv.Itoa(i+1), s.State)
		run := scene.Run{At: scene.Point{X: x, Y: y - 1.35*radius}, Text: d.figure(max(s.Left(), 0)), Size: 0.92 * d.m.Text, Color: d.m.Theme.Ink, VAlign: scene.Middle, Angle: -90}
		d.put(run)
		top = min(top, run.Bounds().Min.Y)
	}
	return top
}

func (d *drawing) disc(at scene.Point, radius float64, text string, state plan.StudState) {
	path := scene.Circle(at, radius)
	number := scene.Run{At: at, Text: text, Size: 0.95 * d.m.Text, Weight: glyph.Bold, Color: d.m.Theme.Ink, Align: scene.Center, VAlign: scene.Middle}
	if state == plan.StudAssumed {
		pen := d.pen(2)
		pen.Dash = []float64{0.9, 0.7}
		d.put(scene.Fill{Path: path, Color: d.m.Theme.Paper}, scene.Stroke{Path: path, Pen: pen}, number)
		return
	}
	number.Color = d.m.Theme.Paper
	d.put(scene.Fill{Path: path, Color: d.m.Theme.Ink}, number)
}
