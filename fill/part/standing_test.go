package part

import "testing"

// A cable that is fished hangs from the clamp of its box, or from the connector that one of
// metal is entered through (314.17).
func TestWhatHoldsAFishedCable(t *testing.T) {
	for _, tt := range []struct {
		name string
		box  Box
		want bool
	}{
		{"plastic without a clamp", Box{Material: Plastic}, false},
		{"plastic with one", Box{Material: Plastic, Clamps: true}, true},
		{"plastic with tabs", Box{Material: Plastic, Fit: Fit{GripsCable: true}}, true},
		{"steel", Box{Material: Steel}, true},
	} {
		if got := tt.box.HoldsFished(); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
	for _, id := range []string{"ow1-14", "ow1-17", "ow1-20", "ow2-25", "ow2-34", "owr-14"} {
		if !All().Box(id).HoldsFished() {
			t.Errorf("%s holds no cable", id)
		}
	}
	if All().Box("pn1-18").HoldsFished() {
		t.Error("a nail-on box of one gang holds a cable that is fished")
	}
}
