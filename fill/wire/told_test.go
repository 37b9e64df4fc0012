package wire

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestWhatIsToldOfACircuit: how many cables it has, how long they are in all, how many are
// drilled, and how many would be but for a door.
func TestWhatIsToldOfACircuit(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	r.Break(plan.BreakDoor, 0, 72, 32)
	one := r.Opening("duplex", r.On(0, 24)).ID
	two := r.Opening("duplex", r.On(0, 48)).ID
	past := r.Opening("duplex", r.On(0, 120)).ID
	light := r.Opening("ceiling-light", r.Ceiling(24, 0)).ID
	drilled, over, doors := h.Circuit(15), h.Circuit(15), h.Circuit(20)
	h.Cable(one, two, 14, 2, drilled)   // 24 + 8 + 8 + 24 = 64 in: 5 ft 6 in
	h.Cable(one, light, 14, 2, drilled) // 0 + 80 + 24 = 104 in: 9 ft
	h.Cable(one, light, 14, 2, over)
	h.Cable(one, two, 12, 2, doors)
	h.Cable(two, past, 12, 2, doors) // 72 + 80 + 80 + 24 = 256 in: 21 ft 6 in
	ix := index.New(h.Made())
	for _, tt := range []struct {
		of   *plan.Circuit
		want string
	}{
		{over, "Circuit 2: 1 cable, 9' 0\", over the ceiling"},
		{drilled, "Circuit 1: 2 cables, 14' 6\"; 1 drilled through studs 2' 0\" above the floor, 1 over the ceiling"},
		{doors, "Circuit 3: 2 cables, 27' 0\"; 1 drilled through studs 2' 0\" above the floor, 1 over the ceiling, 1 of them past a door"},
	} {
		if got := Told(ix, tt.of).String(); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}
