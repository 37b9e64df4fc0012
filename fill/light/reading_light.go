package light

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
)

// ReadingLight asks how lights to read by are put on.
var ReadingLight = rule.Rule{
	ID:    "reading-light",
	Title: words.New("rule.reading-light.title", "What puts on a light to read by"),
	Doc:   words.New("rule.reading-light.doc", `A light to read by has a switch of its own, or one on the wall works it (common practice). Until it is said which, or a switch is drawn to it, it is an open decision. Not checked: other lights, those on furniture, and boxes that are there already.`),
	Room:  checkReading,
}

func checkReading(v index.RoomView, _ *code.Figures) (found []rule.Finding) {
	v.EachOpening(func(o *plan.Opening, _ geom.Point) {
		if o.Kind != part.ReadingLight || o.Status != plan.StatusNew || o.OwnSwitch == plan.AnswerYes || o.At.Part != plan.PartFace || v.IsLoad(o.ID) {
			return
		}
		f := rule.OnBox(o, rule.Note)
		f.IsOpen, f.ByPractice = true, true
		f.Message = words.New("rule.reading-light.unsaid", "{0}: say whether it has a switch of its own", o.Tag)
		f.Why = words.New("rule.reading-light.unsaid.why", "Say it on its card, or connect it with the switch on the wall that works it.")
		if o.OwnSwitch == plan.AnswerNo {
			f.Message = words.New("rule.reading-light.switch", "{0}: say which switch works it", o.Tag)
			f.Why = words.New("rule.reading-light.switch.why", "It has none of its own: connect it with the switch on the wall that works it.")
		}
		found = append(found, f)
	})
	return found
}
