package shell

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
	"studbay/render/scene"
)

// Kinds is what the drawer of kinds sees of the opening in hand, and whom it tells.
type Kinds interface {
	// Kind is the kind of opening in hand, TakeKind takes another.
	Kind() string
	TakeKind(id string)
	// LateKinds lists those used lately, the last first.
	LateKinds() []string
	// Explain says how something is worked, until Explained takes that back.
	Explain(words.Text)
	Explained(words.Text)
	// Shortcut runs the command of a shortcut.
	Shortcut(fyne.Shortcut) bool
}

// KindDrawer lists the kinds of opening while the Opening tool is in hand.
type KindDrawer struct {
	kinds  Kinds
	canvas fyne.Canvas
	voice  words.Voice
	search *kindSearch
	width  float32 // of the drawer; 0 until it is first in sight, which fills it
	marked int     // of found, while something is looked for
	found  []*part.Kind
	list   *fyne.Container
	scroll *container.Scroll
	rows   map[string][]*look.Press     // by kind: it may stand under Recent too
	places map[string]fyne.CanvasObject // of the first row of a kind
	Object fyne.CanvasObject
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

// NewKindDrawer makes the drawer; keys are those that go to its search.
func NewKindDrawer(kinds Kinds, on fyne.Canvas, v words.Voice, keys string) *KindDrawer {
	w := &KindDrawer{kinds: kinds, canvas: on, voice: v, list: look.Column(0)}
	w.search = newKindSearch(w, keys)
	w.scroll = container.NewVScroll(look.Inset(look.Grid, 0, look.Grid, look.Grid, w.list))
	top := look.Inset(look.Grid+4, look.Grid+4, look.Grid+4, look.Grid, w.search)
	w.Object = look.Back(look.OnSurface, 0, container.NewBorder(top, nil, nil, nil, look.Wheeled(w.scroll)))
	return w
}

// fill lists the kinds that the search finds.
func (w *KindDrawer) fill() {
	if w.width == 0 {
		return
	}
	w.rows, w.places = map[string][]*look.Press{}, map[string]fyne.CanvasObject{}
	w.list.Objects = nil
	find := w.search.wanted()
	w.found, w.marked = nil, 0
	if recent := w.recent(); find == "" && len(recent) > 0 {
		w.shelf(shelf{title: words.New("shelf.recent", "Recently used")}, recent)
	}
	w.listFound(find, false)
	if len(w.found) == 0 {
		w.listFound(find, true)
	}
	if find != "" {
		w.marked = w.best(find)
	}
	w.Refresh()
	if len(w.list.Objects) == 0 {
		w.list.Add(look.Inset(look.Grid/2, look.Grid, 0, 0,
			look.NewParagraph(w.say("drawer.none", "No kind is called that."), look.Quiet, w.width-look.Scaled(4*look.Grid))))
	}
	w.list.Refresh()
	w.scroll.Refresh()
}

func (w *KindDrawer) recent() (kinds []*part.Kind) {
	for _, id := range w.kinds.LateKinds() {
		if k := part.All().Kind(id); k != nil {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

// listFound lists the kinds that hold the text in their names, or whose shelf does.
func (w *KindDrawer) listFound(find string, byShelf bool) {
	for _, s := range shelves {
		kinds := w.kindsOf(s, find, byShelf)
		w.found = append(w.found, kinds...)
		w.shelf(s, kinds)
	}
}

// kindsOf lists a shelf's kinds whose name or device holds the text, or that people call
// so, or all where the shelf's own name does.
func (w *KindDrawer) kindsOf(s shelf, find string, byShelf bool) (kinds []*part.Kind) {
	for _, k := range part.All().Kinds {
		if !slices.Contains(s.families, k.Family) {
			continue
		}
		text := words.Folded(w.voice.Say(k.Text()) + " " + k.Device)
		if byShelf {
			text = words.Folded(w.voice.Say(s.title))
		}
		if strings.Contains(text, find) || !byShelf && k.Called(find) < part.Unlike {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

func (w *KindDrawer) shelf(s shelf, kinds []*part.Kind) {
	if len(kinds) == 0 {
		return
	}
	heading := look.NewFlexible(w.voice.Say(s.title), look.Style{Size: look.SecondSize, Bold: true, Tone: look.Muted})
	w.list.Objects = append(w.list.Objects, look.Inset(look.Grid/2, look.Grid, 0, look.Grid/2, heading))
	for _, k := range kinds {
		w.list.Objects = append(w.list.Objects, w.row(k, w.voice.Say(s.said)))
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

func (w *KindDrawer) row(k *part.Kind, said string) fyne.CanvasObject {
	pic := look.NewPicture(kindWidth, kindHeight, func(width, height float64, p *look.Palette) []scene.Item {
		return kindPicture(k, width, height, p)
	})
	height := ""
	if h := k.UsualHeight(w.voice.System); h > 0 {
		height = w.say("plain", "{0}", words.Height(h))
	}
	high := look.NewText(height, look.Second)
	// What is left of the drawer beside its edges, the row's own, and the gaps.
	left := w.width - look.Scaled(2*look.Grid+2*4+kindWidth+look.Grid) - high.MinSize().Width
	row := look.Row(look.Grid/2, 1, pic,
		look.NewParagraph(shortName(w.voice.Say(k.Text()), said), look.Body, left), high)
	press := look.NewPress(row, look.Bare, 4, 2, func() { w.kinds.TakeKind(k.ID) })
	w.rows[k.ID] = append(w.rows[k.ID], press)
	place := look.AtLeast(rowHeight, press)
	if w.places[k.ID] == nil {
		w.places[k.ID] = place
	}
	return place
}

// Refresh shows the kind in hand, and the one that Enter in the search would take.
func (w *KindDrawer) Refresh() {
	mark := w.mark()
	for id, rows := range w.rows {
		for _, press := range rows {
			press.SetChosen(id == w.kinds.Kind())
			press.SetMarked(mark != nil && id == mark.ID)
		}
	}
}

// SetWidth lists the kinds anew where the drawer becomes another width.
func (w *KindDrawer) SetWidth(width float32) {
	if width != w.width {
		w.width = width
		w.fill()
	}
}

// SetVoice speaks in another language or other units.
func (w *KindDrawer) SetVoice(v words.Voice) {
	w.voice = v
	w.fill()
}

// Taken is told that a kind was taken in hand: what was looked for is found.
func (w *KindDrawer) Taken() {
	w.Refresh()
	if w.search.Text != "" {
		w.search.SetText("")
		w.reveal(part.All().Kind(w.kinds.Kind()))
	}
}

// Find goes to the search.
func (w *KindDrawer) Find() { w.canvas.Focus(w.search) }

func (w *KindDrawer) say(id, english string, args ...any) string {
	return w.voice.Say(words.New(id, english, args...))
}
