package desk

import (
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/shell"
)

func TestKeysAreNamedInTheLanguage(t *testing.T) {
	b := newBench(t)
	for tag, want := range map[string]string{"en": "Ctrl+Shift+S Del Enter", "es": "Ctrl+Mayús+S Supr Enter"} {
		b.prefs.setLanguage(tag)
		b.house.rebuilt()
		got := shell.Keys{Mod: fyne.KeyModifierControl | shift, Key: fyne.KeyS}.Said(b.voice.Voice) + " " +
			shell.Keys{Key: fyne.KeyDelete}.Said(b.voice.Voice) + " " + shell.Keys{Key: fyne.KeyReturn}.Said(b.voice.Voice)
		if got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
	}
}
