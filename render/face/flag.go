package face

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// flag is what is said beside a box, the most telling lines first.
type flag struct {
	lines []scene.Run
	box   scene.Rect // of the box it is of
}

// flagSteps is over how many places above and below its box a flag is tried, each some
// four fifths of an em from the one before.
const flagSteps = 24

// flagLine is from line to line, in ems.
const flagLine = 1.22

// flags says beside each box what its builder needs: which it is, how high, what holds it
// and how far it stands proud. Where all of it finds no room, the first lines alone. Of a box
// that is struck it says which that is.
func (d *drawing) flags() {
	for _, b := range slices.Concat(d.Boxes, d.Gone) {
		d.stood = append(d.stood, d.rect(b.Rect))
	}
	d.keepArrows()
	for _, b := range d.Boxes {
		if !d.flag(b) {
			d.untold = append(d.untold, b.Opening.ID)
		}
	}
	for _, b := range d.Gone {
		d.flag(b)
	}
}

// keepArrows leaves the room between a box and the one that it was moved from to the arrow
// there and its words.
func (d *drawing) keepArrows() {
	for _, b := range d.Boxes {
		for _, was := range d.Gone {
			if was.Opening.ID != b.Was {
				continue
			}
			from, to := d.rect(was.Rect), d.rect(b.Rect)
			d.spoken = append(d.spoken, scene.Rect{
				Min: scene.Point{X: min(from.Max.X, to.Max.X), Y: min(from.Min.Y, to.Min.Y) - 1.6*d.m.Text},
				Max: scene.Point{X: max(from.Min.X, to.Min.X), Y: max(from.Max.Y, to.Max.Y) + 1.6*d.m.Text},
			})
		}
	}
}

func (d *drawing) flag(b Box) bool {
	all := d.lines(b)
	for n := len(all); n > 0; n-- {
		f := flag{lines: all[:n], box: d.rect(b.Rect)}
		if at, ok := d.roomFor(f); ok {
			d.raise(f, at)
			return true
		}
	}
	return false
}

// lines are what a flag says.
func (d *drawing) lines(b Box) (all []scene.Run) {
	line := func(text string, w glyph.Weight, size float64) {
		if text != "" {
			all = append(all, scene.Run{Text: text, Weight: w, Size: size * d.m.Text, Color: d.m.Theme.Ink})
		}
	}
	name := b.Opening.Tag
	if b.Gangs > 1 {
		name = d.say("face.gangs", "{0} · {1}-gang", name, b.Gangs)
	}
	if b.Status != plan.StatusNew {
		name = d.say("face.status", "{0} · {1}", name, b.Status.Text())
	}
	line(name, glyph.Bold, 1.15)
	if b.Opening.IsGone() {
		return all
	}
	line(d.say("face.centre", "center {0}", d.Height(frame.CentreHeight(b.Opening, d.Room))), glyph.Bold, 1)
	line(d.Face.HeldBy(d.m.Voice, b), glyph.Bold, 1)
	if k := b.Hold.Block; b.IsBuiltIn && k != nil {
		line(d.say("face.set-back", "set back {0}", d.figure(k.SetBack)), glyph.Regular, 1)
	}
	if b.IsBuiltIn {
		line(d.Face.Set(d.m.Voice, b), glyph.Regular, 1)
	}
	if b.Opening.IsUnread() { // nobody knows where its edges are
		return all
	}
	line(d.say("face.edges", "{0} to {1}", d.Height(b.Rect.Bottom), words.Height(d.Up(b.Rect.Top))), glyph.Regular, 1)
	return all
}

// size is the room a flag takes.
func (d *drawing) size(f flag) (wide, tall float64) {
	for _, l := range f.lines {
		wide = max(wide, l.Width())
	}
	return wide + 0.5*d.m.Text, (float64(len(f.lines))*flagLine + 0.15) * d.m.Text
}

// roomFor returns where a flag stands clear of boxes, of the lines that lead to them and of
// other flags, the nearest place first: beside its box at either hand, level with it, then
// higher or lower.
func (d *drawing) roomFor(f flag) (scene.Rect, bool) {
	wide, tall := d.size(f)
	t := d.m.Text
	for _, gap := range []float64{0.7 * t, 2.5 * t, 5 * t, 8 * t, 12 * t} {
		for step := range flagSteps {
			for _, up := range []float64{-1, 1} {
				y := f.box.Middle().Y - tall/2 + up*float64(step)*0.8*t
				for _, x := range []float64{f.box.Max.X + gap, f.box.Min.X - gap - wide} {
					r := scene.Rect{Min: scene.Point{X: x, Y: y}, Max: scene.Point{X: x + wide, Y: y + tall}}
					if d.isClear(r) {
						return r, true
					}
				}
			}
		}
	}
	return scene.Rect{}, false
}

// isClear reports whether a flag may stand in a place.
func (d *drawing) isClear(r scene.Rect) bool {
	if r.Min.X < d.left || r.Max.X > d.right || r.Min.Y < d.top || r.Max.Y > d.floor {
		return false
	}
	air := r.Expanded(0.25 * d.m.Text)
	hits := func(all []scene.Rect) bool { return slices.ContainsFunc(all, air.Overlaps) }
	return !hits(d.stood) && !hits(d.spoken)
}

// raise draws a flag with the staff it hangs on and a line to its box.
func (d *drawing) raise(f flag, r scene.Rect) {
	isRight := r.Min.X > f.box.Middle().X
	staff, edge, text := r.Min.X, f.box.Max.X, r.Min.X+0.35*d.m.Text
	align := scene.Start
	if !isRight {
		staff, edge, text, align = r.Max.X, f.box.Min.X, r.Max.X-0.35*d.m.Text, scene.End
	}
	at := min(max(f.box.Middle().Y, r.Min.Y), r.Max.Y)
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: edge, Y: f.box.Middle().Y}, scene.Point{X: staff, Y: at}), Pen: d.pen(2)})
	y := r.Min.Y
	for _, l := range f.lines {
		y += flagLine * d.m.Text
		l.At, l.Align = scene.Point{X: text, Y: y - 0.3*d.m.Text}, align
		d.put(scene.Fill{Path: l.Bounds().Path(), Color: d.m.Theme.Paper}, l)
	}
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: staff, Y: r.Min.Y}, scene.Point{X: staff, Y: r.Max.Y}), Pen: d.pen(2)})
	d.spoken = append(d.spoken, r, scene.Rect{Min: scene.Point{X: min(edge, staff), Y: min(at, f.box.Middle().Y) - 0.1}, Max: scene.Point{X: max(edge, staff), Y: max(at, f.box.Middle().Y) + 0.1}})
}

// heldEdges draws the edge of a box that is against the stud which holds it heavy.
func (d *drawing) heldEdges() {
	for _, b := range d.Boxes {
		if !b.IsBuiltIn || !b.Hold.HasBay {
			continue
		}
		r := d.rect(b.Rect)
		edge := func(x float64) {
			d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: r.Min.Y}, scene.Point{X: x, Y: r.Max.Y}), Pen: d.pen(7)})
		}
		left, right := b.Hold.Against(b.Rect)
		if left {
			edge(r.Min.X)
		}
		if right {
			edge(r.Max.X)
		}
	}
}
