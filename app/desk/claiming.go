package desk

import (
	"errors"
	"time"

	"studbay/plan/file"
)

// noticeChange looks whether the plan's file was changed underneath, and offers to read
// it again. It is asked when the window is come back to.
func (d *Desk) noticeChange() {
	if d.saving != nil || d.doc.Path() == "" || d.window.Canvas().Overlays().Top() != nil || time.Since(d.asked) < time.Second {
		return
	}
	d.asked = time.Now()
	changed, err := file.HasChanged(d.doc.Path(), d.doc.stamp)
	if err != nil || !changed {
		return
	}
	path := d.doc.Path()
	now, err := file.StampOf(path)
	if err != nil {
		return
	}
	if now.IsZero() {
		d.doc.stamp, d.doc.recovered = now, true
		d.tell(d.say("underneath.gone", "The plan's file is gone"),
			d.say("underneath.gone.body", "{0} was moved or deleted. The plan is still open here: save it to keep it.", path))
		return
	}
	body := d.say("underneath.body", "{0} was changed by another program.", path)
	if d.doc.IsDirty() {
		body += " " + d.say("underneath.lose", "Reading it again gives up your changes here.")
	}
	d.ask(question{
		title: d.say("underneath.title", "Read the plan again?"), body: body,
		answers: []answer{
			{d.say("answer.keep-mine", "Keep what is here"), func() { d.doc.stamp, d.doc.recovered = now, true; d.refreshAll() }},
			{d.say("answer.read", "Read it again"), func() { d.forget(); d.load(path) }},
		},
	})
}

// claimed claims a file for this window and goes on; where another window has it open,
// it asks first.
func (d *Desk) claimed(path string, do func()) {
	if d.claim != nil && d.doc.Path() == path {
		do()
		return
	}
	claim, err := file.ClaimFile(d.house.claims, path)
	if !errors.Is(err, file.ErrClaimed) { // a claim only tells: without one all goes on
		d.release()
		d.claim = claim
		do()
		return
	}
	d.ask(question{
		title: d.say("claim.title", "Open it a second time?"), body: d.errorText(err),
		answers: []answer{
			{d.say("answer.stay", "Go back"), nil},
			{d.say("answer.second", "Open it all the same"), func() { d.release(); do() }},
		},
	})
}

// release gives the file claimed free.
func (d *Desk) release() {
	if d.claim != nil {
		d.claim.Release()
		d.claim = nil
	}
}
