package raster

import (
	"image"
	"image/color"
	"image/draw"
	"sync"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// mostStamped is the size in pixels up to which letters are stamped. Larger ones are
// few and far from alike.
const mostStamped = 64

// phases is how many places within a pixel, each way, a stamp is made for. A letter is
// then at most an eighth of a pixel off, which the eye does not see.
const phases = 4

// stamp is the ink of a letter, laid on wherever the letter stands in the same way
// within a pixel.
type stamp struct {
	stampKey
	box  image.Rectangle // of the ink, about the whole pixel the letter begins in
	once sync.Once
	mask *image.Alpha
}

// stampKey tells stamps apart.
type stampKey struct {
	weight glyph.Weight
	letter rune
	size   float64
	angle  float64
	phase  image.Point // of phases
}

// placed is a stamp and the whole pixel where its letter begins.
type placed struct {
	*stamp
	at image.Point
}

// letters returns the letters of a run in pixels that have ink.
func (d *Drawing) letters(r *scene.Run) (out []placed) {
	key := stampKey{weight: r.Weight, size: r.Size, angle: r.Angle}
	pen := pen(r)
	for _, letter := range r.Text {
		g := glyph.Of(r.Weight, letter)
		if len(g.Outline) > 0 {
			x, y := round(pen.At.X*phases), round(pen.At.Y*phases)
			key.letter, key.phase = letter, image.Pt(x&(phases-1), y&(phases-1))
			out = append(out, placed{d.stamp(key), image.Pt(x-key.phase.X, y-key.phase.Y).Div(phases)})
		}
		pen.At = pen.At.Add(pen.X.Mul(g.Advance))
	}
	return out
}

// pen returns what takes ems from a run's baseline into pixels.
func pen(r *scene.Run) scene.Transform {
	t := scene.Turning(r.Angle, r.Origin())
	t.X, t.Y = t.X.Mul(r.Size), t.Y.Mul(r.Size)
	return t
}

func (d *Drawing) stamp(k stampKey) *stamp {
	if s := d.stamps[k]; s != nil {
		return s
	}
	s := &stamp{stampKey: k}
	s.box = inkBox(glyph.Of(k.weight, k.letter), s.pen())
	s.box.Max.X = min(s.box.Max.X, s.box.Min.X+pressSide)
	s.box.Max.Y = min(s.box.Max.Y, s.box.Min.Y+pressSide)
	d.stamps[k] = s
	return s
}

func (s *stamp) pen() scene.Transform {
	at := scene.Point{X: float64(s.phase.X), Y: float64(s.phase.Y)}.Mul(1.0 / phases)
	return pen(&scene.Run{At: at, Size: s.size, Angle: s.angle})
}

// inkBox returns the pixels that a letter may touch.
func inkBox(g *glyph.Glyph, t scene.Transform) image.Rectangle {
	return pixelsOver(scene.Rect{Min: scene.Point(g.Min), Max: scene.Point(g.Max)}.Path().Placed(t).Bounds())
}

// pressSide is the width and height of what stamps are made on. Letters of ordinary size
// fit by far, as stacked accents may not.
const pressSide = 2 * mostStamped

// presses are blank canvases to make stamps on.
var presses = sync.Pool{New: func() any {
	return newCanvas(image.NewRGBA(image.Rect(0, 0, pressSide, pressSide)), image.Point{}, leastMargin)
}}

// make draws the stamp, when it is first wanted.
func (s *stamp) make() {
	c := presses.Get().(*canvas)
	defer presses.Put(c)
	c.moveTo(s.box.Min)
	c.clipTo(everything)
	c.gg.SetColor(color.Black)
	c.letter(glyph.Of(s.weight, s.letter), s.pen())
	c.gg.Fill()
	s.mask = image.NewAlpha(s.box)
	for y := range s.box.Dy() {
		row := c.dst.Pix[y*c.dst.Stride:][:4*s.mask.Stride]
		for x := range s.mask.Stride {
			s.mask.Pix[y*s.mask.Stride+x] = row[4*x+3]
		}
		clear(row)
	}
}

// lay puts letters onto the part in hand.
func (c *canvas) lay(letters []placed, ink scene.Color) {
	uniform := image.NewUniform(color.NRGBA(ink))
	at := image.Pt(round(c.origin.X), round(c.origin.Y))
	for _, l := range letters {
		if box := l.box.Add(l.at); box.Overlaps(c.part) {
			l.once.Do(l.make)
			draw.DrawMask(c.view, box.Sub(at), uniform, image.Point{}, l.mask, l.box.Min, draw.Over)
		}
	}
}
