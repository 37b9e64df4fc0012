package index_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// TestAnIndexThatFollowedAnswersAsAFreshOne to every question there is: after any edits,
// and beside the plan that the edits began with, whose index still answers as it did.
func TestAnIndexThatFollowedAnswersAsAFreshOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.House(rapid.Uint64Range(1, 9).Draw(t, "house"), 30)
		first, began := p, index.New(p)
		before := answers(began, first)
		ix := began
		for range rapid.IntRange(1, 12).Draw(t, "edits") {
			if next, err := plantest.Edit(t, p).Apply(p); err == nil {
				p = next
				ix = ix.Updated(p)
			}
		}
		if a, b := answers(ix, p), answers(index.New(p), p); !slices.Equal(a, b) {
			t.Fatalf("followed answers %v, a fresh one %v", a, b)
		}
		if !slices.Equal(answers(began, first), before) {
			t.Fatal("the index of the plan before answers otherwise than it did")
		}
	})
}

// answers asks an index all about the nouns of a plan, by pointers and values.
func answers(ix *index.Index, p plan.Plan) (all []any) {
	ends := map[plan.ID]bool{"": true, "ozzzzzzzz": true}
	on := func(id plan.ID) {
		ends[id] = true
		all = append(all, id, ix.Has(id), ix.RoomOf(id))
		box, ok := ix.BoxOf(id)
		all = append(all, box, ok)
	}
	for _, l := range p.Levels {
		extent, ok := ix.Extent(l.ID)
		all = append(all, extent, ok)
		for r := range l.Rooms.All() {
			on(r.ID)
			for _, s := range r.Sides {
				on(s.ID)
				ref, ok := ix.Side(s.ID)
				all = append(all, ok, ref.Room, ref.At, ref.Level)
				for _, b := range ix.Behind(s.ID) {
					all = append(all, b)
				}
				for _, c := range ix.Cuts(s.ID) {
					all = append(all, c)
				}
			}
		}
		for b := range l.Breaks.All() {
			on(b.ID)
		}
		for f := range l.Fixtures.All() {
			on(f.ID)
		}
		for o := range l.Openings.All() {
			on(o.ID)
			place, ok := ix.Place(o.At)
			all = append(all, ok, place.Foot, place.Room)
		}
		corner := geom.Point{X: 5 * unit.Foot, Y: 5 * unit.Foot}
		for _, id := range ix.Search(l.ID, geom.Box{Min: geom.Point{}, Max: corner}) {
			all = append(all, id)
		}
	}
	for j := range ix.Joined().All() {
		all = append(all, *j)
	}
	for c := range p.Circuits.All() {
		for o := range ix.OnCircuit(c.ID) {
			all = append(all, c.ID, o)
		}
	}
	for id := range ix.OnCircuit("kzzzzzzzz") {
		all = append(all, id)
	}
	for _, end := range slices.Sorted(keys(ends)) {
		all = append(all, len(ix.CablesAt(end)), len(ix.BreaksOn(end)), len(ix.FixturesOn(end)), len(ix.OpeningsOn(end)))
		for _, c := range ix.CablesAt(end) {
			all = append(all, c)
		}
		for _, b := range ix.BreaksOn(end) {
			all = append(all, b)
		}
		for _, f := range ix.FixturesOn(end) {
			all = append(all, f)
		}
		for _, o := range ix.OpeningsOn(end) {
			all = append(all, o)
		}
	}
	return all
}

func keys(m map[plan.ID]bool) func(func(plan.ID) bool) {
	return func(yield func(plan.ID) bool) {
		for k := range m {
			if !yield(k) {
				return
			}
		}
	}
}
