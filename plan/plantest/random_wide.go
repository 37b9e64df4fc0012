package plantest

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
)

func some[T plan.Noun](g draw, set plan.Set[T]) T { return pick(g, slices.Collect(set.All())) }

func (g draw) aCircuitID() plan.ID {
	if g.n(0, 2) > 0 {
		return ""
	}
	return value(some(g, g.p.Circuits)).ID
}

func (g draw) circuit() plan.Edit {
	c := plan.Circuit{ID: g.id(plan.KindCircuit), Number: "7", Amps: g.n(0, 60), Volts: 120, Poles: g.n(0, 3)}
	if f := g.fixture(); f.Kind == plan.FixturePanel || g.seldom() {
		c.Panel = f.ID
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Circuits)).ID
		return plan.ChangeCircuit{Circuit: c}
	}
	return plan.AddCircuit{Circuit: c}
}

func (g draw) cable() plan.Edit {
	c := plan.Cable{
		ID: g.id(plan.KindCable), From: g.opening().ID, To: g.opening().ID, Size: unit.AWG(pick(g, []int{14, 12, 10, -2, 0})),
		Wires: g.n(1, 4), Ground: g.chance(), Circuit: g.aCircuitID(), Length: g.length(0, 400),
	}
	if f := g.fixture(); f.Kind == plan.FixturePanel {
		c.From = f.ID
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Cables)).ID
		return plan.ChangeCable{Cable: c}
	}
	return plan.AddCable{Cable: c}
}

func (g draw) control() plan.Edit {
	c := plan.Control{ID: g.id(plan.KindControl), Letter: "a", Switches: []plan.ID{g.opening().ID}}
	for range g.n(0, 3) {
		c.Loads = append(c.Loads, g.opening().ID)
	}
	if g.n(0, 2) == 0 {
		c.ID = value(some(g, g.p.Controls)).ID
		return plan.ChangeControl{Control: c}
	}
	return plan.AddControl{Control: c}
}

func (g draw) decision() plan.Edit {
	d := plan.Decision{ID: g.id(plan.KindDecision), Question: pick(g, []string{"How high?", "Which hand?"})}
	if g.seldom() {
		d.Question = ""
	}
	for range g.n(0, 2) {
		d.About = append(d.About, g.thing())
	}
	if g.n(0, 2) == 0 {
		d.ID = value(some(g, g.p.Decisions)).ID
		return plan.ChangeDecision{Decision: d}
	}
	return plan.AddDecision{Decision: d}
}

func (g draw) waiver() plan.Edit {
	w := plan.Waiver{ID: g.id(plan.KindWaiver), Rule: "wall-reach", About: g.thing(), Reason: pick(g, []string{"A stove stands there.", " "})}
	if g.n(0, 2) == 0 {
		w.ID = value(some(g, g.p.Waivers)).ID
		return plan.ChangeWaiver{Waiver: w}
	}
	return plan.AddWaiver{Waiver: w}
}

func (g draw) amendment() plan.Edit {
	a := plan.Amendment{ID: g.id(plan.KindAmendment), Figure: pick(g, []string{"", "wall-reach"}), Value: "72", Rule: pick(g, []string{"", "height"}), Reason: "Town."}
	if g.n(0, 2) == 0 {
		a.ID = value(some(g, g.p.Amendments)).ID
		return plan.ChangeAmendment{Amendment: a}
	}
	return plan.AddAmendment{Amendment: a}
}

func (g draw) removeWide() plan.Edit {
	switch g.n(0, 5) {
	case 0:
		return plan.RemoveCircuit{ID: value(some(g, g.p.Circuits)).ID, Cascade: g.chance()}
	case 1:
		return plan.RemoveCable{ID: value(some(g, g.p.Cables)).ID}
	case 2:
		return plan.RemoveControl{ID: value(some(g, g.p.Controls)).ID}
	case 3:
		return plan.RemoveDecision{ID: value(some(g, g.p.Decisions)).ID}
	case 4:
		return plan.RemoveWaiver{ID: value(some(g, g.p.Waivers)).ID}
	}
	return plan.RemoveAmendment{ID: value(some(g, g.p.Amendments)).ID}
}
