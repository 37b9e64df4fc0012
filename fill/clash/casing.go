package clash

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Casing looks for plates that the trim of a door or window leaves no room for.
var Casing = rule.Rule{
	ID:    "casing",
	Title: words.New("rule.casing.title", "Plates clear of the casing of doors and windows"),
	Doc:   words.New("rule.casing.doc", `No plate or canopy lies over the trim of a door, a window or a cased opening (common practice: two things cannot be in one place). The trim of a door begins {0} off its slab, {1} of gap and {2} of reveal, and is as wide as is entered, on both faces alike; plates have the sizes of standard ones. One that touches the trim passes. Not checked: doors and windows whose casing is not entered, plates larger than standard, and boxes in the opening itself, which are told for that.`, words.Height(5*unit.Inch/16), words.Height(unit.Inch/8), words.Height(3*unit.Inch/16)),
	Side:  checkCasing,
}

func checkCasing(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		if b.IsThere() || w.IsInBreak(b) {
			continue
		}
		var most unit.Length
		var under index.Cut
		var trim frame.Rect
		for _, c := range v.Cuts {
			if outer, any := frame.CasingOf(c); any && b.Plate().OverlapOf(outer) > most {
				most, under, trim = b.Plate().OverlapOf(outer), c, outer
			}
		}
		if most == 0 {
			continue
		}
		f := rule.OnBox(b.Opening, rule.Stop)
		f.Measured = rule.LengthOf(most)
		f.Message = words.New("rule.casing.over", "{0}: its plate lies {1} over the casing of a {2}", b.Opening.Tag, words.Height(most), under.Break.Kind.Text())
		f.Why = words.New("rule.casing.why", "The casing runs from {0} to {1} along this wall; the plate from {2} to {3}.", trim.Left, trim.Right, b.Plate().Left, b.Plate().Right)
		f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
		found = append(found, f)
	}
	return found
}
