package flat

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Footprint is what an opening takes of a ceiling or a floor, square to the sheet.
type Footprint struct {
	Center  geom.Point
	Area    geom.Box
	IsRound bool
}

// FootprintOf returns the outside of an opening in a ceiling or a floor.
func FootprintOf(o *plan.Opening) Footprint {
	front, at := frame.FrontOf(o), o.At.At
	lo := geom.Point{X: at.X - front.Width/2, Y: at.Y - front.Height/2}
	hi := geom.Point{X: lo.X + front.Width, Y: lo.Y + front.Height}
	return Footprint{at, geom.BoxOf(lo, hi), front.IsRound}
}

// Radius returns that of a round one.
func (f Footprint) Radius() unit.Length { return f.Area.Width() / 2 }

// Meets reports whether two overlap; edge to edge they do not.
func (f Footprint) Meets(g Footprint) bool {
	switch {
	case f.IsRound && g.IsRound:
		return f.Center.Distance(g.Center) < f.Radius()+g.Radius()
	case f.IsRound:
		return f.Center.Distance(nearestIn(g.Area, f.Center)) < f.Radius()
	case g.IsRound:
		return g.Meets(f)
	}
	return isAcross(f.Area, g.Area)
}

// IsCut reports whether a line runs through it; along its edge it does not.
func (f Footprint) IsCut(line geom.Segment) bool {
	if f.IsRound {
		_, away := line.Nearest(f.Center)
		return away < f.Radius()
	}
	var sides [3]bool // corners to the one hand of the line, on it, to the other
	for _, c := range f.Area.Corners() {
		sides[geom.Orientation(line.A, line.B, c)+1] = true
	}
	return sides[0] && sides[2] && isAcross(f.Area, line.Box())
}

// isAcross reports whether two boxes, of which one may be flat, have more in common than
// edges.
func isAcross(a, b geom.Box) bool {
	return a.Min.X < b.Max.X && b.Min.X < a.Max.X && a.Min.Y < b.Max.Y && b.Min.Y < a.Max.Y
}

func nearestIn(area geom.Box, to geom.Point) geom.Point {
	return geom.Point{X: min(max(to.X, area.Min.X), area.Max.X), Y: min(max(to.Y, area.Min.Y), area.Max.Y)}
}
