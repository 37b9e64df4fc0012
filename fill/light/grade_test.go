package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// floor is a level of a house: what it is called, how high it lies, and the uses of its
// rooms; the first of the level under test has a door to a yard.
type floor struct {
	name string
	high float64
	uses []plan.Use
}

// Which level's doors are at grade where nobody says: those of the lowest that is no
// basement, by its name or since all of it is unfinished.
func TestWhichLevelIsAtGrade(t *testing.T) {
	den, cellar := []plan.Use{plan.UseDen}, []plan.Use{plan.UseBasement}
	for _, tt := range []struct {
		name   string
		floors []floor // the door is on the first
		found  int
	}{
		{"the only one", []floor{{"Level", 0, den}}, 1},
		{"under another", []floor{{"Level", 0, den}, {"Above", 108, den}}, 1},
		{"over another", []floor{{"Level", 0, den}, {"Below", -108, den}}, 0},
		{"beside another as high", []floor{{"Level", 0, den}, {"Beside", 0, den}}, 1},
		{"a nanometer over another", []floor{{"Level", 0, den}, {"Below", -1.0 / 16, den}}, 0},
		{"over a basement by name", []floor{{"Level", 0, den}, {"Basement", -108, den}}, 1},
		{"over a basement of one unfinished room", []floor{{"Level", 0, den}, {"Below", -108, cellar}}, 1},
		{"over a basement of two unfinished rooms", []floor{{"Level", 0, den}, {"Below", -108, []plan.Use{plan.UseBasement, plan.UseBasement}}}, 1},
		{"over one that is unfinished in part", []floor{{"Level", 0, den}, {"Below", -108, []plan.Use{plan.UseBasement, plan.UseDen}}}, 0},
		{"over one without a room, which is no basement", []floor{{"Level", 0, den}, {"Below", -108, nil}}, 0},
		{"a basement by name", []floor{{"Basement", 0, den}, {"Above", 108, den}}, 0},
		{"a basement of one unfinished room", []floor{{"Level", 0, cellar}, {"Above", 108, den}}, 0},
	} {
		h := ruletest.New(t)
		for i, f := range tt.floors {
			if i > 0 {
				h.Level(f.name)
			}
			l := *h.Plan.Levels[i]
			l.Name, l.Elevation = f.name, ruletest.In(f.high)
			h.Plan.Levels[i] = &l
			for k, u := range f.uses {
				x := float64(200 * k)
				r := h.RoomOn(i, u, x, 0, x+120, 0, x+120, 120, x, 120)
				if i == 0 && k == 0 {
					h.RoomOn(i, plan.UseOutdoors, 0, 127, 120, 127, 120, 240, 0, 240)
					r.Break(plan.BreakDoor, 2, 40, 36)
				}
			}
		}
		// The yard is outdoors, and so no unfinished room: a basement with one has a name.
		if tt.floors[0].uses[0] == plan.UseBasement {
			h.Rooms()[1].Use = plan.UseBasement
			tt.found = 0
		}
		if found := h.Found(&light.LitPassage); len(found) != tt.found {
			t.Errorf("%s: %d doors want a light, want %d (210.70(A)(2)(2): grade-level access)", tt.name, len(found), tt.found)
		}
	}
	// One comes into a house at grade, not by a door of a floor above or of a basement.
	h := ruletest.New(t)
	h.Plan.Levels[0].Name = "Basement"
	for i := range 3 {
		if i > 0 {
			h.Level([]string{"", "Ground", "Upper"}[i])
		}
		r := h.RoomOn(i, plan.UseDen, 0, 0, 120, 0, 120, 120, 0, 120)
		r.Break(plan.BreakDoor, 2, 40, 36)
	}
	if w := light.WalkOf(index.New(h.Made()), 30*unit.Inch); len(w.Crossings) != 1 || w.Crossings[0].Into.ID != h.Rooms()[1].Room.ID || len(w.Missed) != 2 {
		t.Errorf("%d ways in, want that of the ground floor", len(w.Crossings))
	}
}

// Doors that lead to a room within want no light before them.
func TestDoorsWithinWantNoLight(t *testing.T) {
	ruletest.Try(t, &light.LitPassage, []ruletest.Trial{
		ruletest.Case("a door to a dark pantry", func(h *ruletest.House) {
			den := h.Square(plan.UseDen, 0, 0, 120, 120)
			h.Square(plan.UsePantry, 0, 124.5, 120, 80)
			den.Break(plan.BreakDoor, 2, 40, 36)
		}, 0, "210.70(A)(2)(2): exterior doors"),
	})
	ruletest.Tells(t, &light.LitRoom, []ruletest.Telling{
		ruletest.Told("a door to a room without a switch", func(h *ruletest.House) {
			den := h.Square(plan.UseDen, 0, 0, 120, 120)
			h.Square(plan.UsePantry, 0, 124.5, 120, 80)
			den.Break(plan.BreakDoor, 2, 40, 36)
			den.Opening("ceiling-light", den.Ceiling(60, 60))
		}, `
			stop, NEC 2023 210.70(A)(1): den
			den has a light and no switch for it
			There is none in the room, nor in a room next to it.`, "210.70(A)(1)"),
	})
}

// By which door one comes in, whichever is drawn first.
func TestTheLikeliestDoor(t *testing.T) {
	type door struct {
		use  plan.Use
		yard string // "" for none, else which way it faces, or "nobody says"
		kind plan.BreakKind
	}
	const nobody = "nobody says"
	front := string(plan.FacesFront)
	for _, tt := range []struct {
		name       string
		fit, unfit door
	}{
		{"at the front", door{use: plan.UseGarage, yard: front}, door{use: plan.UseFoyer, yard: nobody}},
		{"not of a garage", door{use: plan.UseBedroom}, door{use: plan.UseGarage}},
		{"a door, not a slider", door{use: plan.UseBedroom}, door{use: plan.UseFoyer, kind: plan.BreakSlider}},
		{"of a foyer", door{use: plan.UseFoyer}, door{use: plan.UseHall}},
		{"of a kitchen", door{use: plan.UseKitchen}, door{use: plan.UseBedroom}},
		{"of a foyer, though a yard is drawn elsewhere", door{use: plan.UseFoyer}, door{use: plan.UseHall, yard: nobody}},
		{"to a yard, of two alike", door{use: plan.UseDen, yard: nobody}, door{use: plan.UseDen}},
		{"from a house, not from a yard", door{use: plan.UseDen}, door{use: plan.UseOutdoors}},
	} {
		for _, order := range [][2]door{{tt.fit, tt.unfit}, {tt.unfit, tt.fit}} {
			h := ruletest.New(t)
			var fit *ruletest.Room
			for i, d := range order {
				x := float64(200 * i)
				r := h.Square(d.use, x, 0, 120, 120)
				if d.yard != "" {
					yard := h.Square(plan.UseOutdoors, x, 127, 120, 120)
					if d.yard != nobody {
						yard.Faces = plan.FacesFront
					}
				}
				b := r.Break(plan.BreakDoor, 2, 40, 36)
				if d.kind == plan.BreakSlider {
					b.Kind, b.Hand, b.Swing, b.Panels = d.kind, "", "", []plan.Panel{plan.PanelFixed, plan.PanelMoving}
				}
				if d == tt.fit {
					fit = r
				}
			}
			w := light.WalkOf(index.New(h.Made()), 30*unit.Inch)
			if len(w.Crossings) != 1 || w.Crossings[0].Into.ID != fit.Room.ID {
				t.Errorf("%s: %d ways in, want that alone", tt.name, len(w.Crossings))
			}
		}
	}
}

// A house without a level is walked through without an end.
func TestNoLevel(t *testing.T) {
	p := ruletest.New(t).Made()
	p.Levels = nil
	if w := light.WalkOf(index.New(p), 30*unit.Inch); len(w.Crossings) != 0 || len(w.Missed) != 0 || w.Reach != 30*unit.Inch {
		t.Errorf("%+v, want nothing", w)
	}
}
