package clash_test

import (
	"testing"

	"studbay/fill/clash"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// halfPlate is half the height of a standard plate of 4.49 in.
const halfPlate = unit.Length(57_023_000)

func TestLimitsOfClashes(t *testing.T) {
	const practice = "common practice: edges may touch"
	box := func(kind string, along, up unit.Length, right, higher unit.Length, before func(r *ruletest.Room)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := aRoom(h)
			if before != nil {
				before(r)
			}
			o := put("A", kind, 0, 0, 0)(r)
			o.At.Along, o.Height = along+right*over, plan.CentreAt(up+higher*over)
		}
	}
	ruletest.Edges(t, &clash.PlateClash, []ruletest.Edge{
		ruletest.Limit("the left corner", box("duplex", 11*unit.Inch/8, 16*unit.Inch, -1, 0, nil), 0, 0, 1, practice+": half of 2-3/4"),
		ruletest.Limit("the right corner", box("duplex", 144*unit.Inch-11*unit.Inch/8, 16*unit.Inch, 1, 0, nil), 0, 0, 1, practice),
		ruletest.Limit("a plate at its left", box("duplex", 171*unit.Inch/4, 16*unit.Inch, -1, 0, func(r *ruletest.Room) { put("B", "duplex", 0, 40, 16)(r) }), 0, 0, 1, practice+": 2-3/4 apart"),
		ruletest.Limit("a plate at its right", box("duplex", 149*unit.Inch/4, 16*unit.Inch, 1, 0, func(r *ruletest.Room) { put("B", "duplex", 0, 40, 16)(r) }), 0, 0, 1, practice),
		ruletest.Limit("a plate below it", box("duplex", 40*unit.Inch, 16*unit.Inch+2*halfPlate, 0, -1, func(r *ruletest.Room) { put("B", "duplex", 0, 40, 16)(r) }), 0, 0, 1, practice+": 4.49 apart"),
	})
	door := func(r *ruletest.Room) {
		r.Break(plan.BreakDoor, 0, 40, 30, func(b *plan.Break) { b.Casing = ruletest.In(3) })
	}
	ruletest.Edges(t, &clash.Casing, []ruletest.Edge{
		ruletest.Limit("trim at its left", box("duplex", ruletest.In(73.3125+1.375), 16*unit.Inch, -1, 0, door), 0, 0, 1, practice+": 70 + 5/16 + 3"),
		ruletest.Limit("trim at its right", box("duplex", ruletest.In(36.6875-1.375), 16*unit.Inch, 1, 0, door), 0, 0, 1, practice+": 40 − 5/16 − 3"),
		ruletest.Limit("trim below it", box("duplex", 55*unit.Inch, ruletest.In(83.3125)+halfPlate, 0, -1, door), 0, 0, 1, practice+": 80 + 5/16 + 3"),
	})
	counter := func(splash float64) func(r *ruletest.Room) {
		return func(r *ruletest.Room) {
			r.Fixture(plan.FixtureCounter, 0, 60, 30, func(f *plan.Fixture) { f.Splash = ruletest.In(splash) })
		}
	}
	ruletest.Edges(t, &clash.Covered, []ruletest.Edge{
		ruletest.Limit("left of a counter", box("duplex", ruletest.In(58.625), 16*unit.Inch, 1, 0, counter(0)), 0, 0, 1, practice),
		ruletest.Limit("right of a counter", box("duplex", ruletest.In(91.375), 16*unit.Inch, -1, 0, counter(0)), 0, 0, 1, practice),
		ruletest.Limit("over a counter", box("duplex", 75*unit.Inch, 36*unit.Inch+halfPlate, 0, -1, counter(0)), 0, 0, 1, practice),
		ruletest.Limit("over its splash", box("duplex", 75*unit.Inch, 40*unit.Inch+halfPlate, 0, -1, counter(4)), 0, 0, 1, practice),
		ruletest.Limit("all on its splash, to its top", box("duplex", 75*unit.Inch, 54*unit.Inch-halfPlate, 0, 1, counter(18)), 0, 0, 1, practice),
		ruletest.Limit("all on its splash, from its bottom", box("duplex", 75*unit.Inch, 36*unit.Inch+halfPlate, 0, -1, counter(18)), 0, 0, 1, practice),
	})
	ruletest.Edges(t, &clash.HeightOutlier, []ruletest.Edge{
		ruletest.Limit("1/4 in over its fellows", box("duplex", 20*unit.Inch, 65*unit.Inch/4, 0, 1, func(r *ruletest.Room) {
			for i, tag := range []string{"B", "C", "D"} {
				put(tag, "duplex", 1, 20+20*float64(i), 16)(r)
			}
		}), 0, 0, 1, "common practice: 1/4 in is not seen"),
		ruletest.Limit("1/4 in below them", box("duplex", 20*unit.Inch, 63*unit.Inch/4, 0, -1, func(r *ruletest.Room) {
			for i, tag := range []string{"B", "C", "D"} {
				put(tag, "duplex", 1, 20+20*float64(i), 16)(r)
			}
		}), 0, 0, 1, "common practice"),
	})
	mirror := func(r *ruletest.Room) {
		r.Fixture(plan.FixtureMirror, 0, 60, 30, func(f *plan.Fixture) { f.Bottom = ruletest.In(42) })
		put("B", "wall-light", 0, 55, 63)(r)
	}
	ruletest.Edges(t, &clash.Pair, []ruletest.Edge{
		ruletest.Limit("a sixteenth farther off", box("wall-light", ruletest.In(95.0625), 63*unit.Inch, 1, 0, mirror), 0, 0, 1, "common practice: a tape is read to that"),
		ruletest.Limit("a sixteenth nearer", box("wall-light", ruletest.In(94.9375), 63*unit.Inch, -1, 0, mirror), 0, 0, 1, "common practice"),
		ruletest.Limit("a sixteenth higher", box("wall-light", 95*unit.Inch, ruletest.In(63.0625), 0, 1, mirror), 0, 0, 1, "common practice"),
		ruletest.Limit("a sixteenth lower", box("wall-light", 95*unit.Inch, ruletest.In(62.9375), 0, -1, mirror), 0, 0, 1, "common practice"),
	})
	asked := func(r *ruletest.Room) { r.Room.Reach = true }
	ruletest.Edges(t, &clash.Reach, []ruletest.Edge{
		ruletest.Limit("a rocker of 2-5/8 up to 48 in", box("switch", 40*unit.Inch, ruletest.In(48-1.3125), 0, 1, asked), 0, 0, 1, "ADA 2010 308.2.1"),
		ruletest.Limit("a rocker from 15 in on", box("switch", 40*unit.Inch, ruletest.In(15+1.3125), 0, -1, asked), 0, 0, 1, "ADA 2010 308.2.1"),
	})
	// A leaf of 30 in hangs 12 in off the left wall, where it reaches from 90 to 120.
	leaf := func(along, up float64, change func(b *plan.Break, o *plan.Opening, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := aRoom(h)
			b := r.Break(plan.BreakDoor, 0, 12, 30, func(b *plan.Break) { b.Hand, b.Swing = plan.HandLeft, plan.SwingIn })
			change(b, put("A", "duplex", 3, along, up)(r), over)
		}
	}
	ruletest.Edges(t, &clash.DoorSwing, []ruletest.Edge{
		ruletest.Limit("12 in off", leaf(100, 16, func(b *plan.Break, _ *plan.Opening, over unit.Length) { b.At.Along += over }), 0, 1, 0, "common practice: 12 in"),
		ruletest.Limit("as high as its head", leaf(100, 81.875, func(_ *plan.Break, o *plan.Opening, over unit.Length) { o.Height.Value -= over }), 0, 0, 1, "common practice: 80 and half of 3-3/4"),
		ruletest.Limit("its end", leaf(88.8125, 16, func(_ *plan.Break, o *plan.Opening, over unit.Length) { o.At.Along += unit.Inch/32 + over }), 0, 0, 1, "common practice: 90 less half of 2-5/16"),
	})
}

// TestRaisedOutOfCover: a box behind the top of a counter is offered straight above it, where no
// box, no cabinet and no ceiling is: 36 + 2.245 is 38-1/4 on a tape, its plate ends at 40.495.
func TestRaisedOutOfCover(t *testing.T) {
	for _, tt := range []struct {
		name string
		make func(r *ruletest.Room)
		want bool
	}{
		{"nothing over it", func(*ruletest.Room) {}, true},
		{"a box over it", func(r *ruletest.Room) { put("B", "duplex", 0, 75, 42)(r) }, false},
		{"a box over that", func(r *ruletest.Room) { put("B", "duplex", 0, 75, 42.75)(r) }, true},
		{"a cabinet over it", func(r *ruletest.Room) {
			r.Fixture(plan.FixtureUpper, 0, 60, 30, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(40.4375), ruletest.In(30) })
		}, false},
		{"a cabinet just over it", func(r *ruletest.Room) {
			r.Fixture(plan.FixtureUpper, 0, 60, 30, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(40.5), ruletest.In(30) })
		}, true},
		{"a ceiling over it", func(r *ruletest.Room) { r.Room.Ceiling = ruletest.In(40.4375) }, false},
		{"a ceiling just over it", func(r *ruletest.Room) { r.Room.Ceiling = ruletest.In(40.5) }, true},
		{"a window over it", func(r *ruletest.Room) {
			r.Break(plan.BreakWindow, 0, 60, 30, func(b *plan.Break) { b.Sill, b.Head = ruletest.In(40), ruletest.In(70) })
		}, false},
	} {
		h := ruletest.New(t)
		r := aRoom(h)
		r.Fixture(plan.FixtureCounter, 0, 60, 30)
		put("A", "duplex", 0, 75, 36)(r)
		tt.make(r)
		got := false
		for _, f := range h.Found(&clash.Covered) {
			for _, remedy := range f.Remedies {
				got = got || remedy.Label.String() == `Raise A by 2-1/4"`
			}
		}
		if got != tt.want {
			t.Errorf("%s: offered to be raised: %v", tt.name, got)
		}
	}
}
