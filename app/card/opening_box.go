package card

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
)

// contentsOf returns what is in the box and who told.
func contentsOf(s subject[plan.Opening]) (box.Contents, boxes.Source) {
	v, ok := s.Index.OpeningView(s.id)
	if !ok {
		return nil, boxes.NotKnown
	}
	return boxes.ContentsOf(v)
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
		_, source := contentsOf(s)
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

// inBox is the picture of the box, or why there is none.
func inBox(s subject[plan.Opening]) row {
	body := look.Column(look.Grid)
	working := false // its fold was left open
	return row{body, func() {
		contents, source := contentsOf(s)
		title := look.Row(look.Grid, 1,
			look.NewText(s.say("opening.in-box", "What is in the box"), look.Title),
			look.NewFlexible(s.Voice.Say(source.Text()), look.Second))
		r, why := s.worked(s.now(), contents, source)
		if body.Objects = []fyne.CanvasObject{look.HairLine(), title}; why != "" {
			body.Add(look.NewParagraph(why, look.Quiet, s.Width))
			return
		}
		body.Add(look.TopRow(look.Grid*2, 1, NewGauge(r, s.Voice), s.sum(r, s.Width-look.Scaled(gaugeWidth+look.Grid*2))))
		fold := NewFold(s.Context, s.say("opening.working", "The arithmetic, line by line"), s.working(r))
		fold.SetOpen(working)
		fold.changed = func(open bool) { working = open }
		body.Add(fold)
	}}
}

// worked returns the working of a box's fill, or says why there is none.
func (c *Context) worked(o plan.Opening, contents box.Contents, source boxes.Source) (r box.Result, why string) {
	if !source.IsKnown() {
		return r, c.say("opening.box.unknown", "Nothing says what is in it, so there is no verdict.")
	}
	built, chosen, err := part.Resolve(o.Assembly)
	switch {
	case err != nil:
		return r, ErrorText(c.Voice, err)
	case !chosen:
		return r, c.say("opening.box.choose", "Select a box above, and its fill is worked out here.")
	case c.Result.IsRefused():
		return r, c.Voice.Say(c.Result.NotChecked())
	case c.Result.Figures == nil:
		return r, c.say("opening.box.wait", "Working it out …")
	}
	if r, err = box.Fill(c.Result.Figures, built.Space(), contents); err != nil {
		return r, ErrorText(c.Voice, err)
	}
	return r, ""
}
