package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// banned returns the receptacle in the faces of an island that is least far below its top,
// and how far, where the edition lets none stand there.
func (i island) banned(fig *code.Figures) (worst *plan.Opening, down unit.Length) {
	if !fig.Outlets.IslandBelowBanned {
		return nil, 0
	}
	for _, o := range i.Openings {
		if o.At.Part == plan.PartTop || !isCounterOutlet(o) {
			continue
		}
		is := i.Fixture.Top() - frame.CentreHeight(o, i.room)
		if 0 < is && is <= fig.Outlets.IslandBelowClear && (worst == nil || is < down) {
			worst, down = o, is
		}
	}
	return worst, down
}

// mayNotBeBelow is the finding of a receptacle that no edition-wide permission lets stand
// where it is.
func (i island) mayNotBeBelow(o *plan.Opening, down unit.Length, fig *code.Figures) rule.Finding {
	f := i.finding(rule.Stop, fig)
	f.Section = fig.Title + " " + fig.Section("island-below-banned")
	f.Measured, f.Limit = rule.LengthOf(down), rule.LengthOf(fig.Outlets.IslandBelowClear)
	f.Message = words.New("rule.counter-reach.banned", "{0} stands {1} below the top of an island or a peninsula", o.Tag, down)
	f.Why = words.New("rule.counter-reach.banned.why", "{0} lets no receptacle stand within {1} below it, since a cord hangs there; some cases near walls are said to differ. Put it in the top, or leave provision for one.", fig.Title, fig.Limit("island-below-clear"))
	return f
}
