// Package layout is the paper that printed sheets are laid out on: pages with a title block's
// room, columns that go on from page to page, tables in them, and the type all is set in. It
// knows no plan.
package layout

import (
	"studbay/render/paper"
	"studbay/render/scene"
)

// The measures of a page, in millimetres of paper.
const (
	margin = 0.4 * 25.4 // what every office printer can leave white (common practice)
	Gutter = 5.0        // between a rule and what stands beside it
)

// The heights of a title block: of its row of fields, and of the row over them that titles and
// caution have on upright paper, which is too narrow for both beside each other.
const (
	fieldsTall = 25.0
	TitlesTall = 23.0
)

func titleTall(p paper.Paper) float64 {
	if p.IsUpright() {
		return TitlesTall + fieldsTall
	}
	return fieldsTall
}

// Page is one page in the making: a frame with the title block at its foot, what it is for
// above that, and columns beside.
type Page struct {
	Languages
	Scene   *scene.Scene
	Paper   paper.Paper
	IsDraft bool // only to see how much room things take: it keeps nothing

	Taken float64 // how far down it is taken before a flow begins on it; 0: as the page does

	Frame scene.Rect // all within the border
	Main  scene.Rect // free, left of the side column and above the title block
	Side  scene.Rect // free columns at the right; empty where there are none
}

// SideColumn is how wide a column beside a drawing is: enough for the schedule.
const SideColumn = 142.0

// New begins a page on a paper with so many columns at the side.
func New(p paper.Paper, l Languages, columns int) *Page {
	f := FrameOf(p)
	page := &Page{Languages: l, Paper: p, Scene: &scene.Scene{Width: p.Width, Height: p.Height, Enlarged: p.Enlarged()}, Frame: f, Main: f}
	page.Main.Max.Y -= titleTall(p)
	if columns > 0 {
		page.Main.Max.X -= (SideColumn+ColumnGap)*float64(columns) - ColumnGap + 2*Gutter
		page.Side = scene.Rect{Min: scene.Point{X: page.Main.Max.X, Y: f.Min.Y}, Max: f.Max}
	}
	return page
}

// FrameOf returns what is within the border of a page on a paper, in millimetres as it is laid
// out.
func FrameOf(p paper.Paper) scene.Rect {
	wide, tall := p.Laid()
	return scene.Rect{Max: scene.Point{X: wide, Y: tall}}.Expanded(-margin / p.Enlarged())
}

// Draft returns a page alike that keeps nothing.
func (p *Page) Draft() *Page {
	q := *p
	q.IsDraft = true
	return &q
}

// Add puts items on the page; a page that is only to be counted keeps none.
func (p *Page) Add(items ...scene.Item) {
	if !p.IsDraft {
		p.Scene.Add(items...)
	}
}

// Rule draws the border and what divides the page.
func (p *Page) Rule() {
	p.Add(HLine(p.Frame.Min.X, p.Main.Max.X, p.Main.Max.Y, Pen(Divider)))
	if !p.Side.IsEmpty() {
		p.Add(VLine(p.Main.Max.X, p.Frame.Min.Y, p.Frame.Max.Y, Pen(Divider)))
	}
	p.Add(scene.Stroke{Path: p.Frame.Path(), Pen: Pen(Border)})
}
