package depth

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// OldWorkRange compares what the clamps of old-work boxes reach with the finish they grip.
var OldWorkRange = rule.Rule{
	ID:    "old-work-range",
	Title: words.New("rule.old-work-range.title", "Clamps of old-work boxes through the finish"),
	Doc:   words.New("rule.old-work-range.doc", `An old-work box holds on to the finish of a wall: its clamps reach through all layers and grip behind them, from the least to the greatest thickness that they are made for, both included (common practice). Those figures are from memory, to be read off the box. Where a layer is undecided, or none is told, there is no verdict. Not checked: boxes that are there already, ceilings, floors and cabinets, and whether the finish is sound enough to hold a box.`),
	Side:  checkOldWorkRange,
}

func checkOldWorkRange(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	for _, b := range v.Wall().Boxes {
		thick := frame.SetProud(b.Side)
		if b.Box == nil || b.Box.Mounting != part.OldWork || b.IsThere() {
			continue
		}
		fit, f := b.Box.Fit, rule.OnBox(b.Opening, rule.Stop)
		f.Measured = rule.LengthOf(thick)
		f.Why = words.New("rule.old-work-range.why", "The finish is {0} thick; the clamps grip {1} to {2} (from memory, read it off the box).",
			words.Height(thick), words.Height(fit.ClampMin), words.Height(fit.ClampMax))
		switch {
		case thick == 0 || frame.IsUndecided(b.Side):
			f = rule.OnBox(b.Opening, rule.Note)
			f.IsOpen = true
			f.Message = words.New("rule.old-work-range.open", "{0}: it is not known how thick the finish is that its clamps grip", b.Opening.Tag)
			f.Why = words.New("rule.old-work-range.open.why", "Its clamps grip {0} to {1} (from memory, read it off the box).", words.Height(fit.ClampMin), words.Height(fit.ClampMax))
		case thick > fit.ClampMax:
			f.Limit = rule.LengthOf(fit.ClampMax)
			f.Message = words.New("rule.old-work-range.thick", "{0}: the finish is {1} too thick for its clamps", b.Opening.Tag, words.Height(thick-fit.ClampMax))
		case thick < fit.ClampMin:
			f.Limit = rule.LengthOf(fit.ClampMin)
			f.Message = words.New("rule.old-work-range.thin", "{0}: the finish is {1} too thin for its clamps", b.Opening.Tag, words.Height(fit.ClampMin-thick))
		default:
			continue
		}
		if !f.IsOpen {
			f.Remedies = otherClamps(b, thick)
		}
		found = append(found, f)
	}
	return found
}

// otherClamps offers old-work boxes of at least the volume whose clamps grip so much.
func otherClamps(b frame.Placed, thick unit.Length) (offers []rule.Remedy) {
	built, chosen, err := part.Resolve(b.Opening.Assembly)
	if !chosen || err != nil {
		return nil
	}
	for _, a := range part.All().OldWork(built.Assembly, built.Volume()) {
		if len(offers) == mostOffers || !a.Box.Fit.Grips(thick) {
			continue
		}
		offers = append(offers, useBox(b, a))
	}
	return offers
}

// useBox offers another assembly for an opening.
func useBox(b frame.Placed, a *part.Assembly) rule.Remedy {
	return rule.Remedy{
		Label: words.New("rule.box-depth.remedy", "Use “{0}”", a.Text()),
		Edit:  edit.SetAssembly{ID: b.Opening.ID, Assembly: plan.Assembly{Code: a.Code, Barriers: b.Opening.Assembly.Barriers}},
	}
}
