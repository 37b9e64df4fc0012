package shell

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/plan/words"
	"studbay/render/scene"
)

// SortDrawer is the drawer of a tool that makes one of several sorts of thing.
type SortDrawer struct {
	hand   Hand
	voice  words.Voice
	chosen func()
	inHand int // the tool it lists the sorts of, or -1
	rows   map[string]*look.Press
	list   *fyne.Container
	scroll *container.Scroll
	Object fyne.CanvasObject
	other  fyne.CanvasObject // the drawer of opening kinds, in the same place
}

// NewSortDrawer makes the drawer; chosen is told that a sort was chosen, other is the
// drawer of kinds.
func NewSortDrawer(hand Hand, v words.Voice, other fyne.CanvasObject, chosen func()) *SortDrawer {
	c := &SortDrawer{hand: hand, voice: v, chosen: chosen, inHand: -1, list: look.Column(0), other: other}
	c.scroll = container.NewVScroll(look.Inset(look.Grid, look.Grid/2, look.Grid, look.Grid, c.list))
	c.Object = look.Back(look.OnSurface, 0, look.Wheeled(c.scroll))
	c.Refresh()
	return c
}

// Over returns both drawers, of which one is shown.
func (c *SortDrawer) Over() fyne.CanvasObject { return container.NewStack(c.other, c.Object) }

func (c *SortDrawer) tool() Tool { return c.hand.Tools()[c.hand.InHand()] }

// chooser returns the tool in hand where it makes one of several sorts.
func (c *SortDrawer) chooser() (tool.Chooser, bool) {
	made, ok := c.tool().Tool.(tool.Chooser)
	return made, ok
}

// IsWanted reports whether the tool in hand has a drawer.
func (c *SortDrawer) IsWanted() bool {
	_, ok := c.chooser()
	return ok || c.tool().PlacesOpenings
}

// Refresh lists the sorts of the tool in hand and marks the one it makes.
func (c *SortDrawer) Refresh() {
	made, ok := c.chooser()
	if !ok {
		c.Object.Hide()
		c.other.Show()
		return
	}
	c.other.Hide()
	c.Object.Show()
	if c.inHand != c.hand.InHand() {
		c.inHand = c.hand.InHand()
		c.fill(made)
	}
	for id, press := range c.rows {
		press.SetChosen(id == made.Choice())
	}
}

// fill lists the sorts of a tool.
func (c *SortDrawer) fill(made tool.Chooser) {
	c.rows, c.list.Objects = map[string]*look.Press{}, nil
	heading := look.NewFlexible(c.voice.Say(words.New("choices.title", "What to place")), look.Style{Size: look.SecondSize, Bold: true, Tone: look.Muted})
	c.list.Objects = append(c.list.Objects, look.Inset(look.Grid/2, look.Grid, 0, look.Grid/2, heading))
	for _, choice := range made.Choices() {
		c.list.Objects = append(c.list.Objects, c.row(made, choice))
	}
	c.list.Refresh()
	c.scroll.ScrollToTop()
}

func (c *SortDrawer) row(made tool.Chooser, choice tool.Choice) fyne.CanvasObject {
	id := c.tool().Tool.ID()
	pic := look.NewPicture(34, 28, func(w, h float64, p *look.Palette) []scene.Item {
		return sortPicture(id, choice.ID, w, h, p)
	})
	row := look.Row(look.Grid, 1, pic, look.NewFlexible(look.Capital(c.voice.Say(choice.Name)), look.Body))
	press := look.NewPress(row, look.Bare, 4, 2, func() {
		made.Choose(choice.ID)
		c.Refresh()
		c.chosen()
	})
	c.rows[choice.ID] = press
	return look.Sized(0, look.HitTarget+2, press)
}
