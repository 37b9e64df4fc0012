package desk

import (
	"studbay/app/work"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/words"
)

// circuitChosen returns the circuit that is chosen, or that of the first opening chosen
// which is on one; empty where there is none.
func (d *editor) circuitChosen() plan.ID {
	for _, id := range d.doc().Selection() {
		switch id.Kind() {
		case plan.KindCircuit:
			return id
		case plan.KindOpening:
			if o, _ := d.doc().Plan().Opening(id); o != nil && o.Circuit != "" {
				return o.Circuit
			}
		}
	}
	return ""
}

func (d *editor) hasCircuit() bool { return d.circuitChosen() != "" }

// wireCircuit draws a draft of the cables of that circuit, as one step.
func (d *editor) wireCircuit() {
	steps, err := wire.Draft(d.doc().Index(), d.doc().Result().Figures, d.circuitChosen(), func() plan.ID { return work.NewID(plan.KindCable) })
	if err != nil {
		d.hand.refuse(words.New("plain", "{0}", d.stage.ErrorText(err)))
		return
	}
	id := d.circuitChosen()
	if d.Do(steps) != nil { // it says itself what is wrong
		return
	}
	if c, ok := d.doc().Plan().Circuits.Get(id); ok {
		d.hand.say(wire.Told(d.doc().Index(), c))
	}
}
