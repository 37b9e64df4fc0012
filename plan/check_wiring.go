package plan

import (
	"fmt"

	"studbay/plan/words"
)

func (p Plan) checkCircuit(c *Circuit) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCircuit); err != nil {
		return err
	}
	if c.Panel != "" && !p.isPanel(c.Panel) {
		return refuse(ErrGone, "panel-gone", "{0} names a panel that is not in the plan", c.text()).at("/panel")
	}
	if c.Amps < 0 || c.Amps > 10_000 || c.Volts < 0 || c.Volts > 1000 || c.Poles < 0 || c.Poles > 3 {
		return refuse(nil, "breaker", "{0} has a breaker out of bounds: to 10 000 A, 1000 V and 3 poles", c.text())
	}
	return nil
}

func (p Plan) isPanel(id ID) bool {
	f, _ := p.Fixture(id)
	return f != nil && f.Kind == FixturePanel
}

func (p Plan) isOpening(id ID) bool {
	o, _ := p.Opening(id)
	return o != nil
}

func (p Plan) checkCable(c *Cable) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCable); err != nil {
		return err
	}
	switch {
	case !p.isOpening(c.From) && !p.isPanel(c.From):
		return refuse(ErrGone, "cable-from", "a cable starts at an opening or a panel that is not in the plan").at("/from")
	case !p.isOpening(c.To):
		return refuse(ErrGone, "cable-to", "a cable ends at an opening that is not in the plan").at("/to")
	case c.From == c.To:
		return refuse(nil, "cable-ends", "a cable starts and ends at one opening").at("/to")
	case c.Size == 0 || !isWire(int(c.Size)) || !isWire(int(c.GroundSize)):
		return refuse(nil, "cable-size", "a cable needs a wire size").at("/size")
	case c.Wires < 1 || c.Wires > 100:
		return refuse(nil, "cable-wires", "a cable has 1 to 100 insulated conductors, not {0}", c.Wires).at("/wires")
	}
	if err := notNegative(theCable, c.Length); err != nil {
		return in("/length", err)
	}
	return p.checkOnCircuit(c.Circuit, theCable)
}

func (p Plan) checkOnCircuit(id ID, what words.Text) error {
	if _, ok := p.Circuits.Get(id); !ok && id != "" {
		return refuse(ErrGone, "circuit", "{0} names a circuit that is not in the plan", what).at("/circuit")
	}
	return nil
}

func (p Plan) checkControl(c *Control) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindControl); err != nil {
		return err
	}
	if len(c.Switches)+len(c.Loads) == 0 {
		return refuse(nil, "control-empty", "a control needs a switch or a load")
	}
	if err := distinct(c.Switches, p.isOpening, theControl); err != nil {
		return in("/switches", err)
	}
	return in("/loads", distinct(c.Loads, p.isOpening, theControl))
}

// distinct reports an ID of the list that names nothing or stands twice.
func distinct(ids []ID, has func(ID) bool, what words.Text) error {
	seen := make(map[ID]bool, len(ids))
	for i, id := range ids {
		if !has(id) {
			return refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", what, string(id)).at(fmt.Sprintf("/%d", i))
		}
		if seen[id] {
			return refuse(nil, "names-twice", "{0} names “{1}” twice", what, string(id)).at(fmt.Sprintf("/%d", i))
		}
		seen[id] = true
	}
	return nil
}
