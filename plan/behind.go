package plan

import (
	"math"
	"slices"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// MaxPartition is the greatest distance between two faces that still counts as one
// partition: a framed wall with both finishes is seldom over a foot (common
// practice), and a masonry party wall of an old house under 16 in.
const MaxPartition = 16 * unit.Inch

// straightness is how far from opposite the directions of two faces of a partition
// may be: the sine of about half a degree.
const straightness = 0.01

// Backing is a side that stands back to back with another: two faces of one
// partition, from From to To along the side that was asked about.
type Backing struct {
	Room     *Room
	Side     *Side
	From, To unit.Length
	Gap      unit.Length // between the two faces
}

// Project returns how far along and out of the frame a point lies, each rounded once
// to the nearest nanometre.
func (f Frame) Project(p geom.Point) (along, out unit.Length) {
	d := p.Sub(f.Origin)
	x, y := float64(d.X), float64(d.Y)
	return unit.Length(math.Round(x*f.x + y*f.y)), unit.Length(math.Round(y*f.x - x*f.y))
}

// Behind returns the sides that stand back to back with a side, from left to right
// as seen in the side's room. Sides of kind open or railing have nothing behind.
func (ix *Index) Behind(id ID) (found []Backing) {
	ref, ok := ix.Side(id)
	if !ok {
		return nil
	}
	line := ref.Line()
	frame := FrameOf(line)
	length := line.Length()
	near := boxAround(MaxPartition, line.A, line.B)
	for _, other := range ix.Search(ref.Level, near) {
		if other.Kind() != KindSide || other == id {
			continue
		}
		back, ok := ix.Side(other)
		if !ok || back.Room == ref.Room {
			continue
		}
		if b, ok := backing(frame, length, back); ok {
			found = append(found, b)
		}
	}
	slices.SortFunc(found, func(a, b Backing) int {
		if a.From != b.From {
			return int(min(max(a.From-b.From, -1), 1))
		}
		return compareIDs(a.Side.ID, b.Side.ID)
	})
	return found
}

// backing reports where a side of another room backs a face of the given length.
func backing(face Frame, length unit.Length, other *SideRef) (Backing, bool) {
	line := other.Line()
	dir := FrameOf(line)
	isOpposite := face.x*dir.x+face.y*dir.y < 0 && math.Abs(face.x*dir.y-face.y*dir.x) < straightness
	if !isOpposite {
		return Backing{}, false
	}
	to, outB := face.Project(line.A)
	from, outA := face.Project(line.B)
	gap := -(outA + outB) / 2
	from, to = max(from, 0), min(to, length)
	if gap < 0 || gap > MaxPartition || from >= to {
		return Backing{}, false
	}
	return Backing{Room: other.Room, Side: other.Side(), From: from, To: to, Gap: gap}, true
}

// Cut is what a break takes out of a side, along that side; From and To lie within
// it. A break stored on a side of the room behind cuts this one too.
type Cut struct {
	Break    *Break
	From, To unit.Length
	IsOwn    bool // stored on this side
}

// Cuts returns what interrupts a side, from left to right. Its cost follows what
// stands near.
func (ix *Index) Cuts(id ID) []Cut {
	ref, ok := ix.Side(id)
	if !ok {
		return nil
	}
	return ix.cuts(ref, ix.Behind(id))
}

func (ix *Index) cuts(ref *SideRef, behind []Backing) (cuts []Cut) {
	line := ref.Line()
	length := line.Length()
	for _, b := range ix.BreaksOn(ref.Key()) {
		from, to := max(b.At.Along, 0), min(b.At.Along+b.Width, length)
		cuts = append(cuts, Cut{b, from, to, true})
	}
	frame := FrameOf(line)
	for _, back := range behind {
		for _, b := range ix.BreaksOn(back.Side.ID) {
			if b.Kind == BreakFireplace {
				continue // it opens into its own room alone
			}
			edge, _ := ix.BreakLine(b)
			to, _ := frame.Project(edge.A)
			from, _ := frame.Project(edge.B)
			if from, to = max(from, 0), min(to, length); from < to {
				cuts = append(cuts, Cut{b, from, to, false})
			}
		}
	}
	slices.SortStableFunc(cuts, func(a, b Cut) int { return int(min(max(a.From-b.From, -1), 1)) })
	return cuts
}
