package raster

import "math"

// dashed cuts lines into the dashes of a pattern, in pixels. A pattern that is not
// longer than half a pixel in all leaves the lines whole, as the eye would.
func dashed(lines []line, pattern []float64) (out []line) {
	total := 0.0
	for _, d := range pattern {
		total += d
	}
	if !(total > 0.5) {
		return lines
	}
	for _, l := range lines {
		out = append(out, l.dashes(pattern)...)
	}
	return out
}

func (l line) dashes(pattern []float64) (out []line) {
	points := l.points
	if l.closed {
		points = append(points[:len(points):len(points)], points[0])
	}
	var dash line
	index, left := 0, pattern[0]
	for i := 1; i < len(points); i++ {
		from, to := points[i-1], points[i]
		for {
			length := math.Hypot(to.X-from.X, to.Y-from.Y)
			inked := index%2 == 0
			if inked && len(dash.points) == 0 {
				dash.to(from)
			}
			if length < left {
				left -= length
				if inked {
					dash.to(to)
				}
				break
			}
			if length > 0 {
				from = from.Add(to.Sub(from).Mul(left / length))
			}
			if inked {
				dash.to(from)
				out, dash = append(out, dash), line{}
			}
			index++
			left = pattern[index%len(pattern)]
		}
	}
	if len(dash.points) > 1 {
		out = append(out, dash)
	}
	return out
}
