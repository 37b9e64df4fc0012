package plan

import (
	"maps"
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// hanging is what hangs on something, fixtures' own things included.
type hanging struct {
	breaks   []*Break
	fixtures []*Fixture
	openings []*Opening
}

// hangingOn returns what hangs on any of the hosts.
func hangingOn(l *Level, hosts map[ID]bool) (h hanging) {
	for b := range l.Breaks.All() {
		if hosts[b.At.Host] {
			h.breaks = append(h.breaks, b)
		}
	}
	// A fixture may come before the one it stands on.
	on := map[ID]bool{}
	for range MaxStack + 1 {
		before := len(on)
		for f := range l.Fixtures.All() {
			if (hosts[f.At.Host] || on[f.At.Host]) && !on[f.ID] {
				on[f.ID] = true
				h.fixtures = append(h.fixtures, f)
			}
		}
		if len(on) == before {
			break
		}
	}
	for o := range l.Openings.All() {
		if hosts[o.At.Host] || on[o.At.Host] {
			h.openings = append(h.openings, o)
		}
	}
	return h
}

// hosts returns the IDs that things of a room can hang on: itself and its sides.
func (r *Room) hosts() map[ID]bool {
	ids := map[ID]bool{r.ID: true}
	for _, s := range r.Sides {
		ids[s.ID] = true
	}
	return ids
}

// check looks at all that hangs somewhere again, after what it hangs on has changed.
func (h hanging) check(s levelSides) error {
	for _, f := range h.fixtures {
		if err := s.checkFixture(f); err != nil {
			return naming(err, f.ID)
		}
	}
	on := make(map[ID][]*Break)
	for _, b := range h.breaks {
		if err := s.checkBreak(b); err != nil {
			return naming(err, b.ID)
		}
		on[b.At.Host] = append(on[b.At.Host], b)
	}
	for _, b := range h.breaks {
		if err := checkApart(on[b.At.Host]); err != nil {
			return err
		}
	}
	for _, o := range h.openings {
		if err := s.checkOpening(o); err != nil {
			return naming(err, o.ID)
		}
	}
	return nil
}

// naming adds the thing in the way to a refusal.
func naming(err error, id ID) error {
	if r, ok := err.(*Refusal); ok && len(r.Things) == 0 {
		r.Things = []ID{id}
	}
	return err
}

// recheck returns the plan where all that hangs in a room still fits, or why not.
func (p Plan) recheck(level ID, room *Room) (Plan, error) {
	l := p.Level(level)
	if err := hangingOn(l, room.hosts()).check(levelSides{level: l}); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// leave takes the things off a level.
func (h hanging) leave(l *Level) {
	for _, f := range h.fixtures {
		l.Fixtures = l.Fixtures.Without(f.ID)
	}
	for _, o := range h.openings {
		l.Openings = l.Openings.Without(o.ID)
	}
}

// join puts the things on a level where they are not on it already.
func (h hanging) join(l *Level) {
	for _, f := range h.fixtures {
		if _, ok := l.Fixtures.Get(f.ID); !ok {
			l.Fixtures = l.Fixtures.With(f)
		}
	}
	for _, o := range h.openings {
		if _, ok := l.Openings.Get(o.ID); !ok {
			l.Openings = l.Openings.With(o)
		}
	}
}

// Rehung returns the plan with a room in place of the one of its ID, and all that hangs in
// it at the anchors that move gives. Move gets the width of what its anchor is the left
// end of. It fails with ErrGone where the room is not in the plan, with ErrNoRoom where
// something no longer fits, and where the room is not sound.
func (p Plan) Rehung(now *Room, move func(a Anchor, width unit.Length) Anchor) (Plan, error) {
	was, l := p.Room(now.ID)
	if was == nil {
		return Plan{}, Gone(KindRoom)
	}
	if err := now.Check(); err != nil {
		return Plan{}, err
	}
	h := hangingOn(l, was.hosts())
	p = p.on(l, func(l *Level) {
		l.Rooms = l.Rooms.With(now)
		for _, b := range h.breaks {
			if at := move(b.At, b.Width); at != b.At {
				moved := *b
				moved.At = at
				l.Breaks = l.Breaks.With(&moved)
			}
		}
		for _, f := range h.fixtures {
			if at := move(f.At, f.Width); at != f.At {
				moved := *f
				moved.At = at
				l.Fixtures = l.Fixtures.With(&moved)
			}
		}
		for _, o := range h.openings {
			if at := move(o.At, 0); at != o.At {
				moved := *o
				moved.At = at
				l.Openings = l.Openings.With(&moved)
			}
		}
	})
	return p.recheck(l.ID, now)
}

// Anchored is a break, fixture or opening as one thing that is anchored.
type Anchored struct {
	ID    ID
	At    Anchor
	Width unit.Length // of what Along is the left end of; 0: it is the centre
	Name  words.Text  // how a sentence calls it
}

// AnchoredTo returns what is anchored to a host itself: its breaks, fixtures and openings.
func (l *Level) AnchoredTo(host ID) (all []Anchored) {
	for b := range l.Breaks.All() {
		if b.At.Host == host {
			all = append(all, Anchored{b.ID, b.At, b.Width, b.text()})
		}
	}
	for f := range l.Fixtures.All() {
		if f.At.Host == host {
			all = append(all, Anchored{f.ID, f.At, f.Width, f.text()})
		}
	}
	for o := range l.Openings.All() {
		if o.At.Host == host {
			all = append(all, Anchored{o.ID, o.At, 0, o.text()})
		}
	}
	return all
}

// withParts returns the things with what has an ID within them: the sides of a room, all
// that is on a level.
func (p *Plan) withParts(things []ID) doomed {
	d := doomed{}
	for _, id := range things {
		d.add(id)
		if k := kindOf(id.Kind()); k != nil {
			t, _ := p.Find(id)
			d.addThing(k, t)
		}
		if l := p.Level(id); l != nil {
			for _, k := range kinds() {
				for t := range k.things(holder{p, l}) {
					d.addThing(k, t)
				}
			}
		}
	}
	return d
}

// heldBy lists what hangs on things that would go: what a level holds, what stands on the
// others, and what names them where that is held by them. D is the things with their parts.
func (p *Plan) heldBy(d doomed, things []ID) (held []ID) {
	all := maps.Clone(d)
	for p.grow(all, kind.hang) {
	}
	note := func(id ID) {
		if !slices.Contains(things, id) && !slices.Contains(held, id) {
			held = append(held, id)
		}
	}
	for _, k := range slices.Backward(kinds()) {
		for _, h := range p.holders() {
			isLost := h.level != nil && d[h.level.ID]
			for t := range k.things(h) {
				if id := t.Key(); all[id] && !d[id] || isLost && !k.stands() {
					note(id)
				}
			}
		}
	}
	for _, id := range things {
		if k := kindOf(id.Kind()); k != nil && k.holds() {
			for _, by := range p.named(id) {
				note(by)
			}
		}
	}
	return held
}

// CheckFree reports what hangs on things, if anything does, as a *Refusal of ErrInUse. Of
// a room it is what hangs on its sides as well, of a level all that is on it.
func (p Plan) CheckFree(things ...ID) error {
	if held := p.heldBy(p.withParts(things), things); len(held) > 0 {
		return p.inUse(things, held)
	}
	return nil
}

func (p *Plan) inUse(things, held []ID) *Refusal {
	what := words.New("refuse.in-use.several", "the selection")
	if len(things) == 1 {
		what = p.Text(things[0])
	}
	names := make([]words.Text, len(held))
	for i, id := range held {
		names[i] = p.Text(id)
	}
	return inUse(what, held, names)
}

// named lists the nouns that name a thing and hang on it.
func (p *Plan) named(id ID) (by []ID) {
	for _, k := range kinds() {
		by = append(by, k.naming(p, id)...)
	}
	return by
}

func (r *row[N, P]) stands() bool { return r.at != nil }

// naming lists the nouns that can be held by something: those that name it by itself and
// not in a list.
func (r *row[N, P]) naming(p *Plan, id ID) (ids []ID) {
	if r.names == nil {
		return nil
	}
	for _, h := range p.holders() {
		for t := range r.things(h) {
			s := holding{id: id}
			if r.names(t.(P), &s); s.held {
				ids = append(ids, t.Key())
			}
		}
	}
	return ids
}

// holding notes whether a noun names one thing by itself.
type holding struct {
	id   ID
	held bool
}

func (s *holding) needs(id *ID) { s.may(id) }

func (s *holding) may(id *ID) {
	if *id == s.id {
		s.held = true
	}
}

func (s *holding) follows(*ID) {}
func (s *holding) loose(*ID)   {}
func (s *holding) list(*[]ID)  {}
