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

// waiverScopes returns the rooms and openings whose waivers differ since another index.
// A level or the plan is always asked.
func (c *Checker) waiverScopes(was *plan.Index) (ids []plan.ID) {
	for _, w := range was.Plan().Waivers.Diff(c.index.Plan().Waivers) {
		for _, noun := range []*plan.Waiver{w.Old, w.New} {
			if noun != nil {
				ids = append(ids, judgedWith(c.index, noun.About)...)
			}
		}
	}
	return ids
}

// judgedWith returns the room, or the opening and its room, that a thing is judged with.
func judgedWith(ix *plan.Index, id plan.ID) (ids []plan.ID) {
	var at plan.Anchor
	switch id.Kind() {
	case plan.KindRoom:
		return []plan.ID{id}
	case plan.KindSide:
		at = plan.OnFace(id, 0)
	case plan.KindBreak:
		if b, _ := ix.Plan().Break(id); b != nil {
			at = b.At
		}
	case plan.KindFixture:
		if f, _ := ix.Plan().Fixture(id); f != nil {
			at = f.At
		}
	case plan.KindOpening:
		o, _ := ix.Plan().Opening(id)
		if o == nil {
			return nil
		}
		ids, at = append(ids, id), o.At
	}
	if place, ok := ix.Place(at); ok && place.Room != nil {
		ids = append(ids, place.Room.ID)
	}
	return ids
}
