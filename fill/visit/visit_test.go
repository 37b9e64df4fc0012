package visit_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/ruletest"
	"studbay/fill/visit"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// What is ticked at each box, by what the sections say of it.
func TestTicks(t *testing.T) {
	made := func(code string) func(*plan.Opening) {
		return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
	}
	for _, tt := range []struct {
		name   string
		use    plan.Use
		kind   string
		built  string
		want   map[visit.Column]int // the inches of a staple, else 0
		source string
	}{
		{"plastic, one gang", plan.UseBedroom, "duplex", "PN1", map[visit.Column]int{visit.Set: 0, visit.Staple: 8, visit.Plate: 0}, "314.17: 8 in of one not clamped; 300.4(A)(1) in a 2×4"},
		{"plastic, two gangs", plan.UseBedroom, "quad", "PN4", map[visit.Column]int{visit.Set: 0, visit.Staple: 12, visit.Plate: 0}, "334.30: 12 in"},
		{"steel", plan.UseBedroom, "duplex", "SQ2", map[visit.Column]int{visit.Set: 0, visit.Staple: 12, visit.Plate: 0, visit.Bond: 0}, "250.148: metal boxes are bonded"},
		{"a switch in a bedroom", plan.UseBedroom, "switch", "PN3", map[visit.Column]int{visit.Set: 0, visit.Staple: 8, visit.Plate: 0, visit.Neutral: 0}, "404.2(C): habitable rooms"},
		{"a switch in a garage", plan.UseGarage, "switch", "PN3", map[visit.Column]int{visit.Set: 0, visit.Staple: 8, visit.Plate: 0}, "404.2(C) names no garages"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := ruletest.New(t)
			r := h.Square(tt.use, 0, 0, 120, 120)
			for _, s := range r.Sides {
				s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
			}
			r.Opening(tt.kind, r.On(0, 60), made(tt.built))
			p := h.Made()
			list := visit.Of(index.New(p), filltest.Check(t, p))
			if len(list.Rooms) != 1 || list.Boxes != 1 {
				t.Fatalf("%d rooms and %d boxes, want one", len(list.Rooms), list.Boxes)
			}
			box := list.Rooms[0].Boxes[0]
			for _, c := range visit.Columns {
				inches, applies := tt.want[c]
				if got := box.Ticks[c]; got.Applies != applies || got.Within != unit.Length(inches)*unit.Inch {
					t.Errorf("%s is %+v, want %v %d in (%s)", c.ID(), got, applies, inches, tt.source)
				}
			}
			if list.Ticks != len(tt.want) {
				t.Errorf("%d ticks, want %d", list.Ticks, len(tt.want))
			}
		})
	}
}

// A cable that is fished is stapled nowhere and bores no stud: it hangs from the clamp of its
// box (334.30(B)(1)).
func TestNoStapleInAClosedWall(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	}
	r.Sides[0].Condition = plan.ConditionClosed
	old := func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "OW1"} }
	closed := r.Opening("duplex", r.On(0, 60), old)
	r.Opening("duplex", r.On(1, 60), old)
	p := h.Made()
	list := visit.Of(index.New(p), filltest.Check(t, p))
	for _, b := range list.Rooms[0].Boxes {
		want := b.Opening.ID != closed.ID
		if b.IsFished == want || b.Ticks[visit.Staple].Applies != want || b.Ticks[visit.Plate].Applies != want || !b.Ticks[visit.Set].Applies {
			t.Errorf("%s: %+v", b.Opening.Tag, b)
		}
	}
	var told []string
	for _, point := range list.Points {
		if point.Section == "334.30(B)(1)" {
			told = append(told, point.Title.String()+": "+point.Detail.String())
		}
	}
	if want := "Fished cables, boxes in closed walls: 1: held by the clamp of the box"; len(told) != 1 || told[0] != want {
		t.Errorf("told %q, want %q", told, want)
	}
}

// What is there already, or goes, is not on the list; a circuit of two poles stands by its
// first number.
func TestWhatIsNotOnTheList(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
	r.Opening("duplex", r.On(0, 20), func(o *plan.Opening) { o.Status = plan.StatusExisting })
	r.Opening("duplex", r.On(0, 40), ruletest.Removed)
	for _, number := range []string{"10/12", "9", "2"} {
		h.Circuit(20, func(c *plan.Circuit) { c.Number = number })
	}
	p := h.Made()
	list := visit.Of(index.New(p), filltest.Check(t, p))
	if list.Boxes != 0 || len(list.Rooms) != 0 {
		t.Errorf("%d boxes in %d rooms, want none", list.Boxes, len(list.Rooms))
	}
	var numbers []string
	for _, c := range list.Circuits {
		numbers = append(numbers, c.Number)
	}
	if len(numbers) != 3 || numbers[0] != "2" || numbers[1] != "9" || numbers[2] != "10/12" {
		t.Errorf("circuits %v, want 2, 9, 10/12", numbers)
	}
	if len(list.Missing) == 0 {
		t.Error("nothing is told to be missing, want the outdoors at least")
	}
}

// In a metric plan everything on the list is in its units: 8 and 12 in are 203.2 and 304.8 mm,
// and 35 lb of NEC 314.27(C) 15.876 kg, each rounded.
func TestTheListInAMetricPlan(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
	r.Opening("duplex", r.On(0, 60), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "PN1"} })
	r.Opening("duplex", r.On(1, 60), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "SQ2"} })
	r.Opening("fan-light", r.Ceiling(60, 60), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "FN2"} })
	p := h.Made()
	list := visit.Of(index.New(p), filltest.Check(t, p))
	var beside []string
	for _, b := range list.Rooms[0].Boxes {
		beside = append(beside, b.Ticks[visit.Staple].Beside(unit.Metric)+"/"+b.Ticks[visit.Staple].Beside(unit.Imperial)+"/"+b.Ticks[visit.Set].Beside(unit.Metric))
	}
	if want := []string{"203/8/", "305/12/", "305/12/"}; !slices.Equal(beside, want) {
		t.Errorf("beside the ticks %q, want %q", beside, want)
	}
	said := map[string]string{}
	for _, point := range list.Points {
		said[point.ID] = words.Voice{System: unit.Metric}.Say(point.Detail)
	}
	for id, want := range map[string]string{
		"staple": "within ≈ 203 mm of 1 plastic boxes of one gang without a clamp, within ≈ 305 mm of 2 others",
		"fan":    "marked for a fan; over ≈ 15.88 kg, the limit on the box",
	} {
		if said[id] != want {
			t.Errorf("%s: %q, want %q", id, said[id], want)
		}
	}
}
