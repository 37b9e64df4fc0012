package desk

import (
	"studbay/plan"
	"studbay/plan/words"
)

// copyOpening keeps the chosen opening, so that its like can be set elsewhere, in any
// window.
func (d *Desk) copyOpening() {
	o, _ := d.doc().Plan().Opening(d.doc().Selection()[0])
	if o == nil {
		return
	}
	d.house.copied = o
	d.said = words.New("copy.done", "{0} is copied: {1} takes its like in hand", o.Tag, d.commandByID("paste").Keys[0].said(d.voice))
	d.showHint()
}

func (d *Desk) hasCopied() bool { return d.house.copied != nil }

// takeCopied takes the like of the copied opening in hand: box, contents, height, devices
// and status go along; its circuit only where this plan has it.
func (d *Desk) takeCopied() {
	sample := *d.house.copied
	if _, has := d.doc().Plan().Circuits.Get(sample.Circuit); !has {
		sample.Circuit = ""
	}
	sample.Extra = plan.Extra{}
	d.takeKind(sample.Kind)
	d.sample = &sample
	d.said = words.New("copy.taken", "Click where the like of {0} goes", sample.Tag)
	d.showHint()
}
