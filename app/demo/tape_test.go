package demo_test

import (
	"fmt"
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/index"
)

// TestDraftedLengthsByHandTape wires three circuits of the cottage and measures their cables with
// a tape on the plan. Level is along the sheet's two ways, over the ceiling of 96 in where a box
// is above 36 in; a foot is left at each end; what is cut is the next half foot (common practice,
// as the package says). Places in inches from the corner of the plan, right and down:
//
//	panel (172.5, 318), its top at 48 + 30 = 78, so 18 below the ceiling
//
// Circuit 8, laundry: M3 (172.5, 292) at 16, M1 (189.25, 196.5) at 42.
//
//	panel to M3: 26 + 18 + 80 + 24 = 148, cut 150
//	M3 to M1: 16.75 + 95.5 + 80 + 54 + 24 = 270.25, cut 276
//	the other order takes 240 + 276
//
// Circuit 1, west counters: K1 (0, 290.75) and K2 (0, 222) at 42.
//
//	panel to K1: 172.5 + 27.25 + 18 + 54 + 24 = 295.75, cut 300
//	K1 to K2: 68.75 + 54 + 54 + 24 = 200.75, cut 204
//	the other order takes 366 + 204
//
// Circuit 5/7, range: K8 (0, 259.125) at 5.
//
//	panel to K8: 172.5 + 58.875 + 18 + 91 + 24 = 364.375, cut 366
func TestDraftedLengthsByHandTape(t *testing.T) {
	p, err := demo.Find("cottage").Build()
	if err != nil {
		t.Fatal(err)
	}
	fig, err := fill.FiguresOf(p)
	if err != nil {
		t.Fatal(err)
	}
	for number, want := range map[string]string{
		"8":   `panel-M3 12' 6", M3-M1 23' 0"`,
		"1":   `panel-K1 25' 0", K1-K2 17' 0"`,
		"5/7": `panel-K8 30' 6"`,
	} {
		n := 0
		for c := range p.Circuits.All() {
			if c.Number != number {
				continue
			}
			steps, err := wire.Draft(index.New(p), fig, c.ID, func() plan.ID { n++; return plan.ID("c2222222" + "23456789"[n-1:n]) })
			if err != nil {
				t.Fatal(err)
			}
			wired, err := steps.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			ix := index.New(wired)
			var cut []string
			for cable := range wired.Cables.All() {
				if cable.Circuit != c.ID {
					continue
				}
				from := "panel"
				if o, _ := wired.Opening(cable.From); o != nil {
					from = o.Tag
				}
				to, _ := wired.Opening(cable.To)
				run, ok := wire.RunOf(ix, cable)
				if !ok {
					t.Errorf("%s to %s cannot be measured", from, to.Tag)
				}
				cut = append(cut, fmt.Sprintf("%s-%s %s", from, to.Tag, run.Total.FeetInches(16)))
			}
			if got := strings.Join(cut, ", "); got != want {
				t.Errorf("circuit %s: %s, want %s", number, got, want)
			}
		}
		if n == 0 {
			t.Errorf("no circuit %s was wired", number)
		}
	}
}
