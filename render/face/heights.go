package face

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// heights draws a rule at the left of the face with the height of the centre of each box
// above the floor that they are measured from.
func (d *drawing) heights() {
	var all []unit.Length
	for _, b := range d.Boxes {
		all = append(all, frame.CentreHeight(b.Opening, d.Room))
	}
	slices.SortFunc(all, func(a, b unit.Length) int { return cmp.Compare(b, a) })
	all = slices.Compact(all)
	at := make([]float64, len(all))
	for i, h := range all {
		at[i] = d.m.ToStrip(0, h).Y
	}
	x := d.left - 0.9*d.m.Text
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: d.floor}, scene.Point{X: x, Y: d.top}), Pen: d.pen(2)})
	floor := d.say("face.subfloor", "subfloor")
	if d.Datum() == plan.FinishedFloor {
		floor = d.say("face.finished-floor", "fin. floor")
	}
	foot := scene.Run{At: scene.Point{X: x - 0.9*d.m.Text, Y: d.floor}, Text: floor, Size: 0.92 * d.m.Text, Align: scene.End, VAlign: scene.Middle, Color: d.m.Theme.Ink}
	d.put(d.dash(x, d.floor), foot)
	for i, y := range scene.Spread(at, 1.15*d.m.Text, d.top, d.floor-1.2*d.m.Text) {
		d.put(d.dash(x, at[i]),
			scene.Stroke{Path: scene.LinePath(scene.Point{X: x - 0.3*d.m.Text, Y: at[i]}, scene.Point{X: x - 0.8*d.m.Text, Y: y}), Pen: d.pen(2)},
			scene.Run{At: scene.Point{X: x - 0.9*d.m.Text, Y: y}, Text: d.m.Voice.Say(d.Height(all[i])), Size: d.m.Text, Weight: glyph.Bold, Align: scene.End, VAlign: scene.Middle, Color: d.m.Theme.Ink})
	}
}

func (d *drawing) dash(x, y float64) scene.Item {
	r := 0.3 * d.m.Text
	return scene.Stroke{Path: scene.LinePath(scene.Point{X: x - r, Y: y}, scene.Point{X: x + r, Y: y}), Pen: d.pen(2.5)}
}
