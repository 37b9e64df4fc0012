package light

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Way is one walk in the dark: from the entry or from the middle of a room to a room, or out
// to the entry again.
type Way struct {
	Walk
	Start *plan.Room // nil: it begins at the entry
	Legs  []Leg
}

// Leg is a part of a way in one room.
type Leg struct {
	Crossing *Crossing // by which one came in; nil in the room where the way begins
	Room     *plan.Room
	Level    plan.ID
	Length   unit.Length // to where one leaves it, or to its middle at the end of the way
	Dark     unit.Length // how much of that, from its beginning, is in the dark
	Flight   unit.Length // then over stairs, in the plan; 0: none
}

// Length is how long the way is in the plan.
func (w Way) Length() (far unit.Length) {
	for _, l := range w.Legs {
		far += l.Length + l.Flight
	}
	return far
}

// WayBetween returns the shortest way from one room to another with a hand's reach. Empty
// stands for the entry. It reports false where none leads there, and where both are one.
func WayBetween(ix *index.Index, reach unit.Length, from, to plan.ID) (way Way, ok bool) {
	if from == to {
		return Way{}, false
	}
	v := seeWalk(ix)
	way.Walk = v.walk(reach, from)
	if to == "" {
		to = v.walk(reach, "").nearestEntry(way.Walk)
	}
	way.Crossings = way.To(to)
	if len(way.Crossings) == 0 {
		return Way{}, false
	}
	way.Start, _ = ix.Plan().Room(from)
	way.Legs = way.legs(ix.Plan())
	return way, true
}

// nearestEntry returns the room behind the entry that another walk comes to first; empty
// where there is none.
func (w Walk) nearestEntry(other Walk) plan.ID {
	for _, c := range other.Crossings {
		for _, entry := range w.Crossings {
			if entry.Before == nil && entry.Into.ID == c.Into.ID {
				return c.Into.ID
			}
		}
	}
	return ""
}

// legs divides the way by the rooms that it leads through.
func (w Way) legs(p plan.Plan) (legs []Leg) {
	if w.Start != nil {
		_, on := p.Room(w.Start.ID)
		legs = append(legs, Leg{Room: w.Start, Level: on.ID})
	}
	last := unit.Length(0) // how far one has walked where the leg begins
	for _, c := range w.Crossings {
		if n := len(legs); n > 0 {
			legs[n-1].Length = c.Walked - last
			if c.Stairs != nil {
				legs[n-1].Length, legs[n-1].Flight = c.Walked-last-c.Across, c.Across
			}
		}
		legs, last = append(legs, Leg{Crossing: c, Room: c.Into, Level: c.Level}), c.Walked
	}
	end := &legs[len(legs)-1]
	end.Length, _ = end.Room.Outline().WaysFrom(end.Crossing.At).To(end.Room.Outline().LabelPoint())
	for i := range legs {
		if c := legs[i].Crossing; c != nil && c.IsDark() {
			legs[i].Dark = min(c.Dark, legs[i].Length)
		}
	}
	return legs
}

// starts is where a walk begins in the middle of a room: its light is on, where it has one.
func (v walked) starts(from plan.ID) []*Crossing {
	for _, l := range v.levels {
		for _, r := range l.Rooms {
			if r.ID == from {
				return []*Crossing{{Into: r, Level: l.level.ID, At: r.Outline().LabelPoint(), isStart: true, isAt: func(*plan.Room) []stance { return nil }}}
			}
		}
	}
	return nil
}
