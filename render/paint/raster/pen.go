package raster

import (
	"math"
	"slices"

	"studbay/render/scene"
)

// stroke is lines as gg is to draw them.
type stroke struct {
	lines []line
	pen   *scene.Pen // none where the lines are filled
}

// strokes says how gg draws lines with a pen, width and lines in pixels.
func strokes(lines []line, pen scene.Pen) []stroke {
	lines = slices.DeleteFunc(lines, func(l line) bool { return len(l.points) < 2 })
	if pen.Cap == scene.RoundCap {
		return roundEnded(lines, pen)
	}
	for i, l := range lines {
		lines[i] = l.spaced()
		if l.closed {
			lines[i] = lines[i].overlapped(pen.Width)
		}
	}
	return []stroke{{lines, &pen}}
}

// near reports whether gg would pass over b after a: its joins misbehave on shorter
// segments. Dropping them here keeps a line's ends, and keeps a line from vanishing.
func near(a, b scene.Point) bool {
	return math.Abs(a.X-b.X)+math.Abs(a.Y-b.Y) <= 8.0/grid
}

// shortest is the length of a segment that gg surely takes, in whatever direction.
const shortest = 0.15

// spaced returns the line of two or more points without those too near another. What
// is all within such a distance becomes a segment of the shortest length.
func (l line) spaced() line {
	last := len(l.points) - 1
	end := l.points[last]
	if l.closed {
		end = l.points[0]
	}
	kept := []scene.Point{l.points[0]}
	for _, p := range l.points[1:] {
		if !near(kept[len(kept)-1], p) {
			kept = append(kept, p)
		}
	}
	for len(kept) > 1 && near(kept[len(kept)-1], end) {
		kept = kept[:len(kept)-1]
	}
	switch {
	case len(kept) == 1 && (l.closed || near(kept[0], end)):
		kept = append(kept, toward(kept[0], l.points[1], shortest))
	case !l.closed:
		kept = append(kept, end)
	}
	return line{points: kept, closed: l.closed}
}

// toward returns the point of the grid that lies about a distance from a on the way to
// b, up to slack more. gg rounds lengths down to the grid where it works out how far a
// pen reaches to the sides, so a short segment may be a tenth too wide: of the points at
// hand this is the one whose distance is least above the grid's.
func toward(a, b scene.Point, distance float64) (best scene.Point) {
	way := b.Sub(a)
	way = way.Mul(1 / math.Hypot(way.X, way.Y))
	least := math.Inf(1)
	for more := 0.0; more <= slack; more += 1.0 / grid {
		p := onGrid(a.Add(way.Mul(distance + more)))
		long := math.Hypot(p.X-a.X, p.Y-a.Y) * grid
		if wide := long/math.Floor(long) - 1; wide < least {
			best, least = p, wide
		}
	}
	return best
}

const slack = 10.0 / grid

// turnback returns a place on the way from a to b, as far as a pen goes where it only
// wants to turn. Both edges of that part are inked twice, which darkens them: it is
// short. The grid moves its end by up to 0.7/64 pixel sideways and so turns the pen a
// little; it is long enough to cover the gap that a wide pen leaves by that.
func turnback(a, b scene.Point, width float64) scene.Point {
	way := wayBack(width)
	if math.Hypot(b.X-a.X, b.Y-a.Y) < way+slack+shortest {
		return b // what is left of the segment would be too short for gg
	}
	return toward(a, b, way)
}

func wayBack(width float64) float64 { return max(shortest, 0.08*math.Sqrt(width)) }

// overlapped closes the line and runs on a little along its first segment, so that the
// corner between has no notch.
func (l line) overlapped(width float64) line {
	a, b := l.points[0], l.points[1]
	return line{points: append(l.points[:len(l.points):len(l.points)], a, turnback(a, b, width))}
}
