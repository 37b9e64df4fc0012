package index

import (
	"cmp"
	"maps"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
)

// Updated returns the index of a later plan. Its cost follows what differs between
// the two plans, not their size.
func (ix *Index) Updated(now plan.Plan) *Index {
	c := plan.Diff(ix.plan, now)
	next := *ix
	next.plan = now
	next.trees, next.derived = maps.Clone(ix.trees), &derived{}
	u := updating{Index: &next, fresh: map[plan.ID]bool{}, stale: map[plan.ID]bool{}, ends: map[plan.ID]bool{}}
	u.levels(c.Levels)
	u.refs(c)
	u.spread()
	u.replace()
	u.rejoin()
	return u.Index
}

// updating is an index while it is being brought up to a plan.
type updating struct {
	*Index
	fresh map[plan.ID]bool // levels whose tree is this index's own
	stale map[plan.ID]bool // nouns whose box must be worked out anew
	ends  map[plan.ID]bool // where cables end that came or went
}

func (u *updating) levels(changes []plan.Differing[*plan.Level]) {
	for _, c := range changes {
		if c.New == nil {
			delete(u.trees, c.Old.ID)
		}
	}
}

// refs brings the look-ups by ID up to the changes, kind by kind.
func (u *updating) refs(c plan.Changes) {
	for _, k := range kinds {
		k.update(u, c)
	}
}

// slidOpening brings in an opening that keeps its host and circuit, such as one that is
// slid along its wall, in one go.
func (u *updating) slidOpening(was, now *plan.Opening) bool {
	if was.At.Host != now.At.Host || was.Circuit != now.Circuit || was.Kind != now.Kind {
		return false
	}
	u.rehost(now.At.Host, func(h *hosted) { h.openings = added(h.openings, now) })
	u.recircuit(now.Circuit, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.With(now) })
	u.rekind(now.Kind, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.With(now) })
	u.stale[now.ID] = true
	return true
}

func (u *updating) withoutRoom(r *plan.Room) {
	u.rooms = u.rooms.Without(r.ID)
	if r.IsClosedAnywhere() {
		u.closed--
	}
	u.stale[r.ID] = true
	for _, s := range r.Sides {
		if ref, ok := u.sides.Get(s.ID); ok && ref.Room == r {
			u.sides = u.sides.Without(s.ID)
		}
		u.stale[s.ID] = true
	}
}

func (u *updating) withRoom(level plan.ID, r *plan.Room) {
	u.rooms = u.rooms.With(&roomRef{level, r})
	if r.IsClosedAnywhere() {
		u.closed++
	}
	u.stale[r.ID] = true
	for i, s := range r.Sides {
		u.sides = u.sides.With(&sideRef{s.ID, plan.SideRef{Level: level, Room: r, At: i}})
		u.stale[s.ID] = true
	}
}

func (u *updating) withoutFixture(f *plan.Fixture) {
	u.fixtures = u.fixtures.Without(f.ID)
	u.rehost(f.At.Host, func(h *hosted) { h.fixtures = dropped(h.fixtures, f) })
	u.stale[f.ID] = true
}

func (u *updating) withFixture(level plan.ID, f *plan.Fixture) {
	u.fixtures = u.fixtures.With(&fixtureRef{level, f})
	u.rehost(f.At.Host, func(h *hosted) { h.fixtures = added(h.fixtures, f) })
	u.stale[f.ID] = true
}

func (u *updating) withoutBreak(b *plan.Break) {
	u.rehost(b.At.Host, func(h *hosted) { h.breaks = dropped(h.breaks, b) })
	u.stale[b.ID] = true
}

func (u *updating) withBreak(_ plan.ID, b *plan.Break) {
	u.rehost(b.At.Host, func(h *hosted) { h.breaks = added(h.breaks, b) })
	u.stale[b.ID] = true
}

func (u *updating) withoutOpening(o *plan.Opening) {
	u.rehost(o.At.Host, func(h *hosted) { h.openings = dropped(h.openings, o) })
	u.recircuit(o.Circuit, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.Without(o.ID) })
	u.rekind(o.Kind, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.Without(o.ID) })
	u.stale[o.ID] = true
}

func (u *updating) withOpening(_ plan.ID, o *plan.Opening) {
	u.rehost(o.At.Host, func(h *hosted) { h.openings = added(h.openings, o) })
	u.recircuit(o.Circuit, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.With(o) })
	u.rekind(o.Kind, func(s plan.Set[*plan.Opening]) plan.Set[*plan.Opening] { return s.With(o) })
	u.stale[o.ID] = true
}

// recircuit changes what is on a circuit, and forgets a circuit with nothing on it.
func (u *updating) recircuit(circuit plan.ID, change func(plan.Set[*plan.Opening]) plan.Set[*plan.Opening]) {
	if circuit == "" {
		return
	}
	c := onCircuit{circuit: circuit}
	if was, ok := u.circuits.Get(circuit); ok {
		c = *was
	}
	if c.openings = change(c.openings); c.openings.Len() == 0 {
		u.circuits = u.circuits.Without(circuit)
		return
	}
	u.circuits = u.circuits.With(&c)
}

// rehost changes a copy of what hangs on a host, and forgets a host of nothing.
func (u *updating) rehost(host plan.ID, change func(*hosted)) {
	h := *u.on(host)
	h.host = host
	change(&h)
	if len(h.breaks)+len(h.fixtures)+len(h.openings) == 0 {
		u.hosted = u.hosted.Without(host)
		return
	}
	u.hosted = u.hosted.With(&h)
}

func (u *updating) withoutCable(c *plan.Cable) {
	u.recable(c, func(list []*plan.Cable) []*plan.Cable { return dropped(list, c) })
}

func (u *updating) withCable(_ plan.ID, c *plan.Cable) {
	u.recable(c, func(list []*plan.Cable) []*plan.Cable { return added(list, c) })
}

// recable changes what ends at either end of a cable, and forgets an end of nothing.
func (u *updating) recable(c *plan.Cable, change func([]*plan.Cable) []*plan.Cable) {
	for _, end := range []plan.ID{c.From, c.To} {
		u.ends[end] = true
		if list := change(u.CablesAt(end)); len(list) > 0 {
			u.cables = u.cables.With(&cablesAt{end, list})
		} else {
			u.cables = u.cables.Without(end)
		}
	}
}

func (u *updating) withoutControl(c *plan.Control) {
	u.recontrol(c, func(list []*plan.Control) []*plan.Control { return dropped(list, c) })
}

func (u *updating) withControl(_ plan.ID, c *plan.Control) {
	u.recontrol(c, func(list []*plan.Control) []*plan.Control { return added(list, c) })
}

// recontrol changes what each load of a control is a load of, and forgets one of nothing.
func (u *updating) recontrol(c *plan.Control, change func([]*plan.Control) []*plan.Control) {
	for _, load := range c.Loads {
		if list := change(u.ControlsOf(load)); len(list) > 0 {
			u.controls = u.controls.With(&controlsOf{load, list})
		} else {
			u.controls = u.controls.Without(load)
		}
	}
}

// added returns the list with the noun in its place by ID; a list never holds two
// of one ID, except for a cable from an opening to itself.
func added[T plan.Noun](list []T, noun T) []T {
	i, found := slices.BinarySearchFunc(list, noun.Key(), func(n T, id plan.ID) int { return cmp.Compare(n.Key(), id) })
	if found {
		list = slices.Clone(list)
		list[i] = noun
		return list
	}
	return slices.Insert(slices.Clone(list), i, noun)
}

func dropped[T plan.Noun](list []T, noun T) []T {
	i := slices.Index(list, noun)
	if i < 0 {
		return list
	}
	return slices.Delete(slices.Clone(list), i, i+1)
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

// replace puts the stale nouns where they belong in the trees of their levels. They go
// in from left to right, so that the same plans give the same trees, and good ones.
func (u *updating) replace() {
	var fresh []*placed
	for id := range u.stale {
		now := u.placeOf(id)
		old, was := u.placed.Get(id)
		if was && now != nil && *old == *now && u.trees[now.level] != nil {
			continue
		}
		if was {
			u.displace(old)
		}
		if now != nil {
			fresh = append(fresh, now)
		} else {
			u.placed = u.placed.Without(id)
		}
	}
	slices.SortFunc(fresh, func(a, b *placed) int {
		p, q := a.box.Min, b.box.Min
		return cmp.Or(cmp.Compare(p.X, q.X), cmp.Compare(p.Y, q.Y), cmp.Compare(a.id, b.id))
	})
	for _, p := range fresh {
		lo, hi := corners(p.box)
		u.tree(p.level, true).rt.Insert(lo, hi, p.id)
		u.placed = u.placed.With(p)
	}
}

// displace takes a noun out of the tree it stood in.
func (u *updating) displace(p *placed) {
	if t := u.tree(p.level, false); t != nil {
		lo, hi := corners(p.box)
		t.rt.Delete(lo, hi, p.id)
	}
}

// placeOf returns where a noun stands in the plan as it is now, or nil.
func (u *updating) placeOf(id plan.ID) *placed {
	if box, level, ok := u.boxOf(id); ok {
		return &placed{id, level, box}
	}
	return nil
}

// tree returns the tree of a level for writing, made when asked.
func (u *updating) tree(level plan.ID, make bool) *tree {
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
func (u *updating) boxOf(id plan.ID) (geom.Box, plan.ID, bool) {
	if ref, ok := u.sides.Get(id); ok {
		line := ref.Line()
		return boxAround(0, line.A, line.B), ref.Level, true
	}
	for _, k := range kinds {
		if k.isOf(id) {
			return k.boxOf(u.Index, id)
		}
	}
	return geom.Box{}, "", false
}
