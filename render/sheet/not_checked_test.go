package sheet

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/render/table"
)

// A plan of an edition that the program does not know was not checked; no page may say
// that it was.
func TestEveryPageOfAPlanOfAnUnknownEditionSaysNotChecked(t *testing.T) {
	p := plantest.House(3, 45)
	h := *p.Header
	h.Edition = "1897"
	p.Header = &h
	ix := index.New(p)
	result, err := fill.Check(ix)
	if err == nil {
		t.Fatal("there is an edition 1897")
	}
	pages, err := Build(ix, result, Options{})
	if err != nil {
		t.Fatal(err)
	}
	for i, page := range pages {
		said := spelled(page.Items)
		if !strings.Contains(said, "NOT CHECKED: no code edition “1897”") {
			t.Errorf("page %d does not say that nothing was checked", i+1)
		}
		for _, claim := range []string{"Checked against", "Nothing was found", "What was checked"} {
			if strings.Contains(said, claim) {
				t.Errorf("page %d says %q", i+1, claim)
			}
		}
	}
	schedule := table.Schedule(ix, result, Options{}.Voice)
	at := schedule.At("findings")
	if slices.ContainsFunc(schedule.Rows, func(r table.Row) bool { return !strings.HasPrefix(r.Cells[at].Text, "NOT CHECKED: ") }) {
		t.Error("a row of the schedule does not say that nothing was checked")
	}
}

// Whatever columns are chosen, what nobody checked goes with a word on it.
func TestAScheduleOfFewColumnsSaysNotChecked(t *testing.T) {
	p := plantest.House(1, 5)
	h := *p.Header
	h.Edition = "1897"
	p.Header = &h
	ix := index.New(p)
	result, _ := fill.Check(ix)
	few, err := table.Schedule(ix, result, Options{}.Voice).With([]string{"tag", "what"})
	if err != nil {
		t.Fatal(err)
	}
	last := len(few.Columns) - 1
	if few.Columns[last].ID != "findings" || len(few.Rows) == 0 {
		t.Fatalf("the columns are %q", few.IDs())
	}
	for _, r := range few.Rows {
		if !strings.HasPrefix(r.Cells[last].Text, "NOT CHECKED: ") {
			t.Errorf("a row says %q", r.Cells[last].Text)
		}
	}
}
