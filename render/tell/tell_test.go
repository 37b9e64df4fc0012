package tell

import (
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/rendertest"
)

// A wall of 240 in: a door from 10 to 42, a bed from 80 to 140 and 24 in high, a window from
// 180 to 216 with its sill at 32 and its head at 80. The figures are the differences.
func TestOpeningsAreToldByWhatIsSeen(t *testing.T) {
	for _, tt := range []struct {
		along, height float64
		where, away   string
	}{
		{48, 46, "beside the door", "6 in from the door"},
		{58, 16, "right of the door", "16 in from the door"},
		{73, 26, "left of the bed", "7 in from the bed"},
		{150, 26, "right of the bed", "10 in from the bed"},
		{110, 60, "over the bed", "in the middle"},
		{100, 12, "behind the bed", "10 in left of its middle"},
		{198, 16, "under the window", "in the middle"},
		{238, 16, "right of the window", "22 in from the window"},
	} {
		b := rendertest.NewBuilder(t)
		r := b.Box("Room", plan.UseBedroom, 0, 0, 240, 120)
		b.Door(r, 0, 10, 32, plan.HandLeft, plan.SwingIn)
		b.Fixture(plan.FixtureBed, r, 0, 80, 60, 80, 24)
		w := b.Cut(r, 0, plan.BreakWindow, 180, 36)
		w.Sill, w.Head = rendertest.In(32), rendertest.In(80)
		o := b.On("A1", "duplex", r, 0, tt.along, tt.height)
		all := Room(b.Index(), r.ID)
		if len(all) != 1 || all[0].Opening.ID != o.ID {
			t.Fatalf("%d openings are told of, want one", len(all))
		}
		got := all[0]
		if got.Where.String() != tt.where || got.Away.String() != tt.away {
			t.Errorf("%v along and %v up: %q, %q; want %q, %q", tt.along, tt.height, got.Where, got.Away, tt.where, tt.away)
		}
		if want := "Double outlet, " + tt.where; got.Headline().String() != want {
			t.Errorf("the headline is %q, want %q", got.Headline(), want)
		}
	}
}

func TestFarFromEverythingItIsByTheCorner(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 240, 120)
	b.On("A1", "duplex", r, 0, 200, 16)
	got := Room(b.Index(), r.ID)[0]
	if want := "near the right corner"; got.Where.String() != want {
		t.Errorf("it is %q, want %q", got.Where, want)
	}
	if want := "16 in from the floor, 40 in from the corner"; got.Figures().String() != want {
		t.Errorf("its figures are %q, want %q", got.Figures(), want)
	}
	metric := words.Voice{System: unit.Metric} // 16 in is 40.64 cm, 40 in 101.6
	if got, want := metric.Say(got.Figures()), "41 cm from the floor, 102 cm from the corner"; got != want {
		t.Errorf("its figures are %q, want %q", got, want)
	}
}

func TestWhatWorksWhat(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 240, 120)
	b.Door(r, 0, 10, 32, plan.HandLeft, plan.SwingIn)
	sw := b.On("A1", "switch", r, 0, 48, 46)
	light := b.Ceiling("A2", "ceiling-light", r, 120, 60)
	b.Control("a", []*plan.Opening{sw}, []*plan.Opening{light})
	for _, o := range Room(b.Index(), r.ID) {
		want := map[plan.ID]string{sw.ID: "Works: the ceiling light", light.ID: "Works by: the switch beside the door"}[o.Opening.ID]
		if o.Lit.String() != want {
			t.Errorf("of %s it says %q, want %q", o.Opening.Tag, o.Lit, want)
		}
	}
}

func TestEveryOpeningOfADemoIsToldOnce(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		seen := map[plan.ID]int{}
		for _, r := range Rooms(ix) {
			for _, o := range Room(ix, r.ID) {
				seen[o.Opening.ID]++
				if o.What.IsZero() || o.Where.IsZero() {
					t.Errorf("%s: of %s nothing is told: %q", name, o.Opening.Tag, o.Headline())
				}
			}
		}
		for _, o := range ix.Plan().Openings() {
			if want := 1; !o.IsGone() && seen[o.ID] != want {
				t.Errorf("%s: %s is told of %d times", name, o.Tag, seen[o.ID])
			}
		}
	}
}
