package boxes

import (
	"slices"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Bonding looks for metal boxes that nothing bonds.
var Bonding = rule.Rule{
	ID:      "bonding",
	Title:   words.New("rule.bonding.title", "Metal boxes bonded"),
	Figure:  "bonding",
	Doc:     words.New("rule.bonding.doc", `A metal box is connected to an equipment grounding conductor by a screw or clip that serves nothing else; that is a part of its own, with a pigtail. Told is a box of steel or cast metal whose wires are drawn or entered and among which is no grounding conductor. Of a box that is there already it is told as not known, since a raceway may bond it. Not checked: whether the screw and its pigtail are there, boxes whose contents are assumed or not known, and raceways that serve as the conductor.`),
	Opening: checkBonding,
}

func checkBonding(v index.OpeningView, _ *code.Figures) []rule.Finding {
	o := v.Opening
	b, chosen, _ := part.Resolve(o.Assembly)
	if o.IsGone() || !chosen || b.Box.Material == part.Plastic {
		return nil
	}
	contents, source := ContentsOf(v)
	if !source.IsKnown() || !contents.Tells(box.Conductor) && !contents.Tells(box.Through) || isGrounded(contents) {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Stop,
		Message:  words.New("rule.bonding.none", "{0}: no grounding conductor reaches the metal box", o.Tag),
		Why:      words.New("rule.bonding.why", "What enters it ({0}) has none to bond the box with.", source.Text()),
	}
	if o.HasOldBox() {
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.bonding.unknown", "{0}: it is not known what bonds the metal box", o.Tag)
	}
	return []rule.Finding{f}
}

// isGrounded reports whether a grounding conductor enters a box; a cable brings one.
func isGrounded(contents box.Contents) bool {
	return slices.ContainsFunc(contents.Present(), func(i box.Item) bool {
		return i.What == box.Cable || i.What == box.Ground || i.What == box.IsolatedGround
	})
}
