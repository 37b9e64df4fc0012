package revision

import (
	"errors"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/rendertest"
)

// What changed since the last walk is what a comparison with the plan of that day lists.
func TestSinceTheLastWalkIsTheSameList(t *testing.T) {
	p := rendertest.Demos(t)["cottage.studbay"].Plan()
	var outlet *plan.Opening
	for _, o := range p.Openings() {
		if o.Kind == "duplex" && o.At.Part == plan.PartFace {
			outlet = o
			break
		}
	}
	if list, head := SinceWalk(index.New(p)); len(list.Changes) != 0 || !head.IsZero() {
		t.Errorf("never walked, and %d changes under %v", len(list.Changes), head)
	}
	if _, err := AtWalk("", sideOf(t, p)); !errors.Is(err, file.ErrNoWalk) {
		t.Errorf("never walked: %v", err)
	}
	walked, err := file.Walk(p, "2026-03-02")
	if err != nil {
		t.Fatal(err)
	}
	kept, err := edit.KeepWalk{Walked: walked}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if old, err := AtWalk("", sideOf(t, kept)); err != nil || !Compare(old, sideOf(t, kept)).IsSame {
		t.Errorf("just walked and not the same (%v)", err)
	}
	if list, head := SinceWalk(index.New(kept)); len(list.Changes) != 0 || !head.IsZero() {
		t.Errorf("just walked, and %d changes under %v", len(list.Changes), head)
	}
	moved := *outlet
	moved.At.Along += rendertest.In(6)
	moved.Kind = "gfci"
	now := sideOf(t, with(kept, &moved))
	old, err := AtWalk("", now)
	if err != nil {
		t.Fatal(err)
	}
	got, want := Compare(old, now), Compare(sideOf(t, p), now)
	if len(got.Changes) != 1 || got.Sum().String() != want.Sum().String() || len(got.Changes[0].Raised) != len(want.Changes[0].Raised) || len(got.Changes[0].Cleared) != len(want.Changes[0].Cleared) {
		t.Errorf("since the walk %+v, compared %+v", got.Changes, want.Changes)
	}
	list, head := SinceWalk(now.Index)
	if head.String() != "Changed since the walk-through of 2026-03-02" || len(list.Changes) != 1 {
		t.Fatalf("%d changes under %v", len(list.Changes), head)
	}
	if got := (words.Voice{}).Say(list.Changes[0].Line()); !strings.HasSuffix(got, `, GFCI receptacle: moved 6", and changed: kind: GFCI receptacle, was Duplex receptacle`) {
		t.Errorf("it is told as %s", got)
	}
	if c, ok := list.OfOpening(outlet.ID); !ok || c.New.ID != outlet.ID {
		t.Errorf("of the outlet: %+v, %v", c, ok)
	}
	if _, ok := list.OfOpening(plan.ID("o99999999")); ok {
		t.Error("one that is not there changed")
	}
}

// A walk that is kept and cannot be read is told, with its day where that is known.
func TestAWalkThatCannotBeReadIsTold(t *testing.T) {
	p := rendertest.Demos(t)["cottage.studbay"].Plan()
	for day, want := range map[string]string{
		"2026-03-02": "The walk-through of 2026-03-02 is kept in this plan but cannot be read, so what changed since cannot be told.",
		"":           "The last walk-through is kept in this plan but cannot be read, so what changed since cannot be told.",
	} {
		kept, err := edit.KeepWalk{Walked: &plan.Walked{Date: day, Plan: []string{"bm90IGEgcGxhbg=="}}}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		if list, head := SinceWalk(index.New(kept)); len(list.Changes) != 0 || head.String() != want {
			t.Errorf("%d changes under %q, want %q", len(list.Changes), head, want)
		}
	}
}
