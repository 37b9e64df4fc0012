package fill

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// scope is something that rules judge by itself: an opening, a side, a room, a level or
// the plan.
type scope struct {
	id plan.ID
	view
}

// view is what rules read of a scope.
type view interface {
	// parts returns what it shows.
	parts() []any
	// judge runs one of the rules.
	judge(*rule.Rule, *code.Figures) []rule.Finding
}

// rulesOn are the rules by their scope, in their order, without those that are skipped.
type rulesOn struct{ openings, sides, rooms []*rule.Rule }

func newRulesOn(fig *code.Figures) (on rulesOn) {
	for _, r := range judged(Rules, fig) {
		switch {
		case r.Opening != nil:
			on.openings = append(on.openings, r)
		case r.Side != nil:
			on.sides = append(on.sides, r)
		case r.Room != nil:
			on.rooms = append(on.rooms, r)
		}
	}
	return on
}

// of returns the rules on an opening, a room or a side by its ID.
func (on rulesOn) of(id plan.ID) []*rule.Rule {
	switch id.Kind() {
	case plan.KindOpening:
		return on.openings
	case plan.KindRoom:
		return on.rooms
	}
	return on.sides
}

// planScope is what Result.Of knows the plan as a whole by.
const planScope plan.ID = "plan"

// scopesAt returns the scopes of an opening, or of a room and its sides; none where it
// is gone.
func scopesAt(ix *index.Index, id plan.ID) []scope {
	if id.Kind() == plan.KindOpening {
		if v, ok := ix.OpeningView(id); ok {
			return []scope{openingScope(v)}
		}
		return nil
	}
	v, ok := ix.RoomView(id)
	if !ok {
		return nil
	}
	scopes := make([]scope, 0, 1+len(v.Sides))
	scopes = append(scopes, scope{id, &ofRoom{v}})
	sides := rule.SidesOf(v)
	for i := range sides {
		scopes = append(scopes, sideScope(&sides[i]))
	}
	return scopes
}

func openingScope(v index.OpeningView) scope { return scope{v.Opening.ID, &ofOpening{v}} }

type ofOpening struct{ of index.OpeningView }

// parts shows the level too: a noun may stand on another in a later plan.
func (v *ofOpening) parts() []any { return append(v.of.Parts(), v.of.Level) }

func (v *ofOpening) judge(r *rule.Rule, fig *code.Figures) []rule.Finding {
	found := r.Opening(v.of, fig)
	for i := range found {
		f := &found[i]
		f.Level, f.Opening, f.About = v.of.Level, v.of.Opening.ID, v.of.Opening.ID
		if v.of.Room != nil {
			f.Room = v.of.Room.ID
		}
	}
	return found
}

func sideScope(v *rule.SideView) scope { return scope{v.Side.ID, (*ofSide)(v)} }

type ofSide rule.SideView

func (v *ofSide) parts() []any { return rule.SideView(*v).Parts() }

func (v *ofSide) judge(r *rule.Rule, fig *code.Figures) []rule.Finding {
	return inRoom(r.Side(rule.SideView(*v), fig), v.Level, v.Room, v.Side.ID)
}

type ofRoom struct{ of index.RoomView }

func (v *ofRoom) parts() []any { return append(v.of.Parts(), v.of.Level) }

func (v *ofRoom) judge(r *rule.Rule, fig *code.Figures) []rule.Finding {
	return inRoom(r.Room(v.of, fig), v.of.Level, v.of.Room, v.of.Room.ID)
}

// inRoom says of findings where they are, and what they are about where that is not said.
func inRoom(found []rule.Finding, level plan.ID, room *plan.Room, about plan.ID) []rule.Finding {
	for i := range found {
		f := &found[i]
		f.Level, f.Room = level, room.ID
		if f.About == "" {
			f.About = about
		}
	}
	return found
}

// wide is a level, or the plan where that is nil, as one rule on it reads it.
type wide struct {
	level *plan.Level
	shows func() []any
	run   func(*code.Figures) []rule.Finding
}

func wideScope(ix *index.Index, level *plan.Level, one *rule.Rule) scope {
	view, judge := wideOf(one, level).See(ix, level)
	return scope{wideID(level, one), &wide{level, view.Parts, judge}}
}

func (v *wide) parts() []any { return v.shows() }

func (v *wide) judge(_ *rule.Rule, fig *code.Figures) []rule.Finding {
	found := v.run(fig)
	for i := range found {
		if f := &found[i]; v.level != nil {
			f.Level = v.level.ID
		}
	}
	return found
}

// wideID names the scope of a rule on a level, or on the plan where that is nil: each such
// rule has one of its own, so that it is judged by what it reads alone.
func wideID(level *plan.Level, r *rule.Rule) plan.ID {
	if level == nil {
		return partOf(planScope, r)
	}
	return partOf(level.ID, r)
}

func partOf(scope plan.ID, r *rule.Rule) plan.ID { return scope + "/" + plan.ID(r.ID) }

// wideRules lists the rules on levels, or on the plan where level is nil.
func wideRules(level *plan.Level) (rules []*rule.Rule) {
	for _, r := range Rules {
		if wideOf(r, level) != nil {
			rules = append(rules, r)
		}
	}
	return rules
}

func wideOf(r *rule.Rule, level *plan.Level) *rule.Wide {
	if level != nil {
		return r.Level
	}
	return r.Plan
}
