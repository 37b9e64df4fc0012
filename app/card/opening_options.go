package card

import (
	"fmt"
	"strings"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func (o *openingCard) boxOptions() (options []Option) {
	now := o.now()
	for _, a := range part.All().Assemblies {
		fits := a.Gangs() == now.Gangs
		if !fits && a.Code != now.Assembly.Code {
			continue
		}
		label := o.say("opening.box.option", "{0}: {1}, {2}", a.Code, a.Text(), a.Volume())
		if price := a.Price(); price.Cents > 0 {
			label = o.say("opening.box.priced", "{0}: {1}, {2}, {3}", a.Code, a.Text(), a.Volume(), price)
		}
		options = append(options, Option{
			Label: label, Short: o.say("opening.box.short", "{0}, {1}", a.Code, a.Volume()), Now: a.Code == now.Assembly.Code && now.Assembly.Box == "",
			Do: func() {
				o.do(plan.SetAssembly{ID: o.id, Assembly: plan.Assembly{Code: a.Code, Barriers: now.Assembly.Barriers}})
			},
		})
	}
	if built, ok, err := fill.BuiltOf(now.Assembly); now.Assembly.Box != "" && ok && err == nil {
		options = append(options, Option{Label: o.say("opening.box.by-hand", "by hand, {0}", built.Volume()), Now: true, Do: func() {}})
	}
	return options
}

func (o *openingCard) sourceOptions() []Option {
	_, source := o.contents()
	c, _ := o.contents()
	set := func(to *plan.Contents) func() {
		return func() { o.do(plan.SetContents{ID: o.id, Contents: to}) }
	}
	options := []Option{
		{Label: o.say("opening.source.stated", "Stated by you"), Now: source == fill.Stated, Do: set(fill.StatedContents(c))},
		{Label: o.say("opening.source.assumed", "Assumed by its kind"), Now: source == fill.Assumed, Do: set(nil)},
		{Label: o.say("opening.source.unknown", "Not known"), Now: source == fill.NotKnown, Do: set(&plan.Contents{Source: plan.ContentsNotKnown})},
	}
	if source == fill.Drawn {
		options = append(options, Option{Label: o.say("opening.source.drawn", "The cables drawn"), Now: true, Do: func() {}})
	}
	return options
}

func (o *openingCard) kindOptions() (options []Option) {
	for _, k := range part.All().Kinds {
		options = append(options, Option{Label: capital(o.Voice.Say(k.Text())), Now: k.ID == o.now().Kind, Do: func() {
			_ = o.change(func(n *plan.Opening) {
				fresh := fill.NewOpening(unit.Imperial, k.ID, n.At)
				n.Kind, n.Gangs, n.Assembly, n.Devices = k.ID, fresh.Gangs, fresh.Assembly, nil
			})
		}})
	}
	return options
}

var lineNames = []struct {
	line plan.BoxLine
	name words.Text
}{
	{plan.BoxCentre, words.New("line.centre", "the centre of the box")},
	{plan.BoxBottom, words.New("line.bottom", "the bottom of the box")},
	{plan.BoxTop, words.New("line.top", "the top of the box")},
}

// restate says the same height another way: the box does not move.
func (o *openingCard) restate(to plan.BoxLine, from plan.Datum) {
	now := o.now()
	_, height := fill.BoxSize(&now)
	var floor unit.Length
	if place, ok := o.Index.Place(now.At); ok && place.Room != nil {
		floor = place.Room.FloorThickness()
	}
	o.do(plan.SetHeight{ID: o.id, Height: now.Height.Restated(to, from, height, floor)})
}

func (o *openingCard) lineOptions() (options []Option) {
	h := o.now().Height
	for _, l := range lineNames {
		options = append(options, Option{Label: capital(o.Voice.Say(l.name)), Now: h.To == l.line, Do: func() { o.restate(l.line, h.From) }})
	}
	return options
}

func (o *openingCard) datumOptions() []Option {
	h := o.now().Height
	return []Option{
		{Label: capital(o.say("datum.finished", "the finished floor")), Now: h.From != plan.Subfloor, Do: func() { o.restate(h.To, plan.FinishedFloor) }},
		{Label: capital(o.say("datum.subfloor", "the subfloor")), Now: h.From == plan.Subfloor, Do: func() { o.restate(h.To, plan.Subfloor) }},
	}
}

func (o *openingCard) statusOptions() (options []Option) {
	for _, s := range []plan.Status{plan.StatusNew, plan.StatusExisting, plan.StatusRemove} {
		options = append(options, Option{Label: capital(o.Voice.Say(statusText(s))), Now: o.now().Status == s, Do: func() {
			o.do(plan.SetStatus{ID: o.id, Status: s})
		}})
	}
	return options
}

func statusText(s plan.Status) words.Text {
	switch s {
	case plan.StatusExisting:
		return words.New("status.existing.long", "existing")
	case plan.StatusRemove:
		return words.New("status.remove.long", "to be removed")
	}
	return words.New("status.new.long", "new")
}

func (o *openingCard) circuitOptions() (options []Option) {
	for c := range o.Index.Plan().Circuits.All() {
		label := fmt.Sprintf("%s  %s", c.Number, c.Name)
		options = append(options, Option{Label: strings.TrimSpace(label), Now: o.now().Circuit == c.ID, Do: func() {
			_ = o.change(func(n *plan.Opening) { n.Circuit = c.ID })
		}})
	}
	if o.now().Circuit != "" {
		options = append(options, Option{Label: o.say("opening.circuit.off", "take it off its circuit"), Do: func() {
			_ = o.change(func(n *plan.Opening) { n.Circuit = "" })
		}})
	}
	return options
}
