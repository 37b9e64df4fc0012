package sheet

import (
	"errors"
	"fmt"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/sheet/proof"
)

func sideOf(t testing.TB, p plan.Plan) revision.Side {
	t.Helper()
	ix := index.New(p)
	r, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return revision.Side{Index: ix, Result: r}
}

// changedHouse is a house before and after: every fifth opening goes 2 ft along where it
// may, every seventh is gone.
func changedHouse(openings int) (old, now plan.Plan) {
	old = plantest.House(7, openings)
	now = old
	for i, l := range old.Levels {
		level := *l
		k := 0
		for o := range l.Openings.All() {
			k++
			switch {
			case k%7 == 0:
				level.Openings = level.Openings.Without(o.ID)
			case k%5 == 0 && o.At.Part == plan.PartFace:
				moved := *o
				moved.At.Along += 2 * unit.Foot
				level.Openings = level.Openings.With(&moved)
			}
		}
		if i == 0 {
			now = old.WithLevel(&level)
		} else {
			now = now.WithLevel(&level)
		}
	}
	return old, now
}

// Every change stands in a triangle on the plan and in the list, on every paper.
func TestEveryChangeIsDrawnAndListed(t *testing.T) {
	for _, size := range paper.All {
		for _, openings := range []int{20, 90} {
			t.Run(fmt.Sprintf("%s with %d openings", size.Name, openings), func(t *testing.T) {
				old, now := changedHouse(openings)
				list := revision.Compare(sideOf(t, old), sideOf(t, now))
				pages, err := BuildRevision(list, Options{Paper: size})
				if err != nil {
					t.Fatal(err)
				}
				text := map[string]int{}
				for _, page := range pages {
					for _, said := range proof.Texts(page) {
						text[said]++
					}
				}
				for _, c := range list.Changes {
					if n := text[fmt.Sprint(c.Number)]; n < 2 {
						t.Errorf("the number of change %d, %s %s, stands %d times; want on the plan and in the list", c.Number, c.Opening().Tag, c.Kind, n)
					}
				}
			})
		}
	}
}

func TestNothingToDrawIsSaid(t *testing.T) {
	p := plantest.House(1, 9)
	list := revision.Compare(sideOf(t, p), sideOf(t, p))
	if _, err := BuildRevision(list, Options{}); !errors.Is(err, ErrNoChange) {
		t.Errorf("the error is %v, want ErrNoChange", err)
	}
}

// TestASetTellsWhatChanged: asked to, it shows the changes on pages of its own, and with none it
// shows no such page.
func TestASetTellsWhatChanged(t *testing.T) {
	old, now := changedHouse(20)
	is := sideOf(t, now)
	list, none := revision.Compare(sideOf(t, old), is), revision.Compare(is, is)
	if len(list.Changes) == 0 || len(none.Changes) != 0 {
		t.Fatalf("%d changes, and %d of one plan and itself", len(list.Changes), len(none.Changes))
	}
	pages := map[string]int{}
	for name, since := range map[string]*revision.List{"not asked": nil, "changed": &list, "the same": &none} {
		set, err := Build(is.Index, is.Result, Options{Since: since})
		if err != nil {
			t.Fatal(err)
		}
		pages[name] = len(set)
	}
	if pages["changed"] <= pages["not asked"] || pages["the same"] != pages["not asked"] {
		t.Errorf("pages: %v", pages)
	}
}
