package plan

import (
	"maps"
	"slices"

	"studbay/plan/words"
)

// Remove takes things out: nouns of any kind, levels, and sides, which become one with
// the side before them as RemoveCorner has it. Cables that end at what goes, controls
// left with nothing and waivers about it go too; other things only stop naming it.
type Remove struct {
	Things []ID
	// Cascade takes along what stands on the things, stops naming them what they hold,
	// and slides what would fall off the end of a side back onto it.
	Cascade bool
}

// Removing returns the edit that takes things out, and all that goes with them.
func Removing(things ...ID) Remove { return Remove{Things: things, Cascade: true} }

// Name returns "Remove opening" or what else it is, or how many things.
func (e Remove) Name() words.Text {
	if len(e.Things) != 1 {
		return words.New("edit.remove-several", "Take out {0} things", len(e.Things))
	}
	switch id := e.Things[0]; id.Kind() {
	case KindSide:
		return RemoveCorner{}.Name()
	case KindLevel:
		return words.New("edit.level.remove", "Remove level")
	default:
		if k := kindOf(id); k != nil {
			return k.removeTitle()
		}
	}
	return words.New("edit.remove", "Remove")
}

// Apply fails with ErrGone where one of the things is not in the plan, with ErrInUse and
// a list where others hang on them, unless Cascade, and for a side as RemoveCorner does.
func (e Remove) Apply(p Plan) (Plan, error) {
	for _, id := range e.Things {
		if !p.Has(id) {
			return Plan{}, gone(theText(id))
		}
	}
	p, nouns, err := e.withoutSides(p)
	if err != nil {
		return Plan{}, err
	}
	d := p.withParts(nouns)
	if held := p.heldBy(d, nouns); len(held) > 0 && !e.Cascade {
		return Plan{}, p.inUse(nouns, held)
	}
	return p.without(d), nil
}

// withoutSides takes the sides out, but those whose room goes as a whole, and returns the
// other things.
func (e Remove) withoutSides(p Plan) (_ Plan, others []ID, err error) {
	for _, id := range e.Things {
		if id.Kind() != KindSide {
			others = append(others, id)
			continue
		}
		ref, l := p.side(id)
		if ref == nil || slices.Contains(e.Things, ref.Room.ID) || slices.Contains(e.Things, l.ID) {
			continue
		}
		if p, err = (RemoveCorner{Side: id, Clamp: e.Cascade}).Apply(p); err != nil {
			return Plan{}, nil, err
		}
	}
	return p, others, nil
}

// withParts returns the things with what has an ID within them: the sides of a room, all
// that is on a level.
func (p *Plan) withParts(things []ID) doomed {
	d := doomed{}
	for _, id := range things {
		d.add(id)
		if k := kindOf(id); k != nil {
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
		if k := kindOf(id); k != nil && k.holds() {
			for _, by := range p.named(id) {
				note(by)
			}
		}
	}
	return held
}

func (p *Plan) inUse(things, held []ID) error {
	what := words.New("refuse.in-use.several", "what is chosen")
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
func (s *holding) list(*[]ID)  {}
