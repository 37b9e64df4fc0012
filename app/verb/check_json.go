package verb

import (
	"slices"
	"strconv"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	schedule "studbay/render/table"
)

// checkJSON is the outcome of a check as JSON.
type checkJSON struct {
	Edition  string        `json:"edition"`
	Openings int           `json:"openings"`
	Findings []findingJSON `json:"findings"` // those set aside come last, whatever they weigh
	// Checked and NotChecked say of each rule which rooms it looked at.
	Checked    []lookedJSON    `json:"checked"`
	NotChecked []notLookedJSON `json:"not_checked"`
}

type lookedJSON struct {
	Rule  string  `json:"rule"`
	Room  plan.ID `json:"room"`
	Where string  `json:"where"` // the name of the room
}

// notLookedJSON is a room that a rule did not look at, or only in part.
type notLookedJSON struct {
	lookedJSON
	Why string `json:"why"`
}

type findingJSON struct {
	Rule     string        `json:"rule"`
	Severity string        `json:"severity"`
	Section  string        `json:"section"` // empty where a rule rests on none
	Where    string        `json:"where"`   // the tag of the opening, else the name of the room
	Room     *plan.ID      `json:"room"`
	Opening  *plan.ID      `json:"opening"`
	Measured *quantityJSON `json:"measured"`
	Limit    *quantityJSON `json:"limit"`
	Message  string        `json:"message"`
	Why      string        `json:"why"`    // the working; may be empty
	Open     bool          `json:"open"`   // a question or something not looked at, no fault
	Waived   *waivedJSON   `json:"waived"` // where the plan sets it aside
	Remedy   *string       `json:"remedy"` // the first offered
	// Stretches are the parts of faces that it is of.
	Stretches []stretchJSON `json:"stretches"`
}

// waivedJSON says why a finding is set aside and who decided it.
type waivedJSON struct {
	Reason string `json:"reason"`
	By     string `json:"by"`
	Date   string `json:"date"`
}

// stretchJSON is a part of a face, from its left end as one sees it: of a side of a room,
// or of a fixture.
type stretchJSON struct {
	Host plan.ID       `json:"host"`
	From *quantityJSON `json:"from"`
	To   *quantityJSON `json:"to"`
}

// quantityJSON is an exact decimal with its unit: in3, in or mm as the plan measures, or
// count.
type quantityJSON struct {
	Value string `json:"value"`
	Unit  string `json:"unit"`
}

func (c *checked) asJSON(listed []rule.Finding) checkJSON {
	out := checkJSON{
		Edition: c.result.Figures.Edition, Openings: c.openings(),
		Findings: []findingJSON{}, Checked: []lookedJSON{}, NotChecked: []notLookedJSON{},
	}
	for _, f := range slices.Concat(listed, c.waived()) {
		out.Findings = append(out.Findings, c.findingJSON(f))
	}
	c.putLookedJSON(&out)
	return out
}

// findingJSON is one finding of the plan.
func (c *checked) findingJSON(f rule.Finding) findingJSON {
	one := findingJSON{
		Rule: f.Rule, Severity: f.Severity.String(), Section: f.Section, Where: c.where(f),
		Room: orNull(f.Room), Opening: orNull(f.Opening), Measured: c.quantity(f.Measured), Limit: c.quantity(f.Limit),
		Message: c.voice.Say(f.Message), Why: c.voice.Say(f.Why), Open: f.IsOpen, Stretches: []stretchJSON{},
	}
	if w := f.Waived; w != nil {
		one.Waived = &waivedJSON{w.Reason, w.By, w.Date}
	}
	for _, s := range f.Stretches {
		one.Stretches = append(one.Stretches, stretchJSON{s.Host, c.quantity(rule.LengthOf(s.From)), c.quantity(rule.LengthOf(s.To))})
	}
	if len(f.Remedies) > 0 {
		one.Remedy = orNull(c.voice.Say(c.result.Told(c.index, f.Remedies[0])))
	}
	return one
}

func (c *checked) putLookedJSON(out *checkJSON) {
	for _, l := range c.result.Looked(c.plan.Levels...) {
		for _, room := range l.At {
			out.Checked = append(out.Checked, lookedJSON{l.Rule.ID, room.ID, room.Name})
		}
		for _, not := range l.Not {
			out.NotChecked = append(out.NotChecked, notLookedJSON{lookedJSON{l.Rule.ID, not.Room.ID, not.Room.Name}, c.voice.Say(not.Why)})
		}
	}
	for _, r := range c.result.Unconfirmed() {
		if r.Plan != nil {
			out.NotChecked = append(out.NotChecked, notLookedJSON{lookedJSON{Rule: r.ID, Where: c.title()}, c.voice.Say(c.result.Figures.NotConfirmed())})
		}
	}
}

func orNull[T ~string](text T) *T {
	if text == "" {
		return nil
	}
	return &text
}

// tenThousandths writes a count of them as a decimal without closing zeros.
func tenThousandths(n int64) string {
	return unit.Volume(n).String()
}

func (c *checked) quantity(q rule.Quantity) *quantityJSON {
	switch q.Unit {
	case rule.NoQuantity:
		return nil
	case rule.OfLength:
		return &quantityJSON{schedule.Decimal(unit.Length(q.Value), c.voice.System), schedule.DecimalUnit(c.voice.System)}
	case rule.OfVolume:
		return &quantityJSON{unit.Volume(q.Value).String(), string(q.Unit)}
	case rule.OfWeight:
		return &quantityJSON{c.voice.System.DecimalWeight(unit.Weight(q.Value)), c.voice.System.WeightUnit()}
	case rule.OfArea:
		return &quantityJSON{tenThousandths(q.Value), string(q.Unit)}
	case rule.OfCount:
		return &quantityJSON{strconv.FormatInt(q.Value, 10), string(q.Unit)}
	}
	panic(unknownUnit(q))
}
