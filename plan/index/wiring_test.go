package index

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// wired is a room with three receptacles, and the cables and circuit that are given.
func wired(t *testing.T, circuit plan.ID, cables ...*plan.Cable) plan.Plan {
	t.Helper()
	p, left, _ := twoRooms(t)
	l := *p.Levels[0]
	for i, name := range []string{"aa", "bb", "cc"} {
		o := &plan.Opening{ID: testID(plan.KindOpening, name), Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace(side(left, 'n'), inches(int64(20+20*i)))}
		if name != "cc" {
			o.Circuit = circuit
		}
		l.Openings = l.Openings.With(o)
	}
	p = p.WithLevel(&l)
	p.Cables = setOf(t, cables...)
	return p
}

// An index that follows a plan answers what a new one of that plan does, of what is wired:
// at either end of a cable, and on a circuit.
func TestTheIndexFollowsCablesAndCircuits(t *testing.T) {
	a, b, c := testID(plan.KindOpening, "aa"), testID(plan.KindOpening, "bb"), testID(plan.KindOpening, "cc")
	first, second := testID(plan.KindCircuit, "one"), testID(plan.KindCircuit, "two")
	run := &plan.Cable{ID: testID(plan.KindCable, "run"), From: a, To: b, Size: 12, Wires: 2, Ground: true}
	moved := *run
	moved.To = c
	longer := moved
	longer.Length = 9 * unit.Foot
	other := &plan.Cable{ID: testID(plan.KindCable, "other"), From: b, To: c, Size: 14, Wires: 2}
	ix := New(wired(t, ""))
	for _, step := range []struct {
		name   string
		now    plan.Plan
		cables map[plan.ID][]*plan.Cable
		on     map[plan.ID]int // openings of a circuit
	}{
		{"a cable is drawn", wired(t, "", run), map[plan.ID][]*plan.Cable{a: {run}, b: {run}}, nil},
		{"it goes to another box", wired(t, "", &moved), map[plan.ID][]*plan.Cable{a: {&moved}, c: {&moved}}, nil},
		{"its length is known", wired(t, "", &longer), map[plan.ID][]*plan.Cable{a: {&longer}, c: {&longer}}, nil},
		{"another is drawn", wired(t, "", &longer, other), map[plan.ID][]*plan.Cable{a: {&longer}, b: {other}, c: {other, &longer}}, nil},
		{"two boxes join a circuit", wired(t, first, &longer, other), map[plan.ID][]*plan.Cable{a: {&longer}, b: {other}, c: {other, &longer}}, map[plan.ID]int{first: 2}},
		{"and change to another", wired(t, second, other), map[plan.ID][]*plan.Cable{b: {other}, c: {other}}, map[plan.ID]int{second: 2}},
		{"and leave it", wired(t, ""), nil, nil},
	} {
		ix = ix.Updated(step.now)
		for _, id := range []plan.ID{a, b, c} {
			if got := ix.CablesAt(id); !slices.Equal(got, step.cables[id]) {
				t.Errorf("%s: at %s end %d cables, want %d", step.name, id, len(got), len(step.cables[id]))
			}
		}
		for _, id := range []plan.ID{first, second} {
			n := 0
			for o := range ix.OnCircuit(id) {
				if n++; o.Circuit != id {
					t.Errorf("%s: %s is on %s and is found on %s", step.name, o.ID, o.Circuit, id)
				}
			}
			if n != step.on[id] {
				t.Errorf("%s: %d openings on %s, want %d", step.name, n, id, step.on[id])
			}
		}
	}
}

// What is mounted on an island is seen in the view of its room.
func TestARoomShowsWhatIsOnItsFixtures(t *testing.T) {
	p, left, _ := twoRooms(t)
	island := &plan.Fixture{ID: testID(plan.KindFixture, "island"), Kind: plan.FixtureIsland, At: plan.OnFloor(left.ID, at(60, 72)), Width: inches(40), Depth: inches(24), Height: inches(36)}
	o := &plan.Opening{ID: testID(plan.KindOpening, "aa"), Kind: "duplex", Gangs: 1, At: plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: inches(10)}}
	l := *p.Levels[0]
	l.Fixtures, l.Openings = setOf(t, island), setOf(t, o)
	v, ok := New(p.WithLevel(&l)).RoomView(left.ID)
	if !ok || !slices.Contains(v.Parts(), any(o)) || !slices.Contains(v.Parts(), any(island)) {
		t.Errorf("the room does not show the island and the receptacle in its front: %v", v.Parts())
	}
}
