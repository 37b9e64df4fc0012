package plan

import (
	"slices"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// NewRoom returns a room of walls with the corners, in either direction, and an ID for
// each side.
func NewRoom(id ID, name string, use Use, corners geom.Polygon, sides []ID) Room {
	r := Room{ID: id, Name: name, Use: use}
	for i, c := range corners {
		s := &Side{Start: c, Kind: SideWall}
		if i < len(sides) {
			s.ID = sides[i]
		}
		r.Sides = append(r.Sides, s)
	}
	return r
}

// AddRoom adds a room to a level. An outline that runs against the clock is turned
// round; each side keeps its ID and kind. A room without a tag prefix gets the one
// SuggestPrefix gives for its name.
type AddRoom struct {
	Level ID
	Room  Room
}

// Name returns "Add room".
func (e AddRoom) Name() words.Text { return Add{Thing: &e.Room}.Name() }

// Apply fails with ErrGone where the level is not in the plan, with ErrTaken where an
// ID is in use, and where the outline crosses itself or the ceiling is not above the
// floor.
func (e AddRoom) Apply(p Plan) (Plan, error) { return Add{&e.Room, e.Level}.Apply(p) }

// withRoom returns the plan with a room as AddRoom and ChangeRoom have it.
func (p Plan) withRoom(l *Level, room *Room) (Plan, error) {
	if l == nil {
		return Plan{}, gone(theLevel)
	}
	r := *room
	if was, ok := l.Rooms.Get(r.ID); ok {
		r.Sides = was.Sides
	} else if err := p.prepare(&r); err != nil {
		return Plan{}, err
	}
	if err := checkRoom(&r); err != nil {
		return Plan{}, err
	}
	return p.on(l, func(l *Level) { l.Rooms = l.Rooms.With(&r) }).recheck(l.ID, &r)
}

// prepare turns the outline of a new room the right way round, gives it a prefix, and
// fails where a side's ID is in use.
func (p Plan) prepare(r *Room) error {
	if slices.Contains(r.Sides, nil) {
		return nil // checkRoom's to refuse
	}
	if !r.Outline().IsClockwise() {
		r.Sides = turnedRound(r.Sides)
	}
	if r.Prefix == "" {
		r.Prefix = SuggestPrefix(p, r.Name)
	}
	for _, s := range r.Sides {
		if err := p.fresh(s.ID, KindSide); err != nil {
			return in("/sides", err)
		}
	}
	return nil
}

// turnedRound lists the same edges in the other direction, from the same first corner.
func turnedRound(sides []*Side) []*Side {
	out := make([]*Side, 0, len(sides))
	for i := len(sides) - 1; i >= 0; i-- {
		s := *sides[i]
		s.Start = sides[(i+1)%len(sides)].Start
		out = append(out, &s)
	}
	return out
}

// ChangeRoom sets all of a room but its sides, which stay as they are in the plan.
type ChangeRoom struct{ Room Room }

// Name returns "Change room".
func (e ChangeRoom) Name() words.Text { return Change{Thing: &e.Room}.Name() }

// Apply fails with ErrGone where the room is not in the plan, and with ErrNoRoom where
// something in it would come to sit above the ceiling or below the floor.
func (e ChangeRoom) Apply(p Plan) (Plan, error) { return Change{&e.Room}.Apply(p) }

// MoveRoom moves a room with all that is in it.
type MoveRoom struct {
	ID ID
	By geom.Point
}

// Name returns "Move room".
func (MoveRoom) Name() words.Text { return words.New("edit.room.move", "Move room") }

// Apply fails with ErrGone where the room is not in the plan.
func (e MoveRoom) Apply(p Plan) (Plan, error) {
	was, l := p.Room(e.ID)
	if was == nil {
		return Plan{}, gone(theRoom)
	}
	if err := inReach(was.text(), e.By.X, e.By.Y); err != nil {
		return Plan{}, err
	}
	if e.By == (geom.Point{}) {
		return p, nil
	}
	r := *was
	r.Sides = make([]*Side, len(was.Sides))
	for i, s := range was.Sides {
		moved := *s
		moved.Start = s.Start.Add(e.By)
		r.Sides[i] = &moved
	}
	if err := checkRoom(&r); err != nil {
		return Plan{}, err
	}
	move := func(a Anchor, _ unit.Length) Anchor {
		if a.Host == e.ID {
			a.At = a.At.Add(e.By)
		}
		return a
	}
	return p.rehung(l, was, &r, move)
}

// rehung returns the plan with a room in place of another and all that hangs in it at
// the anchors that move gives, where all of it fits. Move gets the width of what its
// anchor is the left end of.
func (p Plan) rehung(l *Level, was, now *Room, move func(a Anchor, width unit.Length) Anchor) (Plan, error) {
	h := hangingOn(l, was.hosts())
	p = p.on(l, func(l *Level) {
		l.Rooms = l.Rooms.With(now)
		for _, b := range h.breaks {
			if at := move(b.At, b.Width); at != b.At {
				moved := *b
				moved.At = at
				l.Breaks = l.Breaks.With(&moved)
			}
		}
		for _, f := range h.fixtures {
			if at := move(f.At, f.Width); at != f.At {
				moved := *f
				moved.At = at
				l.Fixtures = l.Fixtures.With(&moved)
			}
		}
		for _, o := range h.openings {
			if at := move(o.At, 0); at != o.At {
				moved := *o
				moved.At = at
				l.Openings = l.Openings.With(&moved)
			}
		}
	})
	return p.recheck(l.ID, now)
}
