package desk

import (
	"time"

	"studbay/app/card"
	"studbay/plan/file"
)

// watchEvery is how often the files of open plans are looked at.
const watchEvery = 3 * time.Second

// watch looks at the files of open plans again and again, beside the windows. It ends with
// the program.
func (h *House) watch() {
	for range time.Tick(watchEvery) {
		h.post(h.lookRound)
	}
}

// lookRound has every open plan's file looked at, and what was changed underneath told.
func (h *House) lookRound() {
	for _, d := range h.desks {
		path, stamp := d.doc.Path(), d.doc.stamp
		if path == "" {
			continue
		}
		go func() { // a folder on the network may keep one waiting
			if changed, err := file.HasChanged(path, stamp); err == nil && changed {
				h.post(d.noticeBetween)
			}
		}()
	}
}

// noticeBetween tells of a file changed underneath, unless the user is in the middle of
// something: then the next look round does.
func (d *Desk) noticeBetween() {
	if d.doc.History().InGesture() || d.isTyping() {
		return
	}
	d.noticeChange()
}

// isTyping reports whether something is being typed on a card.
func (d *Desk) isTyping() bool {
	entry, ok := d.window.Canvas().Focused().(*card.Entry)
	return ok && entry.IsDirty()
}
