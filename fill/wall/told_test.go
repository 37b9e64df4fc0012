package wall_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// square builds a box of 4 by 4 in into an opening of a wall.
func square(tag string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Tag, o.Assembly = tag, plan.Assembly{Box: "sq4-1.5"} }
}

// facing makes a hall whose walls are 100 in and its ceiling at 96.
func facing(h *ruletest.House) *ruletest.Room { return h.Square(plan.UseHall, 0, 0, 100, 100) }

func TestWhatIsToldOfBoxes(t *testing.T) {
	const practice = "common practice: two things cannot be in one place"
	plug := func(r *ruletest.Room, tag string, along, up float64) *plan.Opening {
		return r.Opening("duplex", r.On(0, along), square(tag), ruletest.Up(up))
	}
	const edge = "\nThere the wall ends: two things cannot be in one place (common practice).\n"
	ruletest.Tells(t, &wall.BoxPlace, []ruletest.Telling{
		ruletest.Told("past the left corner", func(h *ruletest.House) { plug(facing(h), "A", 1.5, 16) }, `
			stop: A in hall
			A runs past the corner by 1/2"`+edge+`on hall/0 face from 0" to 3-1/2"
			Set it 2" from the left corner:
			  no more A duplex on hall/0 face 1-1/2", centre 16" up
			  now A duplex on hall/0 face 2", centre 16" up`, practice),
		ruletest.Told("past the right corner", func(h *ruletest.House) { plug(facing(h), "A", 99, 16) }, `
			stop: A in hall
			A runs past the corner by 1"`+edge+`on hall/0 face from 97" to 100"
			Set it 2" from the right corner:
			  no more A duplex on hall/0 face 99", centre 16" up
			  now A duplex on hall/0 face 98", centre 16" up`, practice),
		ruletest.Told("in the floor", func(h *ruletest.House) { plug(facing(h), "A", 50, 1.25) }, `
			stop: A in hall
			A runs into the floor by 3/4"`+edge+`on hall/0 face from 48" to 52"
			Set its center at 2":
			  no more A duplex on hall/0 face 50", centre 1-1/4" up
			  now A duplex on hall/0 face 50", centre 2" up`, practice),
		ruletest.Told("in the ceiling", func(h *ruletest.House) { plug(facing(h), "A", 50, 95) }, `
			stop: A in hall
			A runs into the ceiling by 1"`+edge+`on hall/0 face from 48" to 52"
			Set its center at 94":
			  no more A duplex on hall/0 face 50", centre 95" up
			  now A duplex on hall/0 face 50", centre 94" up`, practice),
		ruletest.Told("in the ceiling, where another is below", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 50, 95)
			plug(r, "B", 50, 90.5)
		}, `
			stop: A in hall
			A runs into the ceiling by 1"`+edge+`on hall/0 face from 48" to 52"`, practice),
		ruletest.Told("past the corner, where a door is", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 99, 16)
			r.Break(plan.BreakDoor, 0, 60, 36.5)
		}, `
			stop: A in hall
			A runs past the corner by 1"`+edge+`on hall/0 face from 97" to 100"`, practice),
		ruletest.Told("in glass", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 50, 16)
			r.Sides[0].Kind = plan.SideGlass
		}, `
			stop: A in hall
			A is in glass
			That side of the room is glass: two things cannot be in one place (common practice).
			on hall/0 face from 48" to 52"`, practice),
		ruletest.Told("in a door", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 40, 16)
			r.Break(plan.BreakDoor, 0, 30, 30)
		}, `
			stop: A in hall
			A is in a door
			The door runs from 2' 6" to 5' 0" along this side; the box is at 3' 4": two things cannot be in one place (common practice).
			on hall/0 face from 38" to 42"`, practice),
		// The first goes left of the second, whose edge is at 49: 47.
		ruletest.Told("two in one place", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 49.5, 16)
			plug(r, "B", 51, 16)
		}, `
			stop: A in hall; 1
			A and B are in one place
			Their boxes overlap, 1-1/2" apart along the wall from center to center: two things cannot be in one place (common practice).
			on hall/0 face from 47-1/2" to 51-1/2"
			Move A by 2-1/2", clear of what it meets:
			  no more A duplex on hall/0 face 49-1/2", centre 16" up
			  now A duplex on hall/0 face 47", centre 16" up`, practice),
		// A door to 46-1/2 in takes the place at the left; at the right of B, from 53 on, is 55.
		ruletest.Told("two in one place, a door at one hand", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 49.5, 16)
			plug(r, "B", 51, 16)
			r.Break(plan.BreakDoor, 0, 10, 36.5)
		}, `
			stop: A in hall; 1
			A and B are in one place
			Their boxes overlap, 1-1/2" apart along the wall from center to center: two things cannot be in one place (common practice).
			on hall/0 face from 47-1/2" to 51-1/2"
			Move A by 5-1/2", clear of what it meets:
			  no more A duplex on hall/0 face 49-1/2", centre 16" up
			  now A duplex on hall/0 face 55", centre 16" up`, practice),
		ruletest.Told("one over two that are there", func(h *ruletest.House) {
			r := facing(h)
			plug(r, "A", 49, 16).Status = plan.StatusExisting
			plug(r, "B", 53, 16).Status = plan.StatusExisting
			plug(r, "C", 51, 16)
		}, `
			stop: A in hall; 1
			A and C are in one place
			Their boxes overlap, 2" apart along the wall from center to center: two things cannot be in one place (common practice).
			on hall/0 face from 47" to 51"

			stop: C in hall; 2
			C and 2 other boxes are in one place
			Their boxes overlap it; A is one of them, 2" apart along the wall from center to center: two things cannot be in one place (common practice).
			on hall/0 face from 49" to 53"
			Move C by 6", clear of what it meets:
			  no more C duplex on hall/0 face 51", centre 16" up
			  now C duplex on hall/0 face 45", centre 16" up

			stop: B in hall; 1
			B and C are in one place
			Their boxes overlap, 2" apart along the wall from center to center: two things cannot be in one place (common practice).
			on hall/0 face from 51" to 55"`, practice+"; what is there stays"),
	})
}

func TestLimitsOfBoxes(t *testing.T) {
	at := func(along, up float64, change func(*plan.Opening, unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := facing(h)
			r.Break(plan.BreakWindow, 0, 30, 20, func(b *plan.Break) { b.Sill, b.Head = ruletest.In(32), ruletest.In(72) })
			r.Opening("duplex", r.On(0, 70), square("B"), ruletest.Up(40))
			change(r.Opening("duplex", r.On(0, along), square("A"), ruletest.Up(up)), over)
		}
	}
	right := func(o *plan.Opening, over unit.Length) { o.At.Along += over }
	left := func(o *plan.Opening, over unit.Length) { o.At.Along -= over }
	up := func(o *plan.Opening, over unit.Length) { o.Height.Value += over }
	down := func(o *plan.Opening, over unit.Length) { o.Height.Value -= over }
	const practice = "common practice: edges may touch"
	ruletest.Edges(t, &wall.BoxPlace, []ruletest.Edge{
		ruletest.Limit("the left corner", at(2, 16, left), 0, 0, 1, practice),
		ruletest.Limit("the right corner", at(98, 16, right), 0, 0, 1, practice),
		ruletest.Limit("the floor", at(10, 2, down), 0, 0, 1, practice),
		ruletest.Limit("the ceiling", at(10, 94, up), 0, 0, 1, practice),
		ruletest.Limit("a window from the left", at(28, 40, right), 0, 0, 1, practice),
		ruletest.Limit("a window from the right", at(52, 40, left), 0, 0, 1, practice),
		ruletest.Limit("a window from below", at(40, 30, up), 0, 0, 1, practice),
		ruletest.Limit("a window from above", at(40, 74, down), 0, 0, 1, practice),
		ruletest.Limit("another from the left", at(66, 40, right), 0, 0, 1, practice),
		ruletest.Limit("another from the right", at(74, 40, left), 0, 0, 1, practice),
		ruletest.Limit("another from below", at(70, 36, up), 0, 0, 1, practice),
		ruletest.Limit("another from above", at(70, 44, down), 0, 0, 1, practice),
	})
	flat := func(x, y float64, change func(*plan.Opening, unit.Length), side plan.SideKind, part plan.Part) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := facing(h)
			r.Sides[0].Kind = side
			put := func(x, y float64, tag string) *plan.Opening {
				a := r.Ceiling(x, y)
				a.Part = part
				return r.Opening("junction-ceiling", a, square(tag))
			}
			put(50, 50, "B")
			change(put(x, y, "A"), over)
		}
	}
	east := func(o *plan.Opening, over unit.Length) { o.At.At.X += over }
	west := func(o *plan.Opening, over unit.Length) { o.At.At.X -= over }
	north := func(o *plan.Opening, over unit.Length) { o.At.At.Y -= over }
	south := func(o *plan.Opening, over unit.Length) { o.At.At.Y += over }
	ruletest.Edges(t, &wall.FlatPlace, []ruletest.Edge{
		ruletest.Limit("a wall above", flat(50, 2, north, plan.SideWall, plan.PartCeiling), 0, 0, 1, practice),
		ruletest.Limit("a wall at the right", flat(98, 20, east, plan.SideWall, plan.PartCeiling), 0, 0, 1, practice),
		ruletest.Limit("a wall below, in the floor", flat(50, 98, south, plan.SideWall, plan.PartFloor), 0, 0, 1, practice),
		ruletest.Limit("a railing over a floor", flat(50, 2, north, plan.SideRailing, plan.PartFloor), 0, 0, 1, practice),
		ruletest.Limit("a railing under a ceiling", flat(50, 2, north, plan.SideRailing, plan.PartCeiling), 0, 0, 0, practice+"; a railing reaches no ceiling"),
		ruletest.Limit("an open side", flat(50, 2, north, plan.SideOpen, plan.PartFloor), 0, 0, 0, practice+"; nothing stands there"),
		ruletest.Limit("another at the right", flat(46, 50, east, plan.SideWall, plan.PartCeiling), 0, 0, 1, practice),
		ruletest.Limit("another at the left", flat(54, 50, west, plan.SideWall, plan.PartCeiling), 0, 0, 1, practice),
		ruletest.Limit("another below", flat(50, 46, south, plan.SideWall, plan.PartFloor), 0, 0, 1, practice),
	})
}

func TestWhatIsToldOfFlatBoxesAndRooms(t *testing.T) {
	light := func(r *ruletest.Room, tag string, x, y float64) *plan.Opening {
		return r.Opening("ceiling-light", r.Ceiling(x, y), square(tag))
	}
	const practice = "common practice: two things cannot be in one place"
	ruletest.Tells(t, &wall.FlatPlace, []ruletest.Telling{
		ruletest.Told("in a wall", func(h *ruletest.House) { light(facing(h), "A", 50, 1) }, `
			stop: A in hall
			A is partly in a wall
			Its box reaches over the line of the wall: two things cannot be in one place (common practice).
			Move A by 1", clear of what it meets:
			  no more A ceiling-light on hall ceiling 50", 1"
			  now A ceiling-light on hall ceiling 50", 2"`, practice),
		ruletest.Told("two in one place", func(h *ruletest.House) {
			r := facing(h)
			light(r, "A", 50, 50)
			light(r, "B", 52, 50)
		}, `
			stop: A in hall; 1
			A and B are in one place
			Their boxes overlap, 2" apart from center to center: two things cannot be in one place (common practice).
			Move A by 2", clear of what it meets:
			  no more A ceiling-light on hall ceiling 50", 50"
			  now A ceiling-light on hall ceiling 48", 50"`, practice),
		ruletest.Told("one over two", func(h *ruletest.House) {
			r := facing(h)
			light(r, "A", 48, 50).Status = plan.StatusExisting
			light(r, "B", 53, 50).Status = plan.StatusExisting
			light(r, "C", 51, 50)
		}, `
			stop: A in hall; 1
			A and C are in one place
			Their boxes overlap, 3" apart from center to center: two things cannot be in one place (common practice).

			stop: C in hall; 2
			C and 2 other boxes are in one place, A among them
			Their boxes overlap, 3" apart from center to center: two things cannot be in one place (common practice).
			Move C by 4", clear of what it meets:
			  no more C ceiling-light on hall ceiling 51", 50"
			  now C ceiling-light on hall ceiling 51", 46"

			stop: B in hall; 1
			B and C are in one place
			Their boxes overlap, 2" apart from center to center: two things cannot be in one place (common practice).`, practice),
	})
	// A room of 100 in square and another of 80 by 60, so placed; a usual partition is 4-1/2 in.
	over := func(x, y float64, more ...float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Square(plan.UseDen, x, y, 80, 60)
			facing(h)
			if len(more) > 0 {
				h.Square(plan.UseBath, more[0], more[1], 80, 60)
			}
		}
	}
	told := func(room, other, how, from, to string) string {
		return `
			stop: ` + room + `; 1
			` + room + ` and ` + other + ` overlap
			The ground of one covers a part of the other: two things cannot be in one place (common practice).
			Move ` + room + ` by ` + how + `:
			  no more ` + room + ` at ` + from + `
			  now ` + room + ` at ` + to
	}
	ruletest.Tells(t, &wall.RoomsApart, []ruletest.Telling{
		// The hall is the first from the left; past the den's left edge at 90 it goes by 10 +
		// 4-1/2, in whole inches 15.
		ruletest.Told("over the right edge", over(90, 20), told("hall", "den", `1' 3" to the left`, `0", 0"`, `−15", 0"`), practice),
		ruletest.Told("over the lower edge", over(10, 90), told("hall", "den", `1' 3" up the sheet`, `0", 0"`, `0", −15"`), practice),
		ruletest.Told("over the upper edge", over(10, -50), told("hall", "den", `1' 3" down the sheet`, `0", 0"`, `0", 15"`), practice),
		ruletest.Told("over the left edge", over(-70, 20), told("den", "hall", `1' 3" to the left`, `−70", 20"`, `−85", 20"`), practice),
		// Another at its left leaves no room for that: 10 + 4-1/2 from below up is as near.
		ruletest.Told("over a corner, with a room at its left", over(90, 85, -85, 20), told("hall", "den", `1' 8" up the sheet`, `0", 0"`, `0", −20"`), practice),
	})
	ruletest.Edges(t, &wall.RoomsApart, []ruletest.Edge{
		ruletest.Limit("rooms that share an edge", func(h *ruletest.House, over unit.Length) {
			facing(h)
			r := h.Square(plan.UseDen, 100, 20, 80, 60)
			for _, s := range r.Sides {
				s.Start = s.Start.Add(geom.Point{X: -over})
			}
		}, 1000, 0, 1, "common practice; 1 µm is rounding"),
	})
}

func TestWhatIsToldOfPartitions(t *testing.T) {
	// A hall with a den behind its upper side, so far away, both with 1/2 in of board.
	behind := func(gap, depth float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r, next := facing(h), h.Square(plan.UseDen, 0, -80-gap, 80, 80)
			for _, room := range []*ruletest.Room{r, next} {
				for _, s := range room.Sides {
					s.Finish = []plan.Layer{{Name: "board", Thickness: ruletest.In(0.5)}}
				}
			}
			r.Sides[0].Studs.Depth = ruletest.In(depth)
		}
	}
	ruletest.Tells(t, &wall.PartitionDepth, []ruletest.Telling{
		ruletest.Told("a 2×6 drawn, a 2×4 entered", behind(6.5, 3.5), `
			note: hall/0 in hall; 5-1/2" of 3-1/2"
			The wall between hall and den is drawn 5-1/2" deep but entered as 3-1/2"
			The faces are 6-1/2" apart; less both finishes 5-1/2" is left for framing, and that is what counts.
			on hall/0 face from 0" to 80"`, "6-1/2 less twice 1/2"),
		ruletest.Told("finishes alone", behind(1, 3.5), `
			warn: hall/0 in hall; 0"
			No framing is left between hall and den
			The faces are 1" apart and their finishes take all of it.
			on hall/0 face from 0" to 80"

			warn: den/2 in den; 0"
			No framing is left between den and hall
			The faces are 1" apart and their finishes take all of it.
			on den/2 face from 0" to 80"`, "1 less twice 1/2"),
	})
	ruletest.Edges(t, &wall.PartitionDepth, []ruletest.Edge{
		ruletest.Limit("an eighth deeper", func(h *ruletest.House, over unit.Length) {
			behind(4.625+0, 3.5)(h)
			for _, r := range h.Rooms()[1:] {
				for _, s := range r.Sides {
					s.Start.Y -= over
				}
			}
		}, 0, 0, 1, "common practice: lumber varies by 1/8 in"),
		ruletest.Limit("an eighth shallower", func(h *ruletest.House, over unit.Length) {
			behind(4.375, 3.5)(h)
			for _, r := range h.Rooms()[1:] {
				for _, s := range r.Sides {
					s.Start.Y += over
				}
			}
		}, 0, 0, 1, "common practice: lumber varies by 1/8 in"),
	})
	stated := func(s *plan.Side, inches ...float64) {
		for _, at := range inches {
			s.Places = append(s.Places, plan.StudPlace{At: ruletest.In(at), State: plan.StudMeasured})
		}
	}
	ruletest.Tells(t, &wall.StudLayouts, []ruletest.Telling{
		ruletest.Told("an eighth off at the second", func(h *ruletest.House) {
			r, next := facing(h), h.Square(plan.UseDen, 0, -84.5, 100, 80)
			stated(r.Sides[0], 20, 36, 52)
			stated(next.Sides[2], 48, 64.125, 80)
		}, `
			warn, by practice: hall/0 in hall
			The faces of the wall between hall and den state different studs
			They first part at 36" from the left end as seen in hall.
			on hall/0 face from 0" to 100"
			Let those of hall hold:
			  no more den/2: rated false, pads false, studs at [{1219.2 mm measured} {1628.775 mm measured} {2032 mm measured}] from 0" from the right false
			  now den/2: rated false, pads false, studs at [] from 0" from the right false
			Let those of den hold:
			  no more hall/0: rated false, pads false, studs at [{508 mm measured} {914.4 mm measured} {1320.8 mm measured}] from 0" from the right false
			  now hall/0: rated false, pads false, studs at [] from 0" from the right false`, "common practice: a tape is read to 1/16 in; that at 36 has no fellow: 100 - 64-1/8 is 35-7/8"),
	})
}
