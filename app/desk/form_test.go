package desk

import (
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// faults lists what is said in sight in the tone of a stop.
func (b *bench) faults(in fyne.CanvasObject) (said []string) {
	walk(in, func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Paragraph); ok && p.Tone() == look.Stop && p.Words() != "" {
			said = append(said, p.Words())
		}
	})
	return said
}

func TestAFormSaysAtItsLineWhatIsWrongUntilItIsMended(t *testing.T) {
	b := newBench(t)
	b.Run("room-by-size")
	form := b.dialog()
	entries := b.entries(form)
	entries[1].SetText("twelve")
	entries[2].SetText("-3'")
	if said := b.faults(form); len(said) > 0 {
		t.Errorf("%q is said before anything was asked", said)
	}
	b.press(form, "Draw it")
	said := b.faults(form)
	if len(said) != 2 || !strings.Contains(said[0], "Width: “twelve”") || !strings.Contains(said[0], "such as 6' 4-1/2") ||
		!strings.Contains(said[1], "Depth: ") || !strings.Contains(said[1], "such as") {
		t.Fatalf("said %q, want each field's name with a sample", said)
	}
	if b.window.Canvas().Focused() != fyne.Focusable(entries[1]) {
		t.Error("the first wrong line is not in hand")
	}
	at := b.app.Driver().AbsolutePositionForObject
	var wrong fyne.CanvasObject
	walk(form, func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Paragraph); ok && p.Words() == said[0] {
			wrong = p
		}
	})
	if y := at(wrong).Y; y < at(entries[1]).Y+entries[1].Size().Height || y > at(entries[2]).Y {
		t.Error("what is wrong with the width does not stand under it")
	}
	entries[1].SetText("twelv") // still none
	if said := b.faults(form); len(said) != 2 || !strings.Contains(said[0], "“twelv”") {
		t.Errorf("said %q of another wrong text", said)
	}
	entries[1].SetText("12'")
	if said := b.faults(form); len(said) != 1 || !strings.Contains(said[0], "Depth") {
		t.Errorf("said %q once the width is mended", said)
	}
	entries[2].SetText("10'")
	if said := b.faults(form); len(said) != 0 {
		t.Errorf("said %q once all is mended", said)
	}
	b.press(form, "Draw it")
	b.noDialog()
}

func TestAFormSaysWhatIsWrongWithAllOfItUntilALineChanges(t *testing.T) {
	b := newBench(t)
	b.form("A form", "", "Do it", []asked{{label: "One"}, {label: "Two"}}, func(texts []string) error {
		switch texts[0] {
		case "line":
			return lineFault{1, errors.New("of the second")}
		case "all":
			return errors.New("of all")
		}
		return nil
	})
	form := b.dialog()
	entries := b.entries(form)
	for _, tt := range []struct{ text, want string }{{"line", "Two: of the second"}, {"all", "of all"}} {
		entries[0].SetText(tt.text)
		entries[1].SetText(tt.text)
		b.press(form, "Do it")
		if said := b.faults(form); len(said) != 1 || said[0] != tt.want {
			t.Errorf("%s: said %q, want %q", tt.text, said, tt.want)
		}
		entries[1].SetText("mended")
		if said := b.faults(form); len(said) != 0 {
			t.Errorf("%s: %q is said after a change", tt.text, said)
		}
	}
}

func TestLinesOfAFormStandInLine(t *testing.T) {
	b := newBench(t)
	b.Run("amend-figure")
	form := b.dialog()
	at := b.app.Driver().AbsolutePositionForObject
	entry := at(b.entries(form)[0]).X
	choice := float32(0)
	walk(b.choice(form, "Figure"), func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok {
			choice = at(p).X
		}
	})
	if d := entry - choice; d < -1 || d > 1 {
		t.Errorf("an entry begins at %v, a choice at %v", entry, choice)
	}
}

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
