package index

import (
	"maps"
	"slices"

	"studbay/plan"
)

// Touched returns the openings and rooms whose views differ between two plans, or
// may: those that changed, what hangs on them, and their neighbours across a
// partition, both before and after. The indexes are of the two plans.
func Touched(old, now *Index) (rooms, openings []plan.ID) {
	c := plan.Diff(old.plan, now.plan)
	t := touching{old, now, map[plan.ID]bool{}, map[plan.ID]bool{}}
	for _, r := range plan.Changed[*plan.Room](c) {
		for _, room := range []*plan.Room{r.Old, r.New} {
			t.room(room)
		}
	}
	for _, b := range plan.Changed[*plan.Break](c) {
		for _, noun := range []*plan.Break{b.Old, b.New} {
			if noun != nil {
				t.side(noun.At.Host)
			}
		}
	}
	for _, f := range plan.Changed[*plan.Fixture](c) {
		for _, noun := range []*plan.Fixture{f.Old, f.New} {
			if noun != nil {
				t.fixture(noun)
			}
		}
	}
	for _, o := range plan.Changed[*plan.Opening](c) {
		for _, noun := range []*plan.Opening{o.Old, o.New} {
			if noun != nil {
				t.openings[noun.ID] = true
				t.host(noun.At)
				if noun.At.Part == plan.PartFace {
					t.side(noun.At.Host) // the face behind sees it too
				}
			}
		}
	}
	t.wiring(c)
	return slices.Sorted(maps.Keys(t.rooms)), slices.Sorted(maps.Keys(t.openings))
}

// touching gathers scopes from the index before and the one after.
type touching struct {
	old, now        *Index
	rooms, openings map[plan.ID]bool
}

func (t touching) room(r *plan.Room) {
	if r == nil {
		return
	}
	t.rooms[r.ID] = true
	t.on(r.ID)
	for _, s := range r.Sides {
		t.side(s.ID)
		t.on(s.ID)
	}
}

// side marks the side's room and those it may stand behind, before and after.
func (t touching) side(id plan.ID) {
	for _, ix := range []*Index{t.old, t.now} {
		if ref, ok := ix.Side(id); ok {
			t.rooms[ref.Room.ID] = true
			ix.backedBy(ref, func(r *plan.Room) { t.rooms[r.ID] = true })
		}
	}
}

// on marks the openings that hang on a host, also by way of fixtures.
func (t touching) on(host plan.ID) {
	for _, ix := range []*Index{t.old, t.now} {
		for _, o := range ix.OpeningsOn(host) {
			t.openings[o.ID] = true
		}
		for _, f := range ix.FixturesOn(host) {
			t.on(f.ID)
		}
	}
}

func (t touching) fixture(f *plan.Fixture) {
	t.host(f.At)
	t.on(f.ID)
}

// host marks the room that an anchor is in.
func (t touching) host(a plan.Anchor) {
	for _, ix := range []*Index{t.old, t.now} {
		if place, ok := ix.Place(a); ok && place.Room != nil {
			t.rooms[place.Room.ID] = true
		}
	}
}

// wiring marks the openings that changed cables and circuits belong to.
func (t touching) wiring(c plan.Changes) {
	for _, cable := range plan.Changed[*plan.Cable](c) {
		for _, noun := range []*plan.Cable{cable.Old, cable.New} {
			if noun != nil {
				t.end(noun.From)
				t.end(noun.To)
			}
		}
	}
	for _, k := range plan.Changed[*plan.Circuit](c) {
		for _, noun := range []*plan.Circuit{k.Old, k.New} {
			if noun != nil {
				t.circuit(noun.ID)
			}
		}
	}
}

// end marks an opening that a cable ends at; a panel is none.
func (t touching) end(id plan.ID) {
	if id.Kind() == plan.KindOpening {
		t.openings[id] = true
	}
}

func (t touching) circuit(id plan.ID) {
	for _, ix := range []*Index{t.old, t.now} {
		for o := range ix.OnCircuit(id) {
			t.openings[o.ID] = true
		}
	}
}
