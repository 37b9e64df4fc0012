package spacing_test

import (
	"fmt"

	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/spacing"
)

var in = filltest.In

// reach returns what a check of the whole plan says by the wall rule.
func reach(r *filltest.Room) []rule.Finding {
	r.T.Helper()
	return r.Found(spacing.WallReach.ID)
}

// missed returns the uncovered stretches of the wall rule, in inches, in the order of
// the findings.
func missed(r *filltest.Room) (out []string) {
	for _, f := range reach(r) {
		if f.IsOpen {
			continue
		}
		text := ""
		for _, s := range f.Stretches {
			text += fmt.Sprintf("%d:%s-%s ", r.Room.SideAt(s.Host), s.From.Inches(8), s.To.Inches(8))
		}
		out = append(out, text[:len(text)-1])
	}
	return out
}
