package makeup

import (
	"studbay/fill/wire"
	"studbay/render"
	"studbay/render/scene"
)

// uprights draws what comes down to the line of a net, and from there to its terminals, with a
// gap in each line of another net that it crosses.
func (d *drawing) uprights(n wire.Net, i int, rows, top, under float64) {
	y := rows + float64(i)*rowTall*d.Text
	cables, terminals := d.xsOf(n)
	for _, x := range cables {
		d.upright(n, x, top, y, rows)
	}
	for _, x := range terminals {
		d.upright(n, x, y, under, rows)
	}
}

func (d *drawing) upright(n wire.Net, x, from, to, rows float64) {
	for k, other := range d.m.Nets {
		y := rows + float64(k)*rowTall*d.Text
		left, right := d.span(other)
		if y <= from || y >= to || x < left || x > right {
			continue
		}
		gap := 0.45 * d.Text
		d.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: y - gap}, scene.Point{X: x, Y: y + gap}), Pen: scene.Pen{Width: 2 * gap, Color: d.Theme.Paper}})
	}
	d.line(n.Conductor.Role, scene.Point{X: x, Y: from}, scene.Point{X: x, Y: to})
}

// dots marks each place where a conductor is spliced, and one that is capped.
func (d *drawing) dots(n wire.Net, y float64) {
	cables, terminals := d.xsOf(n)
	switch {
	case n.IsCapped():
		r := 0.4 * d.Text
		for _, x := range cables {
			d.add(scene.Fill{Path: scene.Circle(scene.Point{X: x, Y: y}, r), Color: d.Theme.Paper},
				scene.Stroke{Path: scene.Circle(scene.Point{X: x, Y: y}, r), Pen: scene.Pen{Width: 0.12 * d.Text, Color: d.Theme.Ink}})
		}
	case n.IsSplice():
		if n.IsBonded {
			cables = append(cables, d.at.X+(labels-0.5)*d.Text)
		}
		for _, x := range append(cables, terminals...) {
			d.add(scene.Fill{Path: scene.Circle(scene.Point{X: x, Y: y}, 0.38*d.Text), Color: d.Theme.Ink})
		}
	}
}

// line draws a part of a conductor in the line of its role.
func (d *drawing) line(role wire.Role, from, to scene.Point) {
	d.add(Line(role, from, to, d.Text, d.Theme)...)
}

// Line draws the line of a role: dashed a ground, double a neutral, thick what is hot, dashes
// and dots what is switched, thin a traveler.
func Line(role wire.Role, from, to scene.Point, text float64, t *render.Theme) (items []scene.Item) {
	pen := scene.Pen{Width: 0.12 * text, Color: t.Ink}
	switch role {
	case wire.Ground:
		pen.Dash = []float64{0.5 * text, 0.35 * text}
	case wire.Hot:
		pen.Width = 0.3 * text
	case wire.Switched:
		pen.Width, pen.Dash = 0.22*text, []float64{0.9 * text, 0.3 * text, 0.2 * text, 0.3 * text}
	case wire.Neutral:
		wide := pen
		wide.Width = 0.42 * text
		inner := pen
		inner.Width, inner.Color = 0.2*text, t.Paper
		return []scene.Item{scene.Stroke{Path: scene.LinePath(from, to), Pen: wide}, scene.Stroke{Path: scene.LinePath(from, to), Pen: inner}}
	}
	return []scene.Item{scene.Stroke{Path: scene.LinePath(from, to), Pen: pen}}
}
