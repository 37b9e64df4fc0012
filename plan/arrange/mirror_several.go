package arrange

import (
	"slices"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Mirror turns things round so that left is right as seen on the sheet. Rooms, with all
// that is in them, are mirrored about the middle of them all; other things about the
// middle of the face, ceiling or floor that they are on. Doors are now the other way
// round.
type Mirror struct{ Things []plan.ID }

// Name returns "Mirror what is selected".
func (Mirror) Name() words.Text { return words.New("edit.mirror", "Mirror what is selected") }

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where one does not fit where it would come to.
func (e Mirror) Apply(p plan.Plan) (plan.Plan, error) {
	rooms := slices.DeleteFunc(slices.Clone(e.Things), func(id plan.ID) bool { return id.Kind() != plan.KindRoom })
	line, edits := middle(p, rooms).X, []edit.Edit(nil)
	for _, id := range plan.Distinct(e.Things) {
		t, _ := p.Find(id)
		if t == nil {
			return plan.Plan{}, plan.Gone(id.Kind())
		}
		if r, ok := t.(*plan.Room); ok {
			edits = append(edits, mirrorRoom{r, line})
		} else if at := plan.AnchorOf(t); at != nil && !rides(p, t, e.Things) {
			about := unit.Length(0)
			if room, _ := p.Room(at.Host); room != nil {
				about = room.Outline().Box().Center().X
			}
			edits = append(edits, mirrorThing{t, about})
		}
	}
	return inTurn(p, edits)
}

// mirrored returns an anchor mirrored along its face, or in a ceiling or on a floor about a
// line down the sheet. Width is of what its Along is the left end of.
func mirrored(p plan.Plan, a plan.Anchor, width, line unit.Length) plan.Anchor {
	if isFlat(a) {
		a.At.X = 2*line - a.At.X
		return a
	}
	a.Along = plan.FromRight(p.FaceLength(a), a.Along, width)
	return a
}

// mirroredWith returns an anchor mirrored along with what it is on: what is in the left of a
// fixture comes to its right.
func mirroredWith(p plan.Plan, a plan.Anchor, width, line unit.Length) plan.Anchor {
	a = mirrored(p, a, width, line)
	switch a.Part {
	case plan.PartLeft:
		a.Part = plan.PartRight
	case plan.PartRight:
		a.Part = plan.PartLeft
	}
	return a
}

// otherHand hangs a door the other way round.
func otherHand(b *plan.Break) {
	switch b.Hand {
	case plan.HandLeft:
		b.Hand = plan.HandRight
	case plan.HandRight:
		b.Hand = plan.HandLeft
	}
	b.Panels = slices.Clone(b.Panels)
	slices.Reverse(b.Panels)
}

// mirrorRoom mirrors a room, with all that is in it, about a line down the sheet.
type mirrorRoom struct {
	room *plan.Room
	line unit.Length
}

func (mirrorRoom) Name() words.Text { return Mirror{}.Name() }

func (e mirrorRoom) Apply(p plan.Plan) (plan.Plan, error) {
	now := withSides(e.room, func(s *plan.Side) {
		mirrorStuds(s, e.room.Segment(e.room.SideAt(s.ID)).Length())
		s.Start.X = 2*e.line - s.Start.X
	})
	now.Sides = plan.TurnedRound(now.Sides)
	now.Taped = now.Taped.TurnedRound()
	was := p
	p, err := p.Rehung(now, func(a plan.Anchor, width unit.Length) plan.Anchor {
		return mirroredWith(was, a, width, e.line)
	})
	if err != nil {
		return plan.Plan{}, err
	}
	_, l := p.Room(now.ID)
	for b := range l.Breaks.All() {
		if now.SideAt(b.At.Host) < 0 {
			continue
		}
		turned := *b
		otherHand(&turned)
		if p, err = (edit.ChangeBreak{Break: turned}).Apply(p); err != nil {
			return plan.Plan{}, err
		}
	}
	return eachFlat(p, now, func(f *plan.Fixture) { f.Turn = -f.Turn & 3 })
}

// mirrorStuds has the studs that a side of a length tells begin from its other end.
func mirrorStuds(s *plan.Side, length unit.Length) {
	if s.Studs.Spacing > 0 {
		s.Studs.FromRight = !s.Studs.FromRight
	}
	edit.TurnAlong(s, length)
}

// mirrorThing mirrors one thing where it is, with what stands on it.
type mirrorThing struct {
	thing plan.Thing
	line  unit.Length
}

func (mirrorThing) Name() words.Text { return Mirror{}.Name() }

func (e mirrorThing) Apply(p plan.Plan) (plan.Plan, error) {
	to := mirrored(p, *plan.AnchorOf(e.thing), plan.WidthOf(e.thing), e.line)
	edits := []edit.Edit{placing{e.thing.Key(), to, 0}}
	switch t := e.thing.(type) {
	case *plan.Break:
		now := *t
		now.At = to
		otherHand(&now)
		edits = []edit.Edit{edit.ChangeBreak{Break: now}}
	case *plan.Fixture:
		now := *t
		if now.At = to; isFlat(to) {
			now.Turn = -t.Turn & 3
		}
		edits = []edit.Edit{edit.ChangeFixture{Fixture: now}}
		for _, on := range standingOn(p, t.ID) {
			edits = append(edits, placing{on.Key(), mirroredWith(p, *plan.AnchorOf(on), 0, 0), 0})
		}
	}
	return edit.Steps{Edits: edits}.Apply(p)
}
