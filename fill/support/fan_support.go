package support

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// FanSupport looks at what ceiling fans hang from.
var FanSupport = rule.Rule{
	ID:      "fan-support",
	Title:   words.New("rule.fan-support.title", "Ceiling fans in boxes that carry them"),
	Figure:  "fan-box",
	Doc:     words.New("rule.fan-support.doc", `A ceiling fan hangs from a box that is listed for one; an old-work box that grips the board is not. Such a box is screwed to a joist or comes on a brace of its own: where the ceiling's joists are told it has to be at one, where they are not that is told as not known. A box that is there already carries one only by the mark that was read in it. Not checked: how much a fan weighs, which is checked by itself, whether a ceiling box without a fan would have to be ready for one, and fans that come with a housing.`),
	Opening: checkFanSupport,
}

func checkFanSupport(v index.OpeningView, _ *code.Figures) []rule.Finding {
	o := v.Opening
	box := frame.BoxOf(o.Assembly)
	if o.At.Part != plan.PartCeiling || !o.IsInUse() || !part.HangsFan(o) {
		return nil
	}
	switch carriesFan(o, box) {
	case plan.Unsaid:
		return notRead(o, box)
	case plan.AnswerNo:
		return unlisted(o, box)
	}
	if box == nil || box.Mounting != part.Joist || o.HasOldBox() {
		return nil // it comes on a brace, or hangs there already
	}
	return atJoist(v, box)
}

// carriesFan says whether a fan may hang from a box. One that is there already does where its
// mark says so, whatever it looks like; a new one by its listing.
func carriesFan(o *plan.Opening, box *part.Box) plan.Answer {
	switch {
	case !o.HasOldBox() && (box == nil || box.CarriesFan()):
		return plan.AnswerYes
	case !o.HasOldBox(), box != nil && box.Mounting == part.OldWork:
		return plan.AnswerNo // one that grips the board never is
	case box != nil && !box.CarriesFan() && o.Assembly.ForFan == plan.Unsaid:
		return plan.AnswerNo
	}
	return o.Assembly.ForFan
}

// notRead asks for the mark of a box that is there already.
func notRead(o *plan.Opening, box *part.Box) []rule.Finding {
	f := rule.OnBox(o, rule.Note)
	f.IsOpen = true
	f.Message = words.New("rule.fan-support.unread", "{0}: read whether the old box is marked for a fan", o.Tag)
	f.Why = words.New("rule.fan-support.unread.why", "A box that is there already counts as one for a fan only by the mark in it; enter what that says.")
	if box != nil {
		f.Remedies = fanBoxes(o, func(*part.Assembly) bool { return true })
	}
	return []rule.Finding{f}
}

func unlisted(o *plan.Opening, box *part.Box) []rule.Finding {
	f := rule.OnBox(o, rule.Stop)
	f.Message = words.New("rule.fan-support.unlisted", "{0}: its box is not listed to carry a fan", o.Tag)
	if box == nil {
		f.Why = words.New("rule.fan-support.unmarked.why", "The old box has no mark for one; a fan wants a box that is listed and marked for it, in its place or beside it.")
		return []rule.Finding{f}
	}
	f.Why = words.New("rule.fan-support.unlisted.why", "It is “{0}”; a fan wants a box that is listed and marked for one.", box.Text())
	f.Remedies = fanBoxes(o, func(*part.Assembly) bool { return true })
	return []rule.Finding{f}
}

// atJoist looks for the joist that a new box is screwed to.
func atJoist(v index.OpeningView, box *part.Box) []rule.Finding {
	o := v.Opening
	off, known := frame.JoistOff(v.Room, o)
	switch {
	case !known:
		f := rule.OnBox(o, rule.Note)
		f.IsOpen, f.ByPractice = true, true
		f.Message = words.New("rule.fan-support.joists", "{0}: it is not known whether a joist is above its box", o.Tag)
		f.Why = words.New("rule.fan-support.joists.why", "The box is screwed to a joist; enter where those of this ceiling are, or take one on a brace.")
		return []rule.Finding{f}
	case off > box.Width/2:
		f := rule.OnBox(o, rule.Stop)
		f.Measured, f.Limit = rule.LengthOf(off), rule.LengthOf(box.Width/2)
		f.Message = words.New("rule.fan-support.off", "{0}: no joist is above its box, the nearest {1} away", o.Tag, words.Height(off))
		f.Why = words.New("rule.fan-support.off.why", "The box is screwed to a joist; one on a brace hangs between two.")
		f.Remedies = fanBoxes(o, func(a *part.Assembly) bool {
			braced := *o
			braced.Assembly = plan.Assembly{Code: a.Code}
			_, by := frame.JoistIn(v.Room, &braced) // a brace hangs between two, not in one
			return a.Box.Mounting == part.BarHanger && by == 0
		})
		return []rule.Finding{f}
	}
	return nil
}

// fanBoxes offers assemblies that carry a fan and have no less volume.
func fanBoxes(o *plan.Opening, fits func(*part.Assembly) bool) (offers []rule.Remedy) {
	built, chosen, err := part.Resolve(o.Assembly)
	if !chosen || err != nil {
		return nil
	}
	for _, a := range part.All().Assemblies {
		if a.Box.CarriesFan() && a.Volume() >= built.Volume() && fits(a) {
			offers = append(offers, rule.Remedy{
				Label: words.New("rule.box-depth.remedy", "Use “{0}”", a.Text()),
				Edit:  edit.SetAssembly{ID: o.ID, Assembly: plan.Assembly{Code: a.Code, Barriers: o.Assembly.Barriers}},
			})
		}
	}
	return offers
}
