package fullsize

import (
	"testing"

	"studbay/plan/unit"
)

// A tape of marks up to 41 in on strips of 15-3/4 in: whole inches, end to end, past the last
// mark by more than an inch; metric by whole centimeters.
func TestStrips(t *testing.T) {
	marks := []Mark{{At: 16 * unit.Inch}, {At: 41 * unit.Inch}}
	want := []Strip{{From: 0, To: 15 * unit.Inch}, {From: 15 * unit.Inch, To: 30 * unit.Inch}, {From: 30 * unit.Inch, To: 43 * unit.Inch}}
	got := Strips(marks, 15*unit.Inch+3*unit.Inch/4, unit.Imperial)
	if len(got) != len(want) {
		t.Fatalf("%v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("strip %d is %v, want %v", i, got[i], want[i])
		}
	}
	mm := Strips([]Mark{{At: 407 * unit.Millimetre}}, 395*unit.Millimetre, unit.Metric)
	if len(mm) != 2 || mm[0].To != 390*unit.Millimetre || mm[1].To != 420*unit.Millimetre {
		t.Errorf("metric strips are %v", mm)
	}
	if Strips(nil, unit.Foot, unit.Imperial) != nil {
		t.Error("a tape of no marks has strips")
	}
}
