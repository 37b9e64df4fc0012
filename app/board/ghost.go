package board

import (
	"image"
	"math"

	"studbay/app/tool"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// ghostKey is what a live symbol's looks depend on.
type ghostKey struct {
	kind   string
	status plan.Status
	into   geom.Point
	body   float64
	theme  string
	isStop bool
}

// ghostImage is a live symbol and where its corner stands from its foot.
type ghostImage struct {
	image *image.RGBA
	at    image.Point
}

func (s *scribe) ghost(g *tool.Ghost) { s.symbol(ghostKey{kind: g.Kind, into: g.Into}, g.Foot) }

// symbol puts a live symbol at a foot of the plan.
func (s *scribe) symbol(key ghostKey, foot geom.Point) {
	m := render.BoardMedium(s.view.Zoom, s.density, s.pic.Theme, s.pic.Voice)
	key.body, key.theme = m.Symbol, m.Theme.Name
	g, ok := s.symbols[key]
	if !ok {
		g = drawGhost(m, key)
		s.symbols[key] = g
	}
	at := s.at(foot)
	corner := image.Pt(int(math.Floor(at.X+0.5)), int(math.Floor(at.Y+0.5))).Add(g.at)
	s.notes = append(s.notes, scene.Rect{
		Min: scene.Point{X: float64(corner.X), Y: float64(corner.Y)},
		Max: scene.Point{X: float64(corner.X + g.image.Rect.Dx()), Y: float64(corner.Y + g.image.Rect.Dy())},
	})
	s.add(shape{kind: imageShape, a: scene.Point{X: float64(corner.X), Y: float64(corner.Y)}, image: g.image})
}

func drawGhost(m render.Medium, key ghostKey) ghostImage {
	o := plan.Opening{Kind: key.kind, Status: key.status}
	var into scene.Point
	if x, y := key.into.X.Millimetres(), key.into.Y.Millimetres(); x != 0 || y != 0 {
		n := math.Hypot(x, y)
		into = scene.Point{X: x / n, Y: y / n}
	}
	ink := m.Theme.Accent
	if key.isStop {
		ink = m.Theme.Stop
	}
	drawn := level.OpeningSymbol(m, render.SpecOf(part.All(), &o), scene.Point{}, into, ink)
	b := drawn.Bounds().Expanded(2)
	at := image.Pt(int(math.Floor(b.Min.X)), int(math.Floor(b.Min.Y)))
	size := image.Pt(int(math.Ceil(b.Max.X)), int(math.Ceil(b.Max.Y))).Sub(at)
	im := image.NewRGBA(image.Rectangle{Max: size})
	raster.Items(im, 1, scene.Point{X: float64(-at.X), Y: float64(-at.Y)}, drawn.Items...)
	return ghostImage{im, at}
}
