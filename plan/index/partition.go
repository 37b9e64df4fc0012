package index

import (
	"cmp"
	"slices"

	"studbay/plan"
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
// partition, from From to To along the side that was asked about. Room may be the
// side's own: a stub wall stands into it.
type Backing struct {
	Room     *plan.Room
	Side     *plan.Side
	From, To unit.Length
	Gap      unit.Length // between the two faces
}

// Behind returns the sides that stand back to back with a side, from left to right
// as seen in the side's room: at each place the nearest one. A side of kind open or
// railing has nothing behind and is behind nothing.
func (ix *Index) Behind(id plan.ID) []Backing {
	if ref, ok := ix.Side(id); ok {
		return ix.behind(ref)
	}
	return nil
}

func (ix *Index) behind(ref *plan.SideRef) []Backing {
	if !hasFace(ref.Side()) {
		return nil
	}
	line := ref.Line()
	frame := geom.FrameOf(line)
	length := line.Length()
	if length <= 2*plan.Slack {
		return nil
	}
	strip := boxAround(0, frame.Point(plan.Slack, plan.Slack), frame.Point(length-plan.Slack, plan.Slack),
		frame.Point(plan.Slack, -MaxPartition-plan.Slack), frame.Point(length-plan.Slack, -MaxPartition-plan.Slack))
	var found []Backing
	ix.within(ref.Level, strip, func(other plan.ID) {
		if other.Kind() != plan.KindSide || other == ref.Key() {
			return
		}
		back, ok := ix.Side(other)
		if !ok || !hasFace(back.Side()) {
			return
		}
		if b, ok := backing(frame, length, back); ok {
			found = append(found, b)
		}
	})
	return nearestOf(found)
}

// backedBy does something with each room that has a side which a given one may stand
// behind, whether or not a nearer one hides it from there.
func (ix *Index) backedBy(ref *plan.SideRef, do func(*plan.Room)) {
	line := ref.Line()
	ix.within(ref.Level, boxAround(MaxPartition+plan.Slack, line.A, line.B), func(id plan.ID) {
		if id.Kind() != plan.KindSide || id == ref.Key() {
			return
		}
		front, ok := ix.Side(id)
		if !ok {
			return
		}
		face := front.Line()
		if _, ok := backing(geom.FrameOf(face), face.Length(), ref); ok {
			do(front.Room)
		}
	})
}

// hasFace reports whether a side is a wall or glass, which a partition has two of.
func hasFace(s *plan.Side) bool { return s.Kind != plan.SideOpen && s.Kind != plan.SideRailing }

// nearestOf leaves of each backing what no nearer one hides, from left to right.
func nearestOf(found []Backing) []Backing {
	if len(found) > 1 {
		slices.SortFunc(found, func(a, b Backing) int {
			return cmp.Or(cmp.Compare(a.Gap, b.Gap), cmp.Compare(a.From, b.From), cmp.Compare(a.Side.ID, b.Side.ID))
		})
	}
	for i := 1; i < len(found); i++ {
		rest := seenPast(found[:i], found[i])
		found = slices.Replace(found, i, i+1, rest...)
		i += len(rest) - 1
	}
	if len(found) > 1 {
		slices.SortFunc(found, func(a, b Backing) int {
			return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.Side.ID, b.Side.ID))
		})
	}
	return found
}

// seenPast returns what of one backing the nearer ones leave in sight.
func seenPast(nearer []Backing, b Backing) []Backing {
	rest := []Backing{b}
	for _, n := range nearer {
		var left []Backing
		for _, r := range rest {
			before, after := r, r
			before.To, after.From = min(r.To, n.From), max(r.From, n.To)
			if before.From+plan.Slack < before.To {
				left = append(left, before)
			}
			if after.From+plan.Slack < after.To {
				left = append(left, after)
			}
		}
		rest = left
	}
	return rest
}

// backing reports where a side of another room backs a face of the given length.
func backing(face geom.Frame, length unit.Length, other *plan.SideRef) (Backing, bool) {
	line := other.Line()
	if !face.IsOpposite(geom.FrameOf(line), straightness) {
		return Backing{}, false
	}
	to, outB := face.Project(line.A)
	from, outA := face.Project(line.B)
	gap := -(outA + outB) / 2
	from, to = max(from, 0), min(to, length)
	if gap < -plan.Slack || gap > MaxPartition || from+plan.Slack >= to {
		return Backing{}, false
	}
	// Faces on one slanted line lie off it by what rounding adds.
	return Backing{Room: other.Room, Side: other.Side(), From: from, To: to, Gap: max(gap, 0)}, true
}

// Cut is what a break takes out of a side, along that side; From and To lie within
// it. A break stored on the face behind cuts this one too.
type Cut struct {
	Break    *plan.Break
	From, To unit.Length
	IsOwn    bool // stored on this side
	// Start is where the whole break begins along this side: below From where a part of
	// it lies past the side's left end, as it can where the side behind is longer.
	Start unit.Length
}

// Cuts returns what interrupts a side, from left to right. Its cost follows what
// stands near.
func (ix *Index) Cuts(id plan.ID) []Cut {
	ref, ok := ix.Side(id)
	if !ok {
		return nil
	}
	return ix.cuts(ref, ix.behind(ref))
}

func (ix *Index) cuts(ref *plan.SideRef, behind []Backing) (cuts []Cut) {
	line := ref.Line()
	length := line.Length()
	for _, b := range ix.BreaksOn(ref.Key()) {
		from, to := max(b.At.Along, 0), min(b.At.Along+b.Width, length)
		if from < to {
			cuts = append(cuts, Cut{b, from, to, true, b.At.Along})
		}
	}
	frame := geom.FrameOf(line)
	for _, back := range behind {
		for _, b := range ix.BreaksOn(back.Side.ID) {
			if b.Kind == plan.BreakFireplace {
				continue // it opens into its own room alone
			}
			edge, _ := ix.BreakLine(b)
			end, _ := frame.Project(edge.A)
			start, _ := frame.Project(edge.B)
			if from, to := max(start, back.From), min(end, back.To); from < to {
				cuts = append(cuts, Cut{b, from, to, false, start})
			}
		}
	}
	slices.SortStableFunc(cuts, func(a, b Cut) int { return cmp.Compare(a.From, b.From) })
	return cuts
}
