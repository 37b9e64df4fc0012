package card

import (
	"fmt"
	"strings"

	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
)

// sourceOf returns who told what is in the box.
func sourceOf(s subject[plan.Opening]) boxes.Source {
	w, _ := s.worked()
	return w.Source
}

// boxRow is the choice of a listed assembly.
func boxRow(s subject[plan.Opening]) row {
	return s.choice(s.say("opening.box", "Box"), s.say("opening.box.none", "none selected"), func() (options []look.Option) {
		now := s.now()
		for _, a := range part.All().Assemblies {
			if a.Gangs() != now.Gangs && a.Code != now.Assembly.Code {
				continue
			}
			label := s.say("opening.box.option", "{0}: {1}, {2}", a.Code, a.Text(), a.MarkedVolume())
			if price := a.Price(); price.Cents > 0 {
				label = s.say("opening.box.priced", "{0}: {1}, {2}, {3}", a.Code, a.Text(), a.MarkedVolume(), price)
			}
			options = append(options, look.Option{
				Label: label, Short: s.say("opening.box.short", "{0}, {1}", a.Code, a.Volume()), Now: a.Code == now.Assembly.Code && now.Assembly.Box == "",
				Do: func() {
					s.do(edit.SetListed{ID: s.id, Code: a.Code})
				},
			})
		}
		if built, ok, err := part.Resolve(now.Assembly); now.Assembly.Box != "" && ok && err == nil {
			options = append(options, look.Option{Label: s.say("opening.box.by-hand", "by hand, {0}", built.Volume()), Now: true, Do: func() {}})
		}
		return options
	})
}

// sourceRow is the choice of who tells what is in the box.
func sourceRow(s subject[plan.Opening]) row {
	return s.choice(s.say("opening.source", "Source"), "", func() []look.Option {
		source := sourceOf(s)
		set := func(to *plan.Contents) func() {
			return func() { s.do(edit.SetContents{ID: s.id, Contents: to}) }
		}
		options := []look.Option{
			{Label: s.say("opening.source.stated", "Entered by you"), Now: source == boxes.Stated || source == boxes.DrawnAndStated, Do: set(s.stating())},
			{Label: s.say("opening.source.assumed", "Assumed by its kind"), Now: source == boxes.Assumed, Do: set(nil)},
			{Label: s.say("opening.source.unknown", "Not known"), Now: source == boxes.NotKnown, Do: set(&plan.Contents{Source: plan.ContentsNotKnown})},
		}
		if source == boxes.Drawn {
			options = append(options, look.Option{Label: s.say("opening.source.drawn", "The cables drawn"), Now: true, Do: func() {}})
		}
		return options
	})
}

// stating is what the box holds now, as stated by the user.
func (s subject[T]) stating() *plan.Contents {
	v, _ := s.Index.OpeningView(s.id)
	return boxes.Restated(v, boxes.ToState(v))
}

// kindRow is the choice of another kind, with which the box begins anew.
func kindRow(s subject[plan.Opening]) row {
	return s.choice(s.say("opening.kind", "Kind"), s.now().Kind, func() (options []look.Option) {
		now := s.now()
		for _, k := range part.All().Kinds {
			options = append(options, look.Option{Label: look.Capital(s.Voice.Say(k.Text())), Now: k.ID == now.Kind, Do: func() { s.do(part.ToKind(&now, k.ID)) }})
		}
		return options
	})
}

// gangsRow is shown of boxes that have any: a round one has none.
func gangsRow(s subject[plan.Opening]) row {
	gangs := bound(s, func(x *plan.Opening) *int { return &x.Gangs })
	f := field(s.Context, s.say("opening.gangs", "Gangs"), gangs, counts(s.Context))
	return row{f, f.Update}.showIf(func() bool { return gangs.read() > 0 })
}

// circuitRow is the choice of a circuit, or of none.
func circuitRow(s subject[plan.Opening]) row {
	return s.choice(s.say("opening.circuit", "Circuit"), s.say("opening.circuit.none", "not on one yet"), func() (options []look.Option) {
		circuit := bound(s, func(x *plan.Opening) *plan.ID { return &x.Circuit })
		now := circuit.read()
		for c := range s.Index.Plan().Circuits.All() {
			label := fmt.Sprintf("%s  %s", c.Number, c.Name)
			options = append(options, look.Option{Label: strings.TrimSpace(label), Now: now == c.ID, Do: func() { s.do(circuit.edit(c.ID)) }})
		}
		if now != "" {
			options = append(options, look.Option{Label: s.say("opening.circuit.off", "remove it from its circuit"), Do: func() { s.do(circuit.edit("")) }})
		}
		return options
	})
}
