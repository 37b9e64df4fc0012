package rule

import (
	"studbay/plan"
	"studbay/plan/index"
)

// SideView is a side of a room with all that a rule on sides may read.
type SideView struct {
	Level plan.ID
	Room  *plan.Room
	index.SideView
}

// SidesOf returns the view of each side of a room.
func SidesOf(v index.RoomView) []SideView {
	all := make([]SideView, len(v.Sides))
	for i, s := range v.Sides {
		all[i] = SideView{v.Level, v.Room, s}
	}
	return all
}

// Parts returns the nouns that the view shows.
func (v SideView) Parts() []any { return append(v.SideView.Parts(), v.Room, v.Level) }
