package remodel

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// BlockedBay looks for old-work boxes where something is in the way behind the finish, and
// for those where nobody has looked.
var BlockedBay = rule.Rule{
	ID:    "blocked-bay",
	Title: words.New("rule.blocked-bay.title", "What is behind a closed wall"),
	Doc:   words.New("rule.blocked-bay.doc", `Behind a wall that stays closed a fire block, a brace, a pipe or a duct may be where a box wants to go (common practice). A new box in a place that is said to be blocked is told as one that cannot be built, one where neither a pilot hole nor anything else has shown the bay clear in a note. Boxes that are there already are not checked, nor is how cables get there.`),
	Side:  checkBlocked,
}

func checkBlocked(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		if b.IsThere() || !b.IsBuiltIn() || v.Side.ConditionAt(b.Opening.At.Along) != plan.ConditionClosed {
			continue
		}
		if p := blockedBy(v.Side, b); p != nil {
			f := rule.OnBox(b.Opening, rule.Stop)
			f.Message = words.New("rule.blocked-bay.blocked", "{0}: the bay behind it is blocked", b.Opening.Tag)
			f.Why = words.New("rule.blocked-bay.why", "From {0} to {1} along this wall there is something in the way.", p.From, p.To)
			if p.What != "" {
				f.Why = words.New("rule.blocked-bay.why.what", "From {0} to {1} along this wall there is something in the way: {2}.", p.From, p.To, p.What)
			}
			f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
			found = append(found, f)
			continue
		}
		if b.Box.Mounting == part.OldWork && !isProvenClear(v.Side, b) {
			f := rule.OnBox(b.Opening, rule.Note)
			f.IsOpen, f.ByPractice = true, true
			f.Message = words.New("rule.blocked-bay.unprobed", "{0}: nobody has looked whether the bay behind it is clear", b.Opening.Tag)
			f.Why = words.New("rule.blocked-bay.unprobed.why", "Drill a small hole where the box hides it and feel with a bent wire before you cut (common practice).")
			f.Remedies = []rule.Remedy{{
				Label: words.New("rule.blocked-bay.clear", "Say: it was found clear"),
				Edit:  edit.AddProbe{Side: v.Side.ID, Probe: probeOf(b)},
			}}
			found = append(found, f)
		}
	}
	return found
}

// blockedBy returns what a box would meet, nil where nothing is said.
func blockedBy(s *plan.Side, b frame.Placed) *plan.Probe {
	for i := range s.Probes {
		if p := &s.Probes[i]; !p.Clear && b.Meets(frame.RectOfProbe(p)) {
			return p
		}
	}
	return nil
}

// isProvenClear reports whether the whole width of a box was proven clear.
func isProvenClear(s *plan.Side, b frame.Placed) bool {
	want := probeOf(b)
	for i := range s.Probes {
		if r := frame.RectOfProbe(&s.Probes[i]); s.Probes[i].Clear && r.Left <= want.From && want.To <= r.Right && r.Bottom <= want.Bottom && want.Top <= r.Top {
			return true
		}
	}
	return false
}

// probeOf is what has to be found clear for a box: the part of the face behind it.
func probeOf(b frame.Placed) plan.Probe {
	return plan.Probe{From: max(b.Left, 0), To: max(b.Right, 1), Bottom: max(b.Bottom, 0), Top: max(b.Top, 1), Clear: true}
}
