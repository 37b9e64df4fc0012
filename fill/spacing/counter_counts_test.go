package spacing_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestWhatCountsForACounter: receptacle outlets of 125 V above it, in its top, or of 2020 in its
// front up to 12 in below, that no switch controls as a whole, in no cabinet and in no glass
// (NEC 2023 210.52(C), NEC 2020 210.52(C)(3)).
func TestWhatCountsForACounter(t *testing.T) {
	of := func(edition string, change func(h *ruletest.House, r *ruletest.Room, f *plan.Fixture)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			change(h, r, r.Fixture(plan.FixtureCounter, 0, 60, 40))
		}
	}
	above := func(kind string, up float64, more ...func(*plan.Opening)) func(*ruletest.House) {
		return of("2023", func(_ *ruletest.House, r *ruletest.Room, _ *plan.Fixture) {
			r.Opening(kind, r.On(0, 80), append([]func(*plan.Opening){ruletest.Up(up)}, more...)...)
		})
	}
	in := func(edition string, part plan.Part, kind string, up float64, change func(*plan.Fixture)) func(*ruletest.House) {
		return of(edition, func(_ *ruletest.House, r *ruletest.Room, f *plan.Fixture) {
			change(f)
			at := plan.Anchor{Host: f.ID, Part: part, Along: ruletest.In(20)}
			if part == plan.PartTop {
				at.Out = ruletest.In(12)
			}
			r.Opening(kind, at, ruletest.Up(up))
		})
	}
	as := func(*plan.Fixture) {}
	whole := func(o *plan.Opening) {
		o.Devices = []plan.Device{{Kind: "duplex receptacle", Switched: plan.WhollySwitched}}
	}
	const said, switched, place = "210.52(C)", "210.52: controlled by a wall switch", "210.52: not within cabinets; no box is set in glass"
	ruletest.Try(t, &spacing.CounterReach, []ruletest.Trial{
		ruletest.Case("a counter's", above("counter", 42), 0, said),
		ruletest.Case("any duplex", above("duplex", 42), 0, said),
		ruletest.Case("one that goes", above("counter", 42, ruletest.Removed), 1, "it will not be there"),
		ruletest.Case("a jack", above("data", 42), 1, "it is no receptacle"),
		ruletest.Case("a dryer's", above("dryer", 42), 1, "210.52: 125 V"),
		ruletest.Case("switched by its kind", above("switched", 42), 1, switched),
		ruletest.Case("switched by its yoke", above("duplex", 42, whole), 1, switched),
		ruletest.Case("the load of a switch", of("2023", func(h *ruletest.House, r *ruletest.Room, _ *plan.Fixture) {
			o := r.Opening("counter", r.On(0, 80), ruletest.Up(42))
			h.Control([]*plan.Opening{r.Opening("switch", r.On(1, 30))}, []*plan.Opening{o})
		}), 1, switched),
		ruletest.Case("below it in the wall", above("duplex", 16), 1, said+": above it"),
		ruletest.Case("in glass", of("2023", func(_ *ruletest.House, r *ruletest.Room, _ *plan.Fixture) {
			r.Break(plan.BreakWindow, 0, 70, 20, func(b *plan.Break) { b.Sill = ruletest.In(40) })
			r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		}), 1, place),
		ruletest.Case("in a cabinet that hangs low", of("2023", func(_ *ruletest.House, r *ruletest.Room, _ *plan.Fixture) {
			r.Fixture(plan.FixtureUpper, 0, 60, 40, func(f *plan.Fixture) { f.Bottom = ruletest.In(40) })
			r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		}), 1, place),
		ruletest.Case("in its top", in("2023", plan.PartTop, "counter", 0, as), 0, said+"(3)"),
		ruletest.Case("a jack in its top", in("2023", plan.PartTop, "data", 0, as), 1, "it is no receptacle"),
		ruletest.Case("in its front, 2020", in("2020", plan.PartFront, "counter", 30, as), 0, said+"(3), 2020"),
		ruletest.Case("a jack in its front, 2020", in("2020", plan.PartFront, "data", 30, as), 1, "it is no receptacle"),
		ruletest.Case("in its left, 2020", in("2020", plan.PartLeft, "counter", 30, as), 1, "its left is no wall line"),
		ruletest.Case("in its front, 2017", in("2017", plan.PartFront, "counter", 30, as), 1, said+"(5), 2017"),
		ruletest.Case("in its front, 2023", in("2023", plan.PartFront, "counter", 30, as), 1, said+"(3), 2023"),
		ruletest.Case("in its front, 13 in below", in("2020", plan.PartFront, "counter", 23, as), 1, said+"(3), 2020"),
		ruletest.Case("in what is no counter", in("2020", plan.PartTop, "counter", 0, func(f *plan.Fixture) { f.Kind = plan.FixtureRange }), 0, "a range by itself has no counter line"),
		ruletest.Case("one that hangs", in("2020", plan.PartFront, "data", 30, func(f *plan.Fixture) { f.Bottom = 1 }), 0, "a shelf is no counter"),
		ruletest.Case("a counter that stands on the floor there", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Stand(plan.FixtureCounter, onFloor(r, 80, 12), 40, 24)
			r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		}, 0, said),
		ruletest.Case("over a dishwasher beside it", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Fixture(plan.FixtureCounter, 0, 80, 20)
			r.Fixture(plan.FixtureDishwasher, 0, 100, 24)
			r.Opening("counter", r.On(0, 104), ruletest.Up(42))
		}, 0, said+": a counter runs over it, 24 in to the left and 20 to the right"),
		ruletest.Case("in a bath", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 160)
			r.Fixture(plan.FixtureCounter, 0, 60, 40)
		}, 0, "210.52(C) names none"),
	})
	// The higher one of two that meet at the receptacle counts: it is to be above both.
	steps := func(h *ruletest.House, over unit.Length) {
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		r.Fixture(plan.FixtureCounter, 0, 60, 20)
		r.Fixture(plan.FixtureCounter, 0, 80, 20, func(f *plan.Fixture) { f.Height = ruletest.In(42) })
		r.Opening("counter", r.On(0, 80), ruletest.Up(42)).Height.Value += over
	}
	level := func(h *ruletest.House, over unit.Length) {
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		r.Fixture(plan.FixtureCounter, 0, 60, 40)
		r.Opening("counter", r.On(0, 80), ruletest.Up(36)).Height.Value += over
	}
	off := func(h *ruletest.House, over unit.Length) {
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		r.Stand(plan.FixtureCounter, onFloor(r, 80, 13), 40, 24).At.At.Y += over
		r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		r.Stand(plan.FixtureCounter, onFloor(r, 200, 12), 20, 24) // not served either way
	}
	machine := func(left float64, sign unit.Length) func(h *ruletest.House, over unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Fixture(plan.FixtureCounter, 0, 60, 40)
			r.Fixture(plan.FixtureDishwasher, 0, left, 24).At.Along += sign * over
			r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		}
	}
	front := func(h *ruletest.House, over unit.Length) {
		h.Edition = "2020"
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		f := r.Fixture(plan.FixtureCounter, 0, 60, 40)
		r.Opening("counter", plan.Anchor{Host: f.ID, Part: plan.PartFront, Along: ruletest.In(20)}, ruletest.Up(36)).Height.Value += over
	}
	ruletest.Edges(t, &spacing.CounterReach, []ruletest.Edge{
		ruletest.Limit("in its front, level with its top", front, 0, 0, 1, said+"(3), 2020: below it"),
		ruletest.Limit("level with the higher of two", steps, 0, 1, 0, place+"; 210.52(C)(3): above it"),
		ruletest.Limit("level with its top", level, 0, 1, 0, place),
		ruletest.Limit("an inch from the wall", off, 0, 1, 2, "common practice: a filler is no more; else it is an island without one"),
		ruletest.Limit("a dishwasher an inch left of it", machine(35, -1), 0, 1, 0, "a counter runs over one beside it, common practice: 45 in to its left end"),
	})
}
