// Package place is what goes with placing an opening: the box that its wall asks for, the step
// it stands on, and the switches that belong to a door.
package place

import (
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// ConditionOf returns the condition of the wall or the ceiling that an anchor in a room is on.
func ConditionOf(r *plan.Room, a plan.Anchor) plan.Condition {
	switch a.Part {
	case plan.PartCeiling:
		return r.Overhead
	case plan.PartFace:
		if at := r.SideAt(a.Host); at >= 0 {
			return r.Sides[at].ConditionAt(a.Along)
		}
	}
	return plan.ConditionUnsaid
}

// ForWall returns a new opening with an old-work box in place of one that could not be fixed
// in the wall or ceiling where it is, where the catalogue has one that serves: the first
// that is not full with what its kind comes with, of its own material where it can be, else the
// largest.
func ForWall(p plan.Plan, o plan.Opening) plan.Opening {
	if o.Status.IsOld() || !isClosedAt(p, o.At) {
		return o
	}
	built, chosen, _ := part.Resolve(o.Assembly)
	if !chosen || !built.Box.IsFixedFromBehind() || part.HangsFan(&o) { // no old-work box carries a fan
		return o
	}
	var best *part.Assembly
	need := Needed(&o, figuresOf(p))
	for _, a := range part.All().OldWork(built.Assembly, 0) {
		if best == nil || best.Volume() <= need && a.Volume() > best.Volume() {
			best = a
		}
	}
	if best != nil {
		o.Assembly = plan.Assembly{Code: best.Code, Barriers: o.Assembly.Barriers}
	}
	return o
}

// figuresOf returns those of the plan's edition, of the latest where that one is not known, and
// none where nothing is said of the plan.
func figuresOf(p plan.Plan) *code.Figures {
	if p.Header == nil {
		return nil
	}
	fig, err := code.Edition(p.Header.Edition)
	if err != nil {
		fig = code.Latest()
	}
	return fig
}

// Needed returns what the wires and devices that a kind of opening comes with need by the
// figures; 0 where that is not known, or was stated.
func Needed(o *plan.Opening, fig *code.Figures) (need unit.Volume) {
	k := part.All().Kind(o.Kind)
	if k == nil || o.Contents != nil || fig == nil {
		return 0
	}
	need, _ = box.Sum(fig, k.Wiring)
	return need
}

func isClosedAt(p plan.Plan, a plan.Anchor) bool {
	r, _ := p.Room(a.Host)
	if ref, _ := p.Side(a.Host); ref != nil {
		r = ref.Room
	}
	return IsClosed(r, a)
}

// IsClosed reports whether a place of a room, of none where that is nil, is in what stays
// closed.
func IsClosed(r *plan.Room, a plan.Anchor) bool {
	return r != nil && ConditionOf(r, a) == plan.ConditionClosed
}
