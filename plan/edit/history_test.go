package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func slideTo(along unit.Length) edit.Edit {
	return edit.MoveOpening{ID: n1, To: plan.OnFace(north, along)}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func TestAGestureIsOneStep(t *testing.T) {
	first := shed(t)
	h := edit.NewHistory(first, 0)
	h.Begin(words.New("test.drag", "Drag opening"))
	for along := 37 * in; along <= 50*in; along += in {
		must(t, h.Do(slideTo(along)))
	}
	if got := opening(t, h.Plan(), n1).At.Along; got != 50*in {
		t.Errorf("during the drag it stands at %v", got)
	}
	if h.Do(slideTo(999*ft)) == nil {
		t.Error("an opening went past the end of its side")
	}
	if got := opening(t, h.Plan(), n1).At.Along; got != 50*in {
		t.Errorf("after a refused edit it stands at %v, want where it was", got)
	}
	h.End()
	if got := h.UndoName().String(); got != "Drag opening" {
		t.Errorf("the step is named %q", got)
	}
	if !h.Undo() || h.CanUndo() || !same(h.Plan(), first) {
		t.Error("one undo does not take back the whole drag")
	}
	if got := h.RedoName().String(); got != "Drag opening" {
		t.Errorf("the step to redo is named %q", got)
	}
}

func TestAGestureStartsFromOnePlan(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	h.Begin(words.Text{})
	for range 5 {
		must(t, h.Do(edit.MoveSide{Side: north, By: ft}))
	}
	h.End()
	if got := room(t, h.Plan()).Sides[0].Start.Y; got != -ft {
		t.Errorf("the side stands at %v, want one foot out, not five", got)
	}
	if got := h.UndoName().String(); got != "Move side" {
		t.Errorf("the step is named %q", got)
	}
}

func TestAGestureThatEndsWhereItBeganLeavesNoStep(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	must(t, h.Do(slideTo(40*in)))
	must(t, h.Do(slideTo(50*in)))
	h.Undo()
	before := h.Plan()
	h.Begin(words.Text{})
	must(t, h.Do(slideTo(60*in)))
	must(t, h.Do(slideTo(40*in)))
	h.End()
	if !same(h.Plan(), before) {
		t.Error("the plan is not the very same")
	}
	if !h.Redo() || opening(t, h.Plan(), n1).At.Along != 50*in {
		t.Error("what was undone before the gesture cannot be redone")
	}
}

func TestCancelAndUndoInAGesture(t *testing.T) {
	for name, stop := range map[string]func(*edit.History){
		"cancel": (*edit.History).Cancel,
		"undo":   func(h *edit.History) { h.Undo() },
	} {
		h := edit.NewHistory(shed(t), 0)
		must(t, h.Do(slideTo(40*in)))
		before := h.Plan()
		h.Begin(words.Text{})
		must(t, h.Do(slideTo(60*in)))
		stop(h)
		if h.InGesture() || !same(h.Plan(), before) || !h.CanUndo() {
			t.Errorf("%s: the plan is not as it was when the gesture began", name)
		}
	}
}

func TestAnEditThatChangesNothingLeavesNoStep(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	must(t, h.Do(slideTo(36*in)))
	must(t, h.Do(edit.SetUnits{Units: plan.UnitsImperial}))
	if h.CanUndo() {
		t.Errorf("%q left a step", h.UndoName())
	}
}

func TestDoForgetsWhatWasUndone(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	must(t, h.Do(slideTo(40*in)))
	h.Undo()
	must(t, h.Do(slideTo(50*in)))
	if h.CanRedo() || h.Redo() || !h.RedoName().IsZero() {
		t.Error("there is still something to redo")
	}
}

func TestHistoryIsBounded(t *testing.T) {
	h := edit.NewHistory(shed(t), 3)
	for along := range 10 {
		must(t, h.Do(slideTo(unit.Length(along+1)*in)))
	}
	n := 0
	for h.Undo() {
		n++
	}
	if at := opening(t, h.Plan(), n1).At.Along; n != 3 || at != 7*in || !h.UndoName().IsZero() {
		t.Errorf("%d steps back to %v (%q), want 3 to 7 in", n, at, h.UndoName())
	}
	for range 3 {
		h.Redo()
	}
	if at := opening(t, h.Plan(), n1).At.Along; at != 10*in {
		t.Errorf("redone to %v, want 10 in", at)
	}
}

func TestDirty(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	is := func(want bool, when string) {
		t.Helper()
		if h.IsDirty() != want {
			t.Errorf("%s: IsDirty is %v", when, !want)
		}
	}
	is(false, "opened")
	must(t, h.Do(slideTo(40*in)))
	is(true, "edited")
	h.Undo()
	is(false, "undone")
	h.Redo()
	written := h.Plan()
	must(t, h.Do(slideTo(50*in)))
	h.MarkSaved(written)
	is(true, "edited while it was being saved")
	h.Undo()
	is(false, "back at what was saved")
	must(t, h.Do(slideTo(60*in)))
	must(t, h.Do(slideTo(40*in)))
	is(false, "edited back by hand")
}

// What is made throughout is no step, and holds before and after those that are undone.
func TestAnEditThroughoutIsNoStep(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	if err := h.Do(edit.MoveOpening{ID: lamp, To: anchorIn(t, h.Plan(), lamp)}); err != nil {
		t.Fatal(err)
	}
	if err := h.Do(edit.SetNote{ID: lamp, Note: "dim it"}); err != nil {
		t.Fatal(err)
	}
	if err := h.Throughout(edit.SetUnits{Units: plan.UnitsMetric}); err != nil {
		t.Fatal(err)
	}
	if got := h.Done(); len(got) != 1 || got[0].String() != "Change note" {
		t.Errorf("the steps are %v, want the note alone", got)
	}
	h.Undo()
	if h.Plan().Header.Units != plan.UnitsMetric {
		t.Error("undo takes the units back")
	}
	h.Redo()
	if o, _ := h.Plan().Opening(lamp); h.Plan().Header.Units != plan.UnitsMetric || o.Note != "dim it" {
		t.Error("redo gives other units, or not the note")
	}
	before := h.Plan()
	if err := h.Throughout(edit.SetUnits{Units: "ells"}); err == nil || !plan.Equal(before, h.Plan()) {
		t.Errorf("units that are none: %v", err)
	}
}

// In a gesture there is something to take back once something was done in it.
func TestUndoInAGestureSaysWhetherItDid(t *testing.T) {
	h := edit.NewHistory(shed(t), 0)
	h.Begin(words.Text{})
	if h.CanUndo() || h.Undo() || h.InGesture() {
		t.Error("nothing was done, and something was taken back")
	}
	h.Begin(words.Text{})
	must(t, h.Do(slideTo(40*in)))
	if !h.CanUndo() || h.CanRedo() || h.UndoName().String() != "Move opening" || !h.RedoName().IsZero() || !h.Undo() {
		t.Error("what was done was not taken back")
	}
	if h.Undo() || h.Redo() || h.CanUndo() || h.CanRedo() || len(h.Done()) != 0 {
		t.Error("a gesture that was taken back has left a step")
	}
}
