package dialog

import (
	"cmp"
	"strconv"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/price"
)

// recipeRows are the lines of the recipes: of which boxes, counted by what, how much of which part
// and how many minutes.
func (t *priceTable) recipeRows() {
	s := t.stage
	t.rows.Add(look.NewParagraph(s.say("prices.recipe-note", "For each box of a kind: so much of a part, and so many minutes. Minutes are yours to set by your own work; those here are common practice or told by their source in the file."), look.Quiet, look.Scaled(priceWidth)))
	t.rows.Add(t.recipeLine(s.say("prices.boxes", "Boxes"), s.say("prices.per", "For each"), s.say("prices.part", "Part"), look.NewText(s.say("prices.count", "Count"), look.Second), look.NewText(s.say("prices.minutes", "Minutes"), look.Second)))
	t.rows.Add(look.HairLine())
	for i, step := range t.book.Recipes() {
		part, count, minutes := "", fyne.CanvasObject(look.NewText("–", look.Quiet)), (*cell)(nil)
		counted := (*cell)(nil)
		take := func() bool {
			n, err := 0, error(nil)
			if counted != nil {
				n, err = price.Figure(counted.Text)
			}
			m, bad := price.Figure(minutes.Text)
			if err = cmp.Or(err, bad); err != nil {
				t.complain(err)
				return false
			}
			t.complain(nil)
			t.book = t.book.WithStep(i, n, m)
			t.changed()
			return true
		}
		if p, ok := price.Find(step.Part); ok {
			part = s.voice.Say(p.Name)
			counted = newCell(strconv.Itoa(step.Count), take)
			count = counted.Entry
		}
		minutes = newCell(strconv.Itoa(step.Minutes), take)
		t.rows.Add(t.recipeLine(s.voice.Say(step.Boxes()), s.voice.Say(step.Per.Text()), cmp.Or(part, s.say("prices.only-minutes", "only minutes")), count, minutes.Entry))
	}
}

// recipeLine lays the cells of a line of the recipes out.
func (t *priceTable) recipeLine(boxes, per, part string, count, minutes fyne.CanvasObject) fyne.CanvasObject {
	const wide, narrow = 220, 180
	cell := func(width float32, text string) fyne.CanvasObject {
		return look.Sized(width, 0, look.NewParagraph(text, look.Body, look.Scaled(width)))
	}
	return look.Row(priceGap, -1, cell(wide, boxes), cell(narrow, per), cell(wide, part), look.Sized(priceUnit+20, 0, count), look.Sized(priceUnit+20, 0, minutes))
}
