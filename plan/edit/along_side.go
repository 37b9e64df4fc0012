package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
)

// What a side tells of places along it, stud by stud or zone by zone, is told from its left
// end.

// moveAlong moves all of it away from the left end.
func moveAlong(s *plan.Side, by unit.Length) {
	s.Places, s.Zones, s.Probes = slices.Clone(s.Places), slices.Clone(s.Zones), slices.Clone(s.Probes)
	for i := range s.Places {
		s.Places[i].At += by
	}
	for i := range s.Zones {
		s.Zones[i].From, s.Zones[i].To = s.Zones[i].From+by, s.Zones[i].To+by
	}
	for i := range s.Probes {
		s.Probes[i].From, s.Probes[i].To = s.Probes[i].From+by, s.Probes[i].To+by
	}
	if by != 0 { // it was read from where the wall ended then
		s.Tape = plan.Tape{}
	}
	keepWithin(s, 0, plan.Reach)
}

// keepWithin leaves what is from one place to another; what begins at the latter goes.
func keepWithin(s *plan.Side, from, to unit.Length) {
	was := len(s.Places)
	s.Places = slices.DeleteFunc(slices.Clone(s.Places), func(p plan.StudPlace) bool { return p.At < from || p.At >= to })
	if len(s.Places) < was {
		s.Tape = plan.Tape{}
	}
	s.Zones, s.Probes = slices.Clone(s.Zones), slices.Clone(s.Probes)
	for i := range s.Zones {
		s.Zones[i].From, s.Zones[i].To = max(s.Zones[i].From, from), min(s.Zones[i].To, to)
	}
	for i := range s.Probes {
		s.Probes[i].From, s.Probes[i].To = max(s.Probes[i].From, from), min(s.Probes[i].To, to)
	}
	s.Zones = slices.DeleteFunc(s.Zones, func(z plan.Zone) bool { return z.To <= z.From })
	s.Probes = slices.DeleteFunc(s.Probes, func(p plan.Probe) bool { return p.To <= p.From })
}

// turnAlong tells all of it from the other end of a side of a length.
func TurnAlong(s *plan.Side, length unit.Length) {
	s.Places, s.Zones, s.Probes = slices.Clone(s.Places), slices.Clone(s.Zones), slices.Clone(s.Probes)
	slices.Reverse(s.Places)
	slices.Reverse(s.Zones)
	if len(s.Tape.At) > 0 {
		s.Tape.FromRight = !s.Tape.FromRight
	}
	for i := range s.Places {
		s.Places[i].At = length - s.Places[i].At
	}
	for i := range s.Zones {
		s.Zones[i].From, s.Zones[i].To = length-s.Zones[i].To, length-s.Zones[i].From
	}
	for i := range s.Probes {
		s.Probes[i].From, s.Probes[i].To = length-s.Probes[i].To, length-s.Probes[i].From
	}
}
