package spacing

import (
	"slices"
	"studbay/fill/code"
	"studbay/fill/flat"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// floorSetOut is how far from the wall line a floor receptacle is offered: within
// the 18 in of 210.52(A)(3) and clear of the bottom plate (common practice). In a
// narrow corner it is less, down to leastSetOut.
const (
	floorSetOut = 9 * unit.Inch
	leastSetOut = unit.Inch
)

// sidestep is by how much a floor receptacle is tried farther along a wall where it has no
// room.
const sidestep = 3 * unit.Inch

// floorOpening returns a floor receptacle before a place of the run: as near it as its box
// is clear of walls and of other boxes in the floor. It reports false where it is nowhere.
func (r run) floorOpening(s spot, v *index.RoomView, fig *code.Figures) (plan.Opening, bool) {
	zones := rule.WetZones(v, fig)
	for setOut := min(floorSetOut, fig.Spacing.FloorReach); setOut >= leastSetOut; setOut -= unit.Inch {
		for off := unit.Length(0); off <= s.high-s.low; off += sidestep {
			for _, wish := range []unit.Length{s.wish - off, s.wish + off} {
				if wish < s.low || wish > s.high {
					continue
				}
				p, along := r.standing(spot{wish, s.low, s.high, s.step, s.tape}, setOut)
				o := part.NewOpening(fig.Units, kindFloorReceptacle, plan.OnFloor(v.Room.ID, p.side.Frame.Point(along, setOut)))
				if isClearOnFloor(&o, v) && !rule.IsWet(zones, o.At.At, 0) {
					return o, true
				}
			}
		}
	}
	return plan.Opening{}, false
}

// isClearOnFloor reports whether the box of an opening lies within the room, in no wall,
// in no cabinet and on no other box of its floor.
func isClearOnFloor(o *plan.Opening, v *index.RoomView) bool {
	at := flat.FootprintOf(o)
	isWallIn := func(s index.SideView) bool { return s.Side.Kind != plan.SideOpen && at.IsCut(s.Line) }
	isOn := func(other *plan.Opening) bool {
		return !other.IsGone() && at.Meets(flat.FootprintOf(other))
	}
	return !isUnderCabinet(at.Center, *v) && !isInStairs(at.Center, *v) && v.Room.Outline().Contains(at.Center) && !slices.ContainsFunc(v.Sides, isWallIn) && !slices.ContainsFunc(v.Floor, isOn)
}
