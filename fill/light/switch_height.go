package light

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// SwitchHeight looks for switches that are too high to reach.
var SwitchHeight = rule.Rule{
	ID:     "switch-height",
	Title:  words.New("rule.switch-height.title", "Switches not too high"),
	Figure: "switch-max-height",
	Doc:    words.New("rule.switch-height.doc", `The center of a switch's grip is not more than 6 ft 7 in above the floor. Where it is said how far the grip in its highest position is above the center of the box, it is measured to there, else to the center of the box. One that is there already is told in a note. Not checked: switches beside the motor they serve, hung from above, or on a busway, and platforms.`),
	Opening: func(v index.OpeningView, fig *code.Figures) []rule.Finding {
		o := v.Opening
		if !isSwitch(o) || o.At.Part == plan.PartCeiling || o.At.Part == plan.PartFloor || o.At.Part == plan.PartTop {
			return nil
		}
		height, most := frame.CentreHeight(o, v.Room)+o.Grip, fig.Lighting.SwitchHeight
		if height <= most {
			return nil
		}
		f := rule.Finding{
			Severity: rule.Stop, Measured: rule.LengthOf(height), Limit: rule.LengthOf(most),
			Message: words.New("rule.switch-height.high", "{0} is {1} above the floor", o.Tag, words.HeightBeside{Height: height, Other: most}),
			Why:     words.New("rule.switch-height.why", "A switch is reached from the floor: the center of its grip is not higher than {0}.", fig.Limit("switch-max-height")),
		}
		if o.Grip > 0 {
			f.Message = words.New("rule.switch-height.grip", "The grip of {0} is {1} above the floor", o.Tag, words.HeightBeside{Height: height, Other: most})
		}
		if o.Status.IsOld() {
			f.Severity = rule.Note
			return []rule.Finding{f}
		}
		f.Remedies = []rule.Remedy{{
			Label: words.New("rule.switch-height.remedy", "Set it at {0}", words.Height(usualHeight(o.Kind, fig))),
			Edit:  edit.SetHeight{ID: o.ID, Height: plan.CentreAt(usualHeight(o.Kind, fig))},
		}}
		return []rule.Finding{f}
	},
}
