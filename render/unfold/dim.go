package unfold

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// dimensions draws the height of the opening in hand above the datum, and how far it
// is from what its distance is told from.
func (u *unfolding) dimensions(view index.RoomView) {
	for _, f := range u.strip.Faces {
		side := &view.Sides[f.At]
		i := slices.IndexFunc(side.Openings, func(o *plan.Opening) bool { return o.ID == u.m.Opening })
		if i < 0 || u.m.Opening == "" {
			continue
		}
		o := side.Openings[i]
		u.heightOf(f, o)
		u.fromKept(f, o)
	}
}

// tick is half the length of the strokes at the ends of a dimension, in ems.
const tick = 0.32

func (u *unfolding) heightOf(f Face, o *plan.Opening) {
	centre := frame.CentreHeight(o, u.strip.Room)
	floor, told := unit.Length(0), centre
	if u.m.Datum == plan.Subfloor {
		floor, told = -u.strip.Floor, centre+u.strip.Floor
	}
	run := scene.Run{
		Text: u.m.Voice.Say(words.New("opening.height", "{0}", words.Height(told))), Size: u.m.Text,
		Weight: glyph.Bold, Color: u.Theme.Ink, VAlign: scene.Middle,
	}
	d := u.freeHeight(f, o, run, u.m.ToStrip(0, floor).Y, u.m.ToStrip(0, centre).Y)
	reach := scene.Point{X: tick * u.m.Text}
	pen := u.InkPen(1)
	items := []scene.Item{
		scene.Stroke{Path: scene.LinePath(d.low, d.high), Pen: pen},
		scene.Stroke{Path: scene.LinePath(d.high.Sub(reach), d.high.Add(reach)), Pen: pen},
		scene.Stroke{Path: scene.LinePath(d.low.Sub(reach), d.low.Add(reach)), Pen: pen},
		backing(d.run, u.Theme.Surface), d.run,
	}
	u.Put(o.ID, render.LayerMarks, items...)
	u.Obstacles.Line(d.low, d.high, o.ID)
	u.Obstacles.Text(d.run.Bounds(), o.ID)
}

// heightDim is the dimension of a height: a line beside the box, and its text.
type heightDim struct {
	low, high scene.Point
	run       scene.Run
}

// freeHeight places the dimension of a height: at the left of the box, or else at its
// right, with its text where neither lies on another box; where there is no such place, the
// first that is not on the face before.
func (u *unfolding) freeHeight(f Face, o *plan.Opening, run scene.Run, floor, centre float64) heightDim {
	box, gap := u.boxOf(f, o), 0.7*u.m.Text
	others := u.otherBoxes(o)
	var inFace []heightDim
	for _, isRight := range []bool{false, true} {
		x, out, align := box.Min.X-gap, -0.4*u.m.Text, scene.End
		if isRight {
			x, out, align = box.Max.X+gap, 0.4*u.m.Text, scene.Start
		}
		for _, share := range []float64{0.5, 0.75, 0.25} {
			d := heightDim{low: scene.Point{X: x, Y: floor}, high: scene.Point{X: x, Y: centre}, run: run}
			d.run.Align, d.run.At = align, scene.Point{X: x + out, Y: floor + share*(centre-floor)}
			said := d.run.Bounds()
			if !isRight && said.Min.X < u.m.ToStrip(f.Left, 0).X {
				continue // it would lie on the face before
			}
			if isFree(d, said, others) {
				return d
			}
			inFace = append(inFace, d)
		}
	}
	return inFace[0]
}

// isFree reports whether neither the line nor the text of a dimension lies on a box.
func isFree(d heightDim, said scene.Rect, boxes []scene.Rect) bool {
	line := scene.Rect{Min: scene.Point{X: d.high.X, Y: min(d.low.Y, d.high.Y)}, Max: scene.Point{X: d.high.X, Y: max(d.low.Y, d.high.Y)}}
	return !slices.ContainsFunc(boxes, func(b scene.Rect) bool {
		b = b.Expanded(0.3 * d.run.Size)
		return b.Overlaps(line.Expanded(0.01)) || b.Overlaps(said)
	})
}

// otherBoxes lists the boxes of the strip, but one.
func (u *unfolding) otherBoxes(but *plan.Opening) (boxes []scene.Rect) {
	for _, face := range u.strip.Faces {
		for _, o := range u.Index.OpeningsOn(face.Side.ID) {
			if o.ID != but.ID {
				boxes = append(boxes, u.boxOf(face, o))
			}
		}
	}
	return boxes
}

// backing is a patch of ground under a text that may lie over other lines.
func backing(run scene.Run, color scene.Color) scene.Item {
	color.A = 0xd8
	return scene.Fill{Path: run.Bounds().Expanded(0.15 * run.Size).Path(), Color: color}
}

func (u *unfolding) fromKept(f Face, o *plan.Opening) {
	mark, away, told := render.Kept(u.Index, &plan.SideRef{Room: u.strip.Room, At: f.At}, o)
	end := max(0, min(mark.At, f.Length))
	y := u.m.ToStrip(0, -u.strip.Floor).Y + 0.9*u.m.Text
	if u.m.Kind == render.Sheet {
		y += 1.4 * u.m.Text // below the names of the faces
	}
	a, b := u.m.ToStrip(f.Left+min(o.At.Along, end), 0), u.m.ToStrip(f.Left+max(o.At.Along, end), 0)
	a.Y, b.Y = y, y
	reach := scene.Point{Y: tick * u.m.Text}
	pen := u.InkPen(1)
	run := scene.Run{
		At:   scene.Point{X: (a.X + b.X) / 2, Y: y + 0.7*u.m.Text},
		Text: u.m.Voice.Say(told),
		Size: u.m.Text, Color: u.Theme.Ink, Align: scene.Center, VAlign: scene.Top,
	}
	left, right := u.m.ToStrip(0, 0).X, u.m.ToStrip(u.strip.Width, 0).X
	half := run.Width() / 2
	run.At.X = max(left+half, min(right-half, run.At.X))
	ticks := []scene.Point{a, b}
	if away != (o.At.Along - end).Abs() { // the wall goes straight on past the end drawn here
		ticks = slices.DeleteFunc(ticks, func(p scene.Point) bool { return p.X == u.m.ToStrip(f.Left+end, 0).X })
	}
	items := []scene.Item{scene.Stroke{Path: scene.LinePath(a, b), Pen: pen}}
	for _, at := range ticks {
		items = append(items, scene.Stroke{Path: scene.LinePath(at.Sub(reach), at.Add(reach)), Pen: pen})
	}
	u.Put(o.ID, render.LayerMarks, append(items, run)...)
	u.Obstacles.Text(run.Bounds(), o.ID)
}
