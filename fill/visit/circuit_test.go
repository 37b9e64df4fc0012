package visit

import "testing"

// TestCircuitsGoByTheirFirstNumber: one of two poles by the lower, what is no number last.
func TestCircuitsGoByTheirFirstNumber(t *testing.T) {
	for text, want := range map[string]int{"9": 9, "19": 19, "10": 10, "8/10": 8, "9/11": 9, "90": 90, "A": 1 << 30, "": 1 << 30, "7:": 7, "7a": 7} {
		if got := number(text); got != want {
			t.Errorf("%q: %d, want %d", text, got, want)
		}
	}
}
