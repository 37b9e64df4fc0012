package plan

import (
	"maps"
	"slices"

	"studbay/plan/geom"
)

// Updated returns the index of a later plan. Its cost follows what differs between
// the two plans, not their size.
func (ix *Index) Updated(now Plan) *Index {
	c := Diff(ix.plan, now)
	next := *ix
	next.plan = now
	next.trees = maps.Clone(ix.trees)
	u := updating{Index: &next, fresh: map[ID]bool{}, stale: map[ID]bool{}}
	u.levels(c.Levels)
	u.refs(c)
	u.cablesOf(c.Cables)
	u.spread()
	for id := range u.stale {
		u.replace(id)
	}
	return u.Index
}

// updating is an index while it is being brought up to a plan.
type updating struct {
	*Index
	fresh map[ID]bool // levels whose tree is this index's own
	stale map[ID]bool // nouns whose box must be worked out anew
}

func (u *updating) levels(changes []Change[*Level]) {
	for _, c := range changes {
		if c.New == nil {
			delete(u.trees, c.Old.ID)
		}
	}
}

// refs brings the look-ups by ID up to the changes.
func (u *updating) refs(c Changes) {
	for _, r := range c.Rooms {
		u.room(r)
	}
	for _, f := range c.Fixtures {
		u.fixture(f)
	}
	for _, b := range c.Breaks {
		u.breakOf(b)
	}
	for _, o := range c.Openings {
		u.opening(o)
	}
}

func (u *updating) room(c OnLevel[*Room]) {
	if c.Old != nil {
		if ref, ok := u.rooms.Get(c.Old.ID); ok && ref.room == c.Old {
			u.rooms = u.rooms.Without(c.Old.ID)
		}
		u.stale[c.Old.ID] = true
		for _, s := range c.Old.Sides {
			if ref, ok := u.sides.Get(s.ID); ok && ref.Room == c.Old {
				u.sides = u.sides.Without(s.ID)
			}
			u.stale[s.ID] = true
		}
	}
	if c.New != nil {
		u.rooms = u.rooms.With(&roomRef{c.Level, c.New})
		u.stale[c.New.ID] = true
		for i, s := range c.New.Sides {
			u.sides = u.sides.With(&SideRef{c.Level, c.New, i})
			u.stale[s.ID] = true
		}
	}
}

func (u *updating) fixture(c OnLevel[*Fixture]) {
	if c.Old != nil {
		if ref, ok := u.fixtures.Get(c.Old.ID); ok && ref.fixture == c.Old {
			u.fixtures = u.fixtures.Without(c.Old.ID)
		}
		u.unhost(c.Old.At.Host, func(h *hosted) { h.fixtures = dropped(h.fixtures, c.Old) })
		u.stale[c.Old.ID] = true
	}
	if c.New != nil {
		u.fixtures = u.fixtures.With(&fixtureRef{c.Level, c.New})
		u.unhost(c.New.At.Host, func(h *hosted) { h.fixtures = added(h.fixtures, c.New) })
		u.stale[c.New.ID] = true
	}
}

func (u *updating) breakOf(c OnLevel[*Break]) {
	if c.Old != nil {
		u.unhost(c.Old.At.Host, func(h *hosted) { h.breaks = dropped(h.breaks, c.Old) })
		u.stale[c.Old.ID] = true
	}
	if c.New != nil {
		u.unhost(c.New.At.Host, func(h *hosted) { h.breaks = added(h.breaks, c.New) })
		u.stale[c.New.ID] = true
	}
}

func (u *updating) opening(c OnLevel[*Opening]) {
	if c.Old != nil {
		u.unhost(c.Old.At.Host, func(h *hosted) { h.openings = dropped(h.openings, c.Old) })
		u.stale[c.Old.ID] = true
	}
	if c.New != nil {
		u.unhost(c.New.At.Host, func(h *hosted) { h.openings = added(h.openings, c.New) })
		u.stale[c.New.ID] = true
	}
}

// unhost changes a copy of what hangs on a host, and forgets a host of nothing.
func (u *updating) unhost(host ID, change func(*hosted)) {
	h := *u.on(host)
	h.host = host
	change(&h)
	if len(h.breaks)+len(h.fixtures)+len(h.openings) == 0 {
		u.hosted = u.hosted.Without(host)
		return
	}
	u.hosted = u.hosted.With(&h)
}

func (u *updating) cablesOf(changes []Change[*Cable]) {
	at := func(end ID, change func([]*Cable) []*Cable) {
		list := change(u.CablesAt(end))
		if len(list) == 0 {
			u.cables = u.cables.Without(end)
			return
		}
		u.cables = u.cables.With(&cablesAt{end, list})
	}
	for _, c := range changes {
		if c.Old != nil {
			drop := func(list []*Cable) []*Cable { return dropped(list, c.Old) }
			at(c.Old.From, drop)
			at(c.Old.To, drop)
		}
		if c.New != nil {
			add := func(list []*Cable) []*Cable { return added(list, c.New) }
			at(c.New.From, add)
			at(c.New.To, add)
		}
	}
}

// added returns the list with the noun in its place by ID; a list never holds two
// of one ID, except for a cable from an opening to itself.
func added[T Noun](list []T, noun T) []T {
	i, found := slices.BinarySearchFunc(list, noun.Key(), func(n T, id ID) int { return compareIDs(n.Key(), id) })
	if found {
		list = slices.Clone(list)
		list[i] = noun
		return list
	}
	return inserted(list, i, noun)
}

func dropped[T Noun](list []T, noun T) []T {
	i := slices.Index(list, noun)
	if i < 0 {
		return list
	}
	return slices.Delete(slices.Clone(list), i, i+1)
}

func compareIDs(a, b ID) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// spread marks what hangs on a stale host as stale too.
func (u *updating) spread() {
	work := slices.Collect(maps.Keys(u.stale))
	for len(work) > 0 {
		h := u.on(work[len(work)-1])
		work = work[:len(work)-1]
		for _, b := range h.breaks {
			u.stale[b.ID] = true
		}
		for _, o := range h.openings {
			u.stale[o.ID] = true
		}
		for _, f := range h.fixtures {
			if !u.stale[f.ID] {
				u.stale[f.ID] = true
				work = append(work, f.ID)
			}
		}
	}
}

// replace puts a noun where it belongs in the tree of its level.
func (u *updating) replace(id ID) {
	if old, ok := u.placed.Get(id); ok {
		if t := u.tree(old.level, false); t != nil {
			lo, hi := corners(old.box)
			t.rt.Delete(lo, hi, id)
		}
		u.placed = u.placed.Without(id)
	}
	box, level, ok := u.boxOf(id)
	if !ok {
		return
	}
	lo, hi := corners(box)
	u.tree(level, true).rt.Insert(lo, hi, id)
	u.placed = u.placed.With(&placed{id, level, box})
}

// tree returns the tree of a level for writing, made when asked.
func (u *updating) tree(level ID, make bool) *tree {
	if u.trees[level] == nil && !make {
		return nil
	}
	if !u.fresh[level] {
		u.trees[level] = u.trees[level].copy()
		u.fresh[level] = true
	}
	return u.trees[level]
}

// boxOf works out the box and level of a noun from the plan as it is now.
func (u *updating) boxOf(id ID) (geom.Box, ID, bool) {
	switch id.Kind() {
	case KindRoom:
		if ref, ok := u.rooms.Get(id); ok {
			return boxAround(0, ref.room.Outline()...), ref.level, true
		}
	case KindSide:
		if ref, ok := u.sides.Get(id); ok {
			line := ref.Line()
			return boxAround(0, line.A, line.B), ref.Level, true
		}
	case KindBreak:
		if b, l := u.plan.Break(id); b != nil {
			if line, ok := u.BreakLine(b); ok {
				return boxAround(b.Width, line.A, line.B), l.ID, true
			}
		}
	case KindFixture:
		if ref, ok := u.fixtures.Get(id); ok {
			if foot, ok := u.Footprint(ref.fixture); ok {
				return boxAround(0, foot...), ref.level, true
			}
		}
	case KindOpening:
		if o, l := u.plan.Opening(id); o != nil {
			if at, ok := u.Place(o.At); ok {
				return boxAround(0, at.Foot), l.ID, true
			}
		}
	}
	return geom.Box{}, "", false
}
