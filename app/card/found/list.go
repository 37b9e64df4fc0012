// Package found shows what the checks found: the list of all of it, and the findings of
// what one card is of, with their remedies.
package found

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
)

// Of shows the findings that a card's thing has, with their remedies.
func Of(c *bind.Context, is func(rule.Finding) bool) (objects []fyne.CanvasObject) {
	for _, f := range c.Result.All() {
		if is(f) {
			objects = append(objects, inFull(c, f))
		}
	}
	return objects
}

// inFull is one finding in full: what is wrong, why, and the remedies with their
// price.
func inFull(c *bind.Context, f rule.Finding) fyne.CanvasObject {
	const mark = 14 + look.Grid
	width := c.Width - look.Scaled(mark+3*look.Grid)
	text := []fyne.CanvasObject{look.NewParagraph(c.Voice.Say(f.Message), look.Strong, width)}
	if !f.Why.IsZero() {
		text = append(text, look.NewParagraph(c.Voice.Say(f.Why), look.Quiet, width))
	}
	if f.Section != "" {
		text = append(text, look.NewParagraph(f.Section, look.Second, width))
	}
	if f.Waived != nil {
		text = append(text, look.NewParagraph(c.Say("finding.waived", "Set aside: {0}", f.Waived.Reason), look.Quiet, width))
	}
	for _, r := range f.Remedies {
		text = append(text, remedy(c, r, width))
	}
	block := look.TopRow(look.Grid, 1, look.NewMark(render.MarkOf(&f)), look.Column(look.Grid/2, text...))
	return look.NewMenued(look.Back(look.OnPaper, look.Radius, look.Inset(look.Grid, look.Grid, look.Grid, look.Grid, block)),
		func(at fyne.Position) { c.Window.Menu(f, at) })
}

// remedy is a button that tells the result and the price.
func remedy(c *bind.Context, r rule.Remedy, width float32) fyne.CanvasObject {
	const price = 64
	accent := look.Style{Bold: true, Tone: look.Accent}
	label := look.NewParagraph(c.Voice.Say(c.Result.Told(c.Index, r)), accent, width-look.Scaled(price+3*look.Grid))
	cost := look.NewText(priceText(c, r), look.Style{Size: look.SecondSize, Tone: look.Muted, Align: fyne.TextAlignTrailing})
	content := look.Row(look.Grid, 0, label, cost)
	return c.Press(content, look.Outline, look.Grid, look.Grid, func() { c.Do(r.Edit) })
}

func priceText(c *bind.Context, r rule.Remedy) string {
	switch {
	case r.Price == nil:
		return ""
	case r.Price.Cents == 0:
		return c.Say("remedy.same-price", "same price")
	case r.Price.Cents > 0:
		return c.Say("remedy.more", "+ {0}", *r.Price)
	}
	return c.Say("plain", "{0}", *r.Price)
}

// mostListed bounds the rows of the list: more are counted.
const mostListed = 120

// List is the list of all findings of the plan, room by room, the worst first, with
// their counts. It is made anew only where what it says changes, so that the row that
// has the focus keeps it.
type List struct {
	object *fyne.Container
	said   string // everything in the list
	width  float32
	rows   []*look.Press
	shown  []rule.Finding // one a row
	window bind.Window
	looked bool // what was looked at is unfolded

	filter    fill.Filter
	filtering bool // what is listed is unfolded
}

// NewList makes an empty list.
func NewList() *List { return &List{object: look.Column(look.Grid)} }

// Object is what stands in the column.
func (l *List) Object() fyne.CanvasObject { return l.object }

// Show brings the list up to what was found.
func (l *List) Show(c *bind.Context) {
	all := c.Result.All()
	if l.filter.Room != "" && c.Index.RoomOf(l.filter.Room) == nil {
		l.filter.Room = "" // it is gone
	}
	groups := fill.ByRoom(l.filter.Of(all))
	l.window, l.shown = c.Window, l.shown[:0]
	said := []string{Counts(c), c.Voice.Say(c.Result.UnconfirmedText()), strconv.FormatBool(c.Trade), l.filter.Rule, string(l.filter.Room), l.filter.Least.String()}
	if len(all) == 0 {
		said = append(said, nothingFound(c))
	}
	for _, g := range groups {
		said = append(said, c.Voice.Say(sentenceOf(c, g)))
		for _, f := range g {
			if len(l.shown) < mostListed {
				l.shown = append(l.shown, f)
				said = append(said, c.Voice.Say(f.Message), c.Voice.Say(told(c, f)), strconv.Itoa(int(render.MarkOf(&f))), strconv.FormatBool(f.Waived != nil))
			}
		}
	}
	looked := looked(c)
	said = append(append(said, calmRooms(c)), looked...)
	if text := strings.Join(said, "\n"); text != l.said || c.Width != l.width {
		l.said, l.width = text, c.Width
		l.build(c, all, groups)
		l.addLooked(c, looked)
	}
}

// build makes the rows; the row in the place of the one that had the focus gets it.
func (l *List) build(c *bind.Context, all []rule.Finding, groups [][]rule.Finding) {
	focused := slices.IndexFunc(l.rows, (*look.Press).Focused)
	l.rows = nil
	title := look.NewText(c.Say("list.title", "Findings"), look.Title)
	counts := look.NewParagraph(Counts(c), look.Second, c.Width-title.MinSize().Width-look.Scaled(look.Grid))
	rows := []fyne.CanvasObject{look.Row(look.Grid, 1, title, counts)}
	if not := c.Result.UnconfirmedText(); !not.IsZero() {
		rows = append(rows, look.NewParagraph(c.Voice.Say(not), look.Strong, c.Width))
	}
	if len(all) == 0 {
		rows = append(rows, look.NewParagraph(nothingFound(c), look.Quiet, c.Width))
	}
	if len(all) > 0 && len(groups) == 0 {
		rows = append(rows, look.NewParagraph(c.Say("list.none-listed", "None of what was found is such."), look.Quiet, c.Width))
	}
	for _, g := range groups {
		if len(l.rows) >= mostListed {
			break
		}
		rows = append(rows, l.group(c, g))
	}
	if calm := calmRooms(c); l.filter.IsZero() && calm != "" {
		rows = append(rows, look.HairLine(), look.NewParagraph(calm, look.Quiet, c.Width))
	}
	if more := len(l.filter.Of(all)) - mostListed; more > 0 {
		rows = append(rows, look.NewText(c.Say("list.further", "{0} more", more), look.Second))
	}
	if len(all) > 0 {
		rows = append(rows, look.HairLine(), l.filterRows(c, all))
	}
	l.object.Objects = rows
	l.object.Refresh()
	if focused >= 0 && len(l.rows) > 0 {
		l.focus(min(focused, len(l.rows)-1))
	}
}

// focus gives the focus to a row.
func (l *List) focus(i int) {
	if i < 0 || i >= len(l.rows) {
		return
	}
	if on := fyne.CurrentApp().Driver().CanvasForObject(l.rows[i]); on != nil {
		on.Focus(l.rows[i])
	}
}

// Focus puts the first row in hand, from where the arrows go on.
func (l *List) Focus() { l.focus(0) }

// nothingFound says what an empty list means, and what it does not.
func nothingFound(c *bind.Context) string {
	empty := true
	for _, l := range c.Index.Plan().Levels {
		empty = empty && l.Rooms.Len() == 0
	}
	if c.Result.IsRefused() {
		return c.Voice.Say(c.Result.NotChecked())
	}
	if c.Result.Figures == nil || empty {
		return c.Say("list.none-yet", "Nothing is drawn yet. What the checks find is listed here as you work.")
	}
	return c.Say("list.none", "The checks of {0} found nothing in what is drawn. What is not drawn is not checked.", c.Result.Figures.Title)
}

// Counts says how many findings there are of each kind.
func Counts(c *bind.Context) string {
	t := c.Result.Tally()
	var said words.Text
	for _, part := range []struct {
		n    int
		text words.Text
	}{
		{t.Stop, work.OneOr(t.Stop, words.New("count.stop-one", "1 stop"), words.New("count.stop", "{0} stops", t.Stop))},
		{t.Warn, work.OneOr(t.Warn, words.New("count.warn-one", "1 warning"), words.New("count.warn", "{0} warnings", t.Warn))},
		{t.Note, work.OneOr(t.Note, words.New("count.note-one", "1 note"), words.New("count.note", "{0} notes", t.Note))},
		{t.Open, work.DecisionsText(t.Open)},
		{t.Waived, work.OneOr(t.Waived, words.New("count.waived-one", "1 set aside"), words.New("count.waived", "{0} set aside", t.Waived))},
	} {
		switch {
		case part.n == 0:
		case said.IsZero():
			said = part.text
		default:
			said = words.New("count.and", "{0} · {1}", said, part.text)
		}
	}
	return c.Voice.Say(said)
}

func nameOf(c *bind.Context, room plan.ID) string {
	if r := c.Index.RoomOf(room); r != nil {
		return c.RoomApart(r)
	}
	return c.Say("list.plan", "The whole plan")
}

// calmRooms names the rooms in which nothing was found, or is empty where there is none.
func calmRooms(c *bind.Context) string {
	var names []string
	for _, r := range c.Result.Rooms(c.Index.Plan()) {
		if r.Room != nil && c.Result.Figures != nil && len(r.Found) == 0 {
			names = append(names, nameOf(c, r.Room.ID))
		}
	}
	if len(names) == 0 {
		return ""
	}
	return c.Say("list.calm", "Nothing was found in what was checked: {0}.", strings.Join(names, ", "))
}

// sentenceOf heads the findings of a room with how it stands, by all that was found in it; of
// what is in no room, by its name.
func sentenceOf(c *bind.Context, g []rule.Finding) words.Text {
	room := g[0].Room
	if room != "" {
		if report, ok := c.Result.RoomOf(c.Index.Plan(), room); ok {
			return report.SentenceOf(words.New("plain", "{0}", nameOf(c, room)))
		}
	}
	return words.New("plain", "{0}", nameOf(c, room))
}

func (l *List) group(c *bind.Context, g []rule.Finding) fyne.CanvasObject {
	const mark = 14 + look.Grid
	head := look.NewParagraph(c.Voice.Say(sentenceOf(c, g)), look.Second, c.Width-look.Scaled(mark))
	rows := []fyne.CanvasObject{look.HairLine(), look.TopRow(look.Grid, 1, look.NewMark(render.MarkOf(&g[0])), head)}
	for _, f := range g {
		if len(l.rows) == mostListed {
			break
		}
		rows = append(rows, l.row(c, f))
	}
	return look.Column(2, rows...)
}

// row is one finding in the list; pressing it goes there, the arrows go on to others.
func (l *List) row(c *bind.Context, f rule.Finding) fyne.CanvasObject {
	style := look.Body
	if f.Waived != nil {
		style = look.Quiet
	}
	width := c.Width - look.Scaled(14+3*look.Grid)
	text := look.Column(0, look.NewParagraph(c.Voice.Say(f.Message), style, width))
	if more := told(c, f); !more.IsZero() {
		text.Add(look.NewParagraph(c.Voice.Say(more), look.Quiet, width))
	}
	at := len(l.rows)
	press := look.NewPress(look.TopRow(look.Grid, 1, look.NewMark(render.MarkOf(&f)), text), look.Bare, look.Grid/2, 7,
		func() { l.window.Go(l.shown[at]) })
	press.OnFocus = func() { l.window.Reveal(press) }
	press.OnKey = func(key fyne.KeyName) bool {
		switch key {
		case fyne.KeyDown:
			l.focus(at + 1)
		case fyne.KeyUp:
			l.focus(at - 1)
		case fyne.KeyHome:
			l.focus(0)
		case fyne.KeyEnd:
			l.focus(len(l.rows) - 1)
		default:
			return false
		}
		return true
	}
	l.rows = append(l.rows, press)
	press.OnMenu = func(where fyne.Position) { l.window.Menu(l.shown[at], where) }
	return press
}
