package dialog

import (
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
)

// askRoom shows a form of a name and two lengths.
func (s *stand) askRoom() {
	s.AskForm(Form{Title: "A room", Yes: "Draw it", Lines: []Line{
		{Label: "Name", Text: "Room"},
		{Label: "Width", Text: "14'", Check: s.IsLengthOverNothing},
		{Label: "Depth", Text: "12'", Check: s.IsLengthOverNothing},
		{Label: "Use", Text: "Bedroom", Options: []string{"Bedroom", "Bath"}},
	}, Do: func([]string) error { return nil }})
}

func TestAFormSaysAtItsLineWhatIsWrongUntilItIsMended(t *testing.T) {
	s := newStand(t)
	s.askRoom()
	form := s.dialog()
	entries := entries(form)
	entries[1].SetText("twelve")
	entries[2].SetText("-3'")
	if said := windowtest.Faults(form); len(said) > 0 {
		t.Errorf("%q is said before anything was asked", said)
	}
	s.press(form, "Draw it")
	said := windowtest.Faults(form)
	if len(said) != 2 || !strings.Contains(said[0], "Width: “twelve”") || !strings.Contains(said[0], "such as 6' 4-1/2") ||
		!strings.Contains(said[1], "Depth: ") || !strings.Contains(said[1], "such as") {
		t.Fatalf("said %q, want each field's name with a sample", said)
	}
	if s.canvas().Focused() != fyne.Focusable(entries[1]) {
		t.Error("the first wrong line is not in hand")
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject
	var wrong fyne.CanvasObject
	windowtest.Walk(form, func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Paragraph); ok && p.Words() == said[0] {
			wrong = p
		}
	})
	if y := at(wrong).Y; y < at(entries[1]).Y+entries[1].Size().Height || y > at(entries[2]).Y {
		t.Error("what is wrong with the width does not stand under it")
	}
	entries[1].SetText("twelv") // still none
	if said := windowtest.Faults(form); len(said) != 2 || !strings.Contains(said[0], "“twelv”") {
		t.Errorf("said %q of another wrong text", said)
	}
	entries[1].SetText("12'")
	if said := windowtest.Faults(form); len(said) != 1 || !strings.Contains(said[0], "Depth") {
		t.Errorf("said %q once the width is mended", said)
	}
	entries[2].SetText("10'")
	if said := windowtest.Faults(form); len(said) != 0 {
		t.Errorf("said %q once all is mended", said)
	}
	s.press(form, "Draw it")
	s.noDialog()
}

func TestAFormSaysWhatIsWrongWithAllOfItUntilALineChanges(t *testing.T) {
	s := newStand(t)
	s.AskForm(Form{Title: "A form", Yes: "Do it", Lines: []Line{{Label: "One"}, {Label: "Two"}}, Do: func(texts []string) error {
		switch texts[0] {
		case "line":
			return LineFault{1, errors.New("of the second")}
		case "all":
			return errors.New("of all")
		}
		return nil
	}})
	form := s.dialog()
	entries := entries(form)
	for _, tt := range []struct{ text, want string }{{"line", "Two: of the second"}, {"all", "of all"}} {
		entries[0].SetText(tt.text)
		entries[1].SetText(tt.text)
		s.press(form, "Do it")
		if said := windowtest.Faults(form); len(said) != 1 || said[0] != tt.want {
			t.Errorf("%s: said %q, want %q", tt.text, said, tt.want)
		}
		entries[1].SetText("mended")
		if said := windowtest.Faults(form); len(said) != 0 {
			t.Errorf("%s: %q is said after a change", tt.text, said)
		}
	}
}

func TestAFormEchoesWhatItReads(t *testing.T) {
	s := newStand(t)
	s.AskForm(Form{Title: "A room", Yes: "Draw it", Lines: []Line{{Label: "Width", Text: "14"}, {Label: "Depth"}}, Echo: func(texts []string) string {
		if texts[1] == "" {
			return ""
		}
		return "Read as " + texts[0] + " by " + texts[1]
	}, Do: func([]string) error { return nil }})
	form := s.dialog()
	echo := func() (text string) {
		windowtest.Walk(form, func(o fyne.CanvasObject) {
			if p, ok := o.(*look.Paragraph); ok && p.Visible() && strings.HasPrefix(p.Words(), "Read as") {
				text = p.Words()
			}
		})
		return text
	}
	if got := echo(); got != "" {
		t.Errorf("%q is read of nothing", got)
	}
	entries(form)[1].SetText("12")
	if got := echo(); got != "Read as 14 by 12" {
		t.Errorf("it says %q", got)
	}
	entries(form)[1].SetText("")
	if got := echo(); got != "" {
		t.Errorf("%q still stands", got)
	}
}

func TestLinesOfAFormStandInLine(t *testing.T) {
	s := newStand(t)
	s.askRoom()
	form := s.dialog()
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject
	entry := at(entries(form)[0]).X
	choice := float32(0)
	windowtest.Walk(s.choice(form, "Use"), func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok {
			choice = at(p).X
		}
	})
	if d := entry - choice; d < -1 || d > 1 {
		t.Errorf("an entry begins at %v, a choice at %v", entry, choice)
	}
}

// A question that the answer of a form asks stands there once the form is gone.
func TestAFormMayAskOnce(t *testing.T) {
	s := newStand(t)
	done := false
	s.AskForm(Form{Title: "How far", Yes: "Show", Lines: []Line{{Label: "Reach", Text: "8 in"}}, Do: func([]string) error {
		s.Ask(Question{Title: "Three would be moved", Answers: []Answer{{Label: "Cancel"}, {Label: "Move them", Do: func() { done = true }}}})
		return nil
	}})
	s.press(s.dialog(), "Show")
	if on := s.canvas().Overlays().List(); len(on) != 1 {
		t.Fatalf("%d dialogs are in sight, want the question", len(on))
	}
	s.press(s.dialog(), "Move them")
	if !done {
		t.Error("its answer does nothing")
	}
}

// TestAGuessFollowsTheLinesBeforeUntilOneIsChosen: it is shown as a guess, and kept as the
// option that it is.
func TestAGuessFollowsTheLinesBeforeUntilOneIsChosen(t *testing.T) {
	s := newStand(t)
	var got []string
	s.AskForm(Form{Title: "A room", Yes: "Draw it", Lines: []Line{
		{Label: "Name", Text: "Bath"},
		{Label: "Use", Options: []string{"Bedroom", "Bath", "Kitchen"}, Told: func(texts []string) (string, string) { return texts[0], texts[0] + ", a guess" }},
	}, Do: func(texts []string) error { got = texts; return errors.New("stay") }})
	form := s.dialog()
	name, use := entries(form)[0], s.choice(form, "Use")
	if use.Value() != "Bath, a guess" {
		t.Errorf("it begins with %q", use.Value())
	}
	name.SetText("Bedroom")
	if s.press(form, "Draw it"); use.Value() != "Bedroom, a guess" || len(got) != 2 || got[1] != "Bedroom" {
		t.Errorf("shown %q, kept %q after the name was changed", use.Value(), got)
	}
	use.Options()[2].Do()
	name.SetText("Bath")
	if s.press(form, "Draw it"); use.Value() != "Kitchen" || got[1] != "Kitchen" {
		t.Errorf("shown %q, kept %q after one was chosen", use.Value(), got)
	}
}
