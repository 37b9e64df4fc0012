package index_test

import (
	"cmp"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// edited draws a house and some edits of it, with the index that followed.
func edited(t *rapid.T) (p plan.Plan, ix *index.Index) {
	p = plantest.House(rapid.Uint64Range(1, 9).Draw(t, "house"), rapid.IntRange(0, 40).Draw(t, "openings"))
	ix = index.New(p)
	for range rapid.IntRange(0, 12).Draw(t, "edits") {
		if next, err := plantest.Edit(t, p).Apply(p); err == nil {
			p, ix = next, ix.Updated(next)
		}
	}
	return p, ix
}

// that returns the nouns of a list that something holds of.
func that[T any](list func(func(T) bool), is func(T) bool) (all []T) {
	for x := range list {
		if is(x) {
			all = append(all, x)
		}
	}
	return all
}

// failing is a test of either kind.
type failing interface {
	Fatalf(format string, args ...any)
}

// asked fails where an index answers otherwise than a look at each noun of the plan does.
func asked[T comparable](t failing, what string, id plan.ID, got, want []T) {
	if !slices.Equal(got, want) {
		t.Fatalf("%s %s: %v, the plan says %v", what, id, got, want)
	}
}

// TestAnIndexSaysWhatThePlanDoes: what is looked up is what a look at each noun of the plan
// in turn finds.
func TestAnIndexSaysWhatThePlanDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, ix := edited(t)
		foot := func(name string) unit.Length { return unit.Length(rapid.IntRange(-10, 60).Draw(t, name)) * unit.Foot }
		area := geom.BoxOf(geom.Point{X: foot("x"), Y: foot("y")}, geom.Point{X: foot("to x"), Y: foot("to y")})
		saysWhatThePlanDoes(t, p, ix, area)
	})
}

func saysWhatThePlanDoes(t failing, p plan.Plan, ix *index.Index, area geom.Box) {
	var openings []*plan.Opening
	hosts := []plan.ID{"", "ozzzzzzzz", "rzzzzzzzz", "kzzzzzzzz"}
	hasClosed := false
	for _, l := range p.Levels {
		for o := range l.Openings.All() {
			openings, hosts = append(openings, o), append(hosts, o.ID)
		}
		for f := range l.Fixtures.All() {
			hosts = append(hosts, f.ID)
		}
		for r := range l.Rooms.All() {
			hosts = append(hosts, r.ID)
			hasClosed = hasClosed || r.IsClosedAnywhere()
			for i, s := range r.Sides {
				hosts = append(hosts, s.ID)
				if ref, ok := ix.Side(s.ID); !ok || ref.Room != r || ref.At != i || ref.Level != l.ID {
					t.Fatalf("side %s: %v", s.ID, ref)
				}
			}
		}
	}
	asked(t, "has closed", "", []bool{ix.HasClosed()}, []bool{hasClosed})
	slices.SortFunc(openings, func(a, b *plan.Opening) int { return cmp.Compare(a.ID, b.ID) })
	for _, id := range hosts {
		asked(t, "cables at", id, ix.CablesAt(id), that(p.Cables.All(), func(c *plan.Cable) bool { return c.From == id || c.To == id }))
		asked(t, "controls of", id, ix.ControlsOf(id), that(p.Controls.All(), func(c *plan.Control) bool { return slices.Contains(c.Loads, id) }))
		pair := append(that(p.Pairs.All(), func(x *plan.Pair) bool { return x.One == id || x.Other == id }), nil)[0]
		asked(t, "pair of", id, []*plan.Pair{ix.PairOf(id)}, []*plan.Pair{pair})
		var breaks []*plan.Break
		var fixtures []*plan.Fixture
		for _, l := range p.Levels {
			breaks = append(breaks, that(l.Breaks.All(), func(b *plan.Break) bool { return b.At.Host == id })...)
			fixtures = append(fixtures, that(l.Fixtures.All(), func(f *plan.Fixture) bool { return f.At.Host == id })...)
		}
		asked(t, "breaks on", id, ix.BreaksOn(id), breaks)
		asked(t, "fixtures on", id, ix.FixturesOn(id), fixtures)
		asked(t, "openings on", id, ix.OpeningsOn(id), that(slices.Values(openings), func(o *plan.Opening) bool { return o.At.Host == id }))
	}
	for c := range p.Circuits.All() {
		asked(t, "on circuit", c.ID, slices.Collect(ix.OnCircuit(c.ID)), that(slices.Values(openings), func(o *plan.Opening) bool { return o.Circuit == c.ID }))
	}
	for _, o := range openings {
		asked(t, "of kind", plan.ID(o.Kind), slices.Collect(ix.OfKind(o.Kind).All()), that(slices.Values(openings), func(other *plan.Opening) bool { return other.Kind == o.Kind }))
		viewOfOpening(t, p, ix, o)
	}
	joined := that(slices.Values(openings), func(o *plan.Opening) bool { return len(ix.CablesAt(o.ID)) > 0 })
	var want []index.Joined
	for _, o := range joined {
		_, l := p.Opening(o.ID)
		j := index.Joined{ID: o.ID, Level: l.ID, Was: o.Was, Tag: o.Tag, Kind: o.Kind, Status: o.Status}
		if place, ok := ix.Place(o.At); ok && place.Room != nil {
			j.Room = place.Room.ID
		}
		want = append(want, j)
	}
	var got []index.Joined
	for j := range ix.Joined().All() {
		got = append(got, *j)
	}
	asked(t, "joined", "", got, want)
	searched(t, p, ix, area)
}

// searched compares what a box meets with a look at the box of each noun, and the extent of
// a level with the least box round them all.
func searched(t failing, p plan.Plan, ix *index.Index, area geom.Box) {
	for _, l := range p.Levels {
		var all []plan.ID
		for r := range l.Rooms.All() {
			all = append(all, r.ID)
			for _, s := range r.Sides {
				all = append(all, s.ID)
			}
		}
		for b := range l.Breaks.All() {
			all = append(all, b.ID)
		}
		for f := range l.Fixtures.All() {
			all = append(all, f.ID)
		}
		for o := range l.Openings.All() {
			all = append(all, o.ID)
		}
		slices.Sort(all)
		var met []plan.ID
		var boxes []geom.Point
		for _, id := range all {
			if box, ok := ix.BoxOf(id); ok {
				boxes = append(boxes, box.Min, box.Max)
				if box.Intersects(area) {
					met = append(met, id)
				}
			}
		}
		asked(t, "met on", l.ID, ix.Search(l.ID, area), met)
		extent, ok := ix.Extent(l.ID)
		if ok != (len(boxes) > 0) || ok && extent != geom.BoxOf(boxes...) {
			t.Fatalf("level %s extends over %v, %v", l.ID, extent, ok)
		}
	}
}

// viewOfOpening compares the view of an opening with the plan.
func viewOfOpening(t failing, p plan.Plan, ix *index.Index, o *plan.Opening) {
	v, ok := ix.OpeningView(o.ID)
	_, l := p.Opening(o.ID)
	circuit, _ := p.Circuits.Get(o.Circuit)
	on, _ := p.Fixture(o.At.Host)
	if !ok || v.Opening != o || v.Level != l.ID || v.Circuit != circuit || v.On != on {
		t.Fatalf("the view of %s is %+v", o.ID, v)
	}
	asked(t, "cables in the view of", o.ID, v.Cables, ix.CablesAt(o.ID))
	host := o.At.Host
	for f, _ := p.Fixture(host); f != nil; f, _ = p.Fixture(host) {
		host = f.At.Host // what it stands on, down to a side or a room
	}
	room, _ := p.Room(host)
	if ref, isSide := ix.Side(host); isSide {
		room = ref.Room
		if o.At.Host == host && v.Side != ref.Side() {
			t.Fatalf("%s is in side %v", o.ID, v.Side)
		}
	}
	if v.Room != room {
		t.Fatalf("%s is in room %v, its host in %v", o.ID, v.Room, room)
	}
}

// TestAViewOfARoomShowsWhatIsInIt: side by side, in order, and the circuits that any of it is
// on with all else on them.
func TestAViewOfARoomShowsWhatIsInIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, ix := edited(t)
		showsWhatIsInRooms(t, p, ix)
	})
}

func showsWhatIsInRooms(t failing, p plan.Plan, ix *index.Index) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			v, ok := ix.RoomView(r.ID)
			if !ok || v.Room != r || v.Level != l.ID || len(v.Sides) != len(r.Sides) {
				t.Fatalf("the view of %s is %+v", r.ID, v)
			}
			flat := func(part plan.Part) []*plan.Opening {
				return that(l.Openings.All(), func(o *plan.Opening) bool { return o.At.Host == r.ID && o.At.Part == part })
			}
			asked(t, "ceiling of", r.ID, v.Ceiling, flat(plan.PartCeiling))
			asked(t, "floor of", r.ID, v.Floor, flat(plan.PartFloor))
			loads := v.Floor
			for i, s := range r.Sides {
				in := that(l.Openings.All(), func(o *plan.Opening) bool { return o.At.Host == s.ID })
				slices.SortStableFunc(in, func(a, b *plan.Opening) int { return cmp.Compare(a.At.Along, b.At.Along) })
				asked(t, "openings in", s.ID, v.Sides[i].Openings, in)
				loads = append(slices.Clone(loads), in...)
				end := func(id plan.ID) bool {
					return slices.ContainsFunc(in, func(o *plan.Opening) bool { return o.ID == id })
				}
				sorted := slices.SortedFunc(slices.Values(v.Sides[i].Cables), func(a, b *plan.Cable) int { return cmp.Compare(a.ID, b.ID) })
				asked(t, "cables in", s.ID, sorted, that(p.Cables.All(), func(c *plan.Cable) bool { return end(c.From) || end(c.To) }))
				var pairs []*plan.Pair
				for _, x := range v.Sides[i].Pairs {
					pairs = append(pairs, x.Pair)
					about, _ := p.Fixture(x.Pair.About)
					if line, _ := p.CenterLineOf(x.Pair.About); x.Line != line || about != nil && x.About != about.Kind || about == nil && x.About != "" {
						t.Fatalf("pair %s is about %v %q", x.Pair.ID, x.Line, x.About)
					}
				}
				slices.SortFunc(pairs, func(a, b *plan.Pair) int { return cmp.Compare(a.ID, b.ID) })
				asked(t, "pairs in", s.ID, pairs, that(p.Pairs.All(), func(x *plan.Pair) bool { return end(x.One) || end(x.Other) }))
			}
			isLoad := func(c *plan.Control) bool {
				return slices.ContainsFunc(loads, func(o *plan.Opening) bool { return slices.Contains(c.Loads, o.ID) })
			}
			controls := slices.SortedFunc(slices.Values(v.Controls), func(a, b *plan.Control) int { return cmp.Compare(a.ID, b.ID) })
			asked(t, "controls in", r.ID, controls, that(p.Controls.All(), isLoad))
			circuitsOfRoom(t, p, ix, v)
		}
	}
}

func circuitsOfRoom(t failing, p plan.Plan, ix *index.Index, v index.RoomView) {
	in := map[plan.ID]bool{}
	for _, l := range p.Levels {
		for o := range l.Openings.All() {
			if place, ok := ix.Place(o.At); ok && place.Room == v.Room {
				in[o.Circuit] = true
			}
		}
	}
	var got []*plan.Circuit
	for _, c := range v.Circuits {
		got = append(got, c.Circuit)
		var cables []*plan.Cable
		var openings []*plan.Opening
		for _, o := range c.Openings {
			openings = append(openings, o.Opening)
			if place, _ := ix.Place(o.Opening.At); place.Room != o.Room {
				t.Fatalf("on circuit %s, %s is in %v", c.Circuit.ID, o.Opening.ID, o.Room)
			}
			cables = append(cables, ix.CablesAt(o.Opening.ID)...)
		}
		asked(t, "on circuit", c.Circuit.ID, openings, slices.Collect(ix.OnCircuit(c.Circuit.ID)))
		slices.SortFunc(cables, func(a, b *plan.Cable) int { return cmp.Compare(a.ID, b.ID) })
		asked(t, "cables of circuit", c.Circuit.ID, c.Cables, slices.Compact(cables))
	}
	asked(t, "circuits in", v.Room.ID, got, that(p.Circuits.All(), func(c *plan.Circuit) bool { return in[c.ID] }))
}

// TestTouchedNamesWhatIsSeenOtherwise: a room or opening whose view shows other parts after
// an edit is named, and nothing is named but rooms and openings.
func TestTouchedNamesWhatIsSeenOtherwise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, ix := edited(t)
		for range rapid.IntRange(1, 8).Draw(t, "more") {
			next, err := plantest.Edit(t, p).Apply(p)
			if err != nil {
				continue
			}
			now := ix.Updated(next)
			namesWhatIsSeenOtherwise(t, ix, now)
			p, ix = next, now
		}
	})
}

func namesWhatIsSeenOtherwise(t failing, ix, now *index.Index) {
	rooms, openings := index.Touched(ix, now)
	for _, of := range []plan.Plan{ix.Plan(), now.Plan()} {
		for _, l := range of.Levels {
			for r := range l.Rooms.All() {
				a, _ := ix.RoomView(r.ID)
				b, _ := now.RoomView(r.ID)
				if !slices.Contains(rooms, r.ID) && !slices.Equal(a.Parts(), b.Parts()) {
					t.Fatalf("%s shows other parts and is not named", r.ID)
				}
			}
			for o := range l.Openings.All() {
				a, _ := ix.OpeningView(o.ID)
				b, _ := now.OpeningView(o.ID)
				same := a.Opening == b.Opening && a.Room == b.Room && a.Side == b.Side && a.On == b.On && a.Circuit == b.Circuit && slices.Equal(a.Cables, b.Cables)
				if !slices.Contains(openings, o.ID) && !same {
					t.Fatalf("%s is seen otherwise and is not named", o.ID)
				}
			}
		}
	}
}
