package layout

import (
	"strings"
	"testing"
)

// TestWrapEndsWithoutWidth: where there is no room at all a letter stands in each line, and
// nothing of the text is lost.
func TestWrapEndsWithoutWidth(t *testing.T) {
	for _, width := range []float64{-28, 0, 0.01} {
		if got := strings.Join(Fine.Wrap("Work on it", width), ""); got != "Workonit" {
			t.Errorf("in %v: %q", width, got)
		}
	}
}
