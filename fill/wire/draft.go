package wire

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Draft proposes the cables of a circuit on which none is drawn yet, as one step: from the
// panel along all that is fed, by the order of the shortest cable; from the first switch of
// each control to its others with a third conductor for the travelers, and from the last one
// on to the lights. Of all orders those come first in which the fewest boxes are over full by
// the figures, if there are any: the last box of a chain takes one cable where the others take
// two. IDs are made by whoever takes it. It is an estimate of common practice and checks
// nothing: box fill follows from the cables once they are drawn. It fails where there is
// nothing to wire, where cables are drawn already, for a breaker over 60 A, and for a control
// that cannot work.
func Draft(ix *index.Index, fig *code.Figures, circuit plan.ID, newID func() plan.ID) (edit.Steps, error) {
	p := ix.Plan()
	c, ok := p.Circuits.Get(circuit)
	if !ok {
		return edit.Steps{}, plan.Gone(plan.KindCircuit)
	}
	d := &draft{ix: ix, fig: fig, circuit: c, newID: newID, seen: map[plan.ID]bool{}}
	for cable := range p.Cables.All() {
		if cable.Circuit == circuit {
			return edit.Steps{}, words.Fault("wire.drawn", "circuit {0} has cables already: remove them first", c.Number)
		}
	}
	for _, o := range p.Openings() {
		if o.Circuit == circuit && o.IsInUse() {
			d.openings = append(d.openings, o)
		}
	}
	if c.Amps > mostAmps {
		return edit.Steps{}, words.Fault("wire.amps", "circuit {0} has {1} A: choose its cable yourself", c.Number, c.Amps)
	}
	if len(d.openings) == 0 {
		return edit.Steps{}, words.Fault("wire.empty", "nothing is on circuit {0}", c.Number)
	}
	if err := d.controls(); err != nil {
		return edit.Steps{}, err
	}
	d.feed()
	label := words.New("wire.step", "Wire circuit {0}", c.Number)
	if c.Through {
		label = words.New("wire.step-through", "Wire circuit {0}, through its receptacles", c.Number)
	}
	return edit.Steps{Label: label, Edits: d.edits}, nil
}

// draft is the cables of a circuit in the making.
type draft struct {
	ix       *index.Index
	fig      *code.Figures // nil: what fits is not looked at
	circuit  *plan.Circuit
	newID    func() plan.ID
	openings []*plan.Opening
	seen     map[plan.ID]bool // fed through a control
	edits    []edit.Edit
}

func (d *draft) has(id plan.ID) bool {
	return slices.ContainsFunc(d.openings, func(o *plan.Opening) bool { return o.ID == id })
}

// controls draws what hangs on each switch of the circuit.
func (d *draft) controls() error {
	for c := range d.ix.Plan().Controls.All() {
		switches, loads := slices.DeleteFunc(slices.Clone(c.Switches), d.isElsewhere), slices.DeleteFunc(slices.Clone(c.Loads), d.isElsewhere)
		if len(switches) == 0 || len(loads) == 0 {
			continue
		}
		if err := d.canWork(switches); err != nil {
			return err
		}
		first, rest := d.ends(switches)
		last := first
		for _, s := range rest {
			d.add(last, s, 3)
			last, d.seen[s] = s, true
		}
		order := d.order(last, loads, 2)
		half := -1 // up to where the conductor that is always on goes along
		for i, l := range order {
			if d.isHalfSwitched(l) {
				half = i
			}
		}
		if half >= 0 && len(switches) > 1 {
			o, _ := d.ix.Plan().Opening(order[half])
			return words.Fault("wire.half", "{0} has a half that is always on, which no cable past several switches brings: feed it yourself", o.Tag)
		}
		for i, l := range order {
			wires := 2
			if i <= half {
				wires = 3
			}
			d.add(last, l, wires)
			last, d.seen[l] = l, true
		}
	}
	return nil
}

// isHalfSwitched reports whether the half of a receptacle is always on.
func (d *draft) isHalfSwitched(load plan.ID) bool {
	o, _ := d.ix.Plan().Opening(load)
	k := part.All().Kind(o.Kind)
	return k != nil && k.Switched == part.HalfSwitched
}

// ends returns the switch that a control begins with and the others in the order of their
// cables: of several the three-ways stand at both ends, the four-ways between.
func (d *draft) ends(switches []plan.ID) (first plan.ID, rest []plan.ID) {
	if len(switches) == 1 {
		return switches[0], nil
	}
	ends := slices.DeleteFunc(slices.Clone(switches), func(id plan.ID) bool { return !d.holds(id, part.ThreeWay) }) // two, as canWork found
	between := slices.DeleteFunc(slices.Clone(switches), func(id plan.ID) bool { return d.holds(id, part.ThreeWay) })
	return ends[0], append(Order(d.ix, ends[0], between), ends[1])
}

func (d *draft) holds(id plan.ID, device string) bool {
	o, _ := d.ix.Plan().Opening(id)
	return slices.Contains(part.DeviceKinds(o), device)
}

func (d *draft) isElsewhere(id plan.ID) bool { return !d.has(id) || d.seen[id] }

// canWork reports why switches of one control cannot serve together: one alone may be any,
// two are three-ways, and each more is a four-way between two of those.
func (d *draft) canWork(switches []plan.ID) error {
	if len(switches) < 2 {
		return nil
	}
	threes, fours := 0, 0
	for _, id := range switches {
		switch {
		case d.holds(id, part.ThreeWay):
			threes++
		case d.holds(id, part.FourWay):
			fours++
		}
	}
	if threes == 2 && fours == len(switches)-2 {
		return nil
	}
	first, _ := d.ix.Plan().Opening(switches[0])
	return words.Fault("wire.ways", "{0} serves with {1} others: that takes two three-way switches, and a four-way for each more", first.Tag, len(switches)-1)
}

// feed draws the chain from the panel through all that no control feeds.
func (d *draft) feed() {
	var stops []plan.ID
	for _, o := range d.openings {
		if !d.seen[o.ID] {
			stops = append(stops, o.ID)
		}
	}
	from := d.circuit.Panel
	order := d.order(from, stops, d.wires())
	for _, id := range order {
		if from != "" {
			d.add(from, id, d.wires())
		}
		from = id
	}
}

// wires is how many insulated conductors feed a circuit: of two poles also a neutral.
func (d *draft) wires() int {
	if d.circuit.Poles > 1 {
		return 3
	}
	return 2
}

func (d *draft) add(from, to plan.ID, wires int) {
	c := d.cable(from, to, wires)
	c.ID = d.newID()
	d.edits = append(d.edits, edit.Add{Thing: c})
}

// cable is one of the circuit, without an ID yet.
func (d *draft) cable(from, to plan.ID, wires int) *plan.Cable {
	return &plan.Cable{From: from, To: to, Size: sizeFor(d.circuit.Amps), Wires: wires, Ground: true, Circuit: d.circuit.ID}
}

// mostAmps is the largest breaker that a cable is chosen for.
const mostAmps = 60

// sizeFor is the copper of a breaker: 14 AWG to 15 A, 12 to 20 and 10 to 30 by NEC 240.4(D),
// 8 to 40 and 6 to 60 by common practice; 12 where nobody says.
func sizeFor(amps int) unit.AWG {
	switch {
	case amps > 0 && amps <= 15:
		return 14
	case amps <= 20:
		return 12
	case amps <= 30:
		return 10
	case amps <= 40:
		return 8
	}
	return 6
}
