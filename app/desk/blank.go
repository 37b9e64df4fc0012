package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// blank is what stands on the board of an empty plan: how to begin.
type blank struct {
	desk   *Desk
	object fyne.CanvasObject
}

func newBlank(d *Desk) *blank {
	const width = 380
	button := func(label string, frame look.Frame, tone look.Tone, do func()) fyne.CanvasObject {
		text := look.NewText(label, look.Style{Bold: true, Tone: tone, Align: fyne.TextAlignCenter})
		return look.Sized(0, 36, look.NewPress(text, frame, 2*look.Grid, look.Grid, do))
	}
	text := look.Column(look.Grid,
		look.NewParagraph(d.say("blank.title", "Begin with a room"), look.Style{Size: look.TagSize, Bold: true}, look.Scaled(width)),
		look.NewParagraph(d.say("blank.trace", "Take Room at the left and click its corners, or type a length while you draw; close it on the first corner or with Enter. Or type a width and a depth."), look.Body, look.Scaled(width)),
		look.Gap(1, look.Grid/2),
		button(d.say("blank.trace.do", "Trace a room"), look.Solid, look.OnAccent, func() { d.takeByID("room") }),
		button(d.say("blank.size.do", "A room by width × depth …"), look.Outline, look.Accent, func() { d.Run("room-by-size") }),
		button(d.say("blank.demo.do", "Look at the demo cottage"), look.Outline, look.Accent, func() { d.Run("demo") }),
		button(d.say("blank.open.do", "Open a plan …"), look.Outline, look.Accent, func() { d.Run("open") }),
		look.Gap(1, look.Grid/2),
		look.NewParagraph(d.say("blank.drop", "A plan's file can also be dropped on this window."), look.Second, look.Scaled(width)))
	card := look.Back(look.OnSurface, 2*look.Radius, look.Inset(24, 24, 24, 24, text))
	return &blank{desk: d, object: card}
}

// over stands the card in the middle of the board.
func (b *blank) over(board fyne.CanvasObject) fyne.CanvasObject {
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

// refresh shows the card while the plan is empty and nothing is being drawn.
func (b *blank) refresh() {
	d := b.desk
	empty := true
	for _, l := range d.doc().Plan().Levels {
		empty = empty && l.Rooms.Len() == 0
	}
	look.ShowIf(b.object, empty && d.inHand == 0)
}
