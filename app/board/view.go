package board

import (
	"fmt"
	"image"
	"math"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/paper"
)

// View takes the plan to the screen and back. The screen is in device pixels from
// the board's left upper corner. The origin of the plan stands on a whole pixel, so
// that a bitmap moved with it stays sharp.
type View struct {
	Zoom float64     // pixels a millimetre of building
	At   image.Point // where the origin of the plan stands
}

// The limits of Zoom on a plain screen: a foot is not under a pixel, an inch not over
// a hundred.
const (
	leastZoom = 1 / 304.8
	mostZoom  = 100 / 25.4
)

// Screen returns where a point of the plan stands, in pixels.
func (v View) Screen(p geom.Point) (x, y float64) {
	return float64(v.At.X) + p.X.Millimetres()*v.Zoom, float64(v.At.Y) + p.Y.Millimetres()*v.Zoom
}

// Plan returns the point of the plan at a place on the screen.
func (v View) Plan(x, y float64) geom.Point {
	return geom.Point{
		X: unit.FromMillimetres((x - float64(v.At.X)) / v.Zoom),
		Y: unit.FromMillimetres((y - float64(v.At.Y)) / v.Zoom),
	}
}

// Length returns the length of building that so many pixels show.
func (v View) Length(pixels float64) unit.Length { return unit.FromMillimetres(pixels / v.Zoom) }

// Panned returns the view moved by whole pixels.
func (v View) Panned(by image.Point) View {
	v.At = v.At.Add(by)
	return v
}

// Zoomed returns the view at another zoom, in which what stands at a place on the
// screen stays there, to the nearest pixel. Density is device pixels per unit of the
// window; the zoom is kept within limits.
func (v View) Zoomed(zoom, density, x, y float64) View {
	zoom = max(leastZoom*density, min(mostZoom*density, zoom))
	k := zoom / v.Zoom
	return View{Zoom: zoom, At: image.Point{
		X: int(math.Round(x - (x-float64(v.At.X))*k)),
		Y: int(math.Round(y - (y-float64(v.At.Y))*k)),
	}}
}

// fitMargin is the part of the screen left free round what is fitted into it.
const fitMargin = 0.06

// Fitted returns the view that shows a box of the plan in the middle of a part of
// the screen, as large as goes, but no larger than most pixels a millimetre.
func Fitted(box geom.Box, on image.Rectangle, most, density float64) View {
	w, h := max(1, box.Width().Millimetres()), max(1, box.Height().Millimetres())
	room := 1 - 2*fitMargin
	zoom := min(float64(on.Dx())*room/w, float64(on.Dy())*room/h, most)
	zoom = max(leastZoom*density, min(mostZoom*density, zoom))
	return View{Zoom: zoom}.Centred(box.Center(), on)
}

// How far inside the screen a box must lie to count as in view, and how far inside it is
// brought where it does not, in units.
const (
	seenMargin   = 12
	revealMargin = 40
)

// Revealed returns the view moved by as little as shows a box of the plan wholly in a
// part of the screen, and not at all where it is in view; where the box is too large for
// that, it is fitted in.
func (v View) Revealed(box geom.Box, on image.Rectangle, density float64) View {
	left, top := v.Screen(box.Min)
	right, bottom := v.Screen(box.Max)
	seen := on.Inset(int(seenMargin * density))
	if left >= float64(seen.Min.X) && right <= float64(seen.Max.X) && top >= float64(seen.Min.Y) && bottom <= float64(seen.Max.Y) {
		return v
	}
	to := on.Inset(int(revealMargin * density))
	if right-left > float64(to.Dx()) || bottom-top > float64(to.Dy()) {
		return Fitted(box, on, v.Zoom, density)
	}
	return v.Panned(image.Pt(into(left, right, to.Min.X, to.Max.X), into(top, bottom, to.Min.Y, to.Max.Y)))
}

// into returns by how many whole pixels a span must move to lie within another.
func into(from, to float64, least, most int) int {
	switch {
	case from < float64(least):
		return int(math.Ceil(float64(least) - from))
	case to > float64(most):
		return int(math.Floor(float64(most) - to))
	}
	return 0
}

// Centred returns the view with a point of the plan in the middle of a part of the
// screen.
func (v View) Centred(p geom.Point, on image.Rectangle) View {
	v.At = image.Point{}
	x, y := v.Screen(p)
	v.At = image.Point{
		X: int(math.Round(float64(on.Min.X+on.Max.X)/2 - x)),
		Y: int(math.Round(float64(on.Min.Y+on.Max.Y)/2 - y)),
	}
	return v
}

// screenInch is the pixels of a plain screen taken for an inch of paper: CSS Values 4,
// absolute lengths.
const screenInch = 96.0

// scaleOf returns the length on paper over that of building at a zoom.
func scaleOf(zoom, density float64) float64 { return zoom / density * 25.4 / screenInch }

// zoomOf is the inverse of scaleOf.
func zoomOf(scale, density float64) float64 { return scale * density * screenInch / 25.4 }

// namedScale is a scale that drawings are made to.
type namedScale struct {
	ratio float64 // paper over building
	name  string  // inches to the foot, or as all say it
}

// said is what the scale is called.
func (n namedScale) said(v words.Voice) string {
	switch {
	case v.System == unit.Metric:
		return n.name
	case n.ratio == 1:
		return v.Say(words.New("scale.full", "full size"))
	}
	return paper.PerFoot(v, n.name)
}

// The scales of drawings in each system, the larger last. The first in usual is what
// a percentage is of.
var (
	inchScales = []namedScale{
		{1.0 / 192, "1/16"}, {1.0 / 128, "3/32"}, {1.0 / 96, "1/8"},
		{1.0 / 64, "3/16"}, {1.0 / 48, "1/4"}, {1.0 / 32, "3/8"},
		{1.0 / 24, "1/2"}, {1.0 / 16, "3/4"}, {1.0 / 12, "1"},
		{1.0 / 8, "1-1/2"}, {1.0 / 4, "3"}, {ratio: 1},
	}
	metreScales = []namedScale{
		{1.0 / 200, "1:200"}, {1.0 / 100, "1:100"}, {1.0 / 50, "1:50"}, {1.0 / 25, "1:25"},
		{1.0 / 20, "1:20"}, {1.0 / 10, "1:10"}, {1.0 / 5, "1:5"}, {1, "1:1"},
	}
	usual = map[unit.System]namedScale{
		unit.Imperial: {1.0 / 48, "1/4"},
		unit.Metric:   {1.0 / 50, "1:50"},
	}
)

func scalesOf(s unit.System) []namedScale {
	if s == unit.Metric {
		return metreScales
	}
	return inchScales
}

// scaleTolerance is how near a named scale must be to be named.
const scaleTolerance = 0.005

// scaleText says a scale: a named one, or so many percent of the usual one.
func scaleText(ratio float64, voice words.Voice) string {
	for _, s := range scalesOf(voice.System) {
		if math.Abs(ratio/s.ratio-1) < scaleTolerance {
			return s.said(voice)
		}
	}
	u := usual[voice.System]
	return voice.Say(words.New("board.percent", "{0} % of {1}", fmt.Sprintf("%.0f", 100*ratio/u.ratio), u.said(voice)))
}
