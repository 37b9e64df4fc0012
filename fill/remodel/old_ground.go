package remodel

import (
	"cmp"
	"slices"

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

// grounds are the cables of a plan and what they join.
type grounds struct {
	cables []*plan.Cable
	boxes  map[plan.ID]end
}

// end is what the rule reads of an opening that cables end in.
type end struct {
	id, level, room, was plan.ID
	tag, kind            string
	status               plan.Status
}

func seeGrounds(ix *index.Index) grounds {
	v := grounds{boxes: map[plan.ID]end{}}
	p := ix.Plan()
	for c := range p.Cables.All() {
		v.cables = append(v.cables, c)
		for _, id := range []plan.ID{c.From, c.To} {
			o, l := p.Opening(id)
			if o == nil {
				continue
			}
			at := end{id: id, level: l.ID, was: o.Was, tag: o.Tag, kind: o.Kind, status: o.Status}
			if place, ok := ix.Place(o.At); ok && place.Room != nil {
				at.room = place.Room.ID
			}
			v.boxes[id] = at
		}
	}
	return v
}

// Parts returns the cables and what is read of the openings at their ends.
func (v grounds) Parts() (parts []any) {
	for _, c := range v.cables {
		parts = append(parts, c, v.boxes[c.From], v.boxes[c.To])
	}
	return parts
}

func checkGrounds(v grounds, _ *code.Figures) (found []rule.Finding) {
	if !slices.ContainsFunc(v.cables, func(c *plan.Cable) bool { return c.Existing }) {
		return nil
	}
	var all []end
	for _, o := range v.boxes {
		if o.status == plan.StatusNew && part.All().Kind(o.kind).IsGeneral() && (o.was == "" || o.kind != "gfci") {
			all = append(all, o)
		}
	}
	slices.SortFunc(all, func(a, b end) int { return cmp.Compare(a.id, b.id) })
	for _, o := range all {
		if weak := v.weakFeed(o.id); weak != nil {
			found = append(found, v.ungrounded(o, weak))
		}
	}
	return found
}

func (v grounds) ungrounded(o end, by *plan.Cable) rule.Finding {
	f := rule.Finding{
		Severity: rule.Stop, Opening: o.id, About: o.id, Level: o.level, Room: o.room,
		Message: words.New("rule.old-ground.none", "{0}: no grounding conductor reaches it", o.tag),
		Why:     words.New("rule.old-ground.why", "The existing cable that feeds it carries none. Run a grounding conductor to it, or protect it by GFCI and mark it “No Equipment Ground” where it replaces an old one."),
	}
	if by.Grounding() == plan.Unsaid {
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.old-ground.unknown", "{0}: nobody has checked whether a grounding conductor reaches it", o.tag)
		f.Why = words.New("rule.old-ground.unknown.why", "Open the box that the existing cable ends in, with the power off and proven off, and look.")
	}
	return f
}

// weakFeed returns the existing cable without a known grounding conductor that a box is fed
// by, nil where grounding conductors lead from it to a panel or no such cable is drawn. Of
// several it is one that is known to have none.
func (v grounds) weakFeed(from plan.ID) (weak *plan.Cable) {
	joined, next := map[plan.ID]bool{from: true}, []plan.ID{from}
	for len(next) > 0 {
		at := next[0]
		next = next[1:]
		if _, isBox := v.boxes[at]; !isBox {
			return nil // a panel
		}
		for _, c := range v.cables {
			to := c.To
			switch at {
			case c.From:
			case c.To:
				to = c.From
			default:
				continue
			}
			switch {
			case c.Grounding() == plan.AnswerYes:
				if !joined[to] {
					joined[to], next = true, append(next, to)
				}
			case c.Existing && (weak == nil || c.Grounding() == plan.AnswerNo):
				weak = c
			}
		}
	}
	return weak
}
