package scene

import "slices"

// Spread moves places apart to at least a gap, in their order, and keeps them between two
// ends where there is room for all.
func Spread(at []float64, gap, from, to float64) []float64 {
	out := slices.Clone(at)
	for i := range out {
		out[i] = max(out[i], from)
		if i > 0 {
			out[i] = max(out[i], out[i-1]+gap)
		}
	}
	for i := len(out) - 1; i >= 0; i-- {
		limit := to
		if i < len(out)-1 {
			limit = out[i+1] - gap
		}
		out[i] = min(out[i], limit)
	}
	return out
}
