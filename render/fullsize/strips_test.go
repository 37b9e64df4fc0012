package fullsize

import (
	"slices"
	"testing"

	"studbay/plan/unit"
)

// A tape of marks up to 41 in on strips of 15-3/4 in: whole inches, end to end, past the last
// mark by more than an inch; metric by whole centimeters, the last of 11 (4 in are 10.16) at least.
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
	if len(mm) != 2 || mm[0].To != 310*unit.Millimetre || mm[1].To != 420*unit.Millimetre {
		t.Errorf("metric strips are %v", mm)
	}
	if Strips(nil, unit.Foot, unit.Imperial) != nil {
		t.Error("a tape of no marks has strips")
	}
}

// Of a tape of 103 steps, in parts of 50, the last would be 3: it takes one of the part before.
// Of 104 it is 4, which is long enough; in parts of 6 none is shortened for it.
func TestNoStripIsASnippet(t *testing.T) {
	for _, tt := range []struct {
		steps, long unit.Length
		want        []unit.Length // where the parts end
	}{
		{103, 50, []unit.Length{50, 99, 103}}, {104, 50, []unit.Length{50, 100, 104}}, {100, 50, []unit.Length{50, 100}}, {13, 6, []unit.Length{6, 12, 13}},
	} {
		var ends []unit.Length
		from := unit.Length(0)
		for _, s := range Strips([]Mark{{At: (tt.steps - 2) * unit.Inch}}, tt.long*unit.Inch, unit.Imperial) {
			if s.From != from {
				t.Errorf("of %d steps one begins at %v, want %v", tt.steps, s.From, from)
			}
			from, ends = s.To, append(ends, s.To/unit.Inch)
		}
		if !slices.Equal(ends, tt.want) {
			t.Errorf("of %d steps in parts of %d: ends at %v, want %v", tt.steps, tt.long, ends, tt.want)
		}
	}
}
