package card

import (
	"cmp"
	"slices"
	"strings"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// controlPage shows which switches serve what.
var controlPage = page[plan.Control]{
	head: func(s subject[plan.Control], x plan.Control) (string, string) {
		return s.say("control.title", "Control {0}", x.Letter), s.say("control.second", "{0}; it serves {1}", s.tagsOf(x.Switches), s.tagsOf(x.Loads))
	},
	rows: []rowOf[plan.Control]{
		fieldRow(words.New("control.letter", "Letter on the sheet"), func(x *plan.Control) *string { return &x.Letter }, texts),
	},
	below: []rowOf[plan.Control]{
		membersRow,
		fieldRow(words.New("opening.note", "Note"), func(x *plan.Control) *string { return &x.Note }, texts),
		buttonRow[plan.Control](words.New("control.out", "Delete the control"), "delete"),
	},
}

// membersRow has a row for each switch and each thing served, and one to add to each.
func membersRow(s subject[plan.Control]) row {
	sign := func() string { return joined(s.now().Switches) + "/" + joined(s.now().Loads) }
	return rowList(look.Grid, sign, func() (rows []row) {
		for _, id := range s.now().Switches {
			rows = append(rows, memberRow(s, s.say("control.switch", "Switch"), id))
		}
		rows = append(rows, moreMembers(s, s.say("control.add-switch", "Another switch"), true))
		for _, id := range s.now().Loads {
			rows = append(rows, memberRow(s, s.say("control.load", "Serves"), id))
		}
		return append(rows, moreMembers(s, s.say("control.add-load", "Serves also"), false))
	})
}

// memberRow is one opening of the control: to be gone to, or taken out of it.
func memberRow(s subject[plan.Control], label string, id plan.ID) row {
	return s.choice(label, "", func() []look.Option {
		return []look.Option{
			{Label: s.openingText(id), Now: true, Do: func() {}},
			{Label: s.say("control.show", "Show its card"), Line: true, Do: func() { s.Window.Select(id) }},
			{Label: s.say("control.drop", "Remove it from the control"), Do: func() { s.do(edit.LeaveControl{ID: s.id, Opening: id}) }},
		}
	})
}

// moreMembers adds an opening: a switch, or something that is none.
func moreMembers(s subject[plan.Control], label string, isSwitch bool) row {
	return s.choice(label, s.say("control.choose", "choose …"), func() (options []look.Option) {
		in := s.now().Loads
		if isSwitch {
			in = s.now().Switches
		}
		for _, o := range s.openingsByTag() {
			kind := part.All().Kind(o.Kind)
			if kind == nil || (kind.Family == part.Switch) != isSwitch || slices.Contains(in, o.ID) {
				continue
			}
			options = append(options, look.Option{Label: s.openingText(o.ID), Do: func() {
				s.do(edit.JoinControl{ID: s.id, Opening: o.ID, IsSwitch: isSwitch})
			}})
		}
		return options
	})
}

func (c *Context) openingsByTag() (all []*plan.Opening) {
	for _, o := range c.Index.Plan().Openings() {
		all = append(all, o)
	}
	slices.SortFunc(all, func(a, b *plan.Opening) int {
		return cmp.Or(cmp.Compare(len(a.Tag), len(b.Tag)), cmp.Compare(a.Tag, b.Tag))
	})
	return all
}

// openingText names an opening by its tag and kind.
func (c *Context) openingText(id plan.ID) string {
	o, _ := c.Index.Plan().Opening(id)
	if o == nil {
		return ""
	}
	kind := o.Kind
	if k := part.All().Kind(o.Kind); k != nil {
		kind = c.Voice.Say(k.Text())
	}
	return o.Tag + "  " + kind
}

// tagsOf lists openings by their tags.
func (c *Context) tagsOf(ids []plan.ID) string {
	if len(ids) == 0 {
		return c.say("control.nothing", "nothing yet")
	}
	var tags []string
	for _, id := range ids {
		tags = append(tags, c.endName(id))
	}
	return strings.Join(tags, ", ")
}

// inControls are rows that name the controls an opening is in; each leads to its card.
func inControls(s subject[plan.Opening]) row {
	controls := func() plan.Set[*plan.Control] { return s.Index.Plan().Controls }
	return s.links(look.Grid, func() (ids []plan.ID) {
		for x := range controls().All() {
			if slices.Contains(x.Switches, s.id) || slices.Contains(x.Loads, s.id) {
				ids = append(ids, x.ID)
			}
		}
		return ids
	}, func(id plan.ID) string {
		x, ok := controls().Get(id)
		if !ok {
			return ""
		}
		return s.say("control.row", "Control {0}: {1} → {2}", x.Letter, s.tagsOf(x.Switches), s.tagsOf(x.Loads))
	})
}
