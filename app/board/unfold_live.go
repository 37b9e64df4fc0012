package board

import (
	"slices"
	"studbay/app/tool"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/unfold"
)

// liveShapes lists what is live: rings round what is chosen, the box that would be
// placed, the snap in force.
func (u *Unfold) liveShapes(d float64) []shape {
	if !u.isThere {
		return nil
	}
	s := scribe{pic: u.pic.Picture, density: d, screen: scene.Rect{Max: scene.Point{X: float64(u.Size().Width) * d, Y: float64(u.Size().Height) * d}}}
	s.pieces = u.pieces
	t := u.pic.Theme
	for i := range u.pieces {
		p := &u.pieces[i]
		if p.Layer == render.LayerOpenings && slices.Contains(u.pic.Selected, p.ID) {
			box := p.Bounds.Expanded(3 * d)
			s.add(shape{kind: boxShape, a: box.Min, b: box.Max, width: 2 * d, color: t.Accent})
		}
		if p.Layer == render.LayerMarks && p.ID == u.opening() {
			s.notes = append(s.notes, p.Bounds) // its dimensions
		}
	}
	if g := u.pic.Preview.Ghost; g != nil {
		if f, ok := u.faceOf(g.At); ok {
			u.ghost(&s, f, g)
			u.toCorner(&s, f, g.At.Along, false, nil)
			u.toCorner(&s, f, g.At.Along, true, nil)
		}
	} else {
		u.inHand(&s)
		u.uprightInHand(&s)
	}
	if u.pointer != nil {
		at := scene.Point{X: float64(u.pointer.X) * d, Y: float64(u.pointer.Y) * d}
		p := u.pic.Preview
		p.SnapAt, p.Dims = nil, nil
		s.pointer = &at
		s.snap(p)
	}
	return s.shapes
}

// ghost draws the box of an opening that would be placed.
func (u *Unfold) ghost(s *scribe, f unfold.Face, g *tool.Ghost) {
	middle := u.medium.ToStrip(f.Left+g.At.Along, g.Height)
	p := u.pic.Index.Plan()
	made := place.ForWall(p, part.NewOpening(p.Header.System(), g.Kind, g.At))
	front := frame.FrontOf(&made)
	wide, high := max(7*s.density, u.medium.Length(front.Width)), max(11*s.density, u.medium.Length(front.Height))
	wash := s.pic.Theme.Accent
	wash.A = 0x44
	box := scene.RectAround(middle, wide, high)
	s.add(shape{kind: boxShape, a: box.Min, b: box.Max, width: 1.5 * s.density, color: s.pic.Theme.Accent, fill: wash})
	foot := u.medium.ToStrip(f.Left+g.At.Along, 0)
	s.add(shape{kind: lineShape, a: scene.Point{X: middle.X, Y: box.Max.Y}, b: foot, width: s.density, color: s.pic.Theme.Muted})
	s.note(s.pic.Voice.System.Short(g.Height), middle.Add(scene.Point{X: 0, Y: -high/2 - 12*s.density}), s.pic.Theme.Ink, true)
}

// inHand measures the opening that is chosen to the corner on the other hand than what its
// distance is told from: that is measured in the picture.
func (u *Unfold) inHand(s *scribe) {
	o, _ := u.pic.Index.Plan().Opening(u.opening())
	if o == nil {
		return
	}
	f, ok := u.faceOf(o.At)
	if !ok {
		return
	}
	if f.Side == nil { // of a fixture: the picture measures nothing there
		u.toCorner(s, f, o.At.Along, false, nil)
		u.toCorner(s, f, o.At.Along, true, nil)
		s.note(s.pic.Voice.System.Short(o.Height.Value), u.medium.ToStrip(f.Left+o.At.Along, o.Height.Value).Add(scene.Point{Y: -18 * s.density}), s.pic.Theme.Ink, true)
		return
	}
	face, _ := frame.FaceOf(u.pic.Index, f.Side.ID)
	mark, _ := face.Kept(u.pic.Index, o)
	if isRight := mark.At < o.At.Along; !u.goesOn(f, isRight) {
		u.toCorner(s, f, o.At.Along, isRight, u.lowestText(o.ID))
	}
}

// lowestText returns the box of the lowest text drawn of an opening's dimensions: how far
// it is from a corner. It is nil where there is none.
func (u *Unfold) lowestText(of plan.ID) (lowest *scene.Rect) {
	for i := range u.pieces {
		p := &u.pieces[i]
		if p.Layer != render.LayerMarks || p.ID != of {
			continue
		}
		for _, item := range p.Items {
			run, isText := item.(scene.Run)
			if !isText {
				continue
			}
			if box := run.Bounds(); lowest == nil || box.Min.Y > lowest.Min.Y {
				lowest = &box
			}
		}
	}
	return lowest
}

// goesOn reports whether the wall of a face goes straight on past an end: no tape finds a
// corner there.
func (u *Unfold) goesOn(f unfold.Face, isRight bool) bool {
	face, _ := frame.FaceOf(u.pic.Index, f.Side.ID)
	left, right := face.Ends()
	if isRight {
		return right.Past != nil
	}
	return left.Past != nil
}

// toCorner draws the dimension from a place on a face to one of its corners, below the
// floor, clear of a text that stands there.
func (u *Unfold) toCorner(s *scribe, f unfold.Face, along unit.Length, isRight bool, text *scene.Rect) {
	end, away := unit.Length(0), along
	if isRight {
		end, away = f.Length, plan.FromRight(f.Length, along, 0)
	}
	if away == 0 {
		return
	}
	a, b := u.chain(s, f, min(along, end), max(along, end))
	y, ink := a.Y, s.pic.Theme.Ink
	said := s.pic.Voice.System.Format(away.Abs())
	half := scene.Run{Text: said, Size: u.medium.Text}.Width() / 2
	x := (a.X + b.X) / 2
	if gap := 0.8 * u.medium.Text; text != nil && x-half < text.Max.X+gap && x+half > text.Min.X-gap {
		x = text.Max.X + gap + half
		if !isRight {
			x = text.Min.X - gap - half
		}
		from, to := a.X, b.X
		if f.Side != nil { // beside a face of a room nothing is written
			from, to = s.screen.Min.X+gap, s.screen.Max.X-gap
		}
		if x-half < from || x+half > to {
			return // no room beside it
		}
	}
	if f.Side == nil && 2*half > b.X-a.X {
		return // on so short a face the two would run into each other
	}
	s.notes = append(s.notes, scene.Rect{Min: a, Max: scene.Point{X: b.X, Y: y + 2*u.medium.Text}}.Expanded(4*s.density))
	s.add(shape{kind: textShape, a: scene.Point{X: x - half, Y: y + 0.4*u.medium.Text}, text: said, size: 10.5, color: ink})
}

// chain draws the line of a dimension between two places on a face, below the floor, and
// returns its ends.
func (u *Unfold) chain(s *scribe, f unfold.Face, from, to unit.Length) (a, b scene.Point) {
	a, b = u.medium.ToStrip(f.Left+from, 0), u.medium.ToStrip(f.Left+to, 0)
	y := u.medium.ToStrip(0, -u.strip.Floor).Y + 0.9*u.medium.Text
	if f.Side == nil {
		y += 1.4 * u.medium.Text // below the name of a fixture's face
	}
	a.Y, b.Y = y, y
	ink, tick := s.pic.Theme.Ink, scene.Point{Y: 3.4 * s.density}
	for _, l := range [][2]scene.Point{{a, b}, {a.Sub(tick), a.Add(tick)}, {b.Sub(tick), b.Add(tick)}} {
		s.add(shape{kind: lineShape, a: l[0], b: l[1], width: s.density, color: ink})
	}
	return a, b
}

// measure draws the dimension between two places on a face, with its text where it has
// room for it, and returns what is taken below the floor: the text, else the line.
func (u *Unfold) measure(s *scribe, f unfold.Face, from, to unit.Length) scene.Rect {
	a, b := u.chain(s, f, from, to)
	said := s.pic.Voice.System.Format(to - from)
	half := scene.Run{Text: said, Size: u.medium.Text}.Width() / 2
	taken := scene.Rect{Min: a, Max: scene.Point{X: b.X, Y: a.Y + 2*u.medium.Text}}
	if 2*half > b.X-a.X {
		return taken
	}
	s.notes = append(s.notes, taken.Expanded(4*s.density))
	taken.Min.X, taken.Max.X = (a.X+b.X)/2-half, (a.X+b.X)/2+half
	s.add(shape{kind: textShape, a: scene.Point{X: taken.Min.X, Y: a.Y + 0.4*u.medium.Text}, text: said, size: 10.5, color: s.pic.Theme.Ink})
	return taken
}
