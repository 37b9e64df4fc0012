package desk

import (
	"cmp"
	"errors"
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/plan/file"
)

// question is a plain dialog: what it is about, what to know, and the answers.
type question struct {
	title   string
	body    string
	extra   fyne.CanvasObject // under the body; nil: nothing
	answers []answer          // the last is what Enter means, the first what Escape does
	width   float32           // of the text; 0 is a usual one
	told    bool              // it only tells: Escape is the last answer too
}

// answer is one button.
type answer struct {
	label string
	do    func()
}

const dialogWidth = 420

// raised is something that stands above the window until it is answered.
type raised struct {
	desk *Desk
	pop  *widget.PopUp
}

// raise stands content above the window.
func (d *Desk) raise(content fyne.CanvasObject) *raised {
	s := &raised{d, widget.NewModalPopUp(look.Inset(16, 12, 16, 12, content), d.window.Canvas())}
	d.open = s
	s.pop.Show()
	return s
}

// lower takes it away.
func (s *raised) lower() {
	s.pop.Hide()
	if s.desk.open == s {
		s.desk.open = nil
	}
}

// raiseAgain stands it above the window once more.
func (s *raised) raiseAgain() {
	s.desk.open = s
	s.pop.Show()
}

// ask shows a question above the window; its answers take it away.
func (d *Desk) ask(q question) {
	width := look.Scaled(cmp.Or(q.width, dialogWidth))
	rows := []fyne.CanvasObject{look.NewParagraph(q.title, look.Title, width)}
	if q.body != "" {
		rows = append(rows, look.NewParagraph(q.body, look.Body, width))
	}
	if q.extra != nil {
		rows = append(rows, q.extra)
	}
	var shown *raised
	var buttons []*look.Press
	for i, a := range q.answers {
		buttons = append(buttons, button(a.label, i == len(q.answers)-1, func() {
			shown.lower()
			if a.do != nil {
				a.do()
			}
		}))
	}
	rows = append(rows, look.Gap(1, look.Grid/2), buttonRow(buttons...))
	if last := buttons[len(buttons)-1]; q.told {
		for _, b := range buttons {
			b.OnEscape = func() { last.Tapped(nil) }
		}
	}
	shown = d.raise(look.Column(look.Grid, rows...))
	d.window.Canvas().Focus(buttons[len(buttons)-1])
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

// tell shows something to know, with one button.
func (d *Desk) tell(title, body string) {
	d.ask(question{title: title, body: body, answers: []answer{{label: d.say("answer.good", "Understood")}}})
}

// trouble says what went wrong and what to do next.
func (d *Desk) trouble(title string, err error) { d.tell(title, d.errorText(err)) }

// sentence returns an error's text as a sentence of its own.
func sentence(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	text = string(unicode.ToUpper(first)) + text[size:]
	if strings.HasSuffix(text, ".") {
		return text
	}
	return text + "."
}

// errorText says an error in the window's voice where it is one of ours.
func (d *Desk) errorText(err error) string {
	var wrong *file.Error
	if errors.As(err, &wrong) {
		text := wrong.File + "\n" + sentence(d.voice.Say(wrong.Text()))
		if wrong.Place != "" {
			text += "\n" + d.say("error.place", "Line {0}, at {1}", wrong.Line, wrong.Place)
		}
		return text
	}
	return card.ErrorText(d.voice, err)
}
