package edit

import (
	"math/big"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// meet returns where the line through p along d meets the line through q along e, each
// coordinate rounded once to the nearest nanometre, and exact where the lines run along
// the axes. It reports false where they are parallel.
func meet(p, d, q, e geom.Point) (geom.Point, bool) {
	// q + e · cross(p−q, d) / cross(e, d), in whole numbers
	over := cross(e, d)
	if over.Sign() == 0 {
		return geom.Point{}, false
	}
	t := cross(p.Sub(q), d)
	return geom.Point{X: q.X + share(e.X, t, over), Y: q.Y + share(e.Y, t, over)}, true
}

func cross(u, v geom.Point) *big.Int { return u.X.Times(v.Y).Sub(u.Y.Times(v.X)).Big() }

// share returns l · t / over, rounded half away from zero; a length past Reach where
// it would not fit.
func share(l unit.Length, t, over *big.Int) unit.Length {
	n := new(big.Int).Mul(big.NewInt(int64(l)), t)
	neg := n.Sign()*over.Sign() < 0
	n.Abs(n).Lsh(n, 1)
	d := new(big.Int).Abs(over)
	n.Add(n, d).Quo(n, d.Lsh(d, 1))
	out := 4 * plan.Reach
	if n.IsInt64() && n.Int64() < int64(out) {
		out = unit.Length(n.Int64())
	}
	if neg {
		return -out
	}
	return out
}

// reshaped is a room whose outline changes, with how things go along with its sides.
type reshaped struct {
	was   *plan.Room
	sides []*plan.Side // of the room after
	clamp bool
	taped geom.Taped // what tells its shape from now on
	// rehost says where things of a side come to that is split or merged; nil: they
	// stay on their side.
	rehost func(side plan.ID, along, width unit.Length) (plan.ID, unit.Length)
}

// TapeRoom lays out a room of four sides as a tape read it: four lengths and a diagonal. The
// left end of the first side and its direction stay. As long as readings are missing they are
// kept and the outline stays as it is.
type TapeRoom struct {
	Room  plan.ID
	Taped geom.Taped
}

// Name returns "Lay out room as taped".
func (TapeRoom) Name() words.Text { return words.New("edit.room.tape", "Lay out room as taped") }

// Apply fails with ErrGone where the room is not in the plan, and with ErrNoRoom where the
// lengths do not close or something would no longer fit.
func (e TapeRoom) Apply(p plan.Plan) (plan.Plan, error) {
	room, l := p.Room(e.Room)
	if room == nil {
		return plan.Plan{}, plan.Gone(plan.KindRoom)
	}
	now := *room
	now.Taped = e.Taped
	if err := now.Check(); err != nil {
		return plan.Plan{}, err
	}
	r := reshape(&now)
	r.taped = e.Taped
	if e.Taped.IsWhole() {
		corners, ok := e.Taped.Corners(now.Segment(0))
		if !ok {
			return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "not-closed", "these lengths do not meet: two sides and the diagonal make no triangle")
		}
		for i, c := range corners {
			r.start(i, c)
		}
	}
	return r.apply(p, l)
}

func reshape(was *plan.Room) *reshaped {
	return &reshaped{was: was, sides: slices.Clone(was.Sides)}
}

// start moves the left end of side i, counted round and round.
func (r *reshaped) start(i int, to geom.Point) {
	i = (i + len(r.sides)) % len(r.sides)
	moved := *r.sides[i]
	moved.Start = to
	r.sides[i] = &moved
}

// apply returns the plan with the room reshaped and all that hangs in it carried along.
func (r *reshaped) apply(p plan.Plan, l *plan.Level) (plan.Plan, error) {
	now := *r.was
	now.Sides, now.Taped = r.sides, r.taped
	if err := now.Check(); err != nil {
		return plan.Plan{}, err
	}
	now.Sides = r.carriedStuds(&now)
	if err := r.turnedOver(&now, l); err != nil {
		return plan.Plan{}, err
	}
	move := func(a plan.Anchor, width unit.Length) plan.Anchor {
		switch {
		case a.Part == plan.PartFace:
			return r.carried(&now, a, width)
		case a.Host == now.ID && r.clamp:
			a.At = clampedInto(now.Outline(), a.At)
		}
		return a
	}
	return p.Rehung(&now, move)
}

// shift is how far places along a side move from its left end because that end moves.
// What is on a side stays where it is on the plan while one end is moved, and goes with
// it while both are.
func shift(was, now geom.Segment) unit.Length {
	switch {
	case was.A == now.A:
		return 0
	case was.B == now.B:
		return now.Length() - was.Length()
	}
	along, _ := now.Project(was.A)
	return along
}

// carriedStuds returns the sides with the first stud, taped ones, zones and probes kept where
// they are on the plan.
func (r *reshaped) carriedStuds(now *plan.Room) []*plan.Side {
	sides := slices.Clone(now.Sides)
	for i, s := range sides {
		at := r.was.SideAt(s.ID)
		if at < 0 {
			continue
		}
		was, is := r.was.Segment(at), now.Segment(i)
		moved := *s
		moved.Studs = studsCarried(s.Studs, shift(was, is), shift(was.Reversed(), is.Reversed()))
		moveAlong(&moved, shift(was, is))
		if moved.Studs != s.Studs || shift(was, is) != 0 && len(s.Places)+len(s.Zones)+len(s.Probes) > 0 {
			sides[i] = &moved
		}
	}
	return sides
}

// studsCarried returns the studs with the first kept where it is on the plan, while the left
// and the right end of their side move away from what is on it by so much.
func studsCarried(s plan.Studs, left, right unit.Length) plan.Studs {
	by := left
	if s.FromRight {
		by = right
	}
	if s.First != 0 && s.Spacing != 0 && by != 0 {
		s.First = modulo(s.First+by, s.Spacing)
		if s.First == 0 {
			s.First = s.Spacing // none would be said no more
		}
	}
	return s
}

func modulo(a, m unit.Length) unit.Length { return (a%m + m) % m }

// carried returns the anchor of a thing on a side after the change.
func (r *reshaped) carried(now *plan.Room, a plan.Anchor, width unit.Length) plan.Anchor {
	if r.rehost != nil {
		a.Host, a.Along = r.rehost(a.Host, a.Along, width)
	} else {
		a.Along += shift(r.was.Segment(r.was.SideAt(a.Host)), now.Segment(now.SideAt(a.Host)))
	}
	room := now.Segment(now.SideAt(a.Host)).Length() - width
	kept := max(0, min(a.Along, room))
	// Rounding of slanted sides is mended in silence, anything more only if asked.
	if r.clamp || (a.Along-kept).Abs() <= plan.Slack {
		a.Along = kept
	}
	return a
}

// turnedOver reports a side that would face the other way with things on it.
func (r *reshaped) turnedOver(now *plan.Room, l *plan.Level) error {
	if r.rehost != nil {
		return nil
	}
	for i, s := range now.Sides {
		at := r.was.SideAt(s.ID)
		if at < 0 || faces(r.was.Segment(at), now.Segment(i)) {
			continue
		}
		for t := range l.AnchoredTo(s.ID) {
			e := plan.Refuse(plan.ErrNoRoom, "turned-over", "the side that {0} stands on would face the other way", plan.TextOf(t))
			e.Things = []plan.ID{t.Key()}
			return e
		}
	}
	return nil
}

// faces reports whether two segments run within a right angle of one another.
func faces(a, b geom.Segment) bool {
	u, v := a.Vector(), b.Vector()
	return u.X.Times(v.X).Add(u.Y.Times(v.Y)).Sign() > 0
}

// clampedInto returns p, or the nearest place of the outline where p is outside.
func clampedInto(outline geom.Polygon, p geom.Point) geom.Point {
	if outline.Contains(p) {
		return p
	}
	at, _ := outline.Nearest(p)
	return at
}
