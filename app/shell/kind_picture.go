package shell

import (
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/symbol"
)

var families = map[part.Family]symbol.Family{
	part.Receptacle: symbol.Receptacle, part.Switch: symbol.Switch, part.LowVoltage: symbol.LowVoltage,
	part.Light: symbol.Light, part.Fan: symbol.Fan, part.Alarm: symbol.Alarm, part.Junction: symbol.Junction,
}

// The place of a kind's symbol in its row, in units, and the least height of the row.
const (
	kindWidth, kindHeight = 50, 30
	rowHeight             = look.HitTarget + 2
)

// kindPicture draws the symbol of a kind as it would stand on a wall below it, or in a
// ceiling. Letters for which the body has no room stand at its right.
func kindPicture(k *part.Kind, w, h float64, p *look.Palette) []scene.Item {
	unit := w / kindWidth
	style := symbol.Style{Size: 13 * unit, Ink: p.Accent, Paper: p.Surface, MinLine: 1.4 * unit}
	spec := symbol.Spec{Family: families[k.Family], Yokes: k.Yokes, Letters: k.Letters}
	beside := ""
	if !spec.HoldsLetters() {
		spec.Letters, beside = "", k.Letters
	}
	place := symbol.Place{Foot: scene.Point{X: 14 * unit, Y: h / 2}}
	if k.Host == part.Wall {
		place.Foot.Y, place.Into = h-3*unit, scene.Point{Y: -1}
	}
	drawn := symbol.Draw(place, style, spec)
	if top := drawn.Bounds().Min.Y; k.Host == part.Wall && top < unit { // a long stem
		style.Size *= (place.Foot.Y - unit) / (place.Foot.Y - top)
		drawn = symbol.Draw(place, style, spec)
	}
	if beside == "" {
		return drawn.Items
	}
	body := drawn.Bodies[0]
	return append(drawn.Items, scene.Run{
		At: scene.Point{X: body.Max.X + 4*unit, Y: (body.Min.Y + body.Max.Y) / 2}, Text: beside, Size: 11 * unit,
		Weight: glyph.Bold, VAlign: scene.Middle, Color: p.Accent,
	})
}
