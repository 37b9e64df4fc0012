package level

import (
	"math"

	"studbay/render/draft"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// partCorners fans out symbols of different faces that meet in an inner corner, or
// across a narrow room, and those that stand where one is in the ceiling or the floor:
// bodies lean away, feet stay true. What finds no free place within reach is left as it
// is.
func (r *roomDrawing) partCorners() {
	for i, g := range r.groups {
		for _, h := range r.groups[:i] {
			switch {
			case g.isFlat() == h.isFlat() && (g.isFlat() || !g.isApart(h)) || !g.meets(h, 0):
			case g.isFlat():
				r.partFrom(h, g)
			case h.isFlat():
				r.partFrom(g, h)
			default:
				r.part(h, g)
			}
		}
	}
}

// isFlat reports whether a symbol stands in a ceiling or a floor, where nothing can lean.
func (g *group) isFlat() bool { return g.ref.Place.Into == (scene.Point{}) }

// isApart reports whether two feet stand on different upright faces.
func (g *group) isApart(h *group) bool {
	a, b := g.openings[0].At, h.openings[0].At
	return a.Host != b.Host || a.Part != b.Part
}

// meets reports whether two symbols come nearer than a gap. Stems may cross.
func (g *group) meets(h *group, gap float64) bool {
	if !g.drawn.Bounds().Expanded(gap).Overlaps(h.drawn.Bounds()) {
		return false
	}
	return g.covers(h, gap) || g.runsInto(h, gap) || h.runsInto(g, gap)
}

// covers reports whether a body or a letter of a symbol comes nearer than a gap to one of
// another.
func (g *group) covers(h *group, gap float64) bool {
	for _, own := range g.words() {
		own = own.Expanded(gap)
		for _, box := range h.words() {
			if own.Overlaps(box) {
				return true
			}
		}
	}
	return false
}

// words returns the boxes of a symbol without its stem.
func (g *group) words() []scene.Rect {
	return append(g.drawn.Bodies[:len(g.drawn.Bodies):len(g.drawn.Bodies)], g.drawn.Written...)
}

// runsInto reports whether the stem of a symbol comes nearer than a gap to a body of
// another.
func (g *group) runsInto(h *group, gap float64) bool {
	place, last := g.ref.Place, g.drawn.Bodies[len(g.drawn.Bodies)-1].Middle()
	bend := place.Foot.Add(axisOf(place.Into).Mul(place.Lean)).Add(place.Into.Mul(place.Lift))
	for _, box := range h.words() {
		if box = box.Expanded(gap); draft.Clips(place.Foot, bend, box) || draft.Clips(bend, last, box) {
			return true
		}
	}
	return false
}

// axisOf returns the x axis of a symbol's own: see symbol.Spread.
func axisOf(into scene.Point) scene.Point { return scene.Point{X: into.Y, Y: -into.X} }

// The steps in which bodies are leaned apart and the most that one leans, in bodies, and
// the gap that is to be between.
const (
	cornerStep = 0.4
	cornerMost = 4.8
	cornerGap  = 0.12
	flatMost   = 2.0 // beside a flat one: a longer way to the foot reads worse than to meet it
)

// parting is how two symbols are parted: how much of a step each leans, and how many
// bodies longer the stem of the one that leans gets.
type parting struct{ one, other, lift float64 }

var partings = []parting{{1, 0, 0}, {0, 1, 0}, {0.7, 0.7, 0}, {1, 0, 1.4}, {0, 1, 1.4}, {1, 0, 2.6}, {0, 1, 2.6}}

// part leans one of two symbols, or both, by as little as parts them and runs into no
// other.
func (r *roomDrawing) part(g, h *group) {
	wasG, wasH := *g, *h
	for lean := cornerStep; lean <= cornerMost; lean += cornerStep {
		for _, p := range partings {
			g.lean(&wasG, &wasH, lean*p.one, p.lift)
			h.lean(&wasH, &wasG, lean*p.other, p.lift)
			if r.isClear(g) && r.isClear(h) {
				return
			}
		}
	}
	*g, *h = wasG, wasH
}

// partFrom leans an upright symbol, to either side and on a longer stem if need be, so that
// it is clear of a flat one. Where that covers its very foot, its stem may cross it.
func (r *roomDrawing) partFrom(g, flat *group) {
	was, ways := *g, []*group{nil}
	if flat.isOver(g.ref.Place.Foot) {
		ways = append(ways, flat)
	}
	for _, crossed := range ways {
		for lean := cornerStep; lean <= flatMost; lean += cornerStep {
			for _, lift := range []float64{0, 1.4} {
				for _, way := range []float64{lean, -lean} {
					if g.lean(&was, flat, way, lift); r.isClearBut(g, crossed) {
						return
					}
				}
			}
		}
	}
	*g = was
}

// isOver reports whether a point lies under a symbol, or so near that no stem from there
// gets round it.
func (g *group) isOver(p scene.Point) bool {
	for _, box := range g.words() {
		if box.Expanded(g.ref.Style.Size / 2).Contains(p) {
			return true
		}
	}
	return false
}

// lean draws a symbol as it was but so many bodies farther from the foot of another, or
// nearer where that is below zero.
func (g *group) lean(was, from *group, bodies, lift float64) {
	*g = *was
	if bodies == 0 {
		return
	}
	size, axis := g.ref.Style.Size, axisOf(was.ref.Place.Into)
	off := from.ref.Place.Foot.Sub(was.ref.Place.Foot)
	by := bodies * math.Copysign(size, -(off.X*axis.X+off.Y*axis.Y))
	g.ref.Place = symbol.Leaned(was.ref.Place, g.ref.Style, by)
	g.ref.Place.Lift += lift * size
	g.drawn = symbol.Draw(g.ref.Place, g.ref.Style, g.ref.Specs...)
}

// isClear reports whether the bodies of a symbol lie in the room and meet no other's.
func (r *roomDrawing) isClear(g *group) bool { return r.isClearBut(g, nil) }

// isClearBut is isClear where the stem may run into one other.
func (r *roomDrawing) isClearBut(g, crossed *group) bool {
	for _, body := range g.drawn.Bodies {
		if !r.Contains(body.Middle()) {
			return false
		}
	}
	for _, h := range r.groups {
		gap := cornerGap * g.ref.Style.Size
		if h == crossed && g.covers(h, gap) || h != g && h != crossed && g.meets(h, gap) {
			return false
		}
	}
	return true
}
