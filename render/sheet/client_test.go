package sheet

import (
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/revision"
	"studbay/render/sheet/proof"
)

// The client's pages list what changed since the last walk-through, and say nothing of it where
// none is kept.
func TestClientReadsWhatChangedSinceTheWalk(t *testing.T) {
	old, now := changedHouse(8)
	texts := func() string {
		var all []string
		for _, page := range build(t, now, Options{Reader: ForClient}) {
			all = append(all, proof.Texts(page)...)
		}
		return strings.Join(all, " ")
	}
	if strings.Contains(texts(), "walk-through of") {
		t.Error("never walked through, and the pages tell since when it changed")
	}
	walked, err := file.Walk(old, "2026-03-02")
	if err != nil {
		t.Fatal(err)
	}
	if now, err = (edit.KeepWalk{Walked: walked}).Apply(now); err != nil {
		t.Fatal(err)
	}
	list, _ := revision.SinceWalk(index.New(now))
	if len(list.Changes) < 2 {
		t.Fatalf("%d changes, want some", len(list.Changes))
	}
	all := texts()
	if !strings.Contains(all, "Changed since the walk-through of 2026-03-02") {
		t.Error("the pages do not say since when")
	}
	unread, err := edit.KeepWalk{Walked: &plan.Walked{Date: "2026-03-02", Plan: []string{"bm90IGEgcGxhbg=="}}}.Apply(now)
	if err != nil {
		t.Fatal(err)
	}
	kept := now
	now = unread
	if said, want := strings.Join(strings.Fields(texts()), " "), "The walk-through of 2026-03-02 is kept in this plan but cannot be read"; !strings.Contains(said, want) {
		t.Errorf("no page says %q", want)
	}
	now = kept
	flat := strings.Join(strings.Fields(all), " ")
	for _, c := range list.Changes {
		if line := (words.Voice{}).Say(c.Line()); !strings.Contains(flat, line) {
			t.Errorf("no page says %q", line)
		}
	}
}
