package board

import (
	"image"
	"math"
	"strconv"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// TapeWidth is how wide the tapes along the top and left edges are, in units.
const TapeWidth = 22

// ruling is how a tape is marked: a label at each step, short marks between.
type ruling struct{ label, mark unit.Length }

// The rulings of each system, the finest first.
var (
	inchRulings = []ruling{
		{unit.Inch, unit.Inch / 8}, {3 * unit.Inch, unit.Inch / 2}, {6 * unit.Inch, unit.Inch}, {unit.Foot, 3 * unit.Inch},
		{2 * unit.Foot, 6 * unit.Inch}, {4 * unit.Foot, unit.Foot}, {8 * unit.Foot, 2 * unit.Foot},
		{20 * unit.Foot, 5 * unit.Foot}, {50 * unit.Foot, 10 * unit.Foot}, {100 * unit.Foot, 20 * unit.Foot},
		{500 * unit.Foot, 100 * unit.Foot},
	}
	metreRulings = []ruling{
		{2 * unit.Centimetre, 5 * unit.Millimetre}, {5 * unit.Centimetre, unit.Centimetre}, {10 * unit.Centimetre, unit.Centimetre},
		{20 * unit.Centimetre, 5 * unit.Centimetre}, {50 * unit.Centimetre, 10 * unit.Centimetre},
		{unit.Metre, 25 * unit.Centimetre}, {2 * unit.Metre, 50 * unit.Centimetre}, {5 * unit.Metre, unit.Metre},
		{10 * unit.Metre, 2 * unit.Metre}, {50 * unit.Metre, 10 * unit.Metre}, {200 * unit.Metre, 50 * unit.Metre},
	}
)

// leastLabelGap is the least distance between two labels, in units.
const leastLabelGap = 62

// rulingAt returns how to mark a tape at so many units a millimetre of building.
func rulingAt(zoom float64, s unit.System) ruling {
	all := inchRulings
	if s == unit.Metric {
		all = metreRulings
	}
	for _, r := range all {
		if r.label.Millimetres()*zoom >= leastLabelGap {
			return r
		}
	}
	return all[len(all)-1]
}

// tapeLabel says a place on a tape.
func tapeLabel(l unit.Length, s unit.System) string {
	if s == unit.Metric {
		return strconv.FormatFloat(l.Millimetres()/1000, 'f', -1, 64) + " m"
	}
	if l%unit.Foot == 0 {
		return strconv.FormatInt(int64(l/unit.Foot), 10) + "'"
	}
	return l.FeetInches(8)
}

// tape draws the part of a tape that lies beside a frame. Along is 0 for the tape on
// top and 1 for that on the left; both are of the frame's pixels.
func tape(r request, along int) *image.RGBA {
	d := r.density
	wide := int(math.Round(TapeWidth * d))
	size, from := image.Pt(r.frame.Dx(), wide), r.frame.Min.X
	if along == 1 {
		size, from = image.Pt(wide, r.frame.Dy()), r.frame.Min.Y
	}
	im := image.NewRGBA(image.Rectangle{Max: size})
	cover(im, r.pic.Theme.Paper)
	rule := rulingAt(r.zoom/d, r.pic.Voice.System)
	var items []scene.Item
	length := float64(max(size.X, size.Y))
	first := int64(math.Floor(float64(from) / r.zoom / rule.mark.Millimetres()))
	each := int64(rule.label / rule.mark)
	for n := first; ; n++ {
		at := rule.mark * unit.Length(n)
		x := math.Floor(at.Millimetres()*r.zoom+0.5) - float64(from)
		if x > length {
			break
		}
		items = append(items, tick(r.pic.Theme, x, float64(wide), d, along, n%each == 0))
		if n%each == 0 {
			isUpright := along == 1 && rule.label < shortLabels[r.pic.Voice.System]
			items = append(items, tickLabel(r.pic.Theme, tapeLabel(at, r.pic.Voice.System), x, float64(wide), d, along, isUpright))
		}
	}
	items = append(items, edge(r.pic.Theme, length, float64(wide), d, along))
	raster.Items(im, 1, scene.Point{}, items...)
	return im
}

// turned returns a point so far along a tape and across it.
func turned(x, y float64, along int) scene.Point {
	if along == 1 {
		return scene.Point{X: y, Y: x}
	}
	return scene.Point{X: x, Y: y}
}

func tick(t render.Theme, x, wide, d float64, along int, isLong bool) scene.Item {
	length := 4 * d
	if isLong {
		length = 8 * d
	}
	width := math.Max(1, math.Round(d))
	path := scene.LinePath(turned(x+width/2, wide-length, along), turned(x+width/2, wide, along))
	return scene.Stroke{Path: path, Pen: scene.Pen{Width: width, Color: t.Muted}}
}

// shortLabels is the least step between labels that are short enough to be written
// across the left tape.
var shortLabels = map[unit.System]unit.Length{unit.Imperial: unit.Foot, unit.Metric: unit.Metre}

func tickLabel(t render.Theme, text string, x, wide, d float64, along int, isUpright bool) scene.Item {
	r := scene.Run{Text: text, Size: 9.5 * d, Color: t.Muted, VAlign: scene.Middle}
	switch {
	case along == 0:
		r.At = scene.Point{X: math.Round(x + 4*d), Y: math.Round(wide * 0.38)}
	case isUpright:
		// Read from below, as a tape held upright is.
		r.At, r.Angle = scene.Point{X: math.Round(wide * 0.38), Y: math.Round(x - 4*d)}, -90
	default:
		r.At = scene.Point{X: math.Round(2 * d), Y: math.Round(x - 7*d)}
	}
	return r
}

func edge(t render.Theme, length, wide, d float64, along int) scene.Item {
	width := math.Max(1, math.Round(d))
	path := scene.LinePath(turned(0, wide-width/2, along), turned(length, wide-width/2, along))
	return scene.Stroke{Path: path, Pen: scene.Pen{Width: width, Color: t.Line}}
}

// cover fills an image.
func cover(im *image.RGBA, c scene.Color) {
	for i := 0; i < len(im.Pix); i += 4 {
		im.Pix[i], im.Pix[i+1], im.Pix[i+2], im.Pix[i+3] = c.R, c.G, c.B, 0xff
	}
}

// pointerMark is the small triangle on a tape that shows where the pointer is.
func pointerMark(t render.Theme, d float64, along int) *image.RGBA {
	side := int(math.Round(7 * d))
	im := image.NewRGBA(image.Rect(0, 0, side, side))
	s := float64(side)
	p := scene.Polygon(turned(0, 0, along), turned(s, 0, along), turned(s/2, s*0.85, along))
	raster.Items(im, 1, scene.Point{}, scene.Fill{Path: p, Color: t.Accent})
	return im
}

// box returns the part of the plan that a frame of pixels shows.
func (r request) box() geom.Box {
	v := View{Zoom: r.zoom}
	return geom.Box{
		Min: v.Plan(float64(r.frame.Min.X), float64(r.frame.Min.Y)),
		Max: v.Plan(float64(r.frame.Max.X), float64(r.frame.Max.Y)),
	}
}
