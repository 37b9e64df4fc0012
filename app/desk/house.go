package desk

import (
	"os"
	"path/filepath"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	"github.com/adrg/xdg"

	"studbay/app/appearance"
	"studbay/app/look"
	"studbay/app/prefs"
	"studbay/app/work"
	"studbay/plan/arrange"
	"studbay/plan/words"
)

// House is the program while its windows are open: what they share.
type House struct {
	app fyne.App
	// post brings a function to the goroutine of the windows, from any other.
	post    func(func())
	desks   []*Desk
	shop    *work.Shop
	loop    loop
	desktop appearance.Wanted // as the desktop asks
	copied  arrange.Clip      // to be set elsewhere, from any window
}

// Open makes ready the program's windows: one for each plan's file named, or one with
// an empty plan. It shows them; the caller runs the application.
func Open(app fyne.App, paths []string) *House {
	home := filepath.Join(xdg.StateHome, "studbay")
	h := &House{app: app, desktop: appearance.First()}
	h.post = h.loop.post
	h.shop = work.NewShop(home, h.post, h.keepFailed)
	h.applyTheme()
	first := newDesk(h)
	h.desks = append(h.desks, first)
	first.window.Show()
	for i, path := range paths {
		if i == 0 {
			first.session.Open(path)
			continue
		}
		h.NewWindow().session.Open(path)
	}
	app.Settings().AddListener(func(fyne.Settings) { h.post(h.restyled) })
	go appearance.Watch(func(s appearance.Setting, value any) { h.post(func() { h.follow(s, value) }) })
	go h.shop.Watch()
	app.Lifecycle().SetOnEnteredForeground(func() { h.post(h.shop.CameBack) })
	first.session.OfferRecovery()
	return h
}

// keepFailed says that a safety copy could not be kept.
func (h *House) keepFailed(err error) {
	for _, d := range h.desks {
		d.hand.say(words.New("autosave.failed", "The safety copy could not be kept: {0}", d.stage.ErrorText(err)))
	}
}

// NewWindow opens another window with an empty plan.
func (h *House) NewWindow() *Desk {
	d := newDesk(h)
	h.desks = append(h.desks, d)
	d.window.Show()
	return d
}

// applyTheme puts colours and scale in force as the user has chosen.
func (h *House) applyTheme() {
	p := prefs.Prefs{Store: h.app.Preferences()}
	scale := float32(p.Scale()) / 100
	if percent, err := strconv.Atoi(os.Getenv("STUDBAY_SCALE")); err == nil && percent >= 50 && percent <= 400 {
		scale = float32(percent) / 100
	}
	h.app.Settings().SetTheme(&look.Theme{Mode: p.Mode(), Scale: scale, Mute: h.desktop.Mute, HighContrast: h.desktop.High})
}

// restyled shows every window in the theme now in force.
func (h *House) restyled() {
	for _, d := range h.desks {
		d.view.show()
		d.rail.Refresh()
	}
}

// rebuildAll builds every window anew, in another language or at another scale.
func (h *House) rebuildAll() {
	for _, d := range h.desks {
		d.rebuild()
	}
}

// Quit closes every window; one with unsaved changes asks first, and stays where the user
// goes back.
func (h *House) Quit() {
	for _, d := range slices.Clone(h.desks) {
		d.Close()
	}
}

// gone is told that a window has closed.
func (h *House) gone(d *Desk) {
	for i, other := range h.desks {
		if other == d {
			h.desks = append(h.desks[:i], h.desks[i+1:]...)
			break
		}
	}
	if len(h.desks) > 0 {
		return
	}
	h.loop.end()
	h.shop.Close()
}

// Close ends what the windows shared. It is for after the application has run, also
// where it was quit with windows open: what they had not saved stays in the recovery.
func (h *House) Close() { h.shop.Close() }

// follow shows the windows as the desktop has it, unless the user has chosen otherwise.
func (h *House) follow(of appearance.Setting, value any) {
	if w := h.desktop.Heed(of, value); w != h.desktop {
		h.desktop = w
		h.applyTheme()
	}
}
