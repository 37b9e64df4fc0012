package takeoff

import (
	"slices"

	"studbay/fill/nest"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/unit"
)

// Buy is a line of the shopping list: what is needed, what goes on top, and the packs that
// hold both.
type Buy struct {
	Sum
	Spare price.Quantity
	Packs int64 // 0 where the book has no price, and so no pack
	Pay   unit.Money
}

// spareOf is which part of what is needed is bought on top, at least one: a tenth of all but
// devices, which are bought exactly, and boards (common practice; fraction by
// finehomebuilding.com, Materials for Rough-In).
const spareOf = 10

// lumber is the part that blocks are cut from.
const lumber = "block-2x4"

// Shopping lists what to buy in packs. Lumber is bought by the boards that the cut list
// takes.
func (w *Takeoff) Shopping() (all []Buy) {
	for _, s := range Parts(w.Openings) {
		b := Buy{Sum: s, Spare: spare(*s.Part, s.Quantity)}
		if s.HasPrice() {
			if b.Packs = s.Price.Packs(s.Quantity + b.Spare); s.Part.ID == lumber {
				b.Packs = int64(len(w.CutList().Boards))
			}
			b.Pay = unit.Money{Cents: s.Price.Pack.Cents * b.Packs, Currency: s.Price.Pack.Currency}
		}
		all = append(all, b)
	}
	return all
}

// spare returns what is bought on top, in whole pieces.
func spare(p price.Part, need price.Quantity) price.Quantity {
	isPlate := part.All().Add(p.ID) != nil
	if p.ID == lumber || p.Group == price.Devices && !isPlate {
		return 0
	}
	return price.Of(int((need + spareOf*price.One - 1) / (spareOf * price.One)))
}

// Pay sums a shopping list.
func Pay(all []Buy, zero unit.Money) unit.Money {
	for _, b := range all {
		zero.Cents += b.Pay.Cents
	}
	return zero
}

// CutList cuts the blocks of all openings from boards as long as the price book sells them,
// from usual studs where it has no price of them.
func (w *Takeoff) CutList() nest.List {
	var pieces []nest.Piece
	for _, o := range w.Openings {
		for _, l := range o.Blocks {
			pieces = append(pieces, nest.Piece{Length: l, For: o.View.Opening.Tag})
		}
	}
	return nest.Cut(w.stock(), pieces)
}

// stock is the boards that blocks are cut from: a pack of lumber is one board.
func (w *Takeoff) stock() nest.Stock {
	s := nest.Usual
	if p, ok := w.Book.Of(lumber); ok {
		s.Board = p.Per.Length(unit.Inch)
	}
	return s
}

// Feeds lists what hangs on each circuit, by its number.
type Feeds struct {
	Circuit  *plan.Circuit
	Openings int
	Wire     unit.AWG // the thinnest drawn on it; 0: none is drawn
}

// Panel lists the circuits of a plan by their numbers, with what hangs on each.
func Panel(p plan.Plan) (all []Feeds) {
	at := map[plan.ID]int{}
	for c := range p.Circuits.All() {
		all = append(all, Feeds{Circuit: c})
	}
	slices.SortStableFunc(all, func(a, b Feeds) int { return byNumber(a.Circuit, b.Circuit) })
	for i, f := range all {
		at[f.Circuit.ID] = i
	}
	for _, o := range p.Openings() {
		if i, ok := at[o.Circuit]; ok && !o.IsGone() {
			all[i].Openings++
		}
	}
	for c := range p.Cables.All() {
		if i, ok := at[c.Circuit]; ok && (all[i].Wire == 0 || all[i].Wire.Larger(c.Size)) {
			all[i].Wire = c.Size
		}
	}
	return all
}
