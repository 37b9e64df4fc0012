package sheet

import (
	"studbay/fill/frame"
	"studbay/plan/unit"
	"studbay/render/scene"
	"studbay/render/unfold"
)

// fixtureFaces puts down the faces of fixtures in a room that carry openings.
func (f *flow) fixtureFaces(s unfold.Strip, scale Scale) {
	b := f.page.b
	faces := unfold.FixtureFaces(b.ix, s.Room.ID)
	for len(faces) > 0 {
		m := unfold.Medium{Medium: b.medium(scale)}
		n := 1
		for n < len(faces) && m.Length(faces[n].Left+faces[n].Length-faces[0].Left) <= f.width()-2*stripAside {
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
			low = max(low, style{size: small}.width(st.text))
		}
	}
	tall := unfoldHead + m.Length(high) + unfoldNames + low + 2
	f.need(tall)
	head := style{size: body, bold: true}
	f.page.add(head.at(f.left(), f.y+head.cap()+0.6, b.say("unfold.fixtures", "{0}: faces of what stands in it", s.Room.Name)))
	left := f.left() + stripAside/2 + 2
	m.At = scene.Point{X: left - m.Length(faces[0].Left), Y: f.y + unfoldHead + m.Length(high)}
	last := faces[len(faces)-1]
	m.Window = scene.Rect{
		Min: scene.Point{X: f.left() - 1, Y: f.y + unfoldHead - 2},
		Max: scene.Point{X: m.ToStrip(last.Left+last.Length+unfold.FixtureFaceGap/2, 0).X, Y: m.At.Y + unfoldNames},
	}
	var items []scene.Item
	for _, p := range unfold.DrawFixtures(b.ix, s.Room.ID, b.found.in(s.Room.ID), m) {
		if m.Window.Contains(p.Bounds.Min) && m.Window.Contains(p.Bounds.Max) {
			items = append(items, p.Items...)
		}
	}
	f.page.add(scene.Group{Layer: scene.Layer{Name: s.Room.Name}, Items: items})
	half := m.Length(unfold.FixtureFaceGap) / 2
	for _, face := range faces {
		from, to := m.ToStrip(face.Left, 0).X, m.ToStrip(face.Left+face.Length, 0).X
		f.figures(m, from-half, to+half, m.At.Y, b.stationsOf(s, face.Left, face.Openings))
	}
	f.y += tall
	f.space(unfoldGap)
}
