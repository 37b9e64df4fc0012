package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
)

// choices is the drawer of a tool that makes one of several sorts of thing.
type choices struct {
	desk   *Desk
	inHand int // the tool it lists the sorts of, or -1
	rows   map[string]*look.Press
	list   *fyne.Container
	scroll *container.Scroll
	object fyne.CanvasObject
	other  fyne.CanvasObject // the drawer of opening kinds, in the same place
}

func newChoices(d *Desk, other fyne.CanvasObject) *choices {
	c := &choices{desk: d, inHand: -1, list: look.Column(0), other: other}
	c.scroll = container.NewVScroll(look.Inset(look.Grid, look.Grid/2, look.Grid, look.Grid, c.list))
	c.object = look.Back(look.OnSurface, 0, look.Wheeled(c.scroll))
	c.refresh()
	return c
}

// over returns both drawers, of which one is shown.
func (c *choices) over() fyne.CanvasObject { return container.NewStack(c.other, c.object) }

// chooser returns the tool in hand where it makes one of several sorts.
func (c *choices) chooser() (tool.Chooser, bool) {
	made, ok := c.desk.tool().(tool.Chooser)
	return made, ok
}

// isWanted reports whether the tool in hand has a drawer.
func (c *choices) isWanted() bool {
	_, ok := c.chooser()
	return ok || c.desk.tools[c.desk.inHand].PlacesOpenings
}

// refresh lists the sorts of the tool in hand and marks the one it makes.
func (c *choices) refresh() {
	made, ok := c.chooser()
	if !ok {
		c.object.Hide()
		c.other.Show()
		return
	}
	c.other.Hide()
	c.object.Show()
	if c.inHand != c.desk.inHand {
		c.inHand = c.desk.inHand
		c.fill(made)
	}
	for id, press := range c.rows {
		press.SetChosen(id == made.Choice())
	}
}

// fill lists the sorts of a tool.
func (c *choices) fill(made tool.Chooser) {
	c.rows, c.list.Objects = map[string]*look.Press{}, nil
	heading := look.NewFlexible(c.desk.voice.Say(words.New("choices.title", "What to place")), look.Style{Size: look.SecondSize, Bold: true, Tone: look.Muted})
	c.list.Objects = append(c.list.Objects, look.Inset(look.Grid/2, look.Grid, 0, look.Grid/2, heading))
	for _, choice := range made.Choices() {
		c.list.Objects = append(c.list.Objects, c.row(made, choice))
	}
	c.list.Refresh()
	c.scroll.ScrollToTop()
}

func (c *choices) row(made tool.Chooser, choice tool.Choice) fyne.CanvasObject {
	id := c.desk.tool().ID()
	pic := look.NewPicture(34, 28, func(w, h float64, p *look.Palette) []scene.Item {
		return choicePicture(id, choice.ID, w, h, p)
	})
	row := look.Row(look.Grid, 1, pic, look.NewFlexible(look.Capital(c.desk.voice.Say(choice.Name)), look.Body))
	press := look.NewPress(row, look.Bare, 4, 2, func() {
		made.Choose(choice.ID)
		c.refresh()
		c.desk.showHint()
		c.desk.window.Canvas().Unfocus()
	})
	c.rows[choice.ID] = press
	return look.Sized(0, look.HitTarget+2, press)
}

// OpenCard implements tool.Opener: the cards are shown where they were folded away.
func (t *table) OpenCard(plan.ID) {
	if d := t.desk; !d.prefs.cards() {
		d.prefs.setCards(true)
		d.showPanels()
	}
}
