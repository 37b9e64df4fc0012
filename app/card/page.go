package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// page is the card of a kind of thing as data: how such a thing is read and changed, and
// the rows that show it.
type page[T any] struct {
	get func(*index.Index, plan.ID) *T // left out: the noun that has the ID
	put func(T) edit.Edit              // left out: the noun is changed as a whole
	// head says the two lines at the top.
	head func(subject[T], T) (title, second string)
	// heading stands at the top in place of head.
	heading rowOf[T]
	// made returns what the rows were made for, if it is of account: a thing of another
	// gets another card.
	made  func(T) any
	rows  []rowOf[T]                       // in sight
	more  []rowOf[T]                       // behind a fold
	below []rowOf[T]                       // under the fold
	found func(rule.Finding, plan.ID) bool // which findings are of it; nil: none are shown
}

// pageCard is a page of one thing.
type pageCard[T any] struct {
	Context
	page[T]
	of       subject[T]
	madeFor  any
	all      []row
	findings *fyne.Container
	root     *fyne.Container
}

// card makes the card of a thing, or nil where it is gone.
func (p page[T]) card(c Context, id plan.ID) Card {
	if p.get == nil {
		p.get = nounOf[T]
	}
	if p.put == nil {
		p.put = changed[T]
	}
	k := &pageCard[T]{Context: c, page: p}
	k.of = subject[T]{Context: &k.Context, id: id, get: p.get, put: p.put}
	if p.get(c.Index, id) == nil {
		return nil
	}
	k.build()
	k.Show(c)
	return k
}

func (k *pageCard[T]) build() {
	k.madeFor = k.madeOf()
	if k.heading == nil {
		k.heading = k.twoLines
	}
	k.all = append(k.all, k.heading(k.of))
	k.take(k.rows)
	if len(k.more) > 0 {
		k.all = append(k.all, k.folded(k.say("card.more", "More"), look.Grid, false, rowsOf(k.of, k.more)...))
	}
	k.take(k.below)
	k.root = look.Column(look.Grid)
	for _, r := range k.all {
		k.root.Add(r.object)
	}
	k.findings = look.Column(look.Grid)
	k.root.Add(k.findings)
}

func (k *pageCard[T]) take(makers []rowOf[T]) { k.all = append(k.all, rowsOf(k.of, makers)...) }

// rowsOf makes the rows that a thing has.
func rowsOf[T any](s subject[T], makers []rowOf[T]) (rows []row) {
	for _, make := range makers {
		if r := make(s); r.object != nil {
			rows = append(rows, r)
		}
	}
	return rows
}

// twoLines is the usual heading.
func (k *pageCard[T]) twoLines(s subject[T]) row {
	title := look.NewParagraph("", look.Style{Size: look.TagSize, Bold: true}, k.Width)
	second := look.NewParagraph("", look.Second, k.Width)
	return row{look.Column(look.Grid/2, title, second), func() {
		one, two := k.head(s, s.now())
		title.SetWords(one)
		second.SetWords(two)
	}}
}

func (k *pageCard[T]) madeOf() any {
	if k.made == nil {
		return nil
	}
	return k.made(k.of.now())
}

// Object implements Card.
func (k *pageCard[T]) Object() fyne.CanvasObject { return k.root }

// Show implements Card.
func (k *pageCard[T]) Show(c Context) bool {
	was := k.Width
	k.Context = c
	if k.get(c.Index, k.of.id) == nil || was != c.Width || k.madeOf() != k.madeFor {
		return false
	}
	for _, r := range k.all {
		r.refresh()
	}
	k.findings.Objects = nil
	if k.found != nil {
		k.findings.Objects = k.findingsOf(func(f rule.Finding) bool { return k.found(f, k.of.id) })
	}
	k.root.Refresh()
	return true
}

// nounOf returns the noun that has an ID, or nil where it is gone.
func nounOf[T any](ix *index.Index, id plan.ID) *T {
	found, _ := ix.Plan().Find(id)
	x, _ := any(found).(*T)
	return x
}

// changed is the edit that sets all of a noun.
func changed[T any](x T) edit.Edit {
	thing, _ := any(&x).(plan.Thing)
	return edit.Change{Thing: thing}
}
