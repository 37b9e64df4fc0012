package sheet

import (
	"strconv"

	"studbay/plan"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/scene"
)

// keyPlan shows in the small which part of a level a page holds.
type keyPlan struct {
	level  *plan.Level
	medium render.Medium // of the whole
	tiles  *tiling
	at     tileAt
}

// keyWide is the width of the box of the key plan, in millimetres.
const keyWide = 44.0

// keyBox draws the key plan in a box of its own left of a place, and returns where
// that begins: the outlines of rooms, the parts with their sheets, the one of this page
// on grey.
func (p *page) keyBox(box scene.Rect, right float64) float64 {
	x := right - keyWide
	space := scene.Rect{Min: scene.Point{X: x, Y: box.Min.Y}, Max: scene.Point{X: right, Y: box.Max.Y}}.Expanded(-2)
	t := p.key.tiles
	k := min(space.Width()/t.whole.Width(), space.Height()/t.whole.Height())
	toKey := func(q scene.Point) scene.Point { return space.Middle().Add(q.Sub(t.whole.Middle()).Mul(k)) }
	rect := func(r scene.Rect) scene.Rect { return scene.Rect{Min: toKey(r.Min), Max: toKey(r.Max)} }
	p.Add(scene.Fill{Path: rect(t.seam(p.key.at)).Path(), Color: keyGround})
	if t.keyed == nil { // it stands in the same place on the pages of all parts
		t.keyed = p.key.rooms(toKey)
	}
	p.Add(scene.Group{Layer: scene.Layer{Name: "key"}, Items: []scene.Item{*t.keyed}}) // the numbers stand on patches over them
	for _, at := range t.all() {
		part := rect(t.seam(at))
		if t.sheets[at] == 0 {
			continue
		}
		p.Add(scene.Stroke{Path: part.Path(), Pen: layout.Pen(layout.Hairline)})
		s := layout.Style{Size: layout.Small, Bold: at == p.key.at}.Centered()
		if text := strconv.Itoa(t.sheets[at]); s.Width(text)+1 < part.Width() && s.Cap()+1 < part.Height() {
			p.keyNumber(s, text, part.Middle())
		}
	}
	p.Add(scene.Stroke{Path: rect(t.seam(p.key.at)).Path(), Pen: layout.Pen(layout.Border)})
	p.Add(layout.VLine(x, box.Min.Y, box.Max.Y, layout.Pen(layout.Hairline)))
	return x
}

// leastKeyed is how large a room is on the key plan at least, in millimetres: a smaller one
// is a speck there. So the key plan of a page never holds more than some hundreds.
const leastKeyed = 0.8

// rooms draws the outlines of the rooms in the small.
func (k *keyPlan) rooms(toKey func(scene.Point) scene.Point) *scene.Stroke {
	all := scene.Stroke{Pen: layout.Pen(layout.Hairline)}
	all.Pen.Color = layout.Theme.Muted
	for r := range k.level.Rooms.All() {
		var points []scene.Point
		for _, q := range r.Outline() {
			points = append(points, toKey(k.medium.ToScene(q)))
		}
		if room := scene.Polygon(points...); max(room.Bounds().Width(), room.Bounds().Height()) >= leastKeyed {
			all.Path.Append(room)
		}
	}
	return &all
}

// keyNumber writes the number of a sheet on a patch of ground.
func (p *page) keyNumber(s layout.Style, text string, at scene.Point) {
	run := s.At(at.X, at.Y+s.Cap()/2, text)
	ground := layout.Theme.Paper
	if s.Bold {
		ground = keyGround
	}
	patch := scene.RectAround(at, s.Width(text)+0.8, s.Cap()+0.8)
	p.Add(scene.Fill{Path: patch.Path(), Color: ground}, run)
}

// keyGround is the ground of the part that a page holds.
var keyGround = scene.Color{R: 0xd4, G: 0xd4, B: 0xd4, A: 0xff}
