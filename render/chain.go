package render

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// DimKind says what a dimension runs to.
type DimKind int

// The ends of dimensions.
const (
	DimNeighbour DimKind = iota // the nearest opening or edge of a break
	DimCorner                   // an end of the side, or a wall from a ceiling point
)

// Dim is one dimension of the thing in hand, from it to To. Length is exact along a
// side.
type Dim struct {
	From, To geom.Point
	Length   unit.Length
	Kind     DimKind
	About    plan.ID // the neighbour or side it runs to
}

// DimensionChain returns the dimensions of a place: on a face, to the nearest
// neighbour on either side and to both corners, left before right, the corner left
// out where nothing stands between; in a ceiling or floor, along both axes of the
// sheet to the nearest wall either way. What is in hand itself is named by skip.
func DimensionChain(ix *plan.Index, a plan.Anchor, skip plan.ID) []Dim {
	switch a.Part {
	case plan.PartFace:
		return faceChain(ix, a, skip)
	case plan.PartCeiling, plan.PartFloor:
		return flatChain(ix, a)
	}
	return nil
}

func faceChain(ix *plan.Index, a plan.Anchor, skip plan.ID) (dims []Dim) {
	ref, ok := ix.Side(a.Host)
	if !ok {
		return nil
	}
	line := ref.Line()
	frame, length := plan.FrameOf(line), line.Length()
	left, right := chainEnd{0, a.Host}, chainEnd{length, a.Host}
	near := func(at unit.Length, id plan.ID) {
		if at < a.Along && at > left.at {
			left = chainEnd{at, id}
		}
		if at > a.Along && at < right.at {
			right = chainEnd{at, id}
		}
	}
	for _, o := range ix.OpeningsOn(a.Host) {
		if o.ID != skip {
			near(o.At.Along, o.ID)
		}
	}
	for _, c := range ix.Cuts(a.Host) {
		if c.Break.ID != skip {
			near(c.From, c.Break.ID)
			near(c.To, c.Break.ID)
		}
	}
	dim := func(to chainEnd) Dim {
		kind := DimNeighbour
		if to.id == a.Host {
			kind = DimCorner
		}
		return Dim{frame.Point(a.Along, 0), frame.Point(to.at, 0), (a.Along - to.at).Abs(), kind, to.id}
	}
	dims = append(dims, dim(left), dim(right))
	for i, corner := range []chainEnd{{0, a.Host}, {length, a.Host}} {
		if dims[i].Kind == DimNeighbour {
			dims = append(dims, dim(corner))
		}
	}
	return dims
}

// chainEnd is where a dimension ends along a side.
type chainEnd struct {
	at unit.Length
	id plan.ID
}

// flatChain measures from a ceiling or floor point to the walls left, right, up and
// down the sheet.
func flatChain(ix *plan.Index, a plan.Anchor) (dims []Dim) {
	room := ix.RoomOf(a.Host)
	if room == nil {
		return nil
	}
	for _, way := range []geom.Point{{X: -1}, {X: 1}, {Y: -1}, {Y: 1}} {
		best := Dim{Length: -1}
		for i, s := range room.Sides {
			if away, ok := rayHit(a.At, way, room.Segment(i)); ok && (best.Length < 0 || away < best.Length) {
				to := a.At.Add(geom.Point{X: way.X * away, Y: way.Y * away})
				best = Dim{a.At, to, away, DimCorner, s.ID}
			}
		}
		if best.Length >= 0 {
			dims = append(dims, best)
		}
	}
	return dims
}

// rayHit returns how far from a point, along an axis, a segment lies; rounded once to
// the nearest nanometre where the segment slants.
func rayHit(from, way geom.Point, s geom.Segment) (unit.Length, bool) {
	if way.X == 0 { // turn the picture so that the ray runs along x
		swap := func(p geom.Point) geom.Point { return geom.Point{X: p.Y, Y: p.X} }
		from, way, s = swap(from), swap(way), geom.Segment{A: swap(s.A), B: swap(s.B)}
	}
	if s.A.Y == s.B.Y || from.Y < min(s.A.Y, s.B.Y) || from.Y > max(s.A.Y, s.B.Y) {
		return 0, false
	}
	share := (from.Y - s.A.Y).Millimetres() / (s.B.Y - s.A.Y).Millimetres()
	x := s.A.X + unit.FromMillimetres((s.B.X-s.A.X).Millimetres()*share)
	away := (x - from.X) * way.X
	return away, away >= 0
}
