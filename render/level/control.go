package level

import (
	"math"
	"slices"

	"studbay/plan"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// curve joins two openings.
type curve struct{ from, to *openingPlace }

// controls draws a dashed curve from each switch to the nearest load it serves, and
// on from load to load. A curve leaves a wall square to it, so it never runs along
// one.
func (d *drawing) controls() {
	if d.Medium.IsFar() {
		return
	}
	d.findControls()
	for _, c := range d.joins {
		if d.Medium.Hides(c.ID) {
			continue
		}
		var items []scene.Item
		for _, k := range d.joined(c) {
			path := d.curve(k.from, k.to)
			items = append(items, scene.Stroke{Path: path, Pen: d.Dashed(d.MutedPen(), 4.5, 3.5)})
		}
		d.Put(c.ID, render.LayerControls, items...)
		d.Avoid(c.ID, items...)
	}
}

// findControls lists the controls that an opening in view is part of.
func (d *drawing) findControls() {
	if len(d.places) == 0 {
		return
	}
	isIn := func(id plan.ID) bool { return d.places[id] != nil }
	for c := range d.Index.Plan().Controls.All() {
		if slices.ContainsFunc(c.Loads, isIn) || slices.ContainsFunc(c.Switches, isIn) {
			d.joins = append(d.joins, c)
		}
	}
}

// joined returns the pairs to join: the loads as a tree of nearest neighbours grown
// from the first, and each switch to its nearest load.
func (d *drawing) joined(c *plan.Control) (pairs []curve) {
	loads := d.inView(c.Loads)
	if len(loads) == 0 {
		return nil
	}
	tree := loads[:1]
	for rest := loads[1:]; len(rest) > 0; {
		bestAt, from := 0, tree[0]
		least := math.Inf(1)
		for i, p := range rest {
			if q, away := nearest(p, tree); away < least {
				bestAt, from, least = i, q, away
			}
		}
		pairs = append(pairs, curve{from, rest[bestAt]})
		tree = append(tree[:len(tree):len(tree)], rest[bestAt])
		rest = append(rest[:bestAt:bestAt], rest[bestAt+1:]...)
	}
	for _, s := range d.inView(c.Switches) {
		to, _ := nearest(s, loads)
		pairs = append(pairs, curve{s, to})
	}
	return pairs
}

func (d *drawing) inView(ids []plan.ID) (found []*openingPlace) {
	for _, id := range ids {
		if p := d.places[id]; p != nil {
			found = append(found, p)
		}
	}
	return found
}

func nearest(p *openingPlace, among []*openingPlace) (best *openingPlace, away float64) {
	away = math.Inf(1)
	for _, q := range among {
		v := q.box.Middle().Sub(p.box.Middle())
		if n := math.Hypot(v.X, v.Y); n < away {
			best, away = q, n
		}
	}
	return best, away
}

// curve returns the path between two bodies. Each end on a wall sets out into its
// room; a ceiling end is met from where the curve comes.
func (d *drawing) curve(from, to *openingPlace) (p scene.Path) {
	a, b := from.box.Middle(), to.box.Middle()
	v := b.Sub(a)
	away := math.Hypot(v.X, v.Y)
	if away == 0 {
		return p
	}
	dir := v.Mul(1 / away)
	pull := max(0.38*away, 1.6*d.Medium.Symbol)
	c1 := a.Add(from.pull(dir, pull, 0.22, d.Medium.Symbol))
	c2 := b.Add(to.pull(dir.Mul(-1), pull, -0.22, d.Medium.Symbol))
	a, b = draft.Leaving(from.box, a, c1, d.Medium.Pixel), draft.Leaving(to.box, b, c2, d.Medium.Pixel)
	p.MoveTo(a)
	p.CubicTo(c1, c2, b)
	return p
}

// pull returns how an end bends its curve: square off its wall, or from a ceiling
// toward the other end with a little to the side. Where the other end lies behind the
// wall, the curve sets out askew and turns back at once.
func (o *openingPlace) pull(dir scene.Point, length, bow, body float64) scene.Point {
	if o.into == (scene.Point{}) {
		return dir.Add(dir.Turned().Mul(bow)).Mul(length)
	}
	if ahead := dir.X*o.into.X + dir.Y*o.into.Y; ahead > -0.25 {
		return o.into.Mul(length)
	}
	side := o.into.Turned()
	if dir.X*side.X+dir.Y*side.Y < 0 {
		side = side.Mul(-1)
	}
	return o.into.Mul(1.1 * body).Add(side.Mul(2.6 * body))
}
