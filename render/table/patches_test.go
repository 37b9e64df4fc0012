package table

import (
	"testing"

	"studbay/fill"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// A strip of plaster of 3/4 in that is down takes board of 1/2 on furring of 1/4.
func TestWhatIsPatchedIsListed(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
	s := r.Sides[0]
	s.Finish = []plan.Layer{{Name: "plaster", Thickness: ruletest.In(0.75)}}
	s.Condition, s.Zones = plan.ConditionClosed, []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionOpened}}
	l := &Lists{Index: index.New(h.Made())}
	got := l.patches()
	if len(got.Rows) != 1 {
		t.Fatalf("%+v", got.Rows)
	}
	for column, want := range map[string]string{"layers": `board 1/2", assumed`, "even": `1/4" of furring under it`} {
		if said := got.Cell(got.Rows[0], column).Text; said != want {
			t.Errorf("%s: %q, want %q", column, said, want)
		}
	}
	if at, wide := got.Cell(got.Rows[0], "begins").Length(), got.Cell(got.Rows[0], "wide").Length(); at != ruletest.In(24) || wide != ruletest.In(48) {
		t.Errorf("from %v, %v wide", at, wide)
	}
}

// An opening that was moved has one row, of its new place, which says how far it went and what
// becomes of the old box.
func TestAMovedOpeningHasOneRow(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
	old := r.Opening("switch", r.On(0, 30), ruletest.Tagged("A-old"), func(o *plan.Opening) { o.Status, o.Fate = plan.StatusMoved, plan.FateStays })
	r.Opening("switch", r.On(0, 76.5), ruletest.Tagged("A"), func(o *plan.Opening) { o.Was, o.Note = old.ID, "mine" })
	ix := index.New(h.Made())
	got := Schedule(ix, fill.Result{}, words.Voice{})
	if len(got.Rows) != 1 || got.Cell(got.Rows[0], "tag").Text != "A" {
		t.Fatalf("%+v", got.Rows)
	}
	if said, want := got.Cell(got.Rows[0], "note").Text, "moved 3' 10-1/2\" from its old place; old box: stays, blank cover\nmine"; said != want {
		t.Errorf("it says %q, want %q", said, want)
	}
}
