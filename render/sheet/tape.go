package sheet

import (
	"strconv"

	"studbay/plan/unit"
	"studbay/render/layout"
	"studbay/render/paper"
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
func tapeFor(p paper.Paper, s paper.Scale) tape {
	t := tape{unit.Foot, 5, unit.Foot}
	if s.System == unit.Metric {
		t = tape{unit.Metre / 2, 4, unit.Metre}
	}
	if scene.MM(t.step)*p.Times(s) < 1.2 {
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

// each calls f for every mark from 0 up to a length.
func (t tape) each(upTo unit.Length, f func(n int, at unit.Length)) {
	for n := range int(upTo/t.step) + 1 {
		f(n, unit.Length(n)*t.step)
	}
}

// tape draws the marks along a level's drawing, from the upper left corner of its rooms
// to the last mark short of the lower right one, as far as a window shows it.
func (p *page) tape(d drawnLevel, window scene.Rect) {
	t, edge := tapeFor(p.b.o.Paper, d.scale), p.Main
	origin := d.medium.ToScene(d.rooms.Min)
	s := layout.Style{Size: layout.Small, Muted: true}
	t.each(d.rooms.Width(), func(n int, at unit.Length) {
		x := origin.X + d.medium.Length(at)
		if x < window.Min.X || x > window.Max.X {
			return
		}
		p.Add(layout.VLine(x, edge.Min.Y, edge.Min.Y+t.mark(n), layout.Pen(layout.Hairline)))
		if n%t.major == 0 {
			p.Add(s.Centered().At(x, edge.Min.Y+4.9, t.figure(n)))
		}
	})
	t.each(d.rooms.Height(), func(n int, at unit.Length) {
		y := origin.Y + d.medium.Length(at)
		if y < window.Min.Y || y > window.Max.Y {
			return
		}
		p.Add(layout.HLine(edge.Min.X, edge.Min.X+t.mark(n), y, layout.Pen(layout.Hairline)))
		if n%t.major == 0 {
			p.Add(s.At(edge.Min.X+2.8, y+s.Cap()/2, t.figure(n)))
		}
	})
}
