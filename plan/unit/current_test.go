package unit_test

import (
	"testing"

	"studbay/plan/unit"
)

// What is written of a current is read as the same, to the milliampere.
func TestCurrents(t *testing.T) {
	for _, tt := range []struct {
		text string
		want unit.Current
		back string
	}{
		{"12", 12000, "12"}, {"9.8", 9800, "9.8"}, {"9,8 A", 9800, "9.8"}, {" 7.55A ", 7550, "7.55"}, {"0.001", 1, "0.001"},
		{"0", 0, "0"}, {"10.050", 10050, "10.05"}, {"5.", 5000, "5"}, {"999999.999", 999999999, "999999.999"},
	} {
		got, err := unit.ParseCurrent(tt.text)
		if err != nil || got != tt.want || got.Text() != tt.back {
			t.Errorf("%q is %d (%v), written %q; want %d, %q", tt.text, got, err, got.Text(), tt.want, tt.back)
		}
	}
	for _, text := range []string{"", "A", ".5", "-1", "1.2345", "1.2.3", "few", "1e3", "1234567", "1,2,3"} {
		if got, err := unit.ParseCurrent(text); err == nil {
			t.Errorf("%q is read as %s", text, got.Text())
		}
	}
	for c, want := range map[unit.Current]string{-1500: "-1.5", -200: "-0.2"} {
		if got := c.Text(); got != want {
			t.Errorf("%d is written %q, want %q", c, got, want)
		}
	}
}
