package boxes

import (
	"errors"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Fill compares what is in a box with its volume.
var Fill = rule.Rule{
	ID:      "box-fill",
	Title:   words.New("rule.box-fill.title", "Box fill"),
	Figure:  "conductor",
	Doc:     words.New("rule.box-fill.doc", `The volume of the box and of the rings, extensions and covers that have a mark or a listed size, less barriers, is compared with one allowance for each conductor, for clamps, fittings, devices, grounding conductors and terminal blocks. A box that is exactly full fits. Of one that was only measured inside the likely sizes of the table are named, none is settled, and no volume is worked out. Contents come from the cables drawn, else from what the user enters, else from what the kind of opening assumes; the source is told. Not checked: depth behind a device, conductors of 4 AWG and larger, and boxes that come with a luminaire or fan.`),
	Opening: checkBoxFill,
}

func checkBoxFill(v index.OpeningView, fig *code.Figures) []rule.Finding {
	return append(filled(v, fig), likelySizes(v.Opening, fig)...)
}

func filled(v index.OpeningView, fig *code.Figures) []rule.Finding {
	o := v.Opening
	if o.IsGone() {
		return nil
	}
	b, chosen, err := part.Resolve(o.Assembly)
	in := wiringOf(v)
	source := in.source
	kind := part.All().Kind(o.Kind)
	hasOwn := !chosen && err == nil && kind != nil && kind.Assembly == nil // it comes with a box of its own
	switch {
	case source == NotCounted:
		return nil
	case hasOwn && o.Contents == nil:
		return nil
	case source == NotKnown && kind == nil && o.Contents == nil && !o.Status.IsOld():
		return []rule.Finding{notKnown(o, words.New("rule.box-fill.no-kind.why", "Nothing is assumed of the kind \"{0}\", which is not in the catalog; draw its cables or enter what is there.", o.Kind))}
	case source == NotKnown, source == InPart:
		if f, over := overAtLeast(v, fig, b, chosen); over {
			return []rule.Finding{f}
		}
		return []rule.Finding{notKnown(o, whyNotKnown(v, fig))}
	case err != nil:
		return []rule.Finding{unreadable(o, whyUnresolved(err))}
	case hasOwn:
		return nil
	case !chosen:
		return []rule.Finding{{
			Severity: rule.Note, IsOpen: true,
			Message: words.New("rule.box-fill.no-box", "{0}: no box is selected", o.Tag),
			Why:     words.New("rule.box-fill.no-box.why", "Select what is built into the wall; then its fill is checked."),
		}}
	}
	if in.fits(b, fig) {
		return nil
	}
	w := in.work(v, b, fig)
	switch {
	case w.Source == NotKnown, w.Source == InPart:
		return []rule.Finding{citing(notKnown(o, words.New("plain", "{0}", sayable(w.Err))), fig, "box-volume")}
	case w.Err != nil:
		return []rule.Finding{uncounted(o, w.Err, fig)}
	}
	return overFull(v, fig, b, w)
}

// citing gives a finding the section of a figure, where that is not the rule's own.
func citing(f rule.Finding, fig *code.Figures, figure string) rule.Finding {
	f.Section = fig.Title + " " + fig.Section(figure)
	return f
}

func notKnown(o *plan.Opening, why words.Text) rule.Finding {
	return rule.Finding{
		Severity: rule.Note, IsOpen: true,
		Message: words.New("rule.box-fill.not-known", "{0}: what is in the box is not known", o.Tag),
		Why:     why,
	}
}

// whyNotKnown says what is to be done, and the least that is drawn to it needs.
func whyNotKnown(v index.OpeningView, fig *code.Figures) words.Text {
	least, ok := box.Sum(fig, LeastOf(v))
	if !ok || least == 0 {
		return words.New("rule.box-fill.not-known.why", "Open it with the power off and proven off, or have it opened, and enter what is there; no verdict until then.")
	}
	if c := v.Opening.Contents; c != nil && c.Source == plan.ContentsInPart {
		more, _ := box.Sum(fig, append(LeastOf(v), box.Item{What: box.Cable, Size: leastWire, Wires: leastWires, Times: 1}))
		return words.New("rule.box-fill.in-part.least", "What was seen needs at least {0}; with one more 14/2 cable at least {1}. There may be more in it; no verdict until all is known.", least, more)
	}
	return words.New("rule.box-fill.not-known.least", "What is drawn to it needs at least {0}, beside what is there. Open it with the power off and proven off, or have it opened, and state what is there; no verdict until then.", least)
}

func whyUnresolved(err error) words.Text {
	var unresolved *part.UnresolvedError
	if errors.As(err, &unresolved) {
		return unresolved.Why
	}
	return words.New("plain", "{0}", err.Error())
}

func unreadable(o *plan.Opening, why words.Text) rule.Finding {
	return rule.Finding{
		Severity: rule.Warn,
		Message:  words.New("rule.box-fill.unreadable", "{0}: the fill of its box was not worked out", o.Tag),
		Why:      why,
	}
}

// uncounted says why the arithmetic has no answer.
func uncounted(o *plan.Opening, err error, fig *code.Figures) rule.Finding {
	var size *box.SizeError
	var untold *words.Error
	switch {
	case errors.Is(err, box.ErrNoVolume):
		return citing(unreadable(o, words.New("rule.box-fill.no-volume", "The box has neither a marked volume nor a listed size; read the mark off it and enter it.")), fig, "box-volume")
	case errors.As(err, &untold):
		return citing(unreadable(o, untold.Text), fig, "box-volume")
	case errors.As(err, &size):
		return unreadable(o, words.New("rule.box-fill.size", "It holds a conductor of {0} AWG; the table of allowances runs from 18 to 6 AWG.", size.Item.Size))
	}
	return unreadable(o, words.New("plain", "{0}", err.Error()))
}
