package dialog

import (
	"strings"
	"testing"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/fill/choose"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// TestOnesOwnPolicyIsMadeAndTaken: a line is added, says what it takes of which kind and room, and
// the policy stands beside the others with its own button; taking it changes the box that its
// first fitting line says.
func TestOnesOwnPolicyIsMadeAndTaken(t *testing.T) {
	s := newStand(t)
	d := s.house(12*unit.Foot, 10*unit.Foot)
	var side plan.ID
	for r := range d.Plan().Levels[0].Rooms.All() {
		side = r.Sides[0].ID
	}
	o := plan.Opening{ID: work.NewID(plan.KindOpening), Tag: "R1", Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace(side, 3*unit.Foot), Height: plan.CentreAt(16 * unit.Inch), Assembly: plan.Assembly{Code: "PN1"}}
	if err := d.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	s.until("the findings", d.IsChecked)
	var taken edit.Edit
	s.ShowChoice(d, func(e edit.Edit) { taken = e })
	shows := func(what string) func() bool {
		return func() bool { return strings.Contains(windowtest.TextOf(s.dialog()), what) }
	}
	s.until("the table", shows("Plastic or steel"))
	s.until("the policies", shows("Cheapest that passes"))
	windowtest.Press(t, s.dialog(), "Your own, by room and kind …")
	windowtest.Press(t, s.dialog(), "Add a line")
	pick := func(field, label string) {
		t.Helper()
		for _, c := range windowtest.All[*look.Choice](s.dialog()) {
			if c.Label() != field {
				continue
			}
			for _, o := range c.Options() {
				if strings.HasPrefix(o.Label, label) {
					o.Do()
					if !strings.HasPrefix(c.Value(), label) {
						t.Errorf("%s shows %q", field, c.Value())
					}
					return
				}
			}
		}
		t.Fatalf("no %s %q", field, label)
	}
	pick("Room", "Den")
	pick("Take", "All steel")
	if got, want := s.ownPolicy, (choose.OwnRow{Room: "Den", Take: "steel"}); len(got) != 1 || got[0] != want {
		t.Fatalf("the lines are %+v", got)
	}
	if next := NewStage(s.window, s.post, s.memory); len(next.ownPolicy) != 1 || next.ownPolicy[0] != s.ownPolicy[0] {
		t.Errorf("the next window begins with %+v", next.ownPolicy)
	}
	windowtest.Press(t, s.dialog(), "Lay it beside the others")
	s.until("the own policy", shows("your own, by room and kind"))
	var last *look.Press
	for _, p := range windowtest.All[*look.Press](s.dialog()) {
		if strings.HasPrefix(windowtest.TextOf(p), "Take this") {
			last = p // the columns stand from left to right
		}
	}
	if last == nil {
		t.Fatal("nothing can be taken")
	}
	last.Tapped(nil)
	windowtest.Press(t, s.dialog(), "Change 1 boxes")
	steps, ok := taken.(edit.Steps)
	if !ok || len(steps.Edits) != 1 {
		t.Fatalf("taken is %+v", taken)
	}
	after, err := steps.Apply(d.Plan())
	if err != nil {
		t.Fatal(err)
	}
	now, _ := after.Opening(o.ID)
	if b, ok, _ := part.Resolve(now.Assembly); !ok || b.Box.Material != part.Steel {
		t.Errorf("its box is %+v, want one of steel", now.Assembly)
	}
}
