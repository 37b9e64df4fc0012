package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"studbay/render"
	"studbay/render/glyph"
)

// Mode says which palette is shown.
type Mode string

// The modes. FollowSystem takes light, dark or high contrast as the desktop has it.
const (
	FollowSystem Mode = ""
	LightMode    Mode = "light"
	DarkMode     Mode = "dark"
	ContrastMode Mode = "contrast"
)

// The measures of the window, in units: all gaps are multiples of Grid or of its half.
const (
	Grid      = 8
	HitTarget = 32 // least height of what can be pressed
	Radius    = 6  // of corners

	TagSize    = 20
	TitleSize  = 13
	BodySize   = 12
	SecondSize = 10.5
)

const (
	inputPadding  = 8
	scrollBarWide = 10
	scrollBarThin = 4
)

// Theme is the toolkit's theme with our colours, type and sizes. Scale multiplies
// every size; 0 is 1.
type Theme struct {
	Mode  Mode
	Scale float32
	// Mute says that the desktop asks for neither light nor dark: then it is light.
	Mute bool
	// HighContrast says that the desktop asks for it.
	HighContrast bool
}

var _ fyne.Theme = (*Theme)(nil)

func (t *Theme) palette(variant fyne.ThemeVariant) *Palette {
	switch {
	case t.Mode == ContrastMode, t.Mode == FollowSystem && t.HighContrast:
		return &render.HighContrast
	case t.Mode == DarkMode, t.Mode == FollowSystem && variant == theme.VariantDark && !t.Mute:
		return &render.Dark
	}
	return &render.Light
}

func faded(c color.NRGBA, alpha uint8) color.NRGBA {
	c.A = alpha
	return c
}

// ink is an opaque colour that keeps the keys in menus legible: the toolkit takes 95 %
// of the alpha in 16 bits and keeps the low 8 of that, which are 0x32 of full opacity
// and 0xFF of this. Nothing else can tell the two apart.
type ink color.NRGBA

// RGBA implements color.Color.
func (c ink) RGBA() (r, g, b, a uint32) {
	return uint32(c.R) * 0x101, uint32(c.G) * 0x101, uint32(c.B) * 0x101, 0xFFCA
}

// Color implements fyne.Theme.
func (t *Theme) Color(name fyne.ThemeColorName, variant fyne.ThemeVariant) color.Color {
	p := t.palette(variant)
	switch name {
	case theme.ColorNameBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground,
		theme.ColorNameForegroundOnError, theme.ColorNameForegroundOnWarning:
		return p.Surface
	case theme.ColorNameForegroundOnPrimary, theme.ColorNameForegroundOnSuccess:
		return p.OnAccent
	case theme.ColorNameInputBackground, theme.ColorNameButton, theme.ColorNameDisabledButton, theme.ColorNameHeaderBackground:
		return p.Paper
	case theme.ColorNameForeground:
		return ink(p.Ink)
	case theme.ColorNamePlaceHolder, theme.ColorNameDisabled:
		return p.Muted
	case theme.ColorNameScrollBar:
		return faded(p.Muted, 0x90)
	case theme.ColorNameScrollBarBackground:
		return color.Transparent
	case theme.ColorNamePrimary, theme.ColorNameHyperlink, theme.ColorNameSuccess:
		return p.Accent
	case theme.ColorNameFocus, theme.ColorNameSelection, theme.ColorNameHover, theme.ColorNamePressed:
		return p.Tint
	case theme.ColorNameInputBorder, theme.ColorNameSeparator:
		return p.Line
	case theme.ColorNameError:
		return p.Stop
	case theme.ColorNameWarning:
		return p.Warn
	case theme.ColorNameShadow:
		return color.NRGBA{A: 0x30}
	}
	return theme.DefaultTheme().Color(name, variant)
}

var (
	regular = fyne.NewStaticResource("studbay-regular.ttf", glyph.MainRegular.TTF())
	bold    = fyne.NewStaticResource("studbay-bold.ttf", glyph.MainBold.TTF())
)

// Font implements fyne.Theme: one family in two weights.
func (t *Theme) Font(style fyne.TextStyle) fyne.Resource {
	if style.Symbol || style.Monospace {
		return theme.DefaultTheme().Font(style)
	}
	if style.Bold {
		return bold
	}
	return regular
}

// Icon implements fyne.Theme.
func (t *Theme) Icon(name fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(name) }

var sizes = map[fyne.ThemeSizeName]float32{
	theme.SizeNameText:            BodySize,
	theme.SizeNameCaptionText:     SecondSize,
	theme.SizeNameHeadingText:     TagSize,
	theme.SizeNameSubHeadingText:  TitleSize,
	theme.SizeNamePadding:         Grid / 2,
	theme.SizeNameInnerPadding:    inputPadding,
	theme.SizeNameLineSpacing:     Grid / 2,
	theme.SizeNameInlineIcon:      16,
	theme.SizeNameInputRadius:     Radius,
	theme.SizeNameSelectionRadius: Radius,
	theme.SizeNameScrollBar:       scrollBarWide,
	theme.SizeNameScrollBarSmall:  scrollBarThin,
	theme.SizeNameInputBorder:     1,
}

// Size implements fyne.Theme.
func (t *Theme) Size(name fyne.ThemeSizeName) float32 {
	size, ok := sizes[name]
	if !ok {
		size = theme.DefaultTheme().Size(name)
	}
	return size * t.scale()
}

func (t *Theme) scale() float32 {
	if t.Scale == 0 {
		return 1
	}
	return t.Scale
}

// Scaled returns a size of ours under the interface scale in force.
func Scaled(size float32) float32 {
	if app := fyne.CurrentApp(); app != nil {
		if t, ok := app.Settings().Theme().(*Theme); ok {
			return size * t.scale()
		}
	}
	return size
}
