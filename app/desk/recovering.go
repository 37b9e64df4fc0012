package desk

import (
	"studbay/plan/file"
)

// offerRecovery offers what a killed run had not saved, one plan at a time.
func (d *Desk) offerRecovery() {
	h := d.house
	if len(h.trouble) > 0 {
		err := h.trouble[0]
		h.trouble = h.trouble[1:]
		d.ask(question{title: d.say("recovery.trouble", "A safety copy could not be used"), body: d.errorText(err),
			answers: []answer{{d.say("answer.good", "Understood"), d.offerRecovery}}})
		return
	}
	if len(h.left) == 0 {
		return
	}
	u := h.left[0]
	h.left = h.left[1:]
	name := u.Path
	if name == "" {
		name = d.say("recovery.never-saved", "a plan never saved")
	}
	d.ask(question{
		title: d.say("recovery.title", "Take up where you were?"),
		body: d.say("recovery.body", "The program ended before this was saved: {0}, as it was on {1}.", name,
			u.Time.Local().Format("2006-01-02 15:04")),
		answers: []answer{
			{d.say("answer.later", "Later"), d.offerRecovery},
			{d.say("answer.give-up", "Discard it"), func() { _ = h.recovery.Drop(u.Doc); d.offerRecovery() }},
			{d.say("answer.take-up", "Take it up"), func() { d.takeUp(u); d.offerRecovery() }},
		},
	})
}

// takeUp shows a recovered plan: in this window where nothing is in it, else in
// another.
func (d *Desk) takeUp(u file.Unsaved) {
	if d.doc.Path() != "" || d.doc.IsDirty() {
		d = d.house.NewWindow()
	}
	d.replace(u.Plan, u.Path, u.Stamp)
	d.doc.name, d.doc.recovered = u.Doc, true
	d.keep()
	d.refreshAll()
	d.fit()
}
