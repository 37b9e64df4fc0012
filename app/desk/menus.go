package desk

import (
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/work"
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
	look.ShowIf(o[2], at+middle+look.Scaled(look.Grid) < size.Width-right)
	o[2].Move(fyne.NewPos(size.Width-right, 0))
	o[2].Resize(fyne.NewSize(right, size.Height))
}

// open shows a menu under its title. Left and right go to the menus beside it, and so
// does the pointer over another title.
func (m *menuStrip) open(which Menu) {
	title := m.titles[which]
	at := m.place(which)
	shown := look.ShowMenu(m.desk.window.Canvas(), at.AddXY(0, title.Size().Height), 0, m.desk.menuItems(which))
	shown.OnClose = func() { title.SetChosen(false) }
	other := func(to int) {
		n := len(m.titles)
		shown.Close()
		m.open(Menu((to + n) % n))
	}
	shown.OnSide = func(by int) { other(int(which) + by) }
	shown.OnPoint = func(p fyne.Position) {
		if to, ok := m.titleAt(p); ok && to != which {
			other(int(to))
		}
	}
	title.SetChosen(true)
}

func (m *menuStrip) place(which Menu) fyne.Position {
	return m.desk.app.Driver().AbsolutePositionForObject(m.titles[which])
}

// titleAt returns the menu whose title is at a place of the window.
func (m *menuStrip) titleAt(p fyne.Position) (Menu, bool) {
	for i, title := range m.titles {
		at, size := m.place(Menu(i)), title.Size()
		if p.X >= at.X && p.X < at.X+size.Width && p.Y >= at.Y && p.Y < at.Y+size.Height {
			return Menu(i), true
		}
	}
	return 0, false
}

// menuItems lists the commands of a menu as they are now.
func (d *Desk) menuItems(which Menu) (items []look.MenuItem) {
	subs := map[string]int{}
	for i := range d.commands {
		c := &d.commands[i]
		if c.Menu != which {
			continue
		}
		item := d.menuItem(c)
		if c.Sub.IsZero() {
			items = append(items, item)
			continue
		}
		at, ok := subs[c.Sub.ID]
		if !ok {
			at = len(items)
			subs[c.Sub.ID] = at
			items = append(items, look.MenuItem{Label: d.voice.Say(c.Sub), Line: c.Line})
		}
		item.Line = false
		items[at].Sub = append(items[at].Sub, item)
	}
	if which == MenuFile {
		items = d.withRecent(items)
	}
	return items
}

func (d *Desk) menuItem(c *Command) look.MenuItem {
	item := look.MenuItem{
		Label: d.voice.Say(c.title(d)), Do: func() { d.Run(c.ID) }, Line: c.Line,
		Disabled: !c.can(d), Checked: c.On != nil && c.On(d),
	}
	if len(c.Keys) > 0 {
		item.Keys = c.Keys[0].said(d.voice)
	}
	return item
}

// withRecent puts the plans opened lately behind Open.
func (d *Desk) withRecent(items []look.MenuItem) []look.MenuItem {
	recent := d.prefs.recent()
	if len(recent) == 0 {
		return items
	}
	sub := look.MenuItem{Label: d.say("menu.recent", "Open recent")}
	for _, path := range recent {
		sub.Sub = append(sub.Sub, look.MenuItem{Label: work.ShortPath(path), Do: func() { d.session.Open(path) }})
	}
	return slices.Insert(items, 2, sub)
}

// refreshMenus shows what the strip says besides the menus, which are made anew each
// time they open.
func (d *Desk) refreshMenus() {
	m := d.menus
	m.title.SetWords(d.doc().Title())
	m.state.SetWords(d.stateText())
	m.edition.SetWords(d.editionText())
	m.object.Refresh()
}

// say says a text of the window in its voice.
func (d *Desk) say(id, english string, args ...any) string {
	return d.voice.Say(words.New(id, english, args...))
}
