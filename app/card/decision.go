package card

import (
	"slices"
	"strings"

	"studbay/plan"
	"studbay/plan/words"
)

// newDecisionCard shows a question that is open: what hangs on it, and a field that
// settles it.
func newDecisionCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() (plan.Decision, bool) {
		if x, ok := f.Index.Plan().Decisions.Get(id); ok {
			return *x, true
		}
		return plan.Decision{ID: id}, false
	}
	if _, ok := now(); !ok {
		return nil
	}
	f.heading = func() (string, string, bool) {
		_, ok := now()
		return f.say("decision.card", "An open decision"), f.say("decision.card.second", "Listed with the findings, and printed, until it is settled."), ok
	}
	question := NewField(f.Context, Spec{
		Label: f.say("decision.question", "What is open"), Lines: 2,
		Read: func() string { x, _ := now(); return x.Question },
		Write: func(text string) error {
			x, _ := now()
			x.Question = strings.TrimSpace(text)
			return f.fault(f.Window.Do(plan.ChangeDecision{Decision: x}))
		},
	})
	note := f.noteField(func() string { x, _ := now(); return x.Note }, func(text string) error {
		x, _ := now()
		x.Note = text
		return f.Window.Do(plan.ChangeDecision{Decision: x})
	})
	answer := NewField(f.Context, Spec{
		Label: f.say("decision.answer", "Settled: it is"),
		Empty: f.say("decision.answer.hint", "such as 3/8 in porcelain"),
		Read:  func() string { return "" },
		Write: func(text string) error {
			x, _ := now()
			return f.fault(f.Window.Do(f.settled(x, strings.TrimSpace(text))))
		},
	})
	hanging := newRebuilt(func() string { x, _ := now(); return joined(x.About) }, func() (lines []line) {
		x, _ := now()
		for _, about := range x.About {
			lines = append(lines, f.row(about, func() string { return f.called(about) }))
		}
		return lines
	})
	why := f.sentenceLine(func() string {
		if x, _ := now(); len(x.About) == 0 {
			return f.say("decision.alone", "Nothing hangs on it, so its answer is kept nowhere: write it where it belongs.")
		}
		return f.say("decision.hangs", "The answer is kept in the note of what hangs on it:")
	})
	f.fields = append(f.fields, hanging)
	f.lay([]line{question, answer, note, why}, nil, hanging.Container,
		f.newPressLine(f.say("decision.drop", "Take it out without an answer"), func() { f.Window.Run("delete") }))
	return f.ready()
}

func joined(ids []plan.ID) string {
	var all strings.Builder
	for _, id := range ids {
		all.WriteString(string(id))
	}
	return all.String()
}

// settled takes a decision out and writes its answer into the note of what hangs on it;
// of a side, which has none, into its room's.
func (c Context) settled(x plan.Decision, answer string) plan.Edit {
	edits := []plan.Edit{plan.RemoveDecision{ID: x.ID}}
	p := c.Index.Plan()
	said := c.say("decision.settled", "{0} {1}", x.Question, answer)
	with := func(note string) string {
		if note == "" {
			return said
		}
		return note + "\n" + said
	}
	var rooms []plan.ID
	for _, id := range x.About {
		if o, _ := p.Opening(id); o != nil {
			n := *o
			n.Note = with(n.Note)
			edits = append(edits, plan.ChangeOpening{Opening: n})
		}
		if b, _ := p.Break(id); b != nil {
			n := *b
			n.Note = with(n.Note)
			edits = append(edits, plan.ChangeBreak{Break: n})
		}
		if t, _ := p.Fixture(id); t != nil {
			n := *t
			n.Note = with(n.Note)
			edits = append(edits, plan.ChangeFixture{Fixture: n})
		}
		room := c.Index.RoomOf(id)
		if ref, ok := c.Index.Side(id); ok {
			room = ref.Room
		}
		if isRoom := id.Kind() == plan.KindRoom || id.Kind() == plan.KindSide; isRoom && room != nil && !slices.Contains(rooms, room.ID) {
			rooms = append(rooms, room.ID)
			n := *room
			n.Note = with(n.Note)
			edits = append(edits, plan.ChangeRoom{Room: n})
		}
	}
	return plan.Steps{Label: words.New("edit.decision.settle", "Settle a decision"), Edits: edits}
}

// called names a thing of the plan as its card does.
func (c Context) called(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return c.say("named.opening", "{0}, {1}", o.Tag, c.sentence(o))
	}
	if b, _ := p.Break(id); b != nil {
		return c.say("named.at", "{0}: {1}", capital(c.Voice.Say(b.Kind.Text())), c.standsAt(b.At))
	}
	if x, _ := p.Fixture(id); x != nil {
		return c.say("named.at", "{0}: {1}", capital(c.Voice.Say(x.Kind.Text())), c.standsAt(x.At))
	}
	if ref, ok := c.Index.Side(id); ok {
		return c.say("where.room-face", "{0}, {1} face", c.roomName(ref.Room), c.Facing(id))
	}
	if r := c.Index.RoomOf(id); r != nil {
		return c.roomName(r)
	}
	return string(id)
}
