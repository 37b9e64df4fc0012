package rule

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
)

// SideView is a side of a room with all that a rule on sides may read.
type SideView struct {
	Level plan.ID
	Room  *plan.Room
	index.SideView
	built *builtWall
}

// builtWall keeps the wall of a side once a rule has asked for it.
type builtWall struct{ wall *frame.Wall }

// Wall returns the side as it will be built, worked out once for all rules. They ask it of
// the boxes in the side: of one that has none no stud is worked out.
func (v SideView) Wall() *frame.Wall {
	if v.built.wall == nil && len(v.Openings) == 0 {
		v.built.wall = &frame.Wall{Framed: frame.Framed{Face: frame.FaceIn(&v.SideView)}, Room: v.Room}
	}
	if v.built.wall == nil {
		v.built.wall = frame.WallIn(&v.SideView, v.Room)
	}
	return v.built.wall
}

// OnBox begins a finding on the box of an opening. It marks no stretch: the opening itself
// is where to look.
func OnBox(o *plan.Opening, weight Severity) Finding {
	return Finding{Severity: weight, Opening: o.ID, About: o.ID}
}

// SidesOf returns the view of each side of a room.
func SidesOf(v index.RoomView) []SideView {
	all := make([]SideView, len(v.Sides))
	for i, s := range v.Sides {
		all[i] = SideView{Level: v.Level, Room: v.Room, SideView: s, built: &builtWall{}}
	}
	return all
}

// Parts returns the nouns that the view shows.
func (v SideView) Parts() []any { return append(v.SideView.Parts(), v.Room, v.Level) }
