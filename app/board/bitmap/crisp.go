package bitmap

import (
	"image"
	"math"

	"studbay/render/scene"
)

// ring is one closed part of a path of straight lines.
type ring []scene.Point

// rings returns the parts of a path, or false where it has a curve.
func rings(p scene.Path) (all []ring, ok bool) {
	ok = true
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			all = append(all, ring{points[0]})
		case scene.LineOp:
			all[len(all)-1] = append(all[len(all)-1], points[0])
		case scene.CubicOp:
			ok = false
		}
	})
	return all, ok
}

// upright reports whether a path is of straight lines along the axes alone, to within
// a hundredth of a pixel. A line that is closed counts its last edge.
func upright(p scene.Path) bool {
	yes, any := true, false
	var first, last scene.Point
	check := func(to scene.Point) {
		yes = yes && (math.Abs(to.X-last.X) < 0.01 || math.Abs(to.Y-last.Y) < 0.01)
		any, last = true, to
	}
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			first, last = points[0], points[0]
		case scene.LineOp:
			check(points[0])
		case scene.CubicOp:
			yes = false
		case scene.CloseOp:
			check(first)
		}
	})
	return yes && any
}

// moved returns a path of straight lines with each coordinate put elsewhere.
func moved(p scene.Path, to func(float64) float64) (out scene.Path) {
	at := func(q scene.Point) scene.Point { return scene.Point{X: to(q.X), Y: to(q.Y)} }
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			out.MoveTo(at(points[0]))
		case scene.LineOp:
			out.LineTo(at(points[0]))
		case scene.CloseOp:
			out.Close()
		}
	})
	return out
}

// crispStroke puts lines along the axes on whole pixels.
func crispStroke(p scene.Path, pen scene.Pen) (scene.Path, scene.Pen) {
	if !upright(p) {
		return p, pen
	}
	pen.Width = max(1, math.Round(pen.Width))
	if int(pen.Width)%2 == 0 {
		return moved(p, round), pen
	}
	return moved(p, func(v float64) float64 { return math.Floor(v) + 0.5 }), pen
}

func round(v float64) float64 { return math.Floor(v + 0.5) }

// rectangles cuts closed upright parts into boxes of whole pixels by the non-zero
// rule: band by band between the heights of corners.
func rectangles(all []ring) (boxes []image.Rectangle) {
	heights := map[int]bool{}
	for _, r := range all {
		for _, p := range r {
			heights[int(round(p.Y))] = true
		}
	}
	ys := sortedKeys(heights)
	for i := 1; i < len(ys); i++ {
		boxes = append(boxes, band(all, ys[i-1], ys[i])...)
	}
	return boxes
}

// band returns the boxes between two heights that no corner lies between.
func band(all []ring, top, bottom int) (boxes []image.Rectangle) {
	turns := map[int]int{} // x of an edge to how often it winds
	for _, r := range all {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			y0, y1, x := int(round(a.Y)), int(round(b.Y)), int(round(a.X))
			if y0 <= top && y1 >= bottom {
				turns[x]++
			}
			if y1 <= top && y0 >= bottom {
				turns[x]--
			}
		}
	}
	xs := make(map[int]bool, len(turns))
	for x := range turns {
		xs[x] = true
	}
	wound, from := 0, 0
	for _, x := range sortedKeys(xs) {
		if wound == 0 {
			from = x
		}
		if wound += turns[x]; wound == 0 && from < x {
			boxes = append(boxes, image.Rect(from, top, x, bottom))
		}
	}
	return boxes
}
