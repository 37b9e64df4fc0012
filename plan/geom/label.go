package geom

import (
	"math"

	"studbay/plan/unit"
)

// labelGrid is the number of cells across a polygon in which a place for its name is
// looked for, and labelRounds how often the cell around the best is divided again.
const (
	labelGrid   = 24
	labelRounds = 3
)

// LabelPoint returns a point of p with room around it, for its name: the centroid
// where that is nearly as far from every edge as any place found on a grid, else that
// place. It is the same for the same polygon, lies inside or on the boundary of p, and
// is for display only. P must not be empty.
func (p Polygon) LabelPoint() Point {
	best, room := p.gridPoint()
	centre := p.Centroid()
	if p.Contains(centre) && p.clearance(centre) >= 0.9*room {
		return centre
	}
	if p.Contains(best) {
		return best
	}
	return p[0]
}

// Centroid returns the centre of mass of p, to within float rounding; it may lie
// outside of a bent polygon. Of one without area it is the centre of its box.
func (p Polygon) Centroid() Point {
	var area, x, y float64
	for i := 1; i+1 < len(p); i++ {
		ux, uy := millimetres(p[i].Sub(p[0]))
		vx, vy := millimetres(p[i+1].Sub(p[0]))
		part := ux*vy - uy*vx
		area += part
		x += part * (ux + vx) / 3
		y += part * (uy + vy) / 3
	}
	if area == 0 {
		return p.Box().Center()
	}
	return p[0].Add(Point{unit.FromMillimetres(x / area), unit.FromMillimetres(y / area)})
}

func millimetres(v Point) (x, y float64) { return v.X.Millimetres(), v.Y.Millimetres() }

// gridPoint returns the point of a grid inside p that is farthest from every edge, and
// that distance in millimetres, refined round by round.
func (p Polygon) gridPoint() (best Point, room float64) {
	best, room = p[0], -1
	area := p.Box()
	for range labelRounds {
		best, room = p.bestIn(area, best, room)
		margin := Point{area.Width() / labelGrid, area.Height() / labelGrid}
		area = Box{best.Sub(margin), best.Add(margin)}
	}
	return best, room
}

func (p Polygon) bestIn(area Box, best Point, room float64) (Point, float64) {
	for row := range unit.Length(labelGrid) {
		for column := range unit.Length(labelGrid) {
			q := area.Min.Add(Point{
				area.Width() / (2 * labelGrid) * (2*column + 1),
				area.Height() / (2 * labelGrid) * (2*row + 1),
			})
			if distance := p.clearance(q); distance > room && p.Contains(q) {
				best, room = q, distance
			}
		}
	}
	return best, room
}

// clearance returns the distance from q to the nearest edge in millimetres.
func (p Polygon) clearance(q Point) float64 {
	least := math.Inf(1)
	for i := range p {
		least = min(least, distanceFloat(p.Edge(i), q))
	}
	return least
}

func distanceFloat(s Segment, q Point) float64 {
	dx, dy := millimetres(s.Vector())
	vx, vy := millimetres(q.Sub(s.A))
	along := 0.0
	if square := dx*dx + dy*dy; square > 0 {
		along = max(0, min(1, (vx*dx+vy*dy)/square))
	}
	return math.Hypot(vx-along*dx, vy-along*dy)
}
