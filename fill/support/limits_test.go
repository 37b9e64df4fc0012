package support_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/support"
	"studbay/plan"
	"studbay/plan/unit"
)

// A square of 4 in beside the stud from 47-1/4 to 48-3/4: up to 1/32 in it, or from it, it stands
// against it (common practice: half of a tape's sixteenth).
func TestLimitsOfSupport(t *testing.T) {
	at := func(along float64, sign unit.Length) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := studded(h)
			o := r.Opening("duplex", r.On(0, along), ruletest.Tagged("A"), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "SQ1"} })
			o.At.Along += sign * (unit.Inch/32 + over)
		}
	}
	const practice = "common practice: a tape is read to a sixteenth"
	ruletest.Edges(t, &support.StudInWay, []ruletest.Edge{
		ruletest.Limit("in a stud at its right", at(45.25, 1), 0, 0, 1, practice),
		ruletest.Limit("in a stud at its left", at(50.75, -1), 0, 0, 1, practice),
	})
	ruletest.Edges(t, &support.NeedsSupport, []ruletest.Edge{
		ruletest.Limit("off a stud at its left", at(50.75, 1), 0, 0, 1, practice),
		ruletest.Limit("off a stud at its right", at(61.25, -1), 0, 0, 1, practice),
	})
	ruletest.Edges(t, &support.FanSupport, []ruletest.Edge{
		ruletest.Limit("a joist at the edge of a box of 4 in", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 120)
			r.Room.Joists = plan.Joists{Along: r.Sides[0].ID, Spacing: ruletest.In(16), First: ruletest.In(16)}
			o := r.Opening("fan-light", r.Ceiling(72, 50), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "FN2"} })
			o.At.At.Y += over
		}, 0, 0, 1, "the screws of the box reach a joist over it"),
	})
}

// TestWhichFanBoxesAreOffered: those listed for a fan with no less volume, and off a joist those
// on a brace; none for what is no fan, hangs in no ceiling, comes on a brace or goes.
func TestWhichFanBoxesAreOffered(t *testing.T) {
	for _, tt := range []struct {
		name, kind, code string
		change           func(r *ruletest.Room, o *plan.Opening)
		found            int
		want             []string
	}{
		{"a light box of 15.5", "fan-light", "RD2", nil, 1, []string{"FN1", "FN2", "FN3"}},
		{"one of 21.5", "fan-light", "RD3", nil, 1, []string{"FN2", "FN3"}},
		{"one of 23", "fan-light", "RD4", nil, 1, nil},
		{"a fan box off a joist", "fan-light", "FN1", func(_ *ruletest.Room, o *plan.Opening) { o.At.At.Y = ruletest.In(56) }, 1, []string{"FN3"}},
		{"one on a brace off a joist", "fan-light", "FN3", func(_ *ruletest.Room, o *plan.Opening) { o.At.At.Y = ruletest.In(56) }, 0, nil},
		{"one at a joist", "fan-light", "FN1", nil, 0, nil},
		{"a light", "ceiling-light", "RD2", nil, 0, nil},
		{"a fan that goes", "fan-light", "RD2", func(_ *ruletest.Room, o *plan.Opening) { o.Status = plan.StatusRemove }, 0, nil},
		{"a fan without a box", "fan-light", "", nil, 0, nil},
		{"one with a barrier nobody knows", "fan-light", "RD2", func(_ *ruletest.Room, o *plan.Opening) { o.Assembly.Barriers = []string{"paper"} }, 1, nil},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Room.Joists = plan.Joists{Along: r.Sides[0].ID, Spacing: ruletest.In(16), First: ruletest.In(16)}
		o := r.Opening(tt.kind, r.Ceiling(72, 48), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: tt.code} })
		if tt.change != nil {
			tt.change(r, o)
		}
		found := h.Found(&support.FanSupport)
		if len(found) != tt.found {
			t.Errorf("%s: %+v", tt.name, found)
			continue
		}
		var got []string
		for _, f := range found {
			for _, remedy := range f.Remedies {
				after, err := remedy.Edit.Apply(h.Made())
				if err != nil {
					t.Fatal(err)
				}
				now, _ := after.Opening(o.ID)
				got = append(got, now.Assembly.Code)
			}
		}
		if len(got) != len(tt.want) {
			t.Errorf("%s: offered %q, want %q", tt.name, got, tt.want)
			continue
		}
		for i := range got {
			if got[i] != tt.want[i] {
				t.Errorf("%s: offered %q, want %q", tt.name, got, tt.want)
			}
		}
	}
}
