package spacing

import (
	"fmt"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// in returns whole inches.
func in(n int) unit.Length { return unit.Length(n) * unit.Inch }

// aRun returns a run of legs of lengths in inches, each from the start of its own side.
func aRun(isClosed bool, lengths ...int) run {
	r := run{isClosed: isClosed}
	for i, l := range lengths {
		side := &index.SideView{}
		side.Side, side.Length = &plan.Side{ID: plan.ID(fmt.Sprintf("s%d", i))}, in(l)
		r.add(leg{side: side, to: in(l), canMount: true})
	}
	return r
}

// TestGaps: what lies farther from a place than the reach, the place just at it not
// (NEC 2023 210.52(A)(1), 6 ft); how far its farthest point is, is arithmetic.
func TestGaps(t *testing.T) {
	const reach = 72
	for _, tt := range []struct {
		name     string
		isClosed bool
		length   int
		places   []int
		want     []gap
	}{
		{"no receptacle", false, 100, nil, []gap{{0, in(100), 0}}},
		{"just in reach of both ends", false, 144, []int{72}, nil},
		{"an inch more to the left", false, 144, []int{73}, []gap{{0, in(1), in(73)}}},
		{"an inch more to the right", false, 144, []int{71}, []gap{{in(143), in(144), in(73)}}},
		{"two at twice the reach", false, 144, []int{0, 144}, nil},
		{"two an inch farther apart", false, 145, []int{0, 145}, []gap{{in(72), in(73), in(145) / 2}}},
		{"a gap between each two of three", false, 400, []int{50, 200, 350}, []gap{{in(122), in(128), in(75)}, {in(272), in(278), in(75)}}},
		{"a ring with one", true, 144, []int{30}, nil},
		{"a longer ring with one", true, 200, []int{30}, []gap{{in(102), in(158), in(100)}}},
		{"a ring over its start", true, 300, []int{80, 220}, []gap{{in(292), in(308), in(80)}}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var places []unit.Length
			for _, p := range tt.places {
				places = append(places, in(p))
			}
			got := aRun(tt.isClosed, tt.length).gaps(places, in(reach))
			if !slices.Equal(got, tt.want) {
				t.Errorf("not served %v, want %v", got, tt.want)
			}
		})
	}
	// Rounding is no gap; more than that is.
	r := aRun(false, 144)
	if got := r.gaps([]unit.Length{in(72) + grain}, in(72)); got != nil {
		t.Errorf("a place off by rounding leaves %v", got)
	}
	if got := r.gaps([]unit.Length{in(72) + grain + 1}, in(72)); len(got) != 1 {
		t.Errorf("a place off by more than rounding leaves %v", got)
	}
	if got := r.gaps([]unit.Length{in(72) - grain}, in(72)); got != nil {
		t.Errorf("a place off by rounding leaves %v", got)
	}
	if got := r.gaps([]unit.Length{in(72) - grain - 1}, in(72)); len(got) != 1 {
		t.Errorf("a place off by more than rounding leaves %v", got)
	}
}

// TestPlacesAlongARun: a place of a run is on the leg that it falls into, counted from
// where the leg begins; on a closed run places go on past its ends.
func TestPlacesAlongARun(t *testing.T) {
	open, closed := aRun(false, 30, 50, 20), aRun(true, 30, 50, 20)
	for _, tt := range []struct {
		name  string
		run   run
		place int
		side  plan.ID
		along int
	}{
		{"the start", open, 0, "s0", 0},
		{"within the first", open, 12, "s0", 12},
		{"at a corner, the end of the leg before it", open, 30, "s0", 30},
		{"past a corner", open, 31, "s1", 1},
		{"the end", open, 100, "s2", 20},
		{"past the end of an open run, its end", open, 120, "s2", 20},
		{"past the end of a closed run", closed, 112, "s0", 12},
		{"before the start of a closed run", closed, -5, "s2", 15},
	} {
		if p, along := tt.run.at(in(tt.place)); p.side.Side.ID != tt.side || along != in(tt.along) {
			t.Errorf("%s: %d in is at %s on %s, want %d on %s", tt.name, tt.place, along.Inches(1), p.side.Side.ID, tt.along, tt.side)
		}
	}
}

func TestStretchesOfARun(t *testing.T) {
	open, closed := aRun(false, 30, 50, 20), aRun(true, 30, 50, 20)
	for _, tt := range []struct {
		name     string
		run      run
		from, to int
		want     string
	}{
		{"within a leg", open, 35, 40, "s1 5-10"},
		{"over a corner", open, 20, 40, "s0 20-30 s1 0-10"},
		{"all of it", open, 0, 100, "s0 0-30 s1 0-50 s2 0-20"},
		{"one leg, and nothing of those that it touches", open, 30, 80, "s1 0-50"},
		{"over the start of a closed run", closed, 90, 110, "s2 10-20 s0 0-10"},
		{"an open run has nothing past its end", open, 90, 110, "s2 10-20"},
	} {
		got := ""
		for _, s := range tt.run.stretches(in(tt.from), in(tt.to)) {
			got += fmt.Sprintf(" %s %d-%d", s.Host, s.From/unit.Inch, s.To/unit.Inch)
		}
		if got != " "+tt.want {
			t.Errorf("%s: %d to %d in is%s, want %s", tt.name, tt.from, tt.to, got, tt.want)
		}
	}
}

// line writes a floor line as its markings in inches.
func line(list []marking) (out string) {
	for _, s := range list {
		out += fmt.Sprintf("%d-%d:%d ", s.from/unit.Inch, s.to/unit.Inch, s.looks)
	}
	return out
}

func marks(list ...marking) []marking { return list }

// TestLayingOnAFloorLine: the worse of two looks wins, what lies outside changes nothing,
// and neighbors of one look are one marking.
func TestLayingOnAFloorLine(t *testing.T) {
	whole := marks(marking{0, in(100), isWall})
	for _, tt := range []struct {
		name     string
		on       []marking
		from, to int
		looks    looks
		want     []marking
	}{
		{"within", whole, 20, 40, isBreak, marks(marking{0, in(20), isWall}, marking{in(20), in(40), isBreak}, marking{in(40), in(100), isWall})},
		{"all", whole, 0, 100, isBreak, marks(marking{0, in(100), isBreak})},
		{"past both ends", whole, -10, 120, isCounter, marks(marking{0, in(100), isCounter})},
		{"beyond the end", whole, 100, 120, isBreak, whole},
		{"the same look", whole, 20, 40, isWall, whole},
		{"a better look", marks(marking{0, in(100), isBreak}), 20, 40, isCounter, marks(marking{0, in(100), isBreak})},
		{"a worse one over a corner of two", marks(marking{0, in(50), isWall}, marking{in(50), in(100), isBreak}), 40, 60, isCounter,
			marks(marking{0, in(40), isWall}, marking{in(40), in(50), isCounter}, marking{in(50), in(100), isBreak})},
		{"beside one of its look", marks(marking{0, in(50), isBreak}, marking{in(50), in(100), isWall}), 50, 60, isBreak,
			marks(marking{0, in(60), isBreak}, marking{in(60), in(100), isWall})},
	} {
		m := floorMarks{slices.Clone(tt.on)}
		m.lay(in(tt.from), in(tt.to), tt.looks)
		if !slices.Equal(m.markings, tt.want) {
			t.Errorf("%s: %s, want %s", tt.name, line(m.markings), line(tt.want))
		}
	}
}

// TestAppliancesAmongCounters: one at either end of a row of counters, or within it, is in
// the row (its counters' rule says what is behind it); one by itself leaves wall.
func TestAppliancesAmongCounters(t *testing.T) {
	for _, tt := range []struct {
		name     string
		on, want []marking
	}{
		{"by itself", marks(marking{0, in(30), isAppliance}), marks(marking{0, in(30), isWall})},
		{"between walls", marks(marking{0, in(10), isWall}, marking{in(10), in(40), isAppliance}, marking{in(40), in(90), isWall}), marks(marking{0, in(90), isWall})},
		{"left of a counter", marks(marking{0, in(30), isAppliance}, marking{in(30), in(60), isCounter}), marks(marking{0, in(60), isCounter})},
		{"right of a counter", marks(marking{0, in(30), isCounter}, marking{in(30), in(60), isAppliance}), marks(marking{0, in(60), isCounter})},
		{"beside wall that a counter follows", marks(marking{0, in(30), isAppliance}, marking{in(30), in(40), isWall}, marking{in(40), in(60), isCounter}),
			marks(marking{0, in(40), isWall}, marking{in(40), in(60), isCounter})},
		{"a break stays a break", marks(marking{0, in(30), isBreak}, marking{in(30), in(60), isAppliance}), marks(marking{0, in(30), isBreak}, marking{in(30), in(60), isWall})},
	} {
		if got := settled(tt.on); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %s, want %s", tt.name, line(got), line(tt.want))
		}
	}
}

// TestSamePlaceOfARun: places are one where they differ by rounding; on a closed run its
// end is its start.
func TestSamePlaceOfARun(t *testing.T) {
	open, closed := aRun(false, 100), aRun(true, 100)
	for _, tt := range []struct {
		name string
		run  run
		a, b unit.Length
		want bool
	}{
		{"one place", open, in(5), in(5), true},
		{"off by rounding", open, in(5), in(5) + grain, true},
		{"off by more", open, in(5), in(5) + grain + 1, false},
		{"the other way", open, in(5) + grain + 1, in(5), false},
		{"the two ends of an open run", open, 0, in(100), false},
		{"of a closed one", closed, 0, in(100), true},
		{"of a closed one, off by rounding", closed, grain, in(100), true},
		{"of a closed one, off by more", closed, grain + 1, in(100), false},
	} {
		if got := tt.run.same(tt.a, tt.b); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// TestBoundsOfASpot: within a leg, less a margin at either end, which of a short leg
// is half; and no farther than the spot allows.
func TestBoundsOfASpot(t *testing.T) {
	r := aRun(true, 30, 50, 4)
	for _, tt := range []struct {
		name       string
		low, high  int
		leg        int
		turn       int
		margin     int
		want, upTo int
	}{
		{"the leg bounds it", 0, 100, 1, 0, 6, 36, 74},
		{"the spot does", 40, 50, 1, 0, 6, 40, 50},
		{"a leg shorter than twice the margin", 0, 100, 2, 0, 6, 82, 82},
		{"a turn on", 0, 200, 1, 84, 6, 120, 158},
	} {
		lo, hi := spot{low: in(tt.low), high: in(tt.high)}.within(r.legs[tt.leg], in(tt.turn), in(tt.margin))
		if lo != in(tt.want) || hi != in(tt.upTo) {
			t.Errorf("%s: %s to %s, want %d to %d", tt.name, lo.Inches(8), hi.Inches(8), tt.want, tt.upTo)
		}
	}
}

// TestStandingOnARun: as near a wish as a margin from corners leaves, on whichever leg
// that is; the wish itself where no leg is that long.
func TestStandingOnARun(t *testing.T) {
	open, closed, short := aRun(false, 30, 50), aRun(true, 30, 50), aRun(false, 2, 2)
	for _, tt := range []struct {
		name      string
		run       run
		wish      int
		low, high int
		side      plan.ID
		along     int
	}{
		{"far from corners", open, 50, 0, 80, "s1", 20},
		{"before a corner", open, 28, 0, 80, "s0", 21},
		{"past a corner", open, 36, 0, 80, "s1", 9},
		{"at the start", open, 0, 0, 80, "s0", 9},
		{"no nearer than the spot allows", open, 28, 25, 60, "s1", 9},
		{"over the start of a closed run", closed, 82, 70, 100, "s0", 9},
		{"before the start of one", closed, -3, -20, 20, "s1", 41},
		{"in the middle of a short leg", short, 1, 0, 4, "s0", 1},
	} {
		p, along := tt.run.standing(spot{wish: in(tt.wish), low: in(tt.low), high: in(tt.high), step: in(1)}, in(9))
		if p.side.Side.ID != tt.side || along != in(tt.along) {
			t.Errorf("%s: %s at %s, want %s at %d", tt.name, p.side.Side.ID, along.Inches(8), tt.side, tt.along)
		}
	}
}
