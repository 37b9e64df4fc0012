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

// mark is a place along the face that a tape is laid to.
type mark struct {
	at unit.Length
	to float64 // y of what stands there
	// isAssumed tells the edge of a casing that stands and that nobody measured.
	isAssumed bool
}

// high is from how high the centre of a box stands on the string over the face and no longer
// on the one under it: half of a usual wall, so that the line to it is short.
const high = 4 * unit.Foot

// along draws how far boxes and rough openings are from either end: of high boxes over the
// face, of the rest under it. Where the wall stays closed nobody sees a rough opening, and the
// outer edges of its casing are told.
func (d *drawing) along(over float64) {
	var above, below []mark
	for _, b := range d.Boxes {
		box := d.rect(b.Rect)
		if frame.CentreHeight(b.Opening, d.Room) >= high {
			above = append(above, mark{at: b.Along(), to: box.Min.Y})
		} else {
			below = append(below, mark{at: b.Along(), to: box.Max.Y})
		}
	}
	for _, c := range d.Wall.Face.Cuts {
		rough, ok := frame.RoughOf(c)
		r, isAssumed := rough.Rect, false
		if s := d.Wall.Face.Side; s.ConditionAt(c.From) == plan.ConditionClosed || s.ConditionAt(c.To) == plan.ConditionClosed {
			r, ok = frame.CasingOf(c)
			isAssumed = !c.Break.CasingMeasured
		}
		if ok {
			for _, x := range []unit.Length{r.Left, r.Right} {
				if 0 < x && x < d.Wall.Length {
					below = append(below, mark{x, d.m.ToStrip(0, r.Bottom).Y, isAssumed})
				}
			}
		}
	}
	d.strings(above, over-2.1*d.m.Text, over, -1)
	d.strings(below, d.floor+2.4*d.m.Text, d.floor, 1)
}

// tier is a string with the marks that have room on it.
type tier struct {
	marks []told
	taken float64 // up to where figures stand
	y     float64
}

// told is a mark with where its figures stand: at its right, or at its left where the next
// mark is too near.
type told struct {
	mark
	x           float64
	left, right scene.Run
}

// figureGap is the white between a mark and its figures, in ems.
const figureGap = 0.35

// strings draws marks on one string, and where their figures have no room beside one
// another on further ones, each farther from the face.
func (d *drawing) strings(marks []mark, y, from, way float64) {
	if len(marks) == 0 {
		return
	}
	slices.SortStableFunc(marks, func(a, b mark) int { return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(way*a.to, way*b.to)) })
	marks = slices.CompactFunc(marks, func(a, b mark) bool { return a.at == b.at })
	var tiers []*tier
	for i, m := range marks {
		next := d.right
		if i+1 < len(marks) {
			next = d.m.ToStrip(marks[i+1].at, 0).X
		}
		if !slices.ContainsFunc(tiers, func(t *tier) bool { return d.tell(t, m, next) }) {
			t := &tier{taken: d.left, y: y + way*float64(len(tiers))*3.1*d.m.Text}
			tiers = append(tiers, t)
			d.tell(t, m, next)
		}
	}
	for i, t := range tiers {
		d.string(t, i == 0)
	}
	for i, t := range tiers {
		for _, m := range t.marks {
			d.witness(m, t.y, from, tiers[:i])
		}
	}
}

// tell gives the figures of a mark their place on a string; it reports false where they
// have none, but that the first on a string always has one.
func (d *drawing) tell(t *tier, m mark, next float64) bool {
	x, gap := d.m.ToStrip(m.at, 0).X, figureGap*d.m.Text
	run := func(text string, w glyph.Weight, dy float64) scene.Run {
		return scene.Run{At: scene.Point{X: x + gap, Y: t.y + dy*d.m.Text}, Text: text, Size: d.m.Text, Weight: w, VAlign: scene.Middle, Color: d.m.Theme.Ink}
	}
	n := told{m, x, run(d.markFigure(m, m.at), glyph.Bold, -0.75), run(d.markFigure(m, d.Wall.Length-m.at), glyph.Regular, 0.75)}
	wide := max(n.left.Width(), n.right.Width()) + 2*gap
	isFirst := len(t.marks) == 0
	switch {
	case next < x+wide && (t.taken < x-wide || isFirst && d.left < x-wide):
		for _, r := range []*scene.Run{&n.left, &n.right} {
			r.At.X, r.Align = x-gap, scene.End
		}
		t.taken = x + gap
	case t.taken < x || isFirst:
		t.taken = x + wide
	default:
		return false
	}
	t.marks = append(t.marks, n)
	return true
}

// markFigure writes how far a mark is from an end, with the builder's sign for what is to be
// verified where it is assumed.
func (d *drawing) markFigure(m mark, l unit.Length) string {
	if m.isAssumed {
		return "± " + d.figure(l)
	}
	return d.figure(l)
}

// string draws a line from end to end with its marks: over it how far each is from the
// left end, under it from the right one.
func (d *drawing) string(t *tier, isFirst bool) {
	y := t.y
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: d.left, Y: y}, scene.Point{X: d.right, Y: y}), Pen: d.pen(2)})
	d.tick(d.left, y)
	d.tick(d.right, y)
	gap := figureGap * d.m.Text
	text := func(x, dy float64, s string, w glyph.Weight, a scene.Align) {
		d.put(scene.Run{At: scene.Point{X: x, Y: y + dy*d.m.Text}, Text: s, Size: d.m.Text, Weight: w, Align: a, VAlign: scene.Middle, Color: d.m.Theme.Ink})
	}
	for _, m := range t.marks {
		d.tick(m.x, y)
		d.put(m.left, m.right)
	}
	start := d.left
	for _, m := range t.marks {
		start = min(start, m.left.Bounds().Min.X, m.right.Bounds().Min.X)
	}
	text(start-gap, -0.75, d.say("face.from-left", "from left"), glyph.Regular, scene.End)
	end := max(d.right, t.taken) + 2*gap
	text(end, 0.75, d.say("face.from-right", "from right"), glyph.Regular, scene.Start)
	if isFirst {
		text(end, -0.75, d.figure(d.Wall.Length), glyph.Bold, scene.Start)
	}
}

// tick is the stroke across a string at a mark.
func (d *drawing) tick(x, y float64) {
	r := 0.32 * d.m.Text
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: x - r, Y: y + r}, scene.Point{X: x + r, Y: y - r}), Pen: d.pen(3)})
}

// witness leads from a string to the edge of the face, and within the face to what stands
// there. What stands between the two is left clear: the numbers of studs, and figures of
// the strings that are nearer.
func (d *drawing) witness(m told, y, from float64, nearer []*tier) {
	edge, beyond := d.floor, y+0.5*d.m.Text
	if y < from {
		edge, beyond = d.top, y-0.5*d.m.Text
	}
	parts := []span{{min(beyond, from), max(beyond, from)}}
	for _, t := range nearer {
		for _, n := range t.marks {
			for _, r := range []scene.Rect{n.left.Bounds(), n.right.Bounds()} {
				if r.Min.X-0.3 < m.x && m.x < r.Max.X+0.3 {
					parts = without(parts, span{r.Min.Y - 0.2, r.Max.Y + 0.2})
				}
			}
		}
	}
	for _, p := range append(parts, span{min(edge, m.to), max(edge, m.to)}) {
		if p.from < p.to {
			d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: m.x, Y: p.from}, scene.Point{X: m.x, Y: p.to}), Pen: d.pen(2)})
		}
	}
	d.spoken = append(d.spoken, scene.Rect{Min: scene.Point{X: m.x - 0.15, Y: min(edge, m.to)}, Max: scene.Point{X: m.x + 0.15, Y: max(edge, m.to)}})
}

// span is a part of an upright line.
type span struct{ from, to float64 }

// without takes a part out of parts.
func without(parts []span, out span) (left []span) {
	for _, p := range parts {
		if out.to <= p.from || p.to <= out.from {
			left = append(left, p)
			continue
		}
		left = append(left, span{p.from, out.from}, span{out.to, p.to})
	}
	return slices.DeleteFunc(left, func(p span) bool { return p.from >= p.to })
}
