// Package look is the face of the window: its colours, sizes and type, and the small
// widgets that all of it is made of. It knows no plan and no rule.
//
// Sizes are in the toolkit's units, which the interface scale multiplies.
//
// The menu is our own. The toolkit's goes to no line by its first letter; and the keys
// that its window menu shows run their command while the menu has it greyed, behind a
// dialog, and before the field being written in (its desktop driver asks neither).
// TestTheToolkitsOwnMenuStillFallsShort fails once the first is mended.
package look

import (
	"image/color"

	"fyne.io/fyne/v2"

	"studbay/render"
)

// Palette holds the colours by their role.
type Palette = render.Theme

// Current returns the palette of the theme in force, the light one where it is not ours.
func Current() *Palette {
	if app := fyne.CurrentApp(); app != nil {
		if t, ok := app.Settings().Theme().(*Theme); ok {
			return t.palette(app.Settings().ThemeVariant())
		}
	}
	return &render.Light
}

// Tone names a colour of the palette, so that what is coloured follows the theme.
type Tone int

// The tones.
const (
	Ink Tone = iota
	Muted
	Accent
	Stop
	Warn
	Note
	OnAccent
)

// Color returns the tone's colour in a palette.
func (t Tone) Color(p *Palette) color.NRGBA {
	return [...]color.NRGBA{p.Ink, p.Muted, p.Accent, p.Stop, p.Warn, p.Note, p.OnAccent}[t]
}
