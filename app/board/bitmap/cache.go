package bitmap

import (
	"maps"
	"slices"

	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// Cache keeps sprites from one picture to the next. The zero value is ready for use,
// by one goroutine at a time.
type Cache struct {
	symbols map[symbolKey]*sprite
	groups  map[string]*sprite
	runs    map[runKey]*sprite
}

// symbolKey is all that a lone symbol's looks depend on.
type symbolKey struct {
	spec  symbol.Spec
	place symbol.Place // without its foot
	style symbol.Style
}

// runKey is all that a line of text's looks depend on.
type runKey struct {
	text   string
	size   float64
	weight glyph.Weight
	align  scene.Align
	valign scene.VAlign
	color  scene.Color
	angle  float64
}

// mostSprites bounds what is kept of one sort: beyond it all are forgotten, since
// most are then of another zoom.
const mostSprites = 6_000

// symbol returns the sprite of openings at one foot.
func (c *Cache) symbol(p *render.Piece) *sprite {
	ref := p.Symbol
	draw := func() *sprite { return newSprite(p.Items, ref.Place.Foot) }
	if len(ref.Specs) != 1 {
		return cached(&c.groups, ref.Key(), draw)
	}
	place := ref.Place
	place.Foot = scene.Point{}
	return cached(&c.symbols, symbolKey{ref.Specs[0], place, ref.Style}, draw)
}

// run returns the sprite of a line of text.
func (c *Cache) run(r scene.Run) *sprite {
	key := runKey{r.Text, r.Size, r.Weight, r.Align, r.VAlign, r.Color, r.Angle}
	return cached(&c.runs, key, func() *sprite { return newSprite([]scene.Item{r}, r.At) })
}

// cached returns the sprite of a key, drawn only where it is not there yet.
func cached[K comparable](in *map[K]*sprite, key K, draw func() *sprite) *sprite {
	if s := (*in)[key]; s != nil {
		return s
	}
	if *in == nil || len(*in) >= mostSprites {
		*in = map[K]*sprite{}
	}
	s := draw()
	(*in)[key] = s
	return s
}

func sortedKeys(m map[int]bool) []int { return slices.Sorted(maps.Keys(m)) }
