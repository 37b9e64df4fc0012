package spacing

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// overCounter stands a counter of a height before all of a side, 24 in deep.
func overCounter(s *index.SideView, high unit.Length) {
	f := &plan.Fixture{Kind: plan.FixtureCounter, Width: s.Length, Depth: 24 * unit.Inch, Height: high}
	s.Fixtures = append(s.Fixtures, index.FixtureView{Fixture: f, Frame: s.Frame, Footprint: s.Frame.Rectangle(s.Length, f.Depth)})
}

// TestHowHighOverACounter: 42 in as usual, where that is over the counter and up to 20 in over
// it (210.52(C)(3)), all of a box 3-3/4 high over its top; else in the middle of those 20. None
// without a counter, nor where the ceiling is no higher.
func TestHowHighOverACounter(t *testing.T) {
	const half = 15 * unit.Inch / 8
	for _, tt := range []struct {
		name          string
		top, ceiling  unit.Length
		want          unit.Length
		none, hanging bool
	}{
		{name: "as usual", top: 36 * unit.Inch, ceiling: 96 * unit.Inch, want: 42 * unit.Inch},
		{name: "just over it", top: 42*unit.Inch - half, ceiling: 96 * unit.Inch, want: 42 * unit.Inch},
		{name: "a hair too low", top: 42*unit.Inch - half + 1, ceiling: 96 * unit.Inch, want: 52*unit.Inch - half + 1},
		{name: "20 in over it", top: 22 * unit.Inch, ceiling: 96 * unit.Inch, want: 42 * unit.Inch},
		{name: "a hair too high", top: 22*unit.Inch - 1, ceiling: 96 * unit.Inch, want: 32*unit.Inch - 1},
		{name: "a hair under the ceiling", top: 36 * unit.Inch, ceiling: 42*unit.Inch + 1, want: 42 * unit.Inch},
		{name: "at the ceiling", top: 36 * unit.Inch, ceiling: 42 * unit.Inch, none: true},
		{name: "no counter", none: true, ceiling: 96 * unit.Inch},
		{name: "one that hangs", hanging: true, none: true, top: 36 * unit.Inch, ceiling: 96 * unit.Inch},
	} {
		line := geom.Segment{B: geom.Point{X: 100 * unit.Inch}}
		s := index.SideView{Side: &plan.Side{Kind: plan.SideWall}, Line: line, Frame: geom.FrameOf(line), Length: 100 * unit.Inch}
		if tt.top > 0 {
			overCounter(&s, tt.top)
			if tt.hanging {
				s.Fixtures[0].Fixture.Bottom = 1
			}
		}
		v := index.RoomView{Room: &plan.Room{Ceiling: tt.ceiling}, Sides: []index.SideView{s}}
		o := newCounterReceptacle(code.Latest())
		height, ok := counterHeight(&v, leg{side: &v.Sides[0], from: 20 * unit.Inch, to: 60 * unit.Inch}, &o, code.Latest())
		if ok == tt.none || ok && height != plan.CentreAt(tt.want) {
			t.Errorf("%s: %v, %v; want %v", tt.name, height, ok, tt.want)
		}
	}
}

// A receptacle for a part of a counter: no place 1/32 in apart serves more of the part, and none
// that serves as much is nearer to its middle by more than the whole inch it is set at.
func TestOverACounterAsNearAsCanBe(t *testing.T) {
	fig := code.Latest()
	served, none := 0, 0
	for seed := range uint64(1500) {
		n := rand.New(rand.NewPCG(seed, 12))
		r, _ := aMount(n)
		v := index.RoomView{Room: &plan.Room{Ceiling: 96 * unit.Inch}}
		lift := func(x frame.Rect) frame.Rect { // what aMount has about 16 in stands about 42
			return frame.Rect{Left: x.Left, Right: x.Right, Bottom: x.Bottom + 26*unit.Inch, Top: x.Top + 26*unit.Inch}
		}
		for i := range r.legs {
			p := &r.legs[i]
			p.side.Fixtures = nil
			p.side.Line = geom.Segment{A: geom.Point{Y: unit.Length(i) * 1000 * unit.Inch}, B: geom.Point{X: p.side.Length, Y: unit.Length(i) * 1000 * unit.Inch}}
			p.side.Frame = geom.FrameOf(p.side.Line) // each by itself
			for k := range p.wet {
				p.wet[k] = lift(p.wet[k])
			}
			if n.IntN(5) > 0 {
				overCounter(p.side, 36*unit.Inch)
			}
		}
		g := gap{from: quarter * unit.Length(n.IntN(100))}
		g.to = g.from + quarter*unit.Length(1+n.IntN(192))
		var most, off unit.Length
		for i := range r.legs {
			p := r.legs[i]
			v.Sides = append(v.Sides, *p.side)
			if len(p.side.Fixtures) == 0 || !p.canMount {
				continue
			}
			for along := p.from + halfBox; along <= p.to-halfBox; along += fine {
				isClear := 44*fine <= along && along <= p.side.Length-44*fine
				for _, w := range p.wet {
					isClear = isClear && !(w.Bottom < 43*unit.Inch+28*fine && w.Top > 40*unit.Inch+4*fine && along-halfBox < w.Right && w.Left < along+halfBox)
				}
				if !isClear {
					continue
				}
				at := p.start + along - p.from
				gain, away := min(at+24*unit.Inch, g.to)-max(at-24*unit.Inch, g.from), (at - (g.from+g.to)/2).Abs()
				if gain > most || gain == most && gain > 0 && away < off {
					most, off = gain, away
				}
			}
		}
		one := &run{length: r.length, isClosed: r.isClosed}
		for i, p := range r.legs {
			p.side.Side.ID = plan.ID(rune('a' + i))
			p.side = &v.Sides[i]
			one.legs = append(one.legs, p)
		}
		o := newCounterReceptacle(fig)
		at, got := counterPlace(v, *one, g, &o, fig)
		if got != most {
			t.Fatalf("seed %d: %+v, gap %v: serves %v, want %v", seed, one, g, got, most)
		}
		if most == 0 {
			none++
			continue
		}
		served++
		for i, p := range one.legs {
			if at.Host != v.Sides[i].Side.ID {
				continue
			}
			place := p.start + at.Along - p.from
			if away := (place - (g.from+g.to)/2).Abs(); away > off+unit.Inch/2+1 || o.Height != plan.CentreAt(42*unit.Inch) {
				t.Fatalf("seed %d: %+v, gap %v: %v from its middle, want %v", seed, one, g, away, off)
			}
		}
	}
	if served < 500 || none < 100 {
		t.Errorf("%d serve, %d do not: too tame", served, none)
	}
}
