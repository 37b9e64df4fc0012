package look

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	_ "studbay/app/locale"
	"studbay/render"
)

// TestKeysInMenusAreLegible takes the ink the way the toolkit's menus do.
func TestKeysInMenusAreLegible(t *testing.T) {
	for _, mode := range []Mode{LightMode, DarkMode, ContrastMode} {
		style := &Theme{Mode: mode}
		want := style.palette(theme.VariantLight).Ink
		r, g, b, a := style.Color(theme.ColorNameForeground, theme.VariantLight).RGBA()
		a = uint32(float32(a) * 0.95)
		if got := (color.NRGBA{R: uint8(r), G: uint8(g), B: uint8(b), A: uint8(a)}); got != want {
			t.Errorf("mode %q: keys are drawn in %v, want %v", mode, got, want)
		}
	}
}

func TestADesktopThatSaysNothingIsLight(t *testing.T) {
	if got := (&Theme{Mute: true}).palette(theme.VariantDark); got != &render.Light {
		t.Errorf("a mute desktop is shown %s, want light", got.Name)
	}
	if got := (&Theme{}).palette(theme.VariantDark); got != &render.Dark {
		t.Errorf("a dark desktop is shown %s, want dark", got.Name)
	}
}

func TestTheDesktopMayAskForHighContrast(t *testing.T) {
	for _, tt := range []struct {
		mode Mode
		want *Palette
	}{{FollowSystem, &render.HighContrast}, {LightMode, &render.Light}, {DarkMode, &render.Dark}} {
		if got := (&Theme{Mode: tt.mode, HighContrast: true}).palette(theme.VariantDark); got != tt.want {
			t.Errorf("mode %q is shown %s, want %s", tt.mode, got.Name, tt.want.Name)
		}
	}
}

func TestTextIsCutToItsPlace(t *testing.T) {
	test.NewApp()
	words := "Dishwasher and disposer"
	whole := Body.measure(words).Width
	if got := Body.fit(words, whole); got != words {
		t.Errorf("text in a place as wide as it is becomes %q", got)
	}
	cut := Body.fit(words, whole/2)
	if width := Body.measure(cut).Width; width > whole/2 || len(cut) < 4 {
		t.Errorf("cut to %v the text is %q, %v wide", whole/2, cut, width)
	}
}

func TestParagraphsKeepWithinTheirWidth(t *testing.T) {
	test.NewApp()
	p := NewParagraph("The checks of NEC 2023 found nothing in what is drawn.", Body, 120)
	for _, line := range p.lines() {
		if width := Body.measure(line).Width; width > 120 {
			t.Errorf("line %q is %v wide, want at most 120", line, width)
		}
	}
	if got := len(p.lines()); got < 2 {
		t.Errorf("%d lines, want the text broken", got)
	}
}
