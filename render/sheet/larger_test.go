package sheet

import (
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/words"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/sheet/proof"
)

// TestEveryTagStandsOnAPlan: at a scale too small for all tags, each that found no room on
// the plan of its level stands in its room drawn larger, and nothing there is in the way
// of anything.
func TestEveryTagStandsOnAPlan(t *testing.T) {
	for _, tt := range []struct{ paper, scale string }{
		{"letter", "1/16in=1ft"}, {"tabloid", "1/16in=1ft"}, {"archd", "1/16in=1ft"}, {"a4", "1:200"}, {"a1", "1:200"},
	} {
		size, err := paper.Named(tt.paper)
		if err != nil {
			t.Fatal(err)
		}
		scale, err := paper.ParseScale(tt.scale)
		if err != nil {
			t.Fatal(err)
		}
		left, enlarged := 0, 0
		for number := range uint64(5) {
			p := plantest.House(number, 60+40*int(number))
			ix := index.New(p)
			result, err := fill.Check(ix)
			if err != nil {
				t.Fatal(err)
			}
			pages := plansOf(t, ix, result, Options{Paper: size, Scale: scale, Voice: words.Voice{System: size.System}})
			var drawn []string // on pages that show plans, without their schedules
			for i, page := range pages {
				for _, fault := range proof.Read(page, rules(size)) {
					t.Errorf("%s at %s, house %d, page %d: %s", tt.paper, tt.scale, number, i+1, fault)
				}
				if strings.Contains(page.Meta.Title, "rooms drawn larger") {
					enlarged++
				}
				for _, item := range groupsOf(page.Items) {
					for _, r := range runsOf(item.Items) {
						drawn = append(drawn, r.Text)
					}
				}
			}
			all := " " + strings.Join(drawn, " ") + " "
			for o := range p.Levels[0].Openings.All() {
				if !strings.Contains(all, " "+o.Tag+" ") {
					left++
					t.Errorf("%s at %s, house %d: %s stands on no plan", tt.paper, tt.scale, number, o.Tag)
				}
			}
		}
		if enlarged == 0 {
			t.Errorf("%s at %s: no room was drawn larger: nothing was tried", tt.paper, tt.scale)
		}
		if left > 20 {
			t.FailNow()
		}
	}
}

// plansOf returns the pages of a set that show plans, and no others.
func plansOf(t *testing.T, ix *index.Index, result fill.Result, o Options) []*scene.Scene {
	t.Helper()
	b := newBook(ix, result, o)
	for _, k := range scheduled {
		if k.name == "rooms unfolded" {
			break
		}
		if err := k.build(b); err != nil {
			t.Fatal(err)
		}
	}
	return b.finished()
}
