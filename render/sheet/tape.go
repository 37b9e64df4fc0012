package sheet

import (
	"math"
	"strconv"

	"studbay/plan/unit"
	"studbay/render/scene"
)

// tapeDeep is how far the tape along the edges of a plan reaches in.
const tapeDeep = 5.5

// tape is the marks along the upper and left edge of a plan, as the board has them,
// counted from the upper left corner of the level.
type tape struct {
	step  unit.Length // from mark to mark
	major int         // marks from figure to figure
	unit  unit.Length // that figures count
}

// tapeFor returns a tape whose marks stand clear of each other.
func tapeFor(s Scale) tape {
	t := tape{unit.Foot, 5, unit.Foot}
	if s.System == unit.Metric {
		t = tape{unit.Metre / 2, 4, unit.Metre}
	}
	if scene.MM(t.step)*s.times() < 1.2 {
		t.step, t.major = 10*t.step, 2
	}
	return t
}

func (t tape) figure(n int) string { return strconv.Itoa(int(unit.Length(n) * t.step / t.unit)) }

func (t tape) mark(n int) float64 {
	if n%t.major == 0 {
		return 2.2
	}
	return 1.1
}

// each calls f for every mark between two places of the building.
func (t tape) each(from, to unit.Length, f func(n int, at unit.Length)) {
	step := t.step.Millimetres()
	for n := int(math.Ceil(from.Millimetres() / step)); n <= int(math.Floor(to.Millimetres()/step)); n++ {
		f(n, unit.Length(n)*t.step)
	}
}

// tape draws the marks of a level's drawing.
func (p *page) tape(d drawnLevel) {
	t, edge := tapeFor(d.scale), p.main
	from, to := d.medium.FromScene(edge.Min).Sub(d.extent.Min), d.medium.FromScene(edge.Max).Sub(d.extent.Min)
	origin := d.medium.ToScene(d.extent.Min)
	s := style{size: small, muted: true}
	t.each(from.X, to.X, func(n int, at unit.Length) {
		x := origin.X + d.medium.Length(at)
		p.add(vline(x, edge.Min.Y, edge.Min.Y+t.mark(n), pen(hairline)))
		if n%t.major == 0 && x > edge.Min.X+7 && x < edge.Max.X-4 {
			p.add(centred(s).at(x, edge.Min.Y+4.9, t.figure(n)))
		}
	})
	t.each(from.Y, to.Y, func(n int, at unit.Length) {
		y := origin.Y + d.medium.Length(at)
		p.add(hline(edge.Min.X, edge.Min.X+t.mark(n), y, pen(hairline)))
		if n%t.major == 0 && y > edge.Min.Y+7 && y < edge.Max.Y-4 {
			p.add(s.at(edge.Min.X+2.8, y+s.cap()/2, t.figure(n)))
		}
	})
}

func centred(s style) style {
	s.align = scene.Center
	return s
}
