package edit_test

import (
	"errors"
	"slices"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"testing"

	"pgregory.net/rapid"
)

// goes is what a plan has no longer once things are out of it, read off the nouns one by
// one: what is on a level or in a room, what stands on something that goes, cables that end
// there, pairs, findings set aside and wishes about it, and controls left with nothing.
func goes(p plan.Plan, things []plan.ID) map[plan.ID]bool {
	gone := map[plan.ID]bool{}
	for _, id := range things {
		gone[id] = true
	}
	for size := -1; size != len(gone); {
		size = len(gone)
		for _, l := range p.Levels {
			goesOnLevel(p, l, gone)
		}
		for c := range p.Cables.All() {
			gone[c.ID] = gone[c.ID] || gone[c.From] || gone[c.To]
		}
		for x := range p.Pairs.All() {
			gone[x.ID] = gone[x.ID] || gone[x.One] || gone[x.Other] || gone[x.About]
		}
		for w := range p.Waivers.All() {
			gone[w.ID] = gone[w.ID] || gone[w.About]
		}
		for x := range p.Ticks.All() {
			gone[x.ID] = gone[x.ID] || gone[x.About]
		}
		for w := range p.Wishes.All() {
			gone[w.ID] = gone[w.ID] || gone[w.About]
		}
		for c := range p.Controls.All() {
			all := slices.Concat(c.Switches, c.Loads)
			isEmpty := len(all) > 0 && !slices.ContainsFunc(all, func(id plan.ID) bool { return !gone[id] })
			gone[c.ID] = gone[c.ID] || isEmpty
		}
		for id, is := range gone {
			if !is {
				delete(gone, id)
			}
		}
	}
	return gone
}

func goesOnLevel(p plan.Plan, l *plan.Level, gone map[plan.ID]bool) {
	for r := range l.Rooms.All() {
		gone[r.ID] = gone[r.ID] || gone[l.ID]
		for _, s := range r.Sides {
			gone[s.ID] = gone[s.ID] || gone[r.ID]
		}
	}
	for t := range l.Anchored() {
		gone[t.Key()] = gone[t.Key()] || gone[l.ID] || gone[plan.AnchorOf(t).Host]
	}
}

// less is the plan without what goes, and nothing of it named any more.
func less(p plan.Plan, gone map[plan.ID]bool) plan.Plan {
	name := func(id *plan.ID) {
		if gone[*id] {
			*id = ""
		}
	}
	list := func(ids *[]plan.ID) {
		*ids = slices.DeleteFunc(slices.Clone(*ids), func(id plan.ID) bool { return gone[id] })
	}
	now := plan.Plan{Header: p.Header}
	for _, l := range p.Levels {
		if gone[l.ID] {
			continue
		}
		level := *l
		level.Rooms = kept(l.Rooms, gone, func(*plan.Room) {})
		level.Breaks = kept(l.Breaks, gone, func(b *plan.Break) { name(&b.From) })
		level.Fixtures = kept(l.Fixtures, gone, func(f *plan.Fixture) { name(&f.From); name(&f.Leads) })
		level.Openings = kept(l.Openings, gone, func(o *plan.Opening) { name(&o.Circuit); name(&o.From); name(&o.Was) })
		now.Levels = append(now.Levels, &level)
	}
	now.Circuits = kept(p.Circuits, gone, func(c *plan.Circuit) { name(&c.Panel) })
	now.Cables = kept(p.Cables, gone, func(c *plan.Cable) { name(&c.Circuit) })
	now.Controls = kept(p.Controls, gone, func(c *plan.Control) { list(&c.Switches); list(&c.Loads) })
	now.Decisions = kept(p.Decisions, gone, func(d *plan.Decision) { list(&d.About) })
	now.Pairs, now.Waivers = kept(p.Pairs, gone, func(*plan.Pair) {}), kept(p.Waivers, gone, func(*plan.Waiver) {})
	now.Wishes, now.Amendments = kept(p.Wishes, gone, func(*plan.Wish) {}), kept(p.Amendments, gone, func(*plan.Amendment) {})
	now.Ticks = kept(p.Ticks, gone, func(*plan.Tick) {})
	return now
}

func kept[N any, P interface {
	*N
	Key() plan.ID
}](set plan.Set[P], gone map[plan.ID]bool, change func(P)) (left plan.Set[P]) {
	for noun := range set.All() {
		if !gone[noun.Key()] {
			now := *noun
			change(&now)
			left = left.With(&now)
		}
	}
	return left
}

// anything is the IDs of all of a plan but of its sides.
func anything(p plan.Plan) (ids []plan.ID) {
	for _, l := range p.Levels {
		ids = append(ids, l.ID)
	}
	for old := range plan.Diff(p, plan.Plan{}).All() {
		ids = append(ids, old.Key())
	}
	return ids
}

// tangled is a random plan with more of what names other things.
func tangled(t *rapid.T) plan.Plan {
	p := plantest.Random(t)
	all := append(anything(p), "ozzzzzzzz") // of an empty plan there is nothing else
	ids := plantest.NewIDs(rapid.Uint64Range(0, 99).Draw(t, "ids"))
	some := func() plan.ID { return rapid.SampledFrom(all).Draw(t, "of") }
	for range rapid.IntRange(0, 12).Draw(t, "more") {
		var e edit.Edit
		switch rapid.IntRange(0, 6).Draw(t, "what") {
		case 6:
			e = edit.Add{Thing: &plan.Tick{ID: ids.New(plan.KindTick), What: "set", About: some()}}
		case 0:
			e = arrange.MeasureFrom{ID: some(), From: some()}
		case 1:
			e = edit.Add{Thing: &plan.Wish{ID: ids.New(plan.KindWish), Kind: plan.WishAgreed, About: some()}}
		case 2:
			e = edit.Add{Thing: &plan.Decision{ID: ids.New(plan.KindDecision), Question: "Which?", About: []plan.ID{some(), some()}}}
		case 3:
			e = edit.SetCircuit{ID: some(), Circuit: some()}
		case 4:
			if o, _ := p.Opening(some()); o != nil {
				now := *o
				now.Was = some()
				e = edit.ChangeOpening{Opening: now}
			}
		case 5:
			e = edit.Add{Thing: &plan.Control{ID: ids.New(plan.KindControl), Switches: []plan.ID{some()}, Loads: []plan.ID{some()}}}
		}
		if e != nil {
			if next, err := e.Apply(p); err == nil {
				p = next
			}
		}
	}
	return p
}

// Whatever is taken out, exactly what hangs on it goes, what named it stops to, and all
// else stays as it is; no number of a tag that went is given out again.
func TestWhatGoesAlongIsGone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := tangled(t)
		if len(anything(p)) == 0 {
			return
		}
		things := rapid.SliceOfNDistinct(rapid.SampledFrom(anything(p)), 1, 4, rapid.ID[plan.ID]).Draw(t, "things")
		e := edit.Remove{Things: things, Cascade: true}
		now := applied(t, p, e)
		gone := goes(p, things)
		want := less(p, gone)
		want.Header, want.Extra = now.Header, now.Extra
		if !plan.Equal(now, want) {
			for old, is := range plan.Diff(want, now).All() {
				t.Fatalf("without %v: %+v, want %+v", things, is, old)
			}
			t.Fatalf("without %v it is another plan than it should be", things)
		}
		for _, o := range p.Openings() {
			if gone[o.ID] && !now.IsTagFree(o.Tag) {
				t.Fatalf("the tag %s went and stands still", o.Tag)
			}
			for l, r := range rooms(now) {
				if tag := now.TagAt(plan.OnFloor(r.ID, r.Sides[0].Start)); gone[o.ID] && tag == o.Tag {
					t.Fatalf("the tag %s is given out again on %s", tag, l.Name)
				}
			}
		}
		isTold(t, p, e, gone)
		held(t, p, things)
	})
}

func rooms(p plan.Plan) func(func(*plan.Level, *plan.Room) bool) {
	return func(yield func(*plan.Level, *plan.Room) bool) {
		for _, l := range p.Levels {
			for r := range l.Rooms.All() {
				if !yield(l, r) {
					return
				}
			}
		}
	}
}

// isTold holds what is told of a removal beforehand to what it does.
func isTold(t *rapid.T, p plan.Plan, e edit.Remove, gone map[plan.ID]bool) {
	all, err := edit.Consequences(p, edit.Remove{Things: e.Things})
	if err != nil {
		t.Fatal(err)
	}
	is := map[plan.ID]bool{}
	for _, c := range all {
		is[c.ID] = true
		if slices.Contains(e.Things, c.ID) || c.Goes != gone[c.ID] || c.Text.String() != p.Text(c.ID).String() {
			t.Fatalf("without %v: is told that %s goes: %v", e.Things, c.ID, c.Goes)
		}
	}
	stays := less(p, gone)
	for old, now := range plan.Diff(p, stays).All() {
		if old == nil || slices.Contains(e.Things, old.Key()) {
			continue
		}
		was, other := thing(p, old.Key()), thing(stays, old.Key())
		differs := now == nil || !sameThing(was, other)
		if differs != is[old.Key()] {
			t.Fatalf("without %v: of %s is told: %v, want %v", e.Things, old.Key(), is[old.Key()], differs)
		}
	}
}

// sameThing compares what two nouns say by the plans that hold nothing but them.
func sameThing(a, b plan.Thing) bool {
	switch a := a.(type) {
	case *plan.Room:
		return plan.Same(a, b.(*plan.Room))
	case *plan.Break:
		return plan.Same(a, b.(*plan.Break))
	case *plan.Fixture:
		return plan.Same(a, b.(*plan.Fixture))
	case *plan.Opening:
		return plan.Same(a, b.(*plan.Opening))
	case *plan.Circuit:
		return plan.Same(a, b.(*plan.Circuit))
	case *plan.Cable:
		return plan.Same(a, b.(*plan.Cable))
	case *plan.Control:
		return plan.Same(a, b.(*plan.Control))
	case *plan.Decision:
		return plan.Same(a, b.(*plan.Decision))
	}
	return true // names nothing that it can be without
}

// held holds what refuses a removal without all that goes along: rooms of a level, what
// stands on the things, and what names a panel or a circuit.
func held(t *rapid.T, p plan.Plan, things []plan.ID) {
	inside := map[plan.ID]bool{}
	for _, id := range things {
		inside[id] = true
	}
	want := map[plan.ID]bool{}
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			want[r.ID] = inside[l.ID]
			for _, s := range r.Sides {
				inside[s.ID] = inside[s.ID] || inside[r.ID] || inside[l.ID]
			}
		}
		for id := range stand(l, inside) {
			want[id] = !inside[l.ID]
		}
	}
	for _, id := range things {
		for other := range namers(p, id) {
			want[other] = true
		}
	}
	var ids []plan.ID
	for id, is := range want {
		if is && !slices.Contains(things, id) {
			ids = append(ids, id)
		}
	}
	_, err := edit.Remove{Things: things}.Apply(p)
	var r *plan.Refusal
	if errors.As(err, &r); (err != nil) != (len(ids) > 0) || r != nil && !(errors.Is(err, plan.ErrInUse) && sameIDs(r.Things, ids)) {
		t.Fatalf("without %v: %v (%+v), want it held by %v", things, err, r, ids)
	}
}

// stand is what stands on any of the things, however many stand between.
func stand(l *plan.Level, on map[plan.ID]bool) map[plan.ID]bool {
	all := map[plan.ID]bool{}
	for size := -1; size != len(all); {
		size = len(all)
		for t := range l.Anchored() {
			if host := plan.AnchorOf(t).Host; on[host] || all[host] {
				all[t.Key()] = true
			}
		}
	}
	return all
}

// namers is what names a panel or a circuit and depends on it.
func namers(p plan.Plan, id plan.ID) map[plan.ID]bool {
	all := map[plan.ID]bool{}
	if k := id.Kind(); k != plan.KindFixture && k != plan.KindCircuit {
		return all
	}
	for c := range p.Circuits.All() {
		all[c.ID] = c.Panel == id
	}
	for c := range p.Cables.All() {
		all[c.ID] = c.From == id || c.To == id || c.Circuit == id
	}
	for _, o := range p.Openings() {
		all[o.ID] = o.Circuit == id
	}
	for id, is := range all {
		if !is {
			delete(all, id)
		}
	}
	return all
}
