package sheet

import (
	"studbay/plan"
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
	const small, large = 15 * 25.4, 22 * 25.4
	switch wide, _ := p.Laid(); {
	case wide < small:
		return 0
	case wide < large:
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

// pagesNamed returns what begins each page of a kind in turn: the first under what the page
// before it has, where that leaves room enough and is read by the same.
func (b *book) pagesNamed(name string) func() *page {
	begun, under := 0, (*follower)(nil)
	return func() *page {
		begun++
		if begun == 1 {
			if under = b.follow(name); under != nil {
				return under.p
			}
		}
		if under != nil && !under.close() {
			begun = 1 // nothing of it had room there
		}
		under = nil
		p := b.newPage(name, 0)
		if begun > 1 {
			p.part = b.Say("sheet.continued", "continued")
			p.Scene.Meta.Title = b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
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
