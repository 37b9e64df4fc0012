package card

import (
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/card/found"
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
	head func(bind.Subject[T], T) (title, second string)
	// heading stands at the top in place of head.
	heading bind.Maker[T]
	// made returns what the rows were made for, if it is of account: a thing of another
	// gets another card.
	made  func(T) any
	rows  []bind.Maker[T] // in sight
	more  []bind.Maker[T] // behind a fold
	below []bind.Maker[T] // under the fold
	// several are the rows of several chosen together.
	several []bind.Maker[T]
	found   func(rule.Finding, plan.ID) bool // which findings are of it; nil: none are shown
}

// pageCard is a page of one thing, or of several.
type pageCard[T any] struct {
	bind.Context
	page[T]
	of       bind.Subject[T]
	chosen   []plan.ID
	madeFor  any
	all      []bind.Row
	findings *fyne.Container
	root     *fyne.Container
}

// card makes the card of what is chosen, or nil where it is gone.
func (p page[T]) card(c bind.Context, chosen ...plan.ID) Card {
	if p.get == nil {
		p.get = nounOf[T]
	}
	if p.put == nil {
		p.put = changed[T]
	}
	k := &pageCard[T]{Context: c, page: p, chosen: chosen, findings: look.Column(look.Grid), root: look.Column(look.Grid)}
	k.of = bind.Subject[T]{Context: &k.Context, Get: p.get, Put: p.put, IDs: slices.DeleteFunc(slices.Clone(chosen), func(id plan.ID) bool { return p.get(c.Index, id) == nil })}
	if len(k.of.IDs) == 0 {
		return nil
	}
	k.build()
	k.Show(c)
	return k
}

func (k *pageCard[T]) build() {
	k.madeFor = k.madeOf()
	switch {
	case len(k.chosen) > 1:
		k.all = append(append(k.all, k.twoLines(k.severalHead)), bind.Rows(k.of, k.several...)...)
		k.all = append(k.all, k.eachAlone())
	case k.heading != nil:
		k.all = append(k.all, k.heading(k.of))
	default:
		k.all = append(k.all, k.twoLines(func() (string, string) { return k.head(k.of, k.of.Now()) }))
	}
	below := len(k.all)
	if len(k.chosen) == 1 {
		k.all = append(k.all, bind.Rows(k.of, k.rows...)...)
		below = len(k.all)
		if len(k.more) > 0 {
			k.all = append(k.all, k.Folded(k.Say("card.more", "More"), look.Grid, false, bind.Rows(k.of, k.more...)...))
		}
		k.all = append(k.all, bind.Rows(k.of, k.below...)...)
	}
	for _, r := range k.all[:below] {
		k.root.Add(r.Object)
	}
	k.root.Add(k.findings) // above what is folded: in sight without a turn of the wheel
	for _, r := range k.all[below:] {
		k.root.Add(r.Object)
	}
}

// twoLines is the usual heading.
func (k *pageCard[T]) twoLines(say func() (one, two string)) bind.Row {
	title := look.NewParagraph("", look.Style{Size: look.TagSize, Bold: true}, k.Width)
	second := look.NewParagraph("", look.Second, k.Width)
	return bind.Row{Object: look.Column(look.Grid/2, title, second), Update: func() {
		one, two := say()
		title.SetWords(one)
		second.SetWords(two)
	}}
}

func (k *pageCard[T]) madeOf() any {
	if k.made == nil || len(k.chosen) > 1 {
		return nil
	}
	return k.made(k.of.Now())
}

// Object implements Card.
func (k *pageCard[T]) Object() fyne.CanvasObject { return k.root }

// Show implements Card.
func (k *pageCard[T]) Show(c bind.Context) bool {
	was := k.Width
	k.Context = c
	if !k.of.Has() || was != c.Width || k.madeOf() != k.madeFor {
		return false
	}
	for _, r := range k.all {
		if r.Update != nil {
			r.Update()
		}
	}
	k.findings.Objects = nil
	if k.found != nil && len(k.chosen) == 1 {
		k.findings.Objects = found.Of(&k.Context, func(f rule.Finding) bool { return k.found(f, k.of.ID()) })
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
