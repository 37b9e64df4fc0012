package code

import (
	"errors"
	"testing"
)

// TestOnlyTheRuleThatIsNamedIsOff, and no rule by an amendment of a figure.
func TestOnlyTheRuleThatIsNamedIsOff(t *testing.T) {
	f, err := Latest().WithAmendments([]Amendment{
		{Figure: "wall-reach", Value: "5 ft", Reason: "town rule 7"},
		{Rule: "box-fill", Reason: "not enforced"},
		{Rule: "box-place", Reason: "by eye"},
	})
	if err != nil {
		t.Fatal(err)
	}
	for rule, want := range map[string]string{"box-fill": "not enforced", "box-place": "by eye", "wall-reach": "", "": ""} {
		if reason, off := f.Off(rule); reason != want || off != (want != "") {
			t.Errorf("%q is off: %v for %q, want for %q", rule, off, reason, want)
		}
	}
}

// TestASectionHasNoValueToAmend, neither one nor an empty one.
func TestASectionHasNoValueToAmend(t *testing.T) {
	for _, value := range []string{"", "2"} {
		if _, err := Latest().WithAmendments([]Amendment{{Figure: "clamps", Value: value, Reason: "town rule"}}); !errors.Is(err, errOnlyCite) {
			t.Errorf("amended to %q: %v", value, err)
		}
	}
}

// TestVolumesThatAreNone are refused: no number, and less than nothing.
func TestVolumesThatAreNone(t *testing.T) {
	for _, value := range []string{"", "much", "-1", "0"} {
		if _, err := Latest().WithAmendments([]Amendment{{Figure: "allowance-12", Value: value, Reason: "town rule"}}); err == nil {
			t.Errorf("an allowance of %q is taken", value)
		}
	}
}
