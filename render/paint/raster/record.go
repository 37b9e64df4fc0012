// Package raster draws scene items into pixels, for picture files and for a board's
// sprites alike. It draws sharp-edged by coverage, text as outlines.
//
// A drawing is recorded once, in pixels, and may then be drawn part by part from
// several goroutines. A pixel comes out the same in whatever part it is drawn:
// every coordinate is first put on the grid of 1/64 pixel that gg works on, so nothing
// depends on where a part begins.
package raster

import (
	"image"
	"math"

	"studbay/render/scene"
)

var _ scene.Painter = (*Drawing)(nil)

// Drawing is items on their way to pixels. It takes items as a scene.Painter and is
// then read by Draw. Make one with New.
type Drawing struct {
	toPixels scene.Transform
	scale    float64
	ops      []op
	clips    []image.Rectangle // of the layers begun; the first is everything
	widest   float64           // pen, in pixels
	stamps   map[stampKey]*stamp
}

// op is one thing to draw, in pixels.
type op struct {
	box     image.Rectangle // of its ink, clip applied
	clip    image.Rectangle
	lines   []line     // on the 1/64 grid; of a run, none
	insides []inside   // of a fill of opaque ink
	pen     *scene.Pen // none for a fill
	color   scene.Color
	letters []placed   // of a run in ordinary size
	run     *scene.Run // placed in pixels, if larger
}

// line is one flattened part of a path.
type line struct {
	points []scene.Point
	closed bool
}

// everything is a clip that cuts nothing off.
var everything = image.Rect(math.MinInt32, math.MinInt32, math.MaxInt32, math.MaxInt32)

// New returns an empty drawing whose scene unit is scale pixels and whose scene
// origin is at a place in pixels.
func New(scale float64, at scene.Point) *Drawing {
	return &Drawing{
		toPixels: scene.Scaling(scale, at),
		scale:    scale,
		clips:    []image.Rectangle{everything},
		stamps:   map[stampKey]*stamp{},
	}
}

// Fill implements scene.Painter.
func (d *Drawing) Fill(p scene.Path, c scene.Color) {
	p = p.Placed(d.toPixels)
	o := op{lines: flatten(p), color: c}
	if c.A == 0xff {
		o.insides = insides(o.lines)
	}
	d.add(o, p.Bounds())
}

// Stroke implements scene.Painter.
func (d *Drawing) Stroke(p scene.Path, pen scene.Pen) {
	bounds := scene.Stroke{Path: p, Pen: pen}.Bounds()
	lines := flatten(p.Placed(d.toPixels))
	pen.Width *= d.scale
	if len(pen.Dash) > 0 {
		lines = dashed(lines, scaled(pen.Dash, d.scale))
	}
	d.widest = max(d.widest, pen.Width)
	for _, s := range strokes(lines, pen) {
		d.add(op{lines: s.lines, pen: s.pen, color: pen.Color}, bounds.Path().Placed(d.toPixels).Bounds())
	}
}

// Text implements scene.Painter.
func (d *Drawing) Text(r scene.Run) {
	r.At = d.toPixels.Apply(r.At)
	r.Size *= d.scale
	// Letters may lean out of the line's box, by a tenth of an em in ordinary text
	// and by more with stacked accents.
	o := op{color: r.Color}
	if r.Size > mostStamped {
		o.run = &r
	} else {
		o.letters = d.letters(&r)
	}
	d.add(o, r.Bounds().Expanded(r.Size/2))
}

func (d *Drawing) add(o op, bounds scene.Rect) {
	o.clip = d.clips[len(d.clips)-1]
	o.box = pixelsOver(bounds).Intersect(o.clip)
	if !o.box.Empty() && o.color.A > 0 && (len(o.lines)+len(o.letters) > 0 || o.run != nil) {
		d.ops = append(d.ops, o)
	}
}

// Begin implements scene.Painter. A clip is rounded to whole pixels.
func (d *Drawing) Begin(l scene.Layer) {
	clip := d.clips[len(d.clips)-1]
	if l.Clip != nil {
		lo, hi := d.toPixels.Apply(l.Clip.Min), d.toPixels.Apply(l.Clip.Max)
		clip = clip.Intersect(image.Rect(round(lo.X), round(lo.Y), round(hi.X), round(hi.Y)))
	}
	d.clips = append(d.clips, clip)
}

// End implements scene.Painter.
func (d *Drawing) End() { d.clips = d.clips[:len(d.clips)-1] }

// Close implements scene.Painter. It never fails.
func (d *Drawing) Close() error { return nil }

// pixelsOver returns the whole pixels that touch r, one more on each side.
func pixelsOver(r scene.Rect) image.Rectangle {
	return image.Rect(round(r.Min.X-1.5), round(r.Min.Y-1.5), round(r.Max.X+1.5), round(r.Max.Y+1.5))
}

// round is the nearest whole pixel, within what an image can hold.
func round(v float64) int {
	return int(math.Round(min(max(v, math.MinInt32), math.MaxInt32)))
}

func scaled(lengths []float64, k float64) []float64 {
	out := make([]float64, len(lengths))
	for i, l := range lengths {
		out[i] = l * k
	}
	return out
}
