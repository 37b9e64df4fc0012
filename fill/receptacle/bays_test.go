package receptacle_test

import (
	"testing"

	"studbay/fill/receptacle"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// garageOf has a detached garage of so many bays with power, doors for vehicles in its front, 20 ft
// wide, and receptacles in its back as far from its right end: over the same place of the front.
func garageOf(edition string, count int, doors [][2]float64, receptacles ...float64) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseGarage, 0, 0, 240, 240)
		r.Bays, r.Power = count, plan.AnswerYes
		for _, d := range doors {
			r.Break(plan.BreakDoor, 2, d[0], d[1], func(b *plan.Break) { b.Vehicle = true })
		}
		for _, x := range receptacles {
			r.Opening("garage", r.On(0, 240-x), ruletest.Up(48))
		}
	}
}

// TestEachBay: one in each vehicle bay, 210.52(G)(1) from 2017 on; in 2014 one for each car space.
func TestEachBay(t *testing.T) {
	two, wide := [][2]float64{{12, 96}, {132, 96}}, [][2]float64{{24, 192}}
	ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
		ruletest.Case("one in each", garageOf("2023", 2, two, 60, 180), 0, "210.52(G)(1)"),
		ruletest.Case("both in one", garageOf("2023", 2, two, 60, 100), 1, "210.52(G)(1): in each vehicle bay"),
		ruletest.Case("both in the other", garageOf("2023", 2, two, 140, 200), 1, "210.52(G)(1): in each vehicle bay"),
		ruletest.Case("both in one, 2017", garageOf("2017", 2, two, 60, 100), 1, "210.52(G)(1): in each vehicle bay"),
		ruletest.Case("both in one, 2014", garageOf("2014", 2, two, 60, 100), 0, "210.52(G)(1), 2014: for each car space"),
		ruletest.Case("behind one wide door", garageOf("2023", 2, wide, 60, 180), 0, "210.52(G)(1)"),
		ruletest.Case("both at one end behind it", garageOf("2023", 2, wide, 60, 100), 1, "210.52(G)(1)"),
		ruletest.Case("between the two", garageOf("2023", 2, wide, 120), 0, "our reading: it is in both"),
		ruletest.Case("no door told", garageOf("2023", 2, nil, 60, 100), 0, "nobody tells the bays"),
		ruletest.Case("three bays, two doors", garageOf("2023", 3, two, 60, 70, 80), 0, "the doors do not tell the bays"),
		ruletest.Case("four bays, two doors, one in each", garageOf("2023", 4, two, 40, 80, 160, 200), 0, "210.52(G)(1)"),
		ruletest.Case("four bays, two doors, the last without", garageOf("2023", 4, two, 40, 80, 160, 170), 1, "210.52(G)(1)"),
		ruletest.Case("doors in two walls", func(h *ruletest.House) {
			garageOf("2023", 2, [][2]float64{{12, 96}}, 60, 100)(h)
			r := h.Rooms()[0]
			r.Break(plan.BreakDoor, 1, 40, 96, func(b *plan.Break) { b.Vehicle = true })
		}, 0, "the doors do not tell the bays"),
		ruletest.Case("a door for people between them", func(h *ruletest.House) {
			garageOf("2023", 2, wide, 60, 180)(h)
			h.Rooms()[0].Break(plan.BreakDoor, 1, 40, 36)
		}, 0, "210.52(G)(1)"),
	})
	// The bays of two doors of 8 ft, 2 ft apart, part at 10 ft.
	ruletest.Edges(t, &receptacle.Garage, []ruletest.Edge{
		ruletest.Limit("where the bays part", func(h *ruletest.House, over unit.Length) {
			garageOf("2023", 2, two, 60)(h)
			r := h.Rooms()[0]
			r.Opening("garage", r.On(0, 120), ruletest.Up(48)).At.Along += over
		}, rule.Grain, 0, 1, "our reading: halfway"),
	})
	h := ruletest.New(t)
	garageOf("2023", 2, two, 60, 100)(h)
	h.HoldsTurned(&receptacle.Garage)
	found := h.Found(&receptacle.Garage)
	if len(found) != 1 || len(found[0].Remedies) != 1 || found[0].Measured.Value != 1 || found[0].Limit.Value != 2 {
		t.Fatalf("both in one: %+v", found)
	}
	after, err := found[0].Remedies[0].Edit.Apply(h.Made())
	if err != nil {
		t.Fatal(err)
	}
	h.Plan = after
	if again := h.Found(&receptacle.Garage); len(again) != 0 {
		t.Errorf("what is offered leaves %+v", again)
	}
}

// Power in a garage by itself is as it is said, else where anything is drawn (210.52(G)(1): with
// electric power).
func TestPowerThatIsSaid(t *testing.T) {
	garage := func(power plan.Answer, kind string, attached bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Power = power
			if kind != "" {
				r.Opening(kind, r.Ceiling(120, 120))
			}
			if attached {
				h.Square(plan.UseKitchen, 244.5, 0, 120, 120)
			}
		}
	}
	ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
		ruletest.Case("nothing said or drawn", garage("", "", false), 0, "210.52(G)(1): with electric power"),
		ruletest.Case("said to have it", garage(plan.AnswerYes, "", false), 1, "210.52(G)(1): with electric power"),
		ruletest.Case("a light drawn", garage("", "ceiling-light", false), 1, "210.52(G)(1): with electric power"),
		ruletest.Case("a light drawn, said to have none", garage(plan.AnswerNo, "ceiling-light", false), 0, "what is said wins"),
		ruletest.Case("attached, said to have none", garage(plan.AnswerNo, "", true), 1, "210.52(G)(1): each attached garage"),
	})
}

// TestUnfinishedParts: each unfinished portion of a basement, 210.52(G)(3), as it is said.
func TestUnfinishedParts(t *testing.T) {
	part := func(use plan.Use, level string, finished plan.Answer, receptacles int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Plan.Levels[0].Name = level
			r := h.Square(use, 0, 0, 200, 200)
			r.Finished = finished
			for i := range receptacles {
				r.Opening("duplex", r.On(0, float64(40+40*i)))
			}
		}
	}
	ruletest.Try(t, &receptacle.Basement, []ruletest.Trial{
		ruletest.Case("by its use", part(plan.UseBasement, "Ground", "", 0), 1, "210.52(G)(3)"),
		ruletest.Case("by its use, said to be unfinished", part(plan.UseBasement, "Ground", plan.AnswerNo, 0), 1, "210.52(G)(3)"),
		ruletest.Case("said to be finished", part(plan.UseBasement, "Ground", plan.AnswerYes, 0), 0, "what is said wins"),
		ruletest.Case("a store in a basement", part(plan.UseStorage, "Basement", "", 0), 0, "nobody says that it is unfinished"),
		ruletest.Case("an unfinished store there", part(plan.UseStorage, "Basement", plan.AnswerNo, 0), 1, "210.52(G)(3)"),
		ruletest.Case("an unfinished store there, served", part(plan.UseStorage, "Basement", plan.AnswerNo, 1), 0, "210.52(G)(3)"),
		ruletest.Case("a finished store there", part(plan.UseStorage, "Basement", plan.AnswerYes, 0), 0, "210.52(G)(3): unfinished portions"),
		ruletest.Case("an unfinished store above", part(plan.UseStorage, "Ground", plan.AnswerNo, 0), 0, "210.52(G)(3): basements"),
	})
}
