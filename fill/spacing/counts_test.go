package spacing_test

import (
	"testing"

	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// aWall makes a room of a use with 60 in of wall, which one receptacle serves wherever it is.
func aWall(use plan.Use, change func(h *ruletest.House, r *ruletest.Room)) func(*ruletest.House) {
	return func(h *ruletest.House) { change(h, oneSide(h, use, 60)) }
}

func onFloor(r *ruletest.Room, x, y float64) plan.Anchor {
	return plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(x), Y: ruletest.In(y)})
}

// TestWhatCountsForAWall: a wall is served by a receptacle outlet of 125 V that is not wholly
// switched, in no cabinet and in no glass (NEC 2023 210.52, 210.52(A)).
func TestWhatCountsForAWall(t *testing.T) {
	const switched, place = "210.52: controlled by a wall switch in place of a light", "210.52: not within cabinets; no box is set in glass"
	of := func(use plan.Use, kind string, change func(*plan.Opening)) func(*ruletest.House) {
		return aWall(use, func(_ *ruletest.House, r *ruletest.Room) { change(r.Opening(kind, r.On(0, 30), ruletest.Up(16))) })
	}
	yokes := func(kind string, devices ...plan.Device) func(*ruletest.House) {
		return of(plan.UseBedroom, kind, func(o *plan.Opening) { o.Devices = devices })
	}
	load := func(kind string, devices ...plan.Device) func(*ruletest.House) {
		return aWall(plan.UseBedroom, func(h *ruletest.House, r *ruletest.Room) {
			o := r.Opening(kind, r.On(0, 30), func(o *plan.Opening) { o.Devices = devices })
			h.Control([]*plan.Opening{r.Opening("switch", r.On(0, 5))}, []*plan.Opening{o})
		})
	}
	upper := func(side int, along, up float64) func(*ruletest.House) {
		return aWall(plan.UseBedroom, func(_ *ruletest.House, r *ruletest.Room) {
			r.Fixture(plan.FixtureUpper, side, 0, 20, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(20), ruletest.In(20) })
			r.Opening("duplex", r.On(0, along), ruletest.Up(up))
		})
	}
	before := func(kind plan.FixtureKind, bottom float64, standing bool) func(*ruletest.House) {
		return aWall(plan.UseBedroom, func(_ *ruletest.House, r *ruletest.Room) {
			r.Sides[0].Kind = plan.SideGlass
			change := func(f *plan.Fixture) { f.Bottom = ruletest.In(bottom) }
			if standing {
				r.Stand(kind, onFloor(r, 30, 16), 20, 20, change)
			} else {
				r.Fixture(kind, 3, 98, 19, func(f *plan.Fixture) { f.Depth = ruletest.In(40); change(f) })
			}
			r.Opening("floor", onFloor(r, 30, 10))
		})
	}
	whole := func(kind string) plan.Device { return plan.Device{Kind: kind, Switched: plan.WhollySwitched} }
	plain, half := plan.Device{Kind: "duplex receptacle"}, plan.Device{Kind: "duplex receptacle", Switched: plan.HalfSwitched}
	as := func(*plan.Opening) {}
	ruletest.Try(t, &spacing.WallReach, []ruletest.Trial{
		ruletest.Case("a duplex", of(plan.UseBedroom, "duplex", as), 0, "210.52"),
		ruletest.Case("one that goes", of(plan.UseBedroom, "duplex", ruletest.Removed), 1, "it will not be there"),
		ruletest.Case("of a kind nobody knows", of(plan.UseBedroom, "duplex", func(o *plan.Opening) { o.Kind = "own" }), 1, "who says that it is a receptacle"),
		ruletest.Case("a counter's in a bedroom", of(plan.UseBedroom, "counter", as), 0, "it is a receptacle as any"),
		ruletest.Case("a counter's in a kitchen", of(plan.UseKitchen, "counter", as), 1, "210.52(C): those of counters are besides"),
		ruletest.Case("a duplex in a kitchen", of(plan.UseKitchen, "duplex", as), 0, "210.52(A)"),
		ruletest.Case("a washer's", of(plan.UseBedroom, "washer", as), 1, "210.50(C), 210.52: it is there for its machine"),
		ruletest.Case("a data jack", of(plan.UseBedroom, "data", as), 1, "it is no receptacle"),
		ruletest.Case("switched by its kind", of(plan.UseBedroom, "switched", as), 1, switched),
		ruletest.Case("half switched by its kind", of(plan.UseBedroom, "half-switched", as), 0, switched),
		ruletest.Case("its only yoke switched", yokes("duplex", whole("duplex receptacle")), 1, switched),
		ruletest.Case("one of two yokes switched", yokes("quad", whole("duplex receptacle"), plain), 0, switched),
		ruletest.Case("a yoke switched beside a switch", yokes("quad", whole("duplex receptacle"), plan.Device{Kind: "one-pole switch"}), 1, switched),
		ruletest.Case("a yoke beside a switched light", yokes("quad", plain, whole("pilot light")), 0, switched),
		ruletest.Case("a yoke in somebody's words", yokes("duplex", plan.Device{Kind: "own"}), 0, "it is of a kind that counts"),
		ruletest.Case("a yoke in somebody's words, switched", yokes("duplex", whole("own")), 1, switched),
		ruletest.Case("two in somebody's words, one switched", yokes("quad", whole("own"), plan.Device{Kind: "mine"}), 0, switched),
		ruletest.Case("switched by its kind, not by its yoke", yokes("switched", plain), 1, "a kind for the light is not for the wall"),
		ruletest.Case("the load of a switch", load("duplex"), 1, switched),
		ruletest.Case("the load of a switch by half", load("duplex", half), 0, switched),
		ruletest.Case("the load of a switch by half of one of two", load("quad", plain, half), 0, switched),
		ruletest.Case("the load of a switch, half by its kind", load("half-switched"), 0, switched),
		ruletest.Case("the load of a switch, half by its kind, whole by its yoke", load("half-switched", plain), 1, "a yoke says more than a kind"),
		ruletest.Case("in an upper cabinet that hangs low", upper(0, 10, 30), 1, place),
		ruletest.Case("at the very end of one", upper(0, 0, 30), 1, place),
		ruletest.Case("beside it", upper(0, 30, 30), 0, place),
		ruletest.Case("in one on the next wall, whose end is here", upper(1, 50, 30), 1, place),
		ruletest.Case("beside that end", upper(1, 30, 30), 0, place),
		ruletest.Case("in the floor", before(plan.FixtureDesk, 0, true), 0, "210.52(A)(3)"),
		ruletest.Case("in the floor under a cabinet", before(plan.FixtureCabinet, 0, true), 1, place),
		ruletest.Case("in the floor under one that hangs", before(plan.FixtureUpper, 54, true), 0, "the floor below it is free"),
		ruletest.Case("in the floor under one at another wall", before(plan.FixtureCabinet, 0, false), 1, place),
	})
	at := func(make func(r *ruletest.Room), plug func(o *plan.Opening, over unit.Length), along, up float64) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := oneSide(h, plan.UseBedroom, 60)
			make(r)
			plug(r.Opening("duplex", r.On(0, along), ruletest.Up(up)), over)
		}
	}
	window := func(r *ruletest.Room) {
		r.Break(plan.BreakWindow, 0, 20, 20, func(b *plan.Break) { b.Sill, b.Head = ruletest.In(12), ruletest.In(40) })
	}
	cabinet := func(r *ruletest.Room) {
		r.Fixture(plan.FixtureUpper, 0, 20, 20, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(12), ruletest.In(28) })
	}
	along := func(sign unit.Length) func(*plan.Opening, unit.Length) {
		return func(o *plan.Opening, over unit.Length) { o.At.Along += sign * over }
	}
	up := func(sign unit.Length) func(*plan.Opening, unit.Length) {
		return func(o *plan.Opening, over unit.Length) { o.Height.Value += sign * over }
	}
	ruletest.Edges(t, &spacing.WallReach, []ruletest.Edge{
		ruletest.Limit("the left of a window", at(window, along(1), 20, 16), 0, 0, 1, place),
		ruletest.Limit("the right of a window", at(window, along(-1), 40, 16), 0, 0, 1, place),
		ruletest.Limit("the sill of a window", at(window, up(1), 30, 12), 0, 0, 1, place),
		ruletest.Limit("the head of a window", at(window, up(-1), 30, 40), 0, 0, 1, place),
		ruletest.Limit("the left of a cabinet", at(cabinet, along(-1), 20, 16), 0, 1, 0, place),
		ruletest.Limit("the right of a cabinet", at(cabinet, along(1), 40, 16), 0, 1, 0, place),
		ruletest.Limit("the bottom of a cabinet", at(cabinet, up(-1), 30, 12), 0, 1, 0, place),
		ruletest.Limit("the top of a cabinet", at(cabinet, up(1), 30, 40), 0, 1, 0, place),
	})
}

// TestFloorReceptaclesBeforeWalls: one in the floor serves the wall straight before it within
// 18 in, or round the outside corner that it is so near (NEC 2023 210.52(A)(3)), but none
// through another wall.
func TestFloorReceptaclesBeforeWalls(t *testing.T) {
	const said = "210.52(A)(3): within 18 in of the wall"
	// The left wall alone is wall; a partition hangs down before it, 6 to 10 in off.
	notch := func(x, y float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Room(plan.UseBedroom, 0, 0, 6, 0, 6, 60, 10, 60, 10, 0, 200, 0, 200, 100, 0, 100)
			for _, s := range r.Sides[:7] {
				s.Kind = plan.SideOpen
			}
			r.Opening("floor", onFloor(r, x, y))
		}
	}
	// An outside corner at (100, 100) with 72 in of wall to either hand.
	corner := func(x, y float64, change func(r *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Room(plan.UseBedroom, 0, 0, 172, 0, 172, 100, 100, 100, 100, 172, 0, 172)
			for _, i := range []int{0, 1, 4, 5} {
				r.Sides[i].Kind = plan.SideOpen
			}
			if change != nil {
				change(r)
			}
			r.Opening("floor", onFloor(r, x, y))
		}
	}
	ruletest.Try(t, &spacing.WallReach, []ruletest.Trial{
		ruletest.Case("14 in before the wall", notch(14, 66), 0, said),
		ruletest.Case("18 in before it", notch(18, 66), 0, said),
		ruletest.Case("19 in before it", notch(19, 66), 1, said),
		ruletest.Case("14 in before it, another wall between", notch(14, 30), 1, "it stands before that wall, not this"),
		ruletest.Case("off an outside corner, 14-1/8 in", corner(90, 90, nil), 0, said),
		ruletest.Case("off it, a hair over 18 in", corner(87.25, 87.25, nil), 1, said+": √2 × 12-3/4 is 18.03"),
		ruletest.Case("off it, a hair under 18 in", corner(87.3125, 87.3125, nil), 0, said+": √2 × 12-11/16 is 17.94"),
		ruletest.Case("off the end of a wall", corner(90, 90, func(r *ruletest.Room) { r.Sides[2].Kind = plan.SideOpen }), 1, said+": no part of it is so near"),
		ruletest.Case("off the end, a pane farther on", corner(90, 90, func(r *ruletest.Room) {
			r.Sides[2].Kind = plan.SideOpen
			r.Break(plan.BreakSlider, 3, 30, 20, func(b *plan.Break) { b.Panels = []plan.Panel{plan.PanelFixed} })
		}), 1, said),
		ruletest.Case("before one wall beside the corner", corner(110, 90, nil), 1, "10 in past it: 10 in at the far end are left"),
	})
	ruletest.Edges(t, &spacing.WallReach, []ruletest.Edge{
		ruletest.Limit("on the line of the wall", func(h *ruletest.House, over unit.Length) {
			r := oneSide(h, plan.UseBedroom, 100)
			r.Sides[0].Kind = plan.SideGlass
			r.Opening("floor", onFloor(r, 50, 0)).At.At.Y -= over
		}, rule.Grain, 0, 1, said+"; not behind it"),
		// 200 nm past the end of the wall below the corner it is straight off neither.
		ruletest.Limit("18 in off an outside corner", func(h *ruletest.House, over unit.Length) {
			corner(82, 100, nil)(h)
			for o := range h.Plan.Levels[0].Openings.All() {
				o.At.At = o.At.At.Add(geom.Point{X: -over, Y: -200})
			}
		}, rule.Grain, 0, 1, said),
	})
}
