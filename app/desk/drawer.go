package desk

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan/words"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// drawer lists the kinds of opening while the Opening tool is in hand.
type drawer struct {
	desk   *Desk
	search *finder
	width  float32 // of the drawer; 0 until it is first in sight, which fills it
	marked int     // of found, while something is looked for
	found  []*part.Kind
	list   *fyne.Container
	scroll *container.Scroll
	rows   map[string][]*look.Press     // by kind: it may stand under Recent too
	places map[string]fyne.CanvasObject // of the first row of a kind
	object fyne.CanvasObject
}

// shelf is one group of families in the drawer.
type shelf struct {
	title    words.Text
	families []part.Family
	// said is the word that the names of its kinds need not repeat.
	said words.Text
}

var shelves = []shelf{
	{words.New("shelf.receptacles", "Receptacles"), []part.Family{part.Receptacle}, words.New("shelf.receptacle", "receptacle")},
	{words.New("shelf.switches", "Switches"), []part.Family{part.Switch}, words.New("shelf.switch", "switch")},
	{words.New("shelf.lights", "Lights and fans"), []part.Family{part.Light, part.Fan}, words.Text{}},
	{words.New("shelf.others", "Alarms, data, junctions"), []part.Family{part.Alarm, part.LowVoltage, part.Junction}, words.Text{}},
}

func newDrawer(d *Desk) *drawer {
	w := &drawer{desk: d, list: look.Column(0)}
	w.search = newFinder(w)
	w.scroll = container.NewVScroll(look.Inset(look.Grid, 0, look.Grid, look.Grid, w.list))
	top := look.Inset(look.Grid+4, look.Grid+4, look.Grid+4, look.Grid, w.search)
	w.object = look.Back(look.OnSurface, 0, container.NewBorder(top, nil, nil, nil, look.Wheeled(w.scroll)))
	return w
}

// fill lists the kinds that the search finds.
func (w *drawer) fill() {
	if w.width == 0 {
		return
	}
	w.rows, w.places = map[string][]*look.Press{}, map[string]fyne.CanvasObject{}
	w.list.Objects = nil
	find := w.search.wanted()
	w.found, w.marked = nil, 0
	if recent := w.recent(); find == "" && len(recent) > 0 {
		w.shelf(shelf{title: words.New("shelf.recent", "Lately used")}, recent)
	}
	w.listFound(find, false)
	if len(w.found) == 0 {
		w.listFound(find, true)
	}
	if find != "" {
		w.marked = w.best(find)
	}
	w.refresh()
	if len(w.list.Objects) == 0 {
		w.list.Add(look.Inset(look.Grid/2, look.Grid, 0, 0,
			look.NewParagraph(w.desk.say("drawer.none", "No kind is called that."), look.Quiet, w.width-look.Scaled(4*look.Grid))))
	}
	w.list.Refresh()
	w.scroll.Refresh()
}

func (w *drawer) recent() (kinds []*part.Kind) {
	for _, id := range w.desk.prefs.kinds() {
		if k := part.All().Kind(id); k != nil {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

// listFound lists the kinds that hold the text in their names, or whose shelf does.
func (w *drawer) listFound(find string, byShelf bool) {
	for _, s := range shelves {
		kinds := w.kindsOf(s, find, byShelf)
		w.found = append(w.found, kinds...)
		w.shelf(s, kinds)
	}
}

// kindsOf lists a shelf's kinds whose name or device holds the text, or that people call
// so, or all where the shelf's own name does.
func (w *drawer) kindsOf(s shelf, find string, byShelf bool) (kinds []*part.Kind) {
	for _, k := range part.All().Kinds {
		if !slices.Contains(s.families, k.Family) {
			continue
		}
		text := strings.ToLower(w.desk.voice.Say(k.Text()) + " " + k.Device)
		if byShelf {
			text = strings.ToLower(w.desk.voice.Say(s.title))
		}
		if strings.Contains(text, find) || !byShelf && k.Called(find) < part.Unlike {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

func (w *drawer) shelf(s shelf, kinds []*part.Kind) {
	if len(kinds) == 0 {
		return
	}
	heading := look.NewFlexible(w.desk.voice.Say(s.title), look.Style{Size: look.SecondSize, Bold: true, Tone: look.Muted})
	w.list.Objects = append(w.list.Objects, look.Inset(look.Grid/2, look.Grid, 0, look.Grid/2, heading))
	for _, k := range kinds {
		w.list.Objects = append(w.list.Objects, w.row(k, w.desk.voice.Say(s.said)))
	}
}

// shortName returns a name without the word that its shelf says already.
func shortName(name, said string) string {
	if said == "" {
		return name
	}
	lower := strings.ToLower(name)
	at := strings.Index(lower, said)
	if at < 0 || len(lower) != len(name) {
		return name
	}
	if after, _ := utf8.DecodeRuneInString(lower[at+len(said):]); unicode.IsLetter(after) {
		return name // part of a longer word
	}
	rest := strings.TrimSpace(name[:at]) + name[at+len(said):]
	rest = strings.Trim(rest, " ,")
	first, size := utf8.DecodeRuneInString(rest)
	if size == 0 {
		return name
	}
	return string(unicode.ToUpper(first)) + rest[size:]
}

func (w *drawer) row(k *part.Kind, said string) fyne.CanvasObject {
	pic := look.NewPicture(kindWidth, kindHeight, func(width, height float64, p *look.Palette) []scene.Item {
		return kindPicture(k, width, height, p)
	})
	height := ""
	if h := k.UsualHeight(w.desk.doc().System()); h > 0 {
		height = w.desk.say("plain", "{0}", words.Height(h))
	}
	high := look.NewText(height, look.Second)
	// What is left of the drawer beside its edges, the row's own, and the gaps.
	left := w.width - look.Scaled(2*look.Grid+2*4+kindWidth+look.Grid) - high.MinSize().Width
	row := look.Row(look.Grid/2, 1, pic,
		look.NewParagraph(shortName(w.desk.voice.Say(k.Text()), said), look.Body, left), high)
	press := look.NewPress(row, look.Bare, 4, 2, func() { w.desk.takeKind(k.ID) })
	w.rows[k.ID] = append(w.rows[k.ID], press)
	place := look.AtLeast(rowHeight, press)
	if w.places[k.ID] == nil {
		w.places[k.ID] = place
	}
	return place
}

// refresh shows the kind in hand, and the one that Enter in the search would take.
func (w *drawer) refresh() {
	mark := w.mark()
	for id, rows := range w.rows {
		for _, press := range rows {
			press.SetChosen(id == w.desk.kind)
			press.SetMarked(mark != nil && id == mark.ID)
		}
	}
}

// setWidth lists the kinds anew where the drawer becomes another width.
func (w *drawer) setWidth(width float32) {
	if width != w.width {
		w.width = width
		w.fill()
	}
}

// takeKind takes a kind of opening in hand.
func (d *Desk) takeKind(id string) {
	d.takeByID("opening")
	d.kind, d.sample = id, nil
	d.window.Canvas().Unfocus()
	d.drawer.refresh()
	if d.drawer.search.Text != "" {
		d.drawer.search.SetText("")
		d.drawer.reveal(part.All().Kind(id))
	}
}

var families = map[part.Family]symbol.Family{
	part.Receptacle: symbol.Receptacle, part.Switch: symbol.Switch, part.LowVoltage: symbol.LowVoltage,
	part.Light: symbol.Light, part.Fan: symbol.Fan, part.Alarm: symbol.Alarm, part.Junction: symbol.Junction,
}

// The place of a kind's symbol in its row, in units, and the least height of the row.
const (
	kindWidth, kindHeight = 50, 30
	rowHeight             = look.HitTarget + 2
)

// kindPicture draws the symbol of a kind as it would stand on a wall below it, or in a
// ceiling. Letters for which the body has no room stand at its right.
func kindPicture(k *part.Kind, w, h float64, p *look.Palette) []scene.Item {
	unit := w / kindWidth
	style := symbol.Style{Size: 13 * unit, Ink: p.Accent, Paper: p.Surface, MinLine: 1.4 * unit}
	spec := symbol.Spec{Family: families[k.Family], Yokes: k.Yokes, Letters: k.Letters}
	beside := ""
	if !spec.HoldsLetters() {
		spec.Letters, beside = "", k.Letters
	}
	place := symbol.Place{Foot: scene.Point{X: 14 * unit, Y: h / 2}}
	if k.Host == part.Wall {
		place.Foot.Y, place.Into = h-3*unit, scene.Point{Y: -1}
	}
	drawn := symbol.Draw(place, style, spec)
	if top := drawn.Bounds().Min.Y; k.Host == part.Wall && top < unit { // a long stem
		style.Size *= (place.Foot.Y - unit) / (place.Foot.Y - top)
		drawn = symbol.Draw(place, style, spec)
	}
	if beside == "" {
		return drawn.Items
	}
	body := drawn.Bodies[0]
	return append(drawn.Items, scene.Run{
		At: scene.Point{X: body.Max.X + 4*unit, Y: (body.Min.Y + body.Max.Y) / 2}, Text: beside, Size: 11 * unit,
		Weight: glyph.Bold, VAlign: scene.Middle, Color: p.Accent,
	})
}
