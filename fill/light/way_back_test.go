package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The way to a room and back, by the rooms it leads through: how far in each, and how far in
// the dark. Lengths by Pythagoras, in inches; common practice.
func TestTheWayThereAndBack(t *testing.T) {
	r := newRoute(ruletest.New(t))
	r.puts(r.bedroom, 1, 60) // on the far wall
	hall := r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))
	r.Control([]*plan.Opening{r.hall.Opening("switch", r.hall.On(2, 84))}, []*plan.Opening{hall})
	ix := index.New(r.Made())
	reach := ruletest.In(30)
	way, ok := light.WayBetween(ix, reach, "", r.bedroom.Room.ID)
	if !ok || way.Start != nil || len(way.Legs) != 2 || len(way.Crossings) != 2 {
		t.Fatalf("there: %v, %+v", ok, way)
	}
	near := func(what string, got unit.Length, want float64) {
		t.Helper()
		if off := got - inches(want); off < -unit.Inch/100 || off > unit.Inch/100 {
			t.Errorf("%s: %s, want %v in", what, got, want)
		}
	}
	// In at (62, 120), to the middle of the door at (120, 55): √(58² + 65²); 4.5 through the
	// wall; then √(60² + 5²) to the middle of the bedroom.
	near("through the hall", way.Legs[0].Length, 87.115+4.5)
	near("in the bedroom", way.Legs[1].Length, 60.208)
	// The switch at (244.5, 60) is 120.1 away, and in reach 30 before it: past the middle.
	near("in the dark", way.Legs[1].Dark, 60.208)
	near("in all", way.Length(), 87.115+4.5+60.208)
	if way.Legs[0].Dark != 0 || way.Crossings[0].IsDark() || !way.Crossings[1].IsDark() {
		t.Errorf("there: %+v", way.Legs)
	}
	back, ok := light.WayBetween(ix, reach, r.bedroom.Room.ID, "")
	if !ok || back.Start != r.bedroom.Room || len(back.Legs) != 2 || len(back.Crossings) != 1 || back.Crossings[0].Into != r.hall.Room {
		t.Fatalf("back: %v, %+v", ok, back)
	}
	near("out of the bedroom", back.Legs[0].Length, 60.208+4.5)
	near("to the middle of the hall", back.Legs[1].Length, 60.208)
	// The hall's switch at (36, 120) is √(84² + 65²) = 106.2 from (120, 55): in reach past the
	// middle.
	near("back in the dark", back.Legs[1].Dark, 60.208)
	if _, ok := light.WayBetween(ix, reach, r.hall.Room.ID, r.hall.Room.ID); ok {
		t.Error("a way leads from a room to itself")
	}
	if _, ok := light.WayBetween(ix, reach, r.hall.Room.ID, ""); ok {
		t.Error("a way leads from the room behind the entry to itself")
	}
	// What is found in the way in stays as it was.
	if n := len(light.WalkOf(ix, reach).Crossings); n != 2 {
		t.Errorf("%d crossings from the entry, want 2", n)
	}
}

// inches is a length that no sixteenth of an inch holds.
func inches(l float64) unit.Length { return unit.Length(l * float64(unit.Inch)) }

// Over a flight: the way to its foot, then the flight itself; and down again.
func TestTheWayOverStairsAndDown(t *testing.T) {
	h := ruletest.New(t)
	lower := h.Square(plan.UseHall, 0, 0, 300, 300)
	lower.Break(plan.BreakDoor, 2, 40, 36)
	// 36 in wide and 120 deep: its foot at y 250, its head at 130.
	stairs := lower.Stand(plan.FixtureStairs, plan.OnFloor(lower.Room.ID, lower.Ceiling(150, 190).At), 36, 120)
	level := h.Level("Upper floor")
	upper := h.RoomOn(level, plan.UseHall, 0, 0, 300, 0, 300, 300, 0, 300)
	ix := index.New(h.Made())
	way, ok := light.WayBetween(ix, ruletest.In(30), "", upper.Room.ID)
	if !ok || len(way.Legs) != 2 || way.Legs[1].Crossing.Stairs != stairs || way.Legs[1].Level != h.Made().Levels[level].ID {
		t.Fatalf("%v %+v", ok, way)
	}
	// From (242, 300) to the foot at (150, 250): √(92² + 50²) = 104.71.
	if got := way.Legs[0].Length - inches(104.71); got.Abs() > unit.Inch/100 || way.Legs[0].Flight != ruletest.In(120) {
		t.Errorf("to the foot %s, then %s", way.Legs[0].Length, way.Legs[0].Flight)
	}
	if way.Legs[1].Length != ruletest.In(20) || way.Legs[1].Flight != 0 {
		t.Errorf("from the head to the middle %+v, want 20 in", way.Legs[1])
	}
	back, ok := light.WayBetween(ix, ruletest.In(30), upper.Room.ID, "")
	if !ok || back.Legs[0].Flight != ruletest.In(120) || back.Legs[0].Length != ruletest.In(20) || back.Legs[0].Level != h.Made().Levels[level].ID {
		t.Errorf("down again: %v %+v", ok, back.Legs)
	}
	if _, ok := light.WayBetween(ix, ruletest.In(30), "", "rzzzzzzzz"); ok {
		t.Error("a way leads to a room that is not there")
	}
}
