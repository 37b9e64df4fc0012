package index_test

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// variants returns a house with one of every noun, and that house after one edit each: every
// noun comes, goes and changes on the way from one to another.
func variants(t *testing.T) (all []plan.Plan) {
	p := plantest.House(3, 24)
	ids := plantest.NewIDs(99)
	do := func(p plan.Plan, edits ...edit.Edit) plan.Plan {
		t.Helper()
		for _, e := range edits {
			next, err := e.Apply(p)
			if err != nil {
				t.Fatalf("%s: %v", e.Name(), err)
			}
			p = next
		}
		return p
	}
	level := p.Levels[0]
	rooms, fixtures := slices.Collect(level.Rooms.All()), slices.Collect(level.Fixtures.All())
	openings := slices.Collect(level.Openings.All())
	kindOf := func(kind string) (of []*plan.Opening) {
		return that(slices.Values(openings), func(o *plan.Opening) bool { return o.Kind == kind })
	}
	duplexes, lights, switches := kindOf("duplex"), kindOf("ceiling-light"), kindOf("switch")
	pair := &plan.Pair{ID: ids.New(plan.KindPair), One: duplexes[0].ID, Other: duplexes[1].ID, About: fixtures[0].ID}
	control := &plan.Control{ID: ids.New(plan.KindControl), Letter: "z", Switches: []plan.ID{switches[0].ID}, Loads: []plan.ID{lights[0].ID, duplexes[2].ID}}
	p = do(p, edit.Add{Thing: pair}, edit.Add{Thing: control})
	cables, breaks := slices.Collect(p.Cables.All()), slices.Collect(level.Breaks.All())
	circuit := slices.Collect(p.Circuits.All())[0]
	repair, recontrol, renamed, wider := *pair, *control, *rooms[0], *fixtures[0]
	repair.Other, repair.About = duplexes[3].ID, duplexes[0].At.Host
	recontrol.Loads = []plan.ID{duplexes[4].ID}
	renamed.Use, wider.Height = plan.UseBasement, wider.Height+unit.Inch
	recircuit, recable := *circuit, *cables[len(cables)-1]
	recircuit.Amps, recable.To = 20, duplexes[5].ID
	noted := *duplexes[0]
	noted.Note = "noted"
	all = []plan.Plan{p}
	for _, e := range []edit.Edit{
		edit.Remove{Things: []plan.ID{pair.ID}}, edit.Change{Thing: &repair},
		edit.Remove{Things: []plan.ID{control.ID}}, edit.Change{Thing: &recontrol},
		edit.Remove{Things: []plan.ID{cables[0].ID}}, edit.Change{Thing: &recable},
		edit.Change{Thing: &recircuit}, edit.SetCircuit{ID: duplexes[1].ID}, edit.SetCircuit{ID: lights[0].ID, Circuit: circuit.ID},
		edit.ChangeKind{ID: duplexes[2].ID, Kind: "gfci", Gangs: 1}, edit.ChangeKind{ID: switches[0].ID, Kind: "dimmer", Gangs: 1},
		edit.ChangeOpening{Opening: noted}, edit.ChangeRoom{Room: renamed}, edit.RenameRoom{ID: rooms[1].ID, Title: "Basement"}, edit.ChangeFixture{Fixture: wider},
		edit.ChangeLevel{ID: level.ID, Title: "Basement", Elevation: level.Elevation},
		edit.MoveRoom{ID: rooms[0].ID, By: geom.Point{X: -200 * unit.Foot}},
		edit.Remove{Things: []plan.ID{breaks[0].ID}}, edit.Remove{Things: []plan.ID{fixtures[0].ID}, Cascade: true},
		edit.Remove{Things: []plan.ID{duplexes[0].ID, lights[0].ID}, Cascade: true}, edit.Remove{Things: []plan.ID{rooms[0].ID}, Cascade: true},
	} {
		all = append(all, do(p, e))
	}
	return append(all, plan.New("Nothing", level.ID), plan.New("Another", "vzzzz2222"))
}

// TestFromEachPlanToEachOther: an index that goes from one plan to any other answers as that
// plan does, names what is seen otherwise, and has forgotten what is gone.
func TestFromEachPlanToEachOther(t *testing.T) {
	all := variants(t)
	area := geom.BoxOf(geom.Point{X: 3 * unit.Foot, Y: 3 * unit.Foot}, geom.Point{X: 17 * unit.Foot, Y: 17 * unit.Foot})
	for i, p := range all {
		from := index.New(p)
		for j, q := range all {
			if i != 0 && j != 0 && (i+j)%3 != 0 {
				continue // each goes to a third of the others, and to the first and back
			}
			ix := from.Updated(q)
			saysWhatThePlanDoes(t, q, ix, area)
			showsWhatIsInRooms(t, q, ix)
			namesWhatIsSeenOtherwise(t, from, ix)
			for _, l := range p.Levels {
				for f := range l.Fixtures.All() {
					now, _ := q.Fixture(f.ID)
					if _, ok := ix.Place(plan.Anchor{Host: f.ID, Part: plan.PartTop}); ok != (now != nil) {
						t.Fatalf("from %d to %d: a place on %s: %v", i, j, f.ID, ok)
					}
				}
				for r := range l.Rooms.All() {
					if now, _ := q.Room(r.ID); ix.RoomOf(r.ID) != now {
						t.Fatalf("from %d to %d: room %s is %v", i, j, r.ID, ix.RoomOf(r.ID))
					}
				}
				for o := range l.Openings.All() {
					now, _ := q.Opening(o.ID)
					_, isListed := ix.OfKind(o.Kind).Get(o.ID)
					if _, ok := ix.OpeningView(o.ID); ok != (now != nil) || isListed != (now != nil && now.Kind == o.Kind) {
						t.Fatalf("from %d to %d: opening %s is seen: %v", i, j, o.ID, ok)
					}
				}
				if _, ok := ix.Extent(l.ID); ok && q.Level(l.ID) == nil {
					t.Fatalf("from %d to %d: level %s is gone and extends", i, j, l.ID)
				}
			}
			for r := range q.Levels[0].Rooms.All() {
				v, _ := ix.RoomView(r.ID)
				if want := r.Use == plan.UseBasement || r.Name == "Basement" || q.Levels[0].Name == "Basement"; v.InBasement != want {
					t.Fatalf("from %d to %d: %s is in a basement: %v", i, j, r.ID, v.InBasement)
				}
			}
		}
	}
}

// TestWallsThatGoStraightOn: past a corner in line, and past a side that is open to the wall of
// the room beyond; not round a corner, nor where that wall is set off.
func TestWallsThatGoStraightOn(t *testing.T) {
	const foot = unit.Foot
	ids := plantest.NewIDs(5)
	room := func(open int, corners ...geom.Point) *plan.Room {
		r := &plan.Room{ID: ids.New(plan.KindRoom), Name: "R", Ceiling: 8 * foot}
		for i, c := range corners {
			s := &plan.Side{ID: ids.New(plan.KindSide), Start: geom.Point{X: c.X * foot, Y: c.Y * foot}, Kind: plan.SideWall}
			if i == open {
				s.Kind = plan.SideOpen
			}
			r.Sides = append(r.Sides, s)
		}
		return r
	}
	at := func(x, y unit.Length) geom.Point { return geom.Point{X: x, Y: y} }
	for _, tt := range []struct {
		name string
		a, b *plan.Room
		past unit.Length
	}{
		{name: "alone", a: room(-1, at(0, 0), at(10, 0), at(10, 8), at(0, 8))},
		{name: "a corner in line", a: room(-1, at(0, 0), at(4, 0), at(10, 0), at(10, 8), at(0, 8)), past: 6 * foot},
		{name: "two corners in line", a: room(-1, at(0, 0), at(4, 0), at(7, 0), at(10, 0), at(10, 8), at(0, 8)), past: 6 * foot},
		{name: "open to the next room", a: room(1, at(0, 0), at(10, 0), at(10, 8), at(0, 8)), b: room(3, at(10, 0), at(15, 0), at(15, 8), at(10, 8)), past: 5 * foot},
		{name: "closed to the next room", a: room(-1, at(0, 0), at(10, 0), at(10, 8), at(0, 8)), b: room(3, at(10, 0), at(15, 0), at(15, 8), at(10, 8))},
		{name: "open, and set off", a: room(1, at(0, 0), at(10, 0), at(10, 8), at(0, 8)), b: room(3, at(10, 1), at(15, 1), at(15, 8), at(10, 8))},
		{name: "open, and aslant", a: room(1, at(0, 0), at(10, 0), at(10, 8), at(0, 8)), b: room(3, at(10, 0), at(15, 1), at(15, 8), at(10, 8))},
		{name: "a recess", a: room(-1, at(0, 0), at(4, 0), at(4, -2), at(10, -2), at(10, 8), at(0, 8))},
	} {
		p := plan.New("Walls", "vshed2222")
		l := *p.Levels[0]
		l.Rooms = l.Rooms.With(tt.a)
		if tt.b != nil {
			l.Rooms = l.Rooms.With(tt.b)
		}
		ix := index.New(p.WithLevel(&l))
		ref, _ := ix.Side(tt.a.Sides[0].ID)
		last, past := ix.EndOf(ref, true)
		if past != tt.past || (last != nil) != (past > 0) {
			t.Errorf("%s: %v past the right end, want %v", tt.name, past, tt.past)
		}
		if left, before := ix.EndOf(ref, false); left != nil || before != 0 {
			t.Errorf("%s: the left end goes on by %v", tt.name, before)
		}
		if last != nil {
			if back, whole := ix.EndOf(last, false); back.Key() != ref.Key() || whole != past-last.Line().Length()+ref.Line().Length() {
				t.Errorf("%s: back it is %v by %v", tt.name, back.Key(), whole)
			}
		}
	}
}
