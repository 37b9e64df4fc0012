package index_test

import (
	"fmt"

	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/plantest"
)

// An index answers where things are: the foot of an opening, and the way into its room.
func ExampleIndex() {
	after, err := edit.AddOpening{Opening: plantest.Duplex()}.Apply(plantest.Bedroom())
	if err != nil {
		fmt.Println(err)
		return
	}
	ix := index.New(after)
	for _, o := range after.Openings() {
		place, ok := ix.Place(o.At)
		fmt.Println(place.Room.Name, place.Foot.X.FeetInches(8), place.Foot.Y.FeetInches(8), place.Into.Y > 0, ok)
	}
	// Output: Bedroom 4' 0" 0" true true
}
