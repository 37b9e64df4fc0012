package fill_test

import (
	"studbay/fill"
	"studbay/fill/rule"
	"testing"
)

func TestRoomsComeInTheOrderOfTheirWorst(t *testing.T) {
	got := fill.ByRoom([]rule.Finding{{Room: "r2", Rule: "a"}, {Rule: "b"}, {Room: "r1", Rule: "c"}, {Room: "r2", Rule: "d"}})
	want := [][]string{{"a", "d"}, {"b"}, {"c"}}
	if len(got) != len(want) {
		t.Fatalf("%d groups, want %d", len(got), len(want))
	}
	for i, group := range got {
		if len(group) != len(want[i]) {
			t.Fatalf("group %d has %d findings, want %d", i, len(group), len(want[i]))
		}
		for k, f := range group {
			if f.Rule != want[i][k] {
				t.Errorf("finding %d of group %d is of %s, want %s", k, i, f.Rule, want[i][k])
			}
		}
	}
}
