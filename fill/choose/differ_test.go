package choose_test

import (
	"slices"
	"testing"

	"studbay/fill/choose"
	"studbay/plan"
)

// What rooms differ by adds up to what the totals differ by, and the changes put together are
// those of the column, each once.
func TestDifferencesAddUp(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	r.Opening("duplex", r.On(0, 18), holding("PN2", cables(12, 2), yoke))
	r.Opening("duplex", r.On(0, 66), holding("PN2", cables(12, 2), yoke))
	f := finder(t, h.Made())
	var columns []choose.Column
	for _, p := range choose.Standing {
		c, err := f.Column(p)
		if err != nil {
			t.Fatal(err)
		}
		columns = append(columns, c)
	}
	sums := make([]int64, len(columns))
	rooms := choose.Differences(columns)
	if len(rooms) != 1 || rooms[0].Name.String() == "" {
		t.Fatalf("%d rooms differ", len(rooms))
	}
	for _, room := range rooms {
		for i, cents := range room.Cents {
			sums[i] += cents
		}
	}
	for i, c := range columns {
		if want := c.PartsCost().Cents - columns[0].PartsCost().Cents; sums[i] != want {
			t.Errorf("%s: rooms differ by %d, the totals by %d", c.Policy.ID, sums[i], want)
		}
		n := 0
		for _, a := range choose.Together(c.Changes) {
			n += len(a.Tags)
		}
		if n != len(c.Changes) {
			t.Errorf("%s: %d changes put together are %d", c.Policy.ID, len(c.Changes), n)
		}
	}
	if sums[0] != 0 || sums[2] <= 0 {
		t.Errorf("as it is differs by %d, steel by %d", sums[0], sums[2])
	}
	if got := choose.Differences(columns[:1]); got != nil {
		t.Errorf("a plan differs from itself: %v", got)
	}
	if choose.Differences(nil) != nil {
		t.Error("nothing differs from nothing")
	}
}

// Changes of one box to one other stand together, their tags as people count them.
func TestChangesStandTogether(t *testing.T) {
	change := func(tag, from, to string) choose.Change {
		return choose.Change{Opening: &plan.Opening{Tag: tag, Assembly: plan.Assembly{Code: from}}, To: plan.Assembly{Code: to}}
	}
	got := choose.Together([]choose.Change{change("K10", "PN1", "SQ3"), change("K1", "PN2", "SQ3"), change("K9", "PN1", "SQ3"), change("K2", "PN1", "PN2"), change("K3", "", "PN2")})
	var tags [][]string
	for _, a := range got {
		tags = append(tags, a.Tags)
	}
	if !slices.EqualFunc(tags, [][]string{{"K9", "K10"}, {"K1"}, {"K2"}, {"K3"}}, slices.Equal) {
		t.Errorf("they stand as %v", tags)
	}
	if got[0].From.String() != "Plastic nail-on, one gang, 18.0" && got[0].From.String() == got[0].To.String() || got[3].From.String() != "no box that is known" {
		t.Errorf("from %q and %q", got[0].From, got[3].From)
	}
}
