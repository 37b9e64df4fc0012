package dialog

import (
	"cmp"

	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// Question is a plain dialog: what it is about, what to know, and the answers.
type Question struct {
	Title   string
	Body    string
	Extra   fyne.CanvasObject // under the body; nil: nothing
	Answers []Answer          // the last is what Enter means, the first what Escape does
	Width   float32           // of the text; 0 is a usual one
	Told    bool              // it only tells: Escape is the last answer too
}

// Answer is one button, and what it does: nil is nothing.
type Answer struct {
	Label string
	Do    func()
}

const dialogWidth = 420

// Ask shows a question above the window; its answers take it away.
func (s *Stage) Ask(q Question) {
	width := look.Scaled(cmp.Or(q.Width, dialogWidth))
	rows := []fyne.CanvasObject{look.NewParagraph(q.Title, look.Title, width)}
	if q.Body != "" {
		rows = append(rows, look.NewParagraph(q.Body, look.Body, width))
	}
	if q.Extra != nil {
		rows = append(rows, q.Extra)
	}
	var shown *raised
	var buttons []*look.Press
	for i, a := range q.Answers {
		buttons = append(buttons, button(a.Label, i == len(q.Answers)-1, func() {
			shown.lower()
			if a.Do != nil {
				a.Do()
			}
		}))
	}
	rows = append(rows, look.Gap(1, look.Grid/2), buttonRow(buttons...))
	if last := buttons[len(buttons)-1]; q.Told {
		for _, b := range buttons {
			b.OnEscape = func() { last.Tapped(nil) }
		}
	}
	shown = s.raise(look.Column(look.Grid, rows...))
	shown.home = buttons[len(buttons)-1]
	s.canvas().Focus(shown.home)
}

// button makes one button; the one that Enter means is filled.
func button(label string, main bool, do func()) *look.Press {
	frame, tone := look.Outline, look.Accent
	if main {
		frame, tone = look.Solid, look.OnAccent
	}
	return look.NewPress(look.NewText(label, look.Style{Bold: true, Tone: tone}), frame, look.Grid*2, look.Grid, do)
}

// buttonRow stands buttons at the right; Escape on any of them is the first.
func buttonRow(buttons ...*look.Press) fyne.CanvasObject {
	row := []fyne.CanvasObject{look.Gap(1, 1)}
	for _, b := range buttons {
		b.OnEscape = func() { buttons[0].Tapped(nil) }
		row = append(row, look.Sized(0, look.HitTarget, b))
	}
	return look.Row(look.Grid, 0, row...)
}

// Tell shows something to know, with one button.
func (s *Stage) Tell(title, body string) {
	s.Ask(Question{Title: title, Body: body, Answers: []Answer{{Label: s.say("answer.good", "OK")}}})
}

// Trouble says what went wrong and what to do next.
func (s *Stage) Trouble(title string, err error) { s.Tell(title, s.ErrorText(err)) }
