package plan

import "slices"

// Changes is what differs between two plans, noun by noun. A noun that went to
// another level is removed from one and added to the other.
type Changes struct {
	Header     bool             // the header differs
	Order      bool             // levels were added, removed or reordered
	Levels     []Change[*Level] // whose own fields differ, added or removed
	Rooms      []OnLevel[*Room]
	Breaks     []OnLevel[*Break]
	Fixtures   []OnLevel[*Fixture]
	Openings   []OnLevel[*Opening]
	Circuits   []Change[*Circuit]
	Cables     []Change[*Cable]
	Controls   []Change[*Control]
	Decisions  []Change[*Decision]
	Waivers    []Change[*Waiver]
	Amendments []Change[*Amendment]
}

// OnLevel is a change of a noun on one level.
type OnLevel[T Noun] struct {
	Level ID
	Change[T]
}

// Diff returns what differs between two plans. What both share is not visited.
func Diff(old, now Plan) (c Changes) {
	c.Header = old.Header != now.Header
	c.diffLevels(old.Levels, now.Levels)
	c.Circuits = old.Circuits.Diff(now.Circuits)
	c.Cables = old.Cables.Diff(now.Cables)
	c.Controls = old.Controls.Diff(now.Controls)
	c.Decisions = old.Decisions.Diff(now.Decisions)
	c.Waivers = old.Waivers.Diff(now.Waivers)
	c.Amendments = old.Amendments.Diff(now.Amendments)
	return c
}

func (c *Changes) diffLevels(old, now []*Level) {
	find := func(list []*Level, id ID) *Level { return Plan{Levels: list}.Level(id) }
	for i, l := range old {
		if i >= len(now) || now[i].ID != l.ID {
			c.Order = true
		}
		c.diffLevel(l, find(now, l.ID))
	}
	for i, l := range now {
		if i >= len(old) || old[i].ID != l.ID {
			c.Order = true
		}
		if find(old, l.ID) == nil {
			c.diffLevel(nil, l)
		}
	}
}

func (c *Changes) diffLevel(old, now *Level) {
	if old == now {
		return
	}
	var empty Level
	a, b, id := old, now, ID("")
	if a == nil {
		a, id = &empty, b.ID
	}
	if b == nil {
		b, id = &empty, a.ID
	}
	if old != nil && now != nil {
		id = now.ID
	}
	if old == nil || now == nil || !sameOwnFields(a, b) {
		c.Levels = append(c.Levels, Change[*Level]{old, now})
	}
	c.Rooms = append(c.Rooms, onLevel(id, a.Rooms.Diff(b.Rooms))...)
	c.Breaks = append(c.Breaks, onLevel(id, a.Breaks.Diff(b.Breaks))...)
	c.Fixtures = append(c.Fixtures, onLevel(id, a.Fixtures.Diff(b.Fixtures))...)
	c.Openings = append(c.Openings, onLevel(id, a.Openings.Diff(b.Openings))...)
}

func sameOwnFields(a, b *Level) bool {
	return a.Name == b.Name && a.Elevation == b.Elevation && slices.Equal(a.Extra, b.Extra)
}

func onLevel[T Noun](level ID, changes []Change[T]) []OnLevel[T] {
	if len(changes) == 0 {
		return nil
	}
	out := make([]OnLevel[T], 0, len(changes))
	for _, c := range changes {
		out = append(out, OnLevel[T]{level, c})
	}
	return out
}

// IsEmpty reports whether nothing differs.
func (c Changes) IsEmpty() bool {
	return !c.Header && !c.Order && len(c.Levels)+len(c.Rooms)+len(c.Breaks)+len(c.Fixtures)+
		len(c.Openings)+len(c.Circuits)+len(c.Cables)+len(c.Controls)+len(c.Decisions)+
		len(c.Waivers)+len(c.Amendments) == 0
}
