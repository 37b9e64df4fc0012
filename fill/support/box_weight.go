package support

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// BoxWeight looks at the weight of lights and fans that hang from boxes.
var BoxWeight = rule.Rule{
	ID:      "box-weight",
	Title:   words.New("rule.box-weight.title", "Boxes that carry the weight of lights and fans"),
	Figure:  "box-carries",
	Doc:     words.New("rule.box-weight.doc", `A light of a weight that is told hangs from a box that carries it: a box for lights carries {0} unless it is marked for another weight, a box or ring for devices in a wall a light of {1} on two No. 6 screws. A fan hangs from a box listed for it, which carries {2} unless it is marked for more, and none more than {3}. What a box is marked to carry is entered from its stamp. A weight that nobody tells is no fault. Not checked: supports apart from the box, whether a box in a ceiling was made for lights, what old-work boxes that grip the board are marked for, screws, and tracks or receptacles that carry a light.`, 50*unit.Pound, 6*unit.Pound, 35*unit.Pound, 70*unit.Pound),
	Opening: checkBoxWeight,
}

func checkBoxWeight(v index.OpeningView, fig *code.Figures) []rule.Finding {
	o := v.Opening
	box := frame.BoxOf(o.Assembly)
	switch {
	case o.Weight <= 0 || !o.IsInUse() || box == nil && o.Assembly.Carries == 0 && o.Assembly.ForFan != plan.AnswerYes:
		return nil
	case part.HangsFan(o):
		return fanWeight(o, fig)
	case !part.HangsLight(o):
		return nil
	}
	carries, figure := fig.Build.BoxCarries, "box-carries"
	isForDevices := box != nil && o.At.Part == plan.PartFace && isDeviceFront(o)
	switch {
	case o.Assembly.Carries > 0:
		carries = o.Assembly.Carries
	case isForDevices:
		carries, figure = fig.Build.AnyBoxCarries, "any-box-carries"
	}
	if o.Weight <= carries {
		return nil
	}
	f := tooHeavy(o, carries, figure, fig)
	f.Message = words.New("rule.box-weight.light", "{0}: the light weighs {1}, its box carries {2}", o.Tag, o.Weight, carries)
	f.Why = words.New("rule.box-weight.light.why", "Hang it from the framing, not from the box, or take a box that is marked for it and enter what that says.")
	if isForDevices && o.Assembly.Carries == 0 {
		f.Why = words.New("rule.box-weight.any.why", "A box or ring for devices carries so much on two No. 6 screws; one made for lights carries {0}.", fig.Build.BoxCarries)
		if o.Weight <= fig.Build.BoxCarries {
			f.Remedies = lightBoxes(o)
		}
	}
	return []rule.Finding{f}
}

// isDeviceFront reports whether what is built in ends in the opening for devices: a box of
// that shape, or a ring.
func isDeviceFront(o *plan.Opening) bool {
	body, ok := frame.BodyOf(o.Assembly)
	return frame.BoxOf(o.Assembly).Shape == part.DeviceShape || ok && body.HasRing
}

// fanWeight looks at a fan, whose box is listed for it or is told for that.
func fanWeight(o *plan.Opening, fig *code.Figures) []rule.Finding {
	marked := o.Assembly.Carries
	switch {
	case o.Weight > fig.Build.FanMost:
		f := tooHeavy(o, fig.Build.FanMost, "fan-most", fig)
		f.Message = words.New("rule.box-weight.fan-most", "{0}: the fan weighs {1}, no box carries one of more than {2}", o.Tag, o.Weight, fig.Build.FanMost)
		f.Why = words.New("rule.box-weight.fan-most.why", "A heavier fan hangs from the framing, not from the box.")
		return []rule.Finding{f}
	case marked > 0 && o.Weight > marked:
		f := tooHeavy(o, marked, "fan-carries", fig)
		f.Message = words.New("rule.box-weight.fan", "{0}: the fan weighs {1}, its box is marked for {2}", o.Tag, o.Weight, marked)
		f.Why = words.New("rule.box-weight.fan.why", "Take a box that is marked for the fan, and enter what that says.")
		return []rule.Finding{f}
	case marked == 0 && o.Weight > fig.Build.FanCarries:
		f := tooHeavy(o, fig.Build.FanCarries, "fan-carries", fig)
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.box-weight.fan-unread", "{0}: read whether its box is marked for a fan of {1}", o.Tag, o.Weight)
		f.Why = words.New("rule.box-weight.fan-unread.why", "Over {0} a box says the most that it carries; enter what it says.", fig.Build.FanCarries)
		return []rule.Finding{f}
	}
	return nil
}

func tooHeavy(o *plan.Opening, limit unit.Weight, figure string, fig *code.Figures) rule.Finding {
	f := rule.OnBox(o, rule.Stop)
	f.Measured, f.Limit = rule.WeightOf(o.Weight), rule.WeightOf(limit)
	f.Section, f.ByPractice = fig.Title+" "+fig.Section(figure), false
	return f
}

// mostLightBoxes bounds how many boxes are offered in place of one.
const mostLightBoxes = 3

// lightBoxes offers boxes made for lights, held the same way or at a stud, with no less volume.
func lightBoxes(o *plan.Opening) (offers []rule.Remedy) {
	built, chosen, err := part.Resolve(o.Assembly)
	if !chosen || err != nil {
		return nil
	}
	isOld := built.Box.Mounting == part.OldWork
	for _, a := range part.All().Assemblies {
		if len(offers) == mostLightBoxes {
			break
		}
		isRound := a.Box.Shape == part.RoundShape || a.Box.Shape == part.OctagonShape
		fits := isOld == (a.Box.Mounting == part.OldWork) && (isOld || a.Box.Mounting == part.NailOn || a.Box.Mounting == part.Bracket)
		if isRound && fits && a.Box.Listed == built.Box.Listed && a.Volume() >= built.Volume() {
			offers = append(offers, rule.Remedy{
				Label: words.New("rule.box-depth.remedy", "Use “{0}”", a.Text()),
				Edit:  edit.SetAssembly{ID: o.ID, Assembly: plan.Assembly{Code: a.Code, Barriers: o.Assembly.Barriers}},
			})
		}
	}
	return offers
}
