package draft

import (
	"math"

	"studbay/render/scene"
)

// Arrow draws a line from one point to another with a head at the second, so long at most. It
// is nothing between two points that are one.
func Arrow(a, b scene.Point, head float64, pen scene.Pen) []scene.Item {
	way := b.Sub(a)
	long := math.Hypot(way.X, way.Y)
	if long == 0 {
		return nil
	}
	along := way.Mul(1 / long)
	head = min(head, long/2)
	foot, side := b.Sub(along.Mul(head)), along.Turned().Mul(0.4*head)
	return []scene.Item{
		scene.Stroke{Path: scene.LinePath(a, b), Pen: pen},
		scene.Stroke{Path: scene.LinePath(foot.Add(side), b), Pen: pen},
		scene.Stroke{Path: scene.LinePath(foot.Sub(side), b), Pen: pen},
	}
}
