package plan

import "slices"

// doomed is what an edit takes out of a plan, with all that goes with it.
type doomed map[ID]bool

func (d doomed) add(ids ...ID) {
	for _, id := range ids {
		d[id] = true
	}
}

// addThing adds a thing of the kind and its parts.
func (d doomed) addThing(k kind, t Thing) {
	d.add(t.Key())
	d.add(k.partsOf(t)...)
}

// references is told of the IDs by which a noun names other things, each at its address.
// It writes to none unless it is for that.
type references interface {
	needs(*ID)   // the noun goes with what it names, and hangs on it
	follows(*ID) // it goes with what it names, and does not hang on it
	may(*ID)     // it can be without, and hangs on it
	loose(*ID)   // it can be without, and does not hang on it
	list(*[]ID)  // it can be without each
}

// Without returns the plan less nouns and levels, what is in them and what goes with them;
// other nouns only stop naming them. Tags given up are never given out again.
func (p Plan) Without(things ...ID) Plan {
	d := p.withParts(things)
	for p.grow(d, kind.follow) {
	}
	var tags []string
	p.Levels = slices.Clone(p.Levels)
	for i, l := range p.Levels {
		now := *l
		if forget(holder{nil, &now}, d, &tags) {
			p.Levels[i] = &now
		}
	}
	forget(holder{&p, nil}, d, &tags)
	p.Levels = slices.DeleteFunc(p.Levels, func(l *Level) bool { return d[l.ID] })
	return p.retired(tags...)
}

// grow adds what one way of going along takes with the doomed, and reports whether that
// was anything: then it may take more.
func (p *Plan) grow(d doomed, way func(kind, *Plan, doomed) bool) (grew bool) {
	for _, k := range kinds() {
		if way(k, p, d) {
			grew = true
		}
	}
	return grew
}

// forget takes the doomed out of all sets of a holder, whose own they are, and notes the
// tags they had. It reports whether anything changed.
func forget(h holder, d doomed, tags *[]string) (changed bool) {
	for _, k := range kinds() {
		if k.forget(h, d, tags) {
			changed = true
		}
	}
	return changed
}

// hang adds what stands on the doomed.
func (r *row[N, P]) hang(p *Plan, d doomed) bool {
	if r.at == nil {
		return false
	}
	return r.addWhere(p, d, func(noun P) bool { return d[r.at(noun).Host] })
}

// follow adds what stands on the doomed, needs one of them or would be left with nothing.
func (r *row[N, P]) follow(p *Plan, d doomed) bool {
	return r.addWhere(p, d, func(noun P) bool {
		return r.at != nil && d[r.at(noun).Host] || r.names != nil && r.isLost(noun, d)
	})
}

// isLost reports whether a noun cannot be without the doomed that it names.
func (r *row[N, P]) isLost(noun P, d doomed) bool {
	s := seeing{doomed: d}
	r.names(noun, &s)
	return s.needed || s.named && r.isEmpty != nil && r.isEmpty(r.with(noun, forgetting{d}))
}

func (r *row[N, P]) addWhere(p *Plan, d doomed, goes func(P) bool) (grew bool) {
	for _, h := range p.holders() {
		set := r.in(h)
		if set == nil {
			continue
		}
		for noun := range set.All() {
			if !d[noun.Key()] && goes(noun) {
				d.addThing(r, noun)
				grew = true
			}
		}
	}
	return grew
}

// with returns a copy of the noun with what it names as it comes back.
func (r *row[N, P]) with(noun P, change references) P {
	now := *noun
	r.names(&now, change)
	return &now
}

func (r *row[N, P]) forget(h holder, d doomed, tags *[]string) bool {
	set := r.in(h)
	if set == nil {
		return false
	}
	out := *set
	for noun := range set.All() {
		if d[noun.Key()] {
			out = out.Without(noun.Key())
			*tags = append(*tags, r.tagOf(noun))
			continue
		}
		if r.names == nil {
			continue
		}
		s := seeing{doomed: d}
		if r.names(noun, &s); s.named {
			out = out.With(r.with(noun, forgetting{d}))
		}
	}
	changed := out != *set
	*set = out
	return changed
}

// seeing notes whether a noun names any of the doomed. It writes nothing.
type seeing struct {
	doomed
	needed, named bool
}

func (s *seeing) needs(id *ID) {
	if s.doomed[*id] {
		s.needed = true
	}
}

func (s *seeing) follows(id *ID) { s.needs(id) }

func (s *seeing) may(id *ID) {
	if s.doomed[*id] {
		s.named = true
	}
}

func (s *seeing) loose(id *ID) { s.may(id) }

func (s *seeing) list(ids *[]ID) {
	for i := range *ids {
		s.may(&(*ids)[i])
	}
}

// forgetting takes the doomed out of what a copy of a noun names.
type forgetting struct{ doomed }

func (f forgetting) needs(*ID)   {}
func (f forgetting) follows(*ID) {}

func (f forgetting) may(id *ID) {
	if f.doomed[*id] {
		*id = ""
	}
}

func (f forgetting) loose(id *ID) { f.may(id) }

func (f forgetting) list(ids *[]ID) {
	*ids = slices.DeleteFunc(slices.Clone(*ids), func(id ID) bool { return f.doomed[id] })
}

// Renamed returns the plan where nouns that name one thing name another; what stands on
// it stays.
func (p Plan) Renamed(from, to ID) Plan {
	p.Levels = slices.Clone(p.Levels)
	for i, l := range p.Levels {
		now := *l
		if rename(holder{nil, &now}, from, to) {
			p.Levels[i] = &now
		}
	}
	rename(holder{&p, nil}, from, to)
	return p
}

func rename(h holder, from, to ID) (changed bool) {
	for _, k := range kinds() {
		if k.rename(h, from, to) {
			changed = true
		}
	}
	return changed
}

func (r *row[N, P]) rename(h holder, from, to ID) bool {
	set := r.in(h)
	if set == nil || r.names == nil {
		return false
	}
	out := *set
	for noun := range set.All() {
		s := seeing{doomed: doomed{from: true}}
		if r.names(noun, &s); s.named || s.needed {
			out = out.With(r.with(noun, renaming{from, to}))
		}
	}
	changed := out != *set
	*set = out
	return changed
}

// renaming puts one ID for another in what a copy of a noun names.
type renaming struct{ from, to ID }

func (n renaming) needs(id *ID) {
	if *id == n.from {
		*id = n.to
	}
}

func (n renaming) follows(id *ID) { n.needs(id) }
func (n renaming) may(id *ID)     { n.needs(id) }
func (n renaming) loose(id *ID)   { n.needs(id) }

func (n renaming) list(ids *[]ID) {
	if !slices.Contains(*ids, n.from) {
		return
	}
	rest := slices.DeleteFunc(slices.Clone(*ids), func(id ID) bool { return id == n.from || id == n.to })
	*ids = append(rest, n.to)
}
