package boxes

import (
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// overAtLeast tells of a box that is over full with the least that may be in it.
func overAtLeast(v index.OpeningView, fig *code.Figures, b part.Resolved, isBuilt bool) (rule.Finding, bool) {
	o := v.Opening
	if !isBuilt || b.IsParted() || b.Volume() == 0 || o.Contents == nil || o.Contents.Source != plan.ContentsInPart {
		return rule.Finding{}, false
	}
	least, ok := box.Sum(fig, LeastOf(v))
	if !ok || least <= b.Volume() {
		return rule.Finding{}, false
	}
	f := rule.Finding{
		Severity: rule.Stop, Measured: rule.VolumeOf(least), Limit: rule.VolumeOf(b.Volume()),
		Message: words.New("rule.box-fill.over-at-least", "{0}: what was seen in the box needs at least {1}; it has {2}", o.Tag, least, b.Volume()),
		Why:     words.New("rule.box-fill.over-at-least.why", "Of what was seen only in part the least is counted: a cable of two 14 AWG conductors without a ground. There may be more."),
	}
	return f, true
}
