package desk

import (
	"studbay/app/card"
	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/words"
)

// askFigure asks for a figure that local rules have otherwise, and why.
func (d *Desk) askFigure() {
	names := make([]string, len(card.Figures))
	for i, f := range card.Figures {
		names[i] = look.Capital(d.voice.Say(f.Text))
	}
	d.stage.AskForm(dialog.Form{
		Title: d.say("amend.figure", "A figure of the local code"),
		Body:  d.say("amend.figure.body", "Written as the edition has it: inches, cubic inches, a count, or yes and no. It is printed on the sheets with its reason."),
		Yes:   d.say("amend.yes", "Put it in force"),
		Lines: []dialog.Line{
			{Label: d.say("amend.which", "Figure"), Text: names[0], Options: names},
			{Label: d.say("amendment.value", "Value"), Hint: d.say("amend.value.hint", "such as 72"), Check: d.stage.IsSaid(d.say("amend.value.hint", "such as 72"))},
			d.amendReason(),
		},
		Do: func(texts []string) error {
			for i, name := range names {
				if name == texts[0] {
					return d.amendFigure(plan.Amendment{Figure: card.Figures[i].Name, Value: texts[1], Reason: texts[2]})
				}
			}
			return nil
		},
	})
}

// askRuleOff asks which rule is switched off, and why.
func (d *Desk) askRuleOff() {
	names := make([]string, len(fill.Rules))
	for i, r := range fill.Rules {
		names[i] = d.voice.Say(r.Title)
	}
	d.stage.AskForm(dialog.Form{
		Title: d.say("amend.rule", "Switch a rule off"),
		Body:  d.say("amend.rule.body", "For the whole plan. It is printed on the sheets with its reason."),
		Yes:   d.say("amend.off", "Switch it off"),
		Lines: []dialog.Line{
			{Label: d.say("amend.rule.which", "Rule"), Text: names[0], Options: names},
			d.amendReason(),
		},
		Do: func(texts []string) error {
			for i, name := range names {
				if name == texts[0] {
					return d.amend(plan.Amendment{Rule: fill.Rules[i].ID, Reason: texts[1]})
				}
			}
			return nil
		},
	})
}

// amendReason asks why the local code differs.
func (d *Desk) amendReason() dialog.Line {
	sample := d.say("amend.reason.hint", "such as: city code, 2024")
	return dialog.Line{Label: d.say("waiver.reason", "Reason"), Hint: sample, Check: d.stage.IsSaid(sample)}
}

// amend puts an amendment in force that the edition can take.
func (d *Desk) amend(a plan.Amendment) error {
	a.ID = work.NewID(plan.KindAmendment)
	if err := card.CheckAmendment(d.doc().Plan().Header.Edition, a); err != nil {
		return err
	}
	return d.Do(plan.Add{Thing: &a})
}

// amendFigure is amend for a figure, whose value may be what is wrong.
func (d *Desk) amendFigure(a plan.Amendment) error {
	if err := card.CheckAmendment(d.doc().Plan().Header.Edition, a); err != nil {
		const value = 1 // the line of the form
		return dialog.LineFault{Line: value, Err: err}
	}
	return d.amend(a)
}

// hasRemedy reports whether the finding in hand has a remedy.
func (d *Desk) hasRemedy() bool {
	f := d.findingInHand()
	return f != nil && len(f.Remedies) > 0
}

// remedyTitle names what the first remedy does.
func (d *Desk) remedyTitle() words.Text {
	if f := d.findingInHand(); f != nil && len(f.Remedies) > 0 {
		return words.New("command.remedy.named", "Remedy: {0}", f.Remedies[0].Label)
	}
	return title("remedy", "Take the first remedy")
}

// takeRemedy makes the edit of the first remedy of the finding in hand.
func (d *Desk) takeRemedy() {
	if f := d.findingInHand(); f != nil && len(f.Remedies) > 0 {
		_ = d.Do(f.Remedies[0].Edit)
	}
}
