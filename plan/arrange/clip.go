// Package arrange is the edits of many things at once: taken up, pasted, moved, mirrored,
// turned, spread and levelled together with what stands on them. It makes each of the edits
// of package edit.
package arrange

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
)

// Clip is things taken up from a plan to be set elsewhere, in it or in another: rooms,
// fixtures, doors and windows, and openings, with all that stands on them. Cables,
// controls and tags are not among it. It outlives the plan it is of.
type Clip struct {
	things []plan.Thing // none stands on a later one
	// faces are the sides that things stand on and that are not in it, as they ran.
	faces map[plan.ID]geom.Segment
	// corners are the upper left corners of the rooms that things lie in and that are not
	// in it.
	corners map[plan.ID]geom.Point
}

// ClipOf takes things up. What can not be set elsewhere by itself is left out.
func ClipOf(p plan.Plan, things []plan.ID) Clip {
	c := Clip{faces: map[plan.ID]geom.Segment{}, corners: map[plan.ID]geom.Point{}}
	for _, id := range plan.Distinct(things) {
		t, _ := p.Find(id)
		if t == nil || rides(p, t, things) {
			continue
		}
		room, isRoom := t.(*plan.Room)
		at := plan.AnchorOf(t)
		if at == nil && !isRoom {
			continue
		}
		c.add(t)
		if at != nil {
			c.standsOn(p, at.Host)
		}
		if isRoom || id.Kind() == plan.KindFixture { // what else holds nothing
			c.add(standingOn(p, id)...)
		}
		if isRoom {
			for _, s := range room.Sides {
				c.add(standingOn(p, s.ID)...)
			}
		}
	}
	return c
}

// standsOn notes where something that is not in the clip is.
func (c *Clip) standsOn(p plan.Plan, host plan.ID) {
	if ref, _ := p.Side(host); ref != nil {
		c.faces[host] = ref.Line()
	} else if r, _ := p.Room(host); r != nil {
		c.corners[host] = r.Outline().Box().Min
	}
}

func (c *Clip) add(things ...plan.Thing) { c.things = append(c.things, things...) }

// standingOn lists what stands on a host, and on that, each after what it stands on.
func standingOn(p plan.Plan, host plan.ID) (all []plan.Thing) {
	_, l := p.Find(host)
	if l == nil {
		return nil
	}
	for t := range l.AnchoredTo(host) {
		all = append(append(all, t), standingOn(p, t.Key())...)
	}
	return all
}

// IsEmpty reports whether nothing was taken up.
func (c Clip) IsEmpty() bool { return len(c.things) == 0 }

// One returns the opening that alone is in it, or nil. It is not to be written to.
func (c Clip) One() *plan.Opening {
	if len(c.things) != 1 {
		return nil
	}
	o, _ := c.things[0].(*plan.Opening)
	return o
}

// Rooms returns the rooms in it. They are not to be written to.
func (c Clip) Rooms() (all []*plan.Room) {
	for _, t := range c.things {
		if r, ok := t.(*plan.Room); ok {
			all = append(all, r)
		}
	}
	return all
}

// IsOn reports whether something that was taken up is still on a level.
func (c Clip) IsOn(l *plan.Level) bool {
	return l != nil && slices.ContainsFunc(c.things, func(t plan.Thing) bool { return l.Has(t.Key()) })
}

// Len returns how many things are in it, what stands on others counted too.
func (c Clip) Len() int { return len(c.things) }

// IsFlat reports whether something in it goes by a way of the sheet: a room, or what lies
// in a ceiling or on a floor.
func (c Clip) IsFlat() bool {
	return slices.ContainsFunc(c.things, func(t plan.Thing) bool {
		at := plan.AnchorOf(t)
		return at == nil || isFlat(*at)
	})
}

// IDs lists the IDs of all that is in it, sides included: as many are wanted for a copy,
// of the same kinds.
func (c Clip) IDs() (ids []plan.ID) {
	for _, t := range c.things {
		ids = append(ids, t.Key())
		if r, ok := t.(*plan.Room); ok {
			for _, s := range r.Sides {
				ids = append(ids, s.ID)
			}
		}
	}
	return ids
}

// Outer picks, of what IDs were made for, those of things that stand on nothing else in
// the clip: what is in hand once it is set.
func (c Clip) Outer(as []plan.ID) (ids []plan.ID) {
	names := c.named(as)
	for _, t := range c.things {
		if at := plan.AnchorOf(t); at == nil || names[at.Host] == "" {
			ids = append(ids, names[t.Key()])
		}
	}
	return ids
}

func (c Clip) named(as []plan.ID) map[plan.ID]plan.ID {
	names := map[plan.ID]plan.ID{}
	for i, id := range c.IDs() {
		if i < len(as) {
			names[id] = as[i]
		}
	}
	return names
}
