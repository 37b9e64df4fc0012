package index

import (
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestBehindAgreesWithALookAtEachInch holds what is back to back against a slow look: at
// each inch of a side, of all other faces that look the other way the one that is nearest,
// no farther off than a partition is thick.
func TestBehindAgreesWithALookAtEachInch(t *testing.T) {
	met := 0
	for seed := range 60 {
		r := rand.New(rand.NewPCG(uint64(seed), 1))
		var rooms []*plan.Room
		for i := range 2 + r.IntN(5) {
			room := rectangle("a"+string(rune('a'+i)), int64(r.IntN(200)), int64(r.IntN(200)), int64(8+r.IntN(120)), int64(8+r.IntN(120)))
			for _, s := range room.Sides {
				s.Kind = []plan.SideKind{plan.SideWall, plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen}[r.IntN(5)]
			}
			rooms = append(rooms, room)
		}
		ix := New(levelOf(t, rooms))
		for _, room := range rooms {
			for i, s := range room.Sides {
				line := room.Segment(i)
				got := ix.Behind(s.ID)
				if !slices.IsSortedFunc(got, func(a, b Backing) int { return int(a.From - b.From) }) {
					t.Fatalf("seed %d: behind %s from left to right: %+v", seed, s.ID, got)
				}
				for at := unit.Inch / 2; at < line.Length(); at += unit.Inch {
					want, gap := slowlyBehind(rooms, s, line, at)
					have, haveGap := plan.ID(""), unit.Length(0)
					for _, b := range got {
						if b.From <= at && at < b.To {
							have, haveGap = b.Side.ID, b.Gap
						}
					}
					if gap != haveGap || (want == "") != (have == "") {
						t.Fatalf("seed %d: behind %s at %s is %q %s off, want %q %s off", seed, s.ID, at.Inches(2), have, haveGap.Inches(2), want, gap.Inches(2))
					}
					if want != "" {
						met++
					}
				}
			}
		}
	}
	if met < 1000 {
		t.Errorf("only %d inches had anything behind: the test shows little", met)
	}
}

// slowlyBehind looks at every side of all rooms. Rooms stand square on the sheet.
func slowlyBehind(rooms []*plan.Room, s *plan.Side, line geom.Segment, at unit.Length) (nearest plan.ID, gap unit.Length) {
	if s.Kind == plan.SideOpen || s.Kind == plan.SideRailing {
		return "", 0
	}
	point := line.At(at)
	way := unitOf(line)
	gap = MaxPartition + 1
	for _, room := range rooms {
		for i, other := range room.Sides {
			o := room.Segment(i)
			if other == s || other.Kind == plan.SideOpen || other.Kind == plan.SideRailing || unitOf(o) != (geom.Point{X: -way.X, Y: -way.Y}) {
				continue
			}
			// The room lies to the right of its side as one walks along it on the sheet, y
			// down; what is behind lies to the left.
			var off unit.Length
			var holds bool
			if way.X != 0 {
				off, holds = (point.Y-o.A.Y)*way.X, min(o.A.X, o.B.X) <= point.X && point.X < max(o.A.X, o.B.X)
			} else {
				off, holds = (o.A.X-point.X)*way.Y, min(o.A.Y, o.B.Y) <= point.Y && point.Y < max(o.A.Y, o.B.Y)
			}
			if holds && off >= 0 && off < gap {
				nearest, gap = other.ID, off
			}
		}
	}
	if nearest == "" {
		return "", 0
	}
	return nearest, gap
}

func unitOf(s geom.Segment) geom.Point {
	sign := func(l unit.Length) unit.Length { return min(1, max(-1, l)) }
	return geom.Point{X: sign(s.B.X - s.A.X), Y: sign(s.B.Y - s.A.Y)}
}

// TestHowThickAPartitionMayBe: faces 16 in apart are one partition, as a masonry party
// wall of an old house may be; any more and they are two walls.
func TestHowThickAPartitionMayBe(t *testing.T) {
	for _, tt := range []struct {
		name string
		apart,
		nanos unit.Length
		want bool
	}{
		{"face to face", 0, 0, true},
		{"16 in", 16 * unit.Inch, 0, true},
		{"a nanometre more", 16 * unit.Inch, 1, false},
		{"17 in", 17 * unit.Inch, 0, false},
	} {
		left, right := rectangle("aa", 0, 0, 120, 144), rectangle("bb", 0, 0, 120, 144)
		for _, s := range right.Sides {
			s.Start.X += inches(120) + tt.apart + tt.nanos
		}
		ix := New(levelOf(t, []*plan.Room{left, right}))
		if got := ix.Behind(side(left, 'e')); len(got) == 1 != tt.want || len(got) == 1 && got[0].Gap != tt.apart {
			t.Errorf("%s: behind the east side %+v", tt.name, got)
		}
		if got := ix.Behind(side(right, 'w')); len(got) == 1 != tt.want {
			t.Errorf("%s: behind the west side %+v", tt.name, got)
		}
	}
}

// TestBackedByFindsTheRoomsInFront: who asks which rooms a side may stand behind is told
// each, also one that a nearer side hides, and not the side's own room without cause.
func TestBackedByFindsTheRoomsInFront(t *testing.T) {
	front, chase, far := rectangle("aa", 0, 0, 120, 120), rectangle("bb", 0, -8, 60, 4), rectangle("cc", 0, -112, 120, 100)
	ix := New(levelOf(t, []*plan.Room{front, chase, far}))
	for _, tt := range []struct {
		side plan.ID
		want []*plan.Room
	}{
		{side(far, 's'), []*plan.Room{front, chase}}, // 12 in off the one and 4 off the other
		{side(front, 'n'), []*plan.Room{chase, far}},
		{side(front, 'w'), nil},
		{side(front, 's'), nil},
	} {
		ref, _ := ix.Side(tt.side)
		var got []*plan.Room
		ix.backedBy(ref, func(r *plan.Room) { got = append(got, r) })
		if len(got) != len(tt.want) {
			t.Errorf("%s stands behind %d rooms, want %d", tt.side, len(got), len(tt.want))
		}
		for _, r := range tt.want {
			if !slices.Contains(got, r) {
				t.Errorf("%s stands behind %s too", tt.side, r.Name)
			}
		}
	}
}

// TestCutsComeFromLeftToRight: own breaks and those of the face behind, but for
// fireplaces, which open into their own room alone.
func TestCutsComeFromLeftToRight(t *testing.T) {
	p, left, right := twoRooms(t)
	l := *p.Levels[0]
	add := func(name string, kind plan.BreakKind, host plan.ID, along, width int64) {
		l.Breaks = l.Breaks.With(&plan.Break{ID: testID(plan.KindBreak, name), Kind: kind, At: plan.OnFace(host, inches(along)), Width: inches(width), Head: inches(80)})
	}
	add("aa", plan.BreakWindow, side(left, 'e'), 100, 20)
	add("bb", plan.BreakPassage, side(right, 'w'), 60, 24)    // 60 to 84 on the left room's face
	add("cc", plan.BreakFireplace, side(right, 'w'), 110, 20) // would be 14 to 34
	add("dd", plan.BreakWindow, side(right, 'w'), 0, 4)       // 140 to 144
	ix := New(p.WithLevel(&l))
	var got []unit.Length
	for _, c := range ix.Cuts(side(left, 'e')) {
		got = append(got, c.From/unit.Inch, c.To/unit.Inch)
	}
	if want := []unit.Length{12, 42, 60, 84, 100, 120, 140, 144}; !slices.Equal(got, want) {
		t.Errorf("the left room's east side is cut %v, want %v", got, want)
	}
}
