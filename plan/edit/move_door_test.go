package edit_test

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"testing"
)

// The shed's door is from 1 to 4 ft of the south side; its switch stands 4-1/2 ft along.
func TestADoorTakesItsSwitchAlong(t *testing.T) {
	p := after(t, shed(t), edit.MoveOpening{ID: n2, To: plan.OnFace(south, 4*ft+6*in)}, edit.Removing(panel))
	p = after(t, p, arrange.MoveDoor{ID: door, To: plan.OnFace(south, 3*ft), With: []plan.ID{n2}})
	if b, _ := p.Break(door); b.At.Along != 3*ft {
		t.Errorf("the door is at %v", b.At.Along)
	}
	if got := anchorIn(t, p, n2); got != plan.OnFace(south, 6*ft+6*in) {
		t.Errorf("its switch is at %+v, want 2 ft farther along", got)
	}
	p = after(t, p, arrange.MoveDoor{ID: door, To: plan.OnFace(east, 7*ft), With: []plan.ID{n2}})
	if got := anchorIn(t, p, n2); got != plan.OnFace(south, 6*ft+6*in) {
		t.Errorf("with the door on another face its switch went to %+v", got)
	}
}
