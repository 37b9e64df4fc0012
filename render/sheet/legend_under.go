package sheet

import (
	"studbay/plan"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/scene"
)

// The measures of a legend under a plan: the least width of its columns, its least height and
// what it grows by, in millimetres of paper, and how much of the page it may take at most.
const (
	underColumn = 84.0
	underLeast  = 24.0
	underStep   = 4.0
	underMost   = 0.45
)

// legendUnder puts down a level with its legend under it, smaller where it has to be, on paper
// that has no columns at the side. Pieces are those of the level as it fills the page. It reports
// false, and puts nothing down, where the level with its tags would not fit any more.
func (b *book) legendUnder(p *page, l *plan.Level, pieces []render.Piece) bool {
	whole := p.Main
	defer func() { p.Main = whole }()
	tall := b.legendTall(p, pieces)
	if tall == 0 {
		return false
	}
	p.Main.Max.Y -= tall
	d, err := b.drawLevel(l, p.planArea())
	if err != nil || d.tiles != nil || len(d.pieces) == 0 {
		return false
	}
	strip := scene.Rect{Min: scene.Point{X: whole.Min.X, Y: p.Main.Max.Y}, Max: whole.Max}
	if !b.legendFits(p, strip, d.pieces) {
		return false
	}
	p.plan(l, d)
	p.Add(layout.HLine(strip.Min.X, strip.Max.X, strip.Min.Y, layout.Pen(layout.Hairline)))
	legendIn(p, strip).legend(legendOf(d.pieces, b.ix), d.pieces)
	return true
}

// legendTall is how high the legend of pieces is under a plan, or 0 where it takes too much.
func (b *book) legendTall(p *page, pieces []render.Piece) float64 {
	for tall := underLeast; tall <= underMost*p.Main.Height(); tall += underStep {
		strip := p.Main
		strip.Min.Y = strip.Max.Y - tall
		if b.legendFits(p, strip, pieces) {
			return tall
		}
	}
	return 0
}

// legendFits reports whether a strip of a page holds the legend of pieces.
func (b *book) legendFits(p *page, strip scene.Rect, pieces []render.Piece) bool {
	draft := *p
	draft.Page = p.Draft()
	fits := true
	f := legendIn(&draft, strip).goesOn(func() *page {
		fits = false
		return &draft
	})
	f.legend(legendOf(pieces, b.ix), pieces)
	return fits
}

// legendIn begins a flow in the columns of a strip.
func legendIn(p *page, strip scene.Rect) *flow {
	columns := layout.ColumnsOf(strip.Expanded(-layout.Gutter), underColumn)
	return &flow{Flow: &layout.Flow{On: p.Page, Columns: columns, Y: columns[0].Min.Y, Least: underColumn}, page: p}
}
