package fullsize

import (
	"maps"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// Mark is one height on the tape with the boxes that have it.
type Mark struct {
	At   unit.Length // above the subfloor
	Tags []string    // in order
}

// Marks lists the heights of the new boxes in the walls of a level, the lowest first: those of
// their centers and those of their bottoms.
func Marks(ix *index.Index, level *plan.Level) (centers, bottoms []Mark) {
	center, bottom := map[unit.Length][]string{}, map[unit.Length][]string{}
	for _, s := range frame.Sticks(ix, level) {
		center[s.Center+s.Floor] = append(center[s.Center+s.Floor], s.Openings...)
		bottom[s.Bottom+s.Floor] = append(bottom[s.Bottom+s.Floor], s.Openings...)
	}
	return inOrder(center), inOrder(bottom)
}

func inOrder(tags map[unit.Length][]string) (all []Mark) {
	for _, at := range slices.Sorted(maps.Keys(tags)) {
		slices.SortFunc(tags[at], plan.CompareTags)
		all = append(all, Mark{at, tags[at]})
	}
	return all
}

// Strip is a part of the tape as long as a page is wide. It is cut out, and pasted to the next
// where both have the same figure.
type Strip struct{ From, To unit.Length }

// Strips divides a tape that begins at the subfloor and reaches a little past the highest
// center into parts of a length at most, each a whole number of steps long and, where the tape
// allows it, none a snippet shorter than leastStrip.
func Strips(centers []Mark, long unit.Length, units unit.System) (all []Strip) {
	if len(centers) == 0 {
		return nil
	}
	step := Step(units)
	long = max(step, long/step*step)
	end := (centers[len(centers)-1].At/step + 2) * step
	least := (leastStrip + step - 1) / step * step
	for from := unit.Length(0); from < end; from = all[len(all)-1].To {
		to := min(end, from+long)
		if end-to > 0 && end-to < least && long >= 2*least {
			to = end - least
		}
		all = append(all, Strip{from, to})
	}
	return all
}

// leastStrip is how long a strip is at least: on a shorter one what its marks say has no room.
const leastStrip = 4 * unit.Inch

// Step returns the length between two figures of the tape: an inch, or ten millimeters.
func Step(units unit.System) unit.Length {
	if units == unit.Metric {
		return 10 * unit.Millimetre
	}
	return unit.Inch
}

// The lengths of ticks, in millimeters: at a figure, halfway, else.
const tickLong, tickHalf, tickShort = 5.0, 3.5, 2.0

// inchParts and metricParts are into how many parts ticks divide a step.
const inchParts, metricParts = 8, 10

// Ticks draws the ruler of a strip along a line that begins at a place of the page and runs to
// the right; its ticks stand above it.
func (s Strip) Ticks(k float64, at scene.Point, units unit.System, line scene.Pen) []scene.Item {
	step := Step(units)
	parts := unit.Length(inchParts)
	if units == unit.Metric {
		parts = metricParts
	}
	var ticks scene.Path
	for n := unit.Length(0); n*step/parts <= s.To-s.From; n++ {
		x := at.X + scene.MM(n*step/parts)*k
		tall := tickShort
		switch {
		case n%parts == 0:
			tall = tickLong
		case n%(parts/2) == 0:
			tall = tickHalf
		}
		ticks.MoveTo(scene.Point{X: x, Y: at.Y})
		ticks.LineTo(scene.Point{X: x, Y: at.Y - tall})
	}
	end := scene.Point{X: at.X + scene.MM(s.To-s.From)*k, Y: at.Y}
	return []scene.Item{
		scene.Stroke{Path: scene.LinePath(at, end), Pen: line},
		scene.Stroke{Path: ticks, Pen: line},
	}
}

// Holds reports whether a height is on the strip.
func (s Strip) Holds(at unit.Length) bool { return s.From <= at && at < s.To }
