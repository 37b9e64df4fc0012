package protect

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// OldOutlet looks for receptacles with a grounding slot where nothing grounds it.
var OldOutlet = rule.Rule{
	ID:     "old-outlet",
	Title:  words.New("rule.old-outlet.title", "Replacing an ungrounded receptacle"),
	Figure: "old-outlet",
	Doc:    words.New("rule.old-outlet.doc", `From memory. Where an existing box is said to hold no grounding conductor, what replaces its receptacle is one without a grounding slot, a GFCI receptacle, or one that a GFCI protects; the last two are marked “No Equipment Ground”. Told where such a box has a receptacle of the usual kind and neither it nor its breaker protects against ground faults; where nobody says what the breaker is, that is a note. Boxes of which nobody says whether they are grounded are not checked.`),
	Opening: func(v index.OpeningView, fig *code.Figures) []rule.Finding {
		o := v.Opening
		if o.Status != plan.StatusExisting || o.Grounded != plan.AnswerNo || !part.All().Kind(o.Kind).IsGeneral() ||
			IsGroundFault(o) || v.Circuit != nil && v.Circuit.GFCI == plan.FlagYes {
			return nil
		}
		f := rule.Finding{
			Severity: rule.Warn,
			Message:  words.New("rule.old-outlet.none", "{0} has no grounding conductor and no GFCI protection", o.Tag),
			Why:      words.New("rule.old-outlet.why", "A GFCI receptacle marked “No Equipment Ground”, a breaker that protects it, or a receptacle without a grounding slot replaces it."),
			Remedies: []rule.Remedy{{Label: words.New("rule.old-outlet.remedy", "Use a GFCI receptacle"), Edit: inItsBox(o, "gfci")}},
		}
		if v.Circuit == nil || v.Circuit.GFCI == plan.FlagUnsaid {
			f.Severity, f.IsOpen = rule.Note, true
			f.Message = words.New("rule.old-outlet.unsaid", "{0} has no grounding conductor: nobody says whether its breaker gives GFCI protection", o.Tag)
		}
		return []rule.Finding{f}
	},
}

// inItsBox makes an opening one of another kind of as many gangs in the box that is there.
func inItsBox(o *plan.Opening, kind string) edit.Edit {
	return edit.ChangeKind{ID: o.ID, Kind: kind, Gangs: o.Gangs, Assembly: o.Assembly}
}
