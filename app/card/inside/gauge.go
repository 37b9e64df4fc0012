package inside

import (
	"studbay/app/look"
	"studbay/fill/box"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// The picture of the box, in units.
const (
	gaugeWidth  = 128
	gaugeHeight = 152
)

// Gauge is the picture of what is in a box, to scale of volume: bands by kind of
// allowance, the brim as a dashed line, and what spills over it in plain sight.
// Whether the box passes is decided in package fill, exactly; this only draws.
type Gauge struct {
	*look.Picture
	result box.Result
	voice  words.Voice
}

// NewGauge makes the picture of a working.
func NewGauge(r box.Result, v words.Voice) *Gauge {
	g := &Gauge{result: r, voice: v}
	g.Picture = look.NewPicture(gaugeWidth, gaugeHeight, g.draw)
	return g
}

func (g *Gauge) draw(w, h float64, p *render.Theme) []scene.Item {
	d := gaugeDrawing{gauge: g, theme: p, wide: w, high: h}
	d.measure()
	d.vessel()
	d.bands()
	d.brim()
	return d.items
}

// gaugeDrawing is a gauge on its way to a scene, in units of the picture.
type gaugeDrawing struct {
	gauge      *Gauge
	theme      *render.Theme
	wide, high float64
	inside     scene.Rect // of the box up to its brim
	perVolume  float64    // height of one volume unit
	items      []scene.Item
}

const (
	gaugeWall  = 3.0 // thickness of the box's sides
	gaugeBrow  = 10  // room for the ends of the brim beside the box
	gaugeAbove = 6   // least room above
)

// measure fits the fuller of box and contents into the height.
func (d *gaugeDrawing) measure() {
	r := d.gauge.result
	most := float64(max(r.Volume, r.Required, 1))
	room := d.high - gaugeAbove - gaugeWall - 2
	d.perVolume = room / most
	brim := d.high - gaugeWall - 1 - float64(r.Volume)*d.perVolume
	d.inside = scene.Rect{
		Min: scene.Point{X: gaugeBrow + gaugeWall, Y: brim},
		Max: scene.Point{X: d.wide - gaugeBrow - gaugeWall, Y: d.high - gaugeWall - 1},
	}
}

// vessel draws the box as an open trough.
func (d *gaugeDrawing) vessel() {
	r, t := d.inside, gaugeWall
	var path scene.Path
	at := func(x, y float64) scene.Point { return scene.Point{X: x, Y: y} }
	path.MoveTo(at(r.Min.X-t/2-.5, r.Min.Y)).LineTo(at(r.Min.X-t/2-.5, r.Max.Y+t/2)).
		LineTo(at(r.Max.X+t/2+.5, r.Max.Y+t/2)).LineTo(at(r.Max.X+t/2+.5, r.Min.Y))
	d.items = append(d.items,
		scene.Fill{Path: r.Path(), Color: d.theme.Paper},
		scene.Stroke{Path: path, Pen: scene.Pen{Width: t, Color: d.theme.Muted, Cap: scene.ButtCap, Join: scene.BevelJoin}})
}

// bands stacks what is in the box from its bottom; what is over the brim stands above
// it in the colour of a stop.
func (d *gaugeDrawing) bands() {
	foot := d.inside.Max.Y
	for _, l := range bandsOf(d.gauge.result.Lines) {
		top := foot - float64(l.volume)*d.perVolume
		body := scene.Rect{Min: scene.Point{X: d.inside.Min.X + 1, Y: top}, Max: scene.Point{X: d.inside.Max.X - 1, Y: foot - 1}}
		if !body.IsEmpty() {
			d.items = append(d.items, scene.Fill{Path: body.Path(), Color: l.class.color(d.theme)})
		}
		d.spill(body)
		d.name(l, body)
		foot = top
	}
}

// spill hatches the part of a band that is over the brim.
func (d *gaugeDrawing) spill(body scene.Rect) {
	over := body
	over.Max.Y = min(over.Max.Y, d.inside.Min.Y)
	if over.Max.Y-over.Min.Y < .75 {
		return
	}
	var hatch scene.Path
	for x := over.Min.X - over.Height(); x < over.Max.X; x += 6 {
		hatch.MoveTo(scene.Point{X: x, Y: over.Max.Y}).LineTo(scene.Point{X: x + over.Height(), Y: over.Min.Y})
	}
	d.items = append(d.items, scene.Group{Layer: scene.Layer{Clip: &over}, Items: []scene.Item{
		scene.Stroke{Path: hatch, Pen: scene.Pen{Width: 1.5, Color: d.theme.Stop}},
	}}, scene.Stroke{Path: over.Expanded(-.5).Path(), Pen: scene.Pen{Width: 1, Color: d.theme.Stop}})
}

const gaugeText = 10.5

// name writes what a band is where there is room for it: in the part of the band that
// is under the brim, else in the part over it, so that the brim does not cross it.
func (d *gaugeDrawing) name(l band, body scene.Rect) {
	text := d.gauge.voice.Say(l.label())
	place := body
	if brim := d.inside.Min.Y; body.Min.Y < brim && body.Max.Y > brim {
		if place.Min.Y = brim + 1; place.Height() < body.Height()/2 && place.Height() < gaugeText+2 {
			place = body
			place.Max.Y = brim - 1
		}
	}
	if place.Height() < gaugeText+1 || glyph.Width(glyph.Bold, gaugeText, text) > place.Width()-8 {
		return
	}
	plate := scene.RectAround(place.Middle(), glyph.Width(glyph.Bold, gaugeText, text)+8, gaugeText+1)
	d.items = append(d.items,
		scene.Fill{Path: plate.Path(), Color: l.class.color(d.theme)},
		scene.Run{
			At: place.Middle(), Text: text, Size: gaugeText, Weight: glyph.Bold,
			Align: scene.Center, VAlign: scene.Middle, Color: d.theme.Contents.On,
		})
}

// brim draws the line up to which the box may be filled.
func (d *gaugeDrawing) brim() {
	color := d.theme.Ink
	if !d.gauge.result.Fits {
		color = d.theme.Stop
	}
	y := d.inside.Min.Y
	d.items = append(d.items, scene.Stroke{
		Path: scene.LinePath(scene.Point{X: 0, Y: y}, scene.Point{X: d.wide, Y: y}),
		Pen:  scene.Pen{Width: 1.5, Color: color, Dash: []float64{4, 3}},
	})
}
