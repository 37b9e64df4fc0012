package fill

import (
	"slices"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// outlet is a receptacle that spacing may count on, where it stands.
type outlet struct {
	side  plan.ID     // on a face; empty in the floor
	along unit.Length // on a face
	at    geom.Point  // in the floor
}

// receptacles returns the receptacle outlets of a room that a wall space may count:
// not those to be removed, too high, or lit and put out as a whole by a switch.
func receptacles(v plan.RoomView, fig *code.Figures) (out []outlet) {
	for _, s := range v.Sides {
		for _, o := range s.Openings {
			if countsForWalls(o, v.Room, fig) {
				out = append(out, outlet{side: s.Side.ID, along: o.At.Along})
			}
		}
	}
	for _, o := range v.Floor {
		if countsForWalls(o, v.Room, fig) {
			out = append(out, outlet{at: o.At.At})
		}
	}
	return out
}

func countsForWalls(o *plan.Opening, room *plan.Room, fig *code.Figures) bool {
	if o.Status == plan.StatusRemove || !kindCounts(o.Kind) || isWhollySwitched(o) {
		return false
	}
	return o.At.Part != plan.PartFace || CentreHeight(o, room) <= fig.Spacing.ReceptacleMaxHeight
}

// isWhollySwitched reports whether every receptacle in the opening is controlled as
// a whole by a wall switch.
func isWhollySwitched(o *plan.Opening) bool {
	if len(o.Devices) == 0 {
		return kindWhollySwitched(o.Kind)
	}
	return !slices.ContainsFunc(o.Devices, func(d plan.Device) bool { return d.Switched != plan.WhollySwitched })
}

// places returns where along a run its receptacles are, in order. One in the floor
// counts for each wall line it is near enough to.
func (r run) places(outlets []outlet, floorReach unit.Length) (places []unit.Length) {
	for _, p := range r.pieces {
		for _, o := range outlets {
			along := o.along
			if o.side == "" {
				var out unit.Length
				along, out = p.side.Frame.Project(o.at)
				if out < 0 || out > floorReach {
					continue
				}
			} else if o.side != p.side.Side.ID {
				continue
			}
			if along >= p.from && along <= p.to {
				places = append(places, p.start+along-p.from)
			}
		}
	}
	slices.Sort(places)
	return slices.Compact(places)
}
