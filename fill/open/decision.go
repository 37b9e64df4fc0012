// Package open holds the rules that list what a plan leaves open.
package open

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Decision lists the open decisions.
var Decision = rule.Rule{
	ID:    "open-decision",
	Title: words.New("rule.open-decision.title", "Open decisions"),
	Doc:   words.New("rule.open-decision.doc", `Every question the plan keeps open is listed until it is settled, with how many things depend on it.`),
	Plan:  rule.OnPlan(seeDecisions, listDecisions),
}

// decisions are a plan's open decisions, and where the things are that each is about.
type decisions struct {
	all    plan.Set[*plan.Decision]
	places []place // of each decision in turn
}

// place says where a decision is: on the level of the first thing that it is about, and
// of each kind at the first on that level.
type place struct{ level, room, opening plan.ID }

func seeDecisions(ix *index.Index) decisions {
	v := decisions{all: ix.Plan().Decisions}
	for d := range v.all.All() {
		var at place
		for _, id := range d.About {
			at.add(ix, id)
		}
		v.places = append(v.places, at)
	}
	return v
}

// Parts returns the decisions and their places.
func (v decisions) Parts() []any {
	parts := []any{v.all}
	for _, at := range v.places {
		parts = append(parts, at)
	}
	return parts
}

func listDecisions(v decisions, _ *code.Figures) (found []rule.Finding) {
	i := 0
	for d := range v.all.All() {
		at := v.places[i]
		i++
		f := rule.Finding{
			Severity: rule.Note, IsOpen: true, About: d.ID,
			Level: at.level, Room: at.room, Opening: at.opening,
			Message: words.New("rule.open-decision.open", "{0}", d.Question),
		}
		switch len(d.About) {
		case 0:
		case 1:
			f.Why = words.New("rule.open-decision.one", "One thing in the plan depends on it.")
		default:
			f.Why = words.New("rule.open-decision.many", "{0} things in the plan depend on it.", len(d.About))
		}
		found = append(found, f)
	}
	return found
}

func (at *place) add(ix *index.Index, id plan.ID) {
	level, room := levelOf(ix, id)
	if level == "" || at.level != "" && at.level != level {
		return
	}
	at.level = level
	if at.room == "" {
		at.room = room
	}
	if id.Kind() == plan.KindOpening && at.opening == "" {
		at.opening = id
	}
}

// levelOf returns the level of a thing, and the room where the thing is a room or one of
// its sides.
func levelOf(ix *index.Index, id plan.ID) (level, room plan.ID) {
	if ref, ok := ix.Side(id); ok {
		return ref.Level, ref.Room.ID
	}
	t, on := ix.Plan().Find(id)
	if on == nil {
		return "", ""
	}
	if r, ok := t.(*plan.Room); ok {
		room = r.ID
	}
	return on.ID, room
}
