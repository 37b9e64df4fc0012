package plan

import (
	"strings"
	"unicode/utf8"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Decision is a question still open, shown on what hangs on it.
type Decision struct {
	ID       ID     `json:"id"`
	Question string `json:"question"`
	About    []ID   `json:"about,omitempty"` // rooms, sides, openings ...
	Note     string `json:"note,omitempty"`
	Extra    Extra  `json:"-"`
}

// Key returns the decision's ID.
func (d *Decision) Key() ID { return d.ID }

// Waiver sets one finding aside with a reason; it is printed, never hidden.
type Waiver struct {
	ID     ID     `json:"id"`
	Rule   string `json:"rule"`
	About  ID     `json:"about"` // the opening, side or room of the finding
	Reason string `json:"reason"`
	By     string `json:"by,omitempty"`
	Date   string `json:"date,omitempty"`
	Seen   *Seen  `json:"seen,omitempty"` // from version 1.1 on; nil: whatever the rule finds there
	Extra  Extra  `json:"-"`
}

// Seen is what a finding showed when it was set aside. The waiver holds for that and for
// less; of the three measures one is given, or none where nothing was measured.
type Seen struct {
	What      string        `json:"what"`             // which finding of its rule
	Severity  string        `json:"severity"`         // how much it weighed
	Over      unit.Length   `json:"over,omitempty"`   // by how much it missed its limit
	Excess    unit.Volume   `json:"excess,omitempty"` // the same of a volume
	Count     int           `json:"count,omitempty"`  // the same of a count
	Stretches []SeenStretch `json:"stretches,omitempty"`
}

// SeenStretch is a part of a face that a finding was of, from its left end as one sees it.
type SeenStretch struct {
	Host ID          `json:"host"`
	Part Part        `json:"part"`
	From unit.Length `json:"from"`
	To   unit.Length `json:"to"`
}

// Key returns the waiver's ID.
func (w *Waiver) Key() ID { return w.ID }

// Amendment is a local change of the edition: a figure with another value, or a rule
// switched off.
type Amendment struct {
	ID     ID     `json:"id"`
	Figure string `json:"figure,omitempty"` // name of the figure it changes
	Value  string `json:"value,omitempty"`  // in the figure's own unit
	Rule   string `json:"rule,omitempty"`   // rule it switches off
	Reason string `json:"reason"`
	Extra  Extra  `json:"-"`
}

// Key returns the amendment's ID.
func (a *Amendment) Key() ID { return a.ID }

func checkDecision(d *Decision, has func(ID) bool) error {
	if err := checkText(d); err != nil {
		return err
	}
	if err := wellFormed(d.ID, KindDecision); err != nil {
		return err
	}
	if err := needsText(d.Question, "question", theDecision); err != nil {
		return err
	}
	return In("/about", distinct(d.About, has, theDecision))
}

func checkWaiver(w *Waiver, has func(ID) bool) error {
	if err := checkText(w); err != nil {
		return err
	}
	if err := wellFormed(w.ID, KindWaiver); err != nil {
		return err
	}
	if err := needsText(w.Rule, "rule", theWaiver); err != nil {
		return err
	}
	if err := needsText(w.Reason, "reason", theWaiver); err != nil {
		return err
	}
	if w.About != "" && !has(w.About) {
		return Refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", theWaiver, string(w.About)).At("/about")
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
		return Refuse(nil, "amendment", "an amendment changes one figure or turns off one rule").At("/figure")
	}
	if a.Figure != "" {
		if err := needsText(a.Value, "value", theAmendment); err != nil {
			return err
		}
	}
	return needsText(a.Reason, "reason", theAmendment)
}

// needsText reports a field that must say something and does not.
func needsText(text, field string, what words.Text) error {
	if strings.TrimSpace(text) == "" || !utf8.ValidString(text) {
		return Refuse(nil, "empty", "{0} needs its {1}", what, field).At("/" + field)
	}
	return nil
}
