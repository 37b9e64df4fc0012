package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// MenuBar is the top of the window: the menus, the title, what it is checked by.
type MenuBar struct {
	canvas   fyne.Canvas
	commands *Commands
	voice    words.Voice
	titles   []*look.Press
	title    *look.Text
	state    *look.Text
	edition  *look.Text
	Object   fyne.CanvasObject
}

// NewMenuBar makes the top of a window.
func NewMenuBar(on fyne.Canvas, commands *Commands, v words.Voice) *MenuBar {
	m := &MenuBar{canvas: on, commands: commands, voice: v}
	m.title = look.NewText("", look.Title)
	m.state = look.NewText("", look.Second)
	m.edition = look.NewText("", look.Second)
	row := []fyne.CanvasObject{look.Gap(look.Grid/2, 1)}
	for i := range menuTitles {
		name := look.NewText(v.Say(menuTitles[i]), look.Body)
		press := look.NewPress(name, look.Bare, 10, 6, func() { m.Open(Menu(i)) })
		m.titles = append(m.titles, press)
		row = append(row, press)
	}
	left := look.Row(0, -1, row...)
	middle := look.Row(look.Grid, -1, m.title, m.state)
	right := look.Inset(0, 0, 16, 0, look.Row(0, -1, m.edition))
	m.Object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: threeParts{}, Objects: []fyne.CanvasObject{left, middle, right}})
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

// Open shows a menu under its title. Left and right go to the menus beside it, and so
// does the pointer over another title.
func (m *MenuBar) Open(which Menu) {
	title := m.titles[which]
	at := m.place(which)
	shown := look.ShowMenu(m.canvas, at.AddXY(0, title.Size().Height), 0, m.commands.Items(which, m.voice))
	shown.OnClose = func() { title.SetChosen(false) }
	other := func(to int) {
		n := len(m.titles)
		shown.Close()
		m.Open(Menu((to + n) % n))
	}
	shown.OnSide = func(by int) { other(int(which) + by) }
	shown.OnPoint = func(p fyne.Position) {
		if to, ok := m.titleAt(p); ok && to != which {
			other(int(to))
		}
	}
	title.SetChosen(true)
}

func (m *MenuBar) place(which Menu) fyne.Position {
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(m.titles[which])
}

// titleAt returns the menu whose title is at a place of the window.
func (m *MenuBar) titleAt(p fyne.Position) (Menu, bool) {
	for i, title := range m.titles {
		at, size := m.place(Menu(i)), title.Size()
		if p.X >= at.X && p.X < at.X+size.Width && p.Y >= at.Y && p.Y < at.Y+size.Height {
			return Menu(i), true
		}
	}
	return 0, false
}

// Show says what the bar says besides the menus, which are made anew each time they open:
// the plan's title, whether it is saved, and what it is checked by.
func (m *MenuBar) Show(title, state, edition string) {
	m.title.SetWords(title)
	m.state.SetWords(state)
	m.edition.SetWords(edition)
	m.Object.Refresh()
}
