package card

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan"
)

// planLists are what is written down in a plan and has no place on the board. Pressing a
// row shows its card.
var planLists = []rowOf[plan.Header]{
	circuitList,
	func(s subject[plan.Header]) row {
		return s.planList(s.say("level.all", "Levels"), "", s.levels, s.levelText,
			s.button(s.say("level.add", "Add a level"), "add-level"))
	},
	func(s subject[plan.Header]) row {
		return s.planList(s.say("decision.all", "Open decisions"), s.say("decision.none", "No open decisions."),
			func() []plan.ID { return idsOf(s.Index.Plan().Decisions) }, s.questionText,
			s.button(s.say("decision.add", "Another one …"), "add-decision"))
	},
	func(s subject[plan.Header]) row {
		return s.planList(s.say("waiver.all", "Set aside"), s.say("waiver.none", "No finding is set aside. Check, Set the finding aside does it."),
			func() []plan.ID { return idsOf(s.Index.Plan().Waivers) }, s.waiverText)
	},
	func(s subject[plan.Header]) row {
		return s.planList(s.say("amendment.all", "Local amendments"), s.say("amendment.none", "The edition holds as it is."),
			func() []plan.ID { return idsOf(s.Index.Plan().Amendments) }, s.amendmentText,
			s.button(s.say("amendment.add", "Another one …"), "amend-figure"))
	},
}

// planList is a fold of links, with what stands there where there are none, and what adds
// one.
func (c *Context) planList(title, none string, ids func() []plan.ID, say func(plan.ID) string, add ...row) row {
	empty := c.said(func() string { return none }).showIf(func() bool { return len(ids()) == 0 })
	links := c.links(look.Grid, ids, say).showIf(func() bool { return len(ids()) > 0 })
	return c.folded(title, look.Grid/2, false, append([]row{empty, links}, add...)...)
}

// idsOf lists the IDs of a set in its order.
func idsOf[T plan.Noun](set plan.Set[T]) (ids []plan.ID) {
	for x := range set.All() {
		ids = append(ids, x.Key())
	}
	return ids
}

func (c *Context) levels() (ids []plan.ID) {
	for _, l := range c.Index.Plan().Levels {
		ids = append(ids, l.ID)
	}
	return ids
}

// levelText, questionText, waiverText and amendmentText say one thing of a list; of one
// that is gone, nothing.
func (c *Context) levelText(id plan.ID) string {
	if l := c.Index.Plan().Level(id); l != nil {
		return c.say("level.row", "{0}, subfloor at {1}", l.Name, l.Elevation)
	}
	return ""
}

func (c *Context) questionText(id plan.ID) string {
	if x, ok := c.Index.Plan().Decisions.Get(id); ok {
		return x.Question
	}
	return ""
}

func (c *Context) waiverText(id plan.ID) string {
	if x, ok := c.Index.Plan().Waivers.Get(id); ok {
		return c.say("waiver.row", "{0}: {1}", ruleName(x.Rule), x.Reason)
	}
	return ""
}

func (c *Context) amendmentText(id plan.ID) string {
	x, ok := c.Index.Plan().Amendments.Get(id)
	switch {
	case !ok:
		return ""
	case x.Rule != "":
		return c.say("amendment.row.rule", "{0} turned off: {1}", AmendmentName(*x), x.Reason)
	}
	return c.say("amendment.row", "{0} is {1}: {2}", AmendmentName(*x), x.Value, x.Reason)
}

// circuitList is the circuits by number.
func circuitList(s subject[plan.Header]) row {
	var seen plan.Set[*plan.Circuit]
	box, built := look.Column(0), false
	list := row{box, func() {
		if now := s.Index.Plan().Circuits; !built || now != seen {
			seen, built = now, true
			box.Objects = s.circuitLinks(now)
			box.Refresh()
		}
	}}
	return s.folded(s.say("circuit.all", "Circuits"), 0, false, list)
}

func (c *Context) circuitLinks(of plan.Set[*plan.Circuit]) (links []fyne.CanvasObject) {
	all := slices.SortedFunc(of.All(), func(a, b *plan.Circuit) int {
		return cmp.Or(cmp.Compare(len(a.Number), len(b.Number)), cmp.Compare(a.Number, b.Number))
	})
	for _, x := range all {
		number := look.Sized(32, 0, look.NewText(x.Number, look.Strong))
		amps := look.NewText(c.say("circuit.row.amps", "{0} A", x.Amps), look.Second)
		links = append(links, c.linked(x.ID, look.Row(look.Grid/2, 1, number, look.NewFlexible(x.Name, look.Body), amps)))
	}
	if len(links) == 0 {
		links = append(links, look.NewParagraph(c.say("circuit.none", "No circuits yet: Place, Another circuit."), look.Quiet, c.Width))
	}
	return links
}
