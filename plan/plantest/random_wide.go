package plantest

import (
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

func some[T plan.Noun](g draw, set plan.Set[T]) T { return pick(g, slices.Collect(set.All())) }

func (g draw) aCircuitID() plan.ID {
	if g.n(0, 2) > 0 {
		return ""
	}
	return value(some(g, g.p.Circuits)).ID
}

func (g draw) circuit() edit.Edit {
	c := plan.Circuit{ID: g.id(plan.KindCircuit), Number: "7", Amps: g.n(0, 60), Volts: 120, Poles: g.n(0, 3)}
	if f := g.fixture(); f.Kind == plan.FixturePanel || g.seldom() {
		c.Panel = f.ID
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Circuits)).ID
		return edit.Change{Thing: &c}
	}
	return edit.Add{Thing: &c}
}

func (g draw) cable() edit.Edit {
	c := plan.Cable{
		ID: g.id(plan.KindCable), From: g.opening().ID, To: g.opening().ID, Size: unit.AWG(pick(g, []int{14, 12, 10, -2, 0})),
		Wires: g.n(1, 4), Ground: g.chance(), Circuit: g.aCircuitID(), Length: g.length(0, 400),
	}
	if f := g.fixture(); f.Kind == plan.FixturePanel {
		c.From = f.ID
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Cables)).ID
		return edit.Change{Thing: &c}
	}
	return edit.Add{Thing: &c}
}

func (g draw) control() edit.Edit {
	c := plan.Control{ID: g.id(plan.KindControl), Letter: "a", Switches: []plan.ID{g.opening().ID}}
	for range g.n(0, 3) {
		c.Loads = append(c.Loads, g.opening().ID)
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Controls)).ID
		return edit.Change{Thing: &c}
	}
	return edit.Add{Thing: &c}
}

// pair binds two openings about anything, or one about a face with its like at the other
// hand.
func (g draw) pair() edit.Edit {
	about := g.fixture().ID
	if o := g.opening(); g.chance() && o.At.Part == plan.PartFace {
		return edit.PairUp{Pair: g.id(plan.KindPair), Opening: o.ID, About: o.At.Host, New: g.id(plan.KindOpening), Near: g.length(0, 40)}
	}
	if g.chance() {
		about = g.opening().At.Host
	}
	x := plan.Pair{ID: g.id(plan.KindPair), One: g.opening().ID, Other: g.opening().ID, About: about}
	if g.n(0, 2) == 0 {
		x.ID = value(some(g, g.p.Pairs)).ID
		return edit.Change{Thing: &x}
	}
	return edit.Add{Thing: &x}
}

func (g draw) decision() edit.Edit {
	d := plan.Decision{ID: g.id(plan.KindDecision), Question: pick(g, []string{"How high?", "Which hand?"})}
	if g.seldom() {
		d.Question = ""
	}
	for range g.n(0, 2) {
		d.About = append(d.About, g.thing())
	}
	if g.n(0, 2) == 0 {
		d.ID = value(some(g, g.p.Decisions)).ID
		return edit.Change{Thing: &d}
	}
	return edit.Add{Thing: &d}
}

func (g draw) waiver() edit.Edit {
	w := plan.Waiver{ID: g.id(plan.KindWaiver), Rule: "wall-reach", About: g.thing(), Reason: pick(g, []string{"A stove stands there.", " "})}
	if g.n(0, 2) == 0 {
		w.ID = value(some(g, g.p.Waivers)).ID
		return edit.Change{Thing: &w}
	}
	return edit.Add{Thing: &w}
}

func (g draw) amendment() edit.Edit {
	a := plan.Amendment{ID: g.id(plan.KindAmendment), Figure: pick(g, []string{"", "wall-reach"}), Value: "72", Rule: pick(g, []string{"", "height"}), Reason: "Town."}
	if g.n(0, 2) == 0 {
		a.ID = value(some(g, g.p.Amendments)).ID
		return edit.Change{Thing: &a}
	}
	return edit.Add{Thing: &a}
}

func (g draw) removeWide() edit.Edit {
	ids := []plan.ID{
		value(some(g, g.p.Circuits)).ID, value(some(g, g.p.Cables)).ID, value(some(g, g.p.Controls)).ID, value(some(g, g.p.Pairs)).ID,
		value(some(g, g.p.Decisions)).ID, value(some(g, g.p.Waivers)).ID, value(some(g, g.p.Amendments)).ID,
	}
	return edit.Remove{Things: []plan.ID{pick(g, ids)}, Cascade: g.chance()}
}

// removeSeveral takes out up to four things of any kind, of which one may go with another.
func (g draw) removeSeveral() edit.Edit {
	e := edit.Remove{Cascade: g.chance()}
	for range g.n(1, 4) {
		e.Things = append(e.Things, pick(g, []plan.ID{g.thing(), g.thing(), value(some(g, g.p.Cables)).ID, value(some(g, g.p.Circuits)).ID}))
	}
	return e
}
