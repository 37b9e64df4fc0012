package depth

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// BackToBack looks for boxes of both faces of a wall that are too deep together.
var BackToBack = rule.Rule{
	ID:    "back-to-back",
	Title: words.New("rule.back-to-back.title", "Boxes back to back within the framing"),
	Doc:   words.New("rule.back-to-back.doc", `Boxes set from either face of a wall into one place are together no deeper than the framing (common practice: two things cannot be in one place). Each takes what it reaches behind its own face of the studs: all of its depth where it carries a ring, else its depth less the layers of its face. Boxes that touch back to back fit; those that overlap neither along the wall nor in height do not face each other. It is told once, of a new box before one that is there already. Not checked: two that are there already, sound, fire (that has a rule of its own) and the room that cables want between.`),
	Side:  checkBackToBack,
}

func checkBackToBack(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		for _, o := range w.Behind {
			if by := w.TooDeep(b, o); by > 0 && !(b.IsThere() && o.IsThere()) && rule.TellsOf(b.Opening, o.Opening) {
				found = append(found, tooDeep(w, b, o, by, fig))
			}
		}
	}
	return found
}

func tooDeep(w *frame.Wall, b, o frame.Placed, by unit.Length, fig *code.Figures) rule.Finding {
	framing := w.FramingAt(b.Centre())
	f := rule.OnBox(b.Opening, rule.Stop)
	f.Measured, f.Limit = rule.LengthOf(b.InFraming()+o.InFraming()), rule.LengthOf(framing)
	f.Message = words.New("rule.back-to-back.deep", "{0} and {1}, back to back, are {2} too deep", b.Opening.Tag, o.Opening.Tag, words.Height(by))
	f.Why = words.New("rule.back-to-back.why", "They reach {0} and {1} into framing {2} deep.", words.Height(b.InFraming()), words.Height(o.InFraming()), words.Height(framing))
	half := (b.Right - b.Left) / 2
	f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step(), o.Left-half, o.Right+half))
	f.Remedies = append(f.Remedies, shallower(b, fig, func(deep unit.Length) bool { return frame.Spare(framing, deep, o.InFraming()) >= 0 })...)
	return f
}
