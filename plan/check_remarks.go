package plan

import (
	"strings"
	"unicode/utf8"

	"studbay/plan/words"
)

func checkDecision(d *Decision, has func(ID) bool) error {
	if err := checkText(d); err != nil {
		return err
	}
	if err := wellFormed(d.ID, KindDecision); err != nil {
		return err
	}
	if err := written(d.Question, "question", theDecision); err != nil {
		return err
	}
	return in("/about", distinct(d.About, has, theDecision))
}

func checkWaiver(w *Waiver, has func(ID) bool) error {
	if err := checkText(w); err != nil {
		return err
	}
	if err := wellFormed(w.ID, KindWaiver); err != nil {
		return err
	}
	if err := written(w.Rule, "rule", theWaiver); err != nil {
		return err
	}
	if err := written(w.Reason, "reason", theWaiver); err != nil {
		return err
	}
	if w.About != "" && !has(w.About) {
		return refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", theWaiver, string(w.About)).at("/about")
	}
	return nil
}

func checkAmendment(a *Amendment) error {
	if err := checkText(a); err != nil {
		return err
	}
	if err := wellFormed(a.ID, KindAmendment); err != nil {
		return err
	}
	if (a.Figure == "") == (a.Rule == "") {
		return refuse(nil, "amendment", "an amendment changes one figure or switches one rule off").at("/figure")
	}
	if a.Figure != "" {
		if err := written(a.Value, "value", theAmendment); err != nil {
			return err
		}
	}
	return written(a.Reason, "reason", theAmendment)
}

// written reports a field that must say something and does not.
func written(text, field string, what words.Text) error {
	if strings.TrimSpace(text) == "" || !utf8.ValidString(text) {
		return refuse(nil, "empty", "{0} needs its {1}", what, field).at("/" + field)
	}
	return nil
}
