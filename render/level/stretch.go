package level

import (
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// stretches marks the parts of faces that findings are of, each with its length. A
// mark lies in the room along the face and is exactly as long as the finding says.
func (d *drawing) stretches() {
	for _, f := range d.Found.Stretched {
		if f.Waived != nil || d.Medium.IsFar() {
			continue
		}
		var items []scene.Item
		for _, s := range f.Stretches {
			mark := d.stretchMark(s, d.Theme.Severity(f.Severity))
			items = append(items, mark)
			d.Obstacles.Block(mark.Bounds(), f.About)
		}
		if d.Put(f.About, render.LayerStretches, items...); len(items) > 0 && !f.Label.IsZero() {
			d.stretchLabel(f)
		}
	}
}

// stretchThick is how thick a mark is, in bodies.
const stretchThick = 0.26

func (d *drawing) stretchMark(s rule.Stretch, color scene.Color) scene.Item {
	f := d.face(geom.FrameOf(s.Line))
	thick := stretchThick * d.Medium.Symbol / d.Medium.Scale
	return scene.Fill{Path: f.box(0, 0, s.Line.Length().Millimetres(), thick), Color: color}
}

// stretchLabel writes what is said of a finding's stretches beside the longest part,
// in the room.
func (d *drawing) stretchLabel(f *rule.Finding) {
	longest := d.longestShown(f.Stretches)
	r := d.roomOf(longest)
	if r == nil {
		return
	}
	run := scene.Run{
		Text: d.Medium.Voice.Say(f.Label),
		Size: d.Medium.Text, Weight: glyph.Bold, Color: d.Theme.Severity(f.Severity),
	}
	face := d.face(geom.FrameOf(longest.Line))
	long := longest.Line.Length().Millimetres()
	perMM := d.Medium.Text / d.Medium.Scale
	for _, out := range []float64{1.1, 2.2, 3.4, 5, 7} {
		for _, share := range []float64{0.5, 0.25, 0.75, 0, 1, -0.5, 1.5} {
			at := face.at(long*share, out*perMM)
			if box, ok := d.tryBeside(r, run, at, unitVector(geom.FrameOf(longest.Line).Out())); ok {
				run.At, run.VAlign = scene.Point{X: box.Min.X, Y: box.Middle().Y}, scene.Middle
				d.Put(f.About, render.LayerLabels, run)
				d.Obstacles.Text(run.Bounds(), f.About)
				return
			}
		}
	}
	d.Wanting = append(d.Wanting, &draft.Label{ID: f.About, Area: &r.Area, Run: run, From: scene.RectAround(face.at(long/2, perMM/2), d.Medium.Text/2, d.Medium.Text/2)})
}

// longestShown returns the longest stretch whose middle the window shows, or none.
func (d *drawing) longestShown(all []rule.Stretch) (longest rule.Stretch) {
	for _, s := range all {
		middle := d.Medium.ToScene(s.Line.A).Add(d.Medium.ToScene(s.Line.B)).Mul(0.5)
		if s.Length() > longest.Length() && d.Medium.Shows(scene.Rect{Min: middle, Max: middle}) {
			longest = s
		}
	}
	return longest
}

// tryBeside returns the box of a line of text whose nearest edge stands at a point
// and which reaches away from it in a direction, where that is free.
func (d *drawing) tryBeside(r *roomDrawing, run scene.Run, at, away scene.Point) (scene.Rect, bool) {
	w, h := draft.TextSize(run)
	middle := at.Add(scene.Point{X: away.X * w / 2, Y: away.Y * h / 2})
	box := scene.RectAround(middle, w, h)
	return box, r.Holds(box) && d.Obstacles.IsFree(d.Padded(box))
}

// roomOf returns the room that a stretch's face looks into.
func (d *drawing) roomOf(s rule.Stretch) *roomDrawing {
	if place, ok := d.Index.Place(plan.Anchor{Host: s.Host, Part: s.Part}); ok && place.Room != nil {
		return d.in[place.Room.ID]
	}
	return nil
}
