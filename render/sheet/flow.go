package sheet

import (
	"studbay/render/layout"
	"studbay/render/paper"
)

// flow is a stream of columns over pages of a set.
type flow struct {
	*layout.Flow
	page  *page // the one in hand
	shelf shelf
	most  paper.Scale // the largest that rooms are unfolded at
}

// goesOn says what begins each further page.
func (f *flow) goesOn(onward func() *page) *flow {
	f.Onward = func() *layout.Page {
		f.page = onward()
		return f.page.Page
	}
	return f
}

// begin takes the columns of a page that the flow fills, from the first.
func (f *flow) begin(p *page) {
	f.page = p
	f.Flow.Begin(p.Page)
}

// newFlow begins a flow on a page that it fills, in columns of a least width.
func newFlow(p *page, least float64, onward func() *page) *flow {
	f := (&flow{Flow: &layout.Flow{Least: least}}).goesOn(onward)
	f.begin(p)
	return f
}

// newEvenFlow begins a flow whose columns are even, by what is laid into it.
func newEvenFlow(b *book, least float64, onward func() *page, lay func(*flow)) *flow {
	pages := func(tall float64) int { return b.pagesOf(&flow{Flow: &layout.Flow{Least: least, Tall: tall}}, lay) }
	f := (&flow{Flow: &layout.Flow{Least: least}}).goesOn(onward)
	f.begin(onward())
	f.Even(pages)
	return f
}

// pagesOf counts the pages that something laid into a flow like f would take.
func (b *book) pagesOf(f *flow, lay func(*flow)) int {
	draft := &book{ix: b.ix, plan: b.plan, result: b.result, found: b.found, o: b.o, Languages: b.Languages, isDraft: true}
	f.page = draft.newPage("", 0)
	return f.Count(f.page.Page, func() { lay(f) })
}
