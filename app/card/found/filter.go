package found

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// filterRows say what is listed, and how it is told, folded under the list.
func (l *List) filterRows(c *bind.Context, all []rule.Finding) fyne.CanvasObject {
	choice := func(label, any words.Text, options func() []look.Option) fyne.CanvasObject {
		made := look.NewChoice(c.Voice.Say(label), c.Voice.Say(any), options)
		made.SetWidth(c.Width)
		made.Finds(c.Voice)
		if c.Window != nil {
			made.OnFocus(func() { c.Window.Reveal(made) })
		}
		return made
	}
	rows := look.Column(look.Grid/2,
		choice(words.New("list.wording", "Told"), words.Text{}, func() []look.Option { return wordings(c) }),
		choice(words.New("list.weight", "Weight"), anyWeight, func() []look.Option { return l.weights(c) }),
		choice(words.New("list.room", "Room"), anyRoom, func() []look.Option { return l.rooms(c, all) }),
		choice(words.New("list.rule", "Rule"), anyRule, func() []look.Option { return l.rules(c, all) }),
	)
	title := c.Say("list.filter", "What is listed, and how it is told")
	if !l.filter.IsZero() {
		title = c.Say("list.filtered", "Listed: {0} of {1}", len(l.filter.Of(all)), len(all))
	}
	fold := bind.NewFold(c, title, rows)
	fold.SetOpen(l.filtering)
	fold.Changed = func(open bool) { l.filtering = open }
	return fold
}

// What stands for no bound.
var (
	anyWeight = words.New("list.any-weight", "all")
	anyRoom   = words.New("list.any-room", "every room")
	anyRule   = words.New("list.any-rule", "every rule")
)

// by lists by another filter.
func (l *List) by(c *bind.Context, f fill.Filter) {
	l.filter = f
	l.Show(c)
}

func wordings(c *bind.Context) []look.Option {
	set := func(trade bool) func() {
		return func() {
			if c.SetTrade != nil {
				c.SetTrade(trade)
			}
		}
	}
	return []look.Option{
		{Label: c.Say("list.plain", "plainly: what to do, and why"), Do: set(false), Now: !c.Trade},
		{Label: c.Say("list.trade", "to the trade: section and figures"), Do: set(true), Now: c.Trade},
	}
}

func (l *List) weights(c *bind.Context) (all []look.Option) {
	for _, w := range []struct {
		least rule.Severity
		text  words.Text
	}{
		{rule.Note, anyWeight},
		{rule.Warn, words.New("list.from-warn", "stops and warnings")},
		{rule.Stop, words.New("list.from-stop", "stops alone")},
	} {
		next := l.filter
		next.Least = w.least
		all = append(all, look.Option{Label: c.Voice.Say(w.text), Do: func() { l.by(c, next) }, Now: l.filter == next})
	}
	return all
}

func (l *List) rooms(c *bind.Context, found []rule.Finding) (all []look.Option) {
	add := func(room plan.ID, label string) {
		next := l.filter
		next.Room = room
		all = append(all, look.Option{Label: label, Do: func() { l.by(c, next) }, Now: l.filter == next})
	}
	add("", c.Voice.Say(anyRoom))
	for _, room := range fill.RoomsOf(found) {
		add(room, nameOf(c, room))
	}
	return all
}

func (l *List) rules(c *bind.Context, found []rule.Finding) (all []look.Option) {
	add := func(id string, label words.Text) {
		next := l.filter
		next.Rule = id
		all = append(all, look.Option{Label: c.Voice.Say(label), Do: func() { l.by(c, next) }, Now: l.filter == next})
	}
	add("", anyRule)
	for _, r := range fill.RulesOf(found) {
		add(r.ID, r.Title)
	}
	return all
}

// told is what stands under the sentence of a finding: what to do and why, or the section
// with what was measured.
func told(c *bind.Context, f rule.Finding) words.Text {
	if c.Trade {
		return rule.Figures(f)
	}
	return rule.Plain(f)
}
