package protect

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// CircuitLoad looks for circuits with more on them than is usual.
var CircuitLoad = rule.Rule{
	ID:    "circuit-load",
	Title: words.New("rule.circuit-load.title", "Openings on a circuit"),
	Doc:   words.New("rule.circuit-load.doc", `Common practice, not the code, which sets no number of receptacles and lights on a circuit of a dwelling: more than 10 on a circuit of 15 A, or more than 13 on one of 20 A, are told. Receptacles, lights, fans and alarms are counted; switches are not, and what is there already is. No load is computed from them: general lighting and receptacles of a dwelling go by its area. Where it is said what a machine draws, on a circuit of 15 or 20 A that serves more than it: one on a cord draws no more than 80 percent of the circuit (a dryer, a range, a microwave oven, a refrigerator, a freezer or a washer), and those that are fastened in place (dishwashers, disposers, hoods, water heaters, furnaces, sump pumps and what a feed supplies) together no more than 50 percent where lights or machines on cords share it, 210.23. A machine alone on its circuit draws no more than that carries. Not checked: machines of which nobody says what they draw, larger circuits that serve several, whether a microwave oven is fastened, loads that run for three hours or longer, and the load of the house.`),
	Room:  checkCircuitLoad,
}

// What electricians put on a circuit at most (common practice; 8 to 10 on 15 A and 10 to
// 13 on 20 A are heard).
const (
	mostOn15 = 10
	mostOn20 = 13
)

// checkCircuitLoad judges each circuit once: in the room of its first opening.
func checkCircuitLoad(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	for i := range v.Circuits {
		c := &v.Circuits[i]
		if c.Openings[0].Room != v.Room {
			continue
		}
		found = append(found, machineLoads(c, fig)...)
		most, known := mostOf(c.Circuit)
		if n := loads(c); known && n > most {
			found = append(found, rule.Finding{
				Severity: rule.Warn, ByPractice: true, About: c.Circuit.ID, Measured: rule.CountOf(n), Limit: rule.CountOf(most),
				Message: words.New("rule.circuit-load.many", "Circuit {0} of {1} A has {2} receptacles, lights, fans and alarms", c.Circuit.Number, c.Circuit.Amps, n),
				Why:     words.New("rule.circuit-load.why", "Common practice is no more than {0} on it; the code sets no number.", most),
			})
		}
	}
	return found
}

// mostOf returns how many are usual at most on a circuit of 120 V, where practice has a number.
func mostOf(c *plan.Circuit) (most int, known bool) {
	switch {
	case c.Volts > 125:
	case c.Amps == 15:
		return mostOn15, true
	case c.Amps == 20:
		return mostOn20, true
	}
	return 0, false
}

// loads counts what takes current on a circuit.
func loads(c *index.CircuitView) (n int) {
	for _, o := range c.Openings {
		k := part.All().Kind(o.Opening.Kind)
		if k == nil || !o.Opening.IsInUse() {
			continue
		}
		switch k.Family {
		case part.Receptacle, part.Light, part.Fan, part.Alarm:
			n++
		}
	}
	return n
}
