package boxes

import (
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan/index"
	"studbay/plan/words"
)

// YokesFit looks for boxes whose front does not take what is mounted on it.
var YokesFit = rule.Rule{
	ID:      "yokes-fit",
	Title:   words.New("rule.yokes-fit.title", "Yokes within the gangs of a box"),
	Figure:  "device-allowances",
	Doc:     words.New("rule.yokes-fit.doc", `A box takes one yoke a gang, and a device that needs two gangs takes both (common practice: two things cannot be in one place; the section counts a device by the gangs that it needs). Compared are the gangs that the front of the selected box type has, as its last ring says, with the yokes that are entered, else with those its kind has. Not checked: boxes of round fronts, which take a device by a cover of its own, boxes with nothing selected, and whether plate and device match.`),
	Opening: checkYokesFit,
}

func checkYokesFit(v index.OpeningView, _ *code.Figures) []rule.Finding {
	o := v.Opening
	b, chosen, _ := part.Resolve(o.Assembly)
	if !o.IsInUse() || !chosen || b.Gangs() == 0 {
		return nil
	}
	yokes, wide, need := mountedOn(v)
	if need <= b.Gangs() {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Stop,
		Measured: rule.CountOf(need), Limit: rule.CountOf(b.Gangs()),
		Message: words.New("rule.yokes-fit.many", "{0}: {1} yokes in a {2}-gang box", o.Tag, yokes, b.Gangs()),
		Why:     words.New("rule.yokes-fit.many.why", "Each yoke takes a gang of its own: two things cannot be in one place (common practice)."),
	}
	if wide > 1 {
		f.Message = words.New("rule.yokes-fit.wide", "{0}: what is mounted needs {1} gangs, the box has {2}", o.Tag, need, b.Gangs())
		f.Why = words.New("rule.yokes-fit.wide.why", "A device among them is {0} gangs wide, and the section counts it by the gangs it needs: two things cannot be in one place (common practice).", wide)
	}
	return []rule.Finding{f}
}

// mountedOn returns how many yokes an opening has, how wide the widest is, and the gangs
// that all need together.
func mountedOn(v index.OpeningView) (yokes, wide, need int) {
	stated, _ := statedBy(v.Opening)
	items := stated
	if !stated.Tells(box.Device) {
		items = yokesOf(v.Opening)
	}
	for _, i := range items.Present() {
		if i.What == box.Device {
			times, gangs := max(i.Times, 1), max(i.Gangs, 1)
			yokes, wide, need = yokes+times, max(wide, gangs), need+times*gangs
		}
	}
	return yokes, wide, need
}
