package look

import (
	"cmp"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/plan/words"
	"studbay/render/scene"
)

// Option is one of several to choose from.
type Option struct {
	Label string
	Short string // shown in the field in place of the label, where that is long
	Do    func()
	Now   bool // it is what the plan says
	Line  bool // a line stands above it
}

// Choice is a field whose value is one of a few.
type Choice struct {
	widget.BaseWidget
	label   string
	options func() []Option
	other   string // shown where no option is the plan's
	find    MenuFind
	value   *Paragraph
	press   *Press
	box     *fyne.Container
}

// NewChoice makes a choice. Options are asked for anew each time they are shown; where
// none is the plan's, other is shown.
func NewChoice(label, other string, options func() []Option) *Choice {
	c := &Choice{label: label, options: options, other: other}
	c.value = NewParagraph("", Body, 0)
	c.breakAt(Scaled(usualChoice))
	content := Row(Grid/2, 0, c.value, NewPicture(chevronSize, chevronSize, Chevron))
	c.press = NewPress(content, Boxed, Grid, Grid, c.Open)
	name := Sized(LabelWidth, 0, newName(label))
	c.box = Row(0, 1, name, AtLeast(HitTarget, c.press))
	c.ExtendBaseWidget(c)
	c.Update()
	return c
}

// usualChoice is the width of a choice that is told no other, in units.
const usualChoice = 300

const chevronSize = 12

// SetWidth says how wide the field is with its label: a long value goes over two lines.
func (c *Choice) SetWidth(width float32) {
	c.breakAt(width)
	c.Update()
}

func (c *Choice) breakAt(width float32) {
	c.value.SetWidth(width - Scaled(LabelWidth+2*Grid+Grid/2+chevronSize))
}

// Update shows what the plan says now.
func (c *Choice) Update() {
	for _, o := range c.options() {
		if o.Now {
			c.value.SetWords(cmp.Or(o.Short, o.Label))
			return
		}
	}
	c.value.SetWords(c.other)
}

// mostSeen is how many options are found by looking; among more, typing finds them.
const mostSeen = 9

// Finds says what a long list of options tells of finding one by typing.
func (c *Choice) Finds(v words.Voice) {
	c.find = MenuFind{
		Hint: v.Say(words.New("choice.find", "Type to find one …")),
		None: v.Say(words.New("choice.none", "none is called that")),
	}
}

// SetOther says what is shown where no option is the plan's.
func (c *Choice) SetOther(other string) { c.other = other }

// OnEscape says what Escape does while the field has the focus.
func (c *Choice) OnEscape(do func()) { c.press.OnEscape = do }

// OnFocus says what is done when the field gets the focus.
func (c *Choice) OnFocus(do func()) { c.press.OnFocus = do }

// Label returns the field's name.
func (c *Choice) Label() string { return c.label }

// Value returns what is shown.
func (c *Choice) Value() string { return c.value.Words() }

// Options returns what there is to choose from, for tests and menus.
func (c *Choice) Options() []Option { return c.options() }

// Open shows the options under the field.
func (c *Choice) Open() {
	on := fyne.CurrentApp().Driver().CanvasForObject(c.press)
	if on == nil {
		return
	}
	var items []MenuItem
	for _, o := range c.options() {
		items = append(items, MenuItem{Label: o.Label, Do: o.Do, Checked: o.Now, Line: o.Line})
	}
	if len(items) == 0 {
		return
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(c.press)
	at = at.AddXY(0, c.press.Size().Height)
	if len(items) > mostSeen && c.find.Hint != "" {
		ShowFinder(on, at, c.press.Size().Width, items, c.find)
		return
	}
	ShowMenu(on, at, c.press.Size().Width, items)
}

// CreateRenderer implements fyne.Widget.
func (c *Choice) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.box) }

// Chevron is a small hook pointing down.
func Chevron(w, h float64, p *Palette) []scene.Item {
	var path scene.Path
	path.MoveTo(scene.Point{X: .2 * w, Y: .35 * h}).LineTo(scene.Point{X: .5 * w, Y: .65 * h}).LineTo(scene.Point{X: .8 * w, Y: .35 * h})
	return []scene.Item{scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.4, Color: p.Muted, Cap: scene.RoundCap}}}
}
