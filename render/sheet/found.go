package sheet

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// found is the findings of a plan by what they show on. A drawing of a few rooms looks at
// no more than their findings, so that many of them cost no more than their sum.
type found struct {
	all    []rule.Finding
	worst  map[plan.ID]*rule.Finding // of an opening, the first
	byRoom map[plan.ID][]int         // those that show on a drawing, in their order
}

func newFound(ix *index.Index, all []rule.Finding) *found {
	f := &found{all: all, worst: map[plan.ID]*rule.Finding{}, byRoom: map[plan.ID][]int{}}
	for i := range all {
		g := &all[i]
		if g.Opening == "" && len(g.Stretches) == 0 {
			continue // it shows on no drawing
		}
		if g.Opening != "" && f.worst[g.Opening] == nil {
			f.worst[g.Opening] = g
		}
		for _, room := range roomsOf(ix, g) {
			f.byRoom[room] = append(f.byRoom[room], i)
		}
	}
	return f
}

// roomsOf lists the rooms that a finding shows in: its own, that of its opening and those
// its stretches look into; or that with no ID, for one in none.
func roomsOf(ix *index.Index, g *rule.Finding) (rooms []plan.ID) {
	add := func(at plan.Anchor) {
		if place, ok := ix.Place(at); ok && place.Room != nil {
			rooms = append(rooms, place.Room.ID)
		}
	}
	if g.Room != "" {
		rooms = append(rooms, g.Room)
	}
	if o, _ := ix.Plan().Opening(g.Opening); o != nil {
		add(o.At)
	}
	for _, s := range g.Stretches {
		add(plan.Anchor{Host: s.Host, Part: s.Part})
	}
	if len(rooms) == 0 {
		return []plan.ID{""}
	}
	slices.Sort(rooms)
	return slices.Compact(rooms)
}

// in returns the findings that may show on a drawing of some rooms, the worst first.
func (f *found) in(rooms ...plan.ID) (some []rule.Finding) {
	at := slices.Clone(f.byRoom[""])
	for _, room := range rooms {
		at = append(at, f.byRoom[room]...)
	}
	slices.Sort(at)
	for _, i := range slices.Compact(at) {
		some = append(some, f.all[i])
	}
	return some
}
