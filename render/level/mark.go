package level

import (
	"studbay/fill/rule"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// The sign on the ring round an opening with a finding, in bodies: badge is its side and
// badgeAway how far its middle lies out, so that its ground leaves the body whole.
const (
	badge     = 0.78
	badgeAway = 1.22
	// badgeGround is the radius of the ground under a sign, in its sides.
	badgeGround = 0.62
)

// rings keeps texts off the rings and their signs before any is placed.
func (d *drawing) rings() {
	d.eachMarked(func(p *openingPlace, f *rule.Finding) {
		d.AvoidPath(p.opening.ID, scene.Circle(p.box.Middle(), draft.RingRadius*d.Medium.Symbol))
	})
	d.eachMarked(func(p *openingPlace, f *rule.Finding) {
		if f.Waived != nil {
			return
		}
		if at, ok := d.badgeAt(p); ok {
			p.badge, p.isBadged = at, true
			d.Obstacles.Text(d.badgeBox(at), p.opening.ID)
		}
	})
}

// eachMarked calls f for every opening in view with a finding, in order, with the
// gravest; one set aside is given only where there is no other.
func (d *drawing) eachMarked(f func(*openingPlace, *rule.Finding)) {
	for _, r := range d.rooms {
		for _, g := range r.groups {
			for _, o := range g.openings {
				p, all := d.places[o.ID], d.Found.ByOpening[o.ID]
				if p == nil || p.isOff || len(all) == 0 {
					continue
				}
				worst := d.Found.Worst(o.ID)
				if worst == nil {
					worst = all[0]
				}
				f(p, worst)
			}
		}
	}
}

// marks draws a ring round each opening with a finding and on it the sign of its
// severity; where every place for that hides something, the ring alone. One set aside has a dashed ring and no sign.
func (d *drawing) marks() {
	d.eachMarked(func(p *openingPlace, f *rule.Finding) {
		middle := p.box.Middle()
		color := d.Theme.Severity(f.Severity)
		ring := scene.Stroke{Path: scene.Circle(middle, draft.RingRadius*d.Medium.Symbol), Pen: scene.Pen{Width: 1.5 * d.Medium.Pixel, Color: color}}
		if f.Waived != nil {
			ring.Pen = d.Dashed(d.MutedPen(), 2.5, 2.5)
			d.Put(p.opening.ID, render.LayerMarks, ring)
			return
		}
		items := []scene.Item{ring}
		if p.isBadged {
			side := badge * d.Medium.Symbol
			items = append(items, scene.Fill{Path: scene.Circle(p.badge, badgeGround*side), Color: p.room.paper})
			items = append(items, symbol.DrawMark(render.MarkOf(f), p.badge, side, color, d.Theme.OnSeverity(f.Severity))...)
		}
		d.Put(p.opening.ID, render.LayerMarks, items...)
	})
}

// stopsFar draws the sign of what stops the job on openings that are dots: whatever else is
// left out far away, it shows.
func (d *drawing) stopsFar() {
	d.eachMarked(func(p *openingPlace, f *rule.Finding) {
		if f.Severity != rule.Stop || f.Waived != nil || f.IsOpen {
			return
		}
		side := badge * d.Medium.Symbol
		d.Put(p.opening.ID, render.LayerMarks, symbol.DrawMark(render.MarkOf(f), p.box.Middle(), side, d.Theme.Severity(f.Severity), d.Theme.OnSeverity(f.Severity))...)
	})
}

// badgeBox is what a sign with its ground takes.
func (d *drawing) badgeBox(at scene.Point) scene.Rect {
	side := 2 * badgeGround * badge * d.Medium.Symbol
	return scene.RectAround(at, side, side)
}

// badgeTurns are the ways a sign may lie from its body: first away from the wall and to
// the left, then all round.
var badgeTurns = []float64{-50, 50, -90, 90, 0, -130, 130, 180, -70, 70, -25, 25, -110, 110, -155, 155}

// badgeAt returns a place on the ring, or a little outside it, where a sign hides no
// symbol and no text; if it can, no line either.
func (d *drawing) badgeAt(p *openingPlace) (scene.Point, bool) {
	middle, radius := p.box.Middle(), badgeGround*badge*d.Medium.Symbol
	for _, overLines := range []bool{false, true} {
		for _, away := range []float64{1, 1.2, 1.45} {
			for _, turn := range badgeTurns {
				at := middle.Add(scene.Direction(draft.Heading(p.into) + turn).Mul(away * badgeAway * d.Medium.Symbol))
				box := d.badgeBox(at)
				hides := d.Obstacles.Hits(box, func(o *draft.Obstacle) bool {
					isOwnRing := o.IsLine && o.Of == p.opening.ID
					return !isOwnRing && !(overLines && o.IsLine) && o.IsNear(at, radius)
				})
				if !hides && p.room.Holds(box) {
					return at, true
				}
			}
		}
	}
	return scene.Point{}, false
}
