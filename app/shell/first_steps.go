package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// FirstSteps is what stands on the board of an empty plan: how to begin.
type FirstSteps struct{ object fyne.CanvasObject }

// NewFirstSteps makes the card; trace takes the tool for rooms, run gives a command, and
// never takes the card away for good.
func NewFirstSteps(v words.Voice, trace func(), run func(command string) bool, never func()) *FirstSteps {
	say := func(id, english string) string { return v.Say(words.New(id, english)) }
	const width = 540 // with its edges it fits a board 1024 units wide with the cards beside it
	button := func(label string, frame look.Frame, tone look.Tone, do func()) fyne.CanvasObject {
		text := look.NewText(label, look.Style{Bold: true, Tone: tone, Align: fyne.TextAlignCenter})
		return look.Sized((width-look.Grid)/2, 36, look.NewPress(text, frame, 2*look.Grid, look.Grid, do))
	}
	step := func(n, text string) fyne.CanvasObject {
		return look.TopRow(look.Grid, 1, look.NewText(n, look.Style{Bold: true, Tone: look.Accent}), look.NewParagraph(text, look.Body, look.Scaled(width-24)))
	}
	text := look.Column(look.Grid,
		look.NewParagraph(say("blank.title", "Begin with a room"), look.Style{Size: look.TagSize, Bold: true}, look.Scaled(width)),
		look.Column(look.Grid/2,
			step("1", say("blank.step.room", "Draw it with the Room tool (R): click its corners, or type lengths; Enter closes it.")),
			step("2", say("blank.step.breaks", "Set doors & windows (B), cabinets & furniture (F).")),
			step("3", say("blank.step.openings", "Click openings into its walls (O): outlets, switches, lights.")),
			step("4", say("blank.step.sheets", "Read what is found at the right; hand over the sheets (Ctrl+P).")),
		),
		look.Row(look.Grid, -1,
			button(say("blank.trace.do", "Trace a room"), look.Solid, look.OnAccent, trace),
			button(say("blank.size.do", "A room by width × depth …"), look.Outline, look.Accent, func() { run("room-by-size") })),
		look.Row(look.Grid, -1,
			button(say("blank.demo.do", "Look at the demo cottage"), look.Outline, look.Accent, func() { run("demo") }),
			button(say("blank.open.do", "Open a plan …"), look.Outline, look.Accent, func() { run("open") })),
		look.NewParagraph(say("blank.drop", "A plan's file can also be dropped on this window."), look.Second, look.Scaled(width)),
		look.Row(0, -1, look.NewPress(look.NewText(say("blank.never", "Do not show this again"), look.Style{Size: look.SecondSize, Tone: look.Accent}), look.Bare, 0, 5, never)))
	card := look.Back(look.OnSurface, 2*look.Radius, look.Inset(3*look.Grid, 2*look.Grid, 3*look.Grid, 2*look.Grid, text))
	return &FirstSteps{object: card}
}

// Over stands the card in the middle of the board, clear of the tapes along its top and left,
// which are so wide.
func (b *FirstSteps) Over(board fyne.CanvasObject, tape float32) fyne.CanvasObject {
	return &fyne.Container{Layout: overlaid{tape}, Objects: []fyne.CanvasObject{board, b.object}}
}

type overlaid struct{ tape float32 }

func (overlaid) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, 0) }

func (l overlaid) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(size)
	least := o[1].MinSize()
	o[1].Resize(least)
	free := size.SubtractWidthHeight(l.tape, l.tape)
	o[1].Move(fyne.NewPos(l.tape+max(0, (free.Width-least.Width)/2), l.tape+max(0, (free.Height-least.Height)/2)))
}

// IsShown reports whether the card is in sight.
func (b *FirstSteps) IsShown() bool { return b.object.Visible() }

// Show shows the card or takes it away.
func (b *FirstSteps) Show(yes bool) { look.ShowIf(b.object, yes) }
