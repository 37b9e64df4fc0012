package wall

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

const inch = unit.Inch

// TestHowFarInABoxIsSet: half of it, up to a whole step; in the middle where it fits but not so.
func TestHowFarInABoxIsSet(t *testing.T) {
	for _, tt := range []struct{ size, room, step, want unit.Length }{
		{4 * inch, 100 * inch, inch, 2 * inch}, {4*inch + 1, 100 * inch, inch, 3 * inch}, {4*inch - 1, 100 * inch, inch, 2 * inch}, {3 * inch, 100 * inch, inch, 2 * inch},
		{3 * inch, 4 * inch, inch, 2 * inch}, {3 * inch, 4*inch - 1, inch, 2*inch - 1}, {3 * inch, 3 * inch, inch, 3 * inch / 2}, {3 * inch, 3*inch - 1, inch, 2 * inch},
	} {
		if got := setIn(tt.size, tt.room, tt.step); got != tt.want {
			t.Errorf("%v in %v by %v: %v, want %v", tt.size, tt.room, tt.step, got, tt.want)
		}
	}
	for l := -20; l <= 20; l++ {
		below, above := -30, 30 // whole threes
		for k := -30; k <= 30; k += 3 {
			if k <= l {
				below = k
			} else if above == 30 {
				above = k
			}
		}
		if below == l {
			above = l
		}
		if d, u := down(unit.Length(l), 3), up(unit.Length(l), 3); d != unit.Length(below) || u != unit.Length(above) {
			t.Errorf("%d by threes: %d and %d, want %d and %d", l, d, u, below, above)
		}
	}
}

// TestWhichMeetingsAreTold: each thing that meets several once; of two that meet each other alone
// the first; of one that meets a thing which meets others, itself too.
func TestWhichMeetingsAreTold(t *testing.T) {
	for seed := range uint64(500) {
		n := rand.New(rand.NewPCG(seed, 1))
		const things = 6
		var meets [things][things]bool
		m := make(meetings, things)
		for i := range things {
			for j := i + 1; j < things; j++ {
				if n.IntN(4) == 0 {
					meets[i][j], meets[j][i] = true, true
					m.add(i, j)
				}
			}
		}
		count := func(i int) (n, first int) {
			first = -1
			for j := range things {
				if meets[i][j] {
					if n++; first < 0 {
						first = j
					}
				}
			}
			return n, first
		}
		for i := range things {
			many, first := count(i)
			want := many > 1
			if many == 1 {
				others, _ := count(first)
				want = others > 1 || i < first
			}
			if m.tells(i) != want || m[i].count != many || many > 0 && m[i].first != first {
				t.Fatalf("seed %d, %v: of %d told %v, meets %d, first %d", seed, meets, i, m.tells(i), m[i].count, m[i].first)
			}
		}
	}
}

// Of the moves of a room past what it overlaps, left, right, up or down by whole inches and so
// that 4-1/2 in are left between, the shortest that takes it over no other.
func TestRoomsAreMovedApartTheShortestWay(t *testing.T) {
	type box struct{ x, y, w, d int }
	over := func(a, b box) bool { return a.x < b.x+b.w && b.x < a.x+a.w && a.y < b.y+b.d && b.y < a.y+a.d }
	of := func(id rune, b box) outline {
		x, y := unit.Length(b.x)*inch, unit.Length(b.y)*inch
		right, below := x+unit.Length(b.w)*inch, y+unit.Length(b.d)*inch
		edge := geom.Polygon{{X: x, Y: y}, {X: right, Y: y}, {X: right, Y: below}, {X: x, Y: below}}
		return outline{&plan.Room{ID: plan.ID(id)}, edge, edge.Box()}
	}
	moved, stuck := 0, 0
	for seed := range uint64(1000) {
		n := rand.New(rand.NewPCG(seed, 2))
		rooms := []box{{100, 100, 40, 30}}
		for range 1 + n.IntN(6) {
			rooms = append(rooms, box{40 + n.IntN(120), 50 + n.IntN(110), 10 + n.IntN(60), 10 + n.IntN(60)})
		}
		var others []outline
		for i, b := range rooms {
			others = append(others, of(rune('a'+i), b))
		}
		least, own := 0, rooms[0]
		for _, b := range rooms[1:] {
			if !over(own, b) {
				continue
			}
			// Whole inches with 4-1/2 between are 5 more than the edges lap.
			for _, by := range [][2]int{{-(own.x + own.w - b.x + 5), 0}, {b.x + b.w - own.x + 5, 0}, {0, -(own.y + own.d - b.y + 5)}, {0, b.y + b.d - own.y + 5}} {
				to := box{own.x + by[0], own.y + by[1], own.w, own.d}
				isFree := true
				for _, c := range rooms[1:] {
					isFree = isFree && !over(to, c)
				}
				if far := max(by[0], -by[0], by[1], -by[1]); isFree && (least == 0 || far < least) {
					least = far
				}
			}
		}
		got := moveApart(others[0], others, inch)
		if (len(got) == 1) != (least > 0) {
			t.Fatalf("seed %d: %v: %d moves, want one of %d in", seed, rooms, len(got), least)
		}
		if least == 0 {
			stuck++
			continue
		}
		moved++
		by := got[0].Edit.(edit.MoveRoom).By
		if far := max(by.X.Abs(), by.Y.Abs()); far != unit.Length(least)*inch || by.X != 0 && by.Y != 0 {
			t.Fatalf("seed %d: %v: moved by %v, want %d in", seed, rooms, by, least)
		}
		to := box{own.x + int(by.X/inch), own.y + int(by.Y/inch), own.w, own.d}
		for _, c := range rooms[1:] {
			if over(to, c) {
				t.Fatalf("seed %d: %v: moved by %v it is over %v", seed, rooms, by, c)
			}
		}
	}
	if moved < 200 || stuck < 50 {
		t.Errorf("%d moved, %d stuck", moved, stuck)
	}
}

// A box that is in another's place is set at the whole inch nearest to where it is of all at
// which it stands clear of other boxes, of breaks and of the ends; one that is there stays.
func TestBoxesAreSetBesideAsNearAsCanBe(t *testing.T) {
	set, none := 0, 0
	for seed := range uint64(1500) {
		n := rand.New(rand.NewPCG(seed, 3))
		length := 12 + n.IntN(60)
		v := rule.SideView{SideView: index.SideView{Side: &plan.Side{}, Length: unit.Length(length) * inch}}
		for range n.IntN(3) {
			from := n.IntN(length)
			b := &plan.Break{Sill: []unit.Length{0, 17 * inch, 18 * inch}[n.IntN(3)], Head: 80 * inch}
			v.Cuts = append(v.Cuts, index.Cut{Break: b, From: unit.Length(from) * inch, To: unit.Length(from+5+n.IntN(30)) * inch})
		}
		var boxes []placedBox
		for range 2 + n.IntN(6) { // 4 in square, at halves of an inch; it goes from 14 to 18 in up
			at := unit.Length(n.IntN(2*length)) * inch / 2
			bottom := unit.Length(10+n.IntN(9)) * inch
			o := &plan.Opening{Status: plan.StatusNew, At: plan.OnFace("s", at)}
			boxes = append(boxes, placedBox{frame.Rect{Left: at - 2*inch, Right: at + 2*inch, Bottom: bottom, Top: bottom + 4*inch}, o})
		}
		slices.SortStableFunc(boxes, func(a, b placedBox) int { return cmp.Compare(a.Left, b.Left) })
		own := &boxes[n.IntN(len(boxes))]
		own.Bottom, own.Top = 14*inch, 18*inch
		isClear := func(along unit.Length) bool {
			left, right := along-2*inch, along+2*inch
			isIt := left >= 0 && right <= v.Length
			for _, b := range boxes {
				isIt = isIt && (b.o == own.o || b.Right <= left || right <= b.Left || b.Top <= 14*inch || 18*inch <= b.Bottom)
			}
			for _, c := range v.Cuts {
				isIt = isIt && (c.To <= left || right <= c.From || 18*inch <= c.Break.Sill)
			}
			return isIt
		}
		if isClear(own.o.At.Along) {
			continue // it is in nothing's place
		}
		least := unit.Length(-1)
		for along := unit.Length(0); along <= v.Length; along += inch {
			if off := (along - own.o.At.Along).Abs(); isClear(along) && (least < 0 || off < least) {
				least = off
			}
		}
		inPlace := own.o.At.Along >= 2*inch && own.o.At.Along <= v.Length-2*inch
		offers := setBeside(v, pilesOf(boxes), *own, inch)
		if inPlace && (len(offers) == 1) != (least >= 0) {
			t.Fatalf("seed %d: %+v among %+v and %+v on %d in: %d offers, the nearest is %v off", seed, own.Rect, boxes, v.Cuts, length, len(offers), least)
		}
		if len(offers) == 0 {
			none++
			continue
		}
		set++
		to := offers[0].Edit.(edit.MoveOpening).To.Along
		if off := (to - own.o.At.Along).Abs(); !isClear(to) || inPlace && off != least {
			t.Fatalf("seed %d: %+v among %+v and %+v on %d in: set at %v, the nearest is %v off", seed, own.Rect, boxes, v.Cuts, length, to, least)
		}
		own.o.Status = plan.StatusExisting
		if again := setBeside(v, pilesOf(boxes), *own, inch); again != nil {
			t.Fatalf("seed %d: what is there is set elsewhere", seed)
		}
	}
	if set < 200 || none < 20 {
		t.Errorf("%d were set, %d not", set, none)
	}
}
