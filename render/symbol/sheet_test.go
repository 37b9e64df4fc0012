package symbol

import (
	"bytes"
	"context"
	"testing"

	"studbay/plan/unit"
	"studbay/render/glyph"
	"studbay/render/paint/png"
	"studbay/render/picturetest"
	"studbay/render/scene"
)

var (
	ink   = scene.Color{R: 0x11, G: 0x11, B: 0x11, A: 0xff}
	white = scene.Color{R: 0xff, G: 0xff, B: 0xff, A: 0xff}
	grey  = scene.Color{R: 0x77, G: 0x77, B: 0x77, A: 0xff}
	black = Style{Size: BodySize, Ink: ink, Paper: white}
)

// contact is the contact sheet in the making.
type contact struct{ scene.Scene }

func (c *contact) text(x, y float64, weight glyph.Weight, text string) {
	c.Add(scene.Run{At: scene.Point{X: x, Y: y}, Text: text, Size: 7 * scene.PointSize, Weight: weight, Color: ink})
}

// walled draws a symbol with a piece of the wall it stands on.
func (c *contact) walled(x, y, angle float64, specs ...Spec) {
	into := scene.Direction(angle)
	foot := scene.Point{X: x, Y: y}.Sub(into.Mul(2.2))
	along := into.Turned().Mul(3.4)
	back := into.Mul(-1.2)
	wall := scene.Polygon(foot.Add(along), foot.Sub(along), foot.Sub(along).Add(back), foot.Add(along).Add(back))
	c.Add(scene.Fill{Path: wall, Color: grey})
	c.Add(Draw(Place{Foot: foot, Into: into}, black, specs...).Items...)
}

// contactSheet shows every family in the three statuses and four directions, without
// a wall, and with ticks and letters.
func contactSheet() *scene.Scene {
	c := &contact{scene.Scene{Width: 272 * unit.Millimetre, Height: 150 * unit.Millimetre}}
	for s, name := range []string{"New", "Existing", "To be removed"} {
		c.text(30+float64(s)*54, 7, glyph.Bold, name)
	}
	for i, name := range []string{"2 yokes", "3 yokes", "letter", "letters", "two heights"} {
		c.text(193+float64(i)*15, 7, glyph.Bold, name)
	}
	for row, f := range Families() {
		y := 17 + float64(row)*14
		c.text(4, y+1, glyph.Regular, f.String())
		for s := range []Status{New, Existing, Remove} {
			x := 31 + float64(s)*54
			for d := range 4 {
				c.walled(x+float64(d)*10.5, y, 90+float64(d)*90, Spec{Family: f, Status: Status(s)})
			}
			c.Add(Draw(Place{Foot: scene.Point{X: x + 42, Y: y}}, black, Spec{Family: f, Status: Status(s)}).Items...)
		}
		c.walled(198, y-1, 90, Spec{Family: f, Yokes: 2})
		c.walled(211, y-1, 90, Spec{Family: f, Yokes: 3})
		c.walled(226, y, 90, Spec{Family: f, Letters: "3"})
		c.walled(241, y, 0, Spec{Family: f, Letters: "GF"})
		c.walled(256, y-1, 90, Spec{Family: f, Letters: "4", Note: "16"}, Spec{Family: Receptacle, Note: "44"})
	}
	c.rest()
	return &c.Scene
}

// rest adds the lower strip: clusters, marks, icons, north and scale bar.
func (c *contact) rest() {
	y := 118.0
	wall := Wall{Start: scene.Point{X: 10, Y: y}, Along: scene.Point{X: 1}, Into: scene.Point{Y: 1}, Long: 60}
	c.Add(scene.Fill{Path: scene.Rect{Min: wall.Start.Sub(scene.Point{Y: 1.4}), Max: wall.Start.Add(scene.Point{X: 60})}.Path(), Color: grey})
	at := []float64{1, 14, 15.5, 17, 18, 30, 40, 42}
	specs := [][]Spec{
		{{}}, {{Family: Switch}}, {{Family: Switch, Letters: "S3"}}, {{Family: Switch, Letters: "SD"}}, {{}},
		{{Family: LowVoltage}}, {{Letters: "GF"}}, {{Family: LowVoltage, Status: Existing}},
	}
	for i, p := range Spread(wall, black, at, specs) {
		c.Add(Draw(p, black, specs[i]...).Items...)
	}
	for m := range marks {
		c.Add(DrawMark(Mark(m), scene.Point{X: 84 + 7*float64(m), Y: y}, 4, ink, white)...)
		c.Add(DrawMark(Mark(m), scene.Point{X: 84 + 7*float64(m), Y: y + 7}, 2.4, ink, white)...)
	}
	for _, i := range Icons() {
		c.Add(DrawIcon(i, scene.Point{X: 118 + 11*float64(i), Y: y + 2}, 8, ink)...)
	}
	c.Add(North{Middle: scene.Point{X: 202, Y: y + 4}, Size: 8, Letter: "N", Ink: ink}.Items()...)
	c.Add(North{Middle: scene.Point{X: 214, Y: y + 4}, Size: 8, Turn: 60, Letter: "N", Ink: ink}.Items()...)
	c.Add(ScaleBar{
		At: scene.Point{X: 226, Y: y}, Step: 8, Height: 1.4, Labels: []string{"0", "2", "4", "6", "8"},
		TextSize: 6.5 * scene.PointSize, Line: .18, Ink: ink, Paper: white,
	}.Items()...)
	for i, angle := range []float64{30, 135, 200, 315} {
		c.walled(20+16*float64(i), y+22, angle, Spec{Family: Families()[i], Letters: "WP"})
	}
	for i := range 4 {
		c.walled(90+22*float64(i), y+22, float64(i)*90, Spec{Letters: "GF", Note: "44"}, Spec{Family: Switch, Letters: "S3", Note: "46"}, Spec{Family: Light, Note: "62"})
	}
}

// TestContactSheet holds the symbols to the picture that a person looked at.
func TestContactSheet(t *testing.T) {
	var out bytes.Buffer
	if err := png.Encode(context.Background(), &out, contactSheet(), png.Options{DPI: 200}); err != nil {
		t.Fatal(err)
	}
	picturetest.Kept(t, "contact.png", out.Bytes())
}
