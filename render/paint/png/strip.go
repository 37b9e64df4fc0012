package png

import (
	"bytes"
	"hash/adler32"
	"image"

	"github.com/klauspost/compress/flate"
)

// strip is a band of rows on its way into the file.
type strip struct {
	deflated []byte // raw deflate, ending on a byte
	adler    uint32 // of the bytes before deflating
	length   int    // how many those were
}

// packer deflates strips. Each stands by itself, so that many packers may work at
// once: no strip looks back into the one before it, neither through the deflate
// window nor through its row filter.
type packer struct {
	flate *flate.Writer
	row   []byte
}

func newPacker(width int) *packer {
	w, err := flate.NewWriter(nil, 1)
	if err != nil {
		panic("png: deflate level 1: " + err.Error())
	}
	return &packer{flate: w, row: make([]byte, 1+3*width)}
}

const (
	filterNone = 0
	filterUp   = 2 // each byte less the one above it
)

// pack deflates the rows of im as RGB. Colours are opaque. The last strip ends the
// deflate stream, the others end on a byte and leave it open.
func (p *packer) pack(im *image.RGBA, last bool) (strip, error) {
	var out bytes.Buffer
	p.flate.Reset(&out)
	sum := adler32.New()
	height := im.Rect.Dy()
	for y := range height {
		p.filter(im, y)
		sum.Write(p.row)
		if _, err := p.flate.Write(p.row); err != nil {
			return strip{}, err
		}
	}
	end := p.flate.Flush
	if last {
		end = p.flate.Close
	}
	err := end()
	return strip{out.Bytes(), sum.Sum32(), height * len(p.row)}, err
}

// filter sets row to row y of im with its filter byte before it.
func (p *packer) filter(im *image.RGBA, y int) {
	width := im.Rect.Dx()
	at := y * im.Stride
	pix := im.Pix[at : at+4*width]
	row := p.row[1:]
	if y == 0 {
		p.row[0] = filterNone
		for x := range width {
			s, d := pix[4*x:4*x+4:4*x+4], row[3*x:3*x+3:3*x+3]
			d[0], d[1], d[2] = s[0], s[1], s[2]
		}
		return
	}
	p.row[0] = filterUp
	above := im.Pix[at-im.Stride : at-im.Stride+4*width]
	for x := range width {
		s, u, d := pix[4*x:4*x+4:4*x+4], above[4*x:4*x+4:4*x+4], row[3*x:3*x+3:3*x+3]
		d[0], d[1], d[2] = s[0]-u[0], s[1]-u[1], s[2]-u[2]
	}
}

// joinAdler returns the Adler-32 of two stretches of bytes laid end to end, from
// their sums and the length of the second. RFC 1950 defines the sum: the low half
// adds the bytes, the high half adds the low half after each.
func joinAdler(first, second uint32, length int) uint32 {
	const mod = 65521
	a1, b1 := uint64(first&0xffff), uint64(first>>16)
	a2, b2 := uint64(second&0xffff), uint64(second>>16)
	n := uint64(length) % mod
	a := (a1 + a2 + mod - 1) % mod
	b := (b1 + b2 + n*(a1+mod-1)) % mod
	return uint32(b<<16 | a)
}
