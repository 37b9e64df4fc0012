package edit

import (
	"cmp"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AddRoom adds a room to a level. An outline that runs against the clock is turned
// round; each side keeps its ID and kind. A room without a tag prefix gets the one
// SuggestPrefix gives for its name.
type AddRoom struct {
	Level plan.ID
	Room  plan.Room
}

// Name returns "Add room".
func (e AddRoom) Name() words.Text { return Add{Thing: &e.Room}.Name() }

// Apply fails with ErrGone where the level is not in the plan, with ErrTaken where an
// ID is in use, and where the outline crosses itself or the ceiling is not above the
// floor.
func (e AddRoom) Apply(p plan.Plan) (plan.Plan, error) { return Add{&e.Room, e.Level}.Apply(p) }

// ChangeRoom sets all of a room but its sides, which stay as they are in the plan.
type ChangeRoom struct{ Room plan.Room }

// Name returns "Change room".
func (e ChangeRoom) Name() words.Text { return Change{Thing: &e.Room}.Name() }

// Apply fails with ErrGone where the room is not in the plan, and with ErrNoRoom where
// something in it would come to sit above the ceiling or below the floor.
func (e ChangeRoom) Apply(p plan.Plan) (plan.Plan, error) { return Change{&e.Room}.Apply(p) }

// MoveRoom moves a room with all that is in it.
type MoveRoom struct {
	ID plan.ID
	By geom.Point
}

// Name returns "Move room".
func (MoveRoom) Name() words.Text { return words.New("edit.room.move", "Move room") }

// Apply fails with ErrGone where the room is not in the plan.
func (e MoveRoom) Apply(p plan.Plan) (plan.Plan, error) {
	was, _ := p.Room(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindRoom)
	}
	if err := plan.CheckReach(p.Text(was.ID), e.By.X, e.By.Y); err != nil {
		return plan.Plan{}, err
	}
	if e.By == (geom.Point{}) {
		return p, nil
	}
	r := *was
	r.Sides = make([]*plan.Side, len(was.Sides))
	for i, s := range was.Sides {
		moved := *s
		moved.Start = s.Start.Add(e.By)
		r.Sides[i] = &moved
	}
	move := func(a plan.Anchor, _ unit.Length) plan.Anchor {
		if a.Host == e.ID {
			a.At = a.At.Add(e.By)
		}
		return a
	}
	return p.Rehung(&r, move)
}

// RenameRoom gives a room another name, and another use where one is told. The prefix of
// its tags follows the name as long as no tag begins with it.
type RenameRoom struct {
	ID    plan.ID
	Title string
	Use   plan.Use // empty: it stays
}

// Name returns "Rename room".
func (RenameRoom) Name() words.Text { return words.New("edit.room.rename", "Rename room") }

// Apply fails with ErrGone where the room is not in the plan.
func (e RenameRoom) Apply(p plan.Plan) (plan.Plan, error) {
	was, l := p.Room(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindRoom)
	}
	r := *was
	r.Name, r.Use = e.Title, cmp.Or(e.Use, was.Use)
	empty := *l
	empty.Rooms = l.Rooms.Without(e.ID)
	others := p.WithLevel(&empty)
	if was.Prefix == plan.SuggestPrefix(others, was.Name) && p.NextTag(was.Prefix) == was.Prefix+"1" {
		r.Prefix = plan.SuggestPrefix(others, e.Title)
	}
	return ChangeRoom{r}.Apply(p)
}
