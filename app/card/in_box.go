package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
)

// inBox is the picture of the box, space by space where barriers part it, or why there is
// none.
func inBox(s subject[plan.Opening]) row {
	body := look.Column(look.Grid)
	working := map[int]bool{} // whose fold was left open
	return row{body, func() {
		w, why := s.worked()
		title := look.Row(look.Grid, 1,
			look.NewText(s.say("opening.in-box", "What is in the box"), look.Title),
			look.NewFlexible(s.Voice.Say(w.Source.Text()), look.Second))
		if body.Objects = []fyne.CanvasObject{look.HairLine(), title}; why != "" {
			body.Add(look.NewParagraph(why, look.Quiet, s.Width))
			return
		}
		for i, r := range w.Spaces {
			if len(w.Spaces) > 1 {
				body.Add(look.NewText(s.say("opening.space", "Space {0} of {1}", i+1, len(w.Spaces)), look.Strong))
			}
			body.Add(look.TopRow(look.Grid*2, 1, NewGauge(r, s.Voice), s.sum(r, s.Width-look.Scaled(gaugeWidth+look.Grid*2))))
			fold := NewFold(s.Context, s.say("opening.working", "The arithmetic, line by line"), s.working(r))
			fold.SetOpen(working[i])
			fold.changed = func(open bool) { working[i] = open }
			body.Add(fold)
		}
	}}
}

// worked returns the working of the box, and says why there is none where that is so.
func (s subject[T]) worked() (w boxes.Work, why string) {
	w.Source = boxes.NotKnown
	v, ok := s.Index.OpeningView(s.id)
	if !ok {
		return w, ""
	}
	_, w.Source = boxes.ContentsOf(v)
	built, chosen, err := part.Resolve(v.Opening.Assembly)
	isBuilt := chosen && err == nil
	if isBuilt && s.Result.Figures != nil {
		w = boxes.WorkOf(v, built, s.Result.Figures)
	}
	switch {
	case w.Source == boxes.NotKnown && w.Err != nil:
		why = ErrorText(s.Voice, w.Err)
	case !w.Source.IsKnown():
		why = s.say("opening.box.unknown", "Nothing says what is in it, so there is no verdict.")
	case err != nil:
		why = ErrorText(s.Voice, err)
	case !chosen:
		why = s.say("opening.box.choose", "Select a box above, and its fill is worked out here.")
	case s.Result.IsRefused():
		why = s.Voice.Say(s.Result.NotChecked())
	case s.Result.Figures == nil:
		why = s.say("opening.box.wait", "Working it out …")
	case w.Err != nil:
		why = ErrorText(s.Voice, w.Err)
	}
	return w, why
}
