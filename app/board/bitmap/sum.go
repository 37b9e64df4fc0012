package bitmap

import (
	"image"
	"math"
	"math/bits"

	"studbay/render"
	"studbay/render/scene"
)

// sum gathers what a piece looks like into 64 bits. Two pieces of one picture that
// look different have the same with a chance of one in 2^64 or so, and the worst that
// follows is a part of the board not painted anew until it is next moved.
type sum uint64

func newSum(p *render.Piece) sum {
	s := sum(0x9E3779B97F4A7C15)
	s.number(uint64(p.Layer))
	s.string(string(p.ID))
	return s
}

func (s *sum) number(v uint64) {
	hi, lo := bits.Mul64(uint64(*s)^v, 0xD6E8FEB86659FD93)
	*s = sum(hi ^ lo ^ bits.RotateLeft64(v, 29))
}

func (s *sum) float(v float64) { s.number(math.Float64bits(v)) }

func (s *sum) string(text string) {
	s.number(uint64(len(text)))
	for i := range len(text) {
		s.number(uint64(text[i]))
	}
}

func (s *sum) point(p scene.Point) {
	s.float(p.X)
	s.float(p.Y)
}

func (s *sum) rect(r scene.Rect) {
	s.point(r.Min)
	s.point(r.Max)
}

func (s *sum) color(c scene.Color) {
	s.number(uint64(c.R)<<24 | uint64(c.G)<<16 | uint64(c.B)<<8 | uint64(c.A))
}

func (s *sum) path(p scene.Path) {
	p.Each(func(op scene.Op, points []scene.Point) {
		s.number(uint64(op))
		for _, q := range points {
			s.point(q)
		}
	})
}

func (s *sum) pen(p scene.Pen) {
	s.float(p.Width)
	s.color(p.Color)
	s.number(uint64(p.Cap)<<8 | uint64(p.Join))
	for _, d := range p.Dash {
		s.float(d)
	}
}

func (s *sum) text(r scene.Run) {
	s.string(r.Text)
	s.point(r.At)
	s.float(r.Size)
	s.float(r.Angle)
	s.color(r.Color)
	s.number(uint64(r.Weight)<<16 | uint64(r.Align)<<8 | uint64(r.VAlign))
}

// of closes the sum with where the piece stands.
func (s *sum) of(box image.Rectangle) uint64 {
	s.number(uint64(uint32(box.Min.X))<<32 | uint64(uint32(box.Min.Y)))
	s.number(uint64(uint32(box.Max.X))<<32 | uint64(uint32(box.Max.Y)))
	return uint64(*s)
}
