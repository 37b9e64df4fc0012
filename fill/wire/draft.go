package wire

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// exact is up to how many stops every order of a chain is tried.
const exact = 7

// Draft proposes the cables of a circuit on which none is drawn yet, as one step: from the
// panel along all that is fed, by the order of the shortest cable; from the first switch of
// each control to its others with a third conductor for the travelers, and from the last one
// on to the lights. IDs are made by whoever takes it. It is an estimate of common practice
// and checks nothing: box fill follows from the cables once they are drawn. It fails where
// there is nothing to wire, where cables are drawn already, for a breaker over 60 A, and for
// a control that cannot work.
func Draft(ix *index.Index, circuit plan.ID, newID func() plan.ID) (edit.Steps, error) {
	p := ix.Plan()
	c, ok := p.Circuits.Get(circuit)
	if !ok {
		return edit.Steps{}, plan.Gone(plan.KindCircuit)
	}
	d := &draft{ix: ix, circuit: c, newID: newID, seen: map[plan.ID]bool{}}
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
	return edit.Steps{Label: words.New("wire.step", "Wire circuit {0}", c.Number), Edits: d.edits}, nil
}

// draft is the cables of a circuit in the making.
type draft struct {
	ix       *index.Index
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
		order := Order(d.ix, last, loads)
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
	ends := slices.DeleteFunc(slices.Clone(switches), func(id plan.ID) bool { return !d.holds(id, threeWay) }) // two, as canWork found
	between := slices.DeleteFunc(slices.Clone(switches), func(id plan.ID) bool { return d.holds(id, threeWay) })
	return ends[0], append(Order(d.ix, ends[0], between), ends[1])
}

const (
	threeWay = "three-way switch"
	fourWay  = "four-way switch"
)

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
		case d.holds(id, threeWay):
			threes++
		case d.holds(id, fourWay):
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
	order := Order(d.ix, from, stops)
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
	d.edits = append(d.edits, edit.Add{Thing: &plan.Cable{
		ID: d.newID(), From: from, To: to, Size: sizeFor(d.circuit.Amps), Wires: wires, Ground: true, Circuit: d.circuit.ID,
	}})
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

// Order returns stops in the order of the shortest cable from a start, which may be empty: of
// up to seven stops every order is tried; of more it is begun with the nearest each time and
// then changed until no two stops swapped, and no part turned round, shorten it.
func Order(ix *index.Index, start plan.ID, stops []plan.ID) []plan.ID {
	if len(stops) < 2 {
		return stops
	}
	var ends []end
	from := 0
	if e, ok := endOf(ix, start); ok {
		ends, from = append(ends, e), 1
	}
	for _, id := range stops {
		e, _ := endOf(ix, id)
		ends = append(ends, e)
	}
	c := chain{ends: ends, from: from}
	order := c.nearest()
	if len(stops) <= exact {
		order = c.everyOrder(order)
	} else {
		c.improve(order)
	}
	sorted := make([]plan.ID, len(stops))
	for i, at := range order {
		sorted[i] = stops[at-from]
	}
	return sorted
}

// chain is places to be joined one after the other; with from 1 the first is the start.
type chain struct {
	ends []end
	from int
}

// length is that of all cables of an order, in which the start is not.
func (c chain) length(order []int) (sum unit.Length) {
	at := -1
	if c.from == 1 {
		at = 0
	}
	for _, next := range order {
		if at >= 0 {
			sum += between(c.ends[at], c.ends[next]).Total
		}
		at = next
	}
	return sum
}

// nearest goes on to the nearest stop each time.
func (c chain) nearest() (order []int) {
	left := make([]int, 0, len(c.ends))
	for i := c.from; i < len(c.ends); i++ {
		left = append(left, i)
	}
	at := 0
	if c.from == 0 {
		order, left = append(order, left[0]), left[1:]
	}
	for len(left) > 0 {
		best := 0
		for i := range left {
			if between(c.ends[at], c.ends[left[i]]).Total < between(c.ends[at], c.ends[left[best]]).Total {
				best = i
			}
		}
		at = left[best]
		order, left = append(order, at), slices.Delete(left, best, best+1)
	}
	return order
}

// everyOrder returns the shortest of all orders, the one given where none is shorter.
func (c chain) everyOrder(order []int) []int {
	best, least := slices.Clone(order), c.length(order)
	var try func(done int)
	tried := slices.Clone(order)
	try = func(done int) {
		if c.length(tried[:done]) >= least {
			return
		}
		if done == len(tried) {
			best, least = slices.Clone(tried), c.length(tried)
		}
		for i := done; i < len(tried); i++ {
			tried[done], tried[i] = tried[i], tried[done]
			try(done + 1)
			tried[done], tried[i] = tried[i], tried[done]
		}
	}
	try(0)
	return best
}

// improve swaps two stops, or turns the part between them round, as long as that shortens
// the chain.
func (c chain) improve(order []int) {
	least := c.length(order)
	for better := true; better; {
		better = false
		for i := range order {
			for k := i + 1; k < len(order); k++ {
				order[i], order[k] = order[k], order[i]
				if l := c.length(order); l < least {
					least, better = l, true
					continue
				}
				order[i], order[k] = order[k], order[i]
				slices.Reverse(order[i : k+1])
				if l := c.length(order); l < least {
					least, better = l, true
					continue
				}
				slices.Reverse(order[i : k+1])
			}
		}
	}
}
