package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// Larger shows an entry with text of a size, before the interface scale, for pages that are
// read from farther off than a card.
func Larger(e *Entry, size float32) fyne.CanvasObject {
	return container.NewThemeOverride(e, largerTheme{size})
}

// largerTheme is the theme in force but for the size of its text.
type largerTheme struct{ size float32 }

func (largerTheme) now() fyne.Theme { return fyne.CurrentApp().Settings().Theme() }

// Color implements fyne.Theme.
func (t largerTheme) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	return t.now().Color(name, v)
}

// Font implements fyne.Theme.
func (t largerTheme) Font(style fyne.TextStyle) fyne.Resource { return t.now().Font(style) }

// Icon implements fyne.Theme.
func (t largerTheme) Icon(name fyne.ThemeIconName) fyne.Resource { return t.now().Icon(name) }

// Size implements fyne.Theme.
func (t largerTheme) Size(name fyne.ThemeSizeName) float32 {
	if name == theme.SizeNameText {
		return Scaled(t.size)
	}
	return t.now().Size(name)
}
