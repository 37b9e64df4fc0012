package visit

import (
	"studbay/plan"
	"studbay/plan/edit"
)

// Done is the ticks of a plan that stand at one place of the list: none where it is open,
// several where two people's files were merged.
type Done []plan.ID

// Is reports whether it is ticked.
func (d Done) Is() bool { return len(d) > 0 }

// Turned is the edit that ticks what is open, and takes back what is ticked. The tick to put
// in is the plan's from then on.
func (d Done) Turned(tick *plan.Tick) edit.Edit {
	if d.Is() {
		return edit.Remove{Things: d}
	}
	return edit.Add{Thing: tick}
}

// about is one place of the list: what of which thing is looked at.
type about struct {
	thing plan.ID
	what  string
}

// Protection is what of a circuit is looked at, as ticks name it.
const Protection = "protection"

// doneIn gathers the ticks of a plan. One of what is on no list any more counts for nothing.
func doneIn(p plan.Plan) map[about]Done {
	all := map[about]Done{}
	for x := range p.Ticks.All() {
		at := about{x.About, x.What}
		all[at] = append(all[at], x.ID)
	}
	return all
}
