package edit_test

import (
	"errors"
	"testing"

	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// The room is 12 by 10 ft. Taped as 12, 9, 12 and 9 its diagonal is 15: 3, 4, 5 thrice.
func TestTapeRoom(t *testing.T) {
	p, err := (edit.AddOpening{Opening: plantest.Duplex()}).Apply(plantest.Bedroom())
	if err != nil {
		t.Fatal(err)
	}
	taped := geom.Taped{First: 12 * unit.Foot, Second: 9 * unit.Foot, Third: 12 * unit.Foot, Fourth: 9 * unit.Foot}
	some, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: taped}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	r, _ := some.Room("raaaaaaaa")
	was, _ := p.Room("raaaaaaaa")
	if r.Taped != taped || r.Sides[2].Start != was.Sides[2].Start {
		t.Errorf("without a diagonal the readings are kept and nothing else: %+v, corner at %v", r.Taped, r.Sides[2].Start)
	}
	taped.Diagonal = 15 * unit.Foot
	laid, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: taped}).Apply(some)
	if err != nil {
		t.Fatal(err)
	}
	r, _ = laid.Room("raaaaaaaa")
	for i, want := range []unit.Length{taped.First, taped.Second, taped.Third, taped.Fourth} {
		if got := r.Segment(i).Length(); (got - want).Abs() > 4 {
			t.Errorf("side %d is %v, want %v", i, got, want)
		}
	}
	if r.Taped != taped || r.Sides[0].Start != was.Sides[0].Start || (r.Sides[2].Start.Y-9*unit.Foot).Abs() > 2 {
		t.Errorf("laid out as %v from %v, taped %+v", r.Sides[2].Start, r.Sides[0].Start, r.Taped)
	}
	if o, _ := laid.Opening("oaaaaaaaa"); o.At.Along != 4*unit.Foot {
		t.Errorf("the receptacle went to %v", o.At.Along)
	}
	moved, err := (edit.SetSideLength{Side: "saaaaaaaa", Length: 11 * unit.Foot}).Apply(laid)
	if err != nil {
		t.Fatal(err)
	}
	if r, _ := moved.Room("raaaaaaaa"); r.Taped != (geom.Taped{}) {
		t.Error("a room of another shape is not as taped")
	}
}

func TestTapeRoomRefuses(t *testing.T) {
	p := plantest.Bedroom()
	whole := geom.Taped{First: 12 * unit.Foot, Second: 9 * unit.Foot, Third: 12 * unit.Foot, Fourth: 9 * unit.Foot, Diagonal: 15 * unit.Foot}
	if _, err := (edit.TapeRoom{Room: "rzzzzzzzz", Taped: whole}).Apply(p); !errors.Is(err, plan.ErrGone) {
		t.Errorf("of no room: %v", err)
	}
	open := whole
	open.Diagonal = 30 * unit.Foot
	if _, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: open}).Apply(p); !errors.Is(err, plan.ErrNoRoom) {
		t.Errorf("lengths that do not meet: %v", err)
	}
	below := whole
	below.Other = -1
	if _, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: below}).Apply(p); err == nil {
		t.Error("a diagonal below zero")
	}
	five, err := (edit.SplitSide{Side: "saaaaaaaa", At: 5 * unit.Foot, NewID: "seeeeeeee"}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: whole}).Apply(five); err == nil {
		t.Error("a room of five sides")
	}
}

// What was taped of a room out of square lays out its mirror image too: typed again as they are
// kept then, the readings move no corner.
func TestAMirroredRoomIsAsTaped(t *testing.T) {
	taped := geom.Taped{First: 12 * unit.Foot, Second: 9 * unit.Foot, Third: 11 * unit.Foot, Fourth: 10 * unit.Foot, Diagonal: 15 * unit.Foot, Other: 14 * unit.Foot}
	p, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: taped}).Apply(plantest.Bedroom())
	if err != nil {
		t.Fatal(err)
	}
	mirrored, err := (arrange.Mirror{Things: []plan.ID{"raaaaaaaa"}}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	r, _ := mirrored.Room("raaaaaaaa")
	if want := (geom.Taped{First: 10 * unit.Foot, Second: 11 * unit.Foot, Third: 9 * unit.Foot, Fourth: 12 * unit.Foot, Diagonal: 15 * unit.Foot, Other: 14 * unit.Foot}); r.Taped != want {
		t.Errorf("kept as %+v, want %+v", r.Taped, want)
	}
	again, err := (edit.TapeRoom{Room: "raaaaaaaa", Taped: r.Taped}).Apply(mirrored)
	if err != nil {
		t.Fatal(err)
	}
	now, _ := again.Room("raaaaaaaa")
	for i := range r.Sides {
		if off := r.Sides[i].Start.Distance(now.Sides[i].Start); off > 4 {
			t.Errorf("corner %d moved by %v", i, off)
		}
	}
}
