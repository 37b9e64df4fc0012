package index

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// inches returns a length of whole inches.
func inches(n int64) unit.Length { return unit.FeetInches(0, n, 0) }

func at(x, y int64) geom.Point { return geom.Point{X: inches(x), Y: inches(y)} }

// testID pads a name to a well-formed ID.
func testID(kind byte, name string) plan.ID { return plan.ID((string(kind) + name + "zzzzzzzz")[:9]) }

// rectangle returns a room whose sides are named n, e, s and w after its name.
func rectangle(name string, x, y, w, h int64) *plan.Room {
	r := &plan.Room{ID: testID(plan.KindRoom, name), Name: name, Use: plan.UseBedroom, Ceiling: inches(96)}
	for i, p := range []geom.Point{at(x, y), at(x+w, y), at(x+w, y+h), at(x, y+h)} {
		r.Sides = append(r.Sides, &plan.Side{ID: testID(plan.KindSide, name+string("nesw"[i])), Start: p, Kind: plan.SideWall})
	}
	return r
}

func side(room *plan.Room, compass byte) plan.ID {
	return testID(plan.KindSide, room.Name+string(compass))
}

func setOf[T plan.Noun](t *testing.T, nouns ...T) plan.Set[T] {
	t.Helper()
	s, err := plan.NewSet(nouns...)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// twoRooms stands two rooms of 10 × 12 ft side by side, a partition of 4-1/2 in
// between them, with a door of 30 in stored on the left room's east side.
func twoRooms(t *testing.T) (plan.Plan, *plan.Room, *plan.Room) {
	t.Helper()
	left, right := rectangle("aa", 0, 0, 120, 144), rectangle("bb", 0, 0, 120, 144)
	for _, s := range right.Sides {
		s.Start = s.Start.Add(geom.Point{X: unit.FeetInches(10, 4, 8)})
	}
	door := &plan.Break{ID: testID(plan.KindBreak, "dr"), Kind: plan.BreakDoor, At: plan.OnFace(side(left, 'e'), inches(12)), Width: inches(30), Head: inches(80)}
	p := plan.New("Test", testID(plan.KindLevel, "grnd"))
	l := *p.Levels[0]
	l.Rooms, l.Breaks = setOf(t, left, right), setOf(t, door)
	return p.WithLevel(&l), left, right
}

func TestBackToBackFacesAreFound(t *testing.T) {
	p, left, right := twoRooms(t)
	ix := New(p)
	got := ix.Behind(side(left, 'e'))
	if len(got) != 1 || got[0].Room != right || got[0].Gap != unit.FeetInches(0, 4, 8) || got[0].From != 0 || got[0].To != inches(144) {
		t.Errorf("behind the left room's east side: %+v", got)
	}
	for _, c := range []byte("nsw") {
		if got := ix.Behind(side(left, c)); got != nil {
			t.Errorf("behind side %c: %+v", c, got)
		}
	}
}

func TestOneDoorCutsBothFaces(t *testing.T) {
	p, left, right := twoRooms(t)
	ix := New(p)
	own, other := ix.Cuts(side(left, 'e')), ix.Cuts(side(right, 'w'))
	if len(own) != 1 || !own[0].IsOwn || own[0].From != inches(12) || own[0].To != inches(42) {
		t.Errorf("on its own side: %+v", own)
	}
	// The right room's west side runs up the sheet, from y = 144 to 0.
	if len(other) != 1 || other[0].IsOwn || other[0].From != inches(102) || other[0].To != inches(132) {
		t.Errorf("on the other face: %+v", other)
	}
}

func TestAnchorsComeToTheirPlace(t *testing.T) {
	p, left, _ := twoRooms(t)
	island := &plan.Fixture{ID: testID(plan.KindFixture, "island"), Kind: plan.FixtureIsland, At: plan.OnFloor(left.ID, at(60, 72)), Width: inches(40), Depth: inches(24), Height: inches(36)}
	turned := *island
	turned.ID, turned.Turn = testID(plan.KindFixture, "turned"), 1
	l := *p.Levels[0]
	l.Fixtures = setOf(t, island, &turned)
	ix := New(p.WithLevel(&l))
	on := func(f *plan.Fixture, part plan.Part, along, out int64) plan.Anchor {
		return plan.Anchor{Host: f.ID, Part: part, Along: inches(along), Out: inches(out)}
	}
	for _, tt := range []struct {
		name       string
		anchor     plan.Anchor
		foot, into geom.Point
	}{
		{"a north face runs to the right", plan.OnFace(side(left, 'n'), inches(20)), at(20, 0), geom.Point{Y: unit.Metre}},
		{"an east face runs down", plan.OnFace(side(left, 'e'), inches(20)), at(120, 20), geom.Point{X: -unit.Metre}},
		{"a south face runs to the left", plan.OnFace(side(left, 's'), inches(20)), at(100, 144), geom.Point{Y: -unit.Metre}},
		{"a west face runs up", plan.OnFace(side(left, 'w'), inches(20)), at(0, 124), geom.Point{X: unit.Metre}},
		{"a ceiling has no direction", plan.OnCeiling(left.ID, at(60, 60)), at(60, 60), geom.Point{}},
		{"the top of an island", on(island, plan.PartTop, 10, 6), at(50, 66), geom.Point{}},
		{"its front looks down the sheet", on(island, plan.PartFront, 10, 0), at(50, 84), geom.Point{Y: unit.Metre}},
		{"its back, seen from behind", on(island, plan.PartBack, 10, 0), at(70, 60), geom.Point{Y: -unit.Metre}},
		{"its left end, from the back on", on(island, plan.PartLeft, 6, 0), at(40, 66), geom.Point{X: -unit.Metre}},
		{"its right end, from the front on", on(island, plan.PartRight, 6, 0), at(80, 78), geom.Point{X: unit.Metre}},
		{"turned clockwise its front looks left", on(&turned, plan.PartFront, 10, 0), at(48, 62), geom.Point{X: -unit.Metre}},
	} {
		got, ok := ix.Place(tt.anchor)
		if !ok || got.Foot != tt.foot || got.Into != tt.into || got.Room != left {
			t.Errorf("%s: foot %v into %v, want %v into %v", tt.name, got.Foot, got.Into, tt.foot, tt.into)
		}
	}
	if _, ok := ix.Place(plan.OnFace(testID(plan.KindSide, "gone"), 0)); ok {
		t.Error("an anchor on no side has a place")
	}
}

// Fixtures that stand on each other in a ring cannot be drawn in a plan, but a
// hostile file can say so: looking them up must end.
func TestFixturesInARingEnd(t *testing.T) {
	a := &plan.Fixture{ID: testID(plan.KindFixture, "aa"), Width: inches(10), Depth: inches(10)}
	b := &plan.Fixture{ID: testID(plan.KindFixture, "bb"), Width: inches(10), Depth: inches(10)}
	a.At, b.At = plan.Anchor{Host: b.ID, Part: plan.PartTop}, plan.Anchor{Host: a.ID, Part: plan.PartTop}
	p := plan.New("Test", testID(plan.KindLevel, "grnd"))
	l := *p.Levels[0]
	l.Fixtures = setOf(t, a, b)
	if _, ok := New(p.WithLevel(&l)).Footprint(a); ok {
		t.Error("a fixture that stands on itself has a footprint")
	}
}

func TestAViewChangesWithWhatItShows(t *testing.T) {
	p, left, right := twoRooms(t)
	before := New(p)
	l := *p.Levels[0]
	door, _ := l.Breaks.Get(testID(plan.KindBreak, "dr"))
	wider := *door
	wider.Width = inches(32)
	l.Breaks = l.Breaks.With(&wider)
	after := before.Updated(p.WithLevel(&l))
	rooms, openings := Touched(before, after)
	if len(rooms) != 2 || rooms[0] != left.ID || rooms[1] != right.ID || len(openings) != 0 {
		t.Errorf("a door between two rooms touches %v and %v", rooms, openings)
	}
	if got := after.Cuts(side(right, 'w')); got[0].From != inches(100) {
		t.Errorf("the other face is cut from %v", got[0].From)
	}
}

// TestADoorTakesTheFloorOfItsSwing: the leaf of a door 30 in wide, from 12 to 42 in along
// an east face at x 120, sweeps 30 in into its room, or as far beyond the other face,
// which is a wall away at most. What is known by looking at the box is arithmetic on that.
func TestADoorTakesTheFloorOfItsSwing(t *testing.T) {
	line := geom.Segment{A: at(120, 0), B: at(120, 144)} // runs down the sheet, the room at its left
	line = geom.Segment{A: geom.FrameOf(line).Point(inches(12), 0), B: geom.FrameOf(line).Point(inches(42), 0)}
	for _, tt := range []struct {
		name     string
		kind     plan.BreakKind
		swing    plan.Swing
		from, to int64 // across the wall, of x
		source   string
	}{
		{"into the room", plan.BreakDoor, plan.SwingIn, 90, 132, "30 in of leaf; a foot of wall behind"},
		{"out of it", plan.BreakDoor, plan.SwingOut, 108, 162, "a foot of wall, then 30 in of leaf"},
		{"pocket", plan.BreakDoor, plan.SwingNone, 108, 132, "a foot of wall either way"},
		{"a window", plan.BreakWindow, plan.SwingIn, 108, 132, "no leaf that takes floor"},
		{"a fireplace", plan.BreakFireplace, plan.SwingNone, 90, 150, "as far out as it is wide, either way"},
	} {
		b := &plan.Break{Kind: tt.kind, Swing: tt.swing, Width: inches(30)}
		want := geom.Box{Min: at(tt.from, 12), Max: at(tt.to, 42)}
		if got := boxOver(b, line); got != want {
			t.Errorf("%s: %v, want %v (%s)", tt.name, got, want, tt.source)
		}
	}
}

// TestTheIndexFindsADoorByItsSwing asks for what is in a corner that only the leaf reaches.
func TestTheIndexFindsADoorByItsSwing(t *testing.T) {
	p, left, _ := twoRooms(t)
	for _, tt := range []struct {
		name        string
		swing       plan.Swing
		left, right bool // whether its leaf is met 20 in into the room
	}{
		{"in", plan.SwingIn, true, false},
		{"out", plan.SwingOut, false, true},
		{"none", plan.SwingNone, false, false},
	} {
		l := *p.Levels[0]
		for b := range l.Breaks.All() {
			if b.At.Host == side(left, 'e') {
				swung := *b
				swung.Swing = tt.swing
				l.Breaks = l.Breaks.With(&swung)
			}
		}
		ix := New(p.WithLevel(&l))
		// The faces are at x 120 and 124-1/2: beyond a foot of wall only a leaf is met.
		for room, probe := range map[string]struct {
			box  geom.Box
			want bool
		}{
			"left":  {geom.Box{Min: at(95, 20), Max: at(100, 25)}, tt.left},
			"right": {geom.Box{Min: at(140, 20), Max: at(145, 25)}, tt.right},
		} {
			if got := slices.Contains(ix.Search(l.ID, probe.box), testID(plan.KindBreak, "dr")); got != probe.want {
				t.Errorf("it swings %q: met in the %s room %v, want %v", tt.name, room, got, probe.want)
			}
		}
	}
}

// TestAnIndexKnowsWhatIsThere: sides and what is no side, of this plan and of none.
func TestAnIndexKnowsWhatIsThere(t *testing.T) {
	p, left, _ := twoRooms(t)
	ix := New(p)
	for id, want := range map[plan.ID]bool{
		side(left, 'n'): true, left.ID: true, p.Levels[0].ID: true,
		testID(plan.KindSide, "nowhere"): false, testID(plan.KindOpening, "nowhere"): false, testID(plan.KindRoom, "nowhere"): false,
	} {
		if got := ix.Has(id); got != want {
			t.Errorf("%s is there: %v, want %v", id, got, want)
		}
	}
}
