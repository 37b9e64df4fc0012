package card

import (
	"cmp"
	"slices"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// planLists are what is written down in a plan and has no place on the board. Pressing a
// row shows its card.
var planLists = []bind.Maker[plan.Header]{
	circuitList,
	planList(words.New("level.all", "Levels"), words.Text{}, levels, ofPlan(levelText),
		bind.ButtonOf[plan.Header](words.New("level.add", "Add a level"), "add-level")),
	planList(words.New("decision.all", "Open decisions"), words.New("decision.none", "No open decisions."),
		func(p plan.Plan) []plan.ID { return idsOf(p.Decisions) }, ofPlan(questionText),
		bind.ButtonOf[plan.Header](words.New("decision.add", "Another one …"), "add-decision")),
	planList(words.New("waiver.all", "Set aside"), words.New("waiver.none", "No finding is set aside. Check, Set the finding aside does it."),
		func(p plan.Plan) []plan.ID { return idsOf(p.Waivers) }, ofPlan(waiverText)),
	planList(words.New("amendment.all", "Local amendments"), words.New("amendment.none", "The edition holds as it is."),
		func(p plan.Plan) []plan.ID { return idsOf(p.Amendments) }, ofPlan(amendmentText),
		bind.ButtonOf[plan.Header](words.New("amendment.add", "Another one …"), "amend-figure")),
	planList(words.New("own.all", "Boxes, rings and devices of your own"), words.New("own.none", "None: the catalog has what is used."),
		func(p plan.Plan) []plan.ID { return idsOf(p.Owns) }, ofPlan(ownText),
		bind.ButtonOf[plan.Header](words.New("own.add.box", "A box …"), "own-box"),
		bind.ButtonOf[plan.Header](words.New("own.add.ring", "A ring …"), "own-ring"),
		bind.ButtonOf[plan.Header](words.New("own.add.device", "A device …"), "own-device")),
	planList(words.New("wish.all", "The client's word"), words.New("wish.none", "Nothing came back from a walk-through yet."), wished, wishText),
}

// planList is a fold of links, with what stands there where there are none, and what adds
// one.
func planList(title, none words.Text, of func(plan.Plan) []plan.ID, say func(*index.Index, plan.ID) words.Text, add ...bind.Maker[plan.Header]) bind.Maker[plan.Header] {
	return func(s bind.Subject[plan.Header]) bind.Row {
		ids := func() []plan.ID { return of(s.Index.Plan()) }
		hasNone := func() bool { return len(ids()) == 0 }
		rows := []bind.Row{
			s.Said(func() string { return s.Voice.Say(none) }).ShowIf(hasNone),
			s.Links(look.Grid, ids, func(id plan.ID) string { return s.Voice.Say(say(s.Index, id)) }).ShowIf(func() bool { return !hasNone() }),
		}
		return s.Folded(s.Voice.Say(title), look.Grid/2, false, append(rows, bind.Rows(s, add...)...)...)
	}
}

// ofPlan says a thing by the plan alone.
func ofPlan(say func(plan.Plan, plan.ID) words.Text) func(*index.Index, plan.ID) words.Text {
	return func(ix *index.Index, id plan.ID) words.Text { return say(ix.Plan(), id) }
}

// idsOf lists the IDs of a set in its order.
func idsOf[T plan.Noun](set plan.Set[T]) (ids []plan.ID) {
	for x := range set.All() {
		ids = append(ids, x.Key())
	}
	return ids
}

func levels(p plan.Plan) (ids []plan.ID) {
	for _, l := range p.Levels {
		ids = append(ids, l.ID)
	}
	return ids
}

// levelText, questionText, waiverText and amendmentText say one thing of a list; of one
// that is gone, nothing.
func levelText(p plan.Plan, id plan.ID) (said words.Text) {
	if l := p.Level(id); l != nil {
		said = words.New("level.row", "{0}, subfloor at {1}", l.Name, l.Elevation)
	}
	return said
}

func questionText(p plan.Plan, id plan.ID) (said words.Text) {
	if x, ok := p.Decisions.Get(id); ok {
		said = words.New("plain", "{0}", x.Question)
	}
	return said
}

func waiverText(p plan.Plan, id plan.ID) (said words.Text) {
	if x, ok := p.Waivers.Get(id); ok {
		said = words.New("waiver.row", "{0}: {1}", fill.RuleName(x.Rule), x.Reason)
	}
	return said
}

func amendmentText(p plan.Plan, id plan.ID) (said words.Text) {
	x, ok := p.Amendments.Get(id)
	switch {
	case !ok:
		return said
	case x.Rule != "":
		return words.New("amendment.row.rule", "{0} turned off: {1}", fill.AmendmentName(*x), x.Reason)
	}
	return words.New("amendment.row", "{0} is {1}: {2}", fill.AmendmentName(*x), x.Value, x.Reason)
}

// circuitList is the circuits by number.
func circuitList(s bind.Subject[plan.Header]) bind.Row {
	ids := func() (ids []plan.ID) {
		for _, x := range slices.SortedFunc(s.Index.Plan().Circuits.All(), func(a, b *plan.Circuit) int {
			return cmp.Or(cmp.Compare(len(a.Number), len(b.Number)), cmp.Compare(a.Number, b.Number))
		}) {
			ids = append(ids, x.ID)
		}
		return ids
	}
	none := s.Said(func() string { return s.Say("circuit.none", "No circuits yet: Place, Another circuit.") })
	return s.Folded(s.Say("circuit.all", "Circuits"), 0, false,
		none.ShowIf(func() bool { return len(ids()) == 0 }),
		bind.ByID(0, ids, func(id plan.ID) bind.Row { return circuitLink(s.Context, id) }))
}

// circuitLink is a circuit in the list: its number, what it serves, its amperes.
func circuitLink(c *bind.Context, id plan.ID) bind.Row {
	number, name, amps := look.NewText("", look.Strong), look.NewFlexible("", look.Body), look.NewText("", look.Second)
	press := c.Linked(id, look.Row(look.Grid/2, 1, look.Sized(32, 0, number), name, amps))
	return bind.Row{Object: press, Update: func() {
		if x, ok := c.Index.Plan().Circuits.Get(id); ok {
			number.SetWords(x.Number)
			name.SetWords(x.Name)
			amps.SetWords(c.Say("circuit.row.amps", "{0} A", x.Amps))
		}
	}}
}
