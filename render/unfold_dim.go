package render

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// dimensions draws the height of the opening in hand above the datum, and how far it
// is from the nearer corner.
func (u *unfolding) dimensions(view plan.RoomView) {
	for _, f := range u.strip.Faces {
		side := &view.Sides[f.At]
		i := slices.IndexFunc(side.Openings, func(o *plan.Opening) bool { return o.ID == u.m.Opening })
		if i < 0 || u.m.Opening == "" {
			continue
		}
		o := side.Openings[i]
		u.heightOf(f, o)
		u.fromCorner(f, o)
	}
}

// tick is half the length of the strokes at the ends of a dimension, in ems.
const tick = 0.32

func (u *unfolding) heightOf(f StripFace, o *plan.Opening) {
	_, h := BoxFront(u.drawing.m.parts(), o)
	centre := o.Height.Centre(h, u.strip.Floor)
	floor, told := unit.Length(0), centre
	if u.m.Datum == plan.Subfloor {
		floor, told = -u.strip.Floor, centre+u.strip.Floor
	}
	box := u.boxOf(f, o)
	low, high := u.m.ToStrip(f.Left+o.At.Along, floor), u.m.ToStrip(f.Left+o.At.Along, centre)
	run := scene.Run{
		Text: u.m.Voice.Say(words.New("opening.height", "{0}", words.Height(told))), Size: u.m.Text,
		Weight: glyph.Bold, Color: u.theme.Ink, Align: scene.End, VAlign: scene.Middle,
	}
	aside := -0.7 * u.m.Text
	if box.Min.X+aside-run.Width() < u.m.ToStrip(f.Left, 0).X {
		aside, run.Align = 0.7*u.m.Text, scene.Start
		low.X, high.X = box.Max.X+aside, box.Max.X+aside
		run.At = scene.Point{X: low.X + 0.4*u.m.Text, Y: (low.Y + high.Y) / 2}
	} else {
		low.X, high.X = box.Min.X+aside, box.Min.X+aside
		run.At = scene.Point{X: low.X - 0.4*u.m.Text, Y: (low.Y + high.Y) / 2}
	}
	reach := scene.Point{X: tick * u.m.Text}
	pen := u.inkPen(1)
	edge := box.Min.X
	if aside > 0 {
		edge = box.Max.X
	}
	items := []scene.Item{
		scene.Stroke{Path: scene.LinePath(low, high), Pen: pen},
		scene.Stroke{Path: scene.LinePath(high.Sub(reach), scene.Point{X: max(high.X+reach.X, min(edge, high.X+reach.X)), Y: high.Y}), Pen: pen},
		scene.Stroke{Path: scene.LinePath(low.Sub(reach), low.Add(reach)), Pen: pen},
		backing(run, u.theme.Surface), run,
	}
	u.piece(o.ID, LayerMarks, items...)
	u.field.line(low, high, o.ID)
	u.field.text(run.Bounds(), o.ID)
}

// backing is a patch of ground under a text that may lie over other lines.
func backing(run scene.Run, color scene.Color) scene.Item {
	color.A = 0xd8
	return scene.Fill{Path: run.Bounds().Expanded(0.15 * run.Size).Path(), Color: color}
}

func (u *unfolding) fromCorner(f StripFace, o *plan.Opening) {
	away, isRight, corner := FromCorner(u.ix, u.strip.Room, f.At, o.At.Along)
	end := unit.Length(0)
	if isRight {
		end = f.Length
	}
	y := u.m.ToStrip(0, -u.strip.Floor).Y + 0.9*u.m.Text
	if u.m.Kind == Sheet {
		y += 1.4 * u.m.Text // below the names of the faces
	}
	a, b := u.m.ToStrip(f.Left+min(o.At.Along, end), 0), u.m.ToStrip(f.Left+max(o.At.Along, end), 0)
	a.Y, b.Y = y, y
	reach := scene.Point{Y: tick * u.m.Text}
	pen := u.inkPen(1)
	run := scene.Run{
		At:   scene.Point{X: (a.X + b.X) / 2, Y: y + 0.7*u.m.Text},
		Text: u.m.Voice.Say(words.New("dimension.corner", "{0} from the {1} corner", away, corner)),
		Size: u.m.Text, Color: u.theme.Ink, Align: scene.Center, VAlign: scene.Top,
	}
	left, right := u.m.ToStrip(0, 0).X, u.m.ToStrip(u.strip.Width, 0).X
	half := run.Width() / 2
	run.At.X = max(left+half, min(right-half, run.At.X))
	u.piece(o.ID, LayerMarks,
		scene.Stroke{Path: scene.LinePath(a, b), Pen: pen},
		scene.Stroke{Path: scene.LinePath(a.Sub(reach), a.Add(reach)), Pen: pen},
		scene.Stroke{Path: scene.LinePath(b.Sub(reach), b.Add(reach)), Pen: pen},
		run)
	u.field.text(run.Bounds(), o.ID)
}
