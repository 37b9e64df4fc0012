package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// The measures of the window in units, before the interface scale.
const (
	menuHeight   = 30
	railWidth    = 72
	drawerWidth  = 196
	cardWidth    = 352
	narrowCard   = 304 // in a window too narrow for a wide one
	narrowWindow = 1366
	stripHeight  = 30
	statusHeight = 27
	unfoldHeight = 214
	leastBoard   = 160 // of the board's height, before the unfolded room gives way
)

// panel is where one part of the window stands.
type panel struct {
	At   fyne.Position
	Size fyne.Size
}

// places is where every part of the window stands. A part that is not shown has no
// size.
type places struct {
	Menu, Rail, Drawer, Board, Strip, Unfold, Card, Status panel
	Overlaid                                               bool // the drawer lies over the board
}

// shown says which parts of the window there are.
type shown struct{ Drawer, Unfold, Card bool }

// isNarrow reports whether a window is too narrow for all panels side by side.
func isNarrow(width float32) bool { return width < look.Scaled(narrowWindow) }

// cardWidthIn returns the width of the right column in a window.
func cardWidthIn(width float32) float32 {
	if isNarrow(width) {
		return look.Scaled(narrowCard)
	}
	return look.Scaled(cardWidth)
}

// placesIn lays out a window of a size. All width beyond the panels is the board's.
func placesIn(size fyne.Size, s shown) (p places) {
	menu, status := look.Scaled(menuHeight), look.Scaled(statusHeight)
	middle := max(0, size.Height-menu-status)
	p.Menu = panel{fyne.NewPos(0, 0), fyne.NewSize(size.Width, menu)}
	p.Status = panel{fyne.NewPos(0, size.Height-status), fyne.NewSize(size.Width, status)}
	left, right := look.Scaled(railWidth), size.Width
	p.Rail = panel{fyne.NewPos(0, menu), fyne.NewSize(left, middle)}
	if s.Card {
		w := cardWidthIn(size.Width)
		right -= w
		p.Card = panel{fyne.NewPos(right, menu), fyne.NewSize(w, middle)}
	}
	if s.Drawer {
		w := look.Scaled(drawerWidth)
		p.Drawer = panel{fyne.NewPos(left, menu), fyne.NewSize(w, middle)}
		if p.Overlaid = isNarrow(size.Width); !p.Overlaid {
			left += w
		}
	}
	p.middle(left, max(left, right), menu, middle, s.Unfold)
	return p
}

// middle stacks the board, its strip and the unfolded room.
func (p *places) middle(left, right, top, height float32, unfold bool) {
	width, strip := right-left, look.Scaled(stripHeight)
	below := float32(0)
	if unfold {
		below = min(look.Scaled(unfoldHeight), max(0, height-strip-look.Scaled(leastBoard)))
	}
	board := max(0, height-strip-below)
	p.Board = panel{fyne.NewPos(left, top), fyne.NewSize(width, board)}
	p.Strip = panel{fyne.NewPos(left, top+board), fyne.NewSize(width, strip)}
	if below > 0 {
		p.Unfold = panel{fyne.NewPos(left, top+board+strip), fyne.NewSize(width, below)}
	}
}
