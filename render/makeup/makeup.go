// Package makeup draws how the conductors of a box are joined: its cables over it, what sits in
// it at its foot, and between them a row for each thing that conductors do. A dot is a splice,
// a gap a crossing. What a conductor does is told by its line and in words, never by hue.
//
// What is joined with what is asked of fill/wire; nothing here decides it.
package makeup

import (
	"math"
	"slices"

	"studbay/fill/wire"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// Look is what a make-up is drawn for. Sizes are in scene units.
type Look struct {
	Voice words.Voice
	Theme *render.Theme
	Text  float64 // em height
	Width float64
}

// The measures of a drawing, in heights of its text.
const (
	labels   = 9.5 // the column at the left that names the rows
	titles   = 2.8 // over the cables
	names    = 9.0 // of conductors, on end
	rowTall  = 2.2
	terminal = 6.5 // of names of terminals, on end
	foot     = 3.0 // of the names of devices
	least    = 1.3 // between two lines
)

// drawing is one in the making.
type drawing struct {
	Look
	m     wire.MakeUp
	at    scene.Point
	wires [][]float64 // where each conductor of each cable comes down
	ends  [][]float64 // where each terminal of each device is
	items []scene.Item
}

// Draw returns a make-up with its upper left corner at a place, and how high it is.
func Draw(m wire.MakeUp, at scene.Point, l Look) (items []scene.Item, tall float64) {
	d := &drawing{Look: l, m: m, at: at}
	d.places()
	top := at.Y + (titles+names)*l.Text
	rows := top + rowTall*l.Text
	under := rows + float64(len(m.Nets))*rowTall*l.Text
	bottom := under + (terminal+foot)*l.Text
	d.box(top, bottom)
	d.cables(top)
	for i, n := range m.Nets {
		d.row(n, rows+float64(i)*rowTall*l.Text)
	}
	for i, n := range m.Nets {
		d.uprights(n, i, rows, top, under)
	}
	for i, n := range m.Nets {
		d.dots(n, rows+float64(i)*rowTall*l.Text)
	}
	d.devices(under)
	return d.items, bottom - at.Y
}

func (d *drawing) add(items ...scene.Item) { d.items = append(d.items, items...) }

// places gives each conductor and each terminal a place along the drawing, none on another.
func (d *drawing) places() {
	left, width := d.at.X+labels*d.Text, d.Width-labels*d.Text
	spread := func(groups []int) (all [][]float64) {
		slots := 0
		for _, n := range groups {
			slots += n + 1
		}
		slot := 0.0
		step := width / float64(max(slots, 1))
		for _, n := range groups {
			var xs []float64
			for range n {
				xs = append(xs, left+(slot+1)*step)
				slot++
			}
			slot++
			all = append(all, xs)
		}
		return all
	}
	var cables, devices []int
	for _, c := range d.m.Cables {
		cables = append(cables, len(c.Conductors))
	}
	for _, x := range d.m.Devices {
		devices = append(devices, len(x.Terminals))
	}
	d.wires, d.ends = spread(cables), spread(devices)
	taken := slices.Concat(d.wires...)
	for _, xs := range d.ends {
		for i := range xs {
			for d.isTaken(taken, xs[i]) {
				xs[i] += least * d.Text / 4
			}
			taken = append(taken, xs[i])
		}
	}
}

func (d *drawing) isTaken(taken []float64, x float64) bool {
	return slices.ContainsFunc(taken, func(y float64) bool { return math.Abs(x-y) < least*d.Text/2 })
}

// box draws the outline of the box.
func (d *drawing) box(top, bottom float64) {
	r := scene.Rect{Min: scene.Point{X: d.at.X + (labels-0.5)*d.Text, Y: top}, Max: scene.Point{X: d.at.X + d.Width, Y: bottom}}
	d.add(scene.Stroke{Path: r.Path(), Pen: scene.Pen{Width: d.Text * 0.14, Color: d.Theme.Ink}})
}

// cables names each cable over it, and its conductors on end.
func (d *drawing) cables(top float64) {
	for i, c := range d.m.Cables {
		xs := d.wires[i]
		if len(xs) == 0 {
			continue
		}
		room := xs[len(xs)-1] - xs[0] + 2.2*d.Text
		size := words.New("makeup.cable", "{0}/{1}", c.Cable.Size, c.Cable.Wires)
		way := words.New("makeup.to", "to {0}", otherOf(c))
		if c.IsFeed {
			way = words.New("makeup.from", "from {0}", otherOf(c))
		}
		x := xs[0] - d.Text
		d.text(x, d.at.Y+0.9*d.Text, room, size, glyph.Bold, d.Theme.Ink)
		d.text(x, d.at.Y+2.1*d.Text, room, way, glyph.Regular, d.Theme.Ink)
		for j, w := range c.Conductors {
			d.onEnd(xs[j], top-0.5*d.Text, words.New("makeup.wire", "{0}, {1}", w.Text(), w.Color.Text()), (names-0.8)*d.Text)
		}
	}
}

func otherOf(c wire.MadeCable) words.Text {
	if c.Other == nil {
		return words.New("list.the-panel", "panel")
	}
	return words.New("plain", "{0}", c.Other.Tag)
}

// text writes a line that is cut to its room.
func (d *drawing) text(x, y, room float64, t words.Text, w glyph.Weight, c scene.Color) {
	d.add(scene.Run{At: scene.Point{X: x, Y: y}, Text: fit(d.Voice.Say(t), w, d.Text, room), Size: d.Text, Weight: w, Color: c})
}

// onEnd writes a text upwards from a place.
func (d *drawing) onEnd(x, y float64, t words.Text, room float64) {
	d.add(scene.Run{At: scene.Point{X: x, Y: y}, Text: fit(d.Voice.Say(t), glyph.Regular, d.Text, room), Size: d.Text, VAlign: scene.Middle, Color: d.Theme.Ink, Angle: -90})
}

// fit cuts a text to a width.
func fit(text string, w glyph.Weight, size, width float64) string {
	if glyph.Width(w, size, text) <= width {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && glyph.Width(w, size, string(runes)+"…") > width {
		runes = runes[:len(runes)-1]
	}
	return string(runes) + "…"
}

// xsOf are where a net's conductors and terminals are.
func (d *drawing) xsOf(n wire.Net) (cables, terminals []float64) {
	for _, p := range n.Cables {
		cables = append(cables, d.wires[p.Of][p.At])
	}
	for _, p := range n.Terminals {
		terminals = append(terminals, d.ends[p.Of][p.At])
	}
	return cables, terminals
}

// span is how far the line of a net reaches.
func (d *drawing) span(n wire.Net) (from, to float64) {
	cables, terminals := d.xsOf(n)
	all := append(cables, terminals...)
	if n.IsBonded {
		all = append(all, d.at.X+(labels-0.5)*d.Text)
	}
	if len(all) == 0 {
		return 0, 0
	}
	return slices.Min(all), slices.Max(all)
}

// row draws the line of a net and names it at the left.
func (d *drawing) row(n wire.Net, y float64) {
	d.text(d.at.X, y, (labels-1)*d.Text, n.Conductor.Text(), glyph.Bold, d.Theme.Ink)
	d.text(d.at.X, y+d.Text, (labels-1)*d.Text, Says(n), glyph.Regular, d.Theme.Muted)
	if from, to := d.span(n); to > from {
		d.line(n.Conductor.Role, scene.Point{X: from, Y: y}, scene.Point{X: to, Y: y})
	}
}

// Says tells in words what becomes of what is joined.
func Says(n wire.Net) words.Text {
	tails := len(n.Terminals)
	switch {
	case n.IsCapped():
		return words.New("makeup.capped", "capped")
	case !n.IsSplice():
		return words.New("makeup.direct", "to its device")
	case n.IsBonded && tails > 0:
		return words.New("makeup.bonded-tails", "{0} + {1} tails + box", len(n.Cables), tails)
	case n.IsBonded:
		return words.New("makeup.bonded", "{0} + box", len(n.Cables))
	case tails > 0:
		return words.New("makeup.tails", "{0} + {1} tails", len(n.Cables), tails)
	}
	return words.New("makeup.together", "{0} together", len(n.Cables))
}
