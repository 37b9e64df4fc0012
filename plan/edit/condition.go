package edit

import (
	"reflect"
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// SetCondition says of all faces of some rooms, and of their ceilings, whether they are
// new, opened or stay closed. Zones of the faces stay as they are.
type SetCondition struct {
	Rooms     []plan.ID
	Condition plan.Condition
}

// Name returns "Mark walls closed" or what else the condition is.
func (e SetCondition) Name() words.Text {
	return words.New("edit.condition", "Mark walls and ceiling: {0}", e.Condition.Text())
}

// Apply fails with ErrGone where a room is not in the plan.
func (e SetCondition) Apply(p plan.Plan) (plan.Plan, error) {
	for _, id := range plan.Distinct(e.Rooms) {
		r, _ := p.Room(id)
		if r == nil {
			return plan.Plan{}, plan.Gone(plan.KindRoom)
		}
		now := *r
		now.Overhead = e.Condition
		edits := []Edit{Change{Thing: &now}}
		for _, s := range r.Sides {
			side := *s
			side.Condition = e.Condition
			edits = append(edits, ChangeSide{Side: side})
		}
		var err error
		if p, err = (Steps{Edits: edits}).Apply(p); err != nil {
			return plan.Plan{}, err
		}
	}
	return p, nil
}

// AddProbe notes a part of a face that somebody has looked behind.
type AddProbe struct {
	Side  plan.ID
	Probe plan.Probe
}

// Name returns "Note what is behind a wall".
func (AddProbe) Name() words.Text { return words.New("edit.probe", "Note what is behind a wall") }

// Apply fails with ErrGone where the side is not in the plan, and where the probed part ends
// before it begins.
func (e AddProbe) Apply(p plan.Plan) (plan.Plan, error) {
	ref, _ := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	s := *ref.Side()
	s.Probes = append(slices.Clone(s.Probes), e.Probe)
	return ChangeSide{Side: s}.Apply(p)
}

// SetCableExisting says whether a cable is in the wall already. Of one that is, nobody has
// said yet whether it carries a grounding conductor.
type SetCableExisting struct {
	ID       plan.ID
	Existing bool
}

// Name returns "Mark cable existing".
func (SetCableExisting) Name() words.Text {
	return words.New("edit.cable.existing", "Mark cable existing or new")
}

// Apply fails with ErrGone where the cable is not in the plan.
func (e SetCableExisting) Apply(p plan.Plan) (plan.Plan, error) {
	return changedCable(p, e.ID, func(c *plan.Cable) {
		if c.Existing != e.Existing {
			c.Existing, c.GroundUnseen = e.Existing, e.Existing
			c.Ground = c.Ground && !e.Existing
		}
	})
}

// changedCable returns the plan with a changed copy of a cable; one that is as it was leaves
// the plan as it was.
func changedCable(p plan.Plan, id plan.ID, change func(*plan.Cable)) (plan.Plan, error) {
	was, ok := p.Cables.Get(id)
	if !ok {
		return plan.Plan{}, plan.Gone(plan.KindCable)
	}
	now := *was
	if change(&now); reflect.DeepEqual(now, *was) {
		return p, nil
	}
	return Change{Thing: &now}.Apply(p)
}

// SetWay names where a cable leaves the bays of walls that stay closed.
type SetWay struct {
	ID  plan.ID
	Way plan.CableWay
}

// Name returns "Say the cable's way: up, over the ceiling" or what else it is.
func (e SetWay) Name() words.Text {
	return words.New("edit.cable.way", "Say the cable’s way: {0}", e.Way.Text())
}

// Apply fails with ErrGone where the cable is not in the plan.
func (e SetWay) Apply(p plan.Plan) (plan.Plan, error) {
	return changedCable(p, e.ID, func(c *plan.Cable) { c.Way = e.Way })
}

// SetGrounding says whether a cable carries a grounding conductor: yes, no, or that nobody
// has looked.
type SetGrounding struct {
	ID     plan.ID
	Answer plan.Answer
}

// Name returns "Change the cable's ground".
func (SetGrounding) Name() words.Text {
	return words.New("edit.cable.ground", "Change the cable's ground")
}

// Apply fails with ErrGone where the cable is not in the plan.
func (e SetGrounding) Apply(p plan.Plan) (plan.Plan, error) {
	return changedCable(p, e.ID, func(c *plan.Cable) {
		c.Ground, c.GroundUnseen = e.Answer == plan.AnswerYes, e.Answer == plan.Unsaid
	})
}
