package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// shell is the parts of the window and how they are laid out. It knows no plan.
type shell struct {
	menu, rail, drawer, board, strip, unfold, card, status fyne.CanvasObject
	lines                                                  [lineCount]fyne.CanvasObject // hairlines between the parts
	shown                                                  shown
	sizes                                                  sizes
	dividers                                               [dividerCount]*look.Divider
	onSizes                                                func(sizes)            // told when the user has dragged a divider
	onWidth                                                func(float32)          // told when the width of the card changes
	onDrawer                                               func(float32)          // told how wide the drawer is
	isFit                                                  func() bool            // the board shows the whole level
	refit                                                  func()                 // makes it do so at another size
	hold                                                   func(by fyne.Position) // the board's corner moves, what it shows must not
	hides                                                  func(at panel) bool    // part of the whole level, shown by a board, would lie outside of it
	width                                                  float32
	size                                                   fyne.Size // laid out last
	root                                                   *fyne.Container
}

// The hairlines, by what they run along.
const (
	lineMenu = iota
	lineRail
	lineDrawer
	lineCard
	lineStrip
	lineUnfold
	lineStatus
	lineCount
)

// The dividers, by what they change.
const (
	divideDrawer = iota
	divideCard
	divideUnfold
	dividerCount
)

// build puts the parts into one container; the drawer lies above the board.
func (s *shell) build() *fyne.Container {
	for i := range s.lines {
		s.lines[i] = look.HairLine()
	}
	for i := range s.dividers {
		d := look.NewDivider(i == divideUnfold)
		d.OnMoved = func(by float32) { s.drag(i, by) }
		d.OnReset = func() { s.setSize(i, 0) }
		s.dividers[i] = d
	}
	s.root = &fyne.Container{Layout: s, Objects: []fyne.CanvasObject{
		// The keyboard goes through them in this order.
		s.menu, s.rail, s.board, s.strip, s.unfold, s.drawer, s.card, s.status,
		s.lines[lineStrip], s.lines[lineUnfold], s.lines[lineMenu], s.lines[lineRail], s.lines[lineDrawer], s.lines[lineCard], s.lines[lineStatus],
		s.dividers[divideUnfold], s.dividers[divideDrawer], s.dividers[divideCard],
	}}
	return s.root
}

// show changes which panels there are.
func (s *shell) show(v shown) {
	if v != s.shown {
		s.shown = v
		s.root.Layout.Layout(nil, s.root.Size())
	}
}

// drag changes the size of what a divider bounds.
func (s *shell) drag(which int, by float32) {
	p := placesIn(s.root.Size(), s.shown, s.sizes)
	now := [...]float32{divideDrawer: p.Drawer.Size.Width + by, divideCard: p.Card.Size.Width - by, divideUnfold: p.Unfold.Size.Height - by}
	s.setSize(which, max(1, now[which])/look.Scaled(1))
}

// setSize gives a panel a size, 0 for the usual one.
func (s *shell) setSize(which int, size float32) {
	*[...]*float32{divideDrawer: &s.sizes.Drawer, divideCard: &s.sizes.Card, divideUnfold: &s.sizes.Unfold}[which] = size
	s.Layout(nil, s.root.Size())
	if s.onSizes != nil {
		s.onSizes(s.sizes)
	}
}

// MinSize implements fyne.Layout: the least window that is of use. It does not grow with
// the interface scale: one who needs large letters has no larger screen for that.
func (s *shell) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(960, 600) }

// Layout implements fyne.Layout.
func (s *shell) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	p := placesIn(size, s.shown, s.sizes)
	if w := p.Card.Size.Width; w > 0 && w != s.width {
		s.width = w
		if s.onWidth != nil {
			s.onWidth(w)
		}
	}
	if w := p.Drawer.Size.Width; w > 0 && s.onDrawer != nil {
		s.onDrawer(w)
	}
	by := p.Board.At.Subtract(s.board.Position())
	isHeld := s.hold != nil && s.size == size && s.board.Visible() && !by.IsZero() &&
		!(s.isFit != nil && s.isFit() && s.hides != nil && s.hides(p.Board))
	s.size = size
	refit := !isHeld && s.isFit != nil && s.isFit() && s.board.Size() != p.Board.Size
	if isHeld {
		s.hold(by)
	}
	put(s.menu, p.Menu)
	put(s.rail, p.Rail)
	put(s.drawer, p.Drawer)
	put(s.board, p.Board)
	put(s.strip, p.Strip)
	put(s.unfold, p.Unfold)
	put(s.card, p.Card)
	put(s.status, p.Status)
	for i, line := range [lineCount]panel{
		lineMenu: under(p.Menu), lineRail: rightOf(p.Rail), lineDrawer: rightOf(p.Drawer), lineCard: leftOf(p.Card),
		lineStrip: above(p.Strip), lineUnfold: above(p.Unfold), lineStatus: above(p.Status),
	} {
		put(s.lines[i], line)
	}
	put(s.dividers[divideDrawer], across(p.Drawer.At.X+p.Drawer.Size.Width, p.Drawer))
	put(s.dividers[divideCard], across(p.Card.At.X, p.Card))
	put(s.dividers[divideUnfold], along(p.Unfold))
	if refit {
		s.refit()
	}
}

// across is the strip of a divider down a side of a panel, or none.
func across(x float32, p panel) panel {
	if p.Size.Width <= 0 {
		return panel{}
	}
	w := look.Scaled(look.DividerWidth)
	return panel{fyne.NewPos(x-w/2, p.At.Y), fyne.NewSize(w, p.Size.Height)}
}

// along is the strip of a divider on the top of a panel, or none.
func along(p panel) panel {
	if p.Size.Height <= 0 {
		return panel{}
	}
	h := look.Scaled(look.DividerWidth)
	return panel{p.At.AddXY(0, -h/2), fyne.NewSize(p.Size.Width, h)}
}

func put(o fyne.CanvasObject, at panel) {
	if at.Size.Width <= 0 || at.Size.Height <= 0 {
		o.Hide()
		return
	}
	o.Move(at.At)
	o.Resize(at.Size)
	o.Show()
}

func under(p panel) panel {
	return panel{p.At.AddXY(0, p.Size.Height-1), fyne.NewSize(p.Size.Width, 1)}
}

func above(p panel) panel { return panel{p.At, fyne.NewSize(p.Size.Width, 1)} }

func rightOf(p panel) panel {
	return panel{p.At.AddXY(p.Size.Width-1, 0), fyne.NewSize(min(1, p.Size.Width), p.Size.Height)}
}

func leftOf(p panel) panel { return panel{p.At, fyne.NewSize(min(1, p.Size.Width), p.Size.Height)} }
