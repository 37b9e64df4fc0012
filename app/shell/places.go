package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// The measures of the window in units, before the interface scale.
const (
	menuHeight  = 30
	railWidth   = 72
	drawerWidth = 224
	cardWidth   = 352
	narrowCard  = 304 // in a window too narrow for a wide one
	// narrowWindow is where the card is narrow: a window that fills a screen 1366 wide is a
	// few units narrower than that inside. Below overlayWindow, which is narrower than a
	// window can be but for large letters, the drawer lies over the board.
	narrowWindow  = 1340
	overlayWindow = 960
	levelHeight   = 30
	statusHeight  = 44 // two lines
	unfoldHeight  = 214
	leastBoard    = 160 // of the board's height, before the unfolded room gives way
	leastWidth    = 360 // of the board, before the panels the user has widened give way
)

// How far the user may drag what stands beside the board.
const (
	leastDrawer, mostDrawer = 176, 320
	leastCard, mostCard     = 288, 560
	leastUnfold, mostUnfold = 120, 480
)

// Sizes are what the user has dragged the panels to, in units before the interface
// scale; 0 is the usual size.
type Sizes struct{ Drawer, Card, Unfold float32 }

// or returns a size within bounds, or the usual one for 0.
func or(size, usual, least, most float32) float32 {
	if size == 0 {
		size = usual
	}
	return look.Scaled(max(least, min(most, size)))
}

// Panel is where one part of the window stands.
type Panel struct {
	At   fyne.Position
	Size fyne.Size
}

// places is where every part of the window stands. A part that is not shown has no
// size.
type places struct {
	Menu, Rail, Drawer, Board, Level, Unfold, Card, Status Panel
	Overlaid                                               bool // the drawer lies over the board
}

// Shown says which parts of the window there are.
type Shown struct{ Drawer, Unfold, Card bool }

// cardWidthIn returns the width of the right column in a window.
func cardWidthIn(width, chosen float32) float32 {
	usual := float32(cardWidth)
	if width < look.Scaled(narrowWindow) {
		usual = narrowCard
	}
	return or(chosen, usual, leastCard, mostCard)
}

// isOverlaid reports whether a window is too narrow for the drawer beside the board.
func isOverlaid(width float32) bool { return width < look.Scaled(overlayWindow) }

// placesIn lays out a window of a size. All width beyond the panels is the board's.
func placesIn(size fyne.Size, s Shown, z Sizes) (p places) {
	menu, status := look.Scaled(menuHeight), look.Scaled(statusHeight)
	middle := max(0, size.Height-menu-status)
	p.Menu = Panel{fyne.NewPos(0, 0), fyne.NewSize(size.Width, menu)}
	p.Status = Panel{fyne.NewPos(0, size.Height-status), fyne.NewSize(size.Width, status)}
	left, right := look.Scaled(railWidth), size.Width
	p.Rail = Panel{fyne.NewPos(0, menu), fyne.NewSize(left, middle)}
	drawer := or(z.Drawer, drawerWidth, leastDrawer, mostDrawer)
	p.Overlaid = s.Drawer && isOverlaid(size.Width)
	if s.Drawer {
		p.Drawer = Panel{fyne.NewPos(left, menu), fyne.NewSize(drawer, middle)}
		if !p.Overlaid {
			left += drawer
		}
	}
	if s.Card {
		w := min(cardWidthIn(size.Width, z.Card), max(look.Scaled(leastCard), right-left-look.Scaled(leastWidth)))
		right -= w
		p.Card = Panel{fyne.NewPos(right, menu), fyne.NewSize(w, middle)}
	}
	p.middle(left, max(left, right), menu, middle, s.Unfold, z.Unfold)
	return p
}

// middle stacks the board, its bar and the unfolded room.
func (p *places) middle(left, right, top, height float32, unfold bool, chosen float32) {
	width, bar := right-left, look.Scaled(levelHeight)
	below := float32(0)
	if unfold {
		below = min(or(chosen, unfoldHeight, leastUnfold, mostUnfold), max(0, height-bar-look.Scaled(leastBoard)))
	}
	board := max(0, height-bar-below)
	p.Board = Panel{fyne.NewPos(left, top), fyne.NewSize(width, board)}
	p.Level = Panel{fyne.NewPos(left, top+board), fyne.NewSize(width, bar)}
	if below > 0 {
		p.Unfold = Panel{fyne.NewPos(left, top+board+bar), fyne.NewSize(width, below)}
	}
}
