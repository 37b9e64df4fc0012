package work

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func TestStaleFindingsAreDropped(t *testing.T) {
	var posted []func()
	var taken []*index.Index
	c := startChecking(func(f func()) { posted = append(posted, f) }, func(r checkResult) { taken = append(taken, r.of) })
	old := index.New(plan.New("old", NewID(plan.KindLevel)))
	now := index.New(plan.New("new", NewID(plan.KindLevel)))
	c.latest = now
	c.deliver(checkResult{of: old})
	c.deliver(checkResult{of: now, result: fill.Result{}})
	if len(taken) != 1 || taken[0] != now {
		t.Errorf("taken %d results, want only those of the plan asked for last", len(taken))
	}
}

func TestWhatGoesIsChosenNoMore(t *testing.T) {
	u := newPlayer(t)
	den, hall := u.draw("Den"), u.draw("Hall")
	u.doc.Select(den, "rnothing0", hall)
	if got := u.doc.Selection(); !slices.Equal(got, []plan.ID{den, hall}) {
		t.Fatalf("chosen %v, want what is in the plan", got)
	}
	if err := u.doc.Do(edit.Remove{Things: []plan.ID{den}}); err != nil {
		t.Fatal(err)
	}
	if got := u.doc.Selection(); !slices.Equal(got, []plan.ID{hall}) {
		t.Errorf("chosen %v, want what is left", got)
	}
}

func TestTheLevelShownIsOneOfThePlan(t *testing.T) {
	u := newPlayer(t)
	ground := u.doc.Level()
	upper := NewID(plan.KindLevel)
	if err := u.doc.Do(edit.AddLevel{ID: upper, Title: "Upper floor", Elevation: 9 * unit.Foot}); err != nil {
		t.Fatal(err)
	}
	u.doc.SetLevel(upper)
	u.doc.SetLevel("vnothing0")
	if u.doc.Level() != upper {
		t.Fatalf("shown: %s, want the upper floor", u.doc.Level())
	}
	if u.doc.Undo(); u.doc.Level() != ground {
		t.Errorf("shown: %s, want a level that is there", u.doc.Level())
	}
	if u.doc.Redo(); u.doc.Plan().Level(upper) == nil {
		t.Error("the step is not made again")
	}
}

func TestFindingsFollowThePlan(t *testing.T) {
	u := newPlayer(t)
	u.checked()
	before := len(u.doc.Findings())
	u.draw("Den")
	u.checked()
	if len(u.doc.Findings()) <= before || u.doc.CheckError() != nil {
		t.Errorf("%d findings, %d before a bedroom without receptacles: %v", len(u.doc.Findings()), before, u.doc.CheckError())
	}
}
