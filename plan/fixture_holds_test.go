package plan

import "testing"

// TestABackIsFreeOnTheFloorAlone: what stands at a wall or on another thing has its back there.
func TestABackIsFreeOnTheFloorAlone(t *testing.T) {
	for _, at := range []Part{PartFloor, PartFace, PartTop} {
		f := Fixture{At: Anchor{Part: at}}
		for _, face := range []Part{PartFront, PartBack, PartLeft, PartRight, PartTop} {
			want := face != PartBack || at == PartFloor
			if got := f.Holds(face); got != want {
				t.Errorf("at %s, its %s: %v, want %v", at, face, got, want)
			}
		}
	}
}
