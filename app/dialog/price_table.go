package dialog

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/fill/price"
	"studbay/fill/takeoff"
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
	next  nextStep     // to be added to the recipes

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
		stage: s, of: of, then: then, book: s.Prices(), saved: s.Prices(), rows: look.Column(2), next: nextStep{per: string(price.PerBox)},
		name: look.NewParagraph("", look.Strong, width), sum: look.NewParagraph(s.say("prices.wait", "The parts are being counted …"), look.Quiet, width),
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

// takeOff sums what the plan takes by the book as it stands, beside the window. What a book that
// was changed since would give is dropped.
func (t *priceTable) takeOff() {
	fig := t.of.Result().Figures
	if fig == nil {
		t.sum.SetWords(t.stage.voice.Say(t.of.Result().NotChecked()))
		return
	}
	ix, book := t.of.Index(), t.book
	go func() {
		whole := takeoff.NewTaker(ix, fig, book).Whole(ix.Plan())
		var used []price.Part
		for _, p := range takeoff.Parts(whole.Openings) {
			used = append(used, *p.Part)
		}
		cost, minutes := whole.Cost(), whole.Minutes()
		t.stage.post(func() {
			if t.stage.closed || t.book != book {
				return
			}
			t.sum.SetWords(t.stage.say("prices.sum", "All parts of this plan by these prices: {0}; minutes: {1}.", cost, minutes))
			isSame := slices.EqualFunc(t.used, used, func(a, b price.Part) bool { return a.ID == b.ID })
			if t.used = used; !isSame && t.list == (priceList{}) {
				t.refill()
			}
		})
	}()
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
		s.say("prices.unit", "of"), look.NewText(s.say("prices.day", "Date"), look.Second), look.NewText("", look.Second)))
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
func (t *priceTable) line(name string, price, pack fyne.CanvasObject, unit string, day, mark fyne.CanvasObject) fyne.CanvasObject {
	return look.Row(priceGap, -1, look.Sized(priceName, 0, look.NewParagraph(name, look.Body, look.Scaled(priceName))), look.Sized(priceCell, 0, price), look.Sized(priceCell, 0, pack),
		look.Sized(priceUnit, 0, look.NewText(unit, look.Second)), look.Sized(priceDay, 0, day), look.Sized(priceMark, 0, mark))
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
	marked, cells := look.NewText(mark, look.Second), [3]*cell{}
	for i := range cells {
		cells[i] = newCell(texts[i], func() bool {
			e, err := t.book.Rewritten(p.ID, cells[0].Text, cells[1].Text, cells[2].Text, time.Now().Format(time.DateOnly))
			if t.complain(err); err != nil {
				return false
			}
			t.book = t.book.With(p.ID, e)
			t.changed()
			marked.SetWords("")
			cells[2].put(e.Date)
			return true
		})
	}
	return t.line(t.stage.voice.Say(p.Name), cells[0].Entry, cells[1].Entry, t.stage.voice.Say(price.UnitText(p.Unit)), cells[2].Entry, marked)
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
		Answers: []Answer{{s.say("prices.leave", "Discard them"), nil}, {s.say("prices.save", "Save the price book"), t.save}},
	})
}
