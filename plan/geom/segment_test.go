package geom

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan/unit"
)

const inch = unit.Inch

func TestSegmentLength(t *testing.T) {
	for _, tt := range []struct {
		name   string
		s      Segment
		want   unit.Length
		source string
	}{
		{"along X", Segment{Point{0, 0}, Point{-12 * inch, 0}}, 12 * inch, "arithmetic"},
		{"along Y", Segment{Point{5, 0}, Point{5, 12 * inch}}, 12 * inch, "arithmetic"},
		{"three, four, five", Segment{Point{}, Point{3 * unit.Foot, 4 * unit.Foot}}, 5 * unit.Foot, "Pythagoras"},
		{"a diagonal", Segment{Point{}, Point{unit.Metre, unit.Metre}}, 1_414_213_562, "√2 = 1.414213562373..."},
		{"a short diagonal rounds down", Segment{Point{}, Point{1, 1}}, 1, "√2"},
		{"another rounds up", Segment{Point{}, Point{1, 2}}, 2, "√5 = 2.236"},
		{"and one up from the half", Segment{Point{}, Point{2, 3}}, 4, "√13 = 3.606"},
		{"none", Segment{Point{7, 7}, Point{7, 7}}, 0, "arithmetic"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.s.Length(); got != tt.want {
				t.Errorf("got %v, want %v (%s)", got, tt.want, tt.source)
			}
		})
	}
}

func TestAtAndProject(t *testing.T) {
	top := Segment{Point{0, 0}, Point{100, 0}}      // walking right: down the sheet is inside
	right := Segment{Point{100, 0}, Point{100, 80}} // walking down: left on the sheet is inside
	slope := Segment{Point{0, 0}, Point{300, 400}}
	for _, tt := range []struct {
		name       string
		s          Segment
		p          Point
		along, off unit.Length
	}{
		{"inside the top side", top, Point{30, 7}, 30, 7},
		{"outside the top side", top, Point{30, -7}, 30, -7},
		{"before its start", top, Point{-30, 0}, -30, 0},
		{"inside the right side", right, Point{93, 20}, 20, 7},
		{"outside the right side", right, Point{107, 20}, 20, -7},
		{"inside the bottom side", Segment{Point{100, 80}, Point{0, 80}}, Point{60, 73}, 40, 7},
		{"inside the left side", Segment{Point{0, 80}, Point{0, 0}}, Point{7, 20}, 60, 7},
		{"on a slope", slope, Point{60, 80}, 100, 0},
		{"right of a slope", slope, Point{60 - 80, 80 + 60}, 100, 100},
		{"no length", Segment{Point{1, 1}, Point{1, 1}}, Point{4, 5}, 0, 5},
		{"a nanometre long", Segment{Point{3, 3}, Point{4, 3}}, Point{4, 3}, 1, 0},
		{"two across and one down, 5/√5 and 10/√5", Segment{Point{0, 0}, Point{2, 1}}, Point{0, 5}, 2, 4},
		{"one across and two down", Segment{Point{0, 0}, Point{1, 2}}, Point{5, 0}, 2, -4},
	} {
		t.Run(tt.name, func(t *testing.T) {
			along, off := tt.s.Project(tt.p)
			if along != tt.along || off != tt.off {
				t.Errorf("got %v along, %v off, want %v, %v (arithmetic)", along, off, tt.along, tt.off)
			}
			if off == 0 && tt.s.At(along) != tt.p {
				t.Errorf("At(%v) = %v, want %v", along, tt.s.At(along), tt.p)
			}
		})
	}
}

func TestNearest(t *testing.T) {
	s := Segment{Point{0, 0}, Point{100, 0}}
	for _, tt := range []struct {
		p               Point
		along, distance unit.Length
	}{
		{Point{30, -7}, 30, 7}, {Point{-3, 4}, 0, 5}, {Point{103, -4}, 100, 5}, {Point{100, 0}, 100, 0},
	} {
		if along, distance := s.Nearest(tt.p); along != tt.along || distance != tt.distance {
			t.Errorf("nearest to %v: %v, %v, want %v, %v (arithmetic)", tt.p, along, distance, tt.along, tt.distance)
		}
	}
}

// diagonals draws segments that are not along an axis, with sides up to a kilometre.
func diagonals() *rapid.Generator[Segment] {
	side := rapid.Int64Range(2, 1e12)
	return rapid.Custom(func(t *rapid.T) Segment {
		a := Point{unit.Length(side.Draw(t, "ax")), unit.Length(side.Draw(t, "ay"))}
		d := Point{unit.Length(side.Draw(t, "dx")), unit.Length(side.Draw(t, "dy"))}
		return Segment{a, a.Add(d.Turned(rapid.IntRange(0, 3).Draw(t, "quarters")))}
	})
}

// high is a float of 300 bits: its error is far below any half nanometre.
func high(n *big.Int) *big.Float { return new(big.Float).SetPrec(300).SetInt(n) }

func nearestTo(got unit.Length, want *big.Float) bool {
	off := new(big.Float).Sub(want, high(big.NewInt(int64(got))))
	limit := big.NewFloat(0.5 + 1e-30)
	return off.Abs(off).Cmp(limit) <= 0
}

func TestRoundedOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := diagonals().Draw(t, "s")
		p := diagonals().Draw(t, "p").A
		d := s.Vector()
		root := new(big.Float).SetPrec(300).Sqrt(high(bigDot(d, d)))
		if !nearestTo(s.Length(), root) {
			t.Fatalf("length %d, want %.3f", s.Length(), root)
		}
		along := unit.Length(rapid.Int64Range(1, int64(s.Length())-1).Draw(t, "along"))
		at := s.At(along).Sub(s.A)
		for _, pair := range [][2]unit.Length{{at.X, d.X}, {at.Y, d.Y}} {
			exact := new(big.Float).Mul(high(big.NewInt(int64(pair[1]))), high(big.NewInt(int64(along))))
			if !nearestTo(pair[0], exact.Quo(exact, root)) {
				t.Fatalf("At(%d) = %v, want %.3f", along, at, exact)
			}
		}
		v := p.Sub(s.A)
		gotAlong, gotOff := s.Project(p)
		wantAlong := new(big.Float).Quo(high(bigDot(d, v)), root)
		wantOff := new(big.Float).Quo(high(bigCross(d, v)), root)
		if !nearestTo(gotAlong, wantAlong) || !nearestTo(gotOff, wantOff) {
			t.Fatalf("projects to %d, %d, want %.3f, %.3f", gotAlong, gotOff, wantAlong, wantOff)
		}
		if s.At(0) != s.A || s.At(s.Length()) != s.B {
			t.Fatal("the ends are not at the ends")
		}
	})
}

// TestProjectFindsAt holds that a place on a segment is found again: exactly along an
// axis, within a nanometre else.
func TestProjectFindsAt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := diagonals().Draw(t, "s")
		slack := unit.Nanometre
		if rapid.Bool().Draw(t, "upright") {
			s.B.X, slack = s.A.X, 0
		}
		along := unit.Length(rapid.Int64Range(0, int64(s.Length())).Draw(t, "along"))
		got, off := s.Project(s.At(along))
		if (got-along).Abs() > slack || off.Abs() > slack {
			t.Fatalf("%d along is found at %d, %d off", along, got, off)
		}
	})
}

func TestOverlap(t *testing.T) {
	// A face 12 ft long, walked to the right; the room is below it on the sheet.
	face := Segment{Point{0, 0}, Point{144 * inch, 0}}
	behind := func(from, to, gap unit.Length) Segment { // as the room beyond has it
		return Segment{Point{to, -gap}, Point{from, -gap}}
	}
	partition := 4*inch + inch/2 // 2x4 stud and 1/2 in board on both faces
	for _, tt := range []struct {
		name    string
		other   Segment
		covered Interval
		gap     unit.Length
		ok      bool
	}{
		{"the same length", behind(0, 144*inch, partition), Interval{0, 144 * inch}, partition, true},
		{"a shorter room beyond", behind(24*inch, 60*inch, partition), Interval{24 * inch, 60 * inch}, partition, true},
		{"a longer room beyond", behind(-24*inch, 600*inch, partition), Interval{0, 144 * inch}, partition, true},
		{"past one end", behind(100*inch, 200*inch, partition), Interval{100 * inch, 144 * inch}, partition, true},
		{"end to end covers nothing", behind(144*inch, 200*inch, partition), Interval{}, 0, false},
		{"beside", behind(150*inch, 200*inch, partition), Interval{}, 0, false},
		{"no thickness", behind(0, 144*inch, 0), Interval{0, 144 * inch}, 0, true},
		{"the opposite wall of the room lies before", behind(0, 144*inch, -100*inch), Interval{0, 144 * inch}, -100 * inch, true},
		{"the same way is no back", behind(0, 144*inch, partition).Reversed(), Interval{}, 0, false},
		{"square to it", Segment{Point{0, -inch}, Point{0, -100 * inch}}, Interval{}, 0, false},
		{"askew within the tolerance", Segment{Point{144 * inch, -partition}, Point{0, -partition - inch/16}}, Interval{0, 144 * inch}, partition + inch/32, true},
		{"askew beyond the tolerance", Segment{Point{144 * inch, -partition}, Point{0, -partition - inch/4}}, Interval{}, 0, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			covered, gap, ok := face.Overlap(tt.other, inch/8)
			if covered != tt.covered || gap != tt.gap || ok != tt.ok {
				t.Errorf("got %v, %v, %t, want %v, %v, %t (arithmetic)", covered, gap, ok, tt.covered, tt.gap, tt.ok)
			}
		})
	}
}

// TestOverlapIsMutual holds for parallel faces that each covers as much of the other,
// at the same gap.
func TestOverlapIsMutual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		place := rapid.Map(rapid.Int64Range(-50, 50), func(n int64) unit.Length { return unit.Length(n) * inch })
		s := Segment{Point{place.Draw(t, "a"), 0}, Point{place.Draw(t, "b"), 0}}
		y := place.Draw(t, "y")
		o := Segment{Point{place.Draw(t, "c"), y}, Point{place.Draw(t, "d"), y}}
		quarters := rapid.IntRange(0, 3).Draw(t, "quarters")
		s = Segment{s.A.Turned(quarters), s.B.Turned(quarters)}
		o = Segment{o.A.Turned(quarters), o.B.Turned(quarters)}
		first, gap, ok := s.Overlap(o, 0)
		second, back, mutual := o.Overlap(s, 0)
		if ok != mutual || gap != back || first.Length() != second.Length() {
			t.Fatalf("%v, %v, %t but the other way %v, %v, %t", first, gap, ok, second, back, mutual)
		}
		if ok && (s.At(first.From).Distance(o.At(second.To)) != gap.Abs() || s.At(first.To).Distance(o.At(second.From)) != gap.Abs()) {
			t.Fatalf("the ends of %v and %v do not face each other", first, second)
		}
	})
}

func TestInterval(t *testing.T) {
	i := Interval{2, 5}
	if i.Length() != 3 || !i.Contains(2) || !i.Contains(5) || i.Contains(1) || i.Contains(6) {
		t.Errorf("%v does not own both its ends and no more", i)
	}
}
