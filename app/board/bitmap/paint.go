package bitmap

import (
	"image"
	"sync"
	"sync/atomic"

	"studbay/render/scene"
)

// bandHeight is the rows one goroutine paints before it takes the next band.
const bandHeight = 96

// Paint paints a part of the picture onto the same part of dst, which it fills, with
// so many goroutines.
func (l *List) Paint(dst *image.RGBA, part image.Rectangle, workers int) {
	part = part.Intersect(dst.Rect)
	if part.Empty() {
		return
	}
	bands := (part.Dy() + bandHeight - 1) / bandHeight
	var next atomic.Int64
	work := func() {
		for {
			i := int(next.Add(1)) - 1
			if i >= bands {
				return
			}
			top := part.Min.Y + i*bandHeight
			l.paint(dst, image.Rect(part.Min.X, top, part.Max.X, min(part.Max.Y, top+bandHeight)))
		}
	}
	var all sync.WaitGroup
	for range min(workers, bands) - 1 {
		all.Go(work)
	}
	work()
	all.Wait()
}

// paint paints one band.
func (l *List) paint(dst *image.RGBA, band image.Rectangle) {
	fillBox(dst, band, l.paper)
	view := dst.SubImage(band).(*image.RGBA)
	for i := range l.steps {
		s := &l.steps[i]
		if !s.box.Overlaps(band) {
			continue
		}
		switch {
		case s.sprite != nil:
			s.sprite.draw(dst, s.at, band)
		case s.drawing != nil:
			s.drawing.Draw(view, band.Min, nil)
		default:
			fillBox(dst, s.box.Intersect(band), s.color)
		}
	}
}

// fillBox covers a box with an opaque colour.
func fillBox(dst *image.RGBA, box image.Rectangle, c scene.Color) {
	if box.Empty() {
		return
	}
	first := dst.Pix[dst.PixOffset(box.Min.X, box.Min.Y):][:4*box.Dx()]
	first[0], first[1], first[2], first[3] = c.R, c.G, c.B, 0xff
	for done := 4; done < len(first); done *= 2 {
		copy(first[done:], first[:done])
	}
	for y := box.Min.Y + 1; y < box.Max.Y; y++ {
		copy(dst.Pix[dst.PixOffset(box.Min.X, y):], first)
	}
}
