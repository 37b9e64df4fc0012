package bitmap

import "image"

// mostBoxes is how many boxes are painted anew one by one; more are joined.
const mostBoxes = 12

// Dirty returns the boxes within a frame in which two lists differ, old and new
// places alike. Of another paper all of the frame differs.
func Dirty(old, now *List, frame image.Rectangle) (boxes []image.Rectangle) {
	if old == nil || old.paper != now.paper {
		return []image.Rectangle{frame}
	}
	count := map[uint64]int{}
	for _, e := range old.entries {
		count[e.sum]++
	}
	for _, e := range now.entries {
		if count[e.sum]--; count[e.sum] < 0 {
			boxes = joined(boxes, e.box.Intersect(frame))
			count[e.sum] = 0
		}
	}
	for _, e := range old.entries {
		if count[e.sum] > 0 {
			boxes = joined(boxes, e.box.Intersect(frame))
			count[e.sum]--
		}
	}
	return boxes
}

// joined adds a box to others. Boxes that overlap, or are too many, become one.
func joined(boxes []image.Rectangle, b image.Rectangle) []image.Rectangle {
	if b.Empty() {
		return boxes
	}
	for i := 0; i < len(boxes); {
		if !boxes[i].Overlaps(b) && len(boxes) < mostBoxes {
			i++
			continue
		}
		b = b.Union(boxes[i])
		boxes[i] = boxes[len(boxes)-1]
		boxes = boxes[:len(boxes)-1]
		i = 0
	}
	return append(boxes, b)
}
