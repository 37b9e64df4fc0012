package shell

import (
	"testing"

	"fyne.io/fyne/v2"
)

// TestPanelsNeverOverlap lays out windows of many sizes. Only the drawer may lie over
// the board, and only in a narrow window.
func TestPanelsNeverOverlap(t *testing.T) {
	for _, size := range []fyne.Size{{Width: 1024, Height: 640}, {Width: 1364, Height: 740}, {Width: 1366, Height: 768}, {Width: 1440, Height: 900}, {Width: 1920, Height: 1080}, {Width: 2560, Height: 1440}} {
		for _, s := range []Shown{{}, {Drawer: true}, {Unfold: true}, {Card: true}, {true, true, true}} {
			p := placesIn(size, s, Sizes{})
			parts := map[string]Panel{
				"menu": p.Menu, "rail": p.Rail, "drawer": p.Drawer, "board": p.Board,
				"level": p.Level, "unfold": p.Unfold, "card": p.Card, "status": p.Status,
			}
			for a, pa := range parts {
				if pa.Size.Width < 0 || pa.Size.Height < 0 || pa.At.X+pa.Size.Width > size.Width || pa.At.Y+pa.Size.Height > size.Height {
					t.Errorf("%v %+v: %s at %v %v reaches out of the window", size, s, a, pa.At, pa.Size)
				}
				for b, pb := range parts {
					if a < b && overlap(pa, pb) && !(p.Overlaid && (a == "drawer" || b == "drawer")) {
						t.Errorf("%v %+v: %s and %s overlap", size, s, a, b)
					}
				}
			}
			if p.Overlaid && !isOverlaid(size.Width) {
				t.Errorf("%v: the drawer lies over the board in a wide window", size)
			}
		}
	}
}

func overlap(a, b Panel) bool {
	return a.At.X < b.At.X+b.Size.Width && b.At.X < a.At.X+a.Size.Width &&
		a.At.Y < b.At.Y+b.Size.Height && b.At.Y < a.At.Y+a.Size.Height
}

func TestWidthBeyondThePanelsIsTheBoards(t *testing.T) {
	all := Shown{true, true, true}
	narrow, wide := placesIn(fyne.NewSize(1920, 1080), all, Sizes{}), placesIn(fyne.NewSize(2560, 1080), all, Sizes{})
	if got, want := wide.Board.Size.Width-narrow.Board.Size.Width, float32(640); got != want {
		t.Errorf("a window 640 wider gives the board %v, want all of it", got)
	}
	if got := placesIn(fyne.NewSize(1280, 800), all, Sizes{}).Card.Size.Width; got != narrowCard {
		t.Errorf("card in a narrow window is %v wide, want %v", got, narrowCard)
	}
}

func TestNamesInTheDrawerLeaveOutWhatTheShelfSays(t *testing.T) {
	for _, tt := range []struct{ name, said, want string }{
		{"Duplex receptacle", "receptacle", "Duplex"},
		{"Receptacle at a basin", "receptacle", "At a basin"},
		{"Range receptacle, 50 A", "receptacle", "Range, 50 A"},
		{"Two switches", "switch", "Two switches"},
		{"Tomacorriente de isla", "tomacorriente", "De isla"},
		{"Dimmer", "switch", "Dimmer"},
		{"Junction box", "", "Junction box"},
	} {
		if got := shortName(tt.name, tt.said); got != tt.want {
			t.Errorf("shortName(%q, %q) = %q, want %q", tt.name, tt.said, got, tt.want)
		}
	}
}

// TestADrawerCoversNothingOnASmallScreen: a window that fills a screen 1366 wide is 1364
// wide inside.
func TestADrawerCoversNothingOnASmallScreen(t *testing.T) {
	for _, width := range []float32{1364, 1340, 1099, 1024, 960} {
		p := placesIn(fyne.NewSize(width, 740), Shown{true, true, true}, Sizes{})
		if p.Overlaid || overlap(p.Drawer, p.Board) {
			t.Errorf("a window %v wide: the drawer covers the board", width)
		}
	}
	if p := placesIn(fyne.NewSize(940, 740), Shown{true, true, true}, Sizes{}); !p.Overlaid {
		t.Error("a window 940 wide leaves too little board beside the drawer")
	}
}

func TestDraggedSizesKeepTheirBounds(t *testing.T) {
	all := Shown{true, true, true}
	wide := placesIn(fyne.NewSize(1920, 1080), all, Sizes{Card: 440, Drawer: 240, Unfold: 300})
	if wide.Card.Size.Width != 440 || wide.Drawer.Size.Width != 240 || wide.Unfold.Size.Height != 300 {
		t.Errorf("Panels are %v, %v, %v, want what they were dragged to", wide.Card.Size, wide.Drawer.Size, wide.Unfold.Size)
	}
	far := placesIn(fyne.NewSize(1366, 768), all, Sizes{Card: 9000, Drawer: 9000, Unfold: 9000})
	if far.Board.Size.Width < leastWidth || far.Board.Size.Height < leastBoard {
		t.Errorf("the board is left %v, want at least %v by %v", far.Board.Size, leastWidth, leastBoard)
	}
}
