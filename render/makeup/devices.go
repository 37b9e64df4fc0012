package makeup

import (
	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan/words"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// devices draws what sits in the box, each with its terminals.
func (d *drawing) devices(under float64) {
	for i, x := range d.m.Devices {
		xs := d.ends[i]
		if len(xs) == 0 {
			continue
		}
		r := scene.Rect{
			Min: scene.Point{X: xs[0] - 0.8*d.Text, Y: under},
			Max: scene.Point{X: xs[len(xs)-1] + 0.8*d.Text, Y: under + (terminal+foot-0.6)*d.Text},
		}
		d.add(scene.Fill{Path: r.Path(), Color: d.Theme.Paper}, scene.Stroke{Path: r.Path(), Pen: scene.Pen{Width: 0.1 * d.Text, Color: d.Theme.Ink}})
		for j, w := range x.Terminals {
			at := scene.Point{X: xs[j], Y: under + 0.7*d.Text}
			d.add(scene.Stroke{Path: scene.Circle(at, 0.3*d.Text), Pen: scene.Pen{Width: 0.1 * d.Text, Color: d.Theme.Ink}})
			d.onEnd(xs[j], under+(terminal-0.2)*d.Text, w.Text(), (terminal-1.6)*d.Text)
		}
		room := r.Width() - 0.6*d.Text
		d.text(r.Min.X+0.3*d.Text, under+(terminal+0.8)*d.Text, room, d.nameOf(x), glyph.Bold, d.Theme.Ink)
		d.text(r.Min.X+0.3*d.Text, under+(terminal+1.9)*d.Text, room, kindOf(x), glyph.Regular, d.Theme.Ink)
	}
}

// nameOf names a device by its gang, or what it is where there is but one.
func (d *drawing) nameOf(x wire.MadeDevice) words.Text {
	switch {
	case x.Gang > 0 && x.Control != nil:
		return words.New("makeup.gang-of", "Gang {0}, {1}", x.Gang, x.Control.Letter)
	case x.Gang > 0:
		return words.New("makeup.gang", "Gang {0}", x.Gang)
	case x.Control != nil:
		return words.New("makeup.serves", "Serves {0}", x.Control.Letter)
	}
	return words.New("plain", "{0}", d.m.Opening.Tag)
}

func kindOf(x wire.MadeDevice) words.Text {
	if x.Kind == "" {
		return words.New("makeup.on-box", "on the box")
	}
	return part.DeviceText(x.Kind)
}
