package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// FirstSteps is what stands on the board of an empty plan: how to begin.
type FirstSteps struct{ object fyne.CanvasObject }

// NewFirstSteps makes the card; trace takes the tool for rooms, run gives a command.
func NewFirstSteps(v words.Voice, trace func(), run func(command string) bool) *FirstSteps {
	say := func(id, english string) string { return v.Say(words.New(id, english)) }
	const width = 380
	button := func(label string, frame look.Frame, tone look.Tone, do func()) fyne.CanvasObject {
		text := look.NewText(label, look.Style{Bold: true, Tone: tone, Align: fyne.TextAlignCenter})
		return look.Sized(0, 36, look.NewPress(text, frame, 2*look.Grid, look.Grid, do))
	}
	text := look.Column(look.Grid,
		look.NewParagraph(say("blank.title", "Begin with a room"), look.Style{Size: look.TagSize, Bold: true}, look.Scaled(width)),
		look.NewParagraph(say("blank.trace", "Click the Room tool at the left, then its corners, or type a length while you draw; close it on the first corner or with Enter. Or type a width and a depth."), look.Body, look.Scaled(width)),
		look.Gap(1, look.Grid/2),
		button(say("blank.trace.do", "Trace a room"), look.Solid, look.OnAccent, trace),
		button(say("blank.size.do", "A room by width × depth …"), look.Outline, look.Accent, func() { run("room-by-size") }),
		button(say("blank.demo.do", "Look at the demo cottage"), look.Outline, look.Accent, func() { run("demo") }),
		button(say("blank.open.do", "Open a plan …"), look.Outline, look.Accent, func() { run("open") }),
		look.Gap(1, look.Grid/2),
		look.NewParagraph(say("blank.drop", "A plan's file can also be dropped on this window."), look.Second, look.Scaled(width)))
	card := look.Back(look.OnSurface, 2*look.Radius, look.Inset(24, 24, 24, 24, text))
	return &FirstSteps{object: card}
}

// Over stands the card in the middle of the board.
func (b *FirstSteps) Over(board fyne.CanvasObject) fyne.CanvasObject {
	return &fyne.Container{Layout: overlaid{}, Objects: []fyne.CanvasObject{board, b.object}}
}

type overlaid struct{}

func (overlaid) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, 0) }

func (overlaid) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(size)
	least := o[1].MinSize()
	o[1].Resize(least)
	o[1].Move(fyne.NewPos(max(0, (size.Width-least.Width)/2), max(0, (size.Height-least.Height)/2)))
}

// Show shows the card or takes it away.
func (b *FirstSteps) Show(yes bool) { look.ShowIf(b.object, yes) }
