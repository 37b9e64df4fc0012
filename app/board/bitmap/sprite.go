package bitmap

import (
	"hash/fnv"
	"image"

	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// sprite is a small picture kept for many uses, cut into runs so that what is clear
// costs nothing and what is opaque is copied.
type sprite struct {
	box  image.Rectangle // about the place it is put at
	pix  []uint8         // RGBA, premultiplied, rows of box
	runs []run           // row by row
	rows []int           // where each row begins in runs, and the end
	sum  uint64          // of the pixels
}

// run is neighbouring pixels of one row that are all opaque or all partly clear.
type run struct {
	x, n   int // from the left of the box
	opaque bool
}

// newSprite draws items whose place is at.
func newSprite(items []scene.Item, at scene.Point) *sprite {
	box := around(scene.Bounds(items...).Moved(at.Mul(-1)), 2)
	for _, it := range items {
		if r, ok := it.(scene.Run); ok {
			box = box.Union(around(r.Bounds().Expanded(r.Size/2).Moved(at.Mul(-1)), 2))
		}
	}
	im := image.NewRGBA(image.Rectangle{Max: box.Size()})
	from := scene.Point{X: float64(-box.Min.X), Y: float64(-box.Min.Y)}
	raster.Items(im, 1, from.Sub(at), items...)
	return cut(im, box)
}

// cut finds the runs of a picture.
func cut(im *image.RGBA, box image.Rectangle) *sprite {
	s := &sprite{box: box, pix: im.Pix}
	w := box.Dx()
	for y := range box.Dy() {
		s.rows = append(s.rows, len(s.runs))
		row := im.Pix[y*im.Stride : y*im.Stride+4*w]
		for x := 0; x < w; {
			a := row[4*x+3]
			if a == 0 {
				x++
				continue
			}
			from := x
			for x < w && row[4*x+3] != 0 && (row[4*x+3] == 0xff) == (a == 0xff) {
				x++
			}
			s.runs = append(s.runs, run{from, x - from, a == 0xff})
		}
	}
	s.rows = append(s.rows, len(s.runs))
	h := fnv.New64a()
	h.Write(s.pix)
	s.sum = h.Sum64()
	return s
}

// draw puts the sprite at a place of dst, no further than clip.
func (s *sprite) draw(dst *image.RGBA, at image.Point, clip image.Rectangle) {
	box := s.box.Add(at)
	for y := max(box.Min.Y, clip.Min.Y); y < min(box.Max.Y, clip.Max.Y); y++ {
		row := y - box.Min.Y
		for _, r := range s.runs[s.rows[row]:s.rows[row+1]] {
			from := max(box.Min.X+r.x, clip.Min.X)
			to := min(box.Min.X+r.x+r.n, clip.Max.X)
			if from >= to {
				continue
			}
			src := s.pix[4*(row*s.box.Dx()+from-box.Min.X):][:4*(to-from)]
			out := dst.Pix[dst.PixOffset(from, y):][:4*(to-from)]
			if r.opaque {
				copy(out, src)
				continue
			}
			over(out, src)
		}
	}
}

// over lays premultiplied pixels over opaque ones.
func over(dst, src []uint8) {
	for i := 0; i+3 < len(src); i += 4 {
		clear := 255 - uint32(src[i+3])
		dst[i] = src[i] + uint8((uint32(dst[i])*clear+127)/255)
		dst[i+1] = src[i+1] + uint8((uint32(dst[i+1])*clear+127)/255)
		dst[i+2] = src[i+2] + uint8((uint32(dst[i+2])*clear+127)/255)
		dst[i+3] = 255
	}
}
