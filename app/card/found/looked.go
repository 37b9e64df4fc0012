package found

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/plan/words"
)

// mostNamed bounds the rooms of a rule that are named; more are counted.
const mostNamed = 40

// looked says of each rule which rooms it looked at and which not, a line each: the names
// of rules at even places, what they looked at behind.
func looked(c *bind.Context) (lines []string) {
	if c.Result.Figures == nil {
		return nil
	}
	for _, l := range c.Result.Looked(c.Index.Plan().Levels...) {
		lines = append(lines, c.Voice.Say(l.Rule.Title), lookedAt(c, l))
	}
	return lines
}

func lookedAt(c *bind.Context, l fill.Looked) string {
	said := words.Text{}
	add := func(t words.Text) {
		if said.IsZero() {
			said = t
		} else {
			said = words.New("looked.then", "{0}; {1}", said, t)
		}
	}
	switch n := len(l.At); {
	case n > mostNamed:
		add(words.New("looked.count", "in {0} rooms", n))
	case n > 0:
		add(words.New("looked.rooms", "in {0}", l.AtText()))
	}
	for _, not := range l.Together() {
		if not.Count > mostNamed {
			add(words.New("looked.not-count", "not, or not all of it, in {0} rooms: {1}", not.Count, not.Why))
			continue
		}
		add(words.New("looked.not", "not, or not all of it, in {0}: {1}", not.Rooms, not.Why))
	}
	return c.Voice.Say(said)
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
