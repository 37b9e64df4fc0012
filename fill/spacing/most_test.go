package spacing_test

import (
	"testing"

	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// found judges a room by figures of one's own.
func found(r *filltest.Room, by *rule.Rule, fig *code.Figures) []rule.Finding {
	r.T.Helper()
	v, ok := index.New(r.Plan()).RoomView(r.Room.ID)
	if !ok {
		r.T.Fatal("no such room")
	}
	return by.Room(v, fig)
}

// adds counts what a remedy adds.
func adds(of rule.Remedy) int {
	if steps, ok := of.Edit.(edit.Steps); ok {
		return len(steps.Edits)
	}
	return 1
}

// TestTheMostThatIsOffered: 64 receptacles; more is no remedy but a figure mistyped. Each serves
// 12 in of wall where the reach is 6.
func TestTheMostThatIsOffered(t *testing.T) {
	fig := *code.Latest()
	fig.Spacing.WallReach, fig.Spacing.CounterReach = in(6), in(6)
	for length, want := range map[float64]int{24: 2, 25: 3, 763: 64, 768: 64, 769: 0, 780: 0} {
		r := filltest.OneWall(t, length)
		got := 0
		for _, f := range found(r, &spacing.WallReach, &fig) {
			for _, remedy := range f.Remedies {
				got += adds(remedy)
			}
		}
		if got != want {
			t.Errorf("%v in of wall: %d are offered, want %d", length, got, want)
		}
		r = filltest.OneWall(t, length+100)
		r.Room.Use = plan.UsePantry
		r.Fixture(plan.FixtureCounter, 0, 50, length)
		got = 0
		for _, f := range found(r, &spacing.CounterReach, &fig) {
			for _, remedy := range f.Remedies {
				got += adds(remedy)
			}
		}
		if got != want {
			t.Errorf("%v in of counter: %d are offered, want %d", length, got, want)
		}
	}
	// 1600 square feet of island would want 90 by 210.52(C)(2), 2020.
	fig = *must(code.Edition("2020"))
	for _, tt := range []struct{ feet, want int64 }{{30, 51}, {40, 64}} {
		r := filltest.Square(t, 2000)
		r.Room.Use = plan.UseKitchen
		r.Standing(plan.FixtureIsland, 1000, 1000, float64(12*tt.feet), float64(12*tt.feet))
		if all := found(r, &spacing.CounterReach, &fig); len(all) != 1 || all[0].Limit.Value != tt.want || all[0].Stretches[0].From != 0 || all[0].Stretches[0].To != unit.Length(tt.feet)*unit.Foot {
			t.Errorf("%d ft square: %+v, want %d", tt.feet, all, tt.want)
		}
	}
}

func must(fig *code.Figures, err error) *code.Figures {
	if err != nil {
		panic(err)
	}
	return fig
}

// One receptacle serves 48 in of counter from just its middle, wherever that is on a tape, and
// two 96.
func TestTheFewestServeACounterOfAnyPlace(t *testing.T) {
	for _, from := range []float64{12, 12.25, 12.5, 12.9375} {
		r := filltest.OneWall(t, 100)
		r.Room.Use = plan.UsePantry
		r.Fixture(plan.FixtureCounter, 0, from, 48)
		all := found(r, &spacing.CounterReach, code.Latest())
		if len(all) != 1 || len(all[0].Remedies) != 1 || adds(all[0].Remedies[0]) != 1 {
			t.Errorf("from %v: %+v", from, all)
			continue
		}
		if o := added(r, all[0].Remedies[0]); o.At.Along != in(from+24) {
			t.Errorf("from %v: at %s, want %v", from, o.At.Along.Inches(16), from+24)
		}
		r = filltest.OneWall(t, 200)
		r.Room.Use = plan.UsePantry
		r.Fixture(plan.FixtureCounter, 0, from, 96)
		if all := found(r, &spacing.CounterReach, code.Latest()); len(all) != 1 || len(all[0].Remedies) != 1 || adds(all[0].Remedies[0]) != 2 {
			t.Errorf("96 in from %v: %+v", from, all)
		}
	}
}

// TestHowHighServeSetsThem: as usual, no higher than counts, and above a counter that takes all
// of a wall (in rooms that 210.52(C) does not name a receptacle there serves the wall).
func TestHowHighServeSetsThem(t *testing.T) {
	low := *code.Latest()
	low.Spacing.ReceptacleMaxHeight = in(12)
	even := *code.Latest()
	even.Spacing.ReceptacleMaxHeight = in(16)
	for _, tt := range []struct {
		name    string
		fig     *code.Figures
		counter float64
		want    float64
	}{
		{"as usual", code.Latest(), 0, 16}, {"no higher than counts", &low, 0, 12}, {"just as high", &even, 0, 16},
		{"above a counter", code.Latest(), 100, 42}, {"beside one", code.Latest(), 20, 16},
	} {
		r := filltest.OneWall(t, 100)
		if tt.counter > 0 {
			r.Fixture(plan.FixtureCounter, 0, 0, tt.counter)
		}
		v, _ := index.New(r.Plan()).RoomView(r.Room.ID)
		s := spacing.Serve(v, tt.fig)
		if len(s.Added) != 1 || s.Added[0].Height != plan.CentreAt(in(tt.want)) {
			t.Errorf("%s: %+v, want one at %v in", tt.name, s.Added, tt.want)
		}
		// The remedy of the rule does likewise.
		for _, f := range found(r, &spacing.WallReach, tt.fig) {
			if o := added(r, f.Remedies[len(f.Remedies)-1]); o.Height != plan.CentreAt(in(tt.want)) {
				t.Errorf("%s: the remedy sets it at %v, want %v in", tt.name, o.Height, tt.want)
			}
		}
	}
}

// TestFloorReceptaclesStandClear: 9 in before glass, within the reach; nearer where a wall, a
// box or a cabinet leaves no room, or 3 in to the side; never in a wet place or out of the room.
func TestFloorReceptaclesStandClear(t *testing.T) {
	glass := func(make func(r *filltest.Room)) *filltest.Room {
		r := filltest.OneWall(t, 144)
		r.Room.Sides[0].Kind = plan.SideGlass
		make(r)
		return r
	}
	for _, tt := range []struct {
		name string
		room *filltest.Room
		x, y float64
	}{
		{name: "nothing in the way", room: glass(func(*filltest.Room) {}), x: 72, y: 9},
		{name: "a cabinet there", room: glass(func(r *filltest.Room) { r.Standing(plan.FixtureCabinet, 62, 5, 20, 20) }), x: 72, y: 4},
		{name: "one that hangs", room: glass(func(r *filltest.Room) { r.Standing(plan.FixtureCabinet, 62, 5, 20, 20).Bottom = 1 }), x: 72, y: 9},
	} {
		all := found(tt.room, &spacing.WallReach, code.Latest())
		if len(all) != 1 || len(all[0].Remedies) != 1 {
			t.Errorf("%s: %+v", tt.name, all)
			continue
		}
		if o := added(tt.room, all[0].Remedies[0]); o.At.Part != plan.PartFloor || o.At.At.X != in(tt.x) || o.At.At.Y != in(tt.y) {
			t.Errorf("%s: at %s, %s; want %v, %v", tt.name, o.At.At.X.Inches(16), o.At.At.Y.Inches(16), tt.x, tt.y)
		}
	}
}
