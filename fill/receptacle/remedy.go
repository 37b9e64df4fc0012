package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// place is a place of a box on a side.
type place struct {
	side  *index.SideView
	along unit.Length
}

// addNear offers a receptacle of a kind in the wall place of a room that costs least, of
// those that are clear and allowed.
func addNear(v *index.RoomView, kind string, fig *code.Figures, label words.Text, cost func(place) (unit.Length, bool)) []rule.Remedy {
	o := part.NewOpening(fig.Units, kind, plan.Anchor{Part: plan.PartFace})
	zones := rule.WetZones(v, fig)
	var best place
	var least unit.Length
	for i := range v.Sides {
		s := &v.Sides[i]
		if s.Side.Kind != plan.SideWall {
			continue
		}
		for _, free := range frame.Free(s, v.Room, &o, frame.ClearOfAll, rule.WetOn(zones, s)...) {
			for at := free.From; at <= free.To; at += step {
				p := place{s, at}
				if c, ok := cost(p); ok && (best.side == nil || c < least) {
					best, least = p, c
				}
			}
		}
	}
	if best.side == nil {
		return nil
	}
	o.At = plan.OnFace(best.side.Side.ID, best.along)
	if round := best.along.Rounded(fig.Units.Grid()); frame.IsFree(best.side, v.Room, &o, round, frame.ClearOfAll, rule.WetOn(zones, best.side)...) {
		if _, ok := cost(place{best.side, round}); ok {
			o.At.Along = round
		}
	}
	o.ID = rule.IDsFor(v.Parts(), string(v.Room.ID), kind).Next()
	return []rule.Remedy{{Label: label, Edit: rule.Add(o)}}
}

// step is how finely places are tried along a wall.
const step = unit.Inch
