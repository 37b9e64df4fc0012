package receptacle

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// bays are those of a garage side by side along the wall of its doors for vehicles.
type bays struct {
	frame geom.Frame
	ends  []unit.Length // where each but the last ends along the wall
}

// baysOf returns the bays of a garage where its doors tell them: all are in one wall, and each is
// of as many bays as the others.
func baysOf(v *index.RoomView, count int) (b bays, ok bool) {
	var doors []index.Cut
	for _, s := range v.Sides {
		here := slices.DeleteFunc(slices.Clone(s.Cuts), func(c index.Cut) bool { return !c.Break.Vehicle })
		if len(here) == 0 {
			continue
		}
		if len(doors) > 0 {
			return b, false
		}
		doors, b.frame = here, s.Frame
	}
	if len(doors) == 0 || count%len(doors) != 0 {
		return b, false
	}
	each := unit.Length(count / len(doors))
	var middles []unit.Length
	for _, d := range doors {
		for i := range each {
			middles = append(middles, d.From+(d.To-d.From)*(2*i+1)/(2*each))
		}
	}
	for i := range middles[1:] {
		b.ends = append(b.ends, (middles[i]+middles[i+1])/2)
	}
	return b, true
}

// holds reports whether a point is in a bay; one between two is in both.
func (b bays) holds(bay int, at geom.Point) bool {
	along, _ := b.frame.Project(at)
	return (bay == 0 || along >= b.ends[bay-1]-rule.Grain) && (bay == len(b.ends) || along <= b.ends[bay]+rule.Grain)
}

// has reports whether a bay has one of some receptacles.
func (b bays) has(bay int, all []outlet) bool {
	return slices.ContainsFunc(all, func(o outlet) bool { return b.holds(bay, o.at) })
}

// served counts the bays that have one of some receptacles.
func (b bays) served(all []outlet) (n int) {
	for bay := range len(b.ends) + 1 {
		if b.has(bay, all) {
			n++
		}
	}
	return n
}

// unserved allows places in the bays that have none of some receptacles.
func (b bays) unserved(all []outlet) func(place) (unit.Length, bool) {
	return func(p place) (unit.Length, bool) {
		for bay := range len(b.ends) + 1 {
			if b.holds(bay, p.side.Frame.Point(p.along, 0)) && !b.has(bay, all) {
				return 0, true
			}
		}
		return 0, false
	}
}
