package walk

import (
	"math"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/scene"
)

// field draws the plan about a room: the room lit, all else faint, the opening spoken of
// under a ring.
func field(ix *index.Index, room *plan.Room, chosen plan.ID, lit map[plan.ID]bool, drawn []*plan.Wish, voice words.Voice) look.Drawing {
	return func(width, height float64, p *look.Palette) []scene.Item {
		frame := scene.Rect{Max: scene.Point{X: width, Y: height}}
		_, on := ix.Plan().Room(room.ID)
		if on == nil {
			return nil
		}
		box := room.Outline().Box()
		zoom := math.Min(0.8*height/box.Height().Millimetres(), 0.8*width/box.Width().Millimetres())
		m := render.BoardMedium(zoom, 1, *p, voice).Centred(box.Center(), frame.Middle())
		m.Theme.HasTints = false
		clip := box.Expand(unit.FromMillimetres(width / zoom))
		items := []scene.Item{scene.Fill{Path: frame.Path(), Color: p.Paper}}
		for _, piece := range level.Draw(ix, on.ID, nil, m, clip) {
			switch piece.Layer {
			case render.LayerWalls, render.LayerRooms, render.LayerBreaks, render.LayerFixtures:
				items = append(items, piece.Items...)
			}
		}
		var outline []scene.Point
		for _, q := range room.Outline() {
			outline = append(outline, m.ToScene(q))
		}
		veil := p.Paper
		veil.A = 0x8c
		shade := p.Accent
		shade.A = 0x24
		items = append(items, veiled(frame, outline, veil), scene.Fill{Path: scene.Polygon(outline...), Color: shade})
		view, _ := ix.RoomView(room.ID)
		view.EachOpening(func(o *plan.Opening, _ geom.Point) {
			place, ok := ix.Place(o.At)
			if !ok || o.IsGone() {
				return
			}
			at := m.ToScene(place.Foot).Add(scene.Point{X: 6 * place.Into.X.Millimetres() / 1000, Y: 6 * place.Into.Y.Millimetres() / 1000})
			color, round := p.Accent, 4.5
			if lit[o.ID] {
				color, round = scene.Color{R: 0xf4, G: 0xc7, B: 0x60, A: 0xff}, 8
			}
			items = append(items, scene.Fill{Path: scene.Circle(at, round), Color: color})
			if o.ID == chosen {
				items = append(items, scene.Stroke{Path: scene.Circle(at, 13), Pen: scene.Pen{Width: 3, Color: p.Accent}})
			}
		})
		for _, w := range drawn {
			o, _ := ix.Plan().Opening(w.About)
			if o == nil {
				continue
			}
			from, isThere := ix.Place(o.At)
			if to, ok := ix.Place(*w.To); ok && isThere && to.Level == on.ID {
				items = append(items, wishArrow(m.ToScene(from.Foot), m.ToScene(to.Foot), "", 12, p)...)
			}
		}
		return []scene.Item{scene.Group{Layer: scene.Layer{Name: room.Name, Clip: &frame}, Items: items}}
	}
}

// veiled covers a frame but for an outline. The outline runs clockwise as seen and the frame
// the other way round, so by the non-zero rule the inside stays free.
func veiled(frame scene.Rect, outline []scene.Point, color scene.Color) scene.Item {
	path := scene.Polygon(frame.Min, scene.Point{X: frame.Min.X, Y: frame.Max.Y}, frame.Max, scene.Point{X: frame.Max.X, Y: frame.Min.Y})
	path.Append(scene.Polygon(outline...))
	return scene.Fill{Path: path, Color: color}
}
