package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// CounterReach looks for counter that no receptacle is near enough to.
var CounterReach = rule.Rule{
	ID:     "counter-reach",
	Title:  words.New("rule.counter-reach.title", "Receptacle within reach along a counter"),
	Figure: "counter-reach",
	Parts:  []string{islandFigure},
	Doc:    words.New("rule.counter-reach.doc", `In kitchens, pantries, breakfast and dining rooms no point along the wall of a counter 12 in wide or wider lies more than 24 in from a receptacle that serves it: in the wall above it up to 20 in, in its top, or in 2020 in its front up to 12 in below. Ranges, refrigerators, tall cabinets, doors and sinks part a counter; a sink or cooktop with 12 in or more of counter behind it does not. A window does not part one. Argued, and read so here: at an inside corner the line runs on along both walls. Islands and peninsulas: in 2014 and 2017 one receptacle for each that is 24 in by 12 in or larger, a sink or cooktop with less than 12 in behind it making two of one, and in 2017 one in the wall that a peninsula begins at serves it (argued); in 2020 one for the first 9 square feet and one for each further 18, and one of a peninsula's within 2 ft of its outer end; from 2023 none, but provision for one, in 2026 electrical provision, and in 2026 none within 24 in below the top (some cases near walls are said to differ: not checked). One below the top counts up to 2020 and no longer. A peninsula begins with its back edge at its wall. Not checked: sinks set aslant in a corner, overhangs, which receptacle an appliance hides or takes, appliance garages.`),
	Leaves: leavesCounters,
	Room:   checkCounterReach,
}

func checkCounterReach(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if !slices.Contains(counterUses, v.Room.Use) {
		return nil
	}
	if fig.IsConfirmed("counter-reach") {
		found = wallCounters(v, fig)
	}
	return append(found, islands(v, fig)...)
}

// leavesCounters tells also of an edition of which islands alone are known.
func leavesCounters(r *plan.Room, fig *code.Figures) words.Text {
	if why := rule.OnlyIn(counterUses...)(r, fig); !why.IsZero() || fig.IsConfirmed("counter-reach") {
		return why
	}
	return words.New("rule.counter-reach.leaves-walls", "only islands and peninsulas are checked; wall counters are NOT CHECKED, since their figures in {0} are not confirmed", fig.Title)
}

func wallCounters(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	var lines [][]marking
	for i := range v.Sides {
		lines = append(lines, counterLine(&v, i, fig))
	}
	outlets := counterOutlets(&v, fig)
	for _, r := range joined(v, lines, fig) {
		if r.length+grain < fig.Spacing.CounterWidthMin {
			continue
		}
		for _, g := range r.gaps(r.places(outlets, &v, 0), fig.Spacing.CounterReach) {
			found = append(found, missedCounter(v, r, g, fig))
		}
	}
	return found
}

// missedCounter is the finding of one stretch of counter.
func missedCounter(v index.RoomView, r run, g gap, fig *code.Figures) rule.Finding {
	f := rule.Finding{
		Severity: rule.Stop, Measured: rule.LengthOf(g.to - g.from),
		Stretches: r.stretches(g.from, g.to),
		Label:     words.New("stretch.missed", "{0} not served", words.Beside{Length: g.to - g.from}),
		Message:   words.New("rule.counter-reach.missed", "{0} of counter in {1} is not served by a receptacle", words.Beside{Length: g.to - g.from}, v.Room.Name),
	}
	f.About = f.Stretches[0].Host
	if g.farthest == 0 {
		f.Why = words.New("rule.counter-reach.none", "This counter is {0} long and has no receptacle that counts; each point along the wall needs one within {1}.", r.length, fig.Limit("counter-reach"))
	} else {
		f.Why = words.New("rule.counter-reach.far", "Its farthest point is {0} along the wall from the nearest receptacle of this counter; the reach is {1}.", words.Beside{Length: g.farthest, Other: fig.Spacing.CounterReach}, fig.Limit("counter-reach"))
	}
	f.Remedies = counterRemedy(v, r, g, fig)
	return f
}
