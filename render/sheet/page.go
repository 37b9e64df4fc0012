package sheet

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/scene"
)

// The measures of a page, in millimetres of paper.
const (
	margin    = 0.4 * 25.4 // what every office printer can leave white (common practice)
	gutter    = 5.0        // between a rule and what stands beside it
	titleTall = 25.0       // height of the title block
)

// page is one page in the making.
type page struct {
	b       *book
	scene   *scene.Scene
	name    string // what it shows, such as "Ground floor, openings"
	part    string // of a set that goes on: "continued"
	scale   string // in words, or empty
	north   bool   // an arrow is wanted
	isCover bool
	key     *keyPlan

	changes []revision.Change // listed in the title block, on a page of revisions

	untagged []plan.ID // openings whose tags found no room in the plan on it

	frame scene.Rect // all within the border
	main  scene.Rect // free, left of the side column and above the title block
	side  scene.Rect // free columns at the right; empty where there are none
}

// sideColumn is how wide a column beside the plan is: enough for the schedule.
const sideColumn = 142.0

// sideColumns is how many columns may stand beside the plan: none on a small sheet, which
// the plan needs for itself, and two on a large one.
func sideColumns(p paper.Paper) int {
	switch {
	case p.Width < 15*unit.Inch:
		return 0
	case p.Width < 32*unit.Inch:
		return 1
	}
	return 2
}

// inHand is how many pages back what is put down still goes onto one now and then.
const inHand = 4

// newPage begins a page with so many columns at the side.
func (b *book) newPage(name string, columns int) *page {
	p := &page{b: b, name: name, scene: &scene.Scene{Width: b.o.Paper.Width, Height: b.o.Paper.Height}}
	p.scene.Meta.Title = name
	p.frame = b.frame()
	p.main = p.frame
	p.main.Max.Y -= titleTall
	if columns > 0 {
		p.main.Max.X -= (sideColumn+columnGap)*float64(columns) - columnGap + 2*gutter
		p.side = scene.Rect{Min: scene.Point{X: p.main.Max.X, Y: p.frame.Min.Y}, Max: p.frame.Max}
	}
	b.pages = append(b.pages, p)
	if was := len(b.pages) - 1 - inHand; b.o.Packed && was >= 0 {
		b.pages[was].scene.Pack()
	}
	return p
}

func (b *book) frame() scene.Rect {
	return scene.Rect{Max: scene.Point{X: scene.MM(b.o.Paper.Width), Y: scene.MM(b.o.Paper.Height)}}.Expanded(-margin)
}

// add puts items on the page; a page that is only to be counted keeps none.
func (p *page) add(items ...scene.Item) {
	if !p.b.isDraft {
		p.scene.Add(items...)
	}
}

// number is which sheet of the set a page is.
func (b *book) number(p *page) int {
	for i, q := range b.pages {
		if p == q {
			return i + 1
		}
	}
	return 0
}

// finish draws what every page has, once it is known how many there are.
func (p *page) finish(number, of int) {
	p.titleBlock(number, of)
	p.add(hline(p.frame.Min.X, p.main.Max.X, p.main.Max.Y, pen(divider)))
	if !p.side.IsEmpty() {
		p.add(vline(p.main.Max.X, p.frame.Min.Y, p.frame.Max.Y, pen(divider)))
	}
	p.add(scene.Stroke{Path: p.frame.Path(), Pen: pen(border)})
}
