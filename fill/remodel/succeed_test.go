package remodel_test

import (
	"testing"

	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// What follows an old opening is new, at its height, in a box that the wall takes: a moved one
// has what the old one had in it, one put in its place is as its kind starts out.
func TestWhatFollowsAnOldOpening(t *testing.T) {
	for _, tt := range []struct {
		name     string
		height   plan.Height
		isClosed bool
		code     string // PN3 is the box of a dimmer, kinds.csv; OW1 holds its 14.00 in³: 2 × 2 × 2.00 + 2.00 + 2 × 2.00 (NEC 314.16(B))
	}{
		{"in an open wall", plan.CentreAt(ruletest.In(50)), false, "PN3"},
		{"in one that stays closed", plan.CentreAt(ruletest.In(50)), true, "OW1"},
		{"whose height nobody told", plan.Height{}, false, "PN3"},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		if tt.isClosed {
			r.Sides[0].Condition = plan.ConditionClosed
		}
		old := put(r, "A", "dimmer", 30, coded("DV1"), ruletest.Existing, func(o *plan.Opening) {
			o.Height, o.Gangs, o.Note, o.Devices = tt.height, 1, "hall", []plan.Device{{Kind: "dimmer"}}
		})
		height := tt.height
		if height == (plan.Height{}) {
			height = plan.CentreAt(ruletest.In(46)) // usual for switches, kinds.csv
		}
		p := h.Made()
		moved, replaced := remodel.Move(p, old, r.On(0, 80)), remodel.Replace(p, old, "switch")
		if moved.Old != old.ID || moved.Status != plan.StatusMoved || replaced.Old != old.ID || replaced.Status != plan.StatusReplaced {
			t.Errorf("%s: %+v, %+v", tt.name, moved, replaced)
		}
		by := moved.By
		if by.Kind != "dimmer" || by.At != r.On(0, 80) || by.Height != height || by.Note != "hall" || len(by.Devices) != 1 || by.Gangs != 1 || by.Status != plan.StatusNew || by.Assembly.Code != tt.code {
			t.Errorf("%s: moved as %+v", tt.name, by)
		}
		by = replaced.By
		if by.Kind != "switch" || by.At != old.At || by.Height != height || by.Note != "" || len(by.Devices) != 0 || by.Assembly.Code != tt.code {
			t.Errorf("%s: replaced by %+v", tt.name, by)
		}
		if again := remodel.Replace(p, old, "switch").By.ID; again != by.ID || by.ID == moved.By.ID || by.ID == old.ID {
			t.Errorf("%s: IDs %s, %s, %s of %s", tt.name, moved.By.ID, by.ID, again, old.ID)
		}
		if tt.height == (plan.Height{}) {
			continue // what the wall had without a height is in no plan
		}
		if next, err := moved.Apply(p); err != nil {
			t.Errorf("%s: %v", tt.name, err)
		} else if o, _ := next.Opening(old.ID); o.Status != plan.StatusMoved {
			t.Errorf("%s: the old one is %s", tt.name, o.Status)
		}
	}
}
