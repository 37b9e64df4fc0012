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

// oneSide makes a room of a use whose top side alone is wall, of a length.
func oneSide(h *ruletest.House, use plan.Use, length float64) *ruletest.Room {
	r := h.Square(use, 0, 0, length, 120)
	for _, s := range r.Sides[1:] {
		s.Kind = plan.SideOpen
	}
	return r
}

func TestWhatIsToldOfWalls(t *testing.T) {
	const said = "210.52(A)(1)"
	ruletest.Tells(t, &spacing.WallReach, []ruletest.Telling{
		ruletest.Told("no receptacle", func(h *ruletest.House) { oneSide(h, plan.UseBedroom, 200) }, `
			stop, NEC 2023 210.52(A)(1): bedroom/0 in bedroom of 72"
			16' 8" of wall in bedroom is not served by a receptacle
			This wall space is 16' 8" long and has no receptacle that counts; each point needs one within 6 ft along the wall.
			beside it: 16' 8" not served
			on bedroom/0 face from 0" to 200"
			Add 2 receptacles there:
			  now R1 duplex on bedroom/0 face 50", centre 16" up, PN2
			  now R2 duplex on bedroom/0 face 150", centre 16" up, PN2`, said+": two serve 24 ft, each the middle of a half"),
		ruletest.Told("one at 50 in", func(h *ruletest.House) {
			r := oneSide(h, plan.UseBedroom, 200)
			r.Opening("duplex", r.On(0, 50), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 210.52(A)(1): bedroom/0 in bedroom; 150" of 72"
			6' 6" of wall in bedroom is not served by a receptacle
			Its farthest point is 12' 6" along the wall from the nearest receptacle; the reach is 6 ft.
			beside it: 6' 6" not served
			on bedroom/0 face from 122" to 200"
			Add a receptacle there:
			  now R1 duplex on bedroom/0 face 161", centre 16" up, PN2`, said+": 50 + 72; the middle of 122 to 200"),
		// At 60 and 195 in, 8 in are left; once the second is at 203, 143 in lie between.
		ruletest.Told("one that may move", func(h *ruletest.House) {
			r := oneSide(h, plan.UseBedroom, 275)
			r.Opening("duplex", r.On(0, 60), ruletest.Tagged("A"))
			r.Opening("duplex", r.On(0, 195), ruletest.Tagged("B"))
		}, `
			stop, NEC 2023 210.52(A)(1): bedroom/0 in bedroom; 80" of 72"
			8" of wall in bedroom is not served by a receptacle
			Its farthest point is 6' 8" along the wall from the nearest receptacle; the reach is 6 ft.
			beside it: 8" not served
			on bedroom/0 face from 267" to 275"
			Move B by 8":
			  no more B duplex on bedroom/0 face 195", centre 16" up, PN2
			  now B duplex on bedroom/0 face 203", centre 16" up, PN2
			Add a receptacle there:
			  now R1 duplex on bedroom/0 face 269", centre 16" up, PN2`, said+"; 6 in from the corner is common practice"),
		// Glass takes no box: 9 in before it, within the 18 in of (A)(3).
		ruletest.Told("glass", func(h *ruletest.House) { oneSide(h, plan.UseBedroom, 100).Sides[0].Kind = plan.SideGlass }, `
			stop, NEC 2023 210.52(A)(1): bedroom/0 in bedroom of 72"
			8' 4" of wall in bedroom is not served by a receptacle
			This wall space is 8' 4" long and has no receptacle that counts; each point needs one within 6 ft along the wall.
			beside it: 8' 4" not served
			on bedroom/0 face from 0" to 100"
			Add a floor receptacle there:
			  now R1 floor on bedroom floor 50", 9", FL1`, "210.52(A)(2)(2), (A)(3); 9 in is common practice"),
		ruletest.Told("nobody says what for", func(h *ruletest.House) { oneSide(h, plan.UseUnknown, 100).Room.Name = "X" }, `
			note, open, NEC 2023 210.52(A)(1): X
			X was not checked: its use is not known
			Whether its walls need receptacles depends on what the room is for; choose its use on its card.`, "what is not said is no fault"),
	})
}

func TestWhatIsToldOfCounters(t *testing.T) {
	const said = "210.52(C)(1)"
	counter := func(edition string, from, width float64, more func(*ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Fixture(plan.FixtureCounter, 0, from, width)
			if more != nil {
				more(r)
			}
		}
	}
	ruletest.Tells(t, &spacing.CounterReach, []ruletest.Telling{
		// Four, each in the middle of 37-1/2 in from 20 in on: 38-3/4, 76-1/4, 113-3/4, 151-1/4.
		ruletest.Told("no receptacle", counter("2023", 20, 150, nil), `
			stop, NEC 2023 210.52(C)(1): kitchen/0 in kitchen; 150"
			12' 6" of counter in kitchen is not served by a receptacle
			This counter is 12' 6" long and has no receptacle that counts; each point along the wall needs one within 24 in.
			beside it: 12' 6" not served
			on kitchen/0 face from 20" to 170"
			Add 4 counter receptacles there:
			  now R1 counter on kitchen/0 face 39", centre 42" up, PN3
			  now R2 counter on kitchen/0 face 76", centre 42" up, PN3
			  now R3 counter on kitchen/0 face 114", centre 42" up, PN3
			  now R4 counter on kitchen/0 face 151", centre 42" up, PN3`, said+": 150 in by 48"),
		ruletest.Told("one 20 in from its end", counter("2023", 40, 90, func(r *ruletest.Room) { r.Opening("counter", r.On(0, 60), ruletest.Tagged("A")) }), `
			stop, NEC 2023 210.52(C)(1): kitchen/0 in kitchen; 46"
			3' 10" of counter in kitchen is not served by a receptacle
			Its farthest point is 5' 10" along the wall from the nearest receptacle of this counter; the reach is 24 in.
			beside it: 3' 10" not served
			on kitchen/0 face from 84" to 130"
			Add a counter receptacle there:
			  now R1 counter on kitchen/0 face 107", centre 42" up, PN3`, said+": 60 + 24"),
	})
}

func TestWhatIsToldOfIslands(t *testing.T) {
	island := func(edition string, width, depth float64, more func(*ruletest.Room, *plan.Fixture)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			i := r.Island(120, 80, width, depth)
			if more != nil {
				more(r, i)
			}
		}
	}
	front := func(along, up float64) func(*ruletest.Room, *plan.Fixture) {
		return func(r *ruletest.Room, i *plan.Fixture) {
			r.Opening("island", plan.Anchor{Host: i.ID, Part: plan.PartFront, Along: ruletest.In(along)}, ruletest.Up(up), ruletest.Tagged("A"))
		}
	}
	const provide = `
			on island front from 0" to 60"
			Provide for a receptacle later:
			  no more island: provision false
			  now island: provision true`
	ruletest.Tells(t, &spacing.CounterReach, []ruletest.Telling{
		ruletest.Told("2014", island("2014", 60, 30, nil), `
			stop, NEC 2014 210.52(C)(2) and (3): island in kitchen; 1 of 1
			The island in kitchen lacks a receptacle
			Its top is 5' 0" by 2' 6"; receptacles that count stand in its top, at it up to 20 in above, or where the edition has it up to 12 in below.
			on island front from 0" to 60"
			Add a receptacle in its front:
			  now R1 island on island front 30", centre 30" up, PN3`, "210.52(C)(2), 2014: one; half of 12 in below its top"),
		// 96 by 54 in are 36 ft²: one for 9, and two for the further 27.
		ruletest.Told("2020, 36 square feet", island("2020", 96, 54, nil), `
			stop, NEC 2020 210.52(C)(2): island in kitchen; 3 of 3
			The island in kitchen lacks 3 of 3 receptacles
			Its top is 36 ft²: one receptacle for the first 9 ft² and one for each further 18 ft² or part of it.
			on island front from 0" to 96"
			Add 3 receptacles in its front:
			  now R1 island on island front 16", centre 30" up, PN3
			  now R2 island on island front 48", centre 30" up, PN3
			  now R3 island on island front 80", centre 30" up, PN3`, "210.52(C)(2), 2020"),
		ruletest.Told("2020, one of three", island("2020", 96, 54, front(20, 30)), `
			stop, NEC 2020 210.52(C)(2): island in kitchen; 2 of 3
			The island in kitchen lacks 2 of 3 receptacles
			Its top is 36 ft²: one receptacle for the first 9 ft² and one for each further 18 ft² or part of it.
			on island front from 0" to 96"`, "210.52(C)(2), 2020"),
		ruletest.Told("2023, none", island("2023", 60, 30, nil), `
			note, NEC 2023 210.52(C)(2): island in kitchen; 0
			The island in kitchen has no receptacle, and no provision for one is said
			NEC 2023 asks for none, but for provision to add one later: say on its card what was decided.`+provide, "210.52(C)(2), 2023"),
		ruletest.Told("2023, one below the top", island("2023", 60, 30, front(30, 30)), `
			note, NEC 2023 210.52(C)(2): island in kitchen; 0
			A stands below the counter that it is at and does not serve it
			NEC 2023 counts no receptacle below a counter; it asks for none there, but for provision to add one later.`+provide, "210.52(C)(3), 2023"),
		ruletest.Told("2017, a sink in the middle", island("2017", 100, 30, func(r *ruletest.Room, i *plan.Fixture) {
			r.InTop(i, plan.FixtureSink, 50, 15, 30, 20)
			i.Name = "The bar"
		}), `
			stop, NEC 2017 210.52(C)(2) and (3): island in kitchen; 2 of 2
			The bar in kitchen lacks 2 of 2 receptacles
			Its top is 8' 4" by 2' 6"; receptacles that count stand in its top, at it up to 20 in above, or where the edition has it up to 12 in below.
			on island front from 0" to 100"
			Add 2 receptacles in its front:
			  now R1 island on island front 17-1/2", centre 30" up, PN3
			  now R2 island on island front 82-1/2", centre 30" up, PN3`, "210.52(C)(2), 2017: less than 12 in behind a sink parts it, from 35 to 65"),
	})
	place := func(edition string, width, depth float64, change func(r *ruletest.Room, i *plan.Fixture, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			island(edition, width, depth, func(r *ruletest.Room, i *plan.Fixture) { change(r, i, over) })(h)
		}
	}
	at := func(part plan.Part, along, up float64, sign unit.Length) func(r *ruletest.Room, i *plan.Fixture, over unit.Length) {
		return func(r *ruletest.Room, i *plan.Fixture, over unit.Length) {
			r.Opening("island", plan.Anchor{Host: i.ID, Part: part, Along: ruletest.In(along)}, ruletest.Up(up)).Height.Value += sign * over
		}
	}
	peninsula := func(change func(r *ruletest.Room, f *plan.Fixture, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			f := r.Stand(plan.FixturePeninsula, plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(120), Y: ruletest.In(80)}), 40, 30)
			f.Depth = ruletest.In(32)
			change(r, f, over)
		}
	}
	ruletest.Edges(t, &spacing.CounterReach, []ruletest.Edge{
		ruletest.Limit("24 in long, 2014", place("2014", 24, 14, func(_ *ruletest.Room, i *plan.Fixture, over unit.Length) { i.Width -= over }), 0, 1, 0, "210.52(C)(2), 2014: 24 in or more"),
		ruletest.Limit("12 in deep, 2014", place("2014", 30, 12, func(_ *ruletest.Room, i *plan.Fixture, over unit.Length) { i.Depth -= over }), 0, 1, 0, "210.52(C)(2), 2014: 12 in or more"),
		ruletest.Limit("12 in long, 2020", place("2020", 12, 10, func(_ *ruletest.Room, i *plan.Fixture, over unit.Length) { i.Width -= over }), 0, 1, 0, "210.52(C)(1): counters of 12 in or more"),
		ruletest.Limit("9 square feet, 2020", place("2020", 36, 36, func(r *ruletest.Room, i *plan.Fixture, over unit.Length) {
			i.Depth += over
			at(plan.PartFront, 10, 30, 0)(r, i, 0)
		}), 0, 0, 1, "210.52(C)(2), 2020: the first 9 ft²"),
		ruletest.Limit("27 square feet, 2020", place("2020", 72, 54, func(r *ruletest.Room, i *plan.Fixture, over unit.Length) {
			i.Depth += over
			at(plan.PartFront, 10, 30, 0)(r, i, 0)
			at(plan.PartBack, 10, 30, 0)(r, i, 0)
		}), 0, 0, 1, "210.52(C)(2), 2020: each further 18 ft²"),
		ruletest.Limit("20 in above, 2023", place("2023", 60, 30, at(plan.PartFront, 30, 56, 1)), 0, 0, 1, "210.52(C)(3): not more than 20 in above"),
		ruletest.Limit("level with the top, 2023", place("2023", 60, 30, at(plan.PartFront, 30, 36, -1)), 0, 0, 1, "210.52(C)(3), 2023: none below"),
		ruletest.Limit("12 in below, 2020", place("2020", 36, 30, at(plan.PartFront, 30, 24, -1)), 0, 0, 1, "210.52(C)(3), 2020: not more than 12 in below"),
		ruletest.Limit("12 in of counter behind a sink, 2014", place("2014", 100, 34, func(r *ruletest.Room, i *plan.Fixture, over unit.Length) {
			r.InTop(i, plan.FixtureSink, 50, 22, 30, 20).At.Out -= over
			at(plan.PartFront, 50, 30, 0)(r, i, 0)
		}), 0, 0, 1, "210.52(C)(4), 2014: 12 in behind; parted, the ends have none"),
		ruletest.Limit("2 ft from the outer end", peninsula(func(r *ruletest.Room, f *plan.Fixture, over unit.Length) {
			// In its left side, 8 in from the back: 24 from the front.
			r.Opening("island", plan.Anchor{Host: f.ID, Part: plan.PartLeft, Along: ruletest.In(8)}, ruletest.Up(30)).At.Along -= over
		}), 0, 0, 1, "210.52(C)(2), 2020: one within 2 ft of the outer end of a peninsula"),
	})
}

func TestLimitsOfSpacing(t *testing.T) {
	wall := func(length float64, change func(r *ruletest.Room, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) { change(oneSide(h, plan.UseBedroom, length), over) }
	}
	plug := func(along, up float64, change func(*plan.Opening, unit.Length)) func(*ruletest.Room, unit.Length) {
		return func(r *ruletest.Room, over unit.Length) {
			change(r.Opening("duplex", r.On(0, along), ruletest.Up(up)), over)
		}
	}
	right := func(o *plan.Opening, over unit.Length) { o.At.Along += over }
	left := func(o *plan.Opening, over unit.Length) { o.At.Along -= over }
	higher := func(o *plan.Opening, over unit.Length) { o.Height.Value += over }
	ruletest.Edges(t, &spacing.WallReach, []ruletest.Edge{
		ruletest.Limit("6 ft from the left end", wall(100, plug(72, 16, right)), rule.Grain, 0, 1, "210.52(A)(1)"),
		ruletest.Limit("6 ft from the right end", wall(100, plug(28, 16, left)), rule.Grain, 0, 1, "210.52(A)(1)"),
		ruletest.Limit("12 ft between two", wall(150, func(r *ruletest.Room, over unit.Length) {
			plug(3, 16, right)(r, 0)
			plug(147, 16, right)(r, over)
		}), rule.Grain, 0, 1, "210.52(A)(1)"),
		ruletest.Limit("5-1/2 ft up", wall(100, plug(50, 66, higher)), 0, 0, 1, "210.52: 5-1/2 ft"),
		ruletest.Limit("24 in of wall", wall(100, func(r *ruletest.Room, over unit.Length) {
			r.Break(plan.BreakDoor, 0, 24, 76).At.Along -= over
		}), rule.Grain, 1, 0, "210.52(A)(2)(1): 24 in or more"),
		ruletest.Limit("18 in before glass", wall(100, func(r *ruletest.Room, over unit.Length) {
			r.Sides[0].Kind = plan.SideGlass
			r.Opening("floor", plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(50), Y: ruletest.In(18) + over}))
		}), rule.Grain, 0, 1, "210.52(A)(3): within 18 in"),
		ruletest.Limit("an inch from a wall", wall(100, func(r *ruletest.Room, over unit.Length) {
			plug(50, 16, right)(r, 0)
			r.Stand(plan.FixtureCabinet, plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(50), Y: ruletest.In(13) + over}), 40, 24)
		}), 0, 2, 0, "common practice: a filler is no more than an inch; 30 in are left at either hand"),
	})
	counter := func(width float64, change func(r *ruletest.Room, f *plan.Fixture, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			change(r, r.Fixture(plan.FixtureCounter, 0, 60, width), over)
		}
	}
	over36 := func(along, up float64, change func(*plan.Opening, unit.Length)) func(*ruletest.Room, *plan.Fixture, unit.Length) {
		return func(r *ruletest.Room, _ *plan.Fixture, over unit.Length) {
			change(r.Opening("counter", r.On(0, along), ruletest.Up(up)), over)
		}
	}
	inFront := func(part plan.Part, up float64) func(*ruletest.Room, *plan.Fixture, unit.Length) {
		return func(r *ruletest.Room, f *plan.Fixture, over unit.Length) {
			r.Opening("counter", plan.Anchor{Host: f.ID, Part: part, Along: ruletest.In(20)}, ruletest.Up(up)).Height.Value -= over
		}
	}
	ruletest.Edges(t, &spacing.CounterReach, []ruletest.Edge{
		ruletest.Limit("12 in wide", counter(12, func(_ *ruletest.Room, f *plan.Fixture, over unit.Length) { f.Width -= over }), rule.Grain, 1, 0, "210.52(C)(1): 12 in or wider"),
		ruletest.Limit("24 in from the left end", counter(40, over36(84, 42, right)), rule.Grain, 0, 1, "210.52(C)(1)"),
		ruletest.Limit("24 in from the right end", counter(40, over36(76, 42, left)), rule.Grain, 0, 1, "210.52(C)(1)"),
		ruletest.Limit("20 in above", counter(40, over36(80, 56, higher)), 0, 0, 1, "210.52(C)(3): not more than 20 in above"),
		ruletest.Limit("12 in below in its front, 2020", counter(40, inFront(plan.PartFront, 24)), 0, 0, 1, "210.52(C)(3), 2020"),
		ruletest.Limit("12 in behind a sink", counter(100, func(r *ruletest.Room, f *plan.Fixture, over unit.Length) {
			f.Depth = ruletest.In(34)
			r.InTop(f, plan.FixtureSink, 50, 22, 30, 20).At.Out -= over
			r.Opening("counter", r.On(0, 84), ruletest.Up(42))
			r.Opening("counter", r.On(0, 132), ruletest.Up(42)) // 48 in between them: all is served as one, and 4 in at the end
			r.Opening("counter", r.On(0, 145), ruletest.Up(42))
		}), 0, 0, 0, "210.52(C)(1) exception: either way each end is served"),
		ruletest.Limit("a sink parts the counter", counter(100, func(r *ruletest.Room, f *plan.Fixture, over unit.Length) {
			f.Depth = ruletest.In(34)
			r.InTop(f, plan.FixtureSink, 50, 22, 30, 20).At.Out -= over
			r.Opening("counter", r.On(0, 84), ruletest.Up(42))
			r.Opening("counter", r.On(0, 136), ruletest.Up(42))
		}), 0, 1, 0, "210.52(C)(1) exception: 4 in in the middle lie behind the sink"),
		ruletest.Limit("the dishwasher an inch past it", counter(40, func(r *ruletest.Room, f *plan.Fixture, over unit.Length) {
			r.Fixture(plan.FixtureDishwasher, 0, 101, 24).At.Along += over
			r.Opening("counter", r.On(0, 80), ruletest.Up(42))
		}), 0, 1, 0, "a counter runs over a dishwasher beside it; a filler is no more than an inch, common practice"),
	})
}

func TestWhatIsToldOfSwitchedReceptacles(t *testing.T) {
	of := func(use plan.Use, kind string, change func(h *ruletest.House, r *ruletest.Room, o *plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(use, 0, 0, 120, 120)
			at := r.On(0, 60)
			if kind == "floor" {
				at = plan.OnFloor(r.Room.ID, r.Ceiling(60, 60).At)
			}
			o := r.Opening(kind, at, ruletest.Tagged("A"))
			if change != nil {
				change(h, r, o)
			}
			h.Control([]*plan.Opening{r.Opening("switch", r.On(1, 60))}, []*plan.Opening{o})
		}
	}
	const said = "210.52: receptacles controlled by a wall switch in place of a lighting outlet are not counted"
	const told = `
			note, open, NEC 2023 210.52: A in bedroom
			A is drawn as the load of a switch and does not count for the wall
			Nothing is entered of its halves, so it is taken as switched as a whole: then it lights the room and serves no wall. Where one half is always on, enter that on its yoke.
			Switch one half of A only:`
	ruletest.Tells(t, &spacing.Controlled, []ruletest.Telling{
		ruletest.Told("one of its kind", of(plan.UseBedroom, "duplex", nil), told+`
			  no more A duplex on bedroom/0 face 60", centre 16" up, PN2
			  now A duplex on bedroom/0 face 60", centre 16" up, duplex receptacle half, PN2`, said),
		ruletest.Told("one of two yokes", of(plan.UseBedroom, "quad", func(_ *ruletest.House, _ *ruletest.Room, o *plan.Opening) {
			o.Devices = []plan.Device{{Kind: "duplex receptacle"}, {Kind: "one-pole switch"}}
		}), told+`
			  no more A quad on bedroom/0 face 60", centre 16" up, duplex receptacle , one-pole switch , PN4
			  now A quad on bedroom/0 face 60", centre 16" up, duplex receptacle half, one-pole switch half, PN4`, said),
	})
	ruletest.Try(t, &spacing.Controlled, []ruletest.Trial{
		ruletest.Case("in the floor", of(plan.UseBedroom, "floor", nil), 1, said),
		ruletest.Case("one that goes", of(plan.UseBedroom, "duplex", func(_ *ruletest.House, _ *ruletest.Room, o *plan.Opening) { o.Status = plan.StatusRemove }), 0, "it will not be there"),
		ruletest.Case("a kind that is wholly switched", of(plan.UseBedroom, "switched", nil), 0, "its kind says so"),
		ruletest.Case("a kind that is half switched", of(plan.UseBedroom, "half-switched", nil), 0, "its kind says so"),
		ruletest.Case("a yoke that is half switched", of(plan.UseBedroom, "duplex", func(_ *ruletest.House, _ *ruletest.Room, o *plan.Opening) {
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Switched: plan.HalfSwitched}}
		}), 0, "its yoke says so"),
		ruletest.Case("a yoke that is wholly switched", of(plan.UseBedroom, "duplex", func(_ *ruletest.House, _ *ruletest.Room, o *plan.Opening) {
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Switched: plan.WhollySwitched}}
		}), 0, "its yoke says so"),
		ruletest.Case("a light", of(plan.UseBedroom, "wall-light", nil), 0, "it is no receptacle"),
		ruletest.Case("a bath", of(plan.UseBath, "duplex", nil), 0, "210.52(A) names no baths"),
		ruletest.Case("a range's", of(plan.UseKitchen, "range", nil), 0, "it serves no wall"),
	})
}
