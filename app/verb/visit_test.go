package verb

import (
	"bytes"
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/fill/visit"
	"studbay/plan/index"
)

// TestVisitNamesASectionOrNone: in an edition whose figures are hardly confirmed a line has no
// section, and then no brackets round nothing.
func TestVisitNamesASectionOrNone(t *testing.T) {
	for _, tt := range []struct {
		edition string
		section bool
	}{{"2023", true}, {"2026", false}} {
		p, err := demo.All[0].Build()
		if err != nil {
			t.Fatal(err)
		}
		h := *p.Header
		h.Edition = tt.edition
		p.Header = &h
		ix := index.New(p)
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		var out bytes.Buffer
		c := checked{plan: p, index: ix, result: result}
		if err := c.writeVisit(&out, visit.Of(ix, result)); err != nil {
			t.Fatal(err)
		}
		said := strings.Join(strings.Fields(out.String()), " ")
		if strings.Contains(said, "[]") || !strings.Contains(said, "] Box fronts: ") {
			t.Errorf("%s: brackets round nothing, or no line of box fronts: %s", tt.edition, said)
		}
		if got := strings.Contains(said, " [314.20]"); got != tt.section {
			t.Errorf("%s names the section of box fronts: %v", tt.edition, got)
		}
	}
}
