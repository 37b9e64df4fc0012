package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// An opening aimed at an open side is refused, and so is a door: neither goes to the wall
// opposite.
func TestWhatIsAimedAtAnOpenSideIsRefused(t *testing.T) {
	f := newFake(t)
	r := f.square()
	open := *r.Sides[0]
	open.Kind = plan.SideOpen
	if err := f.Do(edit.ChangeSide{Side: open}); err != nil {
		t.Fatal(err)
	}
	f.click(&opening{}, at(40, 6))
	if len(f.openings()) != 0 || f.refused.ID != "tool.opening.open" {
		t.Errorf("%d openings, refused by %q", len(f.openings()), f.refused)
	}
	f.click(&brk{kind: plan.BreakDoor}, at(40, 6))
	if n := f.Plan().Level(ground).Breaks.Len(); n != 0 || f.refused.ID != "tool.break.nowhere" {
		t.Errorf("%d doors, refused by %q", n, f.refused)
	}
}

// What nothing else snaps lands on 1/2 in or 10 mm.
func TestAClickLandsOnTheStepOfThePlan(t *testing.T) {
	for _, tt := range []struct {
		isMetric bool
		at       Pointer
		want     unit.Length
	}{
		{false, at(40.3, 6), 40*unit.Inch + unit.Inch/2},
		{false, at(40.2, 6), 40 * unit.Inch},
		{true, Pointer{At: geom.Point{X: 1016 * unit.Millimetre, Y: 100 * unit.Millimetre}, Reach: 20 * unit.Millimetre}, 1020 * unit.Millimetre},
	} {
		f := newFake(t)
		f.isMetric = tt.isMetric
		f.square()
		f.click(&opening{}, tt.at)
		if len(f.openings()) != 1 {
			t.Fatalf("no opening: %v, said %q", f.failed, f.said)
		}
		if got := f.openings()[0].At.Along; got != tt.want {
			t.Errorf("metric %v: it is at %v, want %v", tt.isMetric, got, tt.want)
		}
	}
}

// The faces and corners of the level that shows as a ghost are snapped to.
func TestTheGhostIsSnappedTo(t *testing.T) {
	f := newFake(t)
	f.ghost = "vbbbbbbbb"
	below := plan.NewRoom("rbbbbbbbb", "Hall", plan.UseHall,
		geom.Polygon{{X: inch(30), Y: inch(30)}, {X: inch(130), Y: inch(30)}, {X: inch(130), Y: inch(110)}, {X: inch(30), Y: inch(110)}},
		[]plan.ID{"sabbbbbbb", "sbbbbbbbb", "scbbbbbbb", "sdbbbbbbb"})
	below.Ceiling = 8 * unit.Foot
	for _, e := range []edit.Edit{edit.AddLevel{ID: f.ghost, Title: "Below", Elevation: -9 * unit.Foot}, edit.AddRoom{Level: f.ghost, Room: below}} {
		if err := f.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	r := &room{}
	f.click(r, at(31, 28.5))
	if len(r.corners) != 1 || r.corners[0] != (geom.Point{X: inch(30), Y: inch(30)}) {
		t.Fatalf("the first corner is at %v, want that of the hall below", r.corners)
	}
	f.ghost = ""
	r = &room{}
	f.click(r, at(31, 28.5))
	if r.corners[0] == (geom.Point{X: inch(30), Y: inch(30)}) {
		t.Error("a level that does not show is snapped to")
	}
}

// A door dragged with the control key takes its switch along, without it goes alone.
func TestADraggedDoorTakesItsSwitchAlong(t *testing.T) {
	for _, asked := range []bool{false, true} {
		f, r := furnished(t)
		var door *plan.Break
		for b := range f.Plan().Level(ground).Breaks.All() {
			door = b
		}
		f.kind = "switch"
		o := &opening{}
		o.Move(f, at(20, 119)) // the south face runs to the left
		f.click(o, at(20, 119))
		var before *plan.Opening
		for _, x := range f.openings() {
			if x.Kind == "switch" {
				before = x
			}
		}
		if before == nil || before.At.Host != r.Sides[2].ID {
			t.Fatalf("the switch is %+v, said %q", before, f.said)
		}
		from, to := at(50, 120), at(70, 120)
		from.Control, to.Control = asked, asked
		f.chosen = nil
		f.drag(&choose{}, from, to)
		now, _ := f.Plan().Break(door.ID)
		after, _ := f.Plan().Opening(before.ID)
		moved, want := now.At.Along-door.At.Along, unit.Length(0)
		if asked {
			want = moved
		}
		if moved == 0 || after.At.Along-before.At.Along != want {
			t.Errorf("asked %v: the door went %v, its switch %v", asked, moved, after.At.Along-before.At.Along)
		}
	}
}
