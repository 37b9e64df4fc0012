package board

import (
	"math"
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/tool"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/scene"
)

// asideUnits is how far a live dimension stands off what it measures, and tightUnits how deep
// a room is shown that has place for it.
const (
	asideUnits = 30
	tightUnits = 6 * asideUnits
)

// aside returns by how much a live dimension stands off what it measures, in pixels: within
// the room, or beyond its wall where the room is shown small.
func (s *scribe) aside(d tool.Dim) scene.Point {
	off, pixels := direction(d.Aside), s.view.Zoom
	if d.Deep == 0 || d.Deep.Millimetres()*pixels >= tightUnits*s.density {
		return off.Mul(asideUnits * s.density)
	}
	return off.Mul(-asideUnits*s.density - d.Wall.Millimetres()*pixels)
}

// dim draws a live dimension: its line with a stroke at each end, and its text on a
// ground of paper in the middle.
func (s *scribe) dim(d tool.Dim) {
	a, b := s.at(d.From), s.at(d.To)
	ink, k := s.pic.Theme.Ink, s.density
	if off := s.aside(d); off != (scene.Point{}) {
		footA, footB := a, b
		past := off.Mul(4 * k / math.Hypot(off.X, off.Y))
		a, b = a.Add(off), b.Add(off)
		s.add(shape{kind: lineShape, a: footA, b: a.Add(past), width: k, color: s.pic.Theme.Muted},
			shape{kind: lineShape, a: footB, b: b.Add(past), width: k, color: s.pic.Theme.Muted})
	}
	v := b.Sub(a)
	n := math.Hypot(v.X, v.Y)
	if n < 1 {
		return
	}
	across := v.Turned().Mul(4 * k / n)
	s.add(shape{kind: lineShape, a: a, b: b, width: k, color: ink},
		shape{kind: lineShape, a: a.Sub(across), b: a.Add(across), width: 1.5 * k, color: ink},
		shape{kind: lineShape, a: b.Sub(across), b: b.Add(across), width: 1.5 * k, color: ink})
	if min(math.Abs(v.X), math.Abs(v.Y)) < 1 { // a slanting one is not kept clear of
		s.notes = append(s.notes, scene.Rect{
			Min: scene.Point{X: min(a.X, b.X), Y: min(a.Y, b.Y)}, Max: scene.Point{X: max(a.X, b.X), Y: max(a.Y, b.Y)},
		}.Expanded(4*k))
	}
	s.figure(d.Text, a.Add(b).Mul(0.5), v.Turned().Mul(1/n))
}

// figure writes the text of a dimension in the middle of its line, or beside that where
// it would lie over the text of another: a short line has no room for it.
func (s *scribe) figure(text string, middle, across scene.Point) {
	w, h := noteSize(text, s.density)
	step := math.Abs(across.X)*w + math.Abs(across.Y)*h + 2*s.density
	for _, by := range []float64{0, 1, -1, 2, -2} {
		at := middle.Add(across.Mul(by * step))
		box := scene.RectAround(at, w, h)
		if corner := s.onScreen(box.Min, w, h); corner != box.Min {
			box = box.Moved(corner.Sub(box.Min))
		}
		if by != -2 && slices.ContainsFunc(s.figures, box.Overlaps) {
			continue
		}
		s.figures = append(s.figures, box)
		s.note(text, box.Middle(), s.pic.Theme.Ink, true)
		return
	}
}

// note writes a text on a ground of its own, about its middle or from its left.
func (s *scribe) note(text string, at scene.Point, ink scene.Color, middle bool) {
	if text == "" {
		return
	}
	w, h := noteSize(text, s.density)
	corner := scene.Point{X: at.X, Y: at.Y - h/2}
	if middle {
		corner.X -= w / 2
	}
	corner = s.onScreen(corner, w, h)
	s.notes = append(s.notes, scene.Rect{Min: corner, Max: corner.Add(scene.Point{X: w, Y: h})})
	s.add(shape{kind: boxShape, a: corner, b: corner.Add(scene.Point{X: w, Y: h}), fill: s.pic.Theme.Paper, color: s.pic.Theme.Line, width: s.density},
		shape{kind: textShape, a: corner.Add(scene.Point{X: 5 * s.density, Y: 1 * s.density}), text: text, bold: true, size: noteText, color: ink})
}

// snap marks the snap in force with its name, and what has been typed.
func (s *scribe) snap(p tool.Preview) {
	t := s.pic.Theme
	if !p.Refused.IsZero() && s.pointer != nil {
		s.beside(*s.pointer, s.pic.Voice.Say(p.Refused), t.Stop)
	}
	var by *scene.Point
	if p.SnapAt != nil {
		at, half := s.at(*p.SnapAt), 5*s.density
		s.add(shape{kind: ringShape, a: scene.Point{X: at.X - half, Y: at.Y - half}, b: scene.Point{X: at.X + half, Y: at.Y + half},
			width: 1.5 * s.density, color: t.Accent})
		by = &at
	} else if s.pointer != nil {
		by = s.pointer
	}
	if by == nil {
		return
	}
	if !p.Typed.IsZero() {
		s.beside(*by, s.pic.Voice.Say(p.Typed), t.Ink)
	}
	if !p.Snap.IsZero() {
		s.beside(*by, s.pic.Voice.Say(p.Snap), t.Accent)
	}
}

// onScreen moves a note of a size into the screen.
func (s *scribe) onScreen(corner scene.Point, w, h float64) scene.Point {
	if s.screen.IsEmpty() {
		return corner
	}
	edge := 4 * s.density
	return scene.Point{
		X: max(s.screen.Min.X+edge, min(s.screen.Max.X-edge-w, corner.X)),
		Y: max(s.screen.Min.Y+edge, min(s.screen.Max.Y-edge-h, corner.Y)),
	}
}

// asideRows is how many rows of notes are tried to either side of a place.
const asideRows = 5

// beside writes a note near a place where it hides least: below to the right if nothing
// stands there, else lower, above, or to the left.
func (s *scribe) beside(by scene.Point, text string, ink scene.Color) {
	w, h := noteSize(text, s.density)
	gap := 14 * s.density
	taken := s.takenNear(scene.Rect{Min: by, Max: by}.Expanded(gap + max(w, asideRows*(h+2*s.density))))
	best, least := by.Add(scene.Point{X: gap, Y: gap}), math.Inf(1)
	for row := range asideRows {
		down := gap + float64(row)*(h+2*s.density)
		for _, corner := range []scene.Point{
			{X: by.X + gap, Y: by.Y + down}, {X: by.X - gap - w, Y: by.Y + down},
			{X: by.X + gap, Y: by.Y - down - h}, {X: by.X - gap - w, Y: by.Y - down - h},
		} {
			if s.onScreen(corner, w, h) != corner {
				continue
			}
			box := scene.Rect{Min: corner, Max: corner.Add(scene.Point{X: w, Y: h})}
			if hides := s.hidden(box, taken); hides < least {
				best, least = corner, hides
			}
		}
	}
	s.note(text, best.Add(scene.Point{Y: h / 2}), ink, false)
}

// noteOver is how much worse it is to hide a part of a note than of a symbol.
const noteOver = 8

// hidden returns how much of notes and of what else is taken a box hides, as an area.
func (s *scribe) hidden(box scene.Rect, taken []scene.Rect) (area float64) {
	for _, n := range s.notes {
		area += noteOver * shared(n, box)
	}
	for _, t := range taken {
		area += shared(t, box)
	}
	return area
}

// shared returns the area that two boxes share.
func shared(a, b scene.Rect) float64 {
	w := min(a.Max.X, b.Max.X) - max(a.Min.X, b.Min.X)
	h := min(a.Max.Y, b.Max.Y) - max(a.Min.Y, b.Min.Y)
	if w <= 0 || h <= 0 {
		return 0
	}
	return w * h
}

// takenNear lists the symbols, names and tags painted within a box of the board.
func (s *scribe) takenNear(box scene.Rect) (taken []scene.Rect) {
	for i := range s.pieces {
		switch s.pieces[i].Layer {
		case render.LayerOpenings, render.LayerLabels, render.LayerRoomNames, render.LayerMarks:
		default:
			continue
		}
		b := s.pieces[i].Bounds
		b.Min, b.Max = b.Min.Add(s.shift), b.Max.Add(s.shift)
		if b.Overlaps(box) {
			taken = append(taken, b)
		}
	}
	return taken
}

// noteText is the size of the text of notes, in units.
const noteText = 10.5

// noteSize returns how large a note is, with its ground. It asks the toolkit, which
// writes it, how wide that is.
func noteSize(text string, density float64) (w, h float64) {
	size := fyne.MeasureText(text, noteText, fyne.TextStyle{Bold: true})
	return (float64(size.Width) + 10) * density, 16 * density
}

// direction returns a vector of the plan at length one.
func direction(v geom.Point) scene.Point {
	x, y := v.X.Millimetres(), v.Y.Millimetres()
	if x == 0 && y == 0 {
		return scene.Point{}
	}
	n := math.Hypot(x, y)
	return scene.Point{X: x / n, Y: y / n}
}
