package sheet

import (
	"math"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
)

// The measures of tiles, in millimetres of paper: how far each shows what lies beyond
// its match lines, so that a symbol at a line stands whole on one page at least, and
// the white outside of that for what the line says.
const (
	overlap   = 14.0
	matchText = 5.0
	beyond    = overlap + matchText
)

// mostTiles is how many pages one level may take: more is a slip of the scale.
const mostTiles = 300

// leastTiled is the smallest scale that is chosen for tiles: under it nothing is
// readable that needs them (common practice).
var leastTiled = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(2), unit.Metric: paper.Metric(100)}

// tiling divides a drawing into parts, from the upper left row by row.
type tiling struct {
	whole  scene.Rect // the drawing, at its medium
	xs, ys []float64  // where parts begin and end
	area   scene.Rect // of a page, for one part with what lies beyond its lines
	sheets map[tileAt]int
	// keyed are the rooms on the key plan of each part, once they were drawn.
	keyed *scene.Stroke
}

func (t *tiling) columns() int { return len(t.xs) - 1 }
func (t *tiling) rows() int    { return len(t.ys) - 1 }

// tileAt is one part by its column and row.
type tileAt struct{ column, row int }

// tilesFor returns the least parts of a length so that each fits, with what it shows
// beyond its lines.
func tilesFor(length, room float64) int {
	switch {
	case length <= room:
		return 1
	case length/2+beyond <= room:
		return 2
	}
	return max(3, int(math.Ceil(length/(room-2*beyond))))
}

// seam returns one part between its match lines.
func (t *tiling) seam(at tileAt) scene.Rect {
	return scene.Rect{
		Min: scene.Point{X: t.xs[at.column], Y: t.ys[at.row]}, Max: scene.Point{X: t.xs[at.column+1], Y: t.ys[at.row+1]},
	}
}

// window returns what a part shows: beyond its match lines too, and at the edges of
// the drawing a hair more, so that nothing there is cut.
func (t *tiling) window(at tileAt) scene.Rect {
	r := t.seam(at).Expanded(overlap)
	const hair = 0.5
	if at.column == 0 {
		r.Min.X += overlap - hair
	}
	if at.row == 0 {
		r.Min.Y += overlap - hair
	}
	if at.column == t.columns()-1 {
		r.Max.X -= overlap - hair
	}
	if at.row == t.rows()-1 {
		r.Max.Y -= overlap - hair
	}
	return r
}

// all lists the parts row by row.
func (t *tiling) all() (all []tileAt) {
	for row := range t.rows() {
		for column := range t.columns() {
			all = append(all, tileAt{column, row})
		}
	}
	return all
}

// drawTiles draws a level that no page holds: at the scale asked for, or the smallest
// of use at which no tag is left out. It fails with a *FitError where that comes to
// more pages than anyone wants.
func (b *book) drawTiles(l *plan.Level, extent geom.Box) (drawnLevel, error) {
	scales := []paper.Scale{b.o.Scale}
	if b.o.Scale.IsFit() {
		scales = nil
		for _, s := range paper.ScalesOf(b.Voice.System) {
			if s.Times() >= leastTiled[b.Voice.System].Times() {
				scales = append([]paper.Scale{s}, scales...)
			}
		}
	}
	var best drawnLevel
	for _, s := range scales {
		if n := b.tilesAt(extent, s); n > mostTiles {
			if best.tiles != nil {
				return best, nil
			}
			return drawnLevel{}, b.tooLarge(l, s, n, extent)
		}
		d := b.drawAt(l, extent, layout.Medium(b.o.Paper, s, b.Voice).Centred(extent.Center(), scene.Point{}), s)
		d.tiles = b.tiling(d)
		isWhole := len(b.untagged(d.pieces)) == 0
		best = d.withoutItems()
		if isWhole {
			break
		}
	}
	return best, nil
}

// withoutItems lets go of how pieces look, of which there is much: each part is drawn by itself.
func (d drawnLevel) withoutItems() drawnLevel {
	for i := range d.pieces {
		d.pieces[i].Items = nil
	}
	return d
}

// tiling divides a drawing for the paper.
func (b *book) tiling(d drawnLevel) *tiling {
	t := &tiling{whole: d.bounds(), area: b.tileArea(), sheets: map[tileAt]int{}}
	var across, down []taken
	for _, p := range d.pieces {
		if p.Symbol != nil {
			across = append(across, taken{p.Bounds.Min.X, p.Bounds.Max.X})
			down = append(down, taken{p.Bounds.Min.Y, p.Bounds.Max.Y})
		}
	}
	t.xs = seams(t.whole.Min.X, t.whole.Max.X, t.area.Width(), across)
	t.ys = seams(t.whole.Min.Y, t.whole.Max.Y, t.area.Height(), down)
	return t
}

// taken is what a symbol takes along one axis.
type taken struct{ from, to float64 }

// seams returns where the parts of a length begin and end: all alike, but moved to where
// they run through the fewest symbols as far as the room lets them.
func seams(from, to, room float64, symbols []taken) []float64 {
	n := tilesFor(to-from+1, room)
	part := (to - from) / float64(n)
	play := (room - part - 2*beyond) / 2
	if n == 2 {
		play = room - part - beyond - 0.5
	}
	at := []float64{from}
	for i := 1; i < n; i++ {
		even := from + part*float64(i)
		best, least := even, struckAt(even, symbols)
		for off := 0.5; off <= play && least > 0; off += 0.5 {
			for _, x := range []float64{even + off, even - off} {
				if k := struckAt(x, symbols); k < least {
					best, least = x, k
				}
			}
		}
		at = append(at, best)
	}
	return append(at, to)
}

// struckAt counts the symbols that a line runs through.
func struckAt(x float64, symbols []taken) (n int) {
	const air = 0.8
	for _, s := range symbols {
		if s.from-air < x && x < s.to+air {
			n++
		}
	}
	return n
}

// tileArea is where a part of a plan goes on a page of its own.
func (b *book) tileArea() scene.Rect {
	return (&page{Page: layout.New(b.o.Paper, b.Languages, 0)}).planArea()
}

// tilesAt returns about how many pages an outline takes at a scale.
func (b *book) tilesAt(extent geom.Box, s paper.Scale) int {
	area, k := b.tileArea(), b.o.Paper.Times(s)
	return tilesFor(extent.Width().Millimetres()*k, area.Width()) * tilesFor(extent.Height().Millimetres()*k, area.Height())
}

// tooLarge says what would hold a level that takes so many pages at a scale.
func (b *book) tooLarge(l *plan.Level, scale paper.Scale, pages int, extent geom.Box) error {
	e := &FitError{Level: l.Name, Scale: scale, Paper: b.o.Paper, Pages: pages}
	for _, s := range paper.ScalesOf(scale.System) {
		if s.Times() < scale.Times() && b.tilesAt(extent, s) <= mostTiles {
			e.Scales = append(e.Scales, s)
			break
		}
	}
	for _, paper := range paper.All {
		other := *b
		if other.o.Paper = paper; paper.System == b.o.Paper.System && other.tilesAt(extent, scale) <= mostTiles {
			e.Papers = append(e.Papers, paper)
			break
		}
	}
	return e
}

// tiled puts down the parts of a level, a page each, and returns all that is drawn on
// them, without its items. A part of the drawing with nothing in it has no page.
func (b *book) tiled(l *plan.Level, name string, d drawnLevel) (all []render.Piece) {
	t := d.tiles
	var parts []tileAt
	for _, at := range t.all() {
		if !isBare(d.pieces, t.seam(at)) {
			parts = append(parts, at)
			t.sheets[at] = len(b.pages) + len(parts)
		}
	}
	for i, at := range parts {
		part := b.Say("sheet.part", "part {0} of {1}", i+1, len(parts))
		p := b.newPage(b.Say("sheet.named-part", "{0}, {1}", name, part), 0)
		p.name, p.part = name, part
		all = append(all, drawnLevel{pieces: p.tile(l, d, at)}.withoutItems().pieces...)
	}
	return all
}

// isBare reports whether nothing is drawn in a box.
func isBare(pieces []render.Piece, box scene.Rect) bool {
	for _, p := range pieces {
		if p.Bounds.Expanded(0.01).Overlaps(box) {
			return false
		}
	}
	return true
}

// tile puts down one part: drawn by itself, so that its tags and names stand in it.
func (p *page) tile(l *plan.Level, d drawnLevel, at tileAt) []render.Piece {
	t := d.tiles
	p.north, p.scale, p.key = true, d.scale.Words(p.b.Voice), &keyPlan{l, d.medium, t, at}
	off := t.area.Middle().Sub(t.window(at).Middle())
	window := t.window(at).Moved(off)
	d.medium.At = d.medium.At.Add(off)
	d.medium.Window = window
	lines := p.matchLines(t, at, t.seam(at).Moved(off), window)
	for _, l := range lines {
		d.medium.Ruled = append(d.medium.Ruled, [2]scene.Point{l.a, l.b})
	}
	clip := geom.BoxOf(d.medium.FromScene(window.Min), d.medium.FromScene(window.Max))
	var shown []render.Piece
	for _, piece := range p.b.drawPart(l, d.medium, clip) {
		if piece.Bounds.Expanded(0.01).Overlaps(window) {
			shown = append(shown, piece)
		}
	}
	p.Add(scene.Group{Layer: scene.Layer{Name: l.Name, Clip: &window}, Items: render.Items(shown)})
	d.pieces = shown
	if p.b.over != nil {
		p.b.over(p, d, window)
	}
	for _, l := range lines {
		p.matchLine(l)
	}
	p.tape(d, window)
	p.under(d)
	return shown
}

// matchLine is where a part is joined to the neighbour on another sheet.
type matchLine struct {
	a, b  scene.Point
	out   scene.Point // toward the neighbour
	angle float64     // at which it is read
	sheet int
}

// matchLines lists those of a part.
func (p *page) matchLines(t *tiling, at tileAt, seam, window scene.Rect) (lines []matchLine) {
	for _, l := range []matchLine{
		{scene.Point{X: seam.Min.X, Y: window.Max.Y}, scene.Point{X: seam.Min.X, Y: window.Min.Y}, scene.Point{X: -1}, -90, 0},
		{scene.Point{X: seam.Max.X, Y: window.Min.Y}, scene.Point{X: seam.Max.X, Y: window.Max.Y}, scene.Point{X: 1}, 90, 0},
		{scene.Point{X: window.Min.X, Y: seam.Min.Y}, scene.Point{X: window.Max.X, Y: seam.Min.Y}, scene.Point{Y: -1}, 0, 0},
		{scene.Point{X: window.Min.X, Y: seam.Max.Y}, scene.Point{X: window.Max.X, Y: seam.Max.Y}, scene.Point{Y: 1}, 0, 0},
	} {
		l.sheet = t.sheets[tileAt{at.column + int(l.out.X), at.row + int(l.out.Y)}]
		if l.sheet > 0 {
			lines = append(lines, l)
		}
	}
	return lines
}

// matchLine draws the line, the end of what is shown beyond it, and where it goes on.
func (p *page) matchLine(l matchLine) {
	heavy := layout.Pen(1.4)
	heavy.Dash = []float64{7, 1.6, 1.6, 1.6}
	end := layout.Pen(layout.Hairline)
	end.Color, end.Dash = layout.Theme.Muted, []float64{1.2, 1.2}
	off := l.out.Mul(overlap)
	p.Add(
		scene.Stroke{Path: scene.LinePath(l.a, l.b), Pen: heavy},
		scene.Stroke{Path: scene.LinePath(l.a.Add(off), l.b.Add(off)), Pen: end})
	middle := l.a.Add(l.b).Mul(0.5).Add(l.out.Mul(overlap + matchText/2))
	run := layout.Style{Size: layout.Body, Bold: true}.Centered().At(middle.X, middle.Y, p.b.Say("match.line", "Match line · see sheet {0}", l.sheet))
	run.Angle, run.VAlign = l.angle, scene.Middle
	p.Add(run)
}
