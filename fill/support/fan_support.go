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
	Doc:     words.New("rule.fan-support.doc", `A ceiling fan hangs from a box that is listed for one; an old-work box that grips the board is not. Such a box is screwed to a joist or comes on a brace of its own: where the ceiling's joists are told it has to be at one, where they are not that is told as not known. Not checked: how much a fan weighs, which is checked by itself, whether a ceiling box without a fan would have to be ready for one, and fans that come with a housing.`),
	Opening: checkFanSupport,
}

func checkFanSupport(v index.OpeningView, _ *code.Figures) []rule.Finding {
	o := v.Opening
	box := frame.BoxOf(o.Assembly)
	if o.At.Part != plan.PartCeiling || !o.IsInUse() || box == nil || !part.HangsFan(o) {
		return nil
	}
	if !box.CarriesFan() {
		f := rule.OnBox(o, rule.Stop)
		f.Message = words.New("rule.fan-support.unlisted", "{0}: its box is not listed to carry a fan", o.Tag)
		f.Why = words.New("rule.fan-support.unlisted.why", "It is “{0}”; a fan wants a box that is listed and marked for one.", box.Text())
		f.Remedies = fanBoxes(o, func(*part.Assembly) bool { return true })
		return []rule.Finding{f}
	}
	if box.Mounting != part.Joist {
		return nil // it comes on a brace
	}
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
