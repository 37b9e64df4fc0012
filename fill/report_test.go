package fill_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// Sentences by the worst of a room, in the words of its picture: things to settle where the
// code stops, to look at where practice warns, choices where somebody has to say.
func TestRoomSentences(t *testing.T) {
	kitchen := &plan.Room{Name: "Kitchen"}
	for _, tt := range []struct {
		of   fill.RoomReport
		want string
	}{
		{fill.RoomReport{Room: kitchen, Light: fill.Red, Settle: 2, Look: 3}, "Kitchen: 2 things to settle"},
		{fill.RoomReport{Room: kitchen, Light: fill.Red, Settle: 1}, "Kitchen: 1 thing to settle"},
		{fill.RoomReport{Room: kitchen, Light: fill.Amber, Look: 1, Open: 4}, "Kitchen: 1 thing to look at"},
		{fill.RoomReport{Room: kitchen, Light: fill.Amber, Open: 1}, "Kitchen: one choice is still open"},
		{fill.RoomReport{Room: kitchen, Light: fill.Calm, Notes: 2}, "Kitchen: nothing to settle in what was checked, 2 to know"},
		{fill.RoomReport{Room: kitchen, Light: fill.Calm}, "Kitchen: nothing found in what was checked"},
		{fill.RoomReport{Room: kitchen, Light: fill.Unknown}, "Kitchen: NOT CHECKED"},
		{fill.RoomReport{Light: fill.Red, Settle: 1}, "The plan as a whole: 1 thing to settle"},
	} {
		if got := tt.of.Sentence().String(); got != tt.want {
			t.Errorf("%+v: %q, want %q", tt.of, got, tt.want)
		}
	}
}

// Every room is told of once, the worst first, and every finding that is not set aside is
// in one report.
func TestRoomsAreReported(t *testing.T) {
	for seed := range uint64(40) {
		p := filltest.Furnished(rand.New(rand.NewPCG(seed, 2)).IntN)
		result := filltest.Check(t, p)
		var weights []int
		rooms, found := map[*plan.Room]int{}, 0
		for _, r := range result.Rooms(p) {
			found += len(r.Found)
			if r.Room == nil {
				continue
			}
			rooms[r.Room]++
			weights = append(weights, r.Settle)
			hasStop := slices.ContainsFunc(r.Found, func(f rule.Finding) bool { return f.Severity == rule.Stop && !f.IsOpen })
			if (r.Light == fill.Red) != hasStop {
				t.Errorf("seed %d: %s is %s", seed, r.Room.Name, r.Light)
			}
		}
		if len(rooms) != p.Levels[0].Rooms.Len() {
			t.Errorf("seed %d: %d rooms told of, want %d", seed, len(rooms), p.Levels[0].Rooms.Len())
		}
		if !slices.IsSortedFunc(weights, func(a, b int) int { return b - a }) {
			t.Errorf("seed %d: things to settle %v, want the most first", seed, weights)
		}
		tally := result.Tally()
		if want := tally.Stop + tally.Warn + tally.Note + tally.Open; found != want {
			t.Errorf("seed %d: %d findings told, want %d", seed, found, want)
		}
	}
}

// A plan of which every finding is in a room has no report without one, and one that is found
// wrong as a whole has it first.
func TestThePlanAsAWholeIsReportedWhereItHasFindings(t *testing.T) {
	for seed := range uint64(40) {
		p := filltest.Furnished(rand.New(rand.NewPCG(seed, 1)).IntN)
		result, err := fill.Check(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		isOfAll := slices.ContainsFunc(result.All(), func(f rule.Finding) bool { return f.Room == "" && f.Waived == nil })
		reports := result.Rooms(p)
		if got := len(reports) > 0 && reports[0].Room == nil; got != isOfAll {
			t.Errorf("plan %d: reported as a whole %v, want %v", seed, got, isOfAll)
		}
	}
	one := plan.New("Den", "vaaaaaaaa")
	result, err := fill.Check(index.New(one))
	if err != nil {
		t.Fatal(err)
	}
	if reports := result.Rooms(one); len(reports) != 0 {
		t.Errorf("of nothing drawn there are %d reports", len(reports))
	}
}
