package view

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/scene"
)

// Style is how a room is drawn: its colours, and the thinnest line in scene units.
type Style struct {
	Theme render.Theme
	Pixel float64
}

// Model is a room ready to be looked at from anywhere in it. Turning builds nothing anew.
type Model struct {
	view   index.RoomView
	style  Style
	ground []shape // floor and ceiling with what is on them, from far to near
	tree   *tree
	solids []shape
	plates []plate
}

// plate is where an opening is, and what stands off it.
type plate struct {
	opening *plan.Opening
	at      Point
	out     Point
	globe   bool
	host    *patch // the wall it is on, for light that falls on it; nil elsewhere
}

// New returns the model of a room. It reports false where the room is not in the plan.
func New(ix *index.Index, room plan.ID, style Style) (*Model, bool) {
	v, ok := ix.RoomView(room)
	if !ok || len(v.Sides) < 3 {
		return nil, false
	}
	b := &builder{Model: &Model{view: v, style: style}, ceiling: v.Room.Ceiling.Millimetres()}
	b.flats()
	for i := range v.Sides {
		b.wall(&v.Sides[i])
	}
	v.EachFixture(b.fixture)
	b.tree = newTree(b.shapes)
	return b.Model, true
}

// builder is a model in the making.
type builder struct {
	*Model
	ceiling float64
	shapes  []shape
}

// add takes what belongs to the room's upright faces and to what stands in it.
func (b *builder) add(shapes ...shape) { b.shapes = append(b.shapes, shapes...) }

// solid takes a face that hides what is behind it.
func (b *builder) solid(s shape) {
	b.add(s)
	b.solids = append(b.solids, s)
}

// Room returns the room.
func (m *Model) Room() *plan.Room { return m.view.Room }

// Mark is where an opening shows in the picture.
type Mark struct {
	ID plan.ID
	At scene.Point // the middle of its plate
	// Mil is how long a millimetre is there, upright.
	Mil float64
	// IsHidden tells one that something stands before, or whose face is seen from behind.
	IsHidden bool
}

// Picture is a room as a camera sees it. Items are clipped to the picture; Marks are of the
// openings before the eye, some outside of the picture.
type Picture struct {
	Items []scene.Item
	Marks []Mark
}

// Draw returns what the camera sees. The same camera gives the same picture.
func (m *Model) Draw(c Camera) Picture {
	frame := scene.Rect{Max: scene.Point{X: c.Width, Y: c.Height}}
	items := []scene.Item{scene.Fill{Path: frame.Path(), Color: m.wallColor(Point{Y: 1})}}
	put := func(s shape) {
		if s.faces(c.Eye) {
			items = append(items, s.items(c)...)
		}
	}
	for _, s := range m.ground {
		put(s)
	}
	m.tree.walk(c.Eye, put)
	marks := m.marks(c)
	for i, p := range m.plates {
		if p.globe {
			items = append(items, m.globe(c, p, marks[p.opening.ID], i)...)
		}
	}
	picture := Picture{Items: []scene.Item{scene.Group{Layer: scene.Layer{Name: m.view.Room.Name, Clip: &frame}, Items: items}}}
	for _, p := range m.plates {
		if mark := marks[p.opening.ID]; mark != nil {
			picture.Marks = append(picture.Marks, *mark)
		}
	}
	return picture
}

// marks works out where each opening shows; one behind the eye has none.
func (m *Model) marks(c Camera) map[plan.ID]*Mark {
	all := map[plan.ID]*Mark{}
	for _, p := range m.plates {
		at, ok := c.Project(p.at)
		if !ok {
			continue
		}
		depth := c.seen(p.at).depth
		all[p.opening.ID] = &Mark{
			ID: p.opening.ID, At: at, Mil: c.focal() / depth,
			IsHidden: c.Eye.sub(p.at).dot(p.out) <= 0 || hides(m.solids, c.Eye, p.at.add(p.out.mul(1))),
		}
	}
	return all
}

// globeRound and globeOff are the ball of glass on a light's plate: how thick, and how far
// its middle stands off the plate, in millimetres: 4-1/2 in and 3 in, for looks alone.
const (
	globeRound = 4.5 * 25.4
	globeOff   = 3 * 25.4
)

// globe draws the ball of a light, a circle from wherever one looks.
func (m *Model) globe(c Camera, p plate, mark *Mark, _ int) []scene.Item {
	middle := p.at.add(p.out.mul(globeOff))
	at, ok := c.Project(middle)
	if !ok || mark == nil || mark.IsHidden {
		return nil
	}
	r := globeRound / 2 * c.focal() / c.seen(middle).depth
	return []scene.Item{
		scene.Fill{Path: scene.Circle(at, r), Color: render.Mixed(m.style.Theme.Surface, m.style.Theme.Paper, 0.4)},
		scene.Stroke{Path: scene.Circle(at, r), Pen: m.pen(1)},
		scene.Stroke{Path: scene.Arc(at, 0.68*r, 190, 60), Pen: m.thin()},
	}
}

// pen is that of the things in the room, so many thinnest lines wide.
func (m *Model) pen(times float64) scene.Pen {
	return scene.Pen{Width: times * m.style.Pixel, Color: render.Mixed(m.style.Theme.Muted, m.style.Theme.Ink, 0.2)}
}

func (m *Model) thin() scene.Pen {
	return scene.Pen{Width: m.style.Pixel, Color: render.Mixed(m.style.Theme.Muted, m.style.Theme.Paper, 0.45)}
}

// wallColor is that of an upright face by where it looks: four tones between paper and a
// tenth of the colour of walls, so that faces that meet are told apart.
func (m *Model) wallColor(out Point) scene.Color {
	lit := 0.5 + 0.5*out.dot(Point{X: -0.45, Y: 0.89})
	return render.Mixed(m.style.Theme.Paper, m.style.Theme.Wall, 0.11-0.09*lit)
}

// wood is that of cabinets and furniture by where a face looks.
func (m *Model) wood(out Point) scene.Color {
	lit := 0.5 + 0.5*out.dot(Point{X: -0.4, Y: 0.6, Z: 0.7})
	return render.Mixed(m.style.Theme.Paper, m.style.Theme.Warn, 0.24-0.14*lit)
}

// top is that of a worktop.
func (m *Model) top() scene.Color {
	return render.Mixed(m.style.Theme.Surface, m.style.Theme.Paper, 0.3)
}

// glass is that of panes and mirrors.
func (m *Model) glass() scene.Color {
	return render.Mixed(m.style.Theme.Surface, m.style.Theme.Note, 0.12)
}

// family tells what an opening is for; unknown kinds are boxes.
func family(o *plan.Opening) part.Family {
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Family
	}
	return part.Junction
}
