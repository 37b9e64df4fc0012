package frame

import (
	"studbay/fill/part"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// CasingOf returns what a break and the trim round it take of a face: its clear size, what
// the kind of break leaves to the trim (of a door 1/8 in of gap at the slab and 3/16 of
// reveal) and the width of the trim, on both faces alike. It reports false where the break
// has no trim.
func CasingOf(c index.Cut) (Rect, bool) {
	b := c.Break
	if b.Casing <= 0 {
		return Rect{}, false
	}
	out := part.All().Break(b.Kind).CasingGap + b.Casing
	r := Rect{Left: c.Start - out, Right: c.Start + b.Width + out, Top: b.Head + out}
	if b.Sill > 0 {
		r.Bottom = max(b.Sill-out, 0)
	}
	return r, true
}

// OverlapOf returns by how little one part of a face would have to move to be clear of
// another, along it or up and down; 0 where it is.
func (r Rect) OverlapOf(s Rect) unit.Length {
	if !r.Meets(s) {
		return 0
	}
	return min(r.Right-s.Left, s.Right-r.Left, r.Top-s.Bottom, s.Top-r.Bottom)
}
