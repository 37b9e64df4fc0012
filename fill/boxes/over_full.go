package boxes

import (
	"strings"

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

// overFull tells of each space of a box that holds more than it has room for.
func overFull(v index.OpeningView, fig *code.Figures, b part.Resolved, w Work) (found []rule.Finding) {
	offers := func() []rule.Remedy { return roomier(v, fig, b, w) }
	for i, r := range w.Spaces {
		if r.Fits {
			continue
		}
		f := rule.Finding{
			Severity: rule.Stop, Section: fig.Title + " " + sectionsOf(r),
			Measured: rule.VolumeOf(r.Required), Limit: rule.VolumeOf(r.Volume),
			Message: words.New("rule.box-fill.over", "{0}: the box is too small by {1}", v.Opening.Tag, -r.Spare),
			Why:     words.New("rule.box-fill.over.why", "What enters it ({0}) needs {1}; the box holds {2}.", w.Source.Text(), r.Required, b.MarkedVolume()),
		}
		if len(w.Spaces) > 1 {
			f.Message = words.New("rule.box-fill.over.space", "{0}: space {1} of {2} is too small by {3}", v.Opening.Tag, i+1, len(w.Spaces), -r.Spare)
			f.Why = words.New("rule.box-fill.over.space.why", "What is on that side of the barrier ({0}) needs {1}; it has {2} of the {3} of the box. Each side is worked out by itself.", w.Source.Text(), r.Required, r.Volume, b.MarkedVolume())
		}
		if len(found) == 0 {
			f.Remedies = offers()
		}
		found = append(found, f)
	}
	return found
}

// sectionsOf cites the paragraphs that a sum rests on, each once: that of the volume, then
// those of the allowances, such as 314.16(A), (B)(1), (B)(4).
func sectionsOf(r box.Result) string {
	var cited []string
	seen := map[string]bool{}
	add := func(section string) {
		if !seen[section] {
			seen[section] = true
			if len(cited) > 0 {
				section = strings.TrimPrefix(section, articleOf(cited[0]))
			}
			cited = append(cited, section)
		}
	}
	for _, l := range r.VolumeLines {
		add(l.Section)
	}
	for _, l := range r.Lines {
		if l.Volume > 0 {
			add(l.Section)
		}
	}
	return strings.Join(cited, ", ")
}

// articleOf returns what stands before the first bracket of a section.
func articleOf(section string) string {
	article, _, _ := strings.Cut(section, "(")
	return article
}

// hasUsualFront reports whether an assembly is closed as an opening of the kind usually is: of
// a box whose front nobody tells, that decides what may take its place.
func hasUsualFront(a *part.Assembly, o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k == nil || k.Assembly == nil || k.Assembly.FrontKind() == a.FrontKind()
}

// mostOffers bounds how many boxes are offered in place of one.
const mostOffers = 3

// roomier offers assemblies that the contents fit in, with what they cost more. From one
// volume from memory to another is no cure: either may prove wrong when the stamp is read.
// In place of a box that is there already, in a finished wall, goes an old-work box; where
// its front is bare an extension goes on it.
func roomier(v index.OpeningView, fig *code.Figures, b part.Resolved, w Work) (offers []rule.Remedy) {
	need := neededOf(w)
	from := part.All().Roomier(b.Assembly, need)
	if v.Opening.HasOldBox() {
		offers = extended(v, fig, b)
		from = part.All().OldWork(b.Assembly, need)
	}
	for _, a := range from {
		if len(offers) == mostOffers {
			break
		}
		made := plan.Assembly{Code: a.Code, Barriers: v.Opening.Assembly.Barriers}
		if b.IsFromMemory() && a.IsFromMemory() || !fitsIn(made, fig, v) || b.Assembly.Cover == nil && !hasUsualFront(a, v.Opening) {
			continue
		}
		label := words.New("rule.box-fill.remedy", "Use “{0}”: {1}", a.Text(), a.MarkedVolume())
		if v.Opening.HasOldBox() {
			label = words.New("rule.box-fill.remedy.old-work", "Replace it with “{0}”: {1}", a.Text(), a.MarkedVolume())
		}
		offers = append(offers, rule.Remedy{
			Label: label,
			Edit:  edit.SetAssembly{ID: v.Opening.ID, Assembly: made},
			Price: dearer(a, b.Assembly),
		})
	}
	return offers
}

// neededOf sums what all spaces of a box need.
func neededOf(w Work) (need unit.Volume) {
	for _, r := range w.Spaces {
		need += r.Required
	}
	return need
}

// extended offers the extensions of a listed size that go on the bare front of a box.
func extended(v index.OpeningView, fig *code.Figures, b part.Resolved) (offers []rule.Remedy) {
	if len(b.Adds) > 0 {
		return nil
	}
	for _, add := range part.All().Adds {
		if add.Kind != part.Extension || add.Volume == 0 || !add.FitsOn(b.Box.Shape) {
			continue
		}
		made := part.TakenApart(v.Opening.Assembly)
		made.Parts = []plan.AssemblyPart{{Part: add.ID}}
		if !fitsIn(made, fig, v) {
			continue
		}
		remedy := rule.Remedy{
			Label: words.New("rule.box-fill.remedy.extension", "Put “{0}” on it: {1} more", add.Text(), add.Volume),
			Edit:  edit.SetAssembly{ID: v.Opening.ID, Assembly: made},
		}
		if price := add.Price; price.Cents > 0 {
			remedy.Price = &price
		}
		return []rule.Remedy{remedy}
	}
	return nil
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
func fitsIn(a plan.Assembly, fig *code.Figures, v index.OpeningView) bool {
	b, ok, _ := part.Resolve(a)
	if !ok {
		return false
	}
	w := WorkOf(v, b, fig)
	return w.Fits() && (b.Box.CarriesFan() || !part.HangsFan(v.Opening)) && !(b.IsBlank() && w.Contents.Yokes() > 0)
}
