package trade

import (
	"strings"
	"testing"

	"studbay/fill/price"
)

// The screws that are told are those of the recipes: two at each end of a block, two through a
// box on it (common practice). Without them nothing is told.
func TestScrewsOfABlock(t *testing.T) {
	text, ok := (&Book{}).screws()
	if got := text.String(); !ok || !strings.HasPrefix(got, "A block takes 4 × Structural screw, 2-1/2, half of them at each end, or as many pocket screws; the box on it 2 × Wood screw, 1-1/4,") {
		t.Errorf("%q, %v", got, ok)
	}
	book := price.Trial()
	for i, s := range book.Recipes() {
		if s.Per == price.PerBlock && s.Part == boxScrew {
			book = book.WithoutStep(i)
			break
		}
	}
	if text, ok := (&Book{Prices: book}).screws(); ok {
		t.Errorf("without screws in the recipes: %q", text)
	}
}
