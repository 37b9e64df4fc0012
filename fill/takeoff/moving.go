package takeoff

import (
	"sync"

	"studbay/assets"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/plan/unit"
)

// movedRun is the cable that a box moved later takes: common practice.
const movedRun = 10 * unit.Foot

// moving are the steps of the table of what a box takes that is moved once the wall is closed.
var moving = sync.OnceValue(func() []price.Step {
	all, err := price.ReadSteps(assets.Tables, "catalogue/moving.csv")
	if err != nil {
		panic(err) // our own table, and tested
	}
	return all
})

// Moved is what it takes to move the box of an opening later, once its wall is closed: the
// patch, the box again where it is cut out, another run of its cable, and minutes. It reports
// false for what has no box of its own, or costs nothing since it is not built.
func (t *Taker) Moved(o Opening) (moved Opening, ok bool) {
	b, ok, _ := part.Resolve(o.View.Opening.Assembly)
	if !ok || o.View.Opening.IsGone() || o.View.Opening.HasOldBox() {
		return Opening{}, false
	}
	moved.View = o.View
	if b.Box.Material == part.Plastic {
		t.add(&moved, price.Must(b.Box.ID), price.One)
	}
	for _, s := range moving() {
		if !s.Fits(b.Assembly) {
			continue
		}
		if s.Part != "" {
			t.add(&moved, price.Must(s.Part), price.Of(s.Count))
		}
		moved.Minutes += s.Minutes
	}
	size := unit.AWG(12)
	for _, c := range o.View.Cables {
		size = c.Size
	}
	t.add(&moved, price.OfCable(size, 2, true), price.OfLength(movedRun, unit.Foot))
	return moved, true
}

// Moving sums what moving each of the boxes later would take, and counts them.
func (w *Takeoff) Moving() (cost unit.Money, minutes, boxes int) {
	cost = w.Book.Zero()
	for _, m := range w.moved {
		cost.Cents += m.Cost().Cents
		minutes += m.Minutes
	}
	return cost, minutes, len(w.moved)
}
