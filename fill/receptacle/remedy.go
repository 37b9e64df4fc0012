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
// those that are clear and allowed: at a step people lay out to, or one of their tapes, where
// such a place is clear and allowed too.
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
	for _, at := range append([]unit.Length{best.along.Rounded(fig.Units.Grid())}, frame.OnTape(best.along, fig.Units.Step())...) {
		_, isAllowed := cost(place{best.side, at})
		if isAllowed && frame.IsFree(best.side, v.Room, &o, at, frame.ClearOfAll, rule.WetOn(zones, best.side)...) {
			o.At.Along = at
			break
		}
	}
	o.ID = rule.IDsFor(v.Parts(), string(v.Room.ID), kind).Next()
	return []rule.Remedy{{Label: label, Edit: rule.Add(o)}}
}

// step is how finely places are tried along a wall.
const step = unit.Inch
