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
	id    plan.ID
	parts []any // what its view shows
	// judge runs a rule where it is on such a scope.
	judge func(*rule.Rule, *code.Figures) []rule.Finding
}

// planScope is the scope of rules on the plan as a whole.
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
	scopes = append(scopes, roomScope(v))
	for _, s := range rule.SidesOf(v) {
		scopes = append(scopes, sideScope(s))
	}
	return scopes
}

// openingScope shows the level too: a noun may stand on another in a later plan.
func openingScope(v index.OpeningView) scope {
	return scope{v.Opening.ID, append(v.Parts(), v.Level), func(r *rule.Rule, fig *code.Figures) []rule.Finding {
		if r.Opening == nil {
			return nil
		}
		found := r.Opening(v, fig)
		for i := range found {
			f := &found[i]
			f.Level, f.Opening, f.About = v.Level, v.Opening.ID, v.Opening.ID
			if v.Room != nil {
				f.Room = v.Room.ID
			}
		}
		return found
	}}
}

func sideScope(v rule.SideView) scope {
	return scope{v.Side.ID, v.Parts(), func(r *rule.Rule, fig *code.Figures) []rule.Finding {
		if r.Side == nil {
			return nil
		}
		return inRoom(r.Side(v, fig), v.Level, v.Room, v.Side.ID)
	}}
}

func roomScope(v index.RoomView) scope {
	return scope{v.Room.ID, append(v.Parts(), v.Level), func(r *rule.Rule, fig *code.Figures) []rule.Finding {
		if r.Room == nil {
			return nil
		}
		return inRoom(r.Room(v, fig), v.Level, v.Room, v.Room.ID)
	}}
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

// wideScope is a level, or the plan where that is nil. What it shows is what all rules on
// it read. It reports false where there is no such rule.
func wideScope(ix *index.Index, level *plan.Level) (s scope, any bool) {
	var judges map[*rule.Rule]func(*code.Figures) []rule.Finding
	for _, r := range Rules {
		if w := wideOf(r, level); w != nil {
			if judges == nil {
				judges = map[*rule.Rule]func(*code.Figures) []rule.Finding{}
			}
			v, judge := w.See(ix, level)
			s.parts, judges[r] = append(s.parts, v.Parts()...), judge
		}
	}
	s.id = planScope
	if level != nil {
		s.id = level.ID
	}
	s.judge = func(r *rule.Rule, fig *code.Figures) (found []rule.Finding) {
		if judge := judges[r]; judge != nil {
			found = judge(fig)
		}
		for i := range found {
			if f := &found[i]; level != nil {
				f.Level = level.ID
			}
		}
		return found
	}
	return s, len(judges) > 0
}

func wideOf(r *rule.Rule, level *plan.Level) *rule.Wide {
	if level != nil {
		return r.Level
	}
	return r.Plan
}
