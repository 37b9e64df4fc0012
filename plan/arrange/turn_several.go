package arrange

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Turn turns things a quarter turn clockwise as seen on the sheet. Rooms, with all that
// is in them, and what is in a ceiling or on a floor turn about the middle of them all;
// what is on a face of a room goes to the next face clockwise, as far from its left end
// as it was or as near to that as it fits. What stands on a fixture turns with it alone.
type Turn struct{ Things []plan.ID }

// Name returns "Turn what is selected".
func (Turn) Name() words.Text { return words.New("edit.turn", "Turn what is selected") }

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where one does not fit where it would come to.
func (e Turn) Apply(p plan.Plan) (plan.Plan, error) {
	about, edits := middle(p, e.Things), []edit.Edit(nil)
	for _, id := range plan.Distinct(e.Things) {
		t, _ := p.Find(id)
		if t == nil {
			return plan.Plan{}, plan.Gone(id.Kind())
		}
		if rides(p, t, e.Things) {
			continue
		}
		if r, ok := t.(*plan.Room); ok {
			edits = append(edits, turnRoom{r, about})
			continue
		}
		at := plan.AnchorOf(t)
		if at == nil {
			continue
		}
		turned := *at
		switch at.Part {
		case plan.PartCeiling, plan.PartFloor:
			turned.At = turnAbout(at.At, about)
		case plan.PartFace:
			turned = onNextFace(p, *at, plan.WidthOf(t))
		}
		edits = append(edits, placing{t.Key(), turned, 1})
	}
	return inTurn(p, edits)
}

// placing puts a thing at an anchor; a fixture that lies flat is turned by quarters too.
type placing struct {
	id       plan.ID
	to       plan.Anchor
	quarters int
}

func (e placing) Name() words.Text { return Move{Things: []plan.ID{e.id}}.Name() }

func (e placing) Apply(p plan.Plan) (plan.Plan, error) {
	t, l := p.Find(e.id)
	now := plan.CopyOf(t)
	at := plan.AnchorOf(now)
	if at == nil {
		return plan.Plan{}, plan.Gone(e.id.Kind())
	}
	was := *at
	*at = e.to
	if f, ok := now.(*plan.Fixture); ok && isFlat(e.to) && e.quarters != 0 {
		f.Turn = (f.Turn + e.quarters) & 3
	} else if was == e.to {
		return p, nil
	}
	return p.With(l, now)
}

// onNextFace returns the place as far along the next face of a room clockwise.
func onNextFace(p plan.Plan, a plan.Anchor, width unit.Length) plan.Anchor {
	ref, _ := p.Side(a.Host)
	next := (ref.At + 1) % len(ref.Room.Sides)
	return plan.OnFace(ref.Room.Sides[next].ID, max(0, min(a.Along, ref.Room.Segment(next).Length()-width)))
}

// middle returns the middle of the rooms and of what lies flat among things.
func middle(p plan.Plan, things []plan.ID) geom.Point {
	var all []geom.Point
	for _, id := range things {
		t, _ := p.Find(id)
		if r, ok := t.(*plan.Room); ok {
			all = append(all, r.Outline()...)
		} else if at := plan.AnchorOf(t); at != nil && isFlat(*at) {
			all = append(all, at.At)
		}
	}
	if len(all) == 0 {
		return geom.Point{}
	}
	return geom.BoxOf(all...).Center()
}

func turnAbout(p, middle geom.Point) geom.Point { return middle.Add(p.Sub(middle).Turned(1)) }

// turnRoom turns a room, with all that is in it, a quarter turn about a point.
type turnRoom struct {
	room  *plan.Room
	about geom.Point
}

func (turnRoom) Name() words.Text { return Turn{}.Name() }

func (e turnRoom) Apply(p plan.Plan) (plan.Plan, error) {
	now := withSides(e.room, func(s *plan.Side) { s.Start = turnAbout(s.Start, e.about) })
	p, err := p.Rehung(now, func(a plan.Anchor, _ unit.Length) plan.Anchor {
		if isFlat(a) {
			a.At = turnAbout(a.At, e.about)
		}
		return a
	})
	if err != nil {
		return plan.Plan{}, err
	}
	return eachFlat(p, now, func(f *plan.Fixture) { f.Turn = (f.Turn + 1) & 3 })
}

// withSides returns a copy of a room with changed copies of its sides.
func withSides(r *plan.Room, change func(*plan.Side)) *plan.Room {
	now := *r
	now.Sides = make([]*plan.Side, len(r.Sides))
	for i, s := range r.Sides {
		side := *s
		change(&side)
		now.Sides[i] = &side
	}
	return &now
}

// eachFlat returns the plan with changed copies of what stands on the floor of a room or
// hangs from its ceiling.
func eachFlat(p plan.Plan, r *plan.Room, change func(*plan.Fixture)) (plan.Plan, error) {
	_, l := p.Room(r.ID)
	for f := range l.Fixtures.All() {
		if f.At.Host != r.ID {
			continue
		}
		now := *f
		change(&now)
		next, err := edit.ChangeFixture{Fixture: now}.Apply(p)
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}
