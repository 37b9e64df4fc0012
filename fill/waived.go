package fill

import "studbay/plan"

// waived finds the waiver of a finding.
type waived struct {
	from plan.Set[*plan.Waiver]
	by   map[waiverKey]*plan.Waiver
}

type waiverKey struct {
	rule  string
	about plan.ID
}

// of returns the look-up of a plan's waivers: the same one where they are the same. Of
// two that set the same finding aside the first by ID counts.
func (w waived) of(waivers plan.Set[*plan.Waiver]) waived {
	if w.by != nil && w.from == waivers {
		return w
	}
	w = waived{waivers, make(map[waiverKey]*plan.Waiver, waivers.Len())}
	for one := range waivers.All() {
		key := waiverKey{one.Rule, one.About}
		if w.by[key] == nil {
			w.by[key] = one
		}
	}
	return w
}
