package wire

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// SwitchBox is a box of switches with what each of them works.
type SwitchBox struct {
	Opening *plan.Opening
	Room    *plan.Room
	// Door is the door or passage of its face that it stands nearest to, nil where there is
	// none, and FromRight says that the gang nearest to it is the one at the right.
	Door      *plan.Break
	FromRight bool
	// Gangs holds the control of each gang in turn, the gang nearest the door first, without a
	// door the one at the left; nil where nobody says what it works. A box works more controls
	// than it has gangs where somebody says so.
	Gangs []*plan.Control
}

// SwitchBoxes lists the boxes of switches in the walls of a level, by their tags. No order of
// gangs is stored: what lights the room that the box is in comes nearest the door (common
// practice), then what lights others, by the letters of the controls.
func SwitchBoxes(ix *index.Index, level *plan.Level) (all []SwitchBox) {
	works := map[plan.ID][]*plan.Control{}
	for c := range ix.Plan().Controls.All() {
		for _, id := range c.Switches {
			works[id] = append(works[id], c)
		}
	}
	for r := range level.Rooms.All() {
		view, ok := ix.RoomView(r.ID)
		if !ok {
			continue
		}
		for i := range view.Sides {
			for _, o := range view.Sides[i].Openings {
				if k := part.All().Kind(o.Kind); k == nil || k.Family != part.Switch || !o.IsInUse() {
					continue
				}
				box := SwitchBox{Opening: o, Room: r, Gangs: inGangs(ix, r, works[o.ID], o.Gangs)}
				box.Door, box.FromRight = nearestDoor(view.Sides[i].Cuts, o.At.Along)
				all = append(all, box)
			}
		}
	}
	slices.SortFunc(all, func(a, b SwitchBox) int { return plan.CompareTags(a.Opening.Tag, b.Opening.Tag) })
	return all
}

// inGangs orders the controls of a box of so many gangs.
func inGangs(ix *index.Index, room *plan.Room, works []*plan.Control, gangs int) []*plan.Control {
	elsewhere := func(c *plan.Control) int {
		if slices.ContainsFunc(c.Loads, func(id plan.ID) bool {
			v, ok := ix.OpeningView(id)
			return ok && v.Room != nil && v.Room.ID == room.ID
		}) {
			return 0
		}
		return 1
	}
	all := slices.Clone(works)
	slices.SortStableFunc(all, func(a, b *plan.Control) int {
		return cmp.Or(cmp.Compare(elsewhere(a), elsewhere(b)), cmp.Compare(a.Letter, b.Letter), cmp.Compare(a.ID, b.ID))
	})
	for len(all) < gangs {
		all = append(all, nil)
	}
	return all
}

// nearestDoor returns the way out of a face that is nearest to a place on it, and whether that
// is at the right of the place.
func nearestDoor(cuts []index.Cut, at unit.Length) (door *plan.Break, isRight bool) {
	least := unit.Length(-1)
	for _, c := range cuts {
		if c.Break.Sill > 0 || !c.Break.Kind.IsDoorway() {
			continue
		}
		away, right := c.From-at, true
		if at > c.From {
			away, right = max(at-c.To, 0), false
		}
		if least < 0 || away < least {
			door, isRight, least = c.Break, right, away
		}
	}
	return door, isRight
}
