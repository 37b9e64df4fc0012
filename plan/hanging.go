package plan

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
	for range maxStack + 1 {
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
