package scene

// enlarger is a painter that hands everything on so many times as large, about the upper left
// corner of the page.
type enlarger struct {
	Painter
	k float64
}

var _ Painter = enlarger{}

func (e enlarger) path(p Path) Path { return p.Placed(Scaling(e.k, Point{})) }

// Stroke implements Painter.
func (e enlarger) Stroke(p Path, pen Pen) {
	pen.Width *= e.k
	dash := make([]float64, len(pen.Dash))
	for i, d := range pen.Dash {
		dash[i] = d * e.k
	}
	pen.Dash = dash
	e.Painter.Stroke(e.path(p), pen)
}

// Fill implements Painter.
func (e enlarger) Fill(p Path, c Color) { e.Painter.Fill(e.path(p), c) }

// Text implements Painter.
func (e enlarger) Text(r Run) {
	r.At, r.Size = r.At.Mul(e.k), r.Size*e.k
	e.Painter.Text(r)
}

// Begin implements Painter.
func (e enlarger) Begin(l Layer) {
	if l.Clip != nil {
		l.Clip = &Rect{l.Clip.Min.Mul(e.k), l.Clip.Max.Mul(e.k)}
	}
	e.Painter.Begin(l)
}
