package unfold

import (
	"testing"

	"studbay/fill/part"
)

// TestEveryKindHasItsFront holds the fronts that the tables name to those that are drawn.
func TestEveryKindHasItsFront(t *testing.T) {
	for _, k := range part.All().Fixtures {
		if fronts[k.Front] == nil {
			t.Errorf("%s has a front %q that nothing draws", k.ID, k.Front)
		}
	}
	for _, k := range part.All().Breaks {
		if breakFronts[k.Body] == nil {
			t.Errorf("%s has a body %q that nothing draws", k.ID, k.Body)
		}
	}
}
