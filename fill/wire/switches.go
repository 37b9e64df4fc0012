package wire

import (
	"cmp"
	"slices"

	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// SwitchBox is a box of switches with what each of them works.
type SwitchBox struct {
	Opening *plan.Opening
	Room    *plan.Room
	// Door is the door or passage of its face that it stands nearest to, nil where there is
	// none, and FromRight says that the gang nearest to it is the one at the right.
	Door      *plan.Break
	FromRight bool
	// Gangs are in turn, the one nearest the door first, without a door the one at the left:
	// switches before what is in the box beside them. A box works more controls than it has
	// gangs where somebody says so.
	Gangs []Gang
	// IsOrdered says that the user gave the order of all it works; else it is the usual one,
	// as far as it is not said.
	IsOrdered bool
}

// Gang is one device of a box of switches.
type Gang struct {
	Control *plan.Control // that it works; nil where nobody says
	Beside  string        // what else sits there, by the name of its device; empty: a switch
}

// SwitchBoxes lists the boxes of switches in the walls of a level, by their tags. Each works
// its controls in the order that its opening tells; what that leaves out comes as is usual:
// what lights the room that the box is in nearest the door (common practice), then what
// lights others, by the letters of the controls.
func SwitchBoxes(ix *index.Index, level *plan.Level) (all []SwitchBox) {
	works := worksOf(ix)
	for r := range level.Rooms.All() {
		view, ok := ix.RoomView(r.ID)
		if !ok {
			continue
		}
		for i := range view.Sides {
			for _, o := range view.Sides[i].Openings {
				if isSwitchBox(o) {
					all = append(all, boxOf(ix, view.Room, &view.Sides[i], o, works[o.ID]))
				}
			}
		}
	}
	slices.SortFunc(all, func(a, b SwitchBox) int { return plan.CompareTags(a.Opening.Tag, b.Opening.Tag) })
	return all
}

// BoxOf returns the box of switches that an opening is. It reports false where it is none, or
// is in no wall.
func BoxOf(ix *index.Index, opening plan.ID) (SwitchBox, bool) {
	o, _ := ix.Plan().Opening(opening)
	if o == nil || !isSwitchBox(o) {
		return SwitchBox{}, false
	}
	ref, ok := ix.Side(o.At.Host)
	if !ok {
		return SwitchBox{}, false
	}
	view, _ := ix.RoomView(ref.Room.ID)
	return boxOf(ix, view.Room, &view.Sides[ref.At], o, worksOf(ix)[opening]), true
}

func boxOf(ix *index.Index, r *plan.Room, side *index.SideView, o *plan.Opening, works []*plan.Control) SwitchBox {
	controls := InOrder(ix, o, works)
	isUnsaid := func(c *plan.Control) bool { return !slices.Contains(o.Works, c.ID) }
	box := SwitchBox{Opening: o, Room: r, Gangs: inGangs(o, controls), IsOrdered: len(controls) < 2 || !slices.ContainsFunc(controls, isUnsaid)}
	box.Door, box.FromRight = nearestDoor(side.Cuts, o.At.Along)
	return box
}

// End says where the first gang is.
func (b SwitchBox) End() words.Text {
	if b.FromRight {
		return words.New("list.gang-right", "right")
	}
	return words.New("list.gang-left", "left")
}

func isSwitchBox(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && k.Family == part.Switch && o.IsInUse()
}

// Works lists the controls that each opening of a plan works, in the order of its gangs.
func Works(ix *index.Index) map[plan.ID][]*plan.Control {
	all := worksOf(ix)
	for id, controls := range all {
		if o, _ := ix.Plan().Opening(id); o != nil {
			all[id] = InOrder(ix, o, controls)
		}
	}
	return all
}

// worked is what an index knows the controls of all switches by.
type worked struct{}

// worksOf lists the controls by the ID of their switches.
func worksOf(ix *index.Index) map[plan.ID][]*plan.Control {
	return index.Derived(ix, worked{}, func() map[plan.ID][]*plan.Control {
		works := map[plan.ID][]*plan.Control{}
		for c := range ix.Plan().Controls.All() {
			for _, id := range c.Switches {
				works[id] = append(works[id], c)
			}
		}
		return works
	})
}

// InOrder returns what an opening works in the order of its gangs.
func InOrder(ix *index.Index, o *plan.Opening, works []*plan.Control) []*plan.Control {
	if len(works) < 2 {
		return works
	}
	place, _ := ix.Place(o.At)
	told := func(c *plan.Control) int {
		if i := slices.Index(o.Works, c.ID); i >= 0 {
			return i
		}
		return len(o.Works)
	}
	elsewhere := func(c *plan.Control) int {
		if slices.ContainsFunc(c.Loads, func(id plan.ID) bool {
			load, _ := ix.Plan().Opening(id)
			if load == nil {
				return false
			}
			at, _ := ix.Place(load.At)
			return at.Room != nil && at.Room == place.Room
		}) {
			return 0
		}
		return 1
	}
	all := slices.Clone(works)
	slices.SortStableFunc(all, func(a, b *plan.Control) int {
		return cmp.Or(cmp.Compare(told(a), told(b)), cmp.Compare(elsewhere(a), elsewhere(b)), cmp.Compare(a.Letter, b.Letter), cmp.Compare(a.ID, b.ID))
	})
	return all
}

// inGangs puts what an opening works on its switches, and what else is in the box after them.
func inGangs(o *plan.Opening, works []*plan.Control) (all []Gang) {
	switches, beside := 0, []Gang(nil)
	for _, d := range boxes.DevicesOf(o) {
		if !part.All().IsSwitch(d.Kind) {
			beside = append(beside, Gang{Beside: d.Kind})
		} else {
			switches++
		}
	}
	switches = max(switches, o.Gangs-len(beside))
	for _, c := range works {
		all = append(all, Gang{Control: c})
	}
	for len(all) < switches {
		all = append(all, Gang{})
	}
	return append(all, beside...)
}

// PutInGang is the edit by which the gang of a number, from 0 on, works a control of its box,
// and what it worked is worked by the gang that the control comes from.
func PutInGang(ix *index.Index, opening plan.ID, gang int, control plan.ID) edit.Edit {
	o, _ := ix.Plan().Opening(opening)
	if o == nil {
		return edit.Steps{}
	}
	now := *o
	now.Works = nil
	for _, c := range Works(ix)[opening] {
		now.Works = append(now.Works, c.ID)
	}
	if from := slices.Index(now.Works, control); from >= 0 && gang < len(now.Works) {
		now.Works[from], now.Works[gang] = now.Works[gang], now.Works[from]
	}
	return edit.Steps{Label: words.New("edit.gangs", "Order the gangs of {0}", o.Tag), Edits: []edit.Edit{edit.Change{Thing: &now}}}
}

// nearestDoor returns the way out of a face that is nearest to a place on it, of two as near
// the left one, and whether that is at the right of the place.
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
