package look

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// MenuItem is one line of a menu.
type MenuItem struct {
	Label    string
	Keys     string // as people read them; only shown
	Also     string // what it is found by beside its label; not shown
	Checked  bool
	Disabled bool
	Line     bool // a line stands above it
	Do       func()
	Sub      []MenuItem // a menu within the menu, in place of Do
}

// mostFound is the most height of a menu that is found in by typing, in units: of more lines
// the eye finds none.
const mostFound = 420

// Menu is a list to choose from that stands above the window until something is chosen
// or it is left. It scrolls where it is longer than the window, and is worked by the
// pointer or by keys: up, down, left and right, Enter, Escape, and the first letter of
// a line.
type Menu struct {
	// OnClose is told when the menu has gone.
	OnClose func()
	// OnSide is asked for the menu beside it, −1 to the left and 1 to the right; nil:
	// there is none.
	OnSide func(by int)
	// OnPoint is told where the pointer moves outside the menu.
	OnPoint func(at fyne.Position)

	on     fyne.Canvas
	find   *MenuFind // nil: a letter goes to the next line it begins
	root   *fyne.Container
	panels []*menuPanel // the menu, and those opened within it
	closed bool
}

// ShowMenu shows a menu whose upper left corner is at a place, or as near as the window
// lets it, and which is at least so wide.
func ShowMenu(on fyne.Canvas, at fyne.Position, width float32, items []MenuItem) *Menu {
	return showMenu(on, at, width, items, nil)
}

// ShowFinder is ShowMenu for a long list: what is typed leaves only the lines that hold
// it.
func ShowFinder(on fyne.Canvas, at fyne.Position, width float32, items []MenuItem, find MenuFind) *Menu {
	return showMenu(on, at, width, items, &find)
}

func showMenu(on fyne.Canvas, at fyne.Position, width float32, items []MenuItem, find *MenuFind) *Menu {
	m := &Menu{on: on, find: find}
	ground := &menuGround{of: m}
	ground.ExtendBaseWidget(ground)
	m.root = &fyne.Container{Layout: groundLayout{}, Objects: []fyne.CanvasObject{ground}}
	m.root.Resize(on.Size())
	on.Overlays().Add(m.root)
	m.open(at, width, items)
	if width > 0 { // of a field: it begins at what is in force
		m.panels[0].showChecked()
	}
	return m
}

// open shows a panel over those there are.
func (m *Menu) open(at fyne.Position, width float32, items []MenuItem) {
	p := newMenuPanel(m, items)
	size := p.MinSize().Max(fyne.NewSize(width, 0))
	room := m.on.Size()
	const edge = 4
	size.Height = min(size.Height, room.Height-2*edge)
	if m.find != nil && len(m.panels) == 0 {
		size.Height = min(size.Height, Scaled(mostFound))
	}
	at.X = max(edge, min(at.X, room.Width-size.Width-edge))
	at.Y = max(edge, min(at.Y, room.Height-size.Height-edge))
	p.Move(at)
	p.Resize(size)
	p.most = size.Height
	m.panels = append(m.panels, p)
	m.root.Add(p)
	m.root.Refresh()
	m.on.Focus(p)
}

// openSub shows the menu within an item of the last panel.
func (m *Menu) openSub(p *menuPanel, i int) {
	m.closeAbove(p)
	row := p.rows[i]
	at := p.Position().AddXY(p.Size().Width-2, row.Position().Y-p.scroll.Offset.Y)
	m.open(at, 0, p.items[i].Sub)
	m.panels[len(m.panels)-1].step(1)
}

// closeAbove takes the panels away that were opened within one.
func (m *Menu) closeAbove(p *menuPanel) {
	for len(m.panels) > 1 && m.panels[len(m.panels)-1] != p {
		last := m.panels[len(m.panels)-1]
		m.panels = m.panels[:len(m.panels)-1]
		m.root.Remove(last)
		m.root.Refresh()
	}
	m.on.Focus(p)
}

// Close takes the menu away.
func (m *Menu) Close() {
	if m.closed {
		return
	}
	m.closed = true
	m.on.Overlays().Remove(m.root)
	if m.OnClose != nil {
		m.OnClose()
	}
}

// Size returns the size of the menu, without those opened within it.
func (m *Menu) Size() fyne.Size { return m.panels[0].Size() }

// Panel returns the panel that has the keys, for tests.
func (m *Menu) Panel() fyne.Focusable { return m.panels[len(m.panels)-1] }

// groundLayout stretches the ground over the window; panels keep their places.
type groundLayout struct{}

func (groundLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }
func (groundLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(size)
}

// menuGround takes the clicks beside a menu, which leave it.
type menuGround struct {
	widget.BaseWidget
	of *Menu
}

func (g *menuGround) Tapped(*fyne.PointEvent)          { g.of.Close() }
func (g *menuGround) TappedSecondary(*fyne.PointEvent) { g.of.Close() }
func (g *menuGround) MouseIn(*desktop.MouseEvent)      {}
func (g *menuGround) MouseOut()                        {}
func (g *menuGround) MouseMoved(e *desktop.MouseEvent) {
	if g.of.OnPoint != nil {
		g.of.OnPoint(e.AbsolutePosition)
	}
}
func (g *menuGround) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(&fyne.Container{})
}

// startsWith reports whether a label begins with a letter, in capitals or not.
func startsWith(label string, r rune) bool {
	return strings.HasPrefix(strings.ToLower(label), string(unicode.ToLower(r)))
}
