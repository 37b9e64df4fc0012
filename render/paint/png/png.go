// Package png writes a scene as a PNG picture, true to scale: the file says how many
// pixels make a metre, so a viewer that heeds it prints a sheet at its size.
//
// The page is drawn and deflated in bands of rows by several workers, so a large
// sheet takes the memory of a few bands, never of the whole picture. The bytes do
// not depend on the number of workers.
package png

import (
	"context"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"image"
	"io"
	"runtime"

	"studbay/plan/unit"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// Options say how to draw. The zero value is 300 pixels an inch, a worker a core
// up to eight.
type Options struct {
	DPI      int                   // pixels an inch of paper; 0 means DefaultDPI
	Workers  int                   // bands drawn at once; 0 means one a core, up to eight
	Page, Of int                   // which page of how many it is, for PageOf; 0 means a picture by itself
	Progress func(done, total int) // called as bands are written, from one goroutine; may be nil
}

// DefaultDPI is the resolution where none is asked for: hairlines are one pixel.
const DefaultDPI = 300

// MaxSide is the largest width or height of a picture, in pixels. A band of that
// width takes 34 MB.
const MaxSide = 1 << 16

// bandHeight is how many rows a worker draws at a time: enough that each band
// deflates well and few shapes are worked out twice, few enough that bands are small
// beside the program. At 256 a large sheet takes 25 MB more and hardly less time.
const bandHeight = 128

// Size returns the width and height of a scene's picture in pixels. It fails where
// one is under a pixel or over MaxSide.
func Size(s *scene.Scene, dpi int) (image.Point, error) {
	side := func(l unit.Length) int { return int((l*unit.Length(dpi) + unit.Inch/2) / unit.Inch) }
	if dpi < 1 || dpi > MaxSide {
		return image.Point{}, fmt.Errorf("resolution of %d dpi: must be from 1 to %d", dpi, MaxSide)
	}
	if limit := MaxSide * unit.Inch / unit.Length(dpi); s.Width > limit || s.Height > limit {
		return image.Point{}, fmt.Errorf("page at %d dpi: over %d pixels wide or high", dpi, MaxSide)
	}
	size := image.Pt(side(s.Width), side(s.Height))
	if size.X < 1 || size.Y < 1 {
		return image.Point{}, fmt.Errorf("page of %v by %v pixels: nothing to draw", size.X, size.Y)
	}
	return size, nil
}

// Encode writes one page. It stops early with the context's error.
func Encode(ctx context.Context, w io.Writer, s *scene.Scene, o Options) error {
	if o.DPI == 0 {
		o.DPI = DefaultDPI
	}
	if o.Workers <= 0 {
		o.Workers = min(runtime.GOMAXPROCS(0), 8)
	}
	size, err := Size(s, o.DPI)
	if err != nil {
		return err
	}
	drawing := raster.New(float64(o.DPI)/25.4, scene.Point{})
	s.Paint(drawing)
	p := page{drawing, s.Background(), size}
	f := &file{w: w}
	f.begin(size, o.DPI)
	f.mark(o.Page, o.Of)
	bands := p.bands(ctx, o.Workers)
	for i := range bands.total {
		next, err := bands.next(i)
		if err != nil {
			return err
		}
		f.band(next, i == 0, i == bands.total-1)
		if f.err != nil {
			return bands.stop(f.err)
		}
		if o.Progress != nil {
			o.Progress(i+1, bands.total)
		}
	}
	f.chunk("IEND", nil)
	return f.err
}

const signature = "\x89PNG\r\n\x1a\n"

// file writes chunks and keeps its first error.
type file struct {
	w     io.Writer
	err   error
	adler uint32
}

func (f *file) begin(size image.Point, dpi int) {
	f.write([]byte(signature))
	head := binary.BigEndian.AppendUint32(nil, uint32(size.X))
	head = binary.BigEndian.AppendUint32(head, uint32(size.Y))
	f.chunk("IHDR", append(head, 8, 2, 0, 0, 0)) // 8 bits, RGB, deflate, filters by row, not interlaced
	perMetre := uint32((int64(dpi)*int64(unit.Metre) + int64(unit.Inch)/2) / int64(unit.Inch))
	phys := binary.BigEndian.AppendUint32(nil, perMetre)
	phys = binary.BigEndian.AppendUint32(phys, perMetre)
	f.chunk("pHYs", append(phys, 1)) // 1: the unit is the metre
}

// band writes one band as a chunk, within the zlib wrapping of RFC 1950 that all
// bands share.
func (f *file) band(s band, first, last bool) {
	var head, tail []byte
	if first {
		head, f.adler = []byte{0x78, 0x01}, 1
	}
	f.adler = joinAdler(f.adler, s.adler, s.length)
	if last {
		tail = binary.BigEndian.AppendUint32(nil, f.adler)
	}
	f.chunk("IDAT", head, s.deflated, tail)
}

func (f *file) chunk(kind string, parts ...[]byte) {
	length := 0
	sum := crc32.ChecksumIEEE([]byte(kind))
	for _, p := range parts {
		length += len(p)
		sum = crc32.Update(sum, crc32.IEEETable, p)
	}
	f.write(binary.BigEndian.AppendUint32(nil, uint32(length)))
	f.write([]byte(kind))
	for _, p := range parts {
		f.write(p)
	}
	f.write(binary.BigEndian.AppendUint32(nil, sum))
}

func (f *file) write(b []byte) {
	if f.err == nil {
		_, f.err = f.w.Write(b)
	}
}
