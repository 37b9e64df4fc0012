package sheet

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/revision"
)

// page is one page in the making.
type page struct {
	*layout.Page
	b       *book
	name    string // what it shows, such as "Ground floor, openings"
	part    string // of a set that goes on: "continued"
	scale   string // in words, or empty
	north   bool   // an arrow is wanted
	isCover bool
	key     *keyPlan

	changes []revision.Change // listed in the title block, on a page of revisions

	untagged []plan.ID // openings whose tags found no room in the plan on it
}

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
	p := &page{Page: layout.New(b.o.Paper, b.Languages, columns), b: b, name: name}
	p.IsDraft = b.isDraft
	p.Scene.Meta.Title = name
	b.pages = append(b.pages, p)
	if was := len(b.pages) - 1 - inHand; b.o.Packed && was >= 0 {
		b.pages[was].Scene.Pack(b.store)
	}
	return p
}

// pagesNamed returns what begins each page of a kind in turn.
func (b *book) pagesNamed(name string) func() *page {
	first := true
	return func() *page {
		p := b.newPage(name, 0)
		if !first {
			p.part = b.Say("sheet.continued", "continued")
			p.Scene.Meta.Title = b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		first = false
		return p
	}
}

// plainPages is pagesNamed for who has nothing but the paper of a page to do with.
func (b *book) plainPages(name string) func() *layout.Page {
	onward := b.pagesNamed(name)
	return func() *layout.Page { return onward().Page }
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
	p.Rule()
}
