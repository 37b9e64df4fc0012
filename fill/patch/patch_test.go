package patch_test

import (
	"testing"

	"studbay/fill/patch"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// Plaster of 3/4 in is met by board of 1/2 on furring of 1/4 (common practice).
func TestWhatIsPatched(t *testing.T) {
	board := []plan.Layer{{Name: "board", Thickness: ruletest.In(0.5)}}
	furred := append([]plan.Layer{{Name: "furring", Thickness: ruletest.In(0.25)}}, board...)
	type want struct{ from, to, furring float64 }
	for _, tt := range []struct {
		name  string
		is    plan.Condition
		zones []plan.Zone
		want  []want
	}{
		{"closed", plan.ConditionClosed, nil, nil},
		{"new", plan.ConditionNew, nil, nil},
		{"a strip, nothing said of its layers", plan.ConditionClosed, []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionOpened}}, []want{{24, 72, 0.25}}},
		{"a strip of board alone", plan.ConditionClosed, []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionOpened, Finish: board}}, []want{{24, 72, 0.25}}},
		{"a strip of board on furring", plan.ConditionClosed, []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionOpened, Finish: furred}}, []want{{24, 72, 0}}},
		{"past the end of the wall", plan.ConditionClosed, []plan.Zone{{From: ruletest.In(100), To: ruletest.In(200), Condition: plan.ConditionOpened}}, []want{{100, 144, 0.25}}},
		{"all of it", plan.ConditionOpened, nil, []want{{0, 144, 0.25}}},
		{"all but a part", plan.ConditionOpened, []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionClosed}}, []want{{0, 24, 0.25}, {72, 144, 0.25}}},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		s := r.Sides[0]
		s.Finish = []plan.Layer{{Name: "plaster", Thickness: ruletest.In(0.75)}}
		s.Condition, s.Zones = tt.is, tt.zones
		got := patch.Of(h.Made())
		if len(got) != len(tt.want) {
			t.Errorf("%s: %+v, want %v", tt.name, got, tt.want)
			continue
		}
		for i, p := range got {
			if w := tt.want[i]; p.From != ruletest.In(w.from) || p.To != ruletest.In(w.to) || p.Furring() != unit.Length(w.furring*float64(unit.Inch)) {
				t.Errorf("%s: from %v to %v, furring %v, want %v", tt.name, p.From, p.To, p.Furring(), w)
			}
		}
	}
}
