// Package appearance asks the desktop what its user wants of every program: light or dark, and
// high contrast.
package appearance

import "os"

// Wanted is what the user has asked of the desktop for all its programs.
type Wanted struct {
	High bool // high contrast
	Mute bool // it asks for neither light nor dark, or has nobody who says
}

// Setting is one value a desktop is asked for.
type Setting struct{ Namespace, Key string }

// The settings that the appearance is read from.
var (
	scheme      = Setting{"org.freedesktop.appearance", "color-scheme"}        // XDG Desktop Portal, Settings: 0 no preference, 1 dark, 2 light
	contrast    = Setting{"org.freedesktop.appearance", "contrast"}            // the same: 0 no preference, 1 higher
	gnomeAccess = Setting{"org.gnome.desktop.a11y.interface", "high-contrast"} // GNOME's own, passed on by its portal: a boolean
)

// Heed takes in what the desktop says of a setting, and leaves alone what it does not
// know of.
func (w Wanted) Heed(of Setting, value any) Wanted {
	switch v := value.(type) {
	case uint32:
		if of == contrast {
			w.High = v == 1
		}
		if of == scheme {
			w.Mute = v != 1 && v != 2 && !toldByHand()
		}
	case bool:
		if of == gnomeAccess {
			w.High = v
		}
	}
	return w
}

// toldByHand reports whether the toolkit was told light or dark by whoever started us.
func toldByHand() bool { return os.Getenv("FYNE_THEME") != "" }
