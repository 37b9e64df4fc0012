package card

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/plan"
)

// controlCard shows which switches serve what.
type controlCard struct {
	*form
	id plan.ID
}

func newControlCard(c Context, id plan.ID) Card {
	k := &controlCard{&form{Context: c}, id}
	if _, ok := k.now(); !ok {
		return nil
	}
	k.heading = func() (string, string, bool) {
		x, ok := k.now()
		if !ok {
			return "", "", false
		}
		return k.say("control.title", "Control {0}", x.Letter), k.say("control.second", "{0}; it serves {1}", k.tagsOf(x.Switches), k.tagsOf(x.Loads)), true
	}
	letter := k.textField(k.say("control.letter", "Letter on the sheet"), func() string { x, _ := k.now(); return x.Letter }, func(text string) error {
		return k.change(func(x *plan.Control) { x.Letter = strings.TrimSpace(text) })
	})
	note := k.textField(k.say("opening.note", "Note"), func() string { x, _ := k.now(); return x.Note }, func(text string) error {
		return k.change(func(x *plan.Control) { x.Note = strings.TrimSpace(text) })
	})
	members := newRebuilt(func() string {
		x, _ := k.now()
		return joined(x.Switches) + "/" + joined(x.Loads)
	}, k.members)
	k.fields = append(k.fields, members)
	k.lay([]line{letter}, nil, members.Container, note, k.newPressLine(k.say("control.out", "Take the control out"), func() { k.Window.Run("delete") }))
	k.fields = append(k.fields, note)
	return k.ready()
}

func (k *controlCard) now() (plan.Control, bool) {
	if x, ok := k.Index.Plan().Controls.Get(k.id); ok {
		return *x, true
	}
	return plan.Control{ID: k.id}, false
}

// change edits the control; one that has lost its last member goes out of the plan.
func (k *controlCard) change(do func(*plan.Control)) error {
	x, _ := k.now()
	x.Switches, x.Loads = slices.Clone(x.Switches), slices.Clone(x.Loads)
	do(&x)
	if len(x.Switches)+len(x.Loads) == 0 {
		return k.Window.Do(plan.RemoveControl{ID: k.id})
	}
	return k.Window.Do(plan.ChangeControl{Control: x})
}

// members has a line for each switch and each thing served, and one to add to each.
func (k *controlCard) members() (lines []line) {
	now, _ := k.now()
	switches := func(x *plan.Control) *[]plan.ID { return &x.Switches }
	loads := func(x *plan.Control) *[]plan.ID { return &x.Loads }
	for _, id := range now.Switches {
		lines = append(lines, k.member(k.say("control.switch", "Switch"), id, switches))
	}
	lines = append(lines, k.more(k.say("control.add-switch", "One more switch"), true, switches))
	for _, id := range now.Loads {
		lines = append(lines, k.member(k.say("control.load", "Serves"), id, loads))
	}
	lines = append(lines, k.more(k.say("control.add-load", "Serves also"), false, loads))
	for _, l := range lines {
		k.revealed(l)
	}
	return lines
}

// member is one opening of the control: to be gone to, or taken out of it.
func (k *controlCard) member(label string, id plan.ID, of func(*plan.Control) *[]plan.ID) line {
	return NewChoice(label, "", func() []Option {
		return []Option{
			{Label: k.openingText(id), Now: true, Do: func() {}},
			{Label: k.say("control.show", "Show its card"), Line: true, Do: func() { k.Window.Select(id) }},
			{Label: k.say("control.drop", "Take it out of the control"), Do: func() {
				k.shown(k.change(func(x *plan.Control) {
					list := of(x)
					*list = slices.DeleteFunc(*list, func(other plan.ID) bool { return other == id })
				}))
			}},
		}
	})
}

// more adds an opening: a switch, or something that is none.
func (k *controlCard) more(label string, isSwitch bool, of func(*plan.Control) *[]plan.ID) line {
	return NewChoice(label, k.say("control.choose", "choose …"), func() (options []Option) {
		now, _ := k.now()
		for _, o := range k.openingsByTag() {
			kind := part.All().Kind(o.Kind)
			if kind == nil || (kind.Family == part.Switch) != isSwitch || slices.Contains(*of(&now), o.ID) {
				continue
			}
			options = append(options, Option{Label: k.openingText(o.ID), Do: func() {
				k.shown(k.change(func(x *plan.Control) { *of(x) = append(*of(x), o.ID) }))
			}})
		}
		return options
	})
}

func (c Context) openingsByTag() (all []*plan.Opening) {
	for _, o := range c.Index.Plan().Openings() {
		all = append(all, o)
	}
	slices.SortFunc(all, func(a, b *plan.Opening) int {
		return cmp.Or(cmp.Compare(len(a.Tag), len(b.Tag)), cmp.Compare(a.Tag, b.Tag))
	})
	return all
}

// openingText names an opening by its tag and kind.
func (c Context) openingText(id plan.ID) string {
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
func (c Context) tagsOf(ids []plan.ID) string {
	if len(ids) == 0 {
		return c.say("control.nothing", "nothing yet")
	}
	var tags []string
	for _, id := range ids {
		tags = append(tags, c.endName(id))
	}
	return strings.Join(tags, ", ")
}

// controlsOf are rows that name the controls an opening is in; each leads to its card.
func (o *openingCard) controlsOf() *rebuilt {
	mine := func() (ids []plan.ID) {
		for x := range o.Index.Plan().Controls.All() {
			if slices.Contains(x.Switches, o.id) || slices.Contains(x.Loads, o.id) {
				ids = append(ids, x.ID)
			}
		}
		return ids
	}
	return newRebuilt(func() string { return joined(mine()) }, func() (lines []line) {
		for _, id := range mine() {
			lines = append(lines, o.row(id, func() string {
				x, ok := o.Index.Plan().Controls.Get(id)
				if !ok {
					return ""
				}
				return o.say("control.row", "Control {0}: {1} → {2}", x.Letter, o.tagsOf(x.Switches), o.tagsOf(x.Loads))
			}))
		}
		return lines
	})
}
