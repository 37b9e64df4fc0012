package edit_test

import (
	"errors"
	"fmt"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// An edit gives the next plan and leaves the one it was given alone.
func ExampleEdit() {
	before := plantest.Bedroom()
	after, err := edit.AddOpening{Opening: plantest.Duplex()}.Apply(before)
	fmt.Println(before.Levels[0].Openings.Len(), after.Levels[0].Openings.Len(), err)
	_, err = edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 2*unit.Foot)}.Apply(before)
	fmt.Println(errors.Is(err, plan.ErrGone))
	// Output:
	// 0 1 <nil>
	// true
}

// Undo is a list of plans.
func ExampleHistory() {
	h := edit.NewHistory(plantest.Bedroom(), 0)
	fmt.Println(h.Do(edit.AddOpening{Opening: plantest.Duplex()}), h.Plan().Levels[0].Openings.Len())
	h.Undo()
	fmt.Println(h.Plan().Levels[0].Openings.Len())
	h.Redo()
	fmt.Println(h.Plan().Levels[0].Openings.Len())
	// Output:
	// <nil> 1
	// 0
	// 1
}
