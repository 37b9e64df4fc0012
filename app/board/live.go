package board

import (
	"image"
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/scene"
)

// shape is one live thing above the picture, in pixels of the board.
type shape struct {
	kind  shapeKind
	a, b  scene.Point // ends of a line, corners of a box, corner of a text or picture
	width float64
	color scene.Color
	fill  scene.Color
	text  string
	bold  bool
	size  float64
	image *image.RGBA
}

type shapeKind int

const (
	lineShape shapeKind = iota
	boxShape
	ringShape
	textShape
	imageShape
)

// mostShapes bounds what is live: each costs time in every frame.
const mostShapes = 200

// scribe makes the live things of one picture.
type scribe struct {
	pic     Picture
	view    View
	density float64
	shown   *painted
	pointer *scene.Point // in pixels, or nil
	symbols map[ghostKey]ghostImage
	screen  scene.Rect     // in which notes stay; empty: they need not
	pieces  []render.Piece // painted below, that notes rather leave in sight
	shift   scene.Point    // from where these say they are to the screen
	shapes  []shape
	notes   []scene.Rect // where notes stand already
	figures []scene.Rect // of dimensions, among them
	bundle  []plan.ID    // the openings of the bundle that is pointed at
}

func (s *scribe) at(p geom.Point) scene.Point {
	x, y := s.view.Screen(p)
	return scene.Point{X: x, Y: y}
}

func (s *scribe) add(shapes ...shape) { s.shapes = append(s.shapes, shapes...) }

// draw lists all that is live, lowest first.
func (s *scribe) draw() []shape {
	if s.pic.Index == nil {
		return nil
	}
	p := s.pic.Preview
	for _, id := range s.pic.Selected {
		if len(s.shapes) > mostShapes/2 {
			break
		}
		s.selected(id)
	}
	s.stretches()
	for _, id := range p.Moving {
		s.moving(id)
	}
	for i, corner := range p.Area {
		if i > 0 {
			s.line(p.Area[i-1], corner, 2, s.pic.Theme.Accent)
		}
		s.knob(corner)
	}
	if n := len(p.Area); n > 3 {
		s.line(p.Area[n-1], p.Area[0], 1, s.pic.Theme.Muted)
	}
	for _, l := range p.Lines {
		s.line(l.A, l.B, 2, s.pic.Theme.Accent)
	}
	if p.Ghost != nil {
		s.ghost(p.Ghost)
	}
	for _, d := range p.Dims {
		s.dim(d)
	}
	for _, n := range p.Notes {
		s.note(n.Text, s.at(n.At), s.pic.Theme.Ink, true)
	}
	if p.Box != nil {
		accent := s.pic.Theme.Accent
		wash := accent
		wash.A = 0x22
		s.add(shape{kind: boxShape, a: s.at(p.Box.Min), b: s.at(p.Box.Max), width: 1, color: accent, fill: wash})
	}
	s.opened()
	s.snap(p)
	if len(s.shapes) > mostShapes {
		s.shapes = s.shapes[:mostShapes]
	}
	return s.shapes
}

func (s *scribe) line(a, b geom.Point, width float64, c scene.Color) {
	s.add(shape{kind: lineShape, a: s.at(a), b: s.at(b), width: width * s.density, color: c})
}

// knob marks a corner that can be taken hold of.
func (s *scribe) knob(p geom.Point) {
	at, half := s.at(p), 3.5*s.density
	s.add(shape{
		kind: boxShape, a: scene.Point{X: at.X - half, Y: at.Y - half}, b: scene.Point{X: at.X + half, Y: at.Y + half},
		width: 1.5 * s.density, color: s.pic.Theme.Accent, fill: s.pic.Theme.Surface,
	})
}

// selected marks what is chosen.
func (s *scribe) selected(id plan.ID) {
	ix := s.pic.Index
	accent := s.pic.Theme.Accent
	switch id.Kind() {
	case plan.KindOpening:
		s.frame(id)
	case plan.KindRoom:
		if r := ix.RoomOf(id); r != nil {
			s.outline(r.Outline(), accent)
		}
	case plan.KindSide:
		if ref, ok := ix.Side(id); ok {
			line := ref.Line()
			s.line(line.A, line.B, 3, accent)
			s.knob(line.A)
			s.knob(line.B)
		}
	case plan.KindFixture:
		if f, _ := ix.Plan().Fixture(id); f != nil {
			if outline, ok := ix.Footprint(f); ok {
				s.outline(outline, accent)
			}
		}
	case plan.KindBreak:
		if k, _ := ix.Plan().Break(id); k != nil {
			if line, ok := ix.BreakLine(k); ok {
				s.line(line.A, line.B, 4, accent)
				s.knob(line.A)
				s.knob(line.B)
			}
		}
	case plan.KindCable, plan.KindControl:
		s.wire(id)
	}
}

// stretches draws the stretches of findings of what is chosen once more, above the
// outline that marks it.
func (s *scribe) stretches() {
	if len(s.pic.Selected) == 0 {
		return
	}
	for i := range s.pic.Findings {
		f := &s.pic.Findings[i]
		if len(f.Stretches) == 0 || f.Waived != nil || f.Level != "" && f.Level != s.pic.Level {
			continue
		}
		if !slices.Contains(s.pic.Selected, f.About) && (f.Room == "" || !slices.Contains(s.pic.Selected, f.Room)) {
			continue
		}
		for _, stretch := range f.Stretches {
			if len(s.shapes) > mostShapes/2 {
				return
			}
			in := direction(geom.FrameOf(stretch.Line).Out()).Mul(2.5 * s.density)
			s.add(shape{kind: lineShape, a: s.at(stretch.Line.A).Add(in), b: s.at(stretch.Line.B).Add(in),
				width: 4 * s.density, color: severityInk(s.pic.Theme, f.Severity)})
		}
	}
}

// severityInk returns the colour of a severity.
func severityInk(t render.Theme, s rule.Severity) scene.Color {
	switch s {
	case rule.Stop:
		return t.Stop
	case rule.Warn:
		return t.Warn
	}
	return t.Note
}

// wire draws the line of a chosen cable or control over the one painted.
func (s *scribe) wire(id plan.ID) {
	if s.shown == nil || s.shown.zoom != s.view.Zoom {
		return
	}
	by := scene.Point{X: float64(s.shown.frame.Min.X + s.view.At.X), Y: float64(s.shown.frame.Min.Y + s.view.At.Y)}
	for _, line := range s.shown.linesOf(id) {
		for i := 1; i < len(line); i++ {
			s.add(shape{kind: lineShape, a: line[i-1].Add(by), b: line[i].Add(by), width: 2.5 * s.density, color: s.pic.Theme.Accent})
		}
	}
}

// outline draws the edges of an area with a knob at each corner.
func (s *scribe) outline(p geom.Polygon, c scene.Color) {
	for i := range p {
		s.line(p[i], p[(i+1)%len(p)], 2, c)
	}
	if len(p) <= 16 {
		for _, corner := range p {
			s.knob(corner)
		}
	}
}

// frame stands close round the body of a chosen opening, where that was painted.
func (s *scribe) frame(id plan.ID) {
	for _, moving := range s.pic.Preview.Moving {
		if moving == id {
			return
		}
	}
	o, level := s.pic.Index.Plan().Opening(id)
	if o == nil || level.ID != s.pic.Level {
		return
	}
	place, ok := s.pic.Index.Place(o.At)
	if !ok {
		return
	}
	middle, half := s.at(place.Foot), 8*s.density
	if body, ok := s.shown.bodyOf(id); ok {
		foot := s.shown.medium().ToScene(place.Foot)
		middle = middle.Add(body.Middle().Sub(foot))
		half = max(body.Width(), body.Height()) / 2
	}
	half += 3.5 * s.density // short of the tag
	s.add(shape{
		kind: boxShape, a: scene.Point{X: middle.X - half, Y: middle.Y - half}, b: scene.Point{X: middle.X + half, Y: middle.Y + half},
		width: 1.5 * s.density, color: s.pic.Theme.Accent,
	})
}

// moving draws a dragged thing where it is now; it was left out of the picture below.
func (s *scribe) moving(id plan.ID) {
	ix := s.pic.Index
	switch id.Kind() {
	case plan.KindOpening:
		o, _ := ix.Plan().Opening(id)
		if o == nil {
			return
		}
		place, ok := ix.Place(o.At)
		if !ok {
			return
		}
		s.symbol(ghostKey{kind: o.Kind, status: o.Status, into: place.Into, isStop: s.isStopped(id)}, place.Foot)
		s.tag(o.Tag, s.at(place.Foot).Add(scene.Point{X: 16 * s.density, Y: 8 * s.density}))
	case plan.KindFixture, plan.KindBreak:
		s.selected(id)
	}
}

// tag writes a tag from its left upper corner, on a ground that parts it from what it
// passes over.
func (s *scribe) tag(text string, at scene.Point) {
	w, h := noteSize(text, s.density)
	corner := at.Sub(scene.Point{X: 5 * s.density, Y: s.density})
	box := scene.Rect{Min: corner, Max: corner.Add(scene.Point{X: w, Y: h})}
	s.notes = append(s.notes, box)
	s.add(shape{kind: boxShape, a: box.Min, b: box.Max, fill: s.pic.Theme.Paper},
		shape{kind: textShape, a: at, text: text, bold: true, size: noteText, color: s.pic.Theme.Accent})
}

// inkOf returns the color in which an opening is told.
func (s *scribe) inkOf(id plan.ID) scene.Color {
	if s.isStopped(id) {
		return s.pic.Theme.Stop
	}
	return s.pic.Theme.Ink
}

// isStopped reports whether a finding of an opening is of the gravest sort.
func (s *scribe) isStopped(id plan.ID) bool {
	for i := range s.pic.Findings {
		if f := &s.pic.Findings[i]; f.Opening == id && f.Severity == rule.Stop && f.Waived == nil {
			return true
		}
	}
	return false
}
