package desk

import (
	"testing"

	"fyne.io/fyne/v2"
)

func TestKeysAreNamedInTheLanguage(t *testing.T) {
	b := newBench(t)
	for tag, want := range map[string]string{"en": "Ctrl+Shift+S Del Enter", "es": "Ctrl+Mayús+S Supr Intro"} {
		b.prefs.setLanguage(tag)
		b.house.rebuilt()
		got := Keys{fyne.KeyModifierControl | shift, fyne.KeyS}.said(b.voice) + " " +
			Keys{0, fyne.KeyDelete}.said(b.voice) + " " + Keys{0, fyne.KeyReturn}.said(b.voice)
		if got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
	}
}
