package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"studbay/render"
)

// menuPanel is one list of a menu. It has the keys while it is the last.
type menuPanel struct {
	widget.BaseWidget
	of     *Menu
	items  []MenuItem
	rows   []*menuRow
	active int // −1: none
	list   *fyne.Container
	scroll *container.Scroll
	finds  *menuFind // nil: it has no line to find by
	most   float32   // the height it was opened at
}

const menuGap = 4 // above and below the lines of a menu

func newMenuPanel(m *Menu, items []MenuItem) *menuPanel {
	p := &menuPanel{of: m, active: -1, list: Column(0)}
	p.fill(items)
	if m.find != nil && len(m.panels) == 0 {
		p.finds = newMenuFind(p, *m.find, items)
	}
	p.scroll = container.NewVScroll(Inset(menuGap, menuGap, menuGap, menuGap, p.list))
	p.ExtendBaseWidget(p)
	return p
}

// fill lists other lines, of which none is in hand.
func (p *menuPanel) fill(items []MenuItem) {
	p.items, p.active, p.rows, p.list.Objects = items, -1, nil, nil
	for i, item := range items {
		row := newMenuRow(p, i, item)
		p.rows = append(p.rows, row)
		p.list.Objects = append(p.list.Objects, row)
	}
}

// MinSize is that of all lines; the window may give less height.
func (p *menuPanel) MinSize() fyne.Size {
	p.ExtendBaseWidget(p)
	return p.list.MinSize().AddWidthHeight(Scaled(2*menuGap), Scaled(2*menuGap)+p.above())
}

// fit makes the panel no taller than its lines, nor than it was at first.
func (p *menuPanel) fit() {
	p.Resize(fyne.NewSize(p.Size().Width, min(p.most, p.MinSize().Height)))
}

// above is the height of what stands above the lines.
func (p *menuPanel) above() float32 {
	if p.finds == nil {
		return 0
	}
	return p.finds.line.MinSize().Height
}

// point makes a line the one in hand, −1 none.
func (p *menuPanel) point(i int) {
	if i == p.active {
		return
	}
	was := p.active
	p.active = i
	for _, at := range []int{was, i} {
		if at >= 0 {
			p.rows[at].Refresh()
		}
	}
}

// showChecked brings the line that is in force into sight and into hand.
func (p *menuPanel) showChecked() {
	for i, item := range p.items {
		if item.Checked {
			p.point(i)
			p.reveal()
			return
		}
	}
}

// step goes so many lines on, past those that cannot be chosen.
func (p *menuPanel) step(by int) {
	n := len(p.items)
	if n == 0 {
		return
	}
	at := p.active
	if at < 0 && by < 0 {
		at = 0
	}
	for range p.items {
		at = (at + by + n) % n
		if !p.items[at].Disabled {
			p.point(at)
			p.reveal()
			return
		}
	}
}

// reveal scrolls the line in hand into sight.
func (p *menuPanel) reveal() {
	row := p.rows[p.active]
	top := row.Position().Y
	bottom := top + row.Size().Height + Scaled(2*menuGap)
	switch {
	case top < p.scroll.Offset.Y:
		p.scroll.ScrollToOffset(fyne.NewPos(0, top))
	case bottom > p.scroll.Offset.Y+p.scroll.Size().Height:
		p.scroll.ScrollToOffset(fyne.NewPos(0, bottom-p.scroll.Size().Height))
	}
}

// take chooses a line.
func (p *menuPanel) take(i int) {
	if i < 0 || p.items[i].Disabled {
		return
	}
	if item := p.items[i]; len(item.Sub) == 0 {
		p.of.Close()
		if item.Do != nil {
			item.Do()
		}
		return
	}
	p.point(i)
	p.of.openSub(p, i)
}

// TypedKey implements fyne.Focusable.
func (p *menuPanel) TypedKey(e *fyne.KeyEvent) {
	isMain := p.of.panels[0] == p
	if p.finds != nil && p.finds.key(e.Name) {
		return
	}
	switch e.Name {
	case fyne.KeyDown:
		p.step(1)
	case fyne.KeyUp:
		p.step(-1)
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		p.take(p.active)
	case fyne.KeyEscape:
		p.leave(isMain)
	case fyne.KeyLeft:
		if !isMain {
			p.leave(false)
		} else if p.of.OnSide != nil {
			p.of.OnSide(-1)
		}
	case fyne.KeyRight:
		if p.active >= 0 && len(p.items[p.active].Sub) > 0 {
			p.take(p.active)
		} else if p.of.OnSide != nil {
			p.of.OnSide(1)
		}
	}
}

// leave closes this panel, or all where it is the menu itself.
func (p *menuPanel) leave(isMain bool) {
	if isMain {
		p.of.Close()
		return
	}
	p.of.closeAbove(p.of.panels[len(p.of.panels)-2])
}

// TypedRune implements fyne.Focusable: the next line that begins with a letter.
func (p *menuPanel) TypedRune(r rune) {
	if p.finds != nil {
		p.finds.set(p.finds.text + string(r))
		return
	}
	n := len(p.items)
	for k := 1; k <= n; k++ {
		if at := (p.active + k + n) % n; startsWith(p.items[at].Label, r) && !p.items[at].Disabled {
			p.point(at)
			p.reveal()
			return
		}
	}
}

// FocusGained implements fyne.Focusable.
func (p *menuPanel) FocusGained() {}

// FocusLost implements fyne.Focusable.
func (p *menuPanel) FocusLost() {}

// CreateRenderer implements fyne.Widget.
func (p *menuPanel) CreateRenderer() fyne.WidgetRenderer {
	r := &menuPanelRenderer{of: p, back: canvas.NewRectangle(color.Transparent)}
	r.Refresh()
	return r
}

type menuPanelRenderer struct {
	of   *menuPanel
	back *canvas.Rectangle
}

func (r *menuPanelRenderer) MinSize() fyne.Size { return fyne.NewSize(1, 1) }
func (r *menuPanelRenderer) Layout(size fyne.Size) {
	r.back.Resize(size)
	above := r.of.above()
	if f := r.of.finds; f != nil {
		f.line.Resize(fyne.NewSize(size.Width, above))
	}
	r.of.scroll.Move(fyne.NewPos(0, above))
	r.of.scroll.Resize(fyne.NewSize(size.Width, size.Height-above))
}
func (r *menuPanelRenderer) Refresh() {
	c := Current()
	r.back.FillColor, r.back.StrokeColor, r.back.StrokeWidth = c.Surface, render.Mixed(c.Line, c.Muted, .5), 1
	r.back.CornerRadius = Scaled(Radius)
	r.back.Refresh()
	r.of.scroll.Refresh()
	if f := r.of.finds; f != nil {
		f.line.Refresh()
	}
}
func (r *menuPanelRenderer) Objects() []fyne.CanvasObject {
	if f := r.of.finds; f != nil {
		return []fyne.CanvasObject{r.back, f.line, r.of.scroll}
	}
	return []fyne.CanvasObject{r.back, r.of.scroll}
}
func (r *menuPanelRenderer) Destroy() {}
