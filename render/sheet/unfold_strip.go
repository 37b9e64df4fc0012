package sheet

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/unfold"
)

// stripAside is the white at either end of a strip.
const stripAside = 4.0

// shelf is where a strip stands, so that a short one may stand beside it.
type shelf struct {
	page               *page
	top, right, bottom float64
}

// stripTall is how high a strip is on paper with all that belongs to it.
func (b *book) stripTall(s unfold.Strip, scale paper.Scale) float64 {
	return unfoldHead + scene.MM(s.Ceiling+s.Floor)*b.o.Paper.Times(scale) + unfoldNames + b.figuresTall(s)
}

// beside puts a whole strip down at the right of the one before, if there is room, and
// reports whether there was.
func (f *flow) beside(s unfold.Strip, scale paper.Scale) bool {
	b, last, column := f.page.b, f.shelf, f.Column()
	left := last.right + layout.ColumnGap
	wide := max(scene.MM(s.Width)*b.o.Paper.Times(scale)+2*stripAside, b.headWidth(s, scale))
	bottom := last.top + b.stripTall(s, scale)
	lowest := column.Max.Y
	if f.Y > last.bottom+unfoldGap { // something stands below it
		lowest = last.bottom
	}
	if last.page != f.page || left+wide > column.Max.X || bottom > lowest {
		return false
	}
	y := f.Y
	f.Y, f.Columns[f.At].Min.X = last.top, left
	f.stripRow(s, scale, span{0, s.Width}, false, false)
	f.Y, f.Columns[f.At] = max(y, f.Y), column
	return true
}

// headWidth is how wide what stands over a strip is.
func (b *book) headWidth(s unfold.Strip, scale paper.Scale) float64 {
	return headWidth(s.Room.Name, b.stripScale(s, scale))
}

func (b *book) stripScale(s unfold.Strip, scale paper.Scale) string {
	return b.Say("unfold.scale", "{0} · ceiling {1}", scale.Words(b.Voice), s.Ceiling) + " · " + table.FloorText(b.Voice, s.Room)
}

// span is a part of a strip from its left end.
type span struct{ from, to unit.Length }

func (s span) has(x unit.Length) bool { return s.from <= x && x < s.to }

// stripRow puts down a part of a strip: all of it, or what one row holds.
func (f *flow) stripRow(s unfold.Strip, scale paper.Scale, row span, again, goesOn bool) {
	b := f.page.b
	m := unfold.Medium{Medium: layout.Medium(b.o.Paper, scale, b.Voice)}
	tall := b.stripTall(s, scale)
	f.Need(tall)
	name := s.Room.Name
	if again {
		name = b.Say("site.room-again", "{0}, continued", name)
	}
	f.roomHead(name, b.stripScale(s, scale))
	top, bottom := f.Y+unfoldHead, f.Y+unfoldHead+m.Length(s.Ceiling+s.Floor)
	left := f.Left() + stripAside/2
	m.At = scene.Point{X: left - m.Length(row.from), Y: top + m.Length(s.Ceiling)}
	m.Window = scene.Rect{
		Min: scene.Point{X: left - stripAside/2, Y: top - 0.5},
		Max: scene.Point{X: left + m.Length(row.to-row.from) + stripAside/2, Y: bottom + unfoldNames},
	}
	const hair = 0.2
	if again {
		m.Window.Min.X = left - hair
	}
	if goesOn {
		m.Window.Max.X = left + m.Length(row.to-row.from) + hair
	}
	if !b.isDraft {
		f.page.Add(scene.Group{
			Layer: scene.Layer{Name: s.Room.Name, Clip: &m.Window},
			Items: render.Items(inWindow(unfold.Draw(b.ix, s.Room.ID, b.found.in(s.Room.ID), m), m.Window)),
		})
	}
	if again {
		f.page.breakMark(m.Window.Min.X-1, top, bottom)
	}
	if goesOn {
		f.page.breakMark(m.Window.Max.X+1, top, bottom)
	}
	for _, face := range s.Faces {
		from, to := max(face.Left, row.from), min(face.Left+face.Length, row.to)
		if from < to {
			f.figures(m, m.ToStrip(from, 0).X, m.ToStrip(to, 0).X, m.ToStrip(0, -s.Floor).Y, b.stations(s, face, row))
		}
	}
	f.shelf = shelf{f.page, f.Y, max(m.Window.Max.X, f.Left()+b.headWidth(s, scale)), f.Y + tall}
	f.Y += tall
	f.Space(unfoldGap)
}

// roomHead puts down the name of a room with what is said of it.
func (f *flow) roomHead(name, more string) {
	f.page.headAt(scene.Point{X: f.Left(), Y: f.Y}, f.Right(), roomTitle.Fit(name, f.Width()*0.7), more)
}

// roomTitle is what a room or a wall of it is named in over its drawing.
var roomTitle = layout.Style{Size: layout.Heading, Bold: true}

// headGap is the white between a name and what is said of it.
const headGap = 3.0

// headAt writes a name over a drawing with what is said of it, as far as there is room.
func (p *page) headAt(at scene.Point, right float64, name, more string) {
	y, x := at.Y+roomTitle.Cap()+0.6, at.X+roomTitle.Width(name)+headGap
	p.Add(roomTitle.At(at.X, y, name), layout.Fine.At(x, y, layout.Fine.Fit(more, right-x)))
}

// headWidth is how wide a name is with what is said of it.
func headWidth(name, more string) float64 {
	return roomTitle.Width(name) + headGap + layout.Fine.Width(more)
}

// inWindow drops what a clip would hide whole.
func inWindow(pieces []render.Piece, window scene.Rect) (kept []render.Piece) {
	for _, p := range pieces {
		if p.Bounds.Expanded(0.01).Overlaps(window) {
			kept = append(kept, p)
		}
	}
	return kept
}

// breakMark draws the line with a kink at which a strip is broken off.
func (p *page) breakMark(x, top, bottom float64) {
	middle := (top + bottom) / 2
	line := layout.Pen(layout.Divider)
	p.Add(scene.Stroke{Pen: line, Path: scene.Polyline(
		scene.Point{X: x, Y: top - 1}, scene.Point{X: x, Y: middle - 2}, scene.Point{X: x - 1.2, Y: middle - 0.8},
		scene.Point{X: x + 1.2, Y: middle + 0.8}, scene.Point{X: x, Y: middle + 2}, scene.Point{X: x, Y: bottom + 1})})
}

// stripRows divides a strip into rows no longer than a length: at corners where a row
// is then not left half empty, else clear of boxes and breaks.
func (b *book) stripRows(s unfold.Strip, most unit.Length) (rows []span) {
	from := unit.Length(0)
	for s.Width-from > most {
		to := b.cutStrip(s, from, from+most)
		rows = append(rows, span{from, to})
		from = to
	}
	return append(rows, span{from, s.Width})
}

// cutStrip returns the best place to break a strip off in its part up to a limit.
func (b *book) cutStrip(s unfold.Strip, from, limit unit.Length) unit.Length {
	least := from + (limit-from)/2
	for _, face := range slices.Backward(s.Faces) {
		if face.Left <= limit && face.Left >= least {
			return face.Left
		}
	}
	for at := limit; at >= least; {
		hit, ok := b.struckBy(s, at)
		if !ok {
			return at
		}
		at = hit.from - 1
	}
	return limit
}

// struckBy returns the box or break that a cut of a strip would run through.
func (b *book) struckBy(s unfold.Strip, at unit.Length) (span, bool) {
	const air = 4 * unit.Inch
	face, _ := s.FaceAt(at)
	for _, c := range b.ix.Cuts(face.Side.ID) {
		if r := (span{face.Left + c.From - air, face.Left + c.To + air}); r.has(at) {
			return r, true
		}
	}
	for _, o := range b.ix.OpeningsOn(face.Side.ID) {
		wide := frame.FrontOf(o).Width
		middle, half := face.Left+o.At.Along, wide/2+air
		if r := (span{middle - half, middle + half}); r.has(at) {
			return r, true
		}
	}
	return span{}, false
}

// fixtureFaces puts down the faces of fixtures in a room that carry openings.
func (f *flow) fixtureFaces(s unfold.Strip, scale paper.Scale) {
	b := f.page.b
	faces := unfold.FixtureFaces(b.ix, s.Room.ID)
	for len(faces) > 0 {
		m := unfold.Medium{Medium: layout.Medium(b.o.Paper, scale, b.Voice)}
		n := 1
		for n < len(faces) && m.Length(faces[n].Left+faces[n].Length-faces[0].Left) <= f.Width()-2*stripAside {
			n++
		}
		f.fixtureRow(s, m, faces[:n])
		faces = faces[n:]
	}
}

// fixtureRow puts down as many of them as a row holds.
func (f *flow) fixtureRow(s unfold.Strip, m unfold.Medium, faces []unfold.FixtureFace) {
	b := f.page.b
	high, low := unit.Length(0), 0.0
	for _, face := range faces {
		high = max(high, face.Fixture.Top())
		for _, o := range face.Openings {
			high = max(high, frame.CentreHeight(o, s.Room)+6*unit.Inch)
		}
		for _, st := range b.stationsOf(s, 0, face.Openings) {
			low = max(low, st.tall())
		}
	}
	tall := unfoldHead + m.Length(high) + unfoldNames + low + 2
	f.Need(tall)
	head := layout.Style{Size: layout.Body, Bold: true}
	f.page.Add(head.At(f.Left(), f.Y+head.Cap()+0.6, b.Say("unfold.fixtures", "{0}: faces of what stands in it", s.Room.Name)))
	left := f.Left() + stripAside/2 + 2
	m.At = scene.Point{X: left - m.Length(faces[0].Left), Y: f.Y + unfoldHead + m.Length(high)}
	last := faces[len(faces)-1]
	m.Window = scene.Rect{
		Min: scene.Point{X: f.Left() - 1, Y: f.Y + unfoldHead - 2},
		Max: scene.Point{X: m.ToStrip(last.Left+last.Length+unfold.FixtureFaceGap/2, 0).X, Y: m.At.Y + unfoldNames},
	}
	var items []scene.Item
	for _, p := range unfold.DrawFixtures(b.ix, s.Room.ID, b.found.in(s.Room.ID), m) {
		if m.Window.Contains(p.Bounds.Min) && m.Window.Contains(p.Bounds.Max) {
			items = append(items, p.Items...)
		}
	}
	f.page.Add(scene.Group{Layer: scene.Layer{Name: s.Room.Name}, Items: items})
	half := m.Length(unfold.FixtureFaceGap) / 2
	for _, face := range faces {
		from, to := m.ToStrip(face.Left, 0).X, m.ToStrip(face.Left+face.Length, 0).X
		f.figures(m, from-half, to+half, m.At.Y, b.stationsOf(s, face.Left, face.Openings))
	}
	f.Y += tall
	f.Space(unfoldGap)
}
