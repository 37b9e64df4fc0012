package index

import "studbay/plan"

// Joined is an opening that cables end in: what tells it from others but for where in its
// room it is. It is comparable.
type Joined struct {
	ID, Level plan.ID
	Room      plan.ID // empty where its host is gone
	Was       plan.ID // the opening that it replaces
	Tag, Kind string
	Status    plan.Status
}

// Key returns the ID of the opening.
func (j *Joined) Key() plan.ID { return j.ID }

// Joined returns the openings that cables end in, on all levels, in the order of IDs. It is
// the same set for as long as none of them comes, goes, or differs in what is held of it.
func (ix *Index) Joined() plan.Set[*Joined] { return ix.joined }

// rejoin brings what is joined up to the plan: the openings that are stale, and those at
// the ends of cables that came or went.
func (u *updating) rejoin() {
	for id := range u.stale {
		if id.Kind() == plan.KindOpening {
			u.rejoinAt(id)
		}
	}
	for id := range u.ends {
		u.rejoinAt(id)
	}
}

func (u *updating) rejoinAt(id plan.ID) {
	now, is := u.joinedAt(id)
	was, had := u.joined.Get(id)
	switch {
	case !is:
		u.joined = u.joined.Without(id)
	case !had || *was != now:
		u.joined = u.joined.With(&now)
	}
}

// joinedAt returns the opening as it is in the plan; it reports false where it is gone, or
// no cable ends in it.
func (u *updating) joinedAt(id plan.ID) (Joined, bool) {
	if len(u.CablesAt(id)) == 0 {
		return Joined{}, false
	}
	o, l := u.plan.Opening(id)
	if o == nil {
		return Joined{}, false
	}
	j := Joined{ID: id, Level: l.ID, Was: o.Was, Tag: o.Tag, Kind: o.Kind, Status: o.Status}
	if place, ok := u.Place(o.At); ok {
		j.Room = place.Room.ID
	}
	return j, true
}
