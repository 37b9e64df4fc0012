package spacing_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

// anIsland makes a kitchen of an edition with an island in the middle of its floor.
func anIsland(edition string, width, depth float64, change func(r *ruletest.Room, i *plan.Fixture)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		change(r, r.Island(120, 80, width, depth))
	}
}

// TestWhatServesAnIsland: receptacle outlets in its top or up to 20 in above it, to 2020 up to
// 12 in below it; of 2014 and 2017 each part of 24 by 12 in or larger, parted by what is set in
// it with less than 12 in behind, wants one (NEC 2014 and 2017 210.52(C)(2) to (5), NEC 2020 and
// 2023 210.52(C)(2) and (3)).
func TestWhatServesAnIsland(t *testing.T) {
	in := func(part plan.Part, kind string, along, out, up float64) func(r *ruletest.Room, i *plan.Fixture) {
		return func(r *ruletest.Room, i *plan.Fixture) {
			r.Opening(kind, plan.Anchor{Host: i.ID, Part: part, Along: ruletest.In(along), Out: ruletest.In(out)}, ruletest.Up(up))
		}
	}
	all := func(list ...func(*ruletest.Room, *plan.Fixture)) func(*ruletest.Room, *plan.Fixture) {
		return func(r *ruletest.Room, i *plan.Fixture) {
			for _, do := range list {
				do(r, i)
			}
		}
	}
	set := func(kind plan.FixtureKind, along, out, width, depth float64) func(*ruletest.Room, *plan.Fixture) {
		return func(r *ruletest.Room, i *plan.Fixture) { r.InTop(i, kind, along, out, width, depth) }
	}
	none := func(*ruletest.Room, *plan.Fixture) {}
	const counts, parts, sizes = "210.52(C)(3), (5)", "210.52(C)(4), 2014 and 2017", "210.52(C)(2), 2014 and 2017"
	ruletest.Try(t, &spacing.CounterReach, []ruletest.Trial{
		ruletest.Case("none", anIsland("2017", 60, 30, none), 1, sizes),
		ruletest.Case("one in its top", anIsland("2017", 60, 30, in(plan.PartTop, "counter", 30, 15, 0)), 0, counts),
		ruletest.Case("a jack in its top", anIsland("2017", 60, 30, in(plan.PartTop, "data", 30, 15, 0)), 1, "it is no receptacle"),
		ruletest.Case("a range's in its front", anIsland("2017", 60, 30, in(plan.PartFront, "range", 30, 0, 30)), 1, "210.52: 125 V"),
		ruletest.Case("one in its left", anIsland("2017", 60, 30, in(plan.PartLeft, "island", 10, 0, 30)), 0, counts),
		ruletest.Case("one too low", anIsland("2017", 60, 30, in(plan.PartLeft, "island", 10, 0, 20)), 1, counts),
		ruletest.Case("a sink in the middle, none", anIsland("2017", 100, 30, set(plan.FixtureSink, 50, 15, 30, 20)), 1, parts),
		ruletest.Case("one left of it", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 50, 15, 30, 20), in(plan.PartFront, "island", 10, 0, 30))), 1, parts),
		ruletest.Case("one to each hand", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 50, 15, 30, 20), in(plan.PartFront, "island", 35, 0, 30), in(plan.PartTop, "island", 65, 15, 0))), 0, parts),
		ruletest.Case("both to one hand", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 50, 15, 30, 20), in(plan.PartFront, "island", 10, 0, 30), in(plan.PartFront, "island", 34, 0, 30))), 1, parts),
		ruletest.Case("one before the sink", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 50, 15, 30, 20), in(plan.PartFront, "island", 50, 0, 30))), 1, parts),
		ruletest.Case("a cooktop in the middle, one before it", anIsland("2017", 100, 30, all(set(plan.FixtureRange, 50, 15, 30, 20), in(plan.PartFront, "island", 50, 0, 30))), 1, parts),
		ruletest.Case("a desk that stands on it parts nothing", anIsland("2017", 100, 30, all(set(plan.FixtureDesk, 50, 15, 30, 20), in(plan.PartFront, "island", 50, 0, 30))), 0, parts),
		ruletest.Case("12 in before the sink, none behind", anIsland("2017", 100, 34, all(set(plan.FixtureSink, 50, 12, 30, 20), in(plan.PartFront, "island", 50, 0, 30))), 0, parts+": an island has the counter on whichever side"),
		ruletest.Case("a sink at the left end, 70 in left", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 15, 15, 30, 20), in(plan.PartFront, "island", 90, 0, 30))), 0, parts),
		ruletest.Case("a sink at the right end, 70 in left", anIsland("2017", 100, 30, all(set(plan.FixtureSink, 85, 15, 30, 20), in(plan.PartFront, "island", 10, 0, 30))), 0, parts),
		ruletest.Case("two sinks, three parts, two served", anIsland("2017", 130, 30, all(set(plan.FixtureSink, 40, 15, 20, 20), set(plan.FixtureSink, 90, 15, 20, 20),
			in(plan.PartFront, "island", 10, 0, 30), in(plan.PartFront, "island", 65, 0, 30))), 1, parts),
		ruletest.Case("all three served", anIsland("2017", 130, 30, all(set(plan.FixtureSink, 40, 15, 20, 20), set(plan.FixtureSink, 90, 15, 20, 20),
			in(plan.PartFront, "island", 10, 0, 30), in(plan.PartFront, "island", 65, 0, 30), in(plan.PartFront, "island", 110, 0, 30))), 0, parts),
		ruletest.Case("too little left beside a sink", anIsland("2017", 50, 14, set(plan.FixtureSink, 25, 7, 30, 10)), 0, sizes+": 10 by 14 in at either hand"),
		ruletest.Case("10 in left at either hand, 30 deep", anIsland("2017", 50, 30, set(plan.FixtureSink, 25, 15, 30, 20)), 0, sizes),
		ruletest.Case("10 in long, 24 deep", anIsland("2017", 11, 24, none), 0, sizes),
		ruletest.Case("12 in long, 24 deep", anIsland("2017", 12, 24, none), 1, sizes),
		ruletest.Case("2020, in its top", anIsland("2020", 36, 30, in(plan.PartTop, "counter", 30, 15, 0)), 0, counts),
		ruletest.Case("2023, in its top", anIsland("2023", 60, 30, in(plan.PartTop, "counter", 30, 15, 0)), 0, counts),
		ruletest.Case("a counter that stands free", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Stand(plan.FixtureCounter, onFloor(r, 120, 80), 60, 30)
		}, 1, "a free-standing counter is an island"),
		ruletest.Case("one that stands at a wall", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Stand(plan.FixtureCounter, onFloor(r, 120, 15), 40, 30)
			r.Opening("counter", r.On(0, 120), ruletest.Up(42))
		}, 0, "it is no island: its wall is served"),
		ruletest.Case("a cabinet that stands free", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Stand(plan.FixtureCabinet, onFloor(r, 120, 80), 60, 30)
		}, 0, "it has no countertop"),
		ruletest.Case("in a bedroom", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseBedroom, 0, 0, 240, 160)
			r.Island(120, 80, 60, 30)
		}, 0, "210.52(C) names none"),
	})
}

// TestWhatServesAPeninsula: of 2017 a receptacle in the wall that it begins at, straight behind
// it and up to 20 in above it, serves it (argued); of 2014 and 2020 none does.
func TestWhatServesAPeninsula(t *testing.T) {
	of := func(edition, kind string, along, up float64) func(*ruletest.House) {
		return func(h *ruletest.House) { aPeninsula(h, edition, kind, along, up) }
	}
	const said = "210.52(C)(3), 2017"
	ruletest.Try(t, &spacing.CounterReach, []ruletest.Trial{
		ruletest.Case("in its wall", of("2017", "counter", 109, 42), 0, said),
		ruletest.Case("a jack in its wall", of("2017", "data", 109, 42), 1, "it is no receptacle"),
		ruletest.Case("in its wall, 2014", of("2014", "counter", 109, 42), 1, "210.52(C)(3), 2014: at its long edge"),
		ruletest.Case("in its wall, 2020", of("2020", "counter", 109, 42), 1, "210.52(C)(2), 2020"),
	})
	at := func(along, up float64, change func(o *plan.Opening, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) { change(aPeninsula(h, "2017", "counter", along, up), over) }
	}
	ruletest.Edges(t, &spacing.CounterReach, []ruletest.Edge{
		ruletest.Limit("20 in up", at(109, 56, func(o *plan.Opening, over unit.Length) { o.Height.Value += over }), 0, 0, 1, "210.52(C)(5): 20 in"),
		ruletest.Limit("level with its top", at(109, 36, func(o *plan.Opening, over unit.Length) { o.Height.Value -= over }), 0, 0, 1, "210.52(C)(5): above it"),
		ruletest.Limit("at its left edge", at(100, 42, func(o *plan.Opening, over unit.Length) { o.At.Along -= over }), 0, 0, 1, said),
		ruletest.Limit("at its right edge", at(118, 42, func(o *plan.Opening, over unit.Length) { o.At.Along += over }), 0, 0, 1, said),
	})
}

// aPeninsula makes one of 18 by 60 in that begins at the upper wall, 100 in along it, beside a
// counter whose receptacle at 98 in serves all of their wall, and an opening in that wall.
func aPeninsula(h *ruletest.House, edition, kind string, along, up float64) *plan.Opening {
	h.Edition = edition
	r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
	r.Fixture(plan.FixtureCounter, 0, 80, 20)
	r.Stand(plan.FixturePeninsula, r.On(0, 100), 18, 60)
	r.Opening("counter", r.On(0, 98), ruletest.Up(42))
	return r.Opening(kind, r.On(0, along), ruletest.Up(up))
}

// TestWhatIsOfferedForAnIsland: receptacles in its front, where the edition counts those below
// the top, it has a front of a foot and more that can carry one, and none is there yet.
func TestWhatIsOfferedForAnIsland(t *testing.T) {
	for _, tt := range []struct {
		name    string
		edition string
		make    func(r *ruletest.Room)
		want    string
	}{
		{"an island", "2017", func(r *ruletest.Room) { r.Island(120, 80, 60, 30) }, "Add a receptacle in its front"},
		{"a foot high", "2017", func(r *ruletest.Room) { r.Island(120, 80, 60, 30).Height = unit.Foot }, "Add a receptacle in its front"},
		{"a hair lower", "2017", func(r *ruletest.Room) { r.Island(120, 80, 60, 30).Height = unit.Foot - 1 }, ""},
		{"of 2023", "2023", func(r *ruletest.Room) { r.Island(120, 80, 60, 30) }, "Provide for a receptacle later"},
		{"a counter, which carries none", "2017", func(r *ruletest.Room) { r.Stand(plan.FixtureCounter, onFloor(r, 120, 80), 60, 30) }, ""},
		{"one with an opening", "2017", func(r *ruletest.Room) {
			r.Opening("island", plan.Anchor{Host: r.Island(120, 80, 60, 30).ID, Part: plan.PartFront, Along: ruletest.In(30)}, ruletest.Up(10))
		}, ""},
		{"a part too small beside a sink", "2017", func(r *ruletest.Room) {
			r.InTop(r.Island(120, 80, 60, 14), plan.FixtureSink, 15, 7, 24, 10)
		}, "Add a receptacle in its front"},
		{"two parts", "2017", func(r *ruletest.Room) { r.InTop(r.Island(120, 80, 90, 14), plan.FixtureSink, 45, 7, 24, 10) }, "Add 2 receptacles in its front"},
	} {
		h := ruletest.New(t)
		h.Edition = tt.edition
		tt.make(h.Square(plan.UseKitchen, 0, 0, 240, 160))
		got := ""
		for _, f := range h.Found(&spacing.CounterReach) {
			for _, r := range f.Remedies {
				got += r.Label.String()
			}
		}
		if got != tt.want {
			t.Errorf("%s: offered %q, want %q", tt.name, got, tt.want)
		}
	}
}

// TestNoneBelowAnIslandOf2026: no receptacle within 24 in below the top of an island or a
// peninsula, 210.52(C)(4); and electrical provision where there is none, (C)(2). Both by
// electricallicenserenewal.com, section 1860. In 2023 one below is a note alone.
func TestNoneBelowAnIslandOf2026(t *testing.T) {
	at := func(up float64) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			h.Edition = "2026"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			i := r.Island(120, 80, 60, 30)
			i.Provision = true
			o := r.Opening("island", plan.Anchor{Host: i.ID, Part: plan.PartFront, Along: ruletest.In(30)}, ruletest.Up(up))
			o.Height.Value -= over
		}
	}
	const said = "210.52(C)(4), 2026: within 24 in below"
	ruletest.Edges(t, &spacing.CounterReach, []ruletest.Edge{
		ruletest.Limit("24 in below", at(12), 0, 1, 0, said),
		ruletest.Limit("level with the top", at(36), 0, 0, 1, said),
	})
	in := func(part plan.Part) func(*ruletest.Room, *plan.Fixture) {
		return func(r *ruletest.Room, i *plan.Fixture) {
			r.Opening("island", plan.Anchor{Host: i.ID, Part: part, Along: ruletest.In(12), Out: ruletest.In(15)}, ruletest.Up(30))
		}
	}
	for _, tt := range []struct {
		name, edition string
		make          func(*ruletest.Room, *plan.Fixture)
		want          string
		section       string
	}{
		{"in a side, 2026", "2026", in(plan.PartLeft), "stop", "NEC 2026 210.52(C)(4)"},
		{"in a side, 2023", "2023", in(plan.PartLeft), "note", "NEC 2023 210.52(C)(2)"},
		{"none, 2026", "2026", func(*ruletest.Room, *plan.Fixture) {}, "note", "NEC 2026 210.52(C)(2)"},
		{"none, provided for, 2026", "2026", func(_ *ruletest.Room, i *plan.Fixture) { i.Provision = true }, "", ""},
		{"in the top, 2026", "2026", in(plan.PartTop), "", ""},
	} {
		h := ruletest.New(t)
		anIsland(tt.edition, 60, 30, tt.make)(h)
		var severity, section string
		for _, f := range h.Found(&spacing.CounterReach) {
			severity, section = f.Severity.String(), f.Section
		}
		if severity != tt.want || section != tt.section {
			t.Errorf("%s: %q by %q, want %q by %q", tt.name, severity, section, tt.want, tt.section)
		}
	}
}
