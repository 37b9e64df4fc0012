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
	onWidth                                                func(float32) // told when the width of the window changes
	isFit                                                  func() bool   // the board shows the whole level
	refit                                                  func()        // makes it do so at another size
	width                                                  float32
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

// build puts the parts into one container; the drawer lies above the board.
func (s *shell) build() *fyne.Container {
	for i := range s.lines {
		s.lines[i] = look.HairLine()
	}
	s.root = &fyne.Container{Layout: s, Objects: []fyne.CanvasObject{
		s.board, s.strip, s.unfold, s.lines[lineStrip], s.lines[lineUnfold],
		s.rail, s.card, s.drawer, s.status, s.menu,
		s.lines[lineMenu], s.lines[lineRail], s.lines[lineDrawer], s.lines[lineCard], s.lines[lineStatus],
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

// MinSize implements fyne.Layout: the least window that is of use.
func (s *shell) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(look.Scaled(960), look.Scaled(600))
}

// Layout implements fyne.Layout.
func (s *shell) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	if size.Width != s.width {
		s.width = size.Width
		if s.onWidth != nil {
			s.onWidth(size.Width)
		}
	}
	p := placesIn(size, s.shown)
	refit := s.isFit != nil && s.isFit() && s.board.Size() != p.Board.Size
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
	if refit {
		s.refit()
	}
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
