package index

import (
	"fmt"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
)

// twoLevels has a room on each level; things hang on one and are moved to the other.
func twoLevels(t *testing.T, first, second plan.ID) (p plan.Plan, low, up *plan.Room) {
	t.Helper()
	low, up = rectangle("aa", 0, 0, 240, 240), rectangle("bb", 0, 0, 240, 240)
	p = plan.New("Test", first)
	l, m := *p.Levels[0], plan.Level{ID: second, Name: "Upper"}
	l.Rooms, m.Rooms = setOf(t, low), setOf(t, up)
	p = p.WithLevel(&l)
	return p.WithLevel(&m), low, up
}

// An island that goes to another level takes what is on it along as it is: the index
// must not lose the same noun while it leaves one level and joins another.
func TestThingsOnAFixtureFollowItToAnotherLevel(t *testing.T) {
	for _, toLower := range []bool{false, true} {
		p, low, up := twoLevels(t, testID(plan.KindLevel, "n2"), testID(plan.KindLevel, "w2"))
		from, to := low, up
		if toLower {
			from, to = up, low
		}
		island := plan.Fixture{ID: testID(plan.KindFixture, "ysa"), Kind: plan.FixtureIsland, At: plan.OnFloor(from.ID, at(120, 120)), Width: inches(60), Depth: inches(30), Height: inches(36)}
		sink := plan.Fixture{ID: testID(plan.KindFixture, "snk"), Kind: plan.FixtureSink, At: plan.Anchor{Host: island.ID, Part: plan.PartTop, Along: inches(30), Out: inches(15)}, Width: inches(20), Depth: inches(15), Height: inches(1)}
		plug := plan.Opening{ID: testID(plan.KindOpening, "pg"), Tag: "A1", Kind: "island", At: plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: inches(10)}, Height: plan.CentreAt(inches(30)), Gangs: 1, Status: plan.StatusNew}
		for _, e := range []edit.Edit{edit.AddFixture{Fixture: island}, edit.AddFixture{Fixture: sink}, edit.AddOpening{Opening: plug}} {
			next, err := e.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p = next
		}
		q, err := edit.MoveFixture{ID: island.ID, To: plan.OnFloor(to.ID, at(100, 100))}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		for name, way := range map[string][2]plan.Plan{"there": {p, q}, "back": {q, p}} {
			got, want := New(way[0]).Updated(way[1]), New(way[1])
			sameIndex(t, fmt.Sprintf("to lower %v, %s", toLower, name), got, want)
		}
	}
}

// sameIndex compares what two indexes of one plan answer.
func sameIndex(t *testing.T, name string, got, want *Index) {
	t.Helper()
	far := geom.Box{Min: at(-9999, -9999), Max: at(9999, 9999)}
	for _, l := range want.Plan().Levels {
		ids := want.Search(l.ID, far)
		if found := got.Search(l.ID, far); !slices.Equal(found, ids) {
			t.Errorf("%s: level %s holds %v, want %v", name, l.ID, found, ids)
		}
		a, okA := got.Extent(l.ID)
		b, okB := want.Extent(l.ID)
		if a != b || okA != okB {
			t.Errorf("%s: level %s extends %v %v, want %v %v", name, l.ID, a, okA, b, okB)
		}
		for _, id := range ids {
			if !slices.Equal(got.OpeningsOn(id), want.OpeningsOn(id)) || !slices.Equal(got.FixturesOn(id), want.FixturesOn(id)) ||
				!slices.Equal(got.BreaksOn(id), want.BreaksOn(id)) || !slices.Equal(got.CablesAt(id), want.CablesAt(id)) {
				t.Errorf("%s: other things hang on %s", name, id)
			}
			a, _ := got.BoxOf(id)
			b, _ := want.BoxOf(id)
			if a != b {
				t.Errorf("%s: %s stands in %v, want %v", name, id, a, b)
			}
			sameViews(t, name, got, want, id)
		}
	}
}

func sameViews(t *testing.T, name string, got, want *Index, id plan.ID) {
	t.Helper()
	switch id.Kind() {
	case plan.KindRoom:
		a, okA := got.RoomView(id)
		b, okB := want.RoomView(id)
		if okA != okB || a.Level != b.Level || !slices.Equal(a.Parts(), b.Parts()) {
			t.Errorf("%s: room %s shows other things", name, id)
		}
	case plan.KindOpening:
		a, okA := got.OpeningView(id)
		b, okB := want.OpeningView(id)
		if okA != okB || a.Level != b.Level || a.On != b.On || !slices.Equal(a.Parts(), b.Parts()) {
			t.Errorf("%s: opening %s shows other things", name, id)
		}
	}
}

// A room of the same noun may stand on another level of a later plan.
func TestARoomMayGoToAnotherLevel(t *testing.T) {
	for _, flip := range []bool{false, true} {
		p, low, up := twoLevels(t, testID(plan.KindLevel, "n2"), testID(plan.KindLevel, "w2"))
		room, from, to := low, *p.Levels[0], *p.Levels[1]
		if flip {
			room, from, to = up, *p.Levels[1], *p.Levels[0]
		}
		from.Rooms, to.Rooms = from.Rooms.Without(room.ID), to.Rooms.With(room)
		q := p.WithLevel(&from).WithLevel(&to)
		sameIndex(t, "room", New(p).Updated(q), New(q))
	}
}

func TestTouchedNamesOnlyRoomsAndOpenings(t *testing.T) {
	p, left, _ := twoRooms(t)
	panel := plan.Fixture{ID: testID(plan.KindFixture, "pan22"), Kind: plan.FixturePanel, At: plan.OnFace(side(left, 'n'), inches(12)), Width: inches(15), Depth: inches(4), Height: inches(30)}
	plug := plan.Opening{ID: testID(plan.KindOpening, "pg"), Tag: "A1", Kind: "duplex", At: plan.OnFace(side(left, 'w'), inches(12)), Height: plan.CentreAt(inches(16)), Gangs: 1, Status: plan.StatusNew}
	for _, e := range []edit.Edit{edit.AddFixture{Fixture: panel}, edit.AddOpening{Opening: plug}} {
		var err error
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	q, err := edit.Add{Thing: &plan.Cable{ID: testID(plan.KindCable, "rn"), From: panel.ID, To: plug.ID, Size: 12, Wires: 2, Ground: true}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	rooms, openings := Touched(New(p), New(q))
	if !slices.Equal(rooms, []plan.ID{left.ID}) || !slices.Equal(openings, []plan.ID{plug.ID}) {
		t.Errorf("a cable from the panel touches %v and %v", rooms, openings)
	}
}

// What a changed circuit touches is what is on it, before and after, found without
// looking through the plan.
func TestTouchedByACircuit(t *testing.T) {
	p, left, _ := twoRooms(t)
	circuit := func(id string, amps int) *plan.Circuit {
		return &plan.Circuit{ID: testID(plan.KindCircuit, id), Number: id, Amps: amps, Volts: 120, Poles: 1}
	}
	edits := []edit.Edit{edit.Add{Thing: circuit("n2", 15)}, edit.Add{Thing: circuit("w2", 15)}}
	for i, on := range []string{"n2", "n2", "w2", ""} {
		o := plan.Opening{ID: testID(plan.KindOpening, fmt.Sprint("pg", i+2)), Tag: fmt.Sprint("A", i+1), Kind: "duplex", At: plan.OnFace(side(left, 'w'), inches(int64(12+20*i))), Height: plan.CentreAt(inches(16)), Gangs: 1, Status: plan.StatusNew}
		if on != "" {
			o.Circuit = testID(plan.KindCircuit, on)
		}
		edits = append(edits, edit.AddOpening{Opening: o})
	}
	for _, e := range edits {
		var err error
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	ix := New(p)
	q, err := edit.Change{Thing: circuit("n2", 20)}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	want := []plan.ID{testID(plan.KindOpening, "pg2"), testID(plan.KindOpening, "pg3")}
	if _, openings := Touched(ix, ix.Updated(q)); !slices.Equal(openings, want) {
		t.Errorf("touched %v, want %v", openings, want)
	}
	gone, err := edit.Remove{Things: []plan.ID{testID(plan.KindCircuit, "n2")}, Cascade: true}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if _, openings := Touched(ix, ix.Updated(gone)); !slices.Equal(openings, want) {
		t.Errorf("without the circuit: touched %v, want %v", openings, want)
	}
	var on []plan.ID
	for o := range ix.OnCircuit(testID(plan.KindCircuit, "n2")) {
		on = append(on, o.ID)
	}
	if !slices.Equal(on, want) {
		t.Errorf("on the circuit: %v", on)
	}
}
