package index

import (
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// TestClosedRoomsAreCounted: whether anything stays closed is told of each plan in turn as of
// that plan alone.
func TestClosedRoomsAreCounted(t *testing.T) {
	open, low, _ := twoLevels(t, testID(plan.KindLevel, "n2"), testID(plan.KindLevel, "w2"))
	with := func(change func(*plan.Room)) plan.Plan {
		l, r := *open.Levels[0], *low
		change(&r)
		l.Rooms = setOf(t, &r)
		return open.WithLevel(&l)
	}
	sides := func(changed plan.Side) []*plan.Side {
		changed.ID = low.Sides[1].ID
		return []*plan.Side{low.Sides[0], &changed, low.Sides[2], low.Sides[3]}
	}
	gone := *open.Levels[0]
	gone.Rooms = plan.Set[*plan.Room]{}
	steps := []struct {
		name string
		plan plan.Plan
		want bool
	}{
		{"as it was", open, false},
		{"ceiling", with(func(r *plan.Room) { r.Overhead = plan.ConditionClosed }), true},
		{"ceiling, renamed", with(func(r *plan.Room) { r.Overhead, r.Name = plan.ConditionClosed, "Den" }), true},
		{"part of a wall", with(func(r *plan.Room) {
			r.Sides = sides(plan.Side{Kind: plan.SideWall, Zones: []plan.Zone{{To: 2 * unit.Foot, Condition: plan.ConditionClosed}}})
		}), true},
		{"opened", with(func(r *plan.Room) {
			r.Sides = sides(plan.Side{Kind: plan.SideWall, Zones: []plan.Zone{{To: 2 * unit.Foot, Condition: plan.ConditionOpened}}})
		}), false},
		{"ceiling once more", with(func(r *plan.Room) { r.Overhead = plan.ConditionClosed }), true},
		{"the room gone", open.WithLevel(&gone), false},
	}
	ix := New(open)
	for _, s := range steps {
		if ix = ix.Updated(s.plan); ix.HasClosed() != s.want {
			t.Errorf("%s: %v", s.name, !s.want)
		}
		if New(s.plan).HasClosed() != s.want {
			t.Errorf("%s, from nothing: %v", s.name, !s.want)
		}
	}
}
