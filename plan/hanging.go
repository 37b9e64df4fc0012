package plan

import (
	"iter"
	"maps"
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// hanging is what hangs on something, with what hangs on that, as the kinds come.
type hanging []Thing

// hangingOn returns what of a level hangs on any of the hosts.
func hangingOn(l *Level, hosts map[ID]bool) (h hanging) {
	p, on := &Plan{Levels: []*Level{l}}, doomed(maps.Clone(hosts))
	for p.grow(on, kind.hang) {
	}
	for _, k := range kinds() {
		if !k.stands() {
			continue
		}
		for t := range k.things(holder{p, l}) {
			if id := t.Key(); on[id] && !hosts[id] {
				h = append(h, t)
			}
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
func (h hanging) check(p Plan, l *Level) error {
	a := around{levelSides{level: l}, p, p.Has}
	for _, k := range kinds() {
		if err := k.checkHanging(h, a); err != nil {
			return err
		}
	}
	return nil
}

// checkHanging looks at those of the kind.
func (r *row[N, P]) checkHanging(things []Thing, a around) error {
	var own []P
	for _, t := range things {
		noun, ok := t.(P)
		if !ok {
			continue
		}
		if err := r.check(noun, a); err != nil {
			return naming(err, noun.Key())
		}
		own = append(own, noun)
	}
	if r.apart == nil {
		return nil
	}
	on := r.byHost(slices.Values(own))
	for _, noun := range own {
		if err := r.apart(on.taken(r.at(noun).Host)); err != nil {
			return err
		}
	}
	return nil
}

// hosted are things of one kind by what they stand on.
type hosted[P any] map[ID][]P

func (r *row[N, P]) byHost(nouns iter.Seq[P]) hosted[P] {
	on := hosted[P]{}
	for noun := range nouns {
		host := r.at(noun).Host
		on[host] = append(on[host], noun)
	}
	return on
}

// taken returns those on a host the first time, and none from then on.
func (on hosted[P]) taken(host ID) []P {
	list := on[host]
	delete(on, host)
	return list
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
	if err := hangingOn(l, room.hosts()).check(p, l); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// leave takes the things off a level.
func (h hanging) leave(l *Level) {
	for _, t := range h {
		kindFor(t).take(l, t)
	}
}

// join puts the things on a level where they are not on it already.
func (h hanging) join(l *Level) {
	for _, t := range h {
		kindFor(t).join(l, t)
	}
}

func (r *row[N, P]) take(l *Level, t Thing) {
	set := r.level(l)
	*set = set.Without(t.Key())
}

func (r *row[N, P]) join(l *Level, t Thing) {
	set := r.level(l)
	if _, ok := set.Get(t.Key()); !ok {
		*set = set.With(t.(P))
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
		for _, t := range h {
			kindFor(t).rehang(l, t, move)
		}
	})
	return p.recheck(l.ID, now)
}

func (r *row[N, P]) rehang(l *Level, t Thing, move func(Anchor, unit.Length) Anchor) {
	at := *r.at(t.(P))
	if to := move(at, r.widthOf(t)); to != at {
		moved := *t.(P)
		*r.at(&moved) = to
		set := r.level(l)
		*set = set.With(&moved)
	}
}

// withParts returns the things with what has an ID within them: the sides of a room, all
// that is on a level.
func (p *Plan) withParts(things []ID) doomed {
	d := doomed{}
	for _, id := range things {
		d.add(id)
		if t, _ := p.Find(id); t != nil && kindFor(t) != nil {
			d.addThing(kindFor(t), t)
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

// CheckUnused reports as CheckFree does what holds those of some things that cannot go
// while they are in use, whatever else an edit takes along.
func (p Plan) CheckUnused(things ...ID) error {
	for _, id := range things {
		if k := kindOf(id.Kind()); k == nil || !k.stays() {
			continue
		}
		if held := slices.DeleteFunc(p.named(id), func(by ID) bool { return slices.Contains(things, by) }); len(held) > 0 {
			return p.inUse([]ID{id}, held)
		}
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
