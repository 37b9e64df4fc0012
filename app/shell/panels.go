package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// Parts are the parts of the window.
type Parts struct {
	Menu, Rail, Drawer, Board, Level, Unfold, Card, Status fyne.CanvasObject
}

// View is what the panels ask of what the board shows.
type View interface {
	// IsFit reports whether the board shows the whole level, Fit makes it do so.
	IsFit() bool
	Fit()
	// Hold keeps what the board shows where it is on the screen while the board's corner
	// moves.
	Hold(by fyne.Position)
	// Misfits reports whether the level, left where it lies in the window now, would not be
	// shown whole by a board at a place, or smaller than that board has room for.
	Misfits(at Panel) bool
}

// Memory remembers what the user has dragged the panels to.
type Memory interface {
	Sizes() Sizes
	SetSizes(Sizes)
}

// Panels are the parts of the window and how they are laid out. They know no plan.
type Panels struct {
	Parts
	OnCardWidth   func(float32) // told when the width of the card changes
	OnDrawerWidth func(float32) // told how wide the drawer is

	lines    [lineCount]fyne.CanvasObject // hairlines between the parts
	shown    Shown
	sizes    Sizes
	dividers [dividerCount]*look.Divider
	memory   Memory
	view     View
	width    float32
	size     fyne.Size // laid out last
	root     *fyne.Container
}

// NewPanels lays the parts out, of which some are shown.
func NewPanels(parts Parts, shown Shown, view View, memory Memory) *Panels {
	return &Panels{Parts: parts, shown: shown, view: view, memory: memory, sizes: memory.Sizes()}
}

// The hairlines, by what they run along.
const (
	lineMenu = iota
	lineRail
	lineDrawer
	lineCard
	lineLevel
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

// Build puts the parts into one container; the drawer lies above the board.
func (s *Panels) Build() *fyne.Container {
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
		// The keyboard goes through them in this order. What lies under the board is drawn
		// before the drawer, which covers it in a narrow window.
		s.Menu, s.Rail, s.Board, s.Level, s.Unfold, s.lines[lineLevel], s.lines[lineUnfold], s.dividers[divideUnfold],
		s.Drawer, s.Card, s.Status,
		s.lines[lineMenu], s.lines[lineRail], s.lines[lineDrawer], s.lines[lineCard], s.lines[lineStatus],
		s.dividers[divideDrawer], s.dividers[divideCard],
	}}
	return s.root
}

// Show changes which panels there are.
func (s *Panels) Show(v Shown) {
	if v != s.shown {
		s.shown = v
		s.root.Layout.Layout(nil, s.root.Size())
	}
}

// drag changes the size of what a divider bounds.
func (s *Panels) drag(which int, by float32) {
	p := placesIn(s.root.Size(), s.shown, s.sizes)
	now := [...]float32{divideDrawer: p.Drawer.Size.Width + by, divideCard: p.Card.Size.Width - by, divideUnfold: p.Unfold.Size.Height - by}
	s.setSize(which, max(1, now[which])/look.Scaled(1))
}

// setSize gives a panel a size, 0 for the usual one.
func (s *Panels) setSize(which int, size float32) {
	*[...]*float32{divideDrawer: &s.sizes.Drawer, divideCard: &s.sizes.Card, divideUnfold: &s.sizes.Unfold}[which] = size
	s.Layout(nil, s.root.Size())
	s.memory.SetSizes(s.sizes)
}

// MinSize implements fyne.Layout: the least window that is of use. It does not grow with
// the interface scale: one who needs large letters has no larger screen for that.
func (s *Panels) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(960, 600) }

// Layout implements fyne.Layout.
func (s *Panels) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	p := placesIn(size, s.shown, s.sizes)
	if w := p.Card.Size.Width; w > 0 && w != s.width {
		s.width = w
		if s.OnCardWidth != nil {
			s.OnCardWidth(w)
		}
	}
	if w := p.Drawer.Size.Width; w > 0 && s.OnDrawerWidth != nil {
		s.OnDrawerWidth(w)
	}
	by := p.Board.At.Subtract(s.Board.Position())
	isHeld := s.size == size && s.Board.Visible() && !by.IsZero() && !(s.view.IsFit() && s.view.Misfits(p.Board))
	s.size = size
	refit := !isHeld && s.view.IsFit() && s.Board.Size() != p.Board.Size
	if isHeld {
		s.view.Hold(by)
	}
	put(s.Menu, p.Menu)
	put(s.Rail, p.Rail)
	put(s.Drawer, p.Drawer)
	put(s.Board, p.Board)
	put(s.Level, p.Level)
	put(s.Unfold, p.Unfold)
	put(s.Card, p.Card)
	put(s.Status, p.Status)
	for i, line := range [lineCount]Panel{
		lineMenu: under(p.Menu), lineRail: rightOf(p.Rail), lineDrawer: rightOf(p.Drawer), lineCard: leftOf(p.Card),
		lineLevel: above(p.Level), lineUnfold: above(p.Unfold), lineStatus: above(p.Status),
	} {
		put(s.lines[i], line)
	}
	put(s.dividers[divideDrawer], across(p.Drawer.At.X+p.Drawer.Size.Width, p.Drawer))
	put(s.dividers[divideCard], across(p.Card.At.X, p.Card))
	put(s.dividers[divideUnfold], along(p.Unfold))
	if refit {
		s.view.Fit()
	}
}

// across is the place of a divider down a side of a panel, or none.
func across(x float32, p Panel) Panel {
	if p.Size.Width <= 0 {
		return Panel{}
	}
	w := look.Scaled(look.DividerWidth)
	return Panel{fyne.NewPos(x-w/2, p.At.Y), fyne.NewSize(w, p.Size.Height)}
}

// along is the place of a divider on the top of a panel, or none.
func along(p Panel) Panel {
	if p.Size.Height <= 0 {
		return Panel{}
	}
	h := look.Scaled(look.DividerWidth)
	return Panel{p.At.AddXY(0, -h/2), fyne.NewSize(p.Size.Width, h)}
}

func put(o fyne.CanvasObject, at Panel) {
	if at.Size.Width <= 0 || at.Size.Height <= 0 {
		o.Hide()
		return
	}
	o.Move(at.At)
	o.Resize(at.Size)
	o.Show()
}

func under(p Panel) Panel {
	return Panel{p.At.AddXY(0, p.Size.Height-1), fyne.NewSize(p.Size.Width, 1)}
}

func above(p Panel) Panel { return Panel{p.At, fyne.NewSize(p.Size.Width, 1)} }

func rightOf(p Panel) Panel {
	return Panel{p.At.AddXY(p.Size.Width-1, 0), fyne.NewSize(min(1, p.Size.Width), p.Size.Height)}
}

func leftOf(p Panel) Panel { return Panel{p.At, fyne.NewSize(min(1, p.Size.Width), p.Size.Height)} }
