package draft

import (
	"math"

	"studbay/render"
	"studbay/render/scene"
)

// The reach of leader lines in bodies. A tag farther off is left out: a longer line
// is one nobody follows with the eye.
const (
	boardReach = 5.0
	sheetReach = 12.0
	farReach   = 40.0
)

// Lead places a label with a leader line: on rings round its body, in its room and
// crossing no body or text; on a sheet, failing that, wherever there is room in reach.
func (d *Drawing) Lead(l *Label) {
	if d.Medium.Kind == render.Board {
		d.ringSearch(l, boardReach, true, false)
		return
	}
	_ = d.ringSearch(l, sheetReach, true, false) ||
		d.ringSearch(l, sheetReach, false, false) ||
		d.ringSearch(l, farReach, false, true)
}

// bearings is how many ways each ring is tried.
const bearings = 24

// ringSearch tries rings outward. A leader line crosses no text ever, and no body of
// another noun unless it may.
func (d *Drawing) ringSearch(l *Label, reach float64, inRoom, overBodies bool) bool {
	w, h := TextSize(l.Run)
	middle := l.From.Middle()
	ways := bearingsOf(l.Into)
	for r := 1.3; r <= reach; r += 0.6 + r*0.04 {
		for _, way := range ways {
			at := middle.Add(way.Mul(r * d.Medium.Symbol)).Add(scene.Point{X: way.X * w / 2, Y: way.Y * h / 2})
			box := scene.RectAround(at, w, h)
			if inRoom && !l.Area.Holds(box) || !d.Medium.Shows(box.Expanded(edge)) || !d.Obstacles.IsFree(d.Padded(box)) {
				continue
			}
			from, to := leader(l.From, box, d.Medium.Pixel)
			if d.Obstacles.Crosses(from, to, l.ID, overBodies) {
				continue
			}
			d.Write(l, box, scene.Stroke{Path: scene.LinePath(from, to), Pen: d.leaderPen()})
			d.Obstacles.Line(from, to, l.ID)
			return true
		}
	}
	return false
}

// bearingsOf returns the ways a ring is tried: by turns to either side of the way into
// the room.
func bearingsOf(into scene.Point) (ways [bearings]scene.Point) {
	for i := range ways {
		turn := float64((i+1)/2) * 360 / bearings
		if i%2 == 1 {
			turn = -turn
		}
		ways[i] = scene.Direction(Heading(into) + turn)
	}
	return ways
}

func (d *Drawing) leaderPen() scene.Pen {
	return scene.Pen{Width: d.Medium.Pixel, Color: d.Theme.Muted}
}

// Heading returns a direction's angle in degrees, a ceiling's being down and right.
func Heading(into scene.Point) float64 {
	if into == (scene.Point{}) {
		return 45
	}
	return math.Atan2(into.Y, into.X) * 180 / math.Pi
}

// leader returns the line from the edge of a body to the edge of a text's box.
func leader(from, to scene.Rect, hair float64) (a, b scene.Point) {
	m := from.Middle()
	b = scene.Point{
		X: max(to.Min.X-hair, min(m.X, to.Max.X+hair)),
		Y: max(to.Min.Y-hair, min(m.Y, to.Max.Y+hair)),
	}
	return Leaving(from, m, b, 0), b
}

// Leaving returns where the way from the middle of a body toward a point leaves its
// box, and a hair beyond.
func Leaving(box scene.Rect, middle, toward scene.Point, hair float64) scene.Point {
	v := toward.Sub(middle)
	n := math.Hypot(v.X, v.Y)
	if n == 0 {
		return middle
	}
	half := max(box.Width(), box.Height())/2 + 1.5*hair
	return middle.Add(v.Mul(half / n))
}
