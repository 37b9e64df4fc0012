package receptacle

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

const inch = unit.Inch

// A foyer's walls read inch by inch (210.52(I), with (A)(2) round corners): doors to the floor
// and sides of glass or none end a wall space, corners do not; those are told round corners of
// which each straight part is shorter than 3 ft and all of it is not.
func TestWallSpacesInchByInch(t *testing.T) {
	const least = 36
	long := 0
	for seed := range uint64(2000) {
		n := rand.New(rand.NewPCG(seed, 1))
		v := &index.RoomView{}
		var isWall []bool // inch by inch round the room
		var side []int    // of each inch
		var from []int    // of each side
		for i := range 3 + n.IntN(3) {
			length := 4 + n.IntN(45)
			kind := []plan.SideKind{plan.SideWall, plan.SideWall, plan.SideWall, plan.SideWall, plan.SideGlass, plan.SideOpen}[n.IntN(6)]
			s := index.SideView{Side: &plan.Side{Kind: kind}, Length: unit.Length(length) * inch}
			here := make([]bool, length)
			for k := range here {
				here[k] = kind == plan.SideWall
			}
			for range n.IntN(3) {
				at := n.IntN(length)
				to := min(at+1+n.IntN(20), length)
				b := &plan.Break{Sill: unit.Length(n.IntN(2)) * 30 * inch}
				s.Cuts = append(s.Cuts, index.Cut{Break: b, From: unit.Length(at) * inch, To: unit.Length(to) * inch})
				for k := at; k < to && b.Sill == 0; k++ {
					here[k] = false
				}
			}
			slices.SortFunc(s.Cuts, func(a, b index.Cut) int { return int((a.From - b.From) / inch) })
			v.Sides, from = append(v.Sides, s), append(from, len(isWall))
			for range here {
				side = append(side, i)
			}
			isWall = append(isWall, here...)
		}
		// The straight parts, and the spaces that they string up to, from the first inch past a break.
		around, start := len(isWall), max(slices.Index(isWall, false), 0)
		var straight, want []string
		var space []string
		total, isShort, piece := 0, true, 0
		endPiece := func(last int) {
			if piece == 0 {
				return
			}
			end := last - from[side[last]] + 1
			space = append(space, fmt.Sprintf("%d:%d-%d", side[last], end-piece, end))
			straight = append(straight, space[len(space)-1])
			total, isShort, piece = total+piece, isShort && piece < least, 0
		}
		endSpace := func() {
			if isShort && total >= least {
				want = append(want, fmt.Sprint(space))
			}
			space, total, isShort = nil, 0, true
		}
		for k := range around {
			at := (start + k) % around
			if !isWall[at] {
				endSpace()
				continue
			}
			piece++
			if next := (at + 1) % around; !isWall[next] || side[next] != side[at] || k == around-1 {
				endPiece(at)
			}
		}
		endSpace()
		var parts, got []string
		for i := range v.Sides {
			for _, w := range wallsBetween(&v.Sides[i]) {
				parts = append(parts, fmt.Sprintf("%d:%d-%d", i, w.from/inch, w.to/inch))
			}
		}
		for _, space := range roundCorners(v, least*inch) {
			var pieces []string
			for _, p := range space {
				i := slices.IndexFunc(v.Sides, func(s index.SideView) bool { return s.Side == p.side.Side })
				pieces = append(pieces, fmt.Sprintf("%d:%d-%d", i, p.from/inch, p.to/inch))
			}
			got = append(got, fmt.Sprint(pieces))
		}
		for _, list := range [][]string{straight, want, parts, got} {
			slices.Sort(list)
		}
		if !slices.Equal(parts, straight) || !slices.Equal(got, want) {
			t.Fatalf("seed %d: walls %v, want %v; round corners %v, want %v", seed, parts, straight, got, want)
		}
		long += len(want)
	}
	if long < 200 {
		t.Errorf("%d wall spaces are long round their corners alone", long)
	}
}

// Along the center lines of the arms; with walls aslant as a hall of width w and length c that
// covers c × w and has 2 × (c + w) round it, and rounder than a square half of half its edge.
func TestHowLongAHallIs(t *testing.T) {
	for _, tt := range []struct {
		name    string
		corners []float64
		want    float64
	}{
		{"120 by 40", []float64{0, 0, 120, 0, 120, 40, 0, 40}, 120},
		{"40 by 120", []float64{0, 0, 40, 0, 40, 120, 0, 120}, 120},
		{"60 by 60", []float64{0, 0, 60, 0, 60, 60, 0, 60}, 60},
		{"100 and 80 round a bend", []float64{0, 0, 120, 0, 120, 100, 80, 100, 80, 40, 0, 40}, 180},
		{"round three sides", []float64{0, 0, 200, 0, 200, 100, 160, 100, 160, 40, 40, 40, 40, 90, 0, 90}, 160 + 80 + 70},
		{"of two widths round a bend", []float64{0, 0, 120, 0, 120, 100, 90, 100, 90, 40, 0, 40}, 105 + 80},
		{"a bar of 160 with two stems of 60 and 50", []float64{0, 0, 160, 0, 160, 40, 150, 40, 150, 100, 110, 100, 110, 40, 50, 40, 50, 90, 10, 90, 10, 40, 0, 40}, 80 + 100 + 70},
		{"with as much room to the side as half the width of that", []float64{0, 0, 100, 0, 100, 50, 80, 50, 80, 40, 0, 40}, 90 + 30},
		{"an inch less", []float64{0, 0, 100, 0, 100, 49, 80, 49, 80, 40, 0, 40}, 100},
		{"a jog of more than half the width", []float64{0, 0, 100, 0, 100, 30, 200, 30, 200, 70, 60, 70, 60, 40, 0, 40}, 80 + 30 + 120},
		{"a jog of less", []float64{0, 0, 100, 0, 100, 10, 200, 10, 200, 50, 100, 50, 100, 40, 0, 40}, 200},
		{"a comb of 40 corners", comb(10), 25 + 180 + 25},
		{"one of more, by area and perimeter", comb(11), 430},
		{"an octagon of 30 by 30√2/2", []float64{30, 0, 60, 0, 90, 30, 90, 60, 60, 90, 30, 90, 0, 60, 0, 30}, (4*30 + 4*42.42640687) / 4},
	} {
		r := &plan.Room{}
		for i := 0; i < len(tt.corners); i += 2 {
			r.Sides = append(r.Sides, &plan.Side{Start: geom.Point{X: unit.Length(tt.corners[i]) * inch, Y: unit.Length(tt.corners[i+1]) * inch}})
		}
		if got := centreLine(r); (got - unit.Length(tt.want*float64(inch))).Abs() > 100 {
			t.Errorf("%s: %v, want %v in", tt.name, got, tt.want)
		}
	}
}

// comb are the corners of a bar 10 in wide with so many teeth, 10 in wide and apart and 20 long:
// all of it is 430 in long with 11 teeth, 210 + 11 × 20.
func comb(teeth int) []float64 {
	long := float64(20*teeth - 10)
	corners := []float64{0, 0, long, 0}
	for right := long; right > 0; right -= 20 {
		corners = append(corners, right, 30, right-10, 30)
		if right > 10 {
			corners = append(corners, right-10, 10, right-20, 10)
		}
	}
	return corners
}

// The machine worst off is the one whose nearest receptacle is the farthest, the first of such.
func TestWhichMachineIsWorstOff(t *testing.T) {
	for seed := range uint64(500) {
		n := rand.New(rand.NewPCG(seed, 2))
		var machines []index.FixtureView
		var all []outlet
		var xs []int
		for i := range 1 + n.IntN(3) { // a foot square, in a row
			x := n.IntN(60)
			at := geom.Frame.Moved(geom.FrameOf(geom.Segment{B: geom.Point{X: inch}}), unit.Length(x)*unit.Foot, 0)
			machines = append(machines, index.FixtureView{Fixture: &plan.Fixture{ID: plan.ID(rune('a' + i))}, Footprint: at.Rectangle(unit.Foot, unit.Foot)})
			xs = append(xs, x)
		}
		var plugs []int
		for range n.IntN(4) {
			x := n.IntN(60)
			plugs = append(plugs, x)
			all = append(all, outlet{at: geom.Point{X: unit.Length(x) * unit.Foot}})
		}
		worst, want := 0, -1
		for i, x := range xs {
			near := -1
			for _, p := range plugs {
				if off := max(x-p, p-x-1, 0); near < 0 || off < near {
					near = off
				}
			}
			if near > want {
				worst, want = i, near
			}
		}
		m, away, any := farthest(machines, all)
		if any != (len(plugs) > 0) || any && (away != unit.Length(want)*unit.Foot || m.Fixture.ID != machines[worst].Fixture.ID) {
			t.Fatalf("seed %d: machines at %v, receptacles at %v: %s is %v off, %v; want %d", seed, xs, plugs, m.Fixture.ID, away, any, want)
		}
	}
}

// What is offered stands clear and allowed, and no place a sixteenth apart costs less by more
// than the inch that they are tried by, and half of one to be at a whole.
func TestWhatIsOfferedCostsLeast(t *testing.T) {
	fig := code.Latest()
	const sixteenth = inch / 16
	offered, none := 0, 0
	for seed := range uint64(400) {
		n := rand.New(rand.NewPCG(seed, 3))
		room := &plan.Room{ID: "raaaaaaaa", Ceiling: 96 * inch}
		v := &index.RoomView{Room: room}
		type blocked struct{ from, to unit.Length }
		var taken [][]blocked
		for i := range 1 + n.IntN(3) {
			length := unit.Length(3+n.IntN(80)) * inch
			line := geom.Segment{A: geom.Point{Y: unit.Length(i) * 1000 * inch}, B: geom.Point{X: length, Y: unit.Length(i) * 1000 * inch}}
			s := &plan.Side{ID: plan.ID(fmt.Sprintf("s%daaaaaaa", i)), Kind: []plan.SideKind{plan.SideWall, plan.SideWall, plan.SideGlass}[n.IntN(3)], Start: line.A}
			var here []blocked
			for range n.IntN(3) {
				b := blocked{from: unit.Length(n.IntN(80)) * inch / 2}
				b.to = b.from + unit.Length(1+n.IntN(60))*inch/2
				here = append(here, b)
				s.Probes = append(s.Probes, plan.Probe{From: b.from, To: b.to})
			}
			taken = append(taken, here)
			v.Sides = append(v.Sides, index.SideView{Side: s, Line: line, Frame: geom.FrameOf(line), Length: length})
		}
		wish, ok := unit.Length(n.IntN(80))*inch/2, unit.Length(n.IntN(90))*inch/2
		cost := func(p place) (unit.Length, bool) { return (p.along - wish).Abs(), p.along <= ok }
		isClear := func(i int, along unit.Length) bool {
			s := &v.Sides[i]
			if s.Side.Kind != plan.SideWall || along < 22*sixteenth || along > s.Length-22*sixteenth { // half a plate of 2-3/4
				return false
			}
			const half = inch + 5*inch/32
			return !slices.ContainsFunc(taken[i], func(b blocked) bool { return along-half < b.to && b.from < along+half })
		}
		least := unit.Length(-1)
		for i := range v.Sides {
			for along := unit.Length(0); along <= min(v.Sides[i].Length, ok); along += sixteenth / 2 {
				if c := (along - wish).Abs(); isClear(i, along) && (least < 0 || c < least) {
					least = c
				}
			}
		}
		remedies := addNear(v, "duplex", fig, words.New("a", "A"), cost)
		if len(remedies) == 0 {
			if least >= 0 {
				none++ // it may lie between two that are tried
			}
			continue
		}
		offered++
		at := remedies[0].Edit.(rule.AddFresh).Opening.At
		i := slices.IndexFunc(v.Sides, func(s index.SideView) bool { return s.Side.ID == at.Host })
		if c, allowed := cost(place{&v.Sides[i], at.Along}); !allowed || !isClear(i, at.Along) || c > least+3*inch/2 {
			t.Fatalf("seed %d: %v along %s of %+v costs %v, %v; least %v", seed, at.Along, at.Host, taken, c, allowed, least)
		}
	}
	if offered < 100 || none > offered/10 {
		t.Errorf("%d offered, %d missed", offered, none)
	}
}

// What is offered stands at a mark of a tape that is clear and allowed. The first place of a
// plate 2-3/4 in wide is 34.925 mm from a corner, and inches on from there one is at 746.125:
// rounded to 10 mm it would leave what is allowed here, and so would the nearest millimeter in
// the second case, where the next one in is taken.
func TestOfferedAtAMarkOfATape(t *testing.T) {
	const mm = unit.Millimetre
	fig := code.Latest().InUnits(unit.Metric)
	line := geom.Segment{B: geom.Point{X: 2000 * mm}}
	v := &index.RoomView{Room: &plan.Room{ID: "raaaaaaaa", Ceiling: 2400 * mm}}
	v.Sides = []index.SideView{{Side: &plan.Side{ID: "saaaaaaaa", Kind: plan.SideWall}, Line: line, Frame: geom.FrameOf(line), Length: line.Length()}}
	for _, tt := range []struct{ from, to, want unit.Length }{
		{700 * mm, 800 * mm, 720 * mm}, // 720.725 is one of those inches
		{742 * mm, 749 * mm, 746 * mm},
		{746*mm + mm/10, 749 * mm, 747 * mm},
		{746 * mm, 746*mm + mm/2, 746 * mm},
		{746*mm + mm/10, 746*mm + mm/5, 746*mm + mm/8}, // no mark is allowed
	} {
		remedies := addNear(v, "duplex", fig, words.New("a", "A"), func(p place) (unit.Length, bool) {
			return (p.along - tt.from).Abs(), tt.from <= p.along && p.along <= tt.to
		})
		if len(remedies) != 1 {
			t.Errorf("from %v to %v nothing is offered", tt.from, tt.to)
			continue
		}
		if got := remedies[0].Edit.(rule.AddFresh).Opening.At.Along; got != tt.want {
			t.Errorf("from %v to %v it is offered at %v, want %v", tt.from, tt.to, got, tt.want)
		}
	}
}
