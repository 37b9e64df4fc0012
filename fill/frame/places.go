package frame

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// StudPlaces returns the studs of a wall one by one as its layouts have them, from the left
// end of the face: all but those at its ends and at breaks.
func (f Face) StudPlaces() (places []plan.StudPlace) {
	for _, s := range f.laidOut() {
		places = append(places, plan.StudPlace{At: s.At, State: s.State})
	}
	return places
}

// WithStuds returns the edit that puts the studs of a wall where they are listed, as seen
// in a face. They are told on that face; a face behind that tells its own one by one tells
// the same from then on, as far as it stands there, so that the two agree.
func (f Face) WithStuds(places []plan.StudPlace) edit.Edit {
	places = ordered(places)
	all := edit.Steps{Label: edit.SetStuds{}.Name(), Edits: []edit.Edit{edit.SetStuds{Side: f.Side.ID, Places: places}}}
	for _, b := range f.Behind {
		if len(b.Side.Places) == 0 {
			continue
		}
		_, end := f.across(b)
		var theirs []plan.StudPlace
		for _, p := range b.Side.Places {
			if at := end - p.At; at < b.From || at > b.To {
				theirs = append(theirs, p)
			}
		}
		for _, p := range places {
			if b.From <= p.At && p.At <= b.To {
				theirs = append(theirs, plan.StudPlace{At: end - p.At, State: p.State})
			}
		}
		all.Edits = append(all.Edits, edit.SetStuds{Side: b.Side.ID, Places: ordered(theirs)})
	}
	return all
}

// ordered lists studs from left to right; of two in one place the surer stays.
func ordered(places []plan.StudPlace) []plan.StudPlace {
	sorted := slices.SortedStableFunc(slices.Values(places), func(a, b plan.StudPlace) int {
		return cmp.Or(cmp.Compare(a.At, b.At), cmp.Compare(sureness(b.State), sureness(a.State)))
	})
	return slices.CompactFunc(sorted, func(a, b plan.StudPlace) bool { return a.At == b.At })
}

// sureness ranks how well a stud is known.
func sureness(s plan.StudState) int {
	return slices.Index([]plan.StudState{plan.StudAssumed, plan.StudStated, plan.StudMeasured}, s)
}

// WithStudMoved returns the edit that moves one of StudPlaces: it is stated from then on.
func (f Face) WithStudMoved(i int, to unit.Length) edit.Edit {
	places := f.StudPlaces()
	if i < len(places) {
		places[i] = plan.StudPlace{At: to, State: plan.StudStated}
	}
	return f.WithStuds(places)
}

// WithStud returns the edit that adds a stud, stated.
func (f Face) WithStud(at unit.Length) edit.Edit {
	return f.WithStuds(append(f.StudPlaces(), plan.StudPlace{At: at, State: plan.StudStated}))
}

// WithoutStud returns the edit that takes one of StudPlaces out.
func (f Face) WithoutStud(i int) edit.Edit {
	places := f.StudPlaces()
	if i < len(places) {
		places = slices.Delete(places, i, i+1)
	}
	return f.WithStuds(places)
}

// Taped returns the edit that puts the studs of a wall where a tape found them. One that
// stood there already is measured now too.
func (f Face) Taped(at []unit.Length) edit.Edit {
	var places []plan.StudPlace
	for _, l := range at {
		places = append(places, plan.StudPlace{At: l, State: plan.StudMeasured})
	}
	return f.WithStuds(places)
}

// StudAt returns which of StudPlaces stands within a reach of a place, the nearest.
func (f Face) StudAt(at, reach unit.Length) (best int, ok bool) {
	places := f.StudPlaces()
	for i, p := range places {
		if off := (p.At - at).Abs(); off <= reach && (!ok || off < (places[best].At-at).Abs()) {
			best, ok = i, true
		}
	}
	return best, ok
}

// Disagreement returns the place on a face where what it states of its studs first differs
// from what a side behind states, by more than a tape's sixteenth; places that only the one
// tells count as well. It reports false where they agree or one of them states nothing.
func (f Face) Disagreement(behind int) (at unit.Length, ok bool) {
	const stated, same = 2, unit.Inch / 16
	b := f.Behind[behind]
	if said(f.Side) < stated || said(b.Side) < stated || b.Side.Kind != plan.SideWall || f.Side.Kind != plan.SideWall {
		return 0, false
	}
	_, end := f.across(b)
	var own, theirs []unit.Length
	for _, s := range within(layout(f.Side, f.Length), b.From+StudThick, b.To-StudThick) { // what stands at an end is its own matter
		own = append(own, s.At)
	}
	for _, s := range layout(b.Side, lengthOf(b)) {
		if at := end - s.At; b.From+StudThick <= at && at <= b.To-StudThick {
			theirs = append(theirs, at)
		}
	}
	slices.Sort(theirs)
	for i := range max(len(own), len(theirs)) {
		switch {
		case i >= len(own):
			return theirs[i], true
		case i >= len(theirs), (own[i] - theirs[i]).Abs() > same:
			return own[i], true
		}
	}
	return 0, false
}

// IsPlaced reports whether any stud of the wall is told by itself.
func (f Face) IsPlaced() bool {
	for _, s := range f.laidOut() {
		if s.isPlaced {
			return true
		}
	}
	return false
}
