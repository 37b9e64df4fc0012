package index

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
)

// CircuitView is a circuit with all that is on it and the cables between.
type CircuitView struct {
	Circuit  *plan.Circuit
	Openings []CircuitOpening // in the order of IDs
	Cables   []*plan.Cable    // that end in those openings, in the order of IDs
}

// CircuitOpening is an opening on a circuit and the room it is in, nil where that is gone.
type CircuitOpening struct {
	Opening *plan.Opening
	Room    *plan.Room
}

// circuitsOf returns the circuits that the openings of a room are on, in the order of IDs.
func (ix *Index) circuitsOf(v RoomView) (all []CircuitView) {
	var ids []plan.ID
	v.EachOpening(func(o *plan.Opening, _ geom.Point) {
		if o.Circuit != "" {
			ids = append(ids, o.Circuit)
		}
	})
	slices.Sort(ids)
	for _, id := range slices.Compact(ids) {
		c, ok := ix.plan.Circuits.Get(id)
		if !ok {
			continue
		}
		view := CircuitView{Circuit: c}
		for o := range ix.OnCircuit(id) {
			place, _ := ix.Place(o.At)
			view.Openings = append(view.Openings, CircuitOpening{o, place.Room})
			view.Cables = append(view.Cables, ix.CablesAt(o.ID)...)
		}
		slices.SortFunc(view.Cables, func(a, b *plan.Cable) int { return cmp.Compare(a.ID, b.ID) })
		view.Cables = slices.Compact(view.Cables)
		all = append(all, view)
	}
	return all
}

func (v CircuitView) appendTo(parts []any) []any {
	parts = append(parts, v.Circuit)
	for _, o := range v.Openings {
		parts = append(parts, o.Opening, o.Room)
	}
	for _, c := range v.Cables {
		parts = append(parts, c)
	}
	return parts
}

// alongCircuits marks the rooms that see an opening because something in them is on its
// circuit.
func (t touching) alongCircuits() {
	circuits := map[plan.ID]bool{}
	for id := range t.openings {
		for _, ix := range []*Index{t.old, t.now} {
			if o, _ := ix.plan.Opening(id); o != nil && o.Circuit != "" {
				circuits[o.Circuit] = true
			}
		}
	}
	for id := range circuits {
		for _, ix := range []*Index{t.old, t.now} {
			for o := range ix.OnCircuit(id) {
				if place, ok := ix.Place(o.At); ok && place.Room != nil {
					t.rooms[place.Room.ID] = true
				}
			}
		}
	}
}
