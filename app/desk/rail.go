package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/tool"
)

// rail is the column of tools at the left, each with its name under its icon.
type rail struct {
	desk   *Desk
	press  []*look.Press
	names  []*look.Text
	icons  []*look.Picture
	object fyne.CanvasObject
}

func newRail(d *Desk) *rail {
	r := &rail{desk: d}
	column := []fyne.CanvasObject{look.Gap(1, look.Grid)}
	for i, t := range d.tools {
		tone := func() look.Tone {
			if d.inHand == i {
				return look.Accent
			}
			return look.Ink
		}
		icon := look.NewIcon(t.Icon, 22, tone)
		name := look.NewText(d.voice.Say(t.Title), look.Style{Size: look.SecondSize, Align: fyne.TextAlignCenter})
		press := look.NewPress(look.Column(look.Grid/2, look.Centred(icon), name), look.Bare, 2, look.Grid-1, func() { d.TakeTool(i) })
		r.icons, r.names, r.press = append(r.icons, icon), append(r.names, name), append(r.press, press)
		column = append(column, look.Inset(look.Grid, 0, look.Grid, 0, press))
	}
	r.object = look.Back(look.OnSurface, 0, look.Column(look.Grid/2, column...))
	r.refresh()
	return r
}

// refresh marks the tool in hand.
func (r *rail) refresh() {
	for i, press := range r.press {
		press.SetChosen(i == r.desk.inHand)
		tone := look.Ink
		if i == r.desk.inHand {
			tone = look.Accent
		}
		r.names[i].SetTone(tone)
		r.icons[i].Refresh()
	}
}

// TakeTool takes a tool in hand by its place on the rail; the one before drops what it
// has not finished.
func (d *Desk) TakeTool(i int) {
	if i == d.inHand || i < 0 || i >= len(d.tools) {
		return
	}
	d.tool().Leave(d.table)
	d.inHand = i
	d.preview, d.sample = tool.Preview{}, nil
	d.rail.refresh()
	d.showPanels()
	d.blank.refresh()
	d.showHint()
	d.showPreview()
}

// tool returns the tool in hand.
func (d *Desk) tool() tool.Tool { return d.tools[d.inHand].tool }

// toolByID takes the tool of an ID in hand.
func (d *Desk) takeByID(id string) {
	for i, t := range d.tools {
		if t.tool.ID() == id {
			d.TakeTool(i)
		}
	}
}
