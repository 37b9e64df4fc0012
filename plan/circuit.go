package plan

import "studbay/plan/unit"

// Circuit is one breaker with what hangs on it: openings and cables name it.
type Circuit struct {
	ID     ID     `json:"id"`
	Number string `json:"number"` // as on the panel's directory
	Name   string `json:"name,omitempty"`
	Panel  ID     `json:"panel,omitempty"` // fixture of kind panel
	Amps   int    `json:"amps"`
	Volts  int    `json:"volts"`
	Poles  int    `json:"poles"`
	GFCI   bool   `json:"gfci,omitempty"` // protected at the breaker
	AFCI   bool   `json:"afci,omitempty"` // protected at the breaker
	Note   string `json:"note,omitempty"`
	Extra  Extra  `json:"-"`
}

// Key returns the circuit's ID.
func (c *Circuit) Key() ID { return c.ID }

// Cable is a run between two openings, or between the panel and one.
type Cable struct {
	ID         ID          `json:"id"`
	From       ID          `json:"from"` // an opening or a fixture of kind panel
	To         ID          `json:"to"`   // an opening
	Size       unit.AWG    `json:"size"`
	Wires      int         `json:"wires"`                // insulated conductors
	Ground     bool        `json:"ground"`               // one equipment grounding conductor
	GroundSize unit.AWG    `json:"groundSize,omitempty"` // 0: the size of the others
	Circuit    ID          `json:"circuit,omitempty"`
	Length     unit.Length `json:"length,omitempty"` // measured by the user; 0 is not known
	Note       string      `json:"note,omitempty"`
	Extra      Extra       `json:"-"`
}

// Key returns the cable's ID.
func (c *Cable) Key() ID { return c.ID }

// Control says which switches serve which loads.
type Control struct {
	ID       ID     `json:"id"`
	Letter   string `json:"letter,omitempty"` // printed at both ends
	Switches []ID   `json:"switches"`
	Loads    []ID   `json:"loads"`
	Note     string `json:"note,omitempty"`
	Extra    Extra  `json:"-"`
}

// Key returns the control's ID.
func (c *Control) Key() ID { return c.ID }
