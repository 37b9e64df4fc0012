package png

import (
	"bytes"
	"image"

	"github.com/klauspost/compress/flate"

	"studbay/render/paint/raster"
)

// band is rows on their way into the file.
type band struct {
	deflated []byte // raw deflate, ending on a byte
	adler    uint32 // of the bytes before deflating
	length   int    // how many those were
}

// packer deflates bands. Each stands by itself, so that many packers may work at
// once: no band looks back into the one before it, neither through the deflate
// window nor through its row filter.
type packer struct {
	flate  *flate.Writer
	filter *filter
}

func newPacker(width int) *packer {
	w, err := flate.NewWriter(nil, 1)
	if err != nil {
		panic("png: deflate level 1: " + err.Error())
	}
	return &packer{flate: w, filter: newFilter(width)}
}

// pack deflates the rows of im as RGB. Colours are opaque. The last band ends the
// deflate stream, the others end on a byte and leave it open.
func (p *packer) pack(im *image.RGBA, edges *raster.Edges, last bool) (band, error) {
	var out bytes.Buffer
	p.flate.Reset(&out)
	p.filter.begin()
	height := im.Rect.Dy()
	for y := range height {
		p.filter.next(im, edges, y)
		if _, err := p.flate.Write(p.filter.row); err != nil {
			return band{}, err
		}
	}
	end := p.flate.Flush
	if last {
		end = p.flate.Close
	}
	err := end()
	return band{out.Bytes(), p.filter.sum(), height * len(p.filter.row)}, err
}

// joinAdler returns the Adler-32 of two runs of bytes laid end to end, from
// their sums and the length of the second. RFC 1950 defines the sum: the low half
// adds the bytes, the high half adds the low half after each.
func joinAdler(first, second uint32, length int) uint32 {
	a1, b1 := uint64(first&0xffff), uint64(first>>16)
	a2, b2 := uint64(second&0xffff), uint64(second>>16)
	n := uint64(length) % mod
	a := (a1 + a2 + mod - 1) % mod
	b := (b1 + b2 + n*(a1+mod-1)) % mod
	return uint32(b<<16 | a)
}
