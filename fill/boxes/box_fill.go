package boxes

import (
	"errors"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Fill compares what is in a box with its volume.
var Fill = rule.Rule{
	ID:      "box-fill",
	Title:   words.New("rule.box-fill.title", "Box fill"),
	Figure:  "conductor",
	Doc:     words.New("rule.box-fill.doc", `The volume of the box and of the rings, extensions and covers that have a mark or a listed size, less barriers, is compared with one allowance for each conductor, for clamps, fittings, devices, grounding conductors and terminal blocks. A box that is exactly full fits. Contents come from the cables drawn, else from what the user enters, else from what the kind of opening assumes; the source is told. Not checked: depth behind a device, conductors of 4 AWG and larger, and boxes that come with a luminaire or fan.`),
	Opening: checkBoxFill,
}

func checkBoxFill(v index.OpeningView, fig *code.Figures) []rule.Finding {
	o := v.Opening
	if o.Status == plan.StatusRemove {
		return nil
	}
	b, chosen, err := part.Resolve(o.Assembly)
	contents, source := ContentsOf(v)
	kind := part.All().Kind(o.Kind)
	switch {
	case source == NotCounted:
		return nil
	case !chosen && err == nil && kind != nil && kind.Assembly == nil && o.Contents == nil:
		return nil // it comes with a box of its own
	case source == NotKnown && kind == nil && o.Contents == nil && !isThere(o):
		return []rule.Finding{notKnown(o, words.New("rule.box-fill.no-kind.why", "Nothing is assumed of the kind \"{0}\", which is not in the catalog; draw its cables or enter what is there.", o.Kind))}
	case source == NotKnown:
		return []rule.Finding{notKnown(o, whyNotKnown(v, fig))}
	case err != nil:
		return []rule.Finding{unreadable(o, whyUnresolved(err))}
	case !chosen && kind != nil && kind.Assembly == nil:
		return nil // it comes with a box of its own
	case !chosen:
		return []rule.Finding{{
			Severity: rule.Note, IsOpen: true,
			Message: words.New("rule.box-fill.no-box", "{0}: no box is selected", o.Tag),
			Why:     words.New("rule.box-fill.no-box.why", "Select what is built into the wall; then its fill is checked."),
		}}
	}
	result, err := box.Fill(fig, b.Space(), contents)
	if err != nil {
		return []rule.Finding{uncounted(o, err)}
	}
	if result.Fits {
		return nil
	}
	return []rule.Finding{overFull(v, fig, b, source, result)}
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
	least, ok := needOf(fig, LeastOf(v))
	if !ok {
		return words.New("rule.box-fill.not-known.why", "Open it with the power off and proven off, or have it opened, and enter what is there; no verdict until then.")
	}
	return words.New("rule.box-fill.not-known.least", "What is drawn to it needs at least {0}, beside what is there. Open it with the power off and proven off, or have it opened, and state what is there; no verdict until then.", least)
}

// needOf sums what contents need; it reports false where nothing is counted.
func needOf(fig *code.Figures, c box.Contents) (sum unit.Volume, ok bool) {
	lines, _, err := box.Need(fig, c)
	for _, l := range lines {
		sum += l.Volume
	}
	return sum, err == nil && sum > 0
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
func uncounted(o *plan.Opening, err error) rule.Finding {
	var size *box.SizeError
	switch {
	case errors.Is(err, box.ErrNoVolume):
		return unreadable(o, words.New("rule.box-fill.no-volume", "The box has neither a marked volume nor a listed size; read the mark off it and enter it."))
	case errors.As(err, &size):
		return unreadable(o, words.New("rule.box-fill.size", "It holds a conductor of {0} AWG; the table of allowances runs from 18 to 6 AWG.", size.Item.Size))
	}
	return unreadable(o, words.New("plain", "{0}", err.Error()))
}

func overFull(v index.OpeningView, fig *code.Figures, b part.Resolved, s Source, r box.Result) rule.Finding {
	return rule.Finding{
		Severity: rule.Stop,
		Measured: rule.VolumeOf(r.Required), Limit: rule.VolumeOf(r.Volume),
		Message:  words.New("rule.box-fill.over", "{0}: the box is too small by {1}", v.Opening.Tag, -r.Spare),
		Why:      words.New("rule.box-fill.over.why", "What enters it ({0}) needs {1}; the box holds {2}.", s.Text(), r.Required, b.MarkedVolume()),
		Remedies: roomier(v, fig, b, r.Required),
	}
}

// mostOffers bounds how many boxes are offered in place of one.
const mostOffers = 3

// roomier offers assemblies that the contents fit in, with what they cost more. From one
// volume from memory to another is no cure: either may prove wrong when the stamp is read.
func roomier(v index.OpeningView, fig *code.Figures, b part.Resolved, need unit.Volume) (offers []rule.Remedy) {
	o := v.Opening
	for _, a := range part.All().Roomier(b.Assembly, need) {
		if len(offers) == mostOffers {
			break
		}
		if b.IsFromMemory() && a.IsFromMemory() || !fitsIn(a, b, fig, v) {
			continue
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.box-fill.remedy", "Use “{0}”: {1}", a.Text(), a.MarkedVolume()),
			Edit:  edit.SetAssembly{ID: o.ID, Assembly: plan.Assembly{Code: a.Code, Barriers: o.Assembly.Barriers}},
			Price: dearer(a, b.Assembly),
		})
	}
	return offers
}

// dearer returns what one assembly costs more than another, nil where either has no price.
func dearer(a, than *part.Assembly) *unit.Money {
	price, was := a.Price(), than.Price()
	if price.Cents == 0 || was.Cents == 0 || price.Currency != was.Currency {
		return nil
	}
	price.Cents -= was.Cents
	return &price
}

// fitsIn reports whether what is in a box goes into another assembly, with its own clamps
// and the barriers there are.
func fitsIn(a *part.Assembly, was part.Resolved, fig *code.Figures, v index.OpeningView) bool {
	contents, _ := contentsIn(v, a.Box.Clamps)
	if a.IsBlank() && contents.Yokes() > 0 {
		return false
	}
	r, err := box.Fill(fig, part.Resolved{Assembly: a, Barriers: was.Barriers}.Space(), contents)
	return err == nil && r.Fits
}
