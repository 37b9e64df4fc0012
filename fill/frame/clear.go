package frame

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// MovedTo returns the box with its centre at another place along the face.
func (p Placed) MovedTo(along unit.Length) Placed {
	p.Rect = p.Moved(along - p.Centre())
	return p
}

// Centre returns where along the face its middle is.
func (r Rect) Centre() unit.Length { return r.Left + (r.Right-r.Left)/2 }

// WantsStud reports whether a box is made to be fastened to a stud at its side.
func (p Placed) WantsStud() bool {
	return p.Box != nil && (p.Box.Mounting == part.NailOn || p.Box.Mounting == part.Bracket || p.Box.Mounting == part.Screw)
}

// StudIn returns the upright that stands in a box, and how much of its width that takes.
// One that touches it no deeper than Touching does not.
func (w *Wall) StudIn(p Placed) (in Stud, by unit.Length) {
	for _, s := range w.All {
		over := min(p.Right, s.Right()) - max(p.Left, s.Left())
		if over > max(by, Touching) && s.IsBetween(p.Bottom, p.Top) {
			in, by = s, over
		}
	}
	return in, by
}

// Cramped returns the stud that leaves an old-work box too little room beside it for its wings
// and ears, the nearer of two, and the room that there is. It reports false where there is
// enough, and where a stud stands in the place of the box itself.
func (w *Wall) Cramped(p Placed) (by Stud, room unit.Length, is bool) {
	if p.wings() == 0 {
		return by, 0, false
	}
	if _, over := w.StudIn(p); over > 0 {
		return by, 0, false
	}
	room = p.wings()
	for _, s := range w.All {
		if away := max(s.Left()-p.Right, p.Left-s.Right(), 0); away < room && s.IsBetween(p.Bottom, p.Top) {
			by, room, is = s, away, true
		}
	}
	return by, room, is
}

// wings is how much clear room a box wants at either side up to the studs; 0 of one that no
// wings hold.
func (p Placed) wings() unit.Length {
	if p.Box == nil || p.Box.Mounting != part.OldWork {
		return 0
	}
	return p.Box.Fit.Wings
}

// IsInBreak reports whether a box is in the clear size of a door, a window or another break.
func (w *Wall) IsInBreak(p Placed) bool {
	return slices.ContainsFunc(w.Cuts, func(c index.Cut) bool {
		return p.Meets(Rect{c.From, c.To, c.Break.Sill, c.Break.Head})
	})
}

// TooDeep returns how much deeper a box and one set from the other face into the same place
// are than the framing there, 0 where they fit.
func (w *Wall) TooDeep(p, behind Placed) unit.Length {
	framing := w.FramingAt(p.Centre())
	if framing <= 0 || !p.IsBuiltIn() || !behind.IsBuiltIn() || !p.Meets(behind.Rect) {
		return 0
	}
	return max(-Spare(framing, p.InFraming(), behind.InFraming()), 0)
}

// IsClear reports whether a box could be built where it is: within the face, in no break
// and nowhere that is said to be blocked, its plate on no casing, on no other box or plate of the face, with no stud in it and fitting between those of the other
// face.
func (w *Wall) IsClear(p Placed) bool {
	if plate := p.Plate(); min(p.Left, plate.Left) < 0 || max(p.Right, plate.Right) > w.Length {
		return false
	}
	if w.IsInBreak(p) || slices.ContainsFunc(Blocked(w.Side), p.Meets) {
		return false
	}
	for _, c := range w.Cuts {
		if trim, any := CasingOf(c); any && p.Plate().Meets(trim) {
			return false
		}
	}
	for _, o := range w.Boxes {
		if o.Opening.ID != p.Opening.ID && (p.Meets(o.Rect) || p.Plate().Meets(o.Plate())) {
			return false
		}
	}
	for _, o := range w.Behind {
		if w.TooDeep(p, o) > 0 {
			return false
		}
	}
	_, by := w.StudIn(p)
	return by == 0
}

// ClearPlaces lists where the centre of a box could come to stand as it is built, the
// nearest first: against the studs and, for one that wants none, beside what is in the way.
// They are whole steps of a tape from the left end of the face, so that a box may stand half
// a step off its stud. Where nobody tells the studs, one that wants a stud is tried at other
// places too, if the caller names any, and beside what is in the way.
func (w *Wall) ClearPlaces(p Placed, step unit.Length, also ...unit.Length) (places []unit.Length) {
	wide, at := p.Right-p.Left, p.Centre()
	try := func(place unit.Length) {
		for _, along := range OnTape(place, step) {
			if slices.Contains(places, along) {
				return
			}
			if _, _, cramped := w.Cramped(p.MovedTo(along)); along != at && !cramped && w.IsClear(p.MovedTo(along)) {
				places = append(places, along)
				return
			}
		}
	}
	for s := range w.Between(p.Bottom, p.Top) {
		left, right := s.Beside(wide + 2*p.wings())
		try(left)
		try(right)
	}
	if !p.WantsStud() || len(w.All) == 0 && len(also) > 0 {
		for _, place := range also {
			try(place)
		}
		for _, o := range slices.Concat(w.Boxes, w.Behind) {
			try(o.Left - (wide - wide/2))
			try(o.Right + wide/2)
		}
	}
	slices.SortStableFunc(places, func(a, b unit.Length) int { return cmp.Compare((a - at).Abs(), (b - at).Abs()) })
	return places
}

// OnTape returns the whole steps of a tape next to a place, the nearer first.
func OnTape(place, step unit.Length) []unit.Length {
	under := place / step * step
	switch over := place - under; {
	case over == 0:
		return []unit.Length{place}
	case 2*over > step:
		return []unit.Length{under + step, under}
	}
	return []unit.Length{under, under + step}
}
