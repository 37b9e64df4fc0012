package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/plan/words"
)

// Tool is one tool of the rail, ready for use.
type Tool struct {
	tool.Entry
	Tool tool.Tool
}

// Hand is what parts of the window see of the tools: which there are, by their places on
// the rail, and which of them is in hand.
type Hand interface {
	Tools() []Tool
	InHand() int
	Take(i int)
}

// Rail is the column of tools at the left, each with its name under its icon.
type Rail struct {
	hand   Hand
	press  []*look.Press
	names  []*look.Paragraph
	icons  []*look.Picture
	Object fyne.CanvasObject
}

// nameWidth is what a tool's name may take of the rail's width, in units before scaling;
// a longer one goes over several lines.
const nameWidth = railWidth - look.Grid - 4

// NewRail makes the rail.
func NewRail(hand Hand, v words.Voice) *Rail {
	r := &Rail{hand: hand}
	column := []fyne.CanvasObject{look.Gap(1, look.Grid)}
	for i, t := range hand.Tools() {
		tone := func() look.Tone {
			if hand.InHand() == i {
				return look.Accent
			}
			return look.Ink
		}
		icon := look.NewIcon(t.Icon, 22, tone)
		name := look.NewParagraph(v.Say(t.Title), look.Style{Size: look.SecondSize, Align: fyne.TextAlignCenter}, look.Scaled(nameWidth))
		press := look.NewPress(look.Column(look.Grid/2, look.Centred(icon), name), look.Bare, 2, look.Grid-1, func() { hand.Take(i) })
		r.icons, r.names, r.press = append(r.icons, icon), append(r.names, name), append(r.press, press)
		column = append(column, look.Inset(look.Grid/2, 0, look.Grid/2, 0, press))
	}
	r.Object = look.Back(look.OnSurface, 0, look.Column(look.Grid/2, column...))
	r.Refresh()
	return r
}

// Refresh marks the tool in hand.
func (r *Rail) Refresh() {
	for i, press := range r.press {
		press.SetChosen(i == r.hand.InHand())
		tone := look.Ink
		if i == r.hand.InHand() {
			tone = look.Accent
		}
		r.names[i].SetTone(tone)
		r.icons[i].Refresh()
	}
}
