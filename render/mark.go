package render

import (
	"studbay/fill"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// ringRadius is that of the ring round an opening with a finding, badge the side of
// the sign on it and badgeAway how far its middle lies out, so that its ground leaves
// the body whole; in bodies.
const (
	ringRadius = 1.02
	badge      = 0.78
	badgeAway  = 1.22
)

// rings keeps texts off the rings before any is placed.
func (d *drawing) rings() {
	d.eachMarked(func(p *openingPlace, _ *fill.Finding) {
		d.avoidPath(p.opening.ID, scene.Circle(p.box.Middle(), ringRadius*d.m.Symbol))
	})
}

// eachMarked calls f for every opening in view with a finding, in order, with the
// gravest; one set aside is given only where there is no other.
func (d *drawing) eachMarked(f func(*openingPlace, *fill.Finding)) {
	for _, r := range d.rooms {
		for _, g := range r.groups {
			for _, o := range g.openings {
				p, all := d.places[o.ID], d.found.byOpening[o.ID]
				if p == nil || len(all) == 0 {
					continue
				}
				worst := d.found.worst(o.ID)
				if worst == nil {
					worst = all[0]
				}
				f(p, worst)
			}
		}
	}
}

// marks draws a ring round each opening with a finding and on it the sign of its
// severity, where that hides nothing. One set aside has a dashed ring and no sign.
func (d *drawing) marks() {
	d.eachMarked(func(p *openingPlace, f *fill.Finding) {
		middle := p.box.Middle()
		color := d.theme.severityColor(f.Severity)
		ring := scene.Stroke{Path: scene.Circle(middle, ringRadius*d.m.Symbol), Pen: scene.Pen{Width: 1.5 * d.m.Pixel, Color: color}}
		if f.Waived != nil {
			ring.Pen = d.dashed(d.mutedPen(), 2.5, 2.5)
			d.piece(p.opening.ID, LayerMarks, ring)
			return
		}
		at := d.badgeAt(p, middle)
		side := badge * d.m.Symbol
		items := []scene.Item{ring, scene.Fill{Path: scene.Circle(at, 0.62*side), Color: p.room.paper}}
		items = append(items, symbol.DrawMark(markOf(f), at, side, color, d.onSeverity(f))...)
		d.field.block(scene.RectAround(at, side, side), p.opening.ID)
		d.piece(p.opening.ID, LayerMarks, items...)
	})
}

// badgeAt returns a place on the ring that is free, looking first away from the wall
// and to the left.
func (d *drawing) badgeAt(p *openingPlace, middle scene.Point) scene.Point {
	side := badge * d.m.Symbol
	var first scene.Point
	for i, turn := range []float64{-50, 50, -90, 90, 0, -130, 130, 180} {
		at := middle.Add(scene.Direction(heading(p.into) + turn).Mul(badgeAway * d.m.Symbol))
		if i == 0 {
			first = at
		}
		box := scene.RectAround(at, side, side)
		free := !d.field.hits(box, func(o obstacle) bool { return o.of != p.opening.ID })
		if free && p.room.holds(box) {
			return at
		}
	}
	return first
}

func markOf(f *fill.Finding) symbol.Mark {
	switch {
	case f.IsOpen:
		return symbol.Question
	case f.Severity == fill.Stop:
		return symbol.Stop
	case f.Severity == fill.Warn:
		return symbol.Warn
	}
	return symbol.Note
}

func (d *drawing) onSeverity(f *fill.Finding) scene.Color {
	switch f.Severity {
	case fill.Stop:
		return d.theme.OnStop
	case fill.Warn:
		return d.theme.OnWarn
	}
	return d.theme.Paper
}
