package sheet

import (
	"slices"
	"strings"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/level"
	"studbay/render/paper"
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

// level lays out one level with as few columns beside its plan as hold all that is said
// of it, or as many as may stand there.
func (b *book) level(l *plan.Level, isFirst bool) error {
	most := sideColumns(b.o.Paper)
	before := len(b.pages)
	for n := min(1, most); ; n++ {
		if err := b.levelBeside(l, isFirst, n); err != nil || n == most || len(b.pages) == before+1 {
			return err
		}
		b.pages = b.pages[:before]
	}
}

// levelBeside lays out one level with so many columns beside its plan.
func (b *book) levelBeside(l *plan.Level, isFirst bool, columns int) error {
	name := b.Both("sheet.plan", "{0}, openings", l.Name)
	onward := func() *page {
		q := b.newPage(b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages)+1), 0)
		q.name, q.part = name, b.Say("sheet.continued", "continued")
		return q
	}
	p := b.newPage(name, columns)
	drawn, err := b.drawLevel(l, p.planArea())
	if err != nil {
		return err
	}
	var f *flow
	var pieces []render.Piece
	hasLegend := false // with the plan
	switch {
	case drawn.tiles != nil:
		b.pages = b.pages[:len(b.pages)-1]
		pieces = b.tiled(l, name, drawn)
		f = newFlow(onward(), layout.WideColumn, onward)
	case p.Side.IsEmpty():
		pieces = drawn.pieces
		if hasLegend = b.legendUnder(p, l, pieces); !hasLegend {
			p.plan(l, drawn)
		}
		f = newFlow(onward(), layout.WideColumn, onward)
	default:
		pieces = drawn.pieces
		p.plan(l, drawn)
		f = b.besidePlan(p, onward)
	}
	if !hasLegend {
		f.legend(legendOf(pieces, b.ix), pieces)
	}
	f.findings(b.findingsOn(l, isFirst))
	if need := b.leastSchedule(); f.Width() < need {
		f = newFlow(onward(), need, onward)
	}
	f.schedule(b.rowsOn(l))
	f.looked(l)
	return nil
}

// besidePlan begins a flow in the columns beside a plan, which goes on on pages of its own.
func (b *book) besidePlan(p *page, onward func() *page) *flow {
	columns := layout.ColumnsOf(p.Side.Expanded(-layout.Gutter), layout.SideColumn-1)
	f := &flow{Flow: &layout.Flow{On: p.Page, Columns: columns, Y: columns[0].Min.Y, Least: layout.WideColumn}, page: p}
	return f.goesOn(onward)
}

// plan puts down a level that fits the page.
func (p *page) plan(l *plan.Level, d drawnLevel) {
	p.north = true
	if len(d.pieces) == 0 {
		p.nothing()
		return
	}
	p.scale = d.scale.Words(p.b.Voice)
	p.Add(scene.Group{Layer: scene.Layer{Name: l.Name}, Items: render.Items(d.pieces)})
	p.tape(d, p.Main)
	p.under(d)
}

// under puts down what stands under a plan: the scale bar, and what found no room.
func (p *page) under(d drawnLevel) {
	end := p.scaleBar(scene.Point{X: p.Main.Min.X + 2*layout.Gutter, Y: p.Main.Max.Y - 7.5}, d.scale)
	left := p.b.untaggedIn(d.pieces)
	if len(left) == 0 {
		return
	}
	tags := make([]string, len(left))
	for i, o := range left {
		tags[i] = o.Tag
		p.untagged = append(p.untagged, o.ID)
	}
	text := p.b.Say("sheet.untagged", "No space here for the tags of {0}: see their rooms drawn larger.", strings.Join(tags, ", "))
	room := p.Main.Max.X - layout.Gutter - end - layout.Gutter
	if layout.Fine.Width(text) > room {
		text = p.b.Say("sheet.untagged-many", "No space here for {0} tags: see the rooms drawn larger.", len(left))
	}
	p.Add(layout.Fine.Right().At(p.Main.Max.X-layout.Gutter, p.Main.Max.Y-5.9, layout.Fine.Fit(text, room)))
}

// untagged lists the tags of openings that are drawn without one, in their order.
func (b *book) untagged(pieces []render.Piece) (tags []string) {
	for _, o := range b.untaggedIn(pieces) {
		tags = append(tags, o.Tag)
	}
	return tags
}

// untaggedIn lists the openings that are drawn without their tag, in the order of tags.
func (b *book) untaggedIn(pieces []render.Piece) (left []*plan.Opening) {
	written := map[plan.ID]bool{}
	for _, p := range pieces {
		if p.Layer == render.LayerLabels {
			written[p.ID] = true
		}
	}
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for _, id := range p.Symbol.IDs {
			if o, _ := b.plan.Opening(id); o != nil && o.Tag != "" && !written[id] {
				left = append(left, o)
			}
		}
	}
	slices.SortFunc(left, func(x, y *plan.Opening) int { return plan.CompareTags(x.Tag, y.Tag) })
	return left
}

// planArea is where the drawing goes: clear of the tape along two edges and of the
// scale bar under it.
func (p *page) planArea() scene.Rect {
	area := p.Main
	area.Min = area.Min.Add(scene.Point{X: tapeDeep + 2, Y: tapeDeep + 2})
	area.Max = area.Max.Sub(scene.Point{X: 4, Y: 11})
	return area
}

func (p *page) nothing() {
	s := layout.Style{Size: layout.Heading, Muted: true, Align: scene.Center}
	m := p.Main.Middle()
	p.Add(s.At(m.X, m.Y, p.b.Say("sheet.nothing", "Nothing is drawn on this level yet.")))
}

// findingsOn returns the findings of a level; those of the plan as a whole go with the
// first.
func (b *book) findingsOn(l *plan.Level, isFirst bool) (found []rule.Finding) {
	for _, f := range b.found.all {
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
	scale  paper.Scale
	extent geom.Box // of all there is
	rooms  geom.Box // of the rooms alone
	tiles  *tiling  // where it is too large for one page
}

// drawLevel draws a level in an area: at the scale asked for, in tiles where it is too
// large; else at the largest standard scale that it fits at with every tag, and where
// there is none, in tiles. What the outline alone is too large for is not drawn to find
// that out.
func (b *book) drawLevel(l *plan.Level, area scene.Rect) (drawnLevel, error) {
	extent, ok := b.ix.Extent(l.ID)
	if !ok {
		return drawnLevel{}, nil
	}
	scales := []paper.Scale{b.o.Scale}
	if b.o.Scale.IsFit() {
		scales = paper.ScalesOf(b.Voice.System)
	}
	for _, s := range scales {
		if !b.mayFit(extent, s, area) {
			continue
		}
		d := b.draw(l, extent, area, s)
		if !d.fits(area) {
			continue
		}
		if b.o.Scale.IsFit() && len(b.untagged(d.pieces)) > 0 {
			break // no smaller scale has more room
		}
		return d, nil
	}
	return b.drawTiles(l, extent)
}

// mayFit reports whether the outline of a level alone fits, which is cheap to tell.
func (b *book) mayFit(extent geom.Box, s paper.Scale, area scene.Rect) bool {
	k := b.o.Paper.Times(s)
	return extent.Width().Millimetres()*k <= area.Width() && extent.Height().Millimetres()*k <= area.Height()
}

// draw draws a level in the middle of an area. What is drawn reaches past the outline on
// all sides by other amounts, so it is set in the middle by what it came to.
func (b *book) draw(l *plan.Level, extent geom.Box, area scene.Rect, s paper.Scale) drawnLevel {
	m := layout.Medium(b.o.Paper, s, b.Voice).Centred(extent.Center(), area.Middle())
	d := b.drawAt(l, extent, m, s)
	off := area.Middle().Sub(d.bounds().Middle())
	d.medium.At = m.At.Add(off)
	d.pieces = b.drawPart(l, d.medium, extent)
	return d
}

// drawAt draws a level where a medium puts it.
func (b *book) drawAt(l *plan.Level, extent geom.Box, m render.Medium, s paper.Scale) drawnLevel {
	return drawnLevel{pieces: b.drawPart(l, m, extent), medium: m, scale: s, extent: extent, rooms: roomsBox(l, extent)}
}

// drawPart draws what stands in or near a part of a level.
func (b *book) drawPart(l *plan.Level, m render.Medium, clip geom.Box) []render.Piece {
	m.Hidden = b.hidden
	return level.Draw(b.ix, l.ID, b.found.in(level.RoomsIn(b.ix, l.ID, m, clip)...), m, clip)
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
