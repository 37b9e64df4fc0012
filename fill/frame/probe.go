package frame

import "studbay/plan"

// RectOfProbe returns the part of a face that a probed place is behind.
func RectOfProbe(p *plan.Probe) Rect {
	top := p.Top
	if top == 0 {
		top = plan.Reach
	}
	return Rect{Left: p.From, Right: p.To, Bottom: p.Bottom, Top: top}
}

// Blocked returns the parts of a face behind which something is in the way of boxes.
func Blocked(s *plan.Side) (all []Rect) {
	for i := range s.Probes {
		if !s.Probes[i].Clear {
			all = append(all, RectOfProbe(&s.Probes[i]))
		}
	}
	return all
}
