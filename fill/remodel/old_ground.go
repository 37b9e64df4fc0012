package remodel

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// OldGround looks for new grounding receptacles that nothing grounds.
var OldGround = rule.Rule{
	ID:     "old-ground",
	Title:  words.New("rule.old-ground.title", "Grounding new receptacles from old cable"),
	Figure: "grounding-extended",
	Doc:    words.New("rule.old-ground.doc", `From memory, with 406.4(D). A new receptacle with a grounding slot is grounded. Told is one that the drawn cables with a grounding conductor do not lead to a panel and lead to a box that an existing cable without one feeds; where nobody has said whether that cable carries one it is told as open. A conductor run to it by itself, as the section allows, is not looked for. GFCI receptacles that replace an old one are not told: they may go without, marked so.`),
	Plan:   rule.OnPlan(seeGrounds, checkGrounds),
}

// grounds are the cables of a plan and the openings that they end in.
type grounds struct {
	ix    *index.Index
	boxes plan.Set[*index.Joined]
}

func seeGrounds(ix *index.Index) grounds { return grounds{ix, ix.Joined()} }

// Parts returns the cables and what is read of the openings at their ends.
func (v grounds) Parts() []any { return []any{v.ix.Plan().Cables, v.boxes} }

func checkGrounds(v grounds, _ *code.Figures) (found []rule.Finding) {
	if !v.isOld() {
		return nil
	}
	feeds := map[plan.ID]*plan.Cable{} // by the boxes looked at, those of one run alike
	for o := range v.boxes.All() {
		if o.Status != plan.StatusNew || !part.All().Kind(o.Kind).IsGeneral() || o.Was != "" && o.Kind == "gfci" {
			continue
		}
		if _, known := feeds[o.ID]; !known {
			run, weak := v.weakFeed(o.ID)
			for id := range run {
				feeds[id] = weak
			}
		}
		if weak := feeds[o.ID]; weak != nil {
			found = append(found, v.ungrounded(o, weak))
		}
	}
	return found
}

// isOld reports whether any cable is in the wall already.
func (v grounds) isOld() bool {
	for c := range v.ix.Plan().Cables.All() {
		if c.Existing {
			return true
		}
	}
	return false
}

func (v grounds) ungrounded(o *index.Joined, by *plan.Cable) rule.Finding {
	f := rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: o.ID, Level: o.Level, Room: o.Room,
		Message: words.New("rule.old-ground.none", "{0}: no grounding conductor reaches it", o.Tag),
		Why:     words.New("rule.old-ground.why", "The existing cable that feeds it carries none. Run a grounding conductor to it, or protect it by GFCI and mark it “No Equipment Ground” where it replaces an old one."),
	}
	if by.Grounding() == plan.Unsaid {
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.old-ground.unknown", "{0}: nobody has checked whether a grounding conductor reaches it", o.Tag)
		f.Why = words.New("rule.old-ground.unknown.why", "Open the box that the existing cable ends in, with the power off and proven off, and look.")
	}
	return f
}

// weakFeed returns the boxes that grounding conductors join to one, and the existing cable
// without a known grounding conductor that they are fed by, nil where grounding conductors
// lead from them to a panel or no such cable is drawn. Of several it is one that is known to
// have none.
func (v grounds) weakFeed(from plan.ID) (run map[plan.ID]bool, weak *plan.Cable) {
	run = map[plan.ID]bool{from: true}
	isGrounded := false
	for next := []plan.ID{from}; len(next) > 0; next = next[1:] {
		at := next[0]
		if at.Kind() != plan.KindOpening { // a panel: what else it feeds is another run
			isGrounded = true
			continue
		}
		for _, c := range v.ix.CablesAt(at) {
			to := c.To
			if at == c.To {
				to = c.From
			}
			switch {
			case c.Grounding() == plan.AnswerYes:
				if !run[to] {
					run[to], next = true, append(next, to)
				}
			case c.Existing && (weak == nil || c.Grounding() == plan.AnswerNo):
				weak = c
			}
		}
	}
	if isGrounded {
		return run, nil
	}
	return run, weak
}
