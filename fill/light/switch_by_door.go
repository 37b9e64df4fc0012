package light

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/house"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// SwitchByDoor looks for rooms whose switches are by none of their doors, as where a door
// was moved and its switch was not.
var SwitchByDoor = rule.Rule{
	ID:    "switch-by-door",
	Title: words.New("rule.switch-by-door.title", "A switch by a door of the room"),
	Doc:   words.New("rule.switch-by-door.doc", `Common practice: who comes in finds a switch by the door. Told in a note where a room has switches for lights in its walls, and none of them is within {0}, in a straight line, of the edge of a door, slider or cased opening that one walks through. Both ends of stairs that stand in the room count as doors. Rooms with an open side are not checked, nor are those without a switch: that is another rule's; nor halls, foyers and stairs whose switch there is one of several for a light, as at the head of stairs from below. Not checked: what a switch controls, walls between a switch and the door, and on which side the latch is.`, unit.Length(byDoor)),
	Room:  checkSwitchByDoor,
}

// byDoor is how far from a door a hand still finds a switch: common practice.
const byDoor = 4 * unit.Foot

// doorEdge is one edge of a way through a side.
type doorEdge struct {
	cut  index.Cut
	side *index.SideView
	at   unit.Length // along the side
	away unit.Length // from the switch
}

func checkSwitchByDoor(v index.RoomView, _ *code.Figures) []rule.Finding {
	edges, isOpen := doorEdges(v)
	if isOpen {
		return nil
	}
	var least doorEdge
	var nearest *plan.Opening
	for i := range v.Sides {
		for _, o := range v.Sides[i].Openings {
			if !isSwitch(o) || o.Status == plan.StatusExisting {
				continue
			}
			foot := v.Sides[i].Frame.Point(o.At.Along, 0)
			for _, e := range edges {
				e.away = e.side.Frame.Point(e.at, 0).Distance(foot)
				if nearest == nil || e.away < least.away {
					least, nearest = e, o
				}
			}
		}
	}
	if least.away <= byDoor || isByStairs(v, nearest) {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Note, ByPractice: true, Opening: nearest.ID, About: nearest.ID, Room: v.Room.ID,
		Measured: rule.LengthOf(least.away), Limit: rule.LengthOf(byDoor),
		Message:  words.New("rule.switch-by-door.far", "{0} is {1} from the nearest door of the room", nearest.Tag, least.away),
		Why:      words.New("rule.switch-by-door.why", "No switch of the room is within {0} of a door: who comes in looks for one there. Where the door was moved, its switch may be meant to follow.", byDoor),
		Remedies: toTheDoor(v, nearest, least),
	}}
}

// doorEdges lists both edges of each way that reaches the floor; isOpen says that a side of
// the room is no wall.
func doorEdges(v index.RoomView) (edges []doorEdge, isOpen bool) {
	for i := range v.Sides {
		s := &v.Sides[i]
		isOpen = isOpen || s.Side.Kind == plan.SideOpen
		for _, c := range s.Cuts {
			if c.Break.Kind.IsDoorway() && c.Break.Sill == 0 {
				edges = append(edges, doorEdge{cut: c, side: s, at: c.From}, doorEdge{cut: c, side: s, at: c.To})
			}
		}
	}
	return edges, isOpen
}

// isByStairs reports whether a switch is by stairs that stand in the room, or may be by
// such as lead up to it, which the view of a room does not show.
func isByStairs(v index.RoomView, o *plan.Opening) bool {
	if (v.Room.Use == plan.UseHall || v.Room.Use == plan.UseFoyer || v.Room.Use == plan.UseStairs) && isOneOfSeveral(o) {
		return true
	}
	for i := range v.Sides {
		for _, on := range v.Sides[i].Openings {
			if !isSwitch(on) || on.Status == plan.StatusExisting {
				continue
			}
			foot := v.Sides[i].Frame.Point(on.At.Along, 0)
			for _, f := range v.Standing {
				if f.Fixture.Kind != plan.FixtureStairs {
					continue
				}
				low, high := house.EndsOf(f.Fixture, f.Frame)
				_, toLow := low.Nearest(foot)
				if _, toHigh := high.Nearest(foot); min(toLow, toHigh) <= byDoor {
					return true
				}
			}
		}
	}
	return false
}

// isOneOfSeveral reports whether a switch is for a light that another puts on as well.
func isOneOfSeveral(o *plan.Opening) bool { return o.Kind == "three-way" || o.Kind == "four-way" }

// besideCasing is how far from a door's casing the middle of a switch stands: common
// practice.
const besideCasing = 4 * unit.Inch

// toTheDoor is the remedy that sets a switch beside a door in its own face: at the latch
// where that is known, else on its own side of the door.
func toTheDoor(v index.RoomView, o *plan.Opening, e doorEdge) []rule.Remedy {
	if o.At.Host != e.side.Side.ID {
		return nil
	}
	off := e.cut.Break.Casing + besideCasing
	to := e.cut.From - off
	if isRight := o.At.Along > e.cut.To; isLatchRight(e.cut, isRight) {
		to = e.cut.To + off
	}
	if !frame.IsFree(e.side, v.Room, o, to, frame.Clearance{}) {
		return nil
	}
	at := o.At
	at.Along = to
	return []rule.Remedy{{
		Label: words.New("rule.switch-by-door.remedy", "Move {0} to the door", o.Tag),
		Edit:  edit.MoveOpening{ID: o.ID, To: at},
	}}
}

// isLatchRight reports whether a door's latch is at its right as seen from the side; else
// is what holds where nobody says.
func isLatchRight(c index.Cut, els bool) bool {
	hand := c.Break.Hand
	if !c.IsOwn {
		_, hand = seenFromBehind(c.Break.Swing, hand)
	}
	switch hand {
	case plan.HandLeft:
		return true
	case plan.HandRight:
		return false
	}
	return els
}
