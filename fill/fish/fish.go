// Package fish tells how new cables get to boxes in walls that stay closed: up or down in the
// bay of each, never across a stud. How long that is stands in package wire.
package fish

import (
	"studbay/fill/frame"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/index"
)

// Path is how a new cable gets to boxes in walls that stay closed. It never crosses a stud
// there: it runs up or down in the bay of each box.
type Path struct {
	// From and To tell which of its ends are in a wall or ceiling that stays closed: it is
	// fished to them, not fastened.
	From, To bool
	// InBay tells that both ends are in one bay: it leaves none.
	InBay bool
	// ByCeiling tells that one end is in the ceiling of the other's room, which is open.
	ByCeiling bool
	Way       plan.CableWay
}

// Of tells how a cable is fished. Of one that is in the wall already nothing is told.
func Of(ix *index.Index, c *plan.Cable) (f Path) {
	if c.Existing {
		return f
	}
	from, _ := ix.Plan().Opening(c.From)
	to, _ := ix.Plan().Opening(c.To)
	f.From, f.To, f.Way = isClosed(ix, from), isClosed(ix, to), c.Way
	if from == nil || to == nil || !f.Is() {
		return f
	}
	f.InBay = frame.IsOneBay(ix, from, to)
	a, _ := ix.Place(from.At)
	b, _ := ix.Place(to.At)
	f.ByCeiling = a.Room == b.Room && (isOpenAbove(a.Room, from) || isOpenAbove(b.Room, to))
	return f
}

func isClosed(ix *index.Index, o *plan.Opening) bool {
	if o == nil {
		return false
	}
	at, _ := ix.Place(o.At)
	return place.IsClosed(at.Room, o.At)
}

func isOpenAbove(r *plan.Room, o *plan.Opening) bool {
	return r != nil && o.At.Part == plan.PartCeiling && !place.IsClosed(r, o.At)
}

// Is reports whether the cable is fished at either end.
func (f Path) Is() bool { return f.From || f.To }

// Wants reports whether it is not known where the cable leaves its bays: nobody names the
// side that is open, and nothing else tells it.
func (f Path) Wants() bool {
	return f.Is() && !f.InBay && !f.ByCeiling && f.Way == plan.WayUnsaid
}

// MeetsOpened reports whether a cable fished to an opening gets from its bay to a part that
// is laid open, or new, with no stud to cross: the bay itself goes on there, or the ceiling
// over it is open.
func MeetsOpened(ix *index.Index, o *plan.Opening) bool {
	at, _ := ix.Place(o.At)
	if at.Room == nil {
		return false
	}
	if isOpen(at.Room.Overhead) {
		return true
	}
	face, bay, ok := frame.BayOf(ix, o)
	if !ok {
		return false
	}
	for _, z := range face.Side.Zones {
		if isOpen(z.Condition) && z.From < bay.To && bay.From < z.To {
			return true
		}
	}
	return isOpen(face.Side.Condition) && (isOpen(face.Side.ConditionAt(bay.From)) || isOpen(face.Side.ConditionAt(bay.To)))
}

func isOpen(c plan.Condition) bool { return c == plan.ConditionOpened || c == plan.ConditionNew }
