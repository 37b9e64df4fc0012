package desk

import "os"

// appearance is what the user has asked of the desktop for all its programs.
type appearance struct {
	high bool // high contrast
	mute bool // it asks for neither light nor dark, or has nobody who says
}

// setting is one value a desktop is asked for.
type setting struct{ namespace, key string }

// The settings that the appearance is read from.
var (
	scheme      = setting{"org.freedesktop.appearance", "color-scheme"}        // XDG Desktop Portal, Settings: 0 no preference, 1 dark, 2 light
	contrast    = setting{"org.freedesktop.appearance", "contrast"}            // the same: 0 no preference, 1 higher
	gnomeAccess = setting{"org.gnome.desktop.a11y.interface", "high-contrast"} // GNOME's own, passed on by its portal: a boolean
)

// heed takes in what the desktop says of a setting, and leaves alone what it does not
// know of.
func (w appearance) heed(of setting, value any) appearance {
	switch v := value.(type) {
	case uint32:
		if of == contrast {
			w.high = v == 1
		}
		if of == scheme {
			w.mute = v != 1 && v != 2 && !toldByHand()
		}
	case bool:
		if of == gnomeAccess {
			w.high = v
		}
	}
	return w
}

// toldByHand reports whether the toolkit was told light or dark by whoever started us.
func toldByHand() bool { return os.Getenv("FYNE_THEME") != "" }

// follow shows the windows as the desktop has it, unless the user has chosen otherwise.
func (h *House) follow(of setting, value any) {
	if w := h.desktop.heed(of, value); w != h.desktop {
		h.desktop = w
		h.applyTheme()
	}
}
