package dialog

import (
	"cmp"
	"strconv"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/words"
)

// The measures of the table of prices.
const (
	priceName   = 330
	priceCell   = 92
	priceUnit   = 52
	priceDay    = 116
	priceMark   = 80
	priceGap    = look.Grid
	priceWidth  = priceName + 2*priceCell + priceUnit + priceDay + priceMark + 5*priceGap
	priceHeight = 560
)

// priceList is which lines of the table are shown: what the plan takes, the parts of a shelf, or
// the recipes.
type priceList struct {
	shelf   price.Group
	recipes bool
}

// priceTable is a price book in the window, to be changed line by line.
type priceTable struct {
	stage *Stage
	of    Chosen
	then  func(path string) // a book was saved there
	book  *price.Book
	saved *price.Book // as the book was read or saved last
	list  priceList
	used  []price.Part // that the plan takes

	which       *look.Choice
	name, sum   *look.Paragraph
	wrong, note *look.Paragraph
	rows        *fyne.Container
	view        *container.Scroll
}

// ShowPrices shows the price book in force as a table: what a pack of each part costs, how much
// is in it, of which day that is, and what each box takes. Then is told where a changed book was
// saved.
func (s *Stage) ShowPrices(of Chosen, then func(path string)) {
	width := look.Scaled(priceWidth)
	t := &priceTable{
		stage: s, of: of, then: then, book: s.Prices(), saved: s.Prices(), rows: look.Column(2),
		name: look.NewParagraph("", look.Strong, width), sum: look.NewParagraph("", look.Quiet, width),
		wrong: look.NewParagraph("", look.Style{Tone: look.Stop}, width),
		note:  look.NewParagraph(s.say("prices.note", "A price is of a whole pack. A line that you change has today's date and is marked invented no more. Prices are kept in a file of their own, which the plan names."), look.Quiet, width),
	}
	t.which = look.NewChoice(s.say("prices.show", "Show"), "", t.lists)
	t.which.SetWidth(look.Scaled(priceName))
	t.view = container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, t.rows))
	t.takeOff()
	t.refill()
	buttons := look.Row(look.Grid, -1,
		button(s.say("prices.save", "Save the price book"), true, t.save),
		button(s.say("prices.out", "Write as CSV …"), false, func() { s.askPricesFile(t.book, t.kept) }),
		button(s.say("prices.in", "Take in a CSV …"), false, t.takeIn))
	head := look.Column(look.Grid, t.name, t.note, t.which, t.wrong)
	foot := look.Inset(0, look.Grid, 0, 0, look.Column(look.Grid, t.sum, buttons))
	inside := container.NewBorder(head, foot, nil, nil, look.Wheeled(t.view))
	s.spread(s.say("prices.title", "Prices and recipes"), priceWidth+4*look.Grid, priceHeight, inside, t.close)
}

// lists are what can be shown.
func (t *priceTable) lists() (all []look.Option) {
	add := func(label string, list priceList) {
		all = append(all, look.Option{Label: label, Now: list == t.list, Do: func() {
			t.list = list
			t.which.Update()
			t.refill()
			t.view.ScrollToTop()
		}})
	}
	add(t.stage.say("prices.used-here", "What this plan takes"), priceList{})
	for _, g := range price.Groups {
		add(t.stage.voice.Say(g.Text()), priceList{shelf: g})
	}
	add(t.stage.say("prices.recipes", "Recipes: what each box takes"), priceList{recipes: true})
	return all
}

// takeOff sums what the plan takes by the book as it stands.
func (t *priceTable) takeOff() {
	fig := t.of.Result().Figures
	if fig == nil {
		t.sum.SetWords(t.stage.voice.Say(t.of.Result().NotChecked()))
		return
	}
	whole := takeoff.NewTaker(t.of.Index(), fig, t.book).Whole(t.of.Index().Plan())
	t.used = nil
	for _, p := range takeoff.Parts(whole.Openings) {
		t.used = append(t.used, *p.Part)
	}
	t.sum.SetWords(t.stage.say("prices.sum", "All parts of this plan by these prices: {0}; minutes: {1}.", whole.Cost(), whole.Minutes()))
}

// shown are the parts of the list in sight.
func (t *priceTable) shown() (parts []price.Part) {
	if t.list.shelf == "" {
		return t.used
	}
	for _, p := range price.All() {
		if p.Group == t.list.shelf {
			parts = append(parts, p)
		}
	}
	return parts
}

// refill makes the lines anew.
func (t *priceTable) refill() {
	s := t.stage
	t.rows.Objects = nil
	t.sayBook()
	t.complain(nil)
	if t.list.recipes {
		t.recipeRows()
		t.rows.Refresh()
		return
	}
	t.rows.Add(t.line(
		s.say("prices.part", "Part"), look.NewText(s.say("prices.price", "Price of a pack"), look.Second), look.NewText(s.say("prices.pack", "In a pack"), look.Second),
		s.say("prices.unit", "of"), look.NewText(s.say("prices.day", "Date"), look.Second), ""))
	t.rows.Add(look.HairLine())
	for _, p := range t.shown() {
		t.rows.Add(t.row(p))
	}
	t.rows.Refresh()
}

// sayBook says which book it is, and that it is changed.
func (t *priceTable) sayBook() {
	name := t.stage.voice.Say(t.book.Text())
	if t.book != t.saved {
		name = t.stage.say("prices.changed", "{0}, changed and not saved yet", t.saved.Text())
	}
	t.name.SetWords(name)
}

// line lays the cells of a line out.
func (t *priceTable) line(name string, price, pack fyne.CanvasObject, unit string, day fyne.CanvasObject, mark string) fyne.CanvasObject {
	return look.Row(priceGap, -1, look.Sized(priceName, 0, look.NewParagraph(name, look.Body, look.Scaled(priceName))), look.Sized(priceCell, 0, price), look.Sized(priceCell, 0, pack),
		look.Sized(priceUnit, 0, look.NewText(unit, look.Second)), look.Sized(priceDay, 0, day), look.Sized(priceMark, 0, look.NewText(mark, look.Second)))
}

// row is the line of a part.
func (t *priceTable) row(p price.Part) fyne.CanvasObject {
	e, has := t.book.Entry(p.ID)
	texts := [3]string{}
	if has {
		texts = [3]string{string(price.Amount(e.Pack)), e.Per.String(), e.Date}
	}
	mark := ""
	if e.Invented {
		mark = t.stage.say("prices.invented", "invented")
	}
	cells := [3]*look.Entry{}
	for i := range cells {
		cells[i] = t.entry(texts[i], func() bool { return t.write(p, texts, [3]string{cells[0].Text, cells[1].Text, cells[2].Text}) })
	}
	return t.line(t.stage.voice.Say(p.Name), cells[0], cells[1], t.stage.voice.Say(price.UnitText(p.Unit)), cells[2], mark)
}

// entry is a cell to write in: what stands in it is taken once it is left, or at Enter; Escape
// brings back what stood there.
func (t *priceTable) entry(text string, take func() bool) *look.Entry {
	e := look.NewEntry()
	e.SetText(text)
	kept := text
	leave := func() {
		if e.Text != kept && take() {
			kept = e.Text
		}
	}
	e.OnLeave = leave
	e.OnSubmitted = func(string) { leave() }
	e.OnEscape = func() { e.SetText(kept) }
	return e
}

// write puts a line into the book. A price that changed is of today unless the day was written
// too, and is nobody's invention any more.
func (t *priceTable) write(p price.Part, before, texts [3]string) bool {
	if texts[2] == before[2] {
		texts[2] = time.Now().Format(time.DateOnly)
	}
	e, _, err := price.ParseEntry(texts[0], texts[1], texts[2])
	if t.complain(err); err != nil {
		return false
	}
	t.book = t.book.With(p.ID, e)
	t.changed()
	return true
}

// changed shows the book as it is now.
func (t *priceTable) changed() {
	t.takeOff()
	t.sayBook()
}

// complain says what is wrong with what was written last, or nothing.
func (t *priceTable) complain(err error) {
	text := ""
	if err != nil {
		text = t.stage.ErrorText(err)
	}
	t.wrong.SetWords(text)
	look.ShowIf(t.wrong, text != "")
}

// recipeRows are the lines of the recipes: of which boxes, counted by what, how much of which part
// and how many minutes.
func (t *priceTable) recipeRows() {
	s := t.stage
	t.rows.Add(look.NewParagraph(s.say("prices.recipe-note", "For each box of a kind: so much of a part, and so many minutes. Minutes are yours to set by your own work; those here are common practice or told by their source in the file."), look.Quiet, look.Scaled(priceWidth)))
	t.rows.Add(t.recipeLine(s.say("prices.boxes", "Boxes"), s.say("prices.per", "For each"), s.say("prices.part", "Part"), look.NewText(s.say("prices.count", "Count"), look.Second), look.NewText(s.say("prices.minutes", "Minutes"), look.Second)))
	t.rows.Add(look.HairLine())
	for i, step := range t.book.Recipes() {
		part, count, minutes := "", fyne.CanvasObject(look.NewText("–", look.Quiet)), (*look.Entry)(nil)
		counted := (*look.Entry)(nil)
		take := func() bool {
			n := 0
			if counted != nil {
				n = t.figure(counted)
			}
			m := t.figure(minutes)
			if n < 0 || m < 0 {
				return false
			}
			t.complain(nil)
			t.book = t.book.WithStep(i, n, m)
			t.changed()
			return true
		}
		if p, ok := price.Find(step.Part); ok {
			part = s.voice.Say(p.Name)
			counted = t.entry(strconv.Itoa(step.Count), take)
			count = counted
		}
		minutes = t.entry(strconv.Itoa(step.Minutes), take)
		t.rows.Add(t.recipeLine(s.voice.Say(step.Boxes()), s.voice.Say(step.Per.Text()), cmp.Or(part, s.say("prices.only-minutes", "only minutes")), count, minutes))
	}
}

// figure reads a whole number of a recipe; below zero it is none, which was said.
func (t *priceTable) figure(e *look.Entry) int {
	n, err := strconv.Atoi(e.Text)
	if err != nil || n < 0 || n > 1000 {
		t.complain(words.Fault("recipe.no-number", "\"{0}\" is not a number of zero or more", e.Text))
		return -1
	}
	return n
}

func (t *priceTable) recipeLine(boxes, per, part string, count, minutes fyne.CanvasObject) fyne.CanvasObject {
	const wide, narrow = 220, 180
	cell := func(width float32, text string) fyne.CanvasObject {
		return look.Sized(width, 0, look.NewParagraph(text, look.Body, look.Scaled(width)))
	}
	return look.Row(priceGap, -1, cell(wide, boxes), cell(narrow, per), cell(wide, part), look.Sized(priceUnit+20, 0, count), look.Sized(priceUnit+20, 0, minutes))
}

// takeIn reads a book in place of that in sight; it is not saved until the user says so.
func (t *priceTable) takeIn() {
	s := t.stage
	s.canvas().Unfocus()
	s.AskFile(FileForm{Title: s.say("prices.choose", "Use the prices of"), Yes: s.say("prices.use", "Use"), Extensions: []string{".csv"}, Open: true}, func(path string) {
		book, err := price.ReadFile(path, path)
		if err != nil {
			s.Trouble(s.say("prices.failed", "The prices could not be read"), err)
			return
		}
		t.book = book
		t.kept(path)
	})
}

// save writes the book to its file; one that has none yet asks for it.
func (t *priceTable) save() {
	t.stage.canvas().Unfocus() // what is being written is taken
	if at := t.stage.pricesAt; at != "" && t.stage.prices != nil {
		if t.stage.writePrices(at, t.book) {
			t.kept(at)
		}
		return
	}
	t.stage.askPricesFile(t.book, t.kept)
}

// kept is told that the book stands in a file, and has the plan name it.
func (t *priceTable) kept(path string) {
	t.stage.pricesAt = "" // it is another than was read
	t.then(path)
	t.book = t.stage.Prices()
	t.saved = t.book
	t.takeOff()
	t.refill()
}

// close asks once where what was changed would be lost.
func (t *priceTable) close() {
	if t.book == t.saved {
		return
	}
	s := t.stage
	s.Ask(Question{
		Title: s.say("prices.unsaved", "The prices are not saved"), Body: s.say("prices.unsaved-body", "What you changed is in no file yet."),
		Answers: []Answer{{s.say("prices.leave", "Leave them"), nil}, {s.say("prices.save", "Save the price book"), t.save}},
	})
}
