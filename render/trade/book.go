// Package trade lays out the pages of a set that show no plan: how boxes are held and what
// is cut for them, drywall with its cut-outs, templates and heights at full size, what to
// buy, the walls face by face, and the list for a visit.
package trade

import (
	"studbay/fill"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/table"
)

// Book is what pages are laid out of, and how they begin.
type Book struct {
	layout.Languages
	Paper  paper.Paper
	Index  *index.Index
	Plan   plan.Plan
	Result fill.Result
	Prices *price.Book // nil is the trial prices
	// Pages returns what begins each page of a kind in turn.
	Pages func(name string) func() *layout.Page
	// Schedule returns the table with a row of each opening.
	Schedule func() table.Table

	// Once wanted: what is taken of parts, the row of the schedule, the place on a wall and the
	// gangs of each opening.
	taken    *takeoff.Takeoff
	rowOf    map[plan.ID]table.Row
	facesIn  plan.ID // the room that faceOf is of
	faceOf   map[plan.ID]onFace
	switches map[plan.ID]wire.SwitchBox
}

// Forget lets go of what is told of each opening, once no page asks for it any more.
func (b *Book) Forget() {
	b.Schedule, b.rowOf, b.faceOf = nil, nil, nil
}

// flow is columns over pages of a book.
type flow struct {
	*layout.Flow
	b *Book
}

// flow begins a flow on a page of its own, in columns of a least width.
func (b *Book) flow(name string, least float64) *flow {
	f := &flow{&layout.Flow{Least: least, Onward: b.Pages(name)}, b}
	f.Begin(f.Onward())
	return f
}
