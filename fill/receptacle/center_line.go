package receptacle

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// mostCorners is up to how many corners a hall is divided into arms; no house has one of more.
const mostCorners = 40

// centreLine returns how long a room is as a hall: the longest way along the center lines of
// its arms, each to the wall that ends it. One with walls aslant has the length of a hall of
// even width with its area and perimeter.
func centreLine(r *plan.Room) unit.Length {
	outline := r.Outline()
	if len(outline) > mostCorners || slices.ContainsFunc(outline.Edges(), func(e geom.Segment) bool { return e.A.X != e.B.X && e.A.Y != e.B.Y }) {
		return evenWidth(outline)
	}
	return longestWay(withoutNooks(armsOf(outline)))
}

// evenWidth returns the length c of a hall of even width w, so that c × w is its area and
// 2 × (c + w) its perimeter.
func evenWidth(outline geom.Polygon) unit.Length {
	half := outline.Perimeter() / 2 // c + w
	square := half.Times(half).Sub(outline.Area().Mul(4))
	if square.Sign() < 0 {
		return half / 2 // rounder than a square
	}
	return (half + square.Sqrt()) / 2
}

// arm is a stretch of a hall of even width: a rectangle within its outline that no larger one
// encloses, seen the way it is longer. Of a square there are two.
type arm struct {
	along, across geom.Interval
	isDown        bool // it runs down the sheet
}

func (a arm) length() unit.Length { return a.along.Length() }

func (a arm) width() unit.Length { return a.across.Length() }

// twiceMiddle is twice the place of its center line.
func (a arm) twiceMiddle() unit.Length { return a.across.From + a.across.To }

// crosses reports whether the center lines of two arms meet.
func (a arm) crosses(b arm) bool {
	meets := func(i geom.Interval, twice unit.Length) bool { return 2*i.From <= twice && twice <= 2*i.To }
	return a.isDown != b.isDown && meets(a.along, b.twiceMiddle()) && meets(b.along, a.twiceMiddle())
}

// widens reports whether an arm is but a wider part of another that runs beside it for all
// its length.
func (a arm) widens(b arm) bool {
	shared := min(a.across.To, b.across.To) - max(a.across.From, b.across.From)
	return a != b && a.isDown == b.isDown && b.along.From <= a.along.From && a.along.To <= b.along.To && 2*shared > a.width()
}

// isShared reports whether wider arms beside one another have all of an arm between them, as
// those on both sides of a bend have what one sees straight through.
func (a arm) isShared(arms []arm) bool {
	at := a.along.From
	for range arms {
		for _, b := range arms {
			isWider := a.isDown == b.isDown && b.width() > a.width() && b.across.From <= a.across.From && a.across.To <= b.across.To
			if isWider && b.along.From <= at {
				at = max(at, b.along.To)
			}
		}
	}
	return at >= a.along.To
}

// armsOf divides an outline of right angles.
func armsOf(outline geom.Polygon) (arms []arm) {
	var xs, ys []unit.Length
	for _, p := range outline {
		xs, ys = append(xs, p.X), append(ys, p.Y)
	}
	slices.Sort(xs)
	slices.Sort(ys)
	xs, ys = slices.Compact(xs), slices.Compact(ys)
	// filled counts cells of the outline left of and above each crossing of the grid.
	filled := make([][]int, len(xs))
	for i := range xs {
		filled[i] = make([]int, len(ys))
		for j := range ys {
			if i == 0 || j == 0 {
				continue
			}
			filled[i][j] = filled[i-1][j] + filled[i][j-1] - filled[i-1][j-1]
			if outline.InteriorContains(geom.Point{X: (xs[i-1] + xs[i]) / 2, Y: (ys[j-1] + ys[j]) / 2}) {
				filled[i][j]++
			}
		}
	}
	isWithin := func(left, right, top, bottom int) bool {
		return left >= 0 && top >= 0 && right < len(xs) && bottom < len(ys) &&
			filled[right][bottom]-filled[left][bottom]-filled[right][top]+filled[left][top] == (right-left)*(bottom-top)
	}
	for left := range xs {
		for right := left + 1; right < len(xs); right++ {
			for top := range ys {
				for bottom := top + 1; bottom < len(ys); bottom++ {
					isLargest := !isWithin(left-1, right, top, bottom) && !isWithin(left, right+1, top, bottom) &&
						!isWithin(left, right, top-1, bottom) && !isWithin(left, right, top, bottom+1)
					if isLargest && isWithin(left, right, top, bottom) {
						arms = append(arms, seenLong(geom.Interval{From: xs[left], To: xs[right]}, geom.Interval{From: ys[top], To: ys[bottom]})...)
					}
				}
			}
		}
	}
	return arms
}

// seenLong returns a rectangle as an arm.
func seenLong(across, down geom.Interval) (arms []arm) {
	if across.Length() >= down.Length() {
		arms = append(arms, arm{along: across, across: down})
	}
	if down.Length() >= across.Length() {
		arms = append(arms, arm{along: down, across: across, isDown: true})
	}
	return arms
}

// ends returns where an arm ends by itself: past all that crosses it by half its width or
// more. Nearer it is the corner or the crossing itself.
func (a arm) ends(arms []arm) (ends []unit.Length) {
	first, last := a.along.To, a.along.From
	for _, b := range arms {
		if a.crosses(b) {
			first, last = min(first, b.across.From), max(last, b.across.To)
		}
	}
	if 2*(first-a.along.From) >= a.width() {
		ends = append(ends, a.along.From)
	}
	if 2*(a.along.To-last) >= a.width() {
		ends = append(ends, a.along.To)
	}
	return ends
}

// withoutNooks leaves out what is no arm: a wider part of one, what others share, and one that
// ends nowhere by itself and joins no two others.
func withoutNooks(arms []arm) []arm {
	slices.SortStableFunc(arms, func(a, b arm) int { return cmp.Compare(a.length(), b.length()) })
	isWide := func(a arm) bool { return slices.ContainsFunc(arms, a.widens) }
	isNook := func(a arm) bool {
		crossed := 0
		for _, b := range arms {
			if a.crosses(b) {
				crossed++
			}
		}
		return crossed == 1 && len(a.ends(arms)) == 0
	}
	isShared := func(a arm) bool { return a.isShared(arms) }
	for _, isNone := range []func(arm) bool{isWide, isShared, isNook} {
		for i := slices.IndexFunc(arms, isNone); i >= 0; i = slices.IndexFunc(arms, isNone) {
			arms = slices.Delete(slices.Clone(arms), i, i+1)
		}
	}
	return arms
}

// stop is a place on the center line of an arm: where it ends or meets that of another.
type stop struct {
	arm   int
	twice unit.Length // along it
	isEnd bool
}

// longestWay returns the longest of the shortest ways between two ends of arms, or an arm by
// itself where none is longer.
func longestWay(arms []arm) (longest unit.Length) {
	stops, away := waysOf(arms)
	for k := range stops {
		for i := range stops {
			for j := range stops {
				away[i][j] = min(away[i][j], away[i][k]+away[k][j])
			}
		}
	}
	for _, a := range arms {
		longest = max(longest, a.length())
	}
	for i, a := range stops {
		for j, b := range stops {
			if a.isEnd && b.isEnd && away[i][j] < farAway {
				longest = max(longest, away[i][j]/2)
			}
		}
	}
	return longest
}

// farAway is farther than any way; twice it is a length still.
const farAway = unit.Length(1) << 61

// waysOf returns the stops of arms, and twice how far each is from each other along one arm.
func waysOf(arms []arm) (stops []stop, away [][]unit.Length) {
	meet := map[[2]int]bool{} // stops that are one place
	for i, a := range arms {
		for _, at := range a.ends(arms) {
			stops = append(stops, stop{i, 2 * at, true})
		}
		for j, b := range arms[:i] {
			if a.crosses(b) {
				meet[[2]int{len(stops), len(stops) + 1}] = true
				stops = append(stops, stop{i, b.twiceMiddle(), false}, stop{j, a.twiceMiddle(), false})
			}
		}
	}
	away = make([][]unit.Length, len(stops))
	for i, a := range stops {
		for j, b := range stops {
			far := farAway
			switch {
			case a.arm == b.arm:
				far = (a.twice - b.twice).Abs()
			case meet[[2]int{min(i, j), max(i, j)}]:
				far = 0
			}
			away[i] = append(away[i], far)
		}
	}
	return stops, away
}
