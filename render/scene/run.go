package scene

import "studbay/render/glyph"

// Align says which point of a run's width stands at its place. The zero value is
// Start.
type Align uint8

// The places along a run.
const (
	Start Align = iota
	Center
	End
)

// VAlign says which line of a run stands at its place. The zero value is Baseline.
type VAlign uint8

// The places across a run.
const (
	Baseline VAlign = iota
	Middle          // halfway up a capital letter
	Top             // the top of a capital letter
)

// Run is one line of text in one size and weight. Newlines in it are blanks of no
// width: break lines with glyph.Wrap first.
type Run struct {
	At     Point
	Text   string
	Size   float64 // em height in scene units; PointSize times the points on a sheet
	Weight glyph.Weight
	Align  Align
	VAlign VAlign
	Color  Color
	Angle  float64 // degrees clockwise as seen, about At; 0 reads left to right
}

// Width returns how far the run reaches along its baseline.
func (r Run) Width() float64 { return glyph.Width(r.Weight, r.Size, r.Text) }

// Origin returns the beginning of the baseline, after alignment and angle.
func (r Run) Origin() Point { return r.transform().At }

// transform takes the run's own coordinates (scene units from the beginning of the
// baseline) into the scene.
func (r Run) transform() Transform {
	var back Point
	switch r.Align {
	case Center:
		back.X = -r.Width() / 2
	case End:
		back.X = -r.Width()
	}
	switch r.VAlign {
	case Middle:
		back.Y = glyph.MetricsOf(r.Weight, r.Size).CapHeight / 2
	case Top:
		back.Y = glyph.MetricsOf(r.Weight, r.Size).CapHeight
	}
	t := Turning(r.Angle, r.At)
	t.At = t.Apply(back)
	return t
}

// Bounds implements Item: the box of the line's width and full height, which holds
// the ink of every ordinary letter.
func (r Run) Bounds() Rect {
	m := glyph.MetricsOf(r.Weight, r.Size)
	width := r.Width()
	if width == 0 {
		return Rect{}
	}
	line := Rect{Point{0, -m.Ascent}, Point{width, m.Descent}}
	return line.Path().Placed(r.transform()).Bounds()
}

// Outline returns the shapes of all letters as one path, to be filled.
func (r Run) Outline() (p Path) {
	pen := r.transform()
	pen.X, pen.Y = pen.X.Mul(r.Size), pen.Y.Mul(r.Size)
	for _, letter := range r.Text {
		g := glyph.Of(r.Weight, letter)
		for i, s := range g.Outline {
			p.addGlyph(s, pen, i > 0)
		}
		if len(g.Outline) > 0 {
			p.Close()
		}
		pen.At = pen.At.Add(pen.X.Mul(g.Advance))
	}
	return p
}

func (p *Path) addGlyph(s glyph.Segment, t Transform, inside bool) {
	at := func(i int) Point { return t.Apply(Point{s.Points[i].X, s.Points[i].Y}) }
	switch s.Op {
	case glyph.Move:
		if inside {
			p.Close()
		}
		p.MoveTo(at(0))
	case glyph.Line:
		p.LineTo(at(0))
	case glyph.Quad:
		p.QuadTo(at(0), at(1))
	case glyph.Cubic:
		p.CubicTo(at(0), at(1), at(2))
	}
}
