package clash_test

import (
	"testing"

	"studbay/fill/clash"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// beside is a kitchen of an edition with a dishwasher from 40 to 64 in along its first wall, 34
// in high, and a receptacle of a kind so far along that wall, 18 in up.
func beside(edition, kind string, along float64, more ...func(*plan.Opening)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseKitchen, 0, 0, 160, 120)
		r.Fixture(plan.FixtureDishwasher, 0, 40, 24, func(f *plan.Fixture) { f.Height = ruletest.In(34) })
		r.Opening(kind, r.On(0, along), append([]func(*plan.Opening){ruletest.Up(18)}, more...)...)
	}
}

func TestDishwasher(t *testing.T) {
	const said = "422.16(B)(2) from 2017 on: in the space beside the dishwasher (EC&M, code quiz of July 16, 2020)"
	trials := []ruletest.Trial{
		ruletest.Case("behind it, 2014", beside("2014", "dishwasher", 52), 0, "422.16(B)(2) of 2014, from memory: in its space or beside it"),
		ruletest.Case("behind it, 2026", beside("2026", "dishwasher", 52), 0, "not confirmed of 2026"),
		ruletest.Case("at its left edge", beside("2023", "dishwasher", 40), 0, said),
		ruletest.Case("a sixteenth behind its left edge", beside("2023", "dishwasher", 40.0625), 1, said),
		ruletest.Case("at its right edge", beside("2023", "dishwasher", 64), 0, said),
		ruletest.Case("a sixteenth behind its right edge", beside("2023", "dishwasher", 63.9375), 1, said),
		ruletest.Case("level with its top", beside("2023", "dishwasher", 52, ruletest.Up(34)), 0, said),
		ruletest.Case("a sixteenth lower", beside("2023", "dishwasher", 52, ruletest.Up(33.9375)), 1, said),
		ruletest.Case("another receptacle behind it", beside("2023", "duplex", 52), 1, said),
		ruletest.Case("a jack behind it", beside("2023", "data", 52), 0, "it is no receptacle"),
		ruletest.Case("a kind that nobody knows", beside("2023", "gramophone", 52), 0, "nobody says that it is a receptacle"),
		ruletest.Case("one that is there", beside("2023", "dishwasher", 52, ruletest.Existing), 0, "it is where it is"),
		ruletest.Case("one that goes", beside("2023", "dishwasher", 52, ruletest.Removed), 0, "it will not be there"),
		ruletest.Case("behind a washer", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 160, 120)
			r.Fixture(plan.FixtureWasher, 0, 40, 24)
			r.Opening("washer", r.On(0, 52), ruletest.Up(18))
		}, 0, "422.16(B)(2) names dishwashers"),
		ruletest.Case("below one that stands on a shelf", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 120)
			r.Fixture(plan.FixtureDishwasher, 0, 40, 24, func(f *plan.Fixture) { f.Bottom = ruletest.In(20) })
			r.Opening("dishwasher", r.On(0, 52), ruletest.Up(20-0.0625))
		}, 0, said+"; it is not behind the machine"),
		ruletest.Case("level with the shelf", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 120)
			r.Fixture(plan.FixtureDishwasher, 0, 40, 24, func(f *plan.Fixture) { f.Bottom = ruletest.In(20) })
			r.Opening("dishwasher", r.On(0, 52), ruletest.Up(20))
		}, 1, said),
	}
	for _, edition := range []string{"2017", "2020", "2023"} {
		trials = append(trials, ruletest.Case("behind it, "+edition, beside(edition, "dishwasher", 52), 1, said))
	}
	ruletest.Try(t, &clash.Dishwasher, trials)
}

// What is told, and that what is offered stands beside the machine.
func TestWhatIsToldOfDishwashers(t *testing.T) {
	h := ruletest.New(t)
	beside("2023", "dishwasher", 50, ruletest.Tagged("D"))(h)
	found := h.Found(&clash.Dishwasher)
	if len(found) != 1 || found[0].Section != "NEC 2023 422.16(B)(2)" || found[0].Message.String() != "D is behind the dishwasher" {
		t.Fatalf("%+v", found)
	}
	if len(found[0].Remedies) == 0 {
		t.Error("nothing is offered")
	}
	for _, r := range found[0].Remedies {
		next, err := r.Edit.Apply(h.Made())
		if err != nil {
			t.Fatal(err)
		}
		for _, o := range next.Openings() {
			if at := o.At.Along; 40*unit.Inch < at && at < 64*unit.Inch {
				t.Errorf("%s: to %s, behind the machine from 40 to 64", r.Label, at)
			}
		}
	}
}
