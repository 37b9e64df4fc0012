package tell

import (
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render/rendertest"
)

// What a client draws lands on the step that is laid out by hand, 1 in or 1 cm, and within its
// face; what is hardly off stays.
func TestWhatIsDrawnIsSettled(t *testing.T) {
	in := rendertest.In
	for _, metric := range []bool{false, true} {
		b := rendertest.NewBuilder(t)
		if metric {
			h := *b.Plan.Header
			h.Units = "metric"
			b.Plan.Header = &h
		}
		room := b.Box("Den", plan.UseDen, 0, 0, 144, 119.7)
		o, light := b.On("D1", "duplex", room, 0, 36, 16), b.Ceiling("D2", "ceiling-light", room, 72, 60)
		ix := b.Index()
		step := unit.Inch
		if metric {
			step = unit.Centimetre
		}
		at, height, isOff := Settled(ix, o.ID, plan.OnFace(o.At.Host, in(60.3)), in(40.2))
		if !isOff || at.Along%step != 0 || height%step != 0 || (at.Along-in(60.3)).Abs() > step/2 || (height-in(40.2)).Abs() > step/2 {
			t.Errorf("metric %v: at %v, %v up, off %v; want steps of %v", metric, at.Along, height, isOff, step)
		}
		side := room.Sides[1].ID
		if at, _, _ := Settled(ix, o.ID, plan.OnFace(side, in(119.69)), in(40)); at.Along > in(119.7) || at.Along%step != 0 {
			t.Errorf("metric %v: at the end of a wall it lands at %v", metric, at.Along)
		}
		room.Ceiling = in(95.7)
		if at, height, _ := Settled(ix, o.ID, plan.OnFace(side, in(-0.4)), in(95.69)); height > in(95.7) || height%step != 0 || at.Along != 0 {
			t.Errorf("metric %v: under the ceiling in a corner it lands at %v, %v up", metric, at.Along, height)
		}
		over := plan.OnCeiling(room.ID, geom.Point{X: in(80.3), Y: in(60.4)})
		if at, height, isOff := Settled(ix, light.ID, over, in(9)); !isOff || at.At.X%step != 0 || at.At.Y%step != 0 || height != 0 {
			t.Errorf("metric %v: at the ceiling it lands at %v, %v up, off %v", metric, at.At, height, isOff)
		}
		if at, height, isOff := Settled(ix, o.ID, plan.OnFace(o.At.Host, in(38)), in(14)); isOff || at != o.At || height != frame.CentreHeight(o, room) {
			t.Errorf("metric %v: hardly off, it lands at %v, %v up, off %v", metric, at, height, isOff)
		}
	}
}
