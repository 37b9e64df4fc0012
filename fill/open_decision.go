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
			if r, l := p.Room(id); r != nil {
				f.Room, f.Level = r.ID, l.ID
			}
			if o, l := p.Opening(id); o != nil && f.Opening == "" {
				f.Opening, f.Level = o.ID, l.ID
			}
		}
		found = append(found, f)
	}
	return found
}
