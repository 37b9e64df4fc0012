package walk

import (
	"math"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/scene"
)

// groundOf is how the plan about a room is drawn in a picture of a size, in millimetres of
// building: the room in the middle with a margin.
func groundOf(room *plan.Room, width, height float64, theme render.Theme, voice words.Voice) (m render.Medium, zoom float64) {
	box := room.Outline().Box()
	zoom = math.Min(0.8*height/box.Height().Millimetres(), 0.8*width/box.Width().Millimetres())
	m = render.BoardMedium(zoom, 1, theme, voice).Centred(box.Center(), scene.Point{X: width / 2, Y: height / 2})
	m.Theme.HasTints = false
	return m, zoom
}

// drawing draws the plan about the room: the room lit, all else faint, the opening spoken of under
// a ring, what is asked for by an arrow.
func (f *field) drawing(width, height float64, p *look.Palette) []scene.Item {
	frame := scene.Rect{Max: scene.Point{X: width, Y: height}}
	_, on := f.ix.Plan().Room(f.room.ID)
	if on == nil {
		return nil
	}
	m, zoom := groundOf(f.room, width, height, *p, f.voice)
	clip := f.room.Outline().Box().Expand(unit.FromMillimetres(width / zoom))
	items := []scene.Item{scene.Fill{Path: frame.Path(), Color: p.Paper}}
	for _, piece := range level.Draw(f.ix, on.ID, nil, m, clip) {
		switch piece.Layer {
		case render.LayerWalls, render.LayerRooms, render.LayerBreaks, render.LayerFixtures:
			items = append(items, piece.Items...)
		}
	}
	var outline []scene.Point
	for _, q := range f.room.Outline() {
		outline = append(outline, m.ToScene(q))
	}
	veil := p.Paper
	veil.A = 0x8c
	shade := p.Accent
	shade.A = 0x24
	items = append(items, veiled(frame, outline, veil), scene.Fill{Path: scene.Polygon(outline...), Color: shade})
	for _, d := range f.marks(m) {
		color, round := p.Accent, 4.5
		if f.lit[d.id] {
			color, round = scene.Color{R: 0xf4, G: 0xc7, B: 0x60, A: 0xff}, 8
		}
		items = append(items, scene.Fill{Path: scene.Circle(d.at, round), Color: color})
		if d.id == f.chosen {
			items = append(items, scene.Stroke{Path: scene.Circle(d.at, 13), Pen: scene.Pen{Width: 3, Color: p.Accent}})
		}
	}
	items = append(items, f.arrows(m, on.ID, p)...)
	return []scene.Item{scene.Group{Layer: scene.Layer{Name: f.room.Name, Clip: &frame}, Items: items}}
}

// dot is an opening in the picture.
type dot struct {
	id plan.ID
	at scene.Point
}

// marks are the openings of the room.
func (f *field) marks(m render.Medium) (all []dot) {
	view, _ := f.ix.RoomView(f.room.ID)
	view.EachOpening(func(o *plan.Opening, _ geom.Point) {
		place, ok := f.ix.Place(o.At)
		if !ok || o.IsGone() {
			return
		}
		all = append(all, dot{o.ID, m.ToScene(place.Foot).Add(scene.Point{X: 6 * place.Into.X.Millimetres() / 1000, Y: 6 * place.Into.Y.Millimetres() / 1000})})
	})
	return all
}

// arrows draws what is asked for on a level; how far that is only of what is dragged now, since
// the picture is small.
func (f *field) arrows(m render.Medium, on plan.ID, p *look.Palette) (items []scene.Item) {
	for _, a := range f.all() {
		o, _ := f.ix.Plan().Opening(a.id)
		if o == nil {
			continue
		}
		from, isThere := f.ix.Place(o.At)
		to, ok := f.ix.Place(a.to.At)
		if !ok || !isThere || to.Level != on {
			continue
		}
		far := ""
		if f.drag != nil && f.drag.id == a.id {
			far = a.far
		}
		items = append(items, wishArrow(m.ToScene(from.Foot), m.ToScene(to.Foot), far, 12, p)...)
	}
	return items
}

// veiled covers a frame but for an outline. The outline runs clockwise as seen and the frame
// the other way round, so by the non-zero rule the inside stays free.
func veiled(frame scene.Rect, outline []scene.Point, color scene.Color) scene.Item {
	path := scene.Polygon(frame.Min, scene.Point{X: frame.Min.X, Y: frame.Max.Y}, frame.Max, scene.Point{X: frame.Max.X, Y: frame.Min.Y})
	path.Append(scene.Polygon(outline...))
	return scene.Fill{Path: path, Color: color}
}
