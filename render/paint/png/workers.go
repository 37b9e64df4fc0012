package png

import (
	"context"
	"image"
	"image/color"
	"image/draw"
	"sync"

	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// page is what workers draw bands of.
type page struct {
	drawing *raster.Drawing
	paper   scene.Color
	size    image.Point
}

// result is a packed band, or why there is none.
type result struct {
	band
	err error
}

// bands hands out the bands of a page in order, while workers draw those ahead.
type bands struct {
	total   int
	results []chan result
	free    chan struct{} // a token for each band that may be ahead of the file
	cancel  context.CancelFunc
	workers sync.WaitGroup
}

// bands starts the workers. The caller takes all bands by next, or stops.
func (p page) bands(ctx context.Context, workers int) *bands {
	ctx, cancel := context.WithCancel(ctx)
	total := (p.size.Y + bandHeight - 1) / bandHeight
	workers = min(workers, total)
	s := &bands{total: total, results: make([]chan result, total), cancel: cancel}
	s.free = make(chan struct{}, 4*workers)
	jobs := make(chan int)
	for i := range s.results {
		s.results[i] = make(chan result, 1)
	}
	for range workers {
		s.workers.Go(func() { p.work(ctx, jobs, s.results) })
	}
	s.workers.Go(func() {
		defer close(jobs)
		for i := range total {
			select {
			case s.free <- struct{}{}:
			case <-ctx.Done():
			}
			jobs <- i
		}
	})
	return s
}

// next waits for band i. After its error, or the last band, no worker is left.
func (s *bands) next(i int) (band, error) {
	r := <-s.results[i]
	if r.err != nil {
		return band{}, s.stop(r.err)
	}
	<-s.free // a band that was drawn had its token
	if i == s.total-1 {
		return r.band, s.stop(nil)
	}
	return r.band, nil
}

// stop ends the workers, waits for them and returns err.
func (s *bands) stop(err error) error {
	s.cancel()
	s.workers.Wait()
	return err
}

// work draws and packs bands until there are no more. Once the context is over it
// answers every band with its error.
func (p page) work(ctx context.Context, jobs <-chan int, results []chan result) {
	b := &board{page: p, packer: newPacker(p.size.X)}
	b.im = image.NewRGBA(image.Rect(0, 0, p.size.X, min(bandHeight, p.size.Y)))
	for i := range jobs {
		results[i] <- b.draw(ctx, i)
	}
}

// board is what a worker draws its bands on, one after another.
type board struct {
	page
	im     *image.RGBA
	edges  raster.Edges
	packer *packer
}

func (b *board) draw(ctx context.Context, i int) result {
	if err := ctx.Err(); err != nil {
		return result{err: err}
	}
	top := image.Pt(0, i*bandHeight)
	size := image.Pt(b.size.X, min(bandHeight, b.size.Y-top.Y))
	part := b.im.SubImage(image.Rectangle{Max: size}).(*image.RGBA)
	draw.Draw(part, part.Rect, image.NewUniform(color.NRGBA(b.paper)), image.Point{}, draw.Src)
	b.drawing.Draw(part, top, func() bool { return ctx.Err() != nil })
	if err := ctx.Err(); err != nil {
		return result{err: err}
	}
	b.drawing.Edges(&b.edges, top, size)
	s, err := b.packer.pack(part, &b.edges, top.Y+size.Y == b.size.Y)
	return result{s, err}
}
