package protect

import (
	"strings"

	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// IsGroundFault reports whether an opening has a device that protects against ground
// faults, as its devices say or else its kind.
func IsGroundFault(o *plan.Opening) bool {
	for _, d := range o.Devices {
		if strings.Contains(d.Kind, "ground-fault") {
			return true
		}
	}
	k := part.All().Kind(o.Kind)
	return len(o.Devices) == 0 && k != nil && strings.Contains(k.Device, "ground-fault")
}

// circuitOf returns the view of the circuit that an opening is on, or nil.
func circuitOf(v *index.RoomView, o *plan.Opening) *index.CircuitView {
	for i := range v.Circuits {
		if v.Circuits[i].Circuit.ID == o.Circuit {
			return &v.Circuits[i]
		}
	}
	return nil
}

// order is what the drawn cables of a circuit tell of its line and load.
type order int

const (
	unknown order = iota // no cable leads from a panel to the opening
	before               // the device is nearer to the panel, on the way to the opening
	elsewhere
)

// orderOf tells whether power comes to an opening by way of a device.
func orderOf(c *index.CircuitView, o, device plan.ID) order {
	reached := func(without plan.ID) bool { return reaches(c, o, without) }
	switch {
	case !reached(""):
		return unknown
	case reached(device):
		return elsewhere
	}
	return before
}

// reaches reports whether cables lead from an opening to a panel past any but one opening.
func reaches(c *index.CircuitView, from, without plan.ID) bool {
	seen := map[plan.ID]bool{from: true, without: true}
	work := []plan.ID{from}
	for len(work) > 0 {
		at := work[len(work)-1]
		work = work[:len(work)-1]
		if at.Kind() == plan.KindFixture {
			return true
		}
		for _, cable := range c.Cables {
			next := cable.To
			if cable.To == at {
				next = cable.From
			} else if cable.From != at {
				continue
			}
			if !seen[next] {
				seen[next] = true
				work = append(work, next)
			}
		}
	}
	return false
}

// silent are openings of a room that want protection and are on circuits of which nobody
// says whether the breaker gives it, by circuit.
type silent struct {
	circuits []*plan.Circuit
	openings map[plan.ID][]*plan.Opening
}

func (s *silent) add(c *plan.Circuit, o *plan.Opening) {
	if s.openings == nil {
		s.openings = map[plan.ID][]*plan.Opening{}
	}
	if s.openings[c.ID] == nil {
		s.circuits = append(s.circuits, c)
	}
	s.openings[c.ID] = append(s.openings[c.ID], o)
}

// notes tells of each circuit by itself: what is not said is no fault.
func (s *silent) notes(tell func(c plan.Circuit, on []*plan.Opening) rule.Finding) (found []rule.Finding) {
	for _, c := range s.circuits {
		f := tell(*c, s.openings[c.ID])
		f.Severity, f.IsOpen, f.About, f.Measured = rule.Note, true, c.ID, rule.CountOf(len(s.openings[c.ID]))
		found = append(found, f)
	}
	return found
}
