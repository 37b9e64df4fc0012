package edit_test

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/geom"
)

// spot is a place on the sheet or a way, in nanometres. Places are worked out here from what
// the documentation of an anchor says, by school geometry and without the plan's own: what
// edits do to places is held to it.
type spot struct{ x, y float64 }

func (a spot) plus(b spot, times float64) spot { return spot{a.x + b.x*times, a.y + b.y*times} }

// clockwise is a quarter turn as seen on the sheet, where y grows downward.
func (a spot) clockwise() spot { return spot{-a.y, a.x} }

func (a spot) dot(b spot) float64 { return a.x*b.x + a.y*b.y }

func spotAt(p geom.Point) spot { return spot{float64(p.X), float64(p.Y)} }

// surface is something to stand on: where places along it begin, which way they count, and
// which way is out of it.
type surface struct{ from, along, out spot }

// surfaceOf is what an anchor is on.
func surfaceOf(p plan.Plan, a plan.Anchor) surface {
	if a.Part == plan.PartFace {
		ref, _ := p.Side(a.Host)
		from, to := spotAt(ref.Line().A), spotAt(ref.Line().B)
		way := to.plus(from, -1)
		along := spot{}.plus(way, 1/math.Hypot(way.x, way.y))
		return surface{from, along, along.clockwise()} // rooms run clockwise: in is to the right
	}
	f, _ := p.Fixture(a.Host)
	box, w, d := bodyOf(p, f), float64(f.Width), float64(f.Depth)
	backRight := box.from.plus(box.along, w)
	switch a.Part {
	case plan.PartFront:
		return surface{box.from.plus(box.out, d), box.along, box.out}
	case plan.PartBack:
		return surface{backRight, spot{}.plus(box.along, -1), spot{}.plus(box.out, -1)}
	case plan.PartLeft:
		return surface{box.from, box.out, spot{}.plus(box.along, -1)}
	case plan.PartRight:
		return surface{backRight.plus(box.out, d), spot{}.plus(box.out, -1), box.along}
	}
	return box // its top
}

// bodyOf is the back left corner of a fixture, as seen from its front, and its directions.
func bodyOf(p plan.Plan, f *plan.Fixture) surface {
	w, d := float64(f.Width), float64(f.Depth)
	switch f.At.Part {
	case plan.PartFace:
		s := surfaceOf(p, f.At)
		s.from = s.from.plus(s.along, float64(f.At.Along))
		return s
	case plan.PartTop:
		s := surfaceOf(p, f.At)
		s.from = s.from.plus(s.along, float64(f.At.Along)-w/2).plus(s.out, float64(f.At.Out)-d/2)
		return s
	}
	s := surface{spotAt(f.At.At), spot{1, 0}, spot{0, 1}} // its front looks down the sheet
	for range f.Turn {
		s.along, s.out = s.along.clockwise(), s.out.clockwise()
	}
	s.from = s.from.plus(s.along, -w/2).plus(s.out, -d/2)
	return s
}

// sheet is every place of a plan by what it is of and which of its places it is.
type sheet map[string]spot

func (s sheet) put(id plan.ID, what string, at spot) { s[string(id)+" "+what] = at }

func (s sheet) of(id plan.ID) sheet {
	own := maps.Clone(s)
	maps.DeleteFunc(own, func(key string, _ spot) bool { return plan.ID(key[:9]) != id })
	return own
}

// sheetOf works out where everything of a plan is.
func sheetOf(p plan.Plan) sheet {
	s := sheet{}
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			for i := range r.Sides {
				s.side(r, i)
			}
		}
		for t := range l.Anchored() {
			s.thing(p, t)
		}
	}
	return s
}

func (s sheet) side(r *plan.Room, i int) {
	side := r.Sides[i]
	line := r.Segment(i)
	on := surfaceOf(plan.Plan{Levels: []*plan.Level{{ID: ground, Rooms: plan.Set[*plan.Room]{}.With(r)}}}, plan.OnFace(side.ID, 0))
	put := func(what string, along float64) { s.put(side.ID, what, on.from.plus(on.along, along)) }
	s.put(side.ID, "left end", spotAt(line.A))
	s.put(side.ID, "right end", spotAt(line.B))
	for i, p := range side.Places {
		put(fmt.Sprint("stud ", i, p.State), float64(p.At))
	}
	for i, z := range side.Zones {
		put(fmt.Sprint("zone ", i, z.Condition, " left"), float64(z.From))
		put(fmt.Sprint("zone ", i, z.Condition, " right"), float64(z.To))
	}
	for _, p := range side.Probes {
		put(fmt.Sprint("probe ", p.What, p.Clear, " left"), float64(p.From))
		put(fmt.Sprint("probe ", p.What, p.Clear, " right"), float64(p.To))
	}
	if f := side.Studs; f.First != 0 && f.FromRight {
		put("first stud", float64(line.Length()-f.First))
	} else if f.First != 0 {
		put("first stud", float64(f.First))
	}
}

func (s sheet) thing(p plan.Plan, t plan.Thing) {
	a := *plan.AnchorOf(t)
	switch t := t.(type) {
	case *plan.Opening:
		if a.Part == plan.PartCeiling || a.Part == plan.PartFloor {
			s.put(t.ID, "middle", spotAt(a.At))
			return
		}
		on := surfaceOf(p, a)
		middle := on.from.plus(on.along, float64(a.Along))
		if a.Part == plan.PartTop {
			s.put(t.ID, "middle", middle.plus(on.out, float64(a.Out)))
			return
		}
		s.put(t.ID, "middle", middle)
		s.put(t.ID, "an inch in front", middle.plus(on.out, float64(in)))
	case *plan.Break:
		s.aBreak(p, t)
	case *plan.Fixture:
		b := bodyOf(p, t)
		right, out := spot{}.plus(b.along, float64(t.Width)), spot{}.plus(b.out, float64(t.Depth))
		s.put(t.ID, "back left", b.from)
		s.put(t.ID, "back right", b.from.plus(right, 1))
		s.put(t.ID, "front left", b.from.plus(out, 1))
		s.put(t.ID, "front right", b.from.plus(right, 1).plus(out, 1))
	}
}

func (s sheet) aBreak(p plan.Plan, b *plan.Break) {
	on := surfaceOf(p, b.At)
	left := on.from.plus(on.along, float64(b.At.Along))
	right := left.plus(on.along, float64(b.Width))
	s.put(b.ID, "left end", left)
	s.put(b.ID, "right end", right)
	switch b.Hand {
	case plan.HandLeft:
		s.put(b.ID, "hinges", left)
	case plan.HandRight:
		s.put(b.ID, "hinges", right)
	}
	middles := map[plan.Panel][]spot{}
	for i, panel := range b.Panels {
		at := left.plus(on.along, float64(b.Width)*(float64(i)+0.5)/float64(len(b.Panels)))
		middles[panel] = append(middles[panel], at)
	}
	for panel, all := range middles { // the middle of those of a sort: a mirror shows it as one
		var middle spot
		for _, at := range all {
			middle = middle.plus(at, 1/float64(len(all)))
		}
		s.put(b.ID, string(panel)+" panels", middle)
	}
}

// near is how far two places may lie apart that are worked out in two ways: each of the few
// steps on the way is rounded to a nanometre.
const near = 12

// want holds two sheets to each other but for what skip leaves out.
func (s sheet) want(t *rapid.T, what string, want sheet, skip func(key string) bool) {
	for _, key := range slices.Sorted(maps.Keys(want)) {
		if skip != nil && skip(key) {
			continue
		}
		got, ok := s[key]
		if d := got.plus(want[key], -1); !ok || math.Hypot(d.x, d.y) > near {
			t.Fatalf("%s: %s is at %.6f, %.6f mm (%v), want %.6f, %.6f", what, key, got.x/1e6, got.y/1e6, ok, want[key].x/1e6, want[key].y/1e6)
		}
	}
	for key := range s {
		if _, ok := want[key]; !ok && (skip == nil || !skip(key)) {
			t.Fatalf("%s: %s is there, and is not wanted", what, key)
		}
	}
}

// The school geometry is held to places that anybody can tell: see the shed.
func TestWhereThingsOfTheShedAre(t *testing.T) {
	s := sheetOf(shed(t))
	for key, want := range map[string]geom.Point{
		n1 + " middle": at(3*ft, 0), n1 + " an inch in front": at(3*ft, in), lamp + " middle": at(6*ft, 5*ft),
		door + " left end": at(11*ft, 10*ft), door + " right end": at(8*ft, 10*ft), window + " left end": at(12*ft, 3*ft),
		bench + " back left": at(0, 8*ft), bench + " front right": at(2*ft, 2*ft),
		front + " middle": at(2*ft, 7*ft), front + " an inch in front": at(2*ft+in, 7*ft),
		sink + " back left": at(ft-8*in, 5*ft+10*in),
	} {
		if got := s[key]; math.Hypot(got.x-float64(want.X), got.y-float64(want.Y)) > 1 {
			t.Errorf("%s is at %v, want %v", key, got, want)
		}
	}
}
