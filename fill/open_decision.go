package fill

import (
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/words"
)

var openDecision = Rule{
	ID:    "open-decision",
	Title: words.New("rule.open-decision.title", "Open decisions"),
	Doc:   words.New("rule.open-decision.doc", `Every question the plan keeps open is listed until it is settled, with how many things hang on it.`),
	Plan:  listDecisions,
}

func listDecisions(p plan.Plan, _ *code.Figures) (found []Finding) {
	for d := range p.Decisions.All() {
		f := Finding{
			Severity: Note, IsOpen: true, About: d.ID,
			Message: words.New("rule.open-decision.open", "Open: {0}", d.Question),
		}
		switch len(d.About) {
		case 0:
		case 1:
			f.Why = words.New("rule.open-decision.one", "One thing in the plan hangs on it.")
		default:
			f.Why = words.New("rule.open-decision.many", "{0} things in the plan hang on it.", len(d.About))
		}
		for _, id := range d.About {
			f.locate(p, id)
		}
		found = append(found, f)
	}
	return found
}

// locate says where a thing is that the finding is about. The first says on which level,
// and of each kind the first on that level is named.
func (f *Finding) locate(p plan.Plan, id plan.ID) {
	var room *plan.Room
	var level *plan.Level
	switch id.Kind() {
	case plan.KindRoom:
		room, level = p.Room(id)
	case plan.KindSide:
		room, level = roomOfSide(p, id)
	case plan.KindBreak:
		_, level = p.Break(id)
	case plan.KindFixture:
		_, level = p.Fixture(id)
	case plan.KindOpening:
		_, level = p.Opening(id)
	}
	if level == nil || f.Level != "" && f.Level != level.ID {
		return
	}
	f.Level = level.ID
	if room != nil && f.Room == "" {
		f.Room = room.ID
	}
	if id.Kind() == plan.KindOpening && f.Opening == "" {
		f.Opening = id
	}
}

func roomOfSide(p plan.Plan, side plan.ID) (*plan.Room, *plan.Level) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			if r.SideAt(side) >= 0 {
				return r, l
			}
		}
	}
	return nil, nil
}
