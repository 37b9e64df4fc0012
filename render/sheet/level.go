package sheet

import (
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// levels lays out the plan of each level, with the legend, findings and schedule of
// what is on it.
func (b *book) levels() error {
	for i, l := range b.plan.Levels {
		if err := b.level(l, i == 0); err != nil {
			return err
		}
	}
	return nil
}

func (b *book) level(l *plan.Level, isFirst bool) error {
	name := b.say("sheet.plan", "{0}, openings", l.Name)
	p := b.newPage(name, true)
	p.north = true
	drawn, err := b.drawLevel(l, p.planArea())
	if err != nil {
		return err
	}
	if len(drawn.pieces) > 0 {
		p.scale = drawn.scale.Words()
		p.add(scene.Group{Layer: scene.Layer{Name: l.Name}, Items: render.Items(drawn.pieces)})
		p.tape(drawn)
		p.scaleBar(scene.Point{X: p.main.Min.X + 2*gutter, Y: p.main.Max.Y - 7.5}, drawn.scale)
	} else {
		p.nothing()
	}
	onward := func() *page {
		q := b.newPage(b.say("sheet.more", "{0}, sheet {1}", name, len(b.pages)+1), false)
		q.name, q.part = name, b.say("sheet.continued", "continued")
		return q
	}
	var f *flow
	if p.side.IsEmpty() {
		f = newFlow(onward(), wideColumn, onward)
	} else {
		f = &flow{page: p, columns: columnsOf(p.side.Expanded(-gutter), sideColumn-1), least: wideColumn, onward: onward}
		f.y = f.column().Min.Y
	}
	f.legend(legendOf(drawn.pieces, b.ix), drawn.pieces)
	f.findings(b.findingsOn(l, isFirst))
	f.schedule(b.rowsOn(l))
	f.looked()
	return nil
}

// planArea is where the drawing goes: clear of the tape along two edges and of the
// scale bar under it.
func (p *page) planArea() scene.Rect {
	area := p.main
	area.Min = area.Min.Add(scene.Point{X: tapeDeep + 2, Y: tapeDeep + 2})
	area.Max = area.Max.Sub(scene.Point{X: 4, Y: 11})
	return area
}

func (p *page) nothing() {
	s := style{size: heading, muted: true, align: scene.Center}
	m := p.main.Middle()
	p.add(s.at(m.X, m.Y, p.b.say("sheet.nothing", "Nothing is drawn on this level yet.")))
}

// findingsOn returns the findings of a level; those of the plan as a whole go with the
// first.
func (b *book) findingsOn(l *plan.Level, isFirst bool) (found []fill.Finding) {
	for _, f := range b.findings {
		if f.Level == l.ID || f.Level == "" && isFirst {
			found = append(found, f)
		}
	}
	return found
}

// drawnLevel is a level on paper.
type drawnLevel struct {
	pieces []render.Piece
	medium render.Medium
	scale  Scale
	extent geom.Box // of all there is
	rooms  geom.Box // of the rooms alone
}

// drawLevel draws a level in an area, at the scale asked for or the largest that fits.
// What the outline alone is too large for is not drawn to find that out.
func (b *book) drawLevel(l *plan.Level, area scene.Rect) (drawnLevel, error) {
	extent, ok := b.ix.Extent(l.ID)
	if !ok {
		return drawnLevel{}, nil
	}
	scales := []Scale{b.o.Scale}
	if b.o.Scale.IsFit() {
		scales = scalesOf(b.o.Voice.System)
	}
	var box scene.Rect
	for _, s := range scales {
		if !mayFit(extent, s, area) {
			box = scene.Rect{Max: scene.Point{X: extent.Width().Millimetres() * s.times(), Y: extent.Height().Millimetres() * s.times()}}
			continue
		}
		d := b.draw(l, extent, area, s)
		if d.fits(area) {
			return d, nil
		}
		box = d.bounds()
	}
	return drawnLevel{}, b.tooLarge(l, scales[len(scales)-1], box, extent, area)
}

// mayFit reports whether the outline of a level alone fits, which is cheap to tell.
func mayFit(extent geom.Box, s Scale, area scene.Rect) bool {
	return extent.Width().Millimetres()*s.times() <= area.Width() && extent.Height().Millimetres()*s.times() <= area.Height()
}

// draw draws a level in the middle of an area. What is drawn reaches past the outline on
// all sides by other amounts, so it is set in the middle by what it came to.
func (b *book) draw(l *plan.Level, extent geom.Box, area scene.Rect, s Scale) drawnLevel {
	m := render.SheetMedium(s.Paper, s.Building, *theme, b.o.Voice)
	m.Text = tagText * scene.PointSize
	m = m.Centred(extent.Center(), area.Middle())
	d := drawnLevel{pieces: render.Level(b.ix, l.ID, b.findings, m, extent), medium: m, scale: s, extent: extent, rooms: roomsBox(l, extent)}
	off := area.Middle().Sub(d.bounds().Middle())
	d.medium.At = m.At.Add(off)
	d.pieces = render.Level(b.ix, l.ID, b.findings, d.medium, extent)
	return d
}

// roomsBox is the box of the rooms of a level, or other where there is none.
func roomsBox(l *plan.Level, other geom.Box) geom.Box {
	first := true
	for r := range l.Rooms.All() {
		box := r.Outline().Box()
		if !first {
			box = box.Union(other)
		}
		other, first = box, false
	}
	return other
}

// bounds is the box of all that is drawn.
func (d drawnLevel) bounds() (all scene.Rect) {
	for _, p := range d.pieces {
		all = all.Union(p.Bounds)
	}
	return all
}

func (d drawnLevel) fits(area scene.Rect) bool {
	box := d.bounds()
	return box.Width() <= area.Width() && box.Height() <= area.Height()
}

// tooLarge says what would hold a level that comes to a box at a scale.
func (b *book) tooLarge(l *plan.Level, scale Scale, box scene.Rect, extent geom.Box, area scene.Rect) error {
	e := &FitError{
		Level: l.Name, Scale: scale, Paper: b.o.Paper,
		Width: unit.FromMillimetres(box.Width()), Height: unit.FromMillimetres(box.Height()),
		Free: [2]unit.Length{unit.FromMillimetres(area.Width()), unit.FromMillimetres(area.Height())},
	}
	for _, s := range scalesOf(scale.System) {
		if s.times() < scale.times() && mayFit(extent, s, area) && b.draw(l, extent, area, s).fits(area) {
			e.Scales = append(e.Scales, s)
			break
		}
	}
	for _, paper := range Papers {
		other := *b
		other.o.Paper, other.pages = paper, nil
		free := other.newPage("", true).planArea()
		if paper.System == b.o.Paper.System && box.Width() <= free.Width() && box.Height() <= free.Height() &&
			b.draw(l, extent, free, scale).fits(free) {
			e.Papers = append(e.Papers, paper)
			break
		}
	}
	return e
}
