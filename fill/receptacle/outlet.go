package receptacle

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// outlet is a receptacle of a room that 210.52 may count, where it stands.
type outlet struct {
	*plan.Opening
	at geom.Point
	up unit.Length // its centre above the finished floor
}

// outlets returns the receptacles of 125 V and 20 A or less of a room: not those to be
// removed, nor those that a switch controls as a whole.
func outlets(v *index.RoomView) (all []outlet) {
	tops := map[plan.ID]unit.Length{}
	v.EachFixture(func(f index.FixtureView) { tops[f.Fixture.ID] = f.Fixture.Top() })
	v.EachOpening(func(o *plan.Opening, at geom.Point) {
		k := part.All().Kind(o.Kind)
		if !o.IsInUse() || !k.IsGeneral() || k.Switched == part.WhollySwitched || o.At.Part == plan.PartCeiling {
			return
		}
		up := frame.CentreHeight(o, v.Room)
		if o.At.Part == plan.PartTop {
			up = tops[o.At.Host]
		}
		all = append(all, outlet{o, at, up})
	})
	return all
}

// atMost returns the outlets up to a height.
func atMost(all []outlet, height unit.Length) (low []outlet) {
	for _, o := range all {
		if o.up <= height {
			low = append(low, o)
		}
	}
	return low
}

// forAll returns the outlets that are not there for one machine: what a garage or a basement asks
// for comes on top of those.
func forAll(all []outlet) (free []outlet) {
	for _, o := range all {
		if part.Supplies(o.Opening) == plan.ApplianceUnsaid {
			free = append(free, o)
		}
	}
	return free
}

// notForOther returns the outlets but those that are said to be for another machine.
func notForOther(all []outlet, machine plan.Appliance) (free []outlet) {
	for _, o := range all {
		if o.For == plan.ApplianceUnsaid || o.For == machine {
			free = append(free, o)
		}
	}
	return free
}
