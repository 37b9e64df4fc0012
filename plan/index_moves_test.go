package plan

import (
	"fmt"
	"slices"
	"testing"

	"studbay/plan/geom"
)

// twoLevels has a room on each level; things hang on one and are moved to the other.
func twoLevels(t *testing.T, first, second ID) (p Plan, low, up *Room) {
	t.Helper()
	low, up = rectangle("aa", 0, 0, 240, 240), rectangle("bb", 0, 0, 240, 240)
	p = New("Test", first)
	l, m := *p.Levels[0], Level{ID: second, Name: "Upper"}
	l.Rooms, m.Rooms = setOf(t, low), setOf(t, up)
	p = p.WithLevel(&l)
	return p.WithLevel(&m), low, up
}

// An island that goes to another level takes what is on it along as it is: the index
// must not lose the same noun while it leaves one level and joins another.
func TestThingsOnAFixtureFollowItToAnotherLevel(t *testing.T) {
	for _, toLower := range []bool{false, true} {
		p, low, up := twoLevels(t, testID(KindLevel, "n2"), testID(KindLevel, "w2"))
		from, to := low, up
		if toLower {
			from, to = up, low
		}
		island := Fixture{ID: testID(KindFixture, "ysa"), Kind: FixtureIsland, At: OnFloor(from.ID, at(120, 120)), Width: inches(60), Depth: inches(30), Height: inches(36)}
		sink := Fixture{ID: testID(KindFixture, "snk"), Kind: FixtureSink, At: Anchor{Host: island.ID, Part: PartTop, Along: inches(30), Out: inches(15)}, Width: inches(20), Depth: inches(15), Height: inches(1)}
		plug := Opening{ID: testID(KindOpening, "pg"), Tag: "A1", Kind: "island", At: Anchor{Host: island.ID, Part: PartFront, Along: inches(10)}, Height: CentreAt(inches(30)), Gangs: 1, Status: StatusNew}
		for _, e := range []Edit{AddFixture{Fixture: island}, AddFixture{Fixture: sink}, AddOpening{Opening: plug}} {
			next, err := e.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p = next
		}
		q, err := MoveFixture{ID: island.ID, To: OnFloor(to.ID, at(100, 100))}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		for name, way := range map[string][2]Plan{"there": {p, q}, "back": {q, p}} {
			got, want := NewIndex(way[0]).Updated(way[1]), NewIndex(way[1])
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

func sameViews(t *testing.T, name string, got, want *Index, id ID) {
	t.Helper()
	switch id.Kind() {
	case KindRoom:
		a, okA := got.RoomView(id)
		b, okB := want.RoomView(id)
		if okA != okB || a.Level != b.Level || !slices.Equal(a.Parts(), b.Parts()) {
			t.Errorf("%s: room %s shows other things", name, id)
		}
	case KindOpening:
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
		p, low, up := twoLevels(t, testID(KindLevel, "n2"), testID(KindLevel, "w2"))
		room, from, to := low, *p.Levels[0], *p.Levels[1]
		if flip {
			room, from, to = up, *p.Levels[1], *p.Levels[0]
		}
		from.Rooms, to.Rooms = from.Rooms.Without(room.ID), to.Rooms.With(room)
		q := p.WithLevel(&from).WithLevel(&to)
		sameIndex(t, "room", NewIndex(p).Updated(q), NewIndex(q))
	}
}

func TestTouchedNamesOnlyRoomsAndOpenings(t *testing.T) {
	p, left, _ := twoRooms(t)
	panel := Fixture{ID: testID(KindFixture, "pan22"), Kind: FixturePanel, At: OnFace(side(left, 'n'), inches(12)), Width: inches(15), Depth: inches(4), Height: inches(30)}
	plug := Opening{ID: testID(KindOpening, "pg"), Tag: "A1", Kind: "duplex", At: OnFace(side(left, 'w'), inches(12)), Height: CentreAt(inches(16)), Gangs: 1, Status: StatusNew}
	for _, e := range []Edit{AddFixture{Fixture: panel}, AddOpening{Opening: plug}} {
		var err error
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	q, err := Add{Thing: &Cable{ID: testID(KindCable, "rn"), From: panel.ID, To: plug.ID, Size: 12, Wires: 2, Ground: true}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	rooms, openings := Touched(NewIndex(p), NewIndex(q))
	if len(rooms) != 0 || !slices.Equal(openings, []ID{plug.ID}) {
		t.Errorf("a cable from the panel touches %v and %v", rooms, openings)
	}
}

// What a changed circuit touches is what is on it, before and after, found without
// looking through the plan.
func TestTouchedByACircuit(t *testing.T) {
	p, left, _ := twoRooms(t)
	circuit := func(id string, amps int) *Circuit {
		return &Circuit{ID: testID(KindCircuit, id), Number: id, Amps: amps, Volts: 120, Poles: 1}
	}
	edits := []Edit{Add{Thing: circuit("n2", 15)}, Add{Thing: circuit("w2", 15)}}
	for i, on := range []string{"n2", "n2", "w2", ""} {
		o := Opening{ID: testID(KindOpening, fmt.Sprint("pg", i+2)), Tag: fmt.Sprint("A", i+1), Kind: "duplex", At: OnFace(side(left, 'w'), inches(int64(12+20*i))), Height: CentreAt(inches(16)), Gangs: 1, Status: StatusNew}
		if on != "" {
			o.Circuit = testID(KindCircuit, on)
		}
		edits = append(edits, AddOpening{Opening: o})
	}
	for _, e := range edits {
		var err error
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	ix := NewIndex(p)
	q, err := Change{Thing: circuit("n2", 20)}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	want := []ID{testID(KindOpening, "pg2"), testID(KindOpening, "pg3")}
	if _, openings := Touched(ix, ix.Updated(q)); !slices.Equal(openings, want) {
		t.Errorf("touched %v, want %v", openings, want)
	}
	gone, err := Remove{Things: []ID{testID(KindCircuit, "n2")}, Cascade: true}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if _, openings := Touched(ix, ix.Updated(gone)); !slices.Equal(openings, want) {
		t.Errorf("without the circuit: touched %v, want %v", openings, want)
	}
	var on []ID
	for o := range ix.OnCircuit(testID(KindCircuit, "n2")) {
		on = append(on, o.ID)
	}
	if !slices.Equal(on, want) {
		t.Errorf("on the circuit: %v", on)
	}
}
