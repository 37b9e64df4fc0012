package scene

import (
	"bytes"
	"compress/flate"
	"encoding/binary"
	"fmt"
	"io"
	"math"
	"sync"

	"studbay/render/glyph"
)

// Pack puts the items that a page has so far together, deflated, into a store below those still
// to come: a large set of pages then takes little memory. Paint shows the same as before, to
// the bit; Items no longer lists what is packed. A nil store is the memory.
func (s *Scene) Pack(in *Store) {
	if len(s.Items) == 0 {
		return
	}
	p := packers.Get().(*packer)
	defer packers.Put(p)
	p.text = p.text[:0]
	Paint(p, s.Items...)
	var out bytes.Buffer
	p.deflate.Reset(&out)
	p.deflate.Write(p.text) // a buffer takes all
	p.deflate.Close()
	s.packed, s.Items = append(s.packed, in.Keep(out.Bytes())), nil
}

// Clear takes all off a page.
func (s *Scene) Clear() { s.packed, s.Items = nil, nil }

// The marks that items are packed behind.
const (
	packedStroke byte = iota
	packedFill
	packedText
	packedBegin
	packedEnd
)

var _ Painter = (*packer)(nil)

// packer writes what is painted as bytes: a mark, then its fields in the order that unpacker
// reads them in.
type packer struct {
	text    []byte
	deflate *flate.Writer
}

var packers = sync.Pool{New: func() any {
	deflate, _ := flate.NewWriter(io.Discard, flate.BestSpeed) // a level that there is
	return &packer{deflate: deflate}
}}

func (p *packer) byte(b ...byte) { p.text = append(p.text, b...) }
func (p *packer) count(n int)    { p.text = binary.AppendUvarint(p.text, uint64(n)) }
func (p *packer) color(c Color)  { p.byte(c.R, c.G, c.B, c.A) }

func (p *packer) float(values ...float64) {
	for _, v := range values {
		p.text = binary.LittleEndian.AppendUint64(p.text, math.Float64bits(v))
	}
}

func (p *packer) string(s string) {
	p.count(len(s))
	p.text = append(p.text, s...)
}

func (p *packer) path(path Path) {
	p.count(len(path.ops))
	for _, op := range path.ops {
		p.byte(byte(op))
	}
	p.count(len(path.points))
	for _, q := range path.points {
		p.float(q.X, q.Y)
	}
}

// Stroke implements Painter.
func (p *packer) Stroke(path Path, pen Pen) {
	p.byte(packedStroke)
	p.path(path)
	p.float(pen.Width)
	p.color(pen.Color)
	p.count(len(pen.Dash))
	p.float(pen.Dash...)
	p.byte(byte(pen.Cap), byte(pen.Join))
}

// Fill implements Painter.
func (p *packer) Fill(path Path, c Color) {
	p.byte(packedFill)
	p.path(path)
	p.color(c)
}

// Text implements Painter.
func (p *packer) Text(r Run) {
	p.byte(packedText)
	p.float(r.At.X, r.At.Y, r.Size, r.Angle)
	p.string(r.Text)
	p.byte(byte(r.Weight), byte(r.Align), byte(r.VAlign))
	p.color(r.Color)
}

// Begin implements Painter.
func (p *packer) Begin(l Layer) {
	p.byte(packedBegin)
	p.string(l.Name)
	p.string(l.Link)
	if l.Clip == nil {
		p.count(0)
		return
	}
	p.count(1)
	p.float(l.Clip.Min.X, l.Clip.Min.Y, l.Clip.Max.X, l.Clip.Max.Y)
}

// End implements Painter.
func (p *packer) End() { p.byte(packedEnd) }

// Close implements Painter.
func (p *packer) Close() error { return nil }

// unpack puts what was packed on a painter. It panics where the bytes are not those of Pack:
// they never leave the program.
func unpack(packed []byte, to Painter) {
	text, err := io.ReadAll(flate.NewReader(bytes.NewReader(packed)))
	if err != nil {
		panic(fmt.Errorf("scene: unpacking: %w", err))
	}
	for u := (&unpacker{text}); len(u.text) > 0; {
		switch mark := u.byte(); mark {
		case packedStroke:
			path, pen := u.path(), Pen{Width: u.float(), Color: u.color()}
			for range u.count() {
				pen.Dash = append(pen.Dash, u.float())
			}
			pen.Cap, pen.Join = Cap(u.byte()), Join(u.byte())
			to.Stroke(path, pen)
		case packedFill:
			path := u.path()
			to.Fill(path, u.color())
		case packedText:
			to.Text(u.run())
		case packedBegin:
			to.Begin(u.layer())
		case packedEnd:
			to.End()
		default:
			panic(fmt.Errorf("scene: no item is packed as %d", mark))
		}
	}
}

// unpacker reads what packer wrote.
type unpacker struct{ text []byte }

func (u *unpacker) byte() byte {
	b := u.text[0]
	u.text = u.text[1:]
	return b
}

func (u *unpacker) count() int {
	n, size := binary.Uvarint(u.text)
	u.text = u.text[size:]
	return int(n)
}

func (u *unpacker) float() float64 {
	v := math.Float64frombits(binary.LittleEndian.Uint64(u.text))
	u.text = u.text[8:]
	return v
}

func (u *unpacker) point() Point {
	x := u.float()
	return Point{x, u.float()}
}

func (u *unpacker) color() Color {
	c := Color{R: u.text[0], G: u.text[1], B: u.text[2], A: u.text[3]}
	u.text = u.text[4:]
	return c
}

func (u *unpacker) string() string {
	n := u.count()
	s := string(u.text[:n])
	u.text = u.text[n:]
	return s
}

func (u *unpacker) path() (p Path) {
	p.ops = make([]Op, u.count())
	for i := range p.ops {
		p.ops[i] = Op(u.byte())
	}
	p.points = make([]Point, u.count())
	for i := range p.points {
		p.points[i] = u.point()
	}
	return p
}

func (u *unpacker) run() (r Run) {
	r.At, r.Size, r.Angle = u.point(), u.float(), u.float()
	r.Text = u.string()
	r.Weight, r.Align, r.VAlign = glyph.Weight(u.byte()), Align(u.byte()), VAlign(u.byte())
	r.Color = u.color()
	return r
}

func (u *unpacker) layer() (l Layer) {
	l.Name, l.Link = u.string(), u.string()
	if u.count() == 1 {
		from := u.point()
		l.Clip = &Rect{from, u.point()}
	}
	return l
}
