package drywall

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
)

// leaveClosed takes the board off the parts of a face that stay closed: what is left of a
// piece is cut to the part that is not.
func (l *Layout) leaveClosed() {
	parts := l.open()
	if len(parts) == 1 && parts[0] == [2]unit.Length{0, l.Face.Length} {
		return
	}
	var left []Piece
	for _, part := range parts {
		for _, p := range l.Pieces {
			p.Left, p.Right = max(p.Left, part[0]), min(p.Right, part[1])
			if p.Left < p.Right {
				left = append(left, p)
			}
		}
	}
	l.Pieces = left
	l.joinAnew(parts)
}

// open lists the parts of a face that do not stay closed, from left to right; those that
// touch are one.
func (l *Layout) open() (parts [][2]unit.Length) {
	s := l.Face.Side
	ends := []unit.Length{0, l.Face.Length}
	for _, z := range s.Zones {
		ends = append(ends, min(z.From, l.Face.Length), min(z.To, l.Face.Length))
	}
	slices.Sort(ends)
	ends = slices.Compact(ends)
	for i := range ends[1:] {
		from, to := ends[i], ends[i+1]
		if s.ConditionAt(from+(to-from)/2) == plan.ConditionClosed {
			continue
		}
		if n := len(parts); n > 0 && parts[n-1][1] == from {
			parts[n-1][1] = to
			continue
		}
		parts = append(parts, [2]unit.Length{from, to})
	}
	return parts
}

// joinAnew adds up the joints between the pieces, and those against the finish that stays at
// either hand of a part.
func (l *Layout) joinAnew(parts [][2]unit.Length) {
	l.Joints = 0
	for i, a := range l.Pieces {
		for _, b := range l.Pieces[i+1:] {
			if a.Right == b.Left || b.Right == a.Left {
				l.Joints += max(min(a.Top, b.Top)-max(a.Bottom, b.Bottom), 0)
			}
			if a.Top == b.Bottom || b.Top == a.Bottom {
				l.Joints += max(min(a.Right, b.Right)-max(a.Left, b.Left), 0)
			}
		}
	}
	for _, part := range parts {
		for _, end := range part {
			if 0 < end && end < l.Face.Length {
				l.Joints += l.Height
			}
		}
	}
}
