package desk

import (
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/file"
)

// question is a plain dialog: what it is about, what to know, and the answers.
type question struct {
	title   string
	body    string
	extra   fyne.CanvasObject // under the body; nil: nothing
	answers []answer          // the last is what Enter means; Escape means the first
	width   float32           // of the text; 0 is a usual one
}

// answer is one button.
type answer struct {
	label string
	do    func()
}

const dialogWidth = 420

// ask shows a question above the window. It returns the dialog, which its answers
// close.
func (d *Desk) ask(q question) dialog.Dialog {
	width := q.width
	if width == 0 {
		width = dialogWidth
	}
	var shown dialog.Dialog
	var buttons []fyne.CanvasObject
	buttons = append(buttons, look.Gap(1, 1))
	for i, a := range q.answers {
		frame, tone := look.Outline, look.Accent
		if i == len(q.answers)-1 {
			frame, tone = look.Solid, look.OnAccent
		}
		label := look.NewText(a.label, look.Style{Bold: true, Tone: tone})
		buttons = append(buttons, look.Sized(0, look.HitTarget, look.NewPress(label, frame, look.Grid*2, look.Grid, func() {
			shown.Hide()
			if a.do != nil {
				a.do()
			}
		})))
	}
	rows := []fyne.CanvasObject{
		look.NewParagraph(q.title, look.Title, look.Scaled(width)),
		look.NewParagraph(q.body, look.Body, look.Scaled(width)),
	}
	if q.body == "" {
		rows = rows[:1]
	}
	if q.extra != nil {
		rows = append(rows, q.extra)
	}
	rows = append(rows, look.Gap(1, look.Grid), look.Row(look.Grid, 0, buttons...))
	content := look.Inset(look.Grid, 0, look.Grid, look.Grid, look.Column(look.Grid, rows...))
	shown = dialog.NewCustomWithoutButtons("", content, d.window)
	d.open = shown
	shown.SetOnClosed(func() { d.open = nil })
	shown.Show()
	return shown
}

// tell shows something to know, with one button.
func (d *Desk) tell(title, body string) {
	d.ask(question{title: title, body: body, answers: []answer{{label: d.say("answer.good", "Understood")}}})
}

// trouble says what went wrong and what to do next.
func (d *Desk) trouble(title string, err error) { d.tell(title, d.errorText(err)) }

// errorText says an error in the window's voice where it is one of ours.
func (d *Desk) errorText(err error) string {
	var wrong *file.Error
	if errors.As(err, &wrong) {
		text := wrong.File + "\n" + d.voice.Say(wrong.Text())
		if wrong.Place != "" {
			text += "\n" + d.say("error.place", "Line {0}, at {1}", wrong.Line, wrong.Place)
		}
		return text
	}
	var refusal *plan.Refusal
	if errors.As(err, &refusal) {
		return d.voice.Say(refusal.Text)
	}
	return err.Error()
}
