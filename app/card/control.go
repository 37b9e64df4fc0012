package card

import (
	"slices"
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// controlPage shows which switches serve what.
var controlPage = page[plan.Control]{
	head: func(s bind.Subject[plan.Control], x plan.Control) (string, string) {
		return s.Say("control.title", "Control {0}", x.Letter), s.Say("control.second", "{0}; it serves {1}", tagsOf(s.Context, x.Switches), tagsOf(s.Context, x.Loads))
	},
	rows: []bind.Maker[plan.Control]{
		bind.FieldOf(words.New("control.letter", "Letter on the sheet"), func(x *plan.Control) *string { return &x.Letter }, bind.Texts),
	},
	below: []bind.Maker[plan.Control]{
		members(words.New("control.switch", "Switch"), words.New("control.add-switch", "Another switch"), true, func(x plan.Control) []plan.ID { return x.Switches }),
		members(words.New("control.load", "Serves"), words.New("control.add-load", "Serves also"), false, func(x plan.Control) []plan.ID { return x.Loads }),
		bind.Note(func(x *plan.Control) *string { return &x.Note }),
		bind.ButtonOf[plan.Control](words.New("control.out", "Delete the control"), "delete"),
	},
}

// members has a row for each switch, or for each thing served, and one to add to them.
func members(label, another words.Text, isSwitch bool, of func(plan.Control) []plan.ID) bind.Maker[plan.Control] {
	return func(s bind.Subject[plan.Control]) bind.Row {
		ids := func() []plan.ID { return of(s.Now()) }
		more := bind.One(func() plan.ID { return "" }, func(id plan.ID) edit.Edit { return edit.JoinControl{ID: s.ID(), Opening: id, IsSwitch: isSwitch} })
		return bind.Column(look.Grid,
			bind.ByID(look.Grid, ids, func(id plan.ID) bind.Row { return member(s, s.Voice.Say(label), id) }),
			bind.Choice(s.Context, s.Voice.Say(another), s.Say("control.choose", "choose …"), more, func() (options []bind.Option[plan.ID]) {
				for _, o := range part.SwitchesOrLoads(s.Index.Plan(), isSwitch) {
					if !slices.Contains(ids(), o.ID) {
						options = append(options, bind.Option[plan.ID]{Value: o.ID, Text: openingText(s.Context, o.ID)})
					}
				}
				return options
			}))
	}
}

// member is one opening of the control: to be gone to, or taken out of it.
func member(s bind.Subject[plan.Control], label string, id plan.ID) bind.Row {
	itself := bind.One(func() plan.ID { return id }, nil)
	return bind.Choice(s.Context, label, "", itself, func() []bind.Option[plan.ID] {
		return []bind.Option[plan.ID]{
			{Value: id, Text: openingText(s.Context, id), Do: func() {}},
			{Text: words.New("control.show", "Show its card"), Line: true, Do: func() { s.Window.Select(id) }},
			{Text: words.New("control.drop", "Remove it from the control"), Do: func() { s.Do(edit.LeaveControl{ID: s.ID(), Opening: id}) }},
		}
	})
}

// openingText names an opening by its tag and kind.
func openingText(c *bind.Context, id plan.ID) words.Text {
	o, _ := c.Index.Plan().Opening(id)
	if o == nil {
		return words.Text{}
	}
	kind := words.New("plain", "{0}", o.Kind)
	if k := part.All().Kind(o.Kind); k != nil {
		kind = k.Text()
	}
	return words.New("control.member", "{0}  {1}", o.Tag, kind)
}

// tagsOf lists openings by their tags.
func tagsOf(c *bind.Context, ids []plan.ID) string {
	if len(ids) == 0 {
		return c.Say("control.nothing", "nothing yet")
	}
	var tags []string
	for _, id := range ids {
		tags = append(tags, c.TagOf(id))
	}
	return strings.Join(tags, ", ")
}

// inControls are rows that name the controls an opening is in; each leads to its card.
func inControls(s bind.Subject[plan.Opening]) bind.Row {
	controls := func() plan.Set[*plan.Control] { return s.Index.Plan().Controls }
	return s.Links(look.Grid, func() (ids []plan.ID) {
		for x := range controls().All() {
			if slices.Contains(x.Switches, s.ID()) || slices.Contains(x.Loads, s.ID()) {
				ids = append(ids, x.ID)
			}
		}
		return ids
	}, func(id plan.ID) string {
		x, ok := controls().Get(id)
		if !ok {
			return ""
		}
		return s.Say("control.row", "Control {0}: {1} → {2}", x.Letter, tagsOf(s.Context, x.Switches), tagsOf(s.Context, x.Loads))
	})
}

// gangsInOrder are rows for a box that works several controls: what each of its gangs works,
// from the one nearest the door on. Another choice in one puts what was there where that came
// from.
func gangsInOrder(s opening) bind.Row {
	works := func() []*plan.Control {
		if box, ok := wire.BoxOf(s.Index, s.ID()); ok {
			return wire.InOrder(s.Index, box.Opening, wire.Works(s.Index)[s.ID()])
		}
		return nil
	}
	gangs := func() int {
		if n := len(works()); n > 1 {
			return n
		}
		return 0
	}
	return bind.List(look.Grid, bind.ByPlace(gangs), func(n int) bind.Row {
		at := bind.One(func() plan.ID {
			if all := works(); n < len(all) {
				return all[n].ID
			}
			return ""
		}, func(id plan.ID) edit.Edit { return wire.PutInGang(s.Index, s.ID(), n, id) })
		return bind.Choice(s.Context, gangLabel(s, n), "", at, func() (options []bind.Option[plan.ID]) {
			for _, c := range works() {
				options = append(options, bind.Option[plan.ID]{Value: c.ID, Text: words.New("control.in-gang", "Control {0}: {1}", c.Letter, tagsOf(s.Context, c.Loads))})
			}
			return options
		})
	})
}

// gangLabel names a gang by its number, the first by where it is too.
func gangLabel(s opening, n int) string {
	box, _ := wire.BoxOf(s.Index, s.ID())
	switch {
	case n > 0:
		return s.Say("control.gang", "Gang {0} works", n+1)
	case box.Door == nil:
		return s.Say("control.gang-end", "Gang 1, at the {0}, works", box.End())
	}
	return s.Say("control.gang-door", "Gang 1, at the {0} by the door, works", box.End())
}
