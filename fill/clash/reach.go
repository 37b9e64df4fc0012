package clash

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Reach looks at heights where they were asked to be in reach of somebody seated.
var Reach = rule.Rule{
	ID:    "reach",
	Title: words.New("rule.reach.title", "Switches and receptacles in reach from a seat"),
	Doc:   words.New("rule.reach.doc", `Where a room asks for it, what is worked by hand is from 15 to 48 in above the floor, all of it: the rocker of a switch, both faces of a receptacle. Over a counter or another thing before the wall: 48 in where it is no deeper than 20, or than 10 from the side; 46 where it is no higher than 34 and no deeper than 24; 44 where it is no deeper than 25; over a deeper one nothing is in reach. Figures: ADA 2010, section 308, which does not bind ordinary private homes; how high the parts are is taken from standard plates. Not checked: knee space under a counter, the way to the wall, devices of which no such part is known, and what is on cabinets.`),
	Leaves: func(r *plan.Room, _ *code.Figures) words.Text {
		if r.Reach {
			return words.Text{}
		}
		return words.New("rule.reach.leaves", "reach from a seat was not asked for")
	},
	Room: checkReach,
}

// The reaches of ADA 2010 308.2 (forward) and 308.3 (to the side).
const (
	reachSection = "ADA 2010 308"
	reachLow     = 15 * unit.Inch
	reachHigh    = 48 * unit.Inch
	reachSide    = 46 * unit.Inch // to the side over what is up to 34 high and 24 deep
	reachFar     = 44 * unit.Inch // forward over what is up to 25 deep
	reachDeep    = 25 * unit.Inch // forward, at most
)

func checkReach(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if !v.Room.Reach {
		return nil
	}
	for _, s := range v.Sides {
		for _, o := range s.Openings {
			worked := workedPart(o)
			if !o.IsInUse() || worked == 0 {
				continue
			}
			centre := frame.CentreHeight(o, v.Room)
			high, inReach := highest(s, o, centre)
			low, top := centre-worked/2, centre-worked/2+worked
			switch {
			case !inReach:
				f := rule.OnBox(o, rule.Warn)
				f.Section = reachSection
				f.Message = words.New("rule.reach.deep", "{0}: what stands before it is too deep to reach over", o.Tag)
				f.Why = words.New("rule.reach.deep.why", "Over {0} nothing is in reach.", words.Height(reachDeep))
				found = append(found, f)
			case top > high:
				f := outOfReach(o, v.Room, top, high, high-worked/2, fig)
				f.Message = words.New("rule.reach.high", "{0} is {1} too high to reach", o.Tag, words.Height(top-high))
				found = append(found, f)
			case low < reachLow:
				f := outOfReach(o, v.Room, low, reachLow, -(-(reachLow+worked/2)/fig.Units.Step())*fig.Units.Step(), fig)
				f.Message = words.New("rule.reach.low", "{0} is {1} too low to reach", o.Tag, words.Height(reachLow-low))
				found = append(found, f)
			}
		}
	}
	return found
}

func outOfReach(o *plan.Opening, room *plan.Room, is, limit, centre unit.Length, fig *code.Figures) rule.Finding {
	step := fig.Units.Step()
	if centre%step != 0 {
		if centre = centre / step * step; limit == reachLow {
			centre += step
		}
	}
	f := rule.OnBox(o, rule.Warn)
	f.Section, f.Measured, f.Limit = reachSection, rule.LengthOf(is), rule.LengthOf(limit)
	f.Why = words.New("rule.reach.why", "The part that is worked by hand ends at {0}; {1} is in reach here.", words.Height(is), words.Height(limit))
	f.Remedies = []rule.Remedy{{
		Label: words.New("rule.box-place.centre", "Set its center at {0}", words.Height(centre)),
		Edit:  edit.SetHeight{ID: o.ID, Height: frame.HeightAt(o, room, centre)},
	}}
	return f
}

// workedPart returns how high the part is that is worked by hand; 0 where none is known.
func workedPart(o *plan.Opening) (most unit.Length) {
	for _, d := range part.DeviceKinds(o) {
		most = max(most, part.All().Device(d).Operable)
	}
	return most
}

// highest returns how high one may reach over what stands before an opening. It reports
// false where that is too deep.
func highest(s index.SideView, o *plan.Opening, centre unit.Length) (unit.Length, bool) {
	for _, f := range s.Fixtures {
		body := outlineOf(f.Fixture)
		if o.At.Along < body.Left || o.At.Along > body.Right || body.Top > centre || f.Fixture.Bottom > 0 {
			continue
		}
		deep, isLow := f.Fixture.Depth, body.Top <= 34*unit.Inch
		switch {
		case deep <= 20*unit.Inch:
			return reachHigh, true
		case isLow && deep <= 24*unit.Inch:
			return reachSide, true
		case deep <= reachDeep:
			return reachFar, true
		}
		return 0, false
	}
	return reachHigh, true
}
