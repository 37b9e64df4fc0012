package walk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/plan"
	"studbay/plan/edit"
)

// The summary lists what is asked in the order of the walk, and initials are kept a room, each
// person's once; none takes them back.
func TestSummaryHoldsWhatIsAskedAndInitials(t *testing.T) {
	host := cottage(t)
	tour := NewTour(host, "")
	room, first := tour.Room().ID, tour.Opening().Opening.ID
	if err := tour.Say(plan.WishChange); err != nil {
		t.Fatal(err)
	}
	if err := tour.Write("Brass, please"); err != nil {
		t.Fatal(err)
	}
	tour.Step(1)
	if err := tour.Say(plan.WishAgreed); err != nil {
		t.Fatal(err)
	}
	asked := tour.Asked()
	if len(asked) != 1 || asked[0].Opening.Opening.ID != first || asked[0].Room.ID != room || asked[0].Note != "Brass, please" {
		t.Errorf("asked is %+v", asked)
	}
	for _, initials := range []string{"AR", "ARB", ""} {
		if err := tour.Initial(room, initials); err != nil {
			t.Fatal(err)
		}
		if got := tour.Initials(room); got != initials {
			t.Errorf("the initials are %q, want %q", got, initials)
		}
		n := 0
		for w := range host.Index().Plan().Wishes.All() {
			if w.Kind == plan.WishInitials {
				n++
			}
		}
		if want := min(1, len(initials)); n != want {
			t.Errorf("%d wishes hold initials after %q, want %d", n, initials, want)
		}
	}
}

// S shows the summary, in which what is written beside a room is kept; a step leads back.
func TestSummaryIsShown(t *testing.T) {
	host := cottage(t)
	w, window := shownOn(t, host, "")
	w.Key(&fyne.KeyEvent{Name: fyne.KeyS})
	keep(t, "walk-summary", window)
	entries := windowtest.All[*look.Entry](w.column)
	if !w.isSummary || len(entries) != len(w.tour.rooms) {
		t.Fatalf("%d fields for initials, want one a room: %d", len(entries), len(w.tour.rooms))
	}
	entries[1].SetText("AR")
	entries[1].OnLeave()
	if got := w.tour.Initials(w.tour.rooms[1].ID); got != "AR" {
		t.Errorf("kept are the initials %q", got)
	}
	w.Key(&fyne.KeyEvent{Name: fyne.KeyRight})
	if w.isSummary {
		t.Error("a step does not lead back to the rooms")
	}
}

// A walk before that cannot be read is told in the summary.
func TestAWalkBeforeThatCannotBeReadIsTold(t *testing.T) {
	host := cottage(t)
	if err := host.Keep(edit.KeepWalk{Walked: &plan.Walked{Date: "2026-03-02", Plan: []string{"bm90IGEgcGxhbg=="}}}); err != nil {
		t.Fatal(err)
	}
	w, _ := shownOn(t, host, "")
	w.showSummary()
	said := ""
	for _, p := range windowtest.All[*look.Paragraph](w.column) {
		said += " " + p.Words()
	}
	if want := "The walk-through of 2026-03-02 is kept in this plan but cannot be read"; !strings.Contains(said, want) {
		t.Errorf("the summary does not say %q: %s", want, said)
	}
}
