package drywall

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/nest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// LayCeiling lays the board of a room's ceiling: across its joists where those are told, else
// along the room, in the way that Lay takes. Of a room that is no rectangle the sheets are laid on
// the rectangle about it and trimmed at its walls. It reports false for a ceiling in which
// nothing new is to be cut out.
func LayCeiling(v *index.RoomView) (best Layout, ok bool) {
	var cut []*plan.Opening
	for _, o := range v.Ceiling {
		if isCutOverhead(v.Room, o) {
			cut = append(cut, o)
		}
	}
	if len(cut) == 0 {
		return best, false
	}
	for _, long := range []unit.Length{Long8, Long12} {
		l := ceiling(v.Room, cut, long)
		if !ok || l.isBetter(best) {
			best, ok = l, true
		}
	}
	return best, true
}

func isCutOverhead(r *plan.Room, o *plan.Opening) bool {
	at := frame.Placed{Opening: o, Box: frame.BoxOf(o.Assembly), IsHoused: frame.IsHoused(o)}
	return r.Overhead != plan.ConditionClosed && goesInFirst(at) && !frame.CutoutOf(o).IsZero()
}

func ceiling(r *plan.Room, cut []*plan.Opening, long unit.Length) Layout {
	outline := r.Outline()
	box := geom.Polygon(outline).Box()
	wide, deep := box.Width(), box.Height()
	l := Layout{Face: frame.Face{Length: wide}, Room: r, Way: Way{Long: long}, Height: deep, IsCeiling: true}
	alongX, joists, told := acrossJoists(r, box)
	if l.AcrossJoists = told; !told {
		alongX = wide >= deep
	}
	length, across := wide, deep
	if !alongX {
		length, across = deep, wide
	}
	inside := within(outline, box)
	var lengths []nest.Piece
	for row, top := 0, across; top > 0; row, top = row+1, top-Wide {
		bottom, first := max(top-Wide, 0), long
		if row%2 == 0 && length > long {
			first /= 2
		}
		at := unit.Length(0)
		for _, end := range joints(joists, length, first, long) {
			sheet := func(from, to, low, high unit.Length) frame.Rect {
				if alongX {
					return frame.Rect{Left: from, Right: to, Bottom: low, Top: high}
				}
				return frame.Rect{Left: low, Right: high, Bottom: from, Top: to}
			}
			if cut, about, ok := trimmed(inside, sheet(at, end, bottom, top)); ok {
				l.Pieces = append(l.Pieces, Piece{Rect: about, Outline: cut})
			}
			if end < length {
				l.Joints += jointIn(inside, lineOf(sheet(end, end, bottom, top)))
			}
			if bottom > 0 {
				l.Joints += jointIn(inside, lineOf(sheet(at, end, bottom, bottom)))
			}
			at = end
		}
	}
	l.letter()
	for _, p := range l.Pieces {
		piece := nest.Piece{Length: p.Right - p.Left, For: p.Letter}
		if !alongX {
			piece.Length = p.Top - p.Bottom
		}
		lengths = append(lengths, piece)
	}
	l.Sheets = nest.Cut(nest.Stock{Board: long}, lengths)
	for _, o := range cut {
		at := o.At.At
		l.cutAt(o, frame.CutoutOf(o), at.X-box.Min.X, box.Max.Y-at.Y)
	}
	return l
}

// acrossJoists says whether sheets lie from left to right, and where the joists are that they
// lie across, by their centers. It reports false where nobody tells the joists, or they run
// aslant.
func acrossJoists(r *plan.Room, box geom.Box) (alongX bool, joists []frame.Stud, ok bool) {
	i := r.SideAt(r.Joists.Along)
	if i < 0 {
		return false, nil, false
	}
	side := r.Segment(i)
	length := box.Height()
	if alongX = side.A.X == side.B.X; alongX {
		length = box.Width()
	} else if side.A.Y != side.B.Y {
		return false, nil, false
	}
	for _, out := range frame.JoistsBetween(r, -length, length) {
		on := geom.FrameOf(side).Point(0, out)
		at := box.Max.Y - on.Y
		if alongX {
			at = on.X - box.Min.X
		}
		if ok = true; 0 < at && at < length {
			joists = append(joists, frame.Stud{At: at})
		}
	}
	slices.SortFunc(joists, func(a, b frame.Stud) int { return cmp.Compare(a.At, b.At) })
	return ok && alongX, joists, ok
}

// lineOf is a rectangle without width as a line.
func lineOf(r frame.Rect) geom.Segment {
	return geom.Segment{A: geom.Point{X: r.Left, Y: r.Bottom}, B: geom.Point{X: r.Right, Y: r.Top}}
}
