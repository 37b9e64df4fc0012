package render

import (
	"math"

	"studbay/plan"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// label is a line of text that belongs to something drawn.
type label struct {
	id   plan.ID
	room *roomDrawing
	run  scene.Run  // its place is not settled yet
	from scene.Rect // what it belongs to: a body
	into scene.Point
	ring bool // a ring stands round the body
}

// letter writes all names, tags and marks. It ranks: a tag beside its body; else with
// a leader line; else, on a board alone, it is left out until nearer.
func (d *drawing) letter() {
	if d.m.isFar() {
		return
	}
	d.keepOffWalls()
	d.rings()
	d.fixtureNames()
	d.stretches()
	letters := d.controlLetters()
	for _, r := range d.rooms {
		for _, g := range r.groups {
			for i, o := range g.openings {
				text := joinedText(o.Tag, g.beside[i], letters[o.ID])
				if p := d.places[o.ID]; p != nil && !p.isOff && text != "" {
					d.tag(p, text)
				}
			}
		}
	}
	for _, r := range d.rooms {
		d.roomName(r)
	}
	for _, l := range d.wanting {
		d.lead(l)
	}
	d.marks()
}

// keepOffWalls keeps texts off both faces of every wall, and off what is ruled over.
func (d *drawing) keepOffWalls() {
	for _, l := range d.m.Ruled {
		d.field.line(l[0], l[1], "")
	}
	for _, r := range d.rooms {
		for i, w := range r.walls {
			d.field.line(r.outline[i], r.outline[(i+1)%len(r.outline)], w.side.Side.ID)
			f := d.face(w.side.Frame)
			for _, b := range w.bodies {
				t := b.thickness.Millimetres()
				d.field.line(f.at(b.from.Millimetres()-t, -t), f.at(b.to.Millimetres()+t, -t), w.side.Side.ID)
			}
		}
	}
}

// controlLetters returns the letters of the controls that each opening is part of.
func (d *drawing) controlLetters() map[plan.ID]string {
	letters := map[plan.ID]string{}
	for _, c := range d.joins {
		if c.Letter == "" {
			continue
		}
		for _, ids := range [][]plan.ID{c.Switches, c.Loads} {
			for _, id := range ids {
				if d.places[id] != nil {
					letters[id] = joinedText(letters[id], c.Letter)
				}
			}
		}
	}
	return letters
}

// tag writes an opening's tag, with what follows it, beside its body, or puts it off.
func (d *drawing) tag(p *openingPlace, text string) {
	color := d.theme.Muted
	if d.m.Kind == Sheet {
		color = d.theme.Ink
	}
	f := d.found.worst(p.opening.ID)
	if f != nil && !f.IsOpen && d.m.Kind == Board {
		color = d.theme.severityColor(f.Severity)
	}
	l := &label{
		id: p.opening.ID, room: p.room, from: p.box, into: p.into, ring: f != nil,
		run: scene.Run{Text: text, Size: d.m.Text, Weight: glyph.Bold, Color: color},
	}
	if !d.beside(l) {
		d.wanting = append(d.wanting, l)
	}
}

// labelSize returns the box that a line of text takes.
func labelSize(run scene.Run) (w, h float64) {
	m := glyph.MetricsOf(run.Weight, run.Size)
	return run.Width(), m.CapHeight + m.Descent
}

// padded is the box a text wants to itself.
func (d *drawing) padded(box scene.Rect) scene.Rect { return box.Expanded(0.16 * d.m.Text) }

// compass are the ways a tag may stand from its body, by what the stem does: beside
// it first, then beyond it, then askew.
var compass = struct{ upright, lying, flat [8]scene.Point }{
	upright: [8]scene.Point{{X: 1}, {X: -1}, {Y: 1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}, {Y: -1}},
	lying:   [8]scene.Point{{X: 1}, {Y: 1}, {Y: -1}, {X: 1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: 1}, {X: -1, Y: -1}, {X: -1}},
	flat:    [8]scene.Point{{X: 1}, {X: -1}, {Y: 1}, {Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}},
}

// ways returns the ways of a label in order, turned so that they point into the room.
func (l *label) ways() [8]scene.Point {
	switch {
	case l.into == scene.Point{}:
		return compass.flat
	case math.Abs(l.into.Y) >= math.Abs(l.into.X):
		return turned(compass.upright, scene.Point{X: 1, Y: math.Copysign(1, l.into.Y)})
	}
	return turned(compass.lying, scene.Point{X: math.Copysign(1, l.into.X), Y: 1})
}

func turned(ways [8]scene.Point, sign scene.Point) [8]scene.Point {
	for i := range ways {
		ways[i] = scene.Point{X: ways[i].X * sign.X, Y: ways[i].Y * sign.Y}
	}
	return ways
}

// beside tries the places round the body.
func (d *drawing) beside(l *label) bool {
	gap := 0.32 * d.m.Symbol
	if l.ring {
		gap = (ringRadius-0.5)*d.m.Symbol + 0.22*d.m.Text
	}
	w, h := labelSize(l.run)
	around := l.from.Expanded(gap)
	middle := l.from.Middle()
	for _, way := range l.ways() {
		at := scene.Point{
			X: middle.X + way.X*(around.Width()+w)/2,
			Y: middle.Y + way.Y*(around.Height()+h)/2,
		}
		if way.X != 0 && way.Y != 0 {
			// Askew, it may come nearer the corner of the body.
			at.Y = middle.Y + way.Y*(l.from.Height()+h)/2
		}
		box := scene.RectAround(at, w, h)
		if l.room.holds(box) && d.field.isFree(d.padded(box)) {
			d.write(l, box)
			return true
		}
	}
	return false
}

// write settles a label in its box.
func (d *drawing) write(l *label, box scene.Rect, more ...scene.Item) {
	run := l.run
	run.At = scene.Point{X: box.Min.X, Y: box.Min.Y + glyph.MetricsOf(run.Weight, run.Size).CapHeight}
	d.field.text(box, l.id)
	d.piece(l.id, LayerLabels, append(more, run)...)
}

// The reach of leader lines in bodies. A tag farther off is left out: a longer line
// is one nobody follows with the eye.
const (
	boardReach = 5.0
	sheetReach = 12.0
	farReach   = 40.0
)

// lead places a label with a leader line: on rings round its body, in its room and
// crossing no body or text; on a sheet, failing that, wherever there is room in reach.
func (d *drawing) lead(l *label) {
	if d.m.Kind == Board {
		d.ringSearch(l, boardReach, true, false)
		return
	}
	_ = d.ringSearch(l, sheetReach, true, false) ||
		d.ringSearch(l, sheetReach, false, false) ||
		d.ringSearch(l, farReach, false, true)
}

// bearings is how many ways each ring is tried.
const bearings = 24

// ringSearch tries rings outward. A leader line crosses no text ever, and no body of
// another noun unless it may.
func (d *drawing) ringSearch(l *label, reach float64, inRoom, overBodies bool) bool {
	w, h := labelSize(l.run)
	middle := l.from.Middle()
	ways := bearingsOf(l.into)
	for r := 1.3; r <= reach; r += 0.6 + r*0.04 {
		for _, way := range ways {
			at := middle.Add(way.Mul(r * d.m.Symbol)).Add(scene.Point{X: way.X * w / 2, Y: way.Y * h / 2})
			box := scene.RectAround(at, w, h)
			if inRoom && !l.room.holds(box) || !d.m.shows(box) || !d.field.isFree(d.padded(box)) {
				continue
			}
			from, to := leader(l.from, box, d.m.Pixel)
			if d.field.crosses(from, to, l.id, overBodies) {
				continue
			}
			d.write(l, box, scene.Stroke{Path: scene.LinePath(from, to), Pen: d.leaderPen()})
			d.field.line(from, to, l.id)
			return true
		}
	}
	return false
}

// bearingsOf returns the ways a ring is tried: by turns to either side of the way into
// the room.
func bearingsOf(into scene.Point) (ways [bearings]scene.Point) {
	for i := range ways {
		turn := float64((i+1)/2) * 360 / bearings
		if i%2 == 1 {
			turn = -turn
		}
		ways[i] = scene.Direction(heading(into) + turn)
	}
	return ways
}

func (d *drawing) leaderPen() scene.Pen {
	return scene.Pen{Width: d.m.Pixel, Color: d.theme.Muted}
}

// heading returns a direction's angle in degrees, a ceiling's being down and right.
func heading(into scene.Point) float64 {
	if into == (scene.Point{}) {
		return 45
	}
	return math.Atan2(into.Y, into.X) * 180 / math.Pi
}

// leader returns the line from the edge of a body to the edge of a text's box.
func leader(from, to scene.Rect, hair float64) (a, b scene.Point) {
	m := from.Middle()
	b = scene.Point{
		X: max(to.Min.X-hair, min(m.X, to.Max.X+hair)),
		Y: max(to.Min.Y-hair, min(m.Y, to.Max.Y+hair)),
	}
	return leaving(from, m, b, 0), b
}
