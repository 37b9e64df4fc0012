package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/plan/words"
)

// menuStrip is the top of the window: the menus, the title, what it is checked by.
// The menus are our own, so that a shortcut never runs while its command may not.
type menuStrip struct {
	desk    *Desk
	titles  []*look.Press
	title   *look.Text
	state   *look.Text
	edition *look.Text
	object  fyne.CanvasObject
}

func newMenuStrip(d *Desk) *menuStrip {
	m := &menuStrip{desk: d}
	m.title = look.NewText("", look.Title)
	m.state = look.NewText("", look.Second)
	m.edition = look.NewText("", look.Second)
	row := []fyne.CanvasObject{look.Gap(look.Grid/2, 1)}
	for i := range menuTitles {
		name := look.NewText(d.voice.Say(menuTitles[i]), look.Body)
		press := look.NewPress(name, look.Bare, 10, 6, func() { m.open(Menu(i)) })
		m.titles = append(m.titles, press)
		row = append(row, press)
	}
	left := look.Row(0, -1, row...)
	middle := look.Row(look.Grid, -1, m.title, m.state)
	right := look.Inset(0, 0, 16, 0, look.Row(0, -1, m.edition))
	m.object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: threeParts{}, Objects: []fyne.CanvasObject{left, middle, right}})
	return m
}

// threeParts is a layout: left, in the middle of the window, right. The middle gives
// way where the left reaches it.
type threeParts struct{}

func (threeParts) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(o[0].MinSize().Width, max(o[0].MinSize().Height, o[1].MinSize().Height))
}

func (threeParts) Layout(o []fyne.CanvasObject, size fyne.Size) {
	left, middle, right := o[0].MinSize().Width, o[1].MinSize().Width, o[2].MinSize().Width
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(fyne.NewSize(left, size.Height))
	at := max((size.Width-middle)/2, left+look.Scaled(look.Grid*2))
	o[1].Move(fyne.NewPos(at, 0))
	o[1].Resize(fyne.NewSize(middle, size.Height))
	showIf(o[2], at+middle+look.Scaled(look.Grid) < size.Width-right)
	o[2].Move(fyne.NewPos(size.Width-right, 0))
	o[2].Resize(fyne.NewSize(right, size.Height))
}

func showIf(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
		return
	}
	o.Hide()
}

// open shows a menu under its title.
func (m *menuStrip) open(which Menu) {
	title := m.titles[which]
	popup := widget.NewPopUpMenu(fyne.NewMenu("", m.desk.menuItems(which)...), m.desk.window.Canvas())
	dismiss := popup.OnDismiss
	popup.OnDismiss = func() {
		title.SetChosen(false)
		dismiss()
	}
	title.SetChosen(true)
	at := m.desk.app.Driver().AbsolutePositionForObject(title)
	popup.ShowAtPosition(at.AddXY(0, title.Size().Height))
	m.desk.window.Canvas().Focus(popup)
}

// menuItems lists the commands of a menu as they are now.
func (d *Desk) menuItems(which Menu) (items []*fyne.MenuItem) {
	subs := map[string]*fyne.MenuItem{}
	for i := range d.commands {
		c := &d.commands[i]
		if c.Menu != which {
			continue
		}
		if c.Line && len(items) > 0 {
			items = append(items, fyne.NewMenuItemSeparator())
		}
		item := d.menuItem(c)
		if c.Sub.IsZero() {
			items = append(items, item)
			continue
		}
		sub := subs[c.Sub.ID]
		if sub == nil {
			sub = fyne.NewMenuItem(d.voice.Say(c.Sub), nil)
			sub.ChildMenu = fyne.NewMenu("")
			subs[c.Sub.ID] = sub
			items = append(items, sub)
		}
		sub.ChildMenu.Items = append(sub.ChildMenu.Items, item)
	}
	if which == MenuFile {
		items = d.withRecent(items)
	}
	return items
}

func (d *Desk) menuItem(c *Command) *fyne.MenuItem {
	item := fyne.NewMenuItem(d.voice.Say(c.title(d)), func() { d.Run(c.ID) })
	item.Disabled = !c.can(d)
	item.Checked = c.On != nil && c.On(d)
	if len(c.Keys) > 0 { // only shown: the menu is not the toolkit's, and fires nothing
		item.Shortcut = &desktop.CustomShortcut{KeyName: c.Keys[0].Key, Modifier: c.Keys[0].Mod}
	}
	return item
}

// withRecent puts the plans opened lately behind Open.
func (d *Desk) withRecent(items []*fyne.MenuItem) []*fyne.MenuItem {
	recent := d.prefs.recent()
	if len(recent) == 0 {
		return items
	}
	sub := fyne.NewMenuItem(d.say("menu.recent", "Open recent"), nil)
	sub.ChildMenu = fyne.NewMenu("")
	for _, path := range recent {
		sub.ChildMenu.Items = append(sub.ChildMenu.Items, fyne.NewMenuItem(shortPath(path), func() { d.OpenGuarded(path) }))
	}
	return append(items[:2:2], append([]*fyne.MenuItem{sub}, items[2:]...)...)
}

// refreshMenus shows what the strip says besides the menus, which are made anew each
// time they open.
func (d *Desk) refreshMenus() {
	m := d.menus
	m.title.SetWords(d.doc.Title())
	m.state.SetWords(d.stateText())
	m.edition.SetWords(d.editionText())
	m.object.Refresh()
}

// say says a text of the window in its voice.
func (d *Desk) say(id, english string, args ...any) string {
	return d.voice.Say(words.New(id, english, args...))
}
