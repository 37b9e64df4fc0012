package protect

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// isFastened are the machines that are fastened in place, whether on a cord or not. What others
// a feed supplies is fastened too.
var isFastened = map[plan.Appliance]bool{
	plan.ApplianceDishwasher: true, plan.ApplianceDisposer: true, plan.ApplianceHood: true,
	plan.ApplianceWaterHeater: true, plan.ApplianceFurnace: true, plan.ApplianceSumpPump: true,
}

// machineLoads holds what machines are said to draw to their circuit, by 210.23.
func machineLoads(c *index.CircuitView, fig *code.Figures) (found []rule.Finding) {
	rated := unit.Current(c.Circuit.Amps) * unit.Ampere
	var others int // lights, fans, alarms, and what is or may be on a cord
	var outlets []*plan.Opening
	var fastened unit.Current
	for _, of := range c.Openings {
		o := of.Opening
		k := part.All().Kind(o.Kind)
		if k == nil || !o.IsInUse() || o.Kind != part.Feed && isNoOutlet(k) {
			continue
		}
		outlets = append(outlets, o)
		if isFast(o) {
			fastened += o.Draws
		} else {
			others++
		}
	}
	if rated == 0 {
		return nil
	}
	if len(outlets) == 1 {
		if o, share := outlets[0], rated*unit.Current(fig.Protection.AloneShare)/100; o.Draws > share {
			return []rule.Finding{drawsMore(c, o, share, words.New("rule.circuit-load.alone.why", "No load is greater than what its circuit carries."), "appliance-alone", fig)}
		}
		return nil
	}
	if c.Circuit.Amps > largestShared {
		return nil
	}
	share := rated * unit.Current(fig.Protection.CordShare) / 100
	for _, o := range outlets {
		if !isFast(o) && o.Draws > share {
			found = append(found, drawsMore(c, o, share, words.New("rule.circuit-load.cord.why", "On a circuit that serves more, one appliance on a cord draws no more than {0} percent of it.", int(fig.Protection.CordShare)), "appliance-cord", fig))
		}
	}
	if share = rated * unit.Current(fig.Protection.FastenedShare) / 100; others > 0 && fastened > share {
		found = append(found, rule.Finding{
			Severity: rule.Stop, About: c.Circuit.ID, Section: fig.Title + " " + fig.Section("appliance-fastened"),
			Message: words.New("rule.circuit-load.fastened", "What is fastened in place on circuit {0} draws {1} A of {2} A at most", c.Circuit.Number, fastened.Text(), share.Text()),
			Why:     words.New("rule.circuit-load.fastened.why", "Where lights or appliances on cords share a circuit, what is fastened in place draws no more than {0} percent of it.", int(fig.Protection.FastenedShare)),
		})
	}
	return found
}

// largestShared is the largest circuit, in amperes, that lights and receptacles share: 210.23.
const largestShared = 20

// isFast reports whether what an outlet supplies is fastened in place.
func isFast(o *plan.Opening) bool { return o.Kind == part.Feed || isFastened[part.Supplies(o)] }

// drawsMore tells of a machine that draws more than a limit of its circuit.
func drawsMore(c *index.CircuitView, o *plan.Opening, limit unit.Current, why words.Text, figure string, fig *code.Figures) rule.Finding {
	return rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: c.Circuit.ID, Section: fig.Title + " " + fig.Section(figure), Why: why,
		Message: words.New("rule.circuit-load.draws", "The appliance at {0} draws {1} A; on circuit {2} it may draw {3} A", o.Tag, o.Draws.Text(), c.Circuit.Number, limit.Text()),
	}
}
