package code

import "testing"

// TestWhatIsConfirmedOf2026: what courses on its changes tell of islands, 210.52(C)(2) and
// (4), and of cabinets, (A)(2); nothing else of it was seen. What is practice, or of the
// residential code, is none of its figures. Of the editions before, all is.
func TestWhatIsConfirmedOf2026(t *testing.T) {
	newest, err := Edition("2026")
	if err != nil {
		t.Fatal(err)
	}
	for figure, want := range map[string]bool{
		"island-receptacles": true, "island-by-area": true, "island-wired": true, "island-below-banned": true,
		"island-below-clear": true, "counter-below-island": true, "worked-cabinet-breaks": true,
		"switch-reach": true, "height-step": true, "smoke-alarm": true, "smoke-bath": true, "carbon-alarm": true,
		"wall-reach": false, "wall-space-min": false, "counter-reach": false, "counter-above-max": false, "conductor": false,
		"allowance-12": false, "terminal-block": false, "ground-fault": false, "arc-fault": false, "lit-room": false, "box-set-back": false,
	} {
		if newest.IsConfirmed(figure) != want {
			t.Errorf("%s of 2026 is confirmed: %v", figure, !want)
		}
		for _, name := range Whole() {
			if f, _ := Edition(name); !f.IsConfirmed(figure) {
				t.Errorf("%s of %s is not confirmed", figure, name)
			}
		}
	}
	if newest.IsWhole() {
		t.Error("2026 is whole")
	}
	amended, err := newest.WithAmendments([]Amendment{{Figure: "wall-reach", Value: "72", Reason: "read in the county's copy"}})
	if err != nil || amended.IsConfirmed("wall-reach") {
		t.Errorf("an amendment confirms a reach: %v", err)
	}
}
