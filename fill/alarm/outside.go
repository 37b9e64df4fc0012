package alarm

import (
	"slices"

	"studbay/fill/house"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// spot is where one comes into a room outside of a bedroom, and how far one has walked there
// from the bedroom's door.
type spot struct {
	room   *plan.Room
	at     geom.Point
	ways   *geom.Ways // from there
	walked unit.Length
}

// to returns how far it is from the bedroom's door to a place in the room of a spot.
func (s spot) to(at geom.Point) (far unit.Length, ok bool) {
	far, ok = s.ways.To(at)
	return s.walked + far, ok
}

// passedOver are rooms that are not outside of a bedroom, and through which none is reached.
var passedOver = []plan.Use{plan.UseBath, plan.UseCloset, plan.UseBedroom, plan.UseOutdoors, plan.UseGarage}

// outside returns the rooms outside of a bedroom: those behind its doors, and on from there
// those that no further door parts from them. Each is come into by the shortest way.
func outside(rooms *house.Level, bedroom *plan.Room) (spots []spot) {
	open := enter(rooms, bedroom, func(house.Door) (unit.Length, bool) { return 0, true })
	for len(open) > 0 {
		least := 0
		for i, s := range open {
			if s.walked < open[least].walked {
				least = i
			}
		}
		next := open[least]
		open = slices.Delete(open, least, least+1)
		if slices.ContainsFunc(spots, func(s spot) bool { return s.room == next.room }) {
			continue
		}
		spots = append(spots, next)
		open = append(open, enter(rooms, next.room, func(d house.Door) (unit.Length, bool) {
			if d.Break != nil && d.Break.Kind != plan.BreakPassage {
				return 0, false
			}
			return next.to(d.Line.Middle())
		})...)
	}
	return spots
}

// enter returns the rooms that some ways from a room lead into: walked tells how far it is to
// a way, and whether one goes on by it.
func enter(rooms *house.Level, from *plan.Room, walked func(house.Door) (unit.Length, bool)) (spots []spot) {
	for _, d := range rooms.From(from) {
		back, isBack := rooms.Back(d)
		far, goes := walked(d)
		if !isBack || !goes || slices.Contains(passedOver, d.To.Use) {
			continue
		}
		at := back.Line.Middle()
		spots = append(spots, spot{d.To, at, d.To.Outline().WaysFrom(at), far + d.Line.Middle().Distance(at)})
	}
	return spots
}

// isDrawn reports whether it is drawn what is outside of a bedroom that no room is outside
// of: each of its ways leads somewhere, and there is one.
func isDrawn(rooms *house.Level, bedroom *plan.Room) bool {
	ways := rooms.From(bedroom)
	return len(ways) > 0 && !slices.ContainsFunc(ways, func(d house.Door) bool { return d.To == nil })
}

// nearest returns how far the nearest alarm outside of a bedroom is from its door. It reports
// false where there is none.
func nearest(spots []spot, at map[plan.ID][]placed) (away unit.Length, any bool) {
	for _, s := range spots {
		for _, a := range at[s.room.ID] {
			if far, ok := s.to(a.at); ok && (!any || far < away) {
				away, any = far, true
			}
		}
	}
	return away, any
}
