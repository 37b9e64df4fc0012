package sheet

import (
	"testing"

	"studbay/plan"
	"studbay/plan/plantest"
)

// The lead rule is of houses built before 1978 (40 CFR 745, from memory): of one built in
// that year only the year is said, of one of which nobody says it, and in which something is
// there already, it is asked.
func TestCautionsOfOldHouses(t *testing.T) {
	for _, tt := range []struct {
		built int
		isOld bool
		want  []string
	}{
		{0, false, nil},
		{1978, false, []string{"caution.built"}},
		{1977, false, []string{"caution.lead"}},
		{1926, true, []string{"caution.old-wiring", "caution.lead"}},
		{2001, true, []string{"caution.old-wiring", "caution.built"}},
		{0, true, []string{"caution.old-wiring", "caution.lead-unknown"}},
	} {
		p := plantest.House(1, 8)
		h := *p.Header
		h.Built = tt.built
		p.Header = &h
		for l := range p.Openings() {
			level := *l
			for o := range l.Openings.All() {
				now := *o
				now.Status = plan.StatusNew
				if tt.isOld {
					now.Status = plan.StatusExisting
				}
				level.Openings = level.Openings.With(&now)
			}
			p = p.WithLevel(&level)
			break
		}
		got := cautionsOf(p)[len(cautions):]
		if len(got) != len(tt.want) {
			t.Errorf("built %d, old %t: %v", tt.built, tt.isOld, got)
			continue
		}
		for i, c := range got {
			if c.ID != tt.want[i] {
				t.Errorf("built %d, old %t: %s, want %s", tt.built, tt.isOld, c.ID, tt.want[i])
			}
		}
	}
}
