package fill

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// waived finds the waiver of a finding.
type waived struct {
	from   plan.Set[*plan.Waiver]
	by     map[waiverKey][]*plan.Waiver
	ofRule map[string][]*plan.Waiver
}

type waiverKey struct {
	rule  string
	about plan.ID
}

// of returns the look-up of a plan's waivers: the same one where they are the same.
func (w waived) of(waivers plan.Set[*plan.Waiver]) waived {
	if w.by != nil && w.from == waivers {
		return w
	}
	w = waived{waivers, make(map[waiverKey][]*plan.Waiver, waivers.Len()), map[string][]*plan.Waiver{}}
	for one := range waivers.All() {
		w.ofRule[one.Rule] = append(w.ofRule[one.Rule], one)
		for _, about := range aboutOf(one) {
			key := waiverKey{one.Rule, about}
			w.by[key] = append(w.by[key], one)
		}
	}
	return w
}

// aboutOf lists what a finding may be about that a waiver holds for: a gap that is less
// may begin on another of the faces it was seen on.
func aboutOf(w *plan.Waiver) []plan.ID {
	about := []plan.ID{w.About}
	if w.Seen != nil {
		for _, s := range w.Seen.Stretches {
			if !slices.Contains(about, s.Host) {
				about = append(about, s.Host)
			}
		}
	}
	return about
}

// waiverOf returns the waiver that holds for a finding, or nil; of two the first by ID.
func (w waived) waiverOf(f rule.Finding) *plan.Waiver {
	for _, one := range w.by[waiverKey{f.Rule, f.About}] {
		if one.Seen == nil || f.IsWithin(one.Seen) {
			return one
		}
	}
	return nil
}

// waiverScopes returns the rooms and openings whose waivers differ since another index.
// A level or the plan is always asked.
func (c *Checker) waiverScopes(was *index.Index) (ids []plan.ID) {
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
func judgedWith(ix *index.Index, id plan.ID) (ids []plan.ID) {
	at := plan.OnFace(id, 0)
	if id.Kind() != plan.KindSide {
		t, _ := ix.Plan().Find(id)
		if _, ok := t.(*plan.Room); ok {
			return []plan.ID{id}
		}
		stands := plan.AnchorOf(t)
		if stands == nil {
			return nil
		}
		at = *stands
	}
	if id.Kind() == plan.KindOpening {
		ids = append(ids, id)
	}
	if place, ok := ix.Place(at); ok && place.Room != nil {
		ids = append(ids, place.Room.ID)
	}
	return ids
}
