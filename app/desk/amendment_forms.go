package desk

import (
	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/edit"
)

// askFigure asks for a figure that local rules have otherwise, and why.
func (d *forms) askFigure() {
	names := make([]string, len(code.Amendables))
	for i, f := range code.Amendables {
		names[i] = look.Capital(d.voice.Say(f.Text))
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("amend.figure", "A local code figure"),
		Body:  d.voice.say("amend.figure.body", "Written as the edition has it: inches, cubic inches, a count, or yes and no. It is printed on the sheets with its reason."),
		Yes:   d.voice.say("amend.yes", "Put it in force"),
		Lines: []dialog.Line{
			{Label: d.voice.say("amend.which", "Figure"), Text: names[0], Options: names},
			{Label: d.voice.say("amendment.value", "Value"), Hint: d.voice.say("amend.value.hint", "such as 72"), Check: d.stage.IsSaid(d.voice.say("amend.value.hint", "such as 72"))},
			d.amendReason(),
		},
		Do: func(texts []string) error {
			for i, name := range names {
				if name == texts[0] {
					return d.amendFigure(plan.Amendment{Figure: code.Amendables[i].Name, Value: texts[1], Reason: texts[2]})
				}
			}
			return nil
		},
	})
}

// askRuleOff asks which rule is switched off, and why.
func (d *forms) askRuleOff() {
	names := make([]string, len(fill.Rules))
	for i, r := range fill.Rules {
		names[i] = d.voice.Say(r.Title)
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("amend.rule", "Turn off a rule"),
		Body:  d.voice.say("amend.rule.body", "For the whole plan. It is printed on the sheets with its reason."),
		Yes:   d.voice.say("amend.off", "Turn it off"),
		Lines: []dialog.Line{
			{Label: d.voice.say("amend.rule.which", "Rule"), Text: names[0], Options: names},
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
func (d *forms) amendReason() dialog.Line {
	sample := d.voice.say("amend.reason.hint", "such as: city code, 2024")
	return dialog.Line{Label: d.voice.say("waiver.reason", "Reason"), Hint: sample, Check: d.stage.IsSaid(sample)}
}

// amend puts an amendment in force that the edition can take.
func (d *forms) amend(a plan.Amendment) error {
	a.ID = work.NewID(plan.KindAmendment)
	if err := fill.CheckAmendment(d.doc().Plan().Header.Edition, a); err != nil {
		return err
	}
	return d.Do(edit.Add{Thing: &a})
}

// amendFigure is amend for a figure, whose value may be what is wrong.
func (d *forms) amendFigure(a plan.Amendment) error {
	if err := fill.CheckAmendment(d.doc().Plan().Header.Edition, a); err != nil {
		const value = 1 // the line of the form
		return dialog.LineFault{Line: value, Err: err}
	}
	return d.amend(a)
}
