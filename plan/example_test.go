package plan_test

import (
	"fmt"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
)

// Diff says what differs, noun by noun, without visiting what both plans share.
func ExampleDiff() {
	before := plantest.Bedroom()
	after, err := edit.AddOpening{Opening: plantest.Duplex()}.Apply(before)
	for _, c := range plan.Changed[*plan.Opening](plan.Diff(before, after)) {
		fmt.Println(c.Level, c.Old == nil, c.New.Kind)
	}
	fmt.Println(plan.Diff(before, before).IsEmpty(), plan.Equal(before, after), err)
	// Output:
	// vaaaaaaaa true duplex
	// true false <nil>
}
