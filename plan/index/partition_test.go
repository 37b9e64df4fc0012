package index

import (
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
)

// cornered returns a room of any corners whose sides are named a, b, c ... after its name.
func cornered(name string, points ...geom.Point) *plan.Room {
	r := &plan.Room{ID: testID(plan.KindRoom, name), Name: name, Use: plan.UseBedroom, Ceiling: inches(96)}
	for i, p := range points {
		r.Sides = append(r.Sides, &plan.Side{ID: testID(plan.KindSide, name+string(rune('a'+i))), Start: p, Kind: plan.SideWall})
	}
	return r
}

func levelOf(t *testing.T, rooms []*plan.Room, breaks ...*plan.Break) plan.Plan {
	t.Helper()
	p := plan.New("Test", testID(plan.KindLevel, "grnd"))
	l := *p.Levels[0]
	l.Rooms, l.Breaks = setOf(t, rooms...), setOf(t, breaks...)
	return p.WithLevel(&l)
}

// A slider that reaches past the end of the side behind it cuts only what is there,
// and says where it would begin, so that its panels stay where they are.
func TestACutKnowsWhereItsBreakBegins(t *testing.T) {
	long, short := rectangle("aa", 0, 0, 120, 144), rectangle("bb", 0, 24, 120, 60)
	for _, s := range short.Sides {
		s.Start.X += inches(124)
	}
	slider := &plan.Break{ID: testID(plan.KindBreak, "slide"), Kind: plan.BreakSlider, At: plan.OnFace(side(long, 'e'), inches(60)),
		Width: inches(72), Head: inches(80), Panels: []plan.Panel{plan.PanelFixed, plan.PanelMoving, plan.PanelMoving}}
	ix := New(levelOf(t, []*plan.Room{long, short}, slider))
	got := ix.Cuts(side(short, 'w'))
	// The slider runs from y 60 to 132; the short side from y 84 up to y 24.
	if len(got) != 1 || got[0].From != 0 || got[0].To != inches(24) || got[0].Start != inches(-48) || got[0].IsOwn {
		t.Errorf("the short side is cut %+v", got)
	}
	if own := ix.Cuts(side(long, 'e')); len(own) != 1 || own[0].Start != inches(60) || own[0].From != inches(60) {
		t.Errorf("the long side is cut %+v", own)
	}
}

// The two faces of a stub wall that stands into a room are one partition, and a
// passage through it cuts both.
func TestAStubWallInsideARoomIsAPartition(t *testing.T) {
	r := cornered("u",
		at(0, 0), at(100, 0), at(100, 60), at(105, 60), at(105, 0), at(200, 0), at(200, 144), at(0, 144))
	passage := &plan.Break{ID: testID(plan.KindBreak, "pass"), Kind: plan.BreakPassage, At: plan.OnFace(r.Sides[1].ID, inches(10)), Width: inches(36), Head: inches(80)}
	ix := New(levelOf(t, []*plan.Room{r}, passage))
	if got := ix.Behind(r.Sides[3].ID); len(got) != 1 || got[0].Side != r.Sides[1] || got[0].Gap != inches(5) {
		t.Errorf("behind the stub: %+v", got)
	}
	if got := ix.Cuts(r.Sides[3].ID); len(got) != 1 || got[0].From != inches(14) || got[0].To != inches(50) || got[0].IsOwn {
		t.Errorf("the far face of the stub is cut %+v", got)
	}
	if got := ix.Behind(r.Sides[6].ID); got != nil {
		t.Errorf("behind the outside wall: %+v", got)
	}
}

// Opposite walls of a room narrower than a partition is thick are not one.
func TestOppositeWallsAreNoPartition(t *testing.T) {
	r := rectangle("aa", 0, 0, 12, 100)
	ix := New(levelOf(t, []*plan.Room{r}))
	if got := ix.Behind(side(r, 'e')); got != nil {
		t.Errorf("behind the east side: %+v", got)
	}
}

// Two rooms that share one slanted line are back to back with no gap, although places
// on a slanted line are rounded.
func TestRoomsThatShareASlantedFace(t *testing.T) {
	for _, d := range []geom.Point{{X: 0, Y: 0}, {X: 1, Y: 0}, {X: 0, Y: 1}, {X: -1, Y: 1}} {
		a, b := at(0, 0), at(101, 37).Add(d)
		left := cornered("aa", a, b, at(101, 200), at(0, 200))
		right := cornered("bb", b, a, at(0, -100), at(101, -100))
		ix := New(levelOf(t, []*plan.Room{left, right}))
		got := ix.Behind(left.Sides[0].ID)
		if len(got) != 1 || got[0].Gap < 0 || got[0].Gap > plan.Slack {
			t.Errorf("shifted by %v: behind the slanted side %+v", d, got)
		}
	}
	// Another face on the same line, shorter: its ends lie off it by rounding alone.
	for i := int64(1); i < 400; i++ {
		a, b := at(0, 0), at(997, 13*i)
		line := geom.Segment{A: a, B: b}
		left := cornered("aa", a, b, at(997, 2000), at(0, 2000))
		right := cornered("bb", line.At(line.Length()*2/3), line.At(line.Length()/3), at(300, -500), at(600, -500))
		ix := New(levelOf(t, []*plan.Room{left, right}))
		if got := ix.Behind(left.Sides[0].ID); len(got) != 1 || got[0].Gap < 0 || got[0].Gap > plan.Slack {
			t.Errorf("slope %d: %+v", i, got)
		}
		if got := ix.Behind(right.Sides[0].ID); len(got) != 1 || got[0].Gap < 0 || got[0].Gap > plan.Slack {
			t.Errorf("slope %d from behind: %+v", i, got)
		}
	}
}

func TestNothingStandsBehindAnOpenSide(t *testing.T) {
	for _, kind := range []plan.SideKind{plan.SideOpen, plan.SideRailing} {
		p, left, right := twoRooms(t)
		open := *left.Sides[1]
		open.Kind = kind
		r := *left
		r.Sides = []*plan.Side{left.Sides[0], &open, left.Sides[2], left.Sides[3]}
		l := *p.Levels[0]
		l.Rooms = l.Rooms.With(&r)
		ix := New(p.WithLevel(&l))
		if got := ix.Behind(side(left, 'e')); got != nil {
			t.Errorf("behind a side of kind %s: %+v", kind, got)
		}
		if got := ix.Behind(side(right, 'w')); got != nil {
			t.Errorf("a side of kind %s is behind a wall: %+v", kind, got)
		}
	}
}

// A break kept from a side that has become shorter cuts nothing beyond its end.
func TestABreakPastTheEndCutsNothing(t *testing.T) {
	r := rectangle("aa", 0, 0, 120, 144)
	gone := &plan.Break{ID: testID(plan.KindBreak, "gone"), Kind: plan.BreakDoor, At: plan.OnFace(side(r, 'n'), inches(130)), Width: inches(30), Head: inches(80)}
	if got := New(levelOf(t, []*plan.Room{r}, gone)).Cuts(side(r, 'n')); got != nil {
		t.Errorf("cut %+v", got)
	}
}

// A thin room between two others: what lies beyond it is not behind.
func TestTheNearestFaceIsBehind(t *testing.T) {
	front, chase, far := rectangle("aa", 0, 0, 120, 120), rectangle("bb", 0, -8, 60, 4), rectangle("cc", 0, -112, 120, 100)
	far.Sides[2].Start, far.Sides[3].Start = at(120, -12), at(0, -12)
	ix := New(levelOf(t, []*plan.Room{front, chase, far}))
	got := ix.Behind(side(front, 'n'))
	if len(got) != 2 || got[0].Room != chase || got[1].Room != far || got[1].From != inches(60) || got[1].To != inches(120) {
		t.Errorf("behind the front room: %+v", got)
	}
}
