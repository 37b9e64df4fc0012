package dialog

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// TestTheVisitListIsTicked: a press ticks a place and another takes it back, each as one step
// that can be undone; the room and the whole house say how much is ticked; keys reach them all.
func TestTheVisitListIsTicked(t *testing.T) {
	s := newStand(t)
	d := s.house(12*unit.Foot, 10*unit.Foot)
	s.ShowVisit(d, d.Do)
	if text := windowtest.TextOf(s.dialog()); !strings.Contains(text, "No new box is drawn yet") {
		t.Fatalf("without a box: %q", text)
	}
	s.open.lower()
	var side plan.ID
	for r := range d.Plan().Levels[0].Rooms.All() {
		side = r.Sides[0].ID
	}
	o := plan.Opening{ID: work.NewID(plan.KindOpening), Tag: "R1", Kind: "duplex", Status: plan.StatusNew, At: plan.OnFace(side, 3*unit.Foot), Height: plan.CentreAt(16 * unit.Inch), Assembly: plan.Assembly{Code: "PN1"}}
	for _, e := range []edit.Edit{
		edit.AddOpening{Opening: o},
		edit.Add{Thing: &plan.Circuit{ID: work.NewID(plan.KindCircuit), Number: "7", Name: "Den", Amps: 15}},
	} {
		if err := d.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	s.until("the findings", d.IsChecked)
	s.ShowVisit(d, d.Do)
	ticks := func() (all []*look.Press) {
		for _, p := range windowtest.All[*look.Press](s.dialog()) {
			if p.OnKey != nil {
				all = append(all, p)
			}
		}
		return all
	}
	shows := func(what string) {
		t.Helper()
		if text := windowtest.TextOf(s.dialog()); !strings.Contains(text, what) {
			t.Errorf("it does not show %q: %q", what, text)
		}
	}
	shows("R1")
	shows("0 of 2 ticked")
	s.canvas().Focus(ticks()[0])
	s.canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	if !ticks()[1].Focused() {
		t.Error("the arrow does not go on to the next tick")
	}
	s.canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	shows("1 of 2 ticked")
	if !ticks()[1].Focused() {
		t.Error("the tick that was pressed lost the focus")
	}
	for x := range d.Plan().Ticks.All() {
		if x.About != o.ID || x.What != "staple" || x.Date == "" {
			t.Errorf("the plan keeps %+v", x)
		}
	}
	d.Undo()
	if n := d.Plan().Ticks.Len(); n != 0 {
		t.Errorf("one undo leaves %d ticks", n)
	}
	d.Redo()
	ticks()[1].Tapped(nil)
	shows("0 of 2 ticked")
	if n := d.Plan().Ticks.Len(); n != 0 {
		t.Errorf("taken back it leaves %d", n)
	}
	which := windowtest.All[*look.Choice](s.dialog())[0]
	if got := which.Options()[1].Label; got != "Den: 0 of 2 ticked" {
		t.Errorf("the room is offered as %q", got)
	}
	which.Options()[0].Do()
	shows("Circuits and protection")
	n := len(ticks())
	ticks()[n-1].Tapped(nil)
	for x := range d.Plan().Ticks.All() {
		if x.About.Kind() != plan.KindCircuit || x.What != "protection" {
			t.Errorf("the plan keeps %+v", x)
		}
	}
	ticks()[0].Tapped(nil)
	if d.Plan().Ticks.Len() != 2 || len(ticks()) != n {
		t.Errorf("%d ticks kept, %d shown, want 2 and %d", d.Plan().Ticks.Len(), len(ticks()), n)
	}
}
