package level

import (
	"math"
	"slices"
	"strconv"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// leastBundled is how many openings that crowd make a bundle: two lean apart, where they can.
const leastBundled = 3

// crowd is how near the bodies of two openings come that stand in each other's way, in
// bodies.
const crowd = 1.15

// crowdRinged is how near two come whose rings lie over each other's bodies.
const crowdRinged = draft.RingRadius + 0.5

// isRinged reports whether an opening at a foot has a ring about it.
func (d *drawing) isRinged(g *group) bool {
	return slices.ContainsFunc(g.openings, func(o *plan.Opening) bool { return d.Found.Worst(o.ID) != nil })
}

// bundle is the openings that one mark with their count stands for.
type bundle struct {
	groups []*group
	middle scene.Point
}

// bundles gathers the openings of a room whose bodies would crowd at the least size.
func (d *drawing) bundles(r *roomDrawing) (all []bundle) {
	if !d.Medium.IsCrowded() || d.Medium.IsFar() {
		return nil
	}
	at := make([]scene.Point, len(r.groups))
	of := make([]int, len(r.groups))   // the cluster of each group: the first in it
	met := make([]bool, len(r.groups)) // its body lies over another
	for i, g := range r.groups {
		at[i], of[i] = g.ref.Place.Foot.Add(g.ref.Place.Into.Mul(d.Medium.Symbol)), i
		for j, h := range r.groups[:i] {
			away := at[i].Sub(at[j])
			near := math.Hypot(away.X, away.Y) / d.Medium.Symbol
			isMet := g.covers(h, 0) || near < crowdRinged && d.isRinged(g) && d.isRinged(h)
			if isMet || near < crowd {
				join(of[:i+1], of[i], of[j])
				met[i] = met[i] || isMet
			}
		}
	}
	for first := range r.groups {
		var b bundle
		n, isMet := 0, false
		for i, g := range r.groups {
			if of[i] == first {
				b.groups = append(b.groups, g)
				b.middle = b.middle.Add(at[i])
				n, isMet = n+len(g.openings), isMet || met[i]
			}
		}
		if len(b.groups) > 1 && (n >= leastBundled || isMet) {
			b.middle = b.middle.Mul(1 / float64(len(b.groups)))
			all = append(all, b)
		}
	}
	return all
}

// join makes two clusters one, under the lower number.
func join(of []int, a, b int) {
	low, high := min(a, b), max(a, b)
	for i := range of {
		if of[i] == high {
			of[i] = low
		}
	}
}

// bundleRadius is that of the mark of a bundle, in bodies.
const bundleRadius = 0.78

// bundleMark draws a bundle as one mark. What is found of the worst of its openings shows
// on it; the others have no mark and no tag until nearer.
func (d *drawing) bundleMark(r *roomDrawing, b bundle) {
	radius := bundleRadius * d.Medium.Symbol
	box := scene.RectAround(b.middle, 2*radius, 2*radius)
	ink := d.Theme.Accent
	var ids []plan.ID
	var worst *openingPlace
	gravest := rule.Severity(-1)
	for _, g := range b.groups {
		for _, o := range g.openings {
			ids = append(ids, o.ID)
			p := &openingPlace{opening: o, room: r, group: g, box: box, isOff: true}
			d.places[o.ID] = p
			f := d.Found.Worst(o.ID)
			if f == nil {
				continue
			}
			if f.Severity == rule.Stop {
				ink = d.Theme.Stop
			}
			if f.Severity > gravest {
				worst, gravest = p, f.Severity
			}
		}
	}
	if !d.Medium.Shows(box) {
		return
	}
	if worst != nil {
		worst.isOff = false
		worst.isBundle = true
	}
	d.Pieces = append(d.Pieces, render.Piece{
		ID: ids[0], Layer: render.LayerOpenings, Bounds: box.Expanded(2 * d.Medium.Pixel), Bundle: ids,
		Items: []scene.Item{
			scene.Fill{Path: scene.Circle(b.middle, radius+d.Medium.Pixel), Color: r.paper},
			scene.Fill{Path: scene.Circle(b.middle, radius), Color: ink},
			scene.Run{
				Text: strconv.Itoa(len(ids)), At: b.middle, Size: 0.9 * d.Medium.Symbol, Weight: glyph.Bold, Color: r.paper,
				Align: scene.Center, VAlign: scene.Middle,
			},
		},
	})
	d.Obstacles.Block(box, ids[0])
}
