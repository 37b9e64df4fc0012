package desk

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// drawer lists the kinds of opening while the Opening tool is in hand.
type drawer struct {
	desk   *Desk
	search *widget.Entry
	list   *fyne.Container
	scroll *container.Scroll
	rows   map[string][]*look.Press // by kind: it may stand under Recent too
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
	w.search = widget.NewEntry()
	w.search.SetPlaceHolder(d.say("drawer.find", "Find a kind …"))
	w.search.OnChanged = func(string) { w.fill() }
	w.search.OnSubmitted = func(string) { w.takeFirst() }
	w.scroll = container.NewVScroll(look.Inset(look.Grid, 0, look.Grid, look.Grid, w.list))
	top := look.Inset(look.Grid+4, look.Grid+4, look.Grid+4, look.Grid, w.search)
	w.object = look.Back(look.OnSurface, 0, container.NewBorder(top, nil, nil, nil, w.scroll))
	w.fill()
	return w
}

// fill lists the kinds that the search finds.
func (w *drawer) fill() {
	w.rows = map[string][]*look.Press{}
	w.list.Objects = nil
	find := strings.ToLower(strings.TrimSpace(w.search.Text))
	if recent := w.recent(); find == "" && len(recent) > 0 {
		w.shelf(shelf{title: words.New("shelf.recent", "Lately used")}, recent)
	}
	for _, s := range shelves {
		w.shelf(s, w.kindsOf(s, find))
	}
	if len(w.list.Objects) == 0 {
		w.list.Add(look.Inset(look.Grid/2, look.Grid, 0, 0,
			look.NewParagraph(w.desk.say("drawer.none", "No kind is called that."), look.Quiet, look.Scaled(drawerWidth-32))))
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

// kindsOf lists a shelf's kinds whose name or family holds the text.
func (w *drawer) kindsOf(s shelf, find string) (kinds []*part.Kind) {
	for _, k := range part.All().Kinds {
		if !slices.Contains(s.families, k.Family) {
			continue
		}
		text := strings.ToLower(w.desk.voice.Say(k.Text()) + " " + w.desk.voice.Say(s.title) + " " + k.Device)
		if strings.Contains(text, find) {
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
	pic := look.NewPicture(28, 28, func(width, height float64, p *look.Palette) []scene.Item {
		return kindPicture(k, width, height, p)
	})
	height := ""
	if k.Height > 0 {
		height = w.desk.say("plain", "{0}", words.Height(k.Height))
	}
	row := look.Row(look.Grid/2, 1, pic,
		look.NewFlexible(shortName(w.desk.voice.Say(k.Text()), said), look.Body),
		look.NewText(height, look.Second))
	press := look.NewPress(row, look.Bare, 4, 2, func() { w.desk.takeKind(k.ID) })
	press.SetChosen(k.ID == w.desk.kind)
	w.rows[k.ID] = append(w.rows[k.ID], press)
	return look.Sized(0, look.HitTarget, press)
}

// takeFirst takes the first kind found, as Enter in the search asks.
func (w *drawer) takeFirst() {
	find := strings.ToLower(strings.TrimSpace(w.search.Text))
	for _, s := range shelves {
		if kinds := w.kindsOf(s, find); len(kinds) > 0 {
			w.desk.takeKind(kinds[0].ID)
			return
		}
	}
}

// refresh marks the kind in hand.
func (w *drawer) refresh() {
	for id, rows := range w.rows {
		for _, press := range rows {
			press.SetChosen(id == w.desk.kind)
		}
	}
}

// takeKind takes a kind of opening in hand.
func (d *Desk) takeKind(id string) {
	d.kind = id
	d.takeByID("opening")
	d.drawer.refresh()
	d.window.Canvas().Unfocus()
}

var families = map[part.Family]symbol.Family{
	part.Receptacle: symbol.Receptacle, part.Switch: symbol.Switch, part.LowVoltage: symbol.LowVoltage,
	part.Light: symbol.Light, part.Fan: symbol.Fan, part.Alarm: symbol.Alarm, part.Junction: symbol.Junction,
}

// kindPicture draws the symbol of a kind as it would stand on a wall below it, or in a
// ceiling.
func kindPicture(k *part.Kind, w, h float64, p *look.Palette) []scene.Item {
	const body = 11
	style := symbol.Style{Size: body, Ink: p.Accent, Paper: p.Surface, MinLine: 1}
	letters := k.Letters
	if len([]rune(letters)) > 1 {
		letters = "" // beside the body there is no room: the name says it
	}
	spec := symbol.Spec{Family: families[k.Family], Yokes: k.Yokes, Letters: letters}
	place := symbol.Place{Foot: scene.Point{X: w / 2, Y: h / 2}}
	if k.Host == part.Wall {
		place.Foot.Y, place.Into = h-5, scene.Point{Y: -1}
	}
	return symbol.Draw(place, style, spec).Items
}
