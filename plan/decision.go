package plan

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
	Extra  Extra  `json:"-"`
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
