package rule

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Wet is the zone about one tub or shower in which nothing hangs and no receptacle stands.
type Wet struct {
	Fixture *plan.Fixture
	Out     unit.Length // a receptacle nearer than this is in it; 1 nm where only the fixture itself is
	Top     unit.Length // above the finished floor

	footprint geom.Polygon
	isAll     bool // no place of the room is outside of it
}

// WetZones returns those of a room.
func WetZones(v *index.RoomView, fig *code.Figures) (all []Wet) {
	v.EachFixture(func(f index.FixtureView) {
		rim := f.Fixture.Top()
		switch f.Fixture.Kind {
		case plan.FixtureTub:
		case plan.FixtureShower: // it has a threshold
			rim = f.Fixture.Bottom
		default:
			return
		}
		z := Wet{Fixture: f.Fixture, Out: 1, Top: rim + fig.Lighting.WetZoneUp, footprint: f.Footprint}
		if fig.Lighting.WetZoneReceptacles {
			z.Out = fig.Lighting.WetZoneOut - Grain
		}
		z.isAll = !slices.ContainsFunc(v.Room.Outline(), func(corner geom.Point) bool {
			return f.Footprint.Distance(corner) >= fig.Lighting.WetZoneOut
		})
		all = append(all, z)
	})
	return all
}

// Away is how far a point of the plan is from the tub or shower, 0 within it.
func (z Wet) Away(at geom.Point) unit.Length { return z.footprint.Distance(at) }

// IsAllOfRoom reports whether no place of the room is outside of the zone: a receptacle at
// the far wall is then allowed.
func (z Wet) IsAllOfRoom() bool { return z.isAll }

// IsWet reports whether a receptacle at a point of the plan, as high as told, is in one of
// some zones that has an outside.
func IsWet(zones []Wet, at geom.Point, up unit.Length) bool {
	return slices.ContainsFunc(zones, func(z Wet) bool { return !z.isAll && up <= z.Top && z.Away(at) < z.Out })
}

// WetOn returns what of a side is in zones that have an outside: no receptacle is offered
// there.
func WetOn(zones []Wet, s *index.SideView) (all []frame.Rect) {
	for _, z := range zones {
		if z.isAll {
			continue
		}
		if from, to, any := z.along(s); any {
			all = append(all, frame.Rect{Left: from, Right: to, Bottom: -plan.Reach, Top: z.Top})
		}
	}
	return all
}

// along returns the part of a side within the zone. How far a place along a line is from a
// tub, which has no inner corner, falls to one least and grows from there.
func (z Wet) along(s *index.SideView) (from, to unit.Length, any bool) {
	away := func(at unit.Length) unit.Length { return z.Away(s.Frame.Point(at, 0)) }
	low, high := unit.Length(0), s.Length
	for high-low > Grain {
		third := (high - low) / 3
		if away(low+third) > away(high-third) {
			low += third
		} else {
			high -= third
		}
	}
	nearest := low
	if away(high) < away(low) { // the other is at the very edge of where all is as near
		nearest = high
	}
	if away(nearest) >= z.Out {
		return 0, 0, false
	}
	end := func(in, out unit.Length) unit.Length {
		if away(out) < z.Out {
			return out
		}
		for (in - out).Abs() > 1 {
			if middle := (in + out) / 2; away(middle) < z.Out {
				in = middle
			} else {
				out = middle
			}
		}
		return out
	}
	return end(nearest, 0), end(nearest, s.Length), true
}
