package spacing

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// quarter and fine are quarters and 1/32 of an inch: what is in the way begins and ends at
// quarters, and half a box of one gang is 1-5/32 in wide.
const (
	quarter = unit.Inch / 4
	fine    = unit.Inch / 32
	halfBox = unit.Inch + 5*fine
)

// aMount returns a box 16 in up, which stands from 14-1/8 to 17-7/8 in (FrontOf: a usual box
// of one gang), and a run whose walls have so much in the way as chance will.
func aMount(n *rand.Rand) (run, *plan.Opening) {
	r := run{isClosed: n.IntN(2) == 0}
	for range 1 + n.IntN(3) {
		from, long := quarter*unit.Length(4*n.IntN(9)), quarter*unit.Length(6+n.IntN(140))
		side := &index.SideView{Side: &plan.Side{Kind: plan.SideWall}, Length: from + long}
		side.Line = geom.Segment{B: geom.Point{X: side.Length}}
		side.Frame = geom.FrameOf(side.Line)
		p := leg{side: side, from: from, to: from + long, canMount: n.IntN(6) > 0}
		for range n.IntN(5) {
			left := quarter * unit.Length(n.IntN(160))
			rect := frame.Rect{Left: left, Right: left + quarter*unit.Length(1+n.IntN(40))}
			rect.Bottom = []unit.Length{0, 10 * unit.Inch, 17*unit.Inch + 28*fine, 17*unit.Inch + 28*fine - 1}[n.IntN(4)]
			rect.Top = []unit.Length{14*unit.Inch + 4*fine, 14*unit.Inch + 4*fine + 1, 30 * unit.Inch}[n.IntN(3)]
			if p.wet = append(p.wet, rect); rect.Bottom >= rect.Top {
				p.wet = p.wet[:len(p.wet)-1]
			}
		}
		if n.IntN(3) == 0 {
			bed := &plan.Fixture{Kind: plan.FixtureBed, Width: quarter * unit.Length(20+n.IntN(60)), Height: 24 * unit.Inch}
			at := geom.Frame.Moved(side.Frame, quarter*unit.Length(n.IntN(120)), 0)
			side.Fixtures = []index.FixtureView{{Fixture: bed, Frame: at}}
		}
		r.add(p)
	}
	return r, &plan.Opening{Gangs: 1, At: plan.Anchor{Part: plan.PartFace}, Height: plan.CentreAt(16 * unit.Inch)}
}

// clear reports whether a box stands clear at a place along a leg's side: of what is in the way
// at its height and, where it shall be in reach, of a bed and 2 in beside it for a plug.
func (p leg) clear(at unit.Length, inReach bool) bool {
	meets := func(left, right unit.Length) bool { return at-halfBox < right && left < at+halfBox }
	for _, w := range p.wet {
		if w.Bottom < 17*unit.Inch+28*fine && w.Top > 14*unit.Inch+4*fine && meets(w.Left, w.Right) {
			return false
		}
	}
	for _, f := range p.side.Fixtures {
		left, _ := p.side.Frame.Project(f.Frame.Origin)
		if inReach && meets(left-2*unit.Inch, left+f.Fixture.Width+2*unit.Inch) {
			return false
		}
	}
	return true
}

// The place nearest to a wish, of all 1/32 in apart: within the bounds, 6 in from the ends of a
// leg or in the middle of a short one, and clear; none on a leg that takes no box or is
// narrower than one.
func TestMountedAsNearAsCanBe(t *testing.T) {
	mounted, none := 0, 0
	for seed := range uint64(3000) {
		n := rand.New(rand.NewPCG(seed, 6))
		r, o := aMount(n)
		inReach := n.IntN(2) == 0
		s := spot{low: quarter * unit.Length(n.IntN(200)-30), step: fine, tape: fine}
		s.high = s.low + quarter*unit.Length(n.IntN(160))
		s.wish = s.low + quarter*unit.Length(n.IntN(160))
		turns := []unit.Length{0}
		if r.isClosed {
			turns = append(turns, -r.length, r.length)
		}
		nearest := unit.Length(-1)
		for _, turn := range turns {
			for _, p := range r.legs {
				margin := min(6*unit.Inch, (p.to-p.from)/2)
				for along := p.from + margin; along <= p.to-margin; along += fine {
					at := turn + p.start + along - p.from
					if off := (at - s.wish).Abs(); p.canMount && p.to-p.from >= 2*halfBox && s.low <= at && at <= s.high && p.clear(along, inReach) && (nearest < 0 || off < nearest) {
						nearest = off
					}
				}
			}
		}
		p, along, ok := r.mountable(s, o, nil, inReach)
		if ok != (nearest >= 0) {
			t.Fatalf("seed %d: %+v: mounted %v at %v, want %v", seed, r, ok, along, nearest)
		}
		if !ok {
			none++
			continue
		}
		mounted++
		is := unit.Length(-1)
		for _, turn := range turns {
			at := turn + p.start + along - p.from
			if off := (at - s.wish).Abs(); s.low <= at && at <= s.high && (is < 0 || off < is) {
				is = off
			}
		}
		if is != nearest || !p.clear(along, inReach) {
			t.Fatalf("seed %d: %+v: mounted %v from a wish at %v, %v to %v; want %v", seed, r, is, s.wish, s.low, s.high, nearest)
		}
	}
	if mounted < 500 || none < 300 {
		t.Errorf("%d were mounted, %d not: too tame", mounted, none)
	}
}

// A place at a whole step reads better on a tape: the whole step nearest to the nearest clear
// place, else that before or past it, where it is clear too.
func TestMountedAtWholeSteps(t *testing.T) {
	whole, between := 0, 0
	for seed := range uint64(1500) {
		n := rand.New(rand.NewPCG(seed, 8))
		r, o := aMount(n)
		p := r.legs[0]
		s := spot{low: quarter * unit.Length(n.IntN(100)), step: unit.Inch, tape: unit.Inch}
		s.high = s.low + quarter*unit.Length(n.IntN(100))
		s.wish = s.low + quarter*unit.Length(n.IntN(130)-15)
		fits := func(at unit.Length) bool { return s.low <= at && at <= s.high && p.clear(at, true) }
		off := unit.Length(-1)
		for at := s.low; at <= s.high; at += fine {
			if away := (at - s.wish).Abs(); fits(at) && (off < 0 || away < off) {
				off = away
			}
		}
		at, ok := p.free(o, nil, s, true)
		if ok != (off >= 0) || ok && !fits(at) {
			t.Fatalf("seed %d: %+v: %v at %v", seed, p, ok, at)
		}
		if !ok {
			continue
		}
		// One of two as near, where both are.
		isOf := func(near unit.Length) bool {
			down := (near - 1) / unit.Inch * unit.Inch // near may be a nanometre off
			if near%unit.Inch == 0 {
				return at == near
			}
			steps := []unit.Length{down, down + unit.Inch}
			if near-down >= unit.Inch/2 {
				steps[0], steps[1] = steps[1], steps[0]
			}
			for _, step := range steps {
				if fits(step) {
					return at == step
				}
			}
			return (at - near).Abs() <= 1
		}
		if !(fits(s.wish-off) && isOf(s.wish-off)) && !(fits(s.wish+off) && isOf(s.wish+off)) {
			t.Fatalf("seed %d: %+v: at %v for %+v, the nearest clear is %v off", seed, p, at, s, off)
		}
		if at%unit.Inch == 0 {
			whole++
		} else {
			between++
		}
	}
	if whole < 200 || between < 25 {
		t.Errorf("%d at whole inches, %d between", whole, between)
	}
}

// Where the centre of a box may be in a leg: half a box from its ends, half a plate of 2-3/4 in
// from those of the side, and clear.
func TestClearOfALeg(t *testing.T) {
	for seed := range uint64(300) {
		n := rand.New(rand.NewPCG(seed, 9))
		r, o := aMount(n)
		for _, p := range r.legs {
			inReach := n.IntN(2) == 0
			free := p.clearOf(o, nil, frame.Clearance{OfHiding: inReach})
			for along := p.from; along <= p.to; along += fine {
				want := p.canMount && p.from+halfBox <= along && along <= p.to-halfBox && 44*fine <= along && along <= p.side.Length-44*fine && p.clear(along, inReach)
				got := false
				for _, i := range free {
					got = got || i.From <= along && along <= i.To
				}
				if got != want {
					t.Fatalf("seed %d: %+v, %v along: free %v, want %v", seed, p, along, got, want)
				}
			}
		}
	}
}
