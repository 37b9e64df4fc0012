package paint_test

import (
	"image"
	"image/draw"
	"io"
	"runtime"
	"sync"
	"testing"

	"github.com/klauspost/compress/flate"

	"studbay/render/paint/png"
	"studbay/render/scene"
)

// plainBand is how many rows are packed at a time: as many as ours are.
const plainBand = 128

// blankPlainly writes a blank page as an encoder does that knows nothing of what is
// drawn: every row is held against the one above it and deflated, by a worker a core and
// with the same deflate as ours. It is what any drawing must cost where no row is passed
// over, and so a limit that does not fall as ours gets better at passing over.
func blankPlainly(b *testing.B, page *scene.Scene, dpi int) {
	b.Helper()
	size, err := png.Size(page, dpi)
	if err != nil {
		b.Fatal(err)
	}
	var workers sync.WaitGroup
	bands := make(chan int)
	for range min(runtime.GOMAXPROCS(0), 8) {
		workers.Go(func() {
			p := newPlainPacker(size.X)
			for height := range bands {
				p.pack(height)
			}
		})
	}
	for y := 0; y < size.Y; y += plainBand {
		bands <- min(plainBand, size.Y-y)
	}
	close(bands)
	workers.Wait()
}

// plainPacker packs blank bands.
type plainPacker struct {
	im    *image.RGBA
	row   []byte
	flate *flate.Writer
}

func newPlainPacker(width int) *plainPacker {
	w, err := flate.NewWriter(io.Discard, 1)
	if err != nil {
		panic("deflate level 1: " + err.Error())
	}
	return &plainPacker{image.NewRGBA(image.Rect(0, 0, width, plainBand)), make([]byte, 1+3*width), w}
}

func (p *plainPacker) pack(height int) {
	draw.Draw(p.im, p.im.Rect, image.White, image.Point{}, draw.Src)
	above := make([]byte, p.im.Stride)
	for y := range height {
		at := p.im.Pix[y*p.im.Stride:][:p.im.Stride]
		for x := range p.im.Rect.Dx() {
			s, u, d := at[4*x:4*x+3:4*x+3], above[4*x:4*x+3:4*x+3], p.row[1+3*x:4+3*x:4+3*x]
			d[0], d[1], d[2] = s[0]-u[0], s[1]-u[1], s[2]-u[2]
		}
		above = at
		if _, err := p.flate.Write(p.row); err != nil {
			panic("deflate: " + err.Error())
		}
	}
	if err := p.flate.Flush(); err != nil {
		panic("deflate: " + err.Error())
	}
}
