package depth

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// BoxDepth looks for boxes deeper than the framing they are set in.
var BoxDepth = rule.Rule{
	ID:    "box-depth",
	Title: words.New("rule.box-depth.title", "Boxes no deeper than the framing"),
	Doc:   words.New("rule.box-depth.doc", `A box reaches no farther into a wall than its framing is deep (common practice: two things cannot be in one place). A box that carries a ring stands even with the studs and takes all of its depth; one without comes through the finish and takes as much less as the layers are thick. One exactly as deep fits. Between two rooms the framing is as deep as the gap between their faces less both finishes, else as deep as is entered. Not checked: walls of no known framing, boxes that are there already, boxes on surfaces and in masonry, ceilings and floors, and the room that cables want behind a box.`),
	Side:  checkBoxDepth,
}

func checkBoxDepth(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		framing := w.FramingAt(b.Centre())
		if framing <= 0 || b.IsThere() || !b.IsBuiltIn() || b.InFraming() <= framing {
			continue
		}
		f := rule.OnBox(b.Opening, rule.Stop)
		f.Measured, f.Limit = rule.LengthOf(b.InFraming()), rule.LengthOf(framing)
		f.Message = words.New("rule.box-depth.deep", "{0}: the box is {1} deeper than the framing", b.Opening.Tag, words.Height(b.InFraming()-framing))
		f.Why = words.New("rule.box-depth.why", "It reaches {0} behind the face of the studs; the framing is {1} deep.", words.Height(b.InFraming()), words.Height(framing))
		f.Remedies = shallower(b, fig, func(deep unit.Length) bool { return deep <= framing })
		found = append(found, f)
	}
	return found
}

// mostOffers bounds how many boxes are offered in place of one.
const mostOffers = 3

// shallower offers assemblies that reach into the framing no deeper than is asked: of at least
// the volume, or in a closed wall old-work boxes that grip its finish and hold what the kind of
// opening comes with.
func shallower(b frame.Placed, fig *code.Figures, fits func(deep unit.Length) bool) (offers []rule.Remedy) {
	built, chosen, err := part.Resolve(b.Opening.Assembly)
	if !chosen || err != nil {
		return nil
	}
	all := part.All().Roomier(built.Assembly, built.Volume())
	if b.Box.Mounting == part.OldWork || b.Side.ConditionAt(b.Opening.At.Along) == plan.ConditionClosed {
		// In a closed wall goes an old-work box, the roomiest that fits first: whether all that
		// was drawn goes into it is told by its box-fill.
		thick := frame.SetProud(b.Side)
		all = slices.DeleteFunc(part.All().OldWork(built.Assembly, place.Needed(b.Opening, fig)), func(a *part.Assembly) bool { return thick > 0 && !a.Box.Fit.Grips(thick) })
		slices.SortStableFunc(all, func(x, y *part.Assembly) int { return cmp.Compare(y.Volume(), x.Volume()) })
	}
	for _, a := range all {
		body, ok := frame.BodyOf(plan.Assembly{Code: a.Code})
		if len(offers) == mostOffers || !ok || !fits(body.InFraming(frame.SetProud(b.Side))) {
			continue
		}
		offers = append(offers, useBox(b, a))
	}
	return offers
}
