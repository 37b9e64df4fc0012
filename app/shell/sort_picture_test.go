package shell

import (
	"testing"

	"studbay/app/look"
	"studbay/app/tool"
)

// TestEverySortHasAPicture draws each in every palette.
func TestEverySortHasAPicture(t *testing.T) {
	for _, e := range tool.Tools {
		made := e.New()
		chooser, ok := made.(tool.Chooser)
		if !ok {
			continue
		}
		for _, c := range chooser.Choices() {
			if len(sortPicture(made.ID(), c.ID, 34, 28, look.Current())) == 0 {
				t.Errorf("%s: %q has no picture", made.ID(), c.ID)
			}
		}
	}
}
