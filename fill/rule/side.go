package rule

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
)

// SideView is a side of a room with all that a rule on sides may read.
type SideView struct {
	Level plan.ID
	Room  *plan.Room
	index.SideView
	Before, After Neighbor // the sides that it meets at its left and its right end
}

// Neighbor is what a rule on sides may read of the next side.
type Neighbor struct {
	Side *plan.Side
	Line geom.Segment
}

// SidesOf returns the view of each side of a room.
func SidesOf(v index.RoomView) []SideView {
	all := make([]SideView, len(v.Sides))
	next := func(i int) Neighbor {
		s := &v.Sides[i%len(v.Sides)]
		return Neighbor{s.Side, s.Line}
	}
	for i, s := range v.Sides {
		all[i] = SideView{Level: v.Level, Room: v.Room, SideView: s, Before: next(i + len(v.Sides) - 1), After: next(i + 1)}
	}
	return all
}

// Parts returns the nouns that the view shows.
func (v SideView) Parts() []any { return append(v.SideView.Parts(), v.Room, v.Level) }
