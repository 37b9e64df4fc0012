package wall_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// flight stands stairs on the floor of a room: 36 in wide and 120 deep, about a place.
func flight(r *ruletest.Room, x, y float64) *plan.Fixture {
	return r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(x), Y: ruletest.In(y)}), 36, 120)
}

// A hall of 100 × 200 in with stairs from 72 to 108 in, over its right wall at 100; within
// 1/2 in of their outline walls do not count, so that it is from 40-1/2 to 159-1/2.
func TestWhatIsToldOfStairs(t *testing.T) {
	const practice = "common practice: two things cannot be in one place"
	hall := func(h *ruletest.House) *ruletest.Room { return h.Square(plan.UseHall, 0, 0, 100, 200) }
	const why = "\nA wall of hall stands inside their outline for 9' 11\": two things cannot be in one place (common practice). If it is that of a closet under the flight, set this aside with that as the reason.\n"
	const told = `
		warn, by practice: stairs in hall; 119"
		The stairs in hall run through a wall` + why + `on hall/1 face from 40-1/2" to 159-1/2"`
	ruletest.Tells(t, &wall.StairsClear, []ruletest.Telling{
		ruletest.Told("over the right wall", func(h *ruletest.House) { flight(hall(h), 90, 100) }, told+`
			Move stairs by 8" to the left:
			  no more stairs at 90", 100"
			  now stairs at 82", 100"`, practice+"; from 108 to 100"),
		ruletest.Told("over glass", func(h *ruletest.House) {
			r := hall(h)
			r.Sides[1].Kind = plan.SideGlass
			flight(r, 90, 100)
		}, told+`
			Move stairs by 8" to the left:
			  no more stairs at 90", 100"
			  now stairs at 82", 100"`, practice),
		ruletest.Told("over a railing", func(h *ruletest.House) {
			r := hall(h)
			r.Sides[1].Kind = plan.SideRailing
			flight(r, 90, 100)
		}, "", "a railing is no wall"),
		ruletest.Told("over an open side", func(h *ruletest.House) {
			r := hall(h)
			r.Sides[1].Kind = plan.SideOpen
			flight(r, 90, 100)
		}, "", "nothing stands there"),
		ruletest.Told("through a cased opening", func(h *ruletest.House) {
			r := hall(h)
			r.Break(plan.BreakPassage, 1, 38, 124)
			flight(r, 90, 100)
		}, "", "the way is free"),
		ruletest.Told("under a window", func(h *ruletest.House) {
			r := hall(h)
			r.Break(plan.BreakWindow, 1, 38, 124, func(b *plan.Break) { b.Sill = ruletest.In(32) })
			flight(r, 90, 100)
		}, told+`
			Move stairs by 8" to the left:
			  no more stairs at 90", 100"
			  now stairs at 82", 100"`, "a wall stands under a window"),
		ruletest.Told("an inch wide", func(h *ruletest.House) { flight(hall(h), 100, 100).Width = unit.Inch }, "", "1/2 in at either hand does not count"),
		ruletest.Told("beside a door in the wall", func(h *ruletest.House) {
			r := hall(h)
			r.Break(plan.BreakDoor, 1, 60, 32)
			flight(r, 90, 100)
		}, `
			warn, by practice: stairs in hall; 67-1/2"
			The stairs in hall run through a wall
			A wall of hall stands inside their outline for 5' 7-1/2": two things cannot be in one place (common practice). If it is that of a closet under the flight, set this aside with that as the reason.
			on hall/1 face from 40-1/2" to 60"
			on hall/1 face from 92" to 159-1/2"
			Move stairs by 8" to the left:
			  no more stairs at 90", 100"
			  now stairs at 82", 100"`, practice),
		// The closet lies under the flight, so that no move within the hall is offered past it:
		// down the sheet by 40 in would bring the stairs over the lower wall.
		ruletest.Told("over a closet", func(h *ruletest.House) {
			r := hall(h)
			flight(r, 50, 100)
			h.Square(plan.UseCloset, 20, 60, 60, 20)
		}, `
			warn, by practice: stairs in hall; 35"
			The stairs in hall run through a wall
			A wall of closet stands inside their outline for 2' 11": two things cannot be in one place (common practice). If it is that of a closet under the flight, set this aside with that as the reason.
			on closet/0 face from 12-1/2" to 47-1/2"
			on closet/2 face from 12-1/2" to 47-1/2"
			Move stairs by 3' 4" down the sheet:
			  no more stairs at 50", 100"
			  now stairs at 50", 140"`, practice+"; 80 less 40"),
	})
	ruletest.Edges(t, &wall.StairsClear, []ruletest.Edge{
		ruletest.Limit("a wall within the outline", func(h *ruletest.House, over unit.Length) {
			flight(hall(h), 82.5, 100).At.At.X += over
		}, 0, 0, 1, "common practice: 1/2 in of board"),
		ruletest.Limit("what a cased opening leaves", func(h *ruletest.House, over unit.Length) {
			r := hall(h)
			r.Break(plan.BreakPassage, 1, 40.5, 124).At.Along += over
			flight(r, 90, 100)
		}, 0, 0, 1, "common practice"),
	})
}
