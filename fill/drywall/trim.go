package drywall

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// within is the outline of a ceiling in the coordinates of its board: x from its left, y up from
// its lower end.
func within(outline []geom.Point, box geom.Box) geom.Polygon {
	flipped := make(geom.Polygon, len(outline))
	for i, p := range outline {
		flipped[i] = geom.Point{X: p.X - box.Min.X, Y: box.Max.Y - p.Y}
	}
	return flipped
}

// trimmed returns what of a sheet lies in a room, and the rectangle about that: nil where all of
// the sheet does. It reports false where nothing does. Each edge of the sheet in turn cuts off what
// lies past it, which of a room with a notch may leave parts joined along an edge of the sheet.
func trimmed(room geom.Polygon, sheet frame.Rect) (outline geom.Polygon, about frame.Rect, ok bool) {
	cut := slices.Clone(room)
	for _, edge := range []struct {
		past func(geom.Point) unit.Length // above zero: outside
		on   func(a, b geom.Point) geom.Point
	}{
		{func(p geom.Point) unit.Length { return sheet.Left - p.X }, func(a, b geom.Point) geom.Point {
			return geom.Point{X: sheet.Left, Y: between(a.Y, b.Y, sheet.Left-a.X, b.X-a.X)}
		}},
		{func(p geom.Point) unit.Length { return p.X - sheet.Right }, func(a, b geom.Point) geom.Point {
			return geom.Point{X: sheet.Right, Y: between(a.Y, b.Y, sheet.Right-a.X, b.X-a.X)}
		}},
		{func(p geom.Point) unit.Length { return sheet.Bottom - p.Y }, func(a, b geom.Point) geom.Point {
			return geom.Point{X: between(a.X, b.X, sheet.Bottom-a.Y, b.Y-a.Y), Y: sheet.Bottom}
		}},
		{func(p geom.Point) unit.Length { return p.Y - sheet.Top }, func(a, b geom.Point) geom.Point {
			return geom.Point{X: between(a.X, b.X, sheet.Top-a.Y, b.Y-a.Y), Y: sheet.Top}
		}},
	} {
		var kept geom.Polygon
		for i, b := range cut {
			a := cut[(i+len(cut)-1)%len(cut)]
			if edge.past(a) > 0 != (edge.past(b) > 0) {
				kept = append(kept, edge.on(a, b))
			}
			if edge.past(b) <= 0 {
				kept = append(kept, b)
			}
		}
		cut = slices.Compact(kept)
	}
	if len(cut) < 3 || cut.Area() == (unit.Area{}) {
		return nil, frame.Rect{}, false
	}
	box := cut.Box()
	about = frame.Rect{Left: box.Min.X, Right: box.Max.X, Bottom: box.Min.Y, Top: box.Max.Y}
	if cut.Area() == box.Corners().Area() {
		return nil, about, true
	}
	return cut, about, true
}

// between returns where from a to b one is after so much of a way, to the nearest nanometre.
func between(a, b, done, of unit.Length) unit.Length {
	return a + unit.FromMillimetres((b-a).Millimetres()*(done.Millimetres()/of.Millimetres()))
}

// jointIn returns how much of a joint lies in a room, with board at both of its sides: one along a
// wall is none.
func jointIn(room geom.Polygon, joint geom.Segment) (sum unit.Length) {
	long := joint.Length()
	at := []unit.Length{0, long}
	for _, e := range room.Edges() {
		if x, ok := crossing(joint, e); ok {
			at = append(at, x)
		}
	}
	slices.SortFunc(at, func(a, b unit.Length) int { return cmp.Compare(a, b) })
	aside := geom.Point{X: beside}
	if joint.A.Y == joint.B.Y {
		aside = geom.Point{Y: beside}
	}
	for i := 1; i < len(at); i++ {
		middle := joint.At((at[i-1] + at[i]) / 2)
		if room.Contains(middle.Add(aside)) && room.Contains(middle.Sub(aside)) {
			sum += at[i] - at[i-1]
		}
	}
	return sum
}

// beside is how far from a joint board is looked for: less than any is cut to.
const beside = unit.Inch / 64

// crossing returns how far along a level or upright joint an edge meets its line.
func crossing(joint geom.Segment, edge geom.Segment) (along unit.Length, ok bool) {
	off := func(p geom.Point) unit.Length { return p.X - joint.A.X }
	way := func(p geom.Point) unit.Length { return (p.Y - joint.A.Y).Abs() }
	if joint.A.Y == joint.B.Y {
		off, way = func(p geom.Point) unit.Length { return p.Y - joint.A.Y }, func(p geom.Point) unit.Length { return p.X - joint.A.X }
	}
	a, b := off(edge.A), off(edge.B)
	if a == b || a > 0 && b > 0 || a < 0 && b < 0 {
		return 0, false
	}
	at := between(way(edge.A), way(edge.B), -a, b-a)
	return at, 0 < at && at < joint.Length()
}
