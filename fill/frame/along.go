package frame

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Mark is a place on a face that a distance runs to.
type Mark struct {
	At unit.Length
	// Of is the opening or break it is of; the side itself for an end of the face.
	Of plan.ID
	// Break is the break that it is an edge or the casing of, nil for an end of the face
	// or an opening.
	Break   *plan.Break
	IsRight bool // of an end, an edge or a casing: the right one
	// Past is the side with which the wall ends where it goes straight on past the face, into
	// the next side of the room or through an open side into another; nil where it does not.
	Past *plan.SideRef
}

// IsEnd reports whether the mark is an end of the face.
func (f Face) IsEnd(m Mark) bool { return m.Of == f.Side.ID }

// Ends returns where the wall of the face ends, left and right: at the ends of the face, or
// past one where the wall goes straight on and no tape finds a corner.
func (f Face) Ends() (left, right Mark) {
	return Mark{At: -f.left.by, Of: f.Side.ID, Past: f.left.to}, Mark{At: f.Length + f.right.by, Of: f.Side.ID, Past: f.right.to, IsRight: true}
}

// past is how far a wall goes straight on past an end of a face, and its last side there.
type past struct {
	to *plan.SideRef
	by unit.Length
}

// NearerEnd returns the end of the wall nearer to a place, the left one of two as near,
// and how far that is.
func (f Face) NearerEnd(at unit.Length) (Mark, unit.Length) {
	left, right := f.Ends()
	return Nearest([]Mark{left, right}, at)
}

// AwayFrom returns the place along a face of the left edge of a thing of a width, 0 where
// its place is its middle, that is a length from the mark.
func (m Mark) AwayFrom(away, width unit.Length) unit.Length {
	if m.IsRight {
		return plan.FromRight(m.At, away, width)
	}
	return m.At + away
}

// OnWall returns the side that a place along the wall of a side is on, and where along it: a
// place past an end of the side is on the next where the wall goes straight on.
func OnWall(ix *index.Index, side plan.ID, at unit.Length) (plan.ID, unit.Length) {
	for range mostSides {
		ref, ok := ix.Side(side)
		if !ok || at >= 0 && at <= ref.Line().Length() {
			break
		}
		next, goesOn := ix.StraightOn(ref, at > 0)
		if !goesOn {
			break
		}
		if at < 0 {
			at += next.Line().Length()
		} else {
			at -= ref.Line().Length()
		}
		side = next.Key()
	}
	return side, at
}

// mostSides bounds by how many sides a place is carried on along a wall.
const mostSides = 16

// FixtureEnds returns the left and the right end of a face of a fixture, or of its top.
func FixtureEnds(f *plan.Fixture, part plan.Part) (left, right Mark) {
	return Mark{At: 0, Of: f.ID}, Mark{At: f.FaceLength(part), Of: f.ID, IsRight: true}
}

// Tapes returns where a tape is laid from once the wall is finished: the ends of the
// wall, and the outer edges of what is trimmed round its breaks.
func (f Face) Tapes() []Mark {
	left, right := f.Ends()
	marks := []Mark{left, right}
	for _, c := range f.Cuts {
		trim := Rect{Left: c.From, Right: c.To}
		if outer, any := CasingOf(c); any {
			trim = outer
		}
		marks = append(marks,
			Mark{At: trim.Left, Of: c.Break.ID, Break: c.Break},
			Mark{At: trim.Right, Of: c.Break.ID, Break: c.Break, IsRight: true})
	}
	return marks
}

// Nearest returns the mark nearest to a place, the first of two as near, and how far that
// is. There is at least one mark.
func Nearest(marks []Mark, at unit.Length) (best Mark, away unit.Length) {
	best = marks[0]
	for _, m := range marks[1:] {
		if (at - m.At).Abs() < (at - best.At).Abs() {
			best = m
		}
	}
	return best, (at - best.At).Abs()
}

// Neighbours returns what is next to a place on either hand: the centre of an opening, the
// clear edge of a break, or else an end of the face. What is named is passed over, being
// in hand itself, and so is what stands at the very place.
func (f Face) Neighbours(at unit.Length, but plan.ID) (left, right Mark) {
	left, right = f.Ends()
	near := func(m Mark) {
		switch {
		case m.Of == but:
		case m.At < at && m.At > left.At:
			left = m
		case m.At > at && m.At < right.At:
			right = m
		}
	}
	for _, o := range f.Openings {
		near(Mark{At: o.At.Along, Of: o.ID})
	}
	for _, c := range f.Cuts {
		near(Mark{At: c.From, Of: c.Break.ID, Break: c.Break})
		near(Mark{At: c.To, Of: c.Break.ID, Break: c.Break, IsRight: true})
	}
	return left, right
}
