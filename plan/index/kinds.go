package index

import (
	"studbay/plan"
	"studbay/plan/geom"
)

// kinds has one row a kind of thing that is looked up by where it is, by what it hangs on
// or by what it serves. What has none is seen by nothing that is asked of an index.
var kinds = []kind{
	row[*plan.Room]{
		letter: plan.KindRoom, find: plan.Plan.Room, box: boxOfRoom,
		without: (*updating).withoutRoom, with: (*updating).withRoom, touch: touching.room,
	},
	row[*plan.Fixture]{
		letter: plan.KindFixture, find: plan.Plan.Fixture, box: boxOfFixture,
		without: (*updating).withoutFixture, with: (*updating).withFixture, touch: touching.fixture,
	},
	row[*plan.Break]{
		letter: plan.KindBreak, find: plan.Plan.Break, box: boxOfBreak,
		without: (*updating).withoutBreak, with: (*updating).withBreak, touch: touching.brk,
	},
	row[*plan.Opening]{
		letter: plan.KindOpening, find: plan.Plan.Opening, box: boxOfOpening,
		without: (*updating).withoutOpening, with: (*updating).withOpening, slid: (*updating).slidOpening,
		touch: touching.opening,
	},
	row[*plan.Cable]{
		letter: plan.KindCable, without: (*updating).withoutCable, with: (*updating).withCable, touch: touching.cable,
	},
	row[*plan.Control]{
		letter: plan.KindControl, without: (*updating).withoutControl, with: (*updating).withControl, touch: touching.control,
	},
	row[*plan.Pair]{
		letter: plan.KindPair, without: (*updating).withoutPair, with: (*updating).withPair, touch: touching.pair,
	},
	row[*plan.Circuit]{letter: plan.KindCircuit, touch: touching.circuit},
}

// row is what the index knows of one kind of thing. Any column but the letter may be left
// out; find and box go together.
type row[T plan.Noun] struct {
	letter byte
	// without and with take one out of the look-ups by ID, and put one in that is on a level.
	without func(*updating, T)
	with    func(*updating, plan.ID, T)
	// slid brings one that changed in at one go, or reports that it must be taken out and
	// put in.
	slid func(u *updating, was, now T) bool
	// find returns one of the plan with its level, and box the box that it is found by.
	find func(plan.Plan, plan.ID) (T, *plan.Level)
	box  func(*Index, T) (geom.Box, bool)
	// touch marks whose views one that came, went or changed is seen in.
	touch func(touching, T)
}

// kind is a row whose type of noun is not known.
type kind interface {
	isOf(plan.ID) bool
	update(*updating, plan.Changes)
	boxOf(*Index, plan.ID) (geom.Box, plan.ID, bool)
	touched(touching, plan.Changes)
}

func (r row[T]) isOf(id plan.ID) bool { return id.Kind() == r.letter }

// update brings the look-ups up to the changes of the kind. All that left is taken out
// before anything is put in: the same noun may leave one level and join another.
func (r row[T]) update(u *updating, c plan.Changes) {
	if r.with == nil {
		return
	}
	var none T
	var rest []plan.OnLevel[T]
	for _, x := range plan.Changed[T](c) {
		if r.slid == nil || x.Old == none || x.New == none || !r.slid(u, x.Old, x.New) {
			rest = append(rest, x)
		}
	}
	for _, x := range rest {
		if x.Old != none {
			r.without(u, x.Old)
		}
	}
	for _, x := range rest {
		if x.New != none {
			r.with(u, x.Level, x.New)
		}
	}
}

func (r row[T]) boxOf(ix *Index, id plan.ID) (geom.Box, plan.ID, bool) {
	var none T
	if r.find == nil {
		return geom.Box{}, "", false
	}
	noun, l := r.find(ix.plan, id)
	if noun == none {
		return geom.Box{}, "", false
	}
	box, ok := r.box(ix, noun)
	return box, l.ID, ok
}

func (r row[T]) touched(t touching, c plan.Changes) {
	var none T
	for _, x := range plan.Changed[T](c) {
		for _, noun := range []T{x.Old, x.New} {
			if noun != none {
				r.touch(t, noun)
			}
		}
	}
}
