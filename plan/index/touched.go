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
	for _, k := range kinds {
		k.touched(t, c)
	}
	t.levels(c.Levels)
	t.alongCircuits()
	return slices.Sorted(maps.Keys(t.rooms)), slices.Sorted(maps.Keys(t.openings))
}

// touching gathers scopes from the index before and the one after.
type touching struct {
	old, now        *Index
	rooms, openings map[plan.ID]bool
}

// room marks a room by its sides, what is in it and what sees it.
func (t touching) room(r *plan.Room) {
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

// fixture marks the room that a fixture is in, and what is on it.
func (t touching) fixture(f *plan.Fixture) {
	t.host(f.At)
	t.on(f.ID)
	t.pairsAbout(f.ID)
}

// host marks the room that an anchor is in.
func (t touching) host(a plan.Anchor) {
	for _, ix := range []*Index{t.old, t.now} {
		if place, ok := ix.Place(a); ok {
			t.rooms[place.Room.ID] = true
		}
	}
}

// brk marks what sees the side that a break cuts.
func (t touching) brk(b *plan.Break) { t.side(b.At.Host) }

func (t touching) opening(o *plan.Opening) {
	t.openings[o.ID] = true
	t.host(o.At)
	if o.At.Part == plan.PartFace {
		t.side(o.At.Host) // the face behind sees it too
	}
}

// cable marks the openings that a cable ends at.
func (t touching) cable(c *plan.Cable) {
	t.end(c.From)
	t.end(c.To)
}

// end marks an opening that a cable ends at or a control serves, and the room that it is in;
// a panel is none.
func (t touching) end(id plan.ID) {
	if id.Kind() == plan.KindOpening {
		t.openings[id] = true
		for _, ix := range []*Index{t.old, t.now} {
			if o, _ := ix.plan.Opening(id); o != nil {
				t.host(o.At)
			}
		}
	}
}

// control marks the openings that are loads of it, and the rooms that they are in.
func (t touching) control(c *plan.Control) {
	for _, load := range c.Loads {
		t.end(load)
	}
}

// circuit marks the openings on it.
func (t touching) circuit(c *plan.Circuit) {
	for _, ix := range []*Index{t.old, t.now} {
		for o := range ix.OnCircuit(c.ID) {
			t.openings[o.ID] = true
		}
	}
}
