package dialog

import (
	"cmp"
	"strconv"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/price"
)

// The measures of a line of the recipes.
const (
	recipeWide   = 200
	recipeNarrow = 150
)

// recipeRows are the lines of the recipes: of which boxes, counted by what, how much of which part
// and how many minutes.
func (t *priceTable) recipeRows() {
	s := t.stage
	t.rows.Add(look.NewParagraph(s.say("prices.recipe-note", "For each box of a kind: so much of a part, and so many minutes. Minutes are yours to set by your own work; those here are common practice or told by their source in the file."), look.Quiet, look.Scaled(priceWidth)))
	t.rows.Add(t.recipeLine(s.say("prices.boxes", "Boxes"), s.say("prices.per", "For each"), s.say("prices.part", "Part"), look.NewText(s.say("prices.count", "Count"), look.Second), look.NewText(s.say("prices.minutes", "Minutes"), look.Second), look.Gap(1, 1)))
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
		t.rows.Add(t.recipeLine(s.voice.Say(step.Boxes()), s.voice.Say(step.Per.Text()), cmp.Or(part, s.say("prices.only-minutes", "only minutes")), count, minutes.Entry, button(s.say("prices.drop", "Remove"), false, func() { t.remake(t.book.WithoutStep(i)) })))
	}
	t.rows.Add(look.HairLine())
	t.rows.Add(t.nextLine())
}

// remake shows the recipes of a book in which a line is more or less.
func (t *priceTable) remake(book *price.Book) {
	t.book = book
	t.changed()
	t.refill()
}

// nextStep is the line of a recipe that is to be added.
type nextStep struct{ boxes, per, part string }

// nextLine says of which boxes a new line is, counted by what and of which part, and adds it.
func (t *priceTable) nextLine() fyne.CanvasObject {
	s := t.stage
	choice := func(label string, width float32, now *string, offered []look.Option) fyne.CanvasObject {
		return s.pickOf(label, width, offered, func() string { return *now }, func(id string) { *now = id })
	}
	return look.Row(priceGap, -1,
		choice(s.say("prices.boxes", "Boxes"), recipeWide, &t.next.boxes, t.boxesOffered()),
		choice(s.say("prices.per", "For each"), recipeNarrow, &t.next.per, t.persOffered()),
		choice(s.say("prices.part", "Part"), recipeWide, &t.next.part, t.partsOffered()),
		button(s.say("prices.add", "Add a line"), false, func() {
			book, err := t.book.WithNewStep(t.next.boxes, price.Per(t.next.per), t.next.part)
			if t.complain(err); err == nil {
				t.remake(book)
			}
		}))
}

// boxesOffered are every box and those that a line there is speaks of; Short is what the table
// calls them.
func (t *priceTable) boxesOffered() (all []look.Option) {
	seen := map[string]bool{}
	for _, step := range append([]price.Step{{}}, t.book.Recipes()...) {
		if !seen[step.When] {
			seen[step.When] = true
			all = append(all, look.Option{Label: t.stage.voice.Say(step.Boxes()), Short: step.When})
		}
	}
	return all
}

func (t *priceTable) persOffered() (all []look.Option) {
	for _, per := range price.Pers {
		all = append(all, look.Option{Label: t.stage.voice.Say(per.Text()), Short: string(per)})
	}
	return all
}

func (t *priceTable) partsOffered() []look.Option {
	all := []look.Option{{Label: t.stage.say("prices.only-minutes", "only minutes")}}
	for _, p := range price.All() {
		all = append(all, look.Option{Label: t.stage.voice.Say(p.Name), Short: p.ID})
	}
	return all
}

// recipeLine lays the cells of a line of the recipes out.
func (t *priceTable) recipeLine(boxes, per, part string, count, minutes, drop fyne.CanvasObject) fyne.CanvasObject {
	cell := func(width float32, text string) fyne.CanvasObject {
		return look.Sized(width, 0, look.NewParagraph(text, look.Body, look.Scaled(width)))
	}
	return look.Row(priceGap, -1, cell(recipeWide, boxes), cell(recipeNarrow, per), cell(recipeWide, part), look.Sized(priceUnit+10, 0, count), look.Sized(priceUnit+10, 0, minutes), drop)
}
