package png

import (
	"image"
	"math/bits"

	"studbay/render/paint/raster"
)

const (
	filterNone = 0
	filterUp   = 2 // each byte less the one above it
)

// span is how many pixels are held at once against those above. Most of a page is as
// the row above it, and where it has no edge it is not even held against it.
const span = raster.TileWidth

// filter turns rows of RGBA into rows of RGB less the row above, and sums them up.
type filter struct {
	row   []byte   // the filter's byte and the pixels
	inked []int    // where in row the spans begin that are not all zero
	black []byte   // a row to hold the first against
	every []uint64 // every tile of a row, as raster.Edges has them
	low   uint64   // half of the Adler-32 of RFC 1950: 1 and all bytes
	high  uint64   // the other half: the first half after each byte
	until int      // how much of row is summed up
}

// mod is the modulus of both halves. A row cannot make them overflow before they are
// divided.
const mod = 65521

func newFilter(width int) *filter {
	f := &filter{row: make([]byte, 1+3*width), black: make([]byte, 4*width)}
	tiles := (width + span - 1) / span
	f.every = make([]uint64, (tiles+63)/64)
	for i := range tiles {
		f.every[i/64] |= 1 << (i % 64)
	}
	return f
}

// begin makes ready for the first row of a band.
func (f *filter) begin() { f.low, f.high = 1, 0 }

// sum returns the Adler-32 of all rows since the band began.
func (f *filter) sum() uint32 { return uint32(f.high<<16 | f.low) }

// next sets row to row y of im with its filter byte before it. The first row is less
// nothing, as a band does not look back.
func (f *filter) next(im *image.RGBA, edges *raster.Edges, y int) {
	at, long := y*im.Stride, 4*im.Rect.Dx()
	kind, above, tiles, others := byte(filterNone), f.black, f.every, f.every
	if y > 0 {
		kind, above = filterUp, im.Pix[at-im.Stride:at-im.Stride+long]
		tiles, others = edges.Row(y), edges.Row(y-1)
	}
	for _, from := range f.inked {
		clear(f.row[from:min(from+3*span, len(f.row))])
	}
	f.inked, f.until = f.inked[:0], 0
	f.row[0] = kind
	f.add(0, 1)
	for i := range tiles {
		f.less(im.Pix[at:at+long], above, 64*i, tiles[i]|others[i])
	}
	f.add(len(f.row), len(f.row))
	f.low, f.high = f.low%mod, f.high%mod
}

// less sets the pixels of row, which is zero, to the difference of two rows, in the
// tiles of a word from one on.
func (f *filter) less(pix, above []byte, first int, tiles uint64) {
	const step = 4 * span
	for ; tiles != 0; tiles &= tiles - 1 {
		tile := first + bits.TrailingZeros64(tiles)
		at := tile * step
		if at+step > len(pix) {
			f.span(tile*span, pix[at:], above[at:])
			return
		}
		if [step]byte(pix[at:at+step]) != [step]byte(above[at:at+step]) {
			f.span(tile*span, pix[at:at+step], above[at:at+step])
		}
	}
}

// span sets the pixels from one on.
func (f *filter) span(pixel int, pix, above []byte) {
	from, n := 1+3*pixel, len(pix)/4
	row := f.row[from : from+3*n]
	for x := range n {
		s, u, d := pix[4*x:4*x+4:4*x+4], above[4*x:4*x+4:4*x+4], row[3*x:3*x+3:3*x+3]
		d[0], d[1], d[2] = s[0]-u[0], s[1]-u[1], s[2]-u[2]
	}
	f.inked = append(f.inked, from)
	f.add(from, from+3*n)
}

// add takes a part of row into the sum, and the zeros before it that it has not.
func (f *filter) add(from, to int) {
	low := f.low
	high := f.high + low*uint64(from-f.until)
	for _, b := range f.row[from:to] {
		low += uint64(b)
		high += low
	}
	f.low, f.high, f.until = low, high, to
}
