package plan

import "slices"

// doomed is what an edit takes out of a plan, with all that names it.
type doomed map[ID]bool

func (d doomed) add(ids ...ID) {
	for _, id := range ids {
		d[id] = true
	}
}

// without returns the plan less the doomed nouns. Cables that end at one go too, and
// controls left with nothing; other nouns only stop naming them. Tags given up are
// never given out again.
func (p Plan) without(d doomed) Plan {
	for id, c := range keyed(p.Cables) {
		if d[c.From] || d[c.To] {
			d.add(id)
		}
	}
	var tags []string
	for _, l := range p.Levels {
		changed := *l
		changed.Rooms = trimmed(l.Rooms, d, nil)
		changed.Breaks = trimmed(l.Breaks, d, nil)
		changed.Fixtures = trimmed(l.Fixtures, d, nil)
		changed.Openings = trimmed(l.Openings, d, d.unwiredOpening)
		for o := range l.Openings.All() {
			if d[o.ID] {
				tags = append(tags, o.Tag)
			}
		}
		if len(l.Rooms.Diff(changed.Rooms))+len(l.Breaks.Diff(changed.Breaks))+
			len(l.Fixtures.Diff(changed.Fixtures))+len(l.Openings.Diff(changed.Openings)) > 0 {
			p = p.WithLevel(&changed)
		}
	}
	p.Circuits = trimmed(p.Circuits, d, d.unwiredCircuit)
	p.Cables = trimmed(p.Cables, d, d.unwiredCable)
	p.Controls = trimmed(p.Controls, d, d.control)
	p.Decisions = trimmed(p.Decisions, d, d.decision)
	p.Waivers = trimmed(p.Waivers, d, d.waiver)
	p.Amendments = trimmed(p.Amendments, d, nil)
	return p.retired(tags...)
}

func keyed[T Noun](set Set[T]) func(func(ID, T) bool) {
	return func(yield func(ID, T) bool) {
		for noun := range set.All() {
			if !yield(noun.Key(), noun) {
				return
			}
		}
	}
}

// trimmed returns the set without the doomed, each of the rest as change gives it; nil
// of change's takes it out too.
func trimmed[T Noun](set Set[T], d doomed, change func(T) T) Set[T] {
	var none T
	out := set
	for id, noun := range keyed(set) {
		if d[id] {
			out = out.Without(id)
			continue
		}
		if change == nil {
			continue
		}
		switch now := change(noun); now {
		case noun:
		case none:
			out = out.Without(id)
		default:
			out = out.With(now)
		}
	}
	return out
}

func (d doomed) unwiredOpening(o *Opening) *Opening {
	if !d[o.Circuit] {
		return o
	}
	now := *o
	now.Circuit = ""
	return &now
}

func (d doomed) unwiredCircuit(c *Circuit) *Circuit {
	if !d[c.Panel] {
		return c
	}
	now := *c
	now.Panel = ""
	return &now
}

func (d doomed) unwiredCable(c *Cable) *Cable {
	if !d[c.Circuit] {
		return c
	}
	now := *c
	now.Circuit = ""
	return &now
}

func (d doomed) control(c *Control) *Control {
	switches, loads := d.rest(c.Switches), d.rest(c.Loads)
	switch len(switches) + len(loads) {
	case len(c.Switches) + len(c.Loads):
		return c
	case 0:
		return nil
	}
	now := *c
	now.Switches, now.Loads = switches, loads
	return &now
}

func (d doomed) decision(q *Decision) *Decision {
	about := d.rest(q.About)
	if len(about) == len(q.About) {
		return q
	}
	now := *q
	now.About = about
	return &now
}

func (d doomed) waiver(w *Waiver) *Waiver {
	if d[w.About] {
		return nil
	}
	return w
}

func (d doomed) rest(ids []ID) []ID {
	return slices.DeleteFunc(slices.Clone(ids), func(id ID) bool { return d[id] })
}

// renamed returns the plan where decisions and waivers about one thing are about
// another.
func (p Plan) renamed(from, to ID) Plan {
	p.Decisions = trimmed(p.Decisions, nil, func(d *Decision) *Decision {
		if !slices.Contains(d.About, from) {
			return d
		}
		now := *d
		now.About = slices.DeleteFunc(slices.Clone(d.About), func(id ID) bool { return id == from || id == to })
		now.About = append(now.About, to)
		return &now
	})
	p.Waivers = trimmed(p.Waivers, nil, func(w *Waiver) *Waiver {
		if w.About != from {
			return w
		}
		now := *w
		now.About = to
		return &now
	})
	return p
}
