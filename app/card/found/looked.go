package found

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
)

// looked says which rules looked at which rooms, a group of rules alike after the other:
// where at even places, which rules and what was left behind.
func looked(c *bind.Context) (lines []string) {
	for _, alike := range c.Result.LookedAlike(c.Index.Plan().Levels...) {
		var titles []string
		for _, r := range alike.Rules {
			titles = append(titles, c.Voice.Say(r.Title))
		}
		said := strings.Join(titles, "; ") + "."
		for _, not := range alike.Not {
			said += " " + c.Say("looked.sentence", "{0}.", not)
		}
		lines = append(lines, c.Say("looked.group", "{0}:", alike.Where), said)
	}
	return lines
}

// addLooked puts what was looked at under the list, folded.
func (l *List) addLooked(c *bind.Context, lines []string) {
	if len(lines) == 0 {
		return
	}
	var rows []fyne.CanvasObject
	for i := 0; i+1 < len(lines); i += 2 {
		rows = append(rows, look.NewParagraph(lines[i], look.Second, c.Width), look.NewParagraph(lines[i+1], look.Quiet, c.Width))
	}
	fold := bind.NewFold(c, c.Say("looked.title", "What was checked"), look.Column(2, rows...))
	fold.SetOpen(l.looked)
	fold.Changed = func(open bool) { l.looked = open }
	l.object.Objects = append(l.object.Objects, look.HairLine(), fold)
	l.object.Refresh()
}
