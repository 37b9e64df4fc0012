package dialog

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/choose"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// minutesTall is how tall a bar of minutes is.
const minutesTall = 12

// byRoom are the rows of what each room costs more or less than the plan as it is; nothing
// where no room differs.
func (t choiceTable) byRoom() (rows []fyne.CanvasObject) {
	s := t.stage
	for i, room := range choose.Differences(t.columns) {
		if i == 0 {
			rows = append(rows, look.HairLine(), look.NewText(s.say("choice.by-room", "More or less than the plan as it is, by room"), look.Strong))
		}
		at := 0
		rows = append(rows, t.row(look.NewParagraph(s.voice.Say(room.Name), look.Body, look.Scaled(choiceName-look.Grid)), func(c choose.Column) fyne.CanvasObject {
			cents := room.Cents[at]
			at++
			return look.NewText(signed(unit.Money{Cents: cents, Currency: c.Takeoff.Book.Currency}), look.Body)
		}))
	}
	return rows
}

// signed writes a difference of money: a dash where there is none.
func signed(m unit.Money) string {
	switch {
	case m.Cents == 0:
		return "–"
	case m.Cents > 0:
		return "+" + m.String()
	}
	m.Cents = -m.Cents
	return "−" + m.String()
}

// minutesKey says what the open bars are.
func (t choiceTable) minutesKey() fyne.CanvasObject {
	return look.NewParagraph(t.stage.say("choice.minutes", "Minutes; a tick is an hour"), look.Second, look.Scaled(choiceName-look.Grid))
}

// minuteBar is an open bar as long as the minutes of a policy, all on one scale from zero, with
// a tick an hour.
func (t choiceTable) minuteBar(c choose.Column) fyne.CanvasObject {
	most := 1
	for _, other := range t.columns {
		most = max(most, other.Takeoff.Minutes())
	}
	minutes := c.Takeoff.Minutes()
	bar := look.NewPicture(look.Scaled(choiceColumn-4*look.Grid), look.Scaled(minutesTall), func(w, h float64, p *look.Palette) (items []scene.Item) {
		long := (w - 1) * float64(minutes) / float64(most)
		pen := scene.Pen{Width: 1, Color: p.Accent}
		for hour := 60; hour < minutes; hour += 60 {
			x := 0.5 + (w-1)*float64(hour)/float64(most)
			items = append(items, scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: h / 2}, scene.Point{X: x, Y: h - 0.5}), Pen: pen})
		}
		outline := scene.Rect{Min: scene.Point{X: 0.5, Y: 0.5}, Max: scene.Point{X: 0.5 + long, Y: h - 0.5}}
		return append(items, scene.Stroke{Path: outline.Path(), Pen: pen})
	})
	return look.Column(2, look.NewText(strconv.Itoa(minutes), look.Strong), look.Row(0, -1, bar))
}

// changes lists what taking a policy changes, before anything is.
func (t choiceTable) changes(c choose.Column) fyne.CanvasObject {
	s := t.stage
	width := look.Scaled(choiceName + 4*choiceColumn)
	cost := c.PartsCost()
	cost.Cents -= t.columns[0].PartsCost().Cents
	minutes := c.Takeoff.Minutes() - t.columns[0].Takeoff.Minutes()
	rows := []fyne.CanvasObject{
		look.NewParagraph(s.voice.Say(c.Policy.Name), look.Title, width),
		look.NewParagraph(s.say("choice.changes", "It changes {0} boxes: parts {1}, minutes {2} against the plan as it is.", len(c.Changes), signed(cost), signedCount(minutes)), look.Body, width),
		look.HairLine(),
	}
	for _, a := range choose.Together(c.Changes) {
		rows = append(rows,
			look.NewParagraph(s.say("choice.change", "{0} × {1}, in place of {2}", len(a.Tags), a.To, a.From), look.Body, width),
			look.NewParagraph(strings.Join(a.Tags, ", "), look.Second, width))
	}
	rows = append(rows, look.HairLine(), look.NewParagraph(s.say("choice.undo", "It is one step: Undo brings every box back."), look.Quiet, width),
		look.Row(look.Grid, -1,
			button(s.say("choice.back", "Back to the table"), false, func() { t.show(t.made()) }),
			button(s.say("choice.do", "Change {0} boxes", len(c.Changes)), true, func() { t.take(c) })))
	return look.Column(look.Grid, rows...)
}

// signedCount writes a difference of whole numbers.
func signedCount(n int) string {
	switch {
	case n == 0:
		return "–"
	case n > 0:
		return "+" + strconv.Itoa(n)
	}
	return "−" + strconv.Itoa(-n)
}
