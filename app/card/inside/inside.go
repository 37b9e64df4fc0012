// Package inside is the part of an opening's card that tells of its box: which it is, what
// is in it and who says so, and the picture of how full it is. Whether it passes is
// decided in package fill.
package inside

import (
	"maps"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/choose"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

type opening = bind.Subject[plan.Opening]

// byHand is the value of a box that is no listed assembly.
const byHand = "by hand"

// Box is the choice of a listed assembly, of the gangs that all have.
func Box(s opening) bind.Row {
	code := bind.Told(s, func(o plan.Opening) string {
		if o.Assembly.Box != "" {
			return byHand
		}
		return o.Assembly.Code
	}, func(o plan.Opening, code string) edit.Edit { return edit.SetListed{ID: o.ID, Code: code} })
	gangs := bind.Part(s, func(o *plan.Opening) *int { return &o.Gangs })
	none := s.Say("opening.box.none", "none selected")
	if s.Now().Status.IsOld() {
		none = s.Say("opening.box.unread", "size not read")
	}
	return bind.Choice(s.Context, s.Say("opening.box", "Box"), none, code, func() (all []bind.Option[string]) {
		n, isSame := gangs.Read()
		if !isSame {
			return append(byPolicy(s), ofOneGang(s)...)
		}
		for _, a := range part.All().AssembliesOf(n, code.Now()) {
			text := words.New("opening.box.option", "{0}: {1}, {2}", a.Code, a.Text(), a.MarkedVolume())
			if price := a.Price(); price.Cents > 0 {
				text = words.New("opening.box.priced", "{0}: {1}, {2}, {3}", a.Code, a.Text(), a.MarkedVolume(), price)
			}
			all = append(all, bind.Option[string]{Value: a.Code, Text: text, Short: shortOf(a)})
		}
		if code.Now() == byHand {
			if built, ok, err := part.Resolve(s.Now().Assembly); ok && err == nil {
				all = append(all, bind.Option[string]{Value: byHand, Text: words.New("opening.box.by-hand", "by hand, {0}", built.MarkedVolume()), Do: func() {}})
			}
		}
		return all
	})
}

// byPolicy offers boxes of a kind for several with other gangs, each its own: no box is for
// all of them. They are tried away from the window's goroutine.
func byPolicy(s opening) (all []bind.Option[string]) {
	if s.Result.Figures == nil {
		return nil
	}
	for _, p := range choose.Standing {
		if p.ID == choose.AsIs.ID {
			continue
		}
		all = append(all, bind.Option[string]{Value: "policy " + p.ID, Text: words.New("opening.box.policy", "{0}: {1}", p.Name, p.Says), Do: func() { take(s, p) }})
	}
	return all
}

// take gives each of several openings the box that a policy has for it.
func take(s opening, p choose.Policy) {
	ix, fig, prices := s.Index, s.Result.Figures, pricesOf(s)
	var step edit.Steps
	var any bool
	s.Aside(func() { step, any = choose.NewFinder(ix, fig, prices).Among(p, s.IDs) }, func() {
		if any && s.Index == ix {
			s.Do(step)
		}
	})
}

// ofOneGang offers to select those alone that have as many gangs.
func ofOneGang(s opening) (all []bind.Option[string]) {
	count := map[int][]plan.ID{}
	for _, o := range s.All() {
		count[o.Gangs] = append(count[o.Gangs], o.ID)
	}
	for _, gangs := range slices.Sorted(maps.Keys(count)) {
		ids := count[gangs]
		text := words.New("opening.box.only", "Select only the {0} of {1} gangs", len(ids), gangs)
		switch gangs {
		case 0:
			text = words.New("opening.box.only-round", "Select only the {0} without gangs", len(ids))
		case 1:
			text = words.New("opening.box.only-single", "Select only the {0} of one gang", len(ids))
		}
		all = append(all, bind.Option[string]{Value: "only " + strconv.Itoa(gangs), Text: text, Line: len(all) == 0, Do: func() { s.Window.Select(ids...) }})
	}
	return all
}

// Source is the choice of who tells what is in the box.
func Source(s opening) bind.Row {
	source := bind.One(func() boxes.Source {
		w, _ := worked(s)
		if w.Source == boxes.DrawnAndStated {
			return boxes.Stated
		}
		return w.Source
	}, func(to boxes.Source) edit.Edit {
		v, _ := s.Index.OpeningView(s.ID())
		return edit.SetContents{ID: s.ID(), Contents: boxes.ToldBy(v, to)}
	})
	return bind.Choice(s.Context, s.Say("opening.source", "Source"), "", source, func() []bind.Option[boxes.Source] {
		all := []bind.Option[boxes.Source]{
			{Value: boxes.Stated, Text: words.New("opening.source.stated", "Entered by you")},
			{Value: boxes.NotKnown, Text: words.New("opening.source.unknown", "Not known")},
			{Value: boxes.InPart, Text: words.New("opening.source.in-part", "Known in part")},
		}
		if now := s.Now(); !now.HasOldBox() {
			all = slices.Insert(all, 1, bind.Option[boxes.Source]{Value: boxes.Assumed, Text: words.New("opening.source.assumed", "Assumed by its kind")})
		}
		if source.Now() == boxes.Drawn {
			all = append(all, bind.Option[boxes.Source]{Value: boxes.Drawn, Text: words.New("opening.source.drawn", "The cables drawn"), Do: func() {}})
		}
		return all
	})
}

// Picture is the picture of the box, space by space where barriers part it, or why there is
// none.
func Picture(s opening) bind.Row {
	body := look.Column(look.Grid)
	working := map[int]bool{} // whose fold was left open
	return bind.Row{Object: body, Update: func() {
		w, why := worked(s)
		title := look.Row(look.Grid, 1,
			look.NewText(s.Say("opening.in-box", "What is in the box"), look.Title),
			look.NewFlexible(s.Voice.Say(w.Source.Text()), look.Second))
		if body.Objects = []fyne.CanvasObject{look.HairLine(), title}; why != "" {
			body.Add(look.NewParagraph(why, look.Quiet, s.Width))
			return
		}
		for i, r := range w.Spaces {
			if len(w.Spaces) > 1 {
				body.Add(look.NewText(s.Say("opening.space", "Space {0} of {1}", i+1, len(w.Spaces)), look.Strong))
			}
			body.Add(look.TopRow(look.Grid*2, 1, NewGauge(r, s.Voice), sum(s.Context, r, s.Width-look.Scaled(gaugeWidth+look.Grid*2))))
			fold := bind.NewFold(s.Context, s.Say("opening.working", "The arithmetic, line by line"), inFull(s.Context, r))
			fold.SetOpen(working[i])
			fold.Changed = func(open bool) { working[i] = open }
			body.Add(fold)
		}
	}}
}

// worked returns the working of the box, and says why there is none where that is so.
func worked(s opening) (w boxes.Work, why string) {
	w.Source = boxes.NotKnown
	v, ok := s.Index.OpeningView(s.ID())
	if !ok {
		return w, ""
	}
	_, w.Source = boxes.ContentsOf(v)
	built, chosen, err := part.Resolve(v.Opening.Assembly)
	if chosen && err == nil && s.Result.Figures != nil {
		w = boxes.WorkOf(v, built, s.Result.Figures)
	}
	switch {
	case w.Source == boxes.NotKnown && w.Err != nil:
		why = look.ErrorText(s.Voice, w.Err)
	case w.Source == boxes.InPart:
		why = s.Say("opening.box.in-part", "There may be more in it than was seen, so there is no verdict.")
		if least, ok := leastIn(s, v); ok {
			why = s.Say("opening.box.least", "At least {0}. There may be more in it than was seen, so there is no verdict.", least)
		}
	case !w.Source.IsKnown():
		why = s.Say("opening.box.unknown", "Nothing says what is in it, so there is no verdict.")
	case err != nil:
		why = look.ErrorText(s.Voice, err)
	case !chosen:
		why = s.Say("opening.box.choose", "Select a box above, and its fill is worked out here.")
	case s.Result.IsRefused():
		why = s.Voice.Say(s.Result.NotChecked())
	case s.Result.Figures == nil:
		why = s.Say("opening.box.wait", "Working it out …")
	case w.Err != nil:
		why = look.ErrorText(s.Voice, w.Err)
	}
	return w, why
}

// leastIn returns what a box holds at least by what was seen of it, where any of it tells.
func leastIn(s opening, v index.OpeningView) (least unit.Volume, ok bool) {
	if s.Result.Figures == nil {
		return 0, false
	}
	least, ok = box.Sum(s.Result.Figures, boxes.LeastOf(v))
	return least, ok && least > 0
}

// shortOf is a listed assembly in a few words, with one on a volume from memory.
func shortOf(a *part.Assembly) words.Text {
	if a.IsFromMemory() {
		return words.New("opening.box.short-from-memory", "{0}, {1} from memory", a.Code, a.Volume())
	}
	return words.New("opening.box.short", "{0}, {1}", a.Code, a.Volume())
}
