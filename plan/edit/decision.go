package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// SettleDecision takes a decision out and writes what was decided into the note of each
// thing that hangs on it; of a side, which has none, into its room's.
type SettleDecision struct {
	ID   plan.ID
	Said string // question and answer, as the notes shall have it
}

// Name returns "Settle a decision".
func (SettleDecision) Name() words.Text {
	return words.New("edit.decision.settle", "Settle a decision")
}

// Apply fails with ErrGone where the decision is not in the plan.
func (e SettleDecision) Apply(p plan.Plan) (plan.Plan, error) {
	x, ok := p.Decisions.Get(e.ID)
	if !ok {
		return plan.Plan{}, plan.Gone(plan.KindDecision)
	}
	edits := []Edit{Remove{Things: []plan.ID{e.ID}}}
	for _, id := range x.About {
		if noted := e.noted(p, id); noted != nil {
			edits = append(edits, noted)
		}
	}
	return Steps{Edits: edits}.Apply(p)
}

// noted is the edit that writes what was decided into the note of a thing as it stands in a
// plan, or nil where it has none. A room is written into once, however many of its sides are
// told: each time the same.
func (e SettleDecision) noted(p plan.Plan, id plan.ID) Edit {
	with := func(note string) string {
		if note == "" {
			return e.Said
		}
		return note + "\n" + e.Said
	}
	if o, _ := p.Opening(id); o != nil {
		n := *o
		n.Note = with(n.Note)
		return ChangeOpening{n}
	}
	if b, _ := p.Break(id); b != nil {
		n := *b
		n.Note = with(n.Note)
		return ChangeBreak{n}
	}
	if f, _ := p.Fixture(id); f != nil {
		n := *f
		n.Note = with(n.Note)
		return ChangeFixture{n}
	}
	room, _ := p.Room(id)
	if ref, _ := p.Side(id); ref != nil {
		room = ref.Room
	}
	if room == nil {
		return nil
	}
	n := *room
	n.Note = with(n.Note)
	return ChangeRoom{n}
}
