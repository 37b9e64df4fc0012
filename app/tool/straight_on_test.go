package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// flowing adds two rooms that flow together through an open side: 12 ft and 10 ft of one
// wall, of which the second room has the right part. It returns their upper sides.
func (f *fake) flowing() (first, second *plan.Side) {
	f.drag(&room{}, at(0, 0), at(144, 120))
	one := f.rooms()[0]
	open := *one.Sides[1]
	open.Kind = plan.SideOpen
	if err := f.Do(edit.ChangeSide{Side: open}); err != nil {
		f.t.Fatal(err)
	}
	corners := geom.Polygon{{X: inch(144)}, {X: inch(264)}, {X: inch(264), Y: inch(120)}, {X: inch(144), Y: inch(120)}}
	two := plan.NewRoom(f.NewID(plan.KindRoom), "Dining", plan.UseDining, corners, f.ids.Row(plan.KindSide, 4))
	two.Ceiling = 8 * unit.Foot
	two.Sides[3].Kind = plan.SideOpen
	if err := f.Do(edit.AddRoom{Level: ground, Room: two}); err != nil {
		f.t.Fatal(err)
	}
	return one.Sides[0], two.Sides[0]
}

// A typed distance, and a round one that the pointer rests at, go from the corner that the
// wall ends in and never from the end of a room's line that goes straight on: read off two
// rooms with one wall of 12 and 10 ft.
func TestATypedDistanceIsFromWhereTheWallEnds(t *testing.T) {
	for _, tt := range []struct {
		name   string
		at     Pointer
		typed  string
		second bool // it comes to sit in the second room
		along  float64
	}{
		{"from the left end of the first", at(40, 6), "3'", false, 36},
		{"past the end of the first room's line, from the right end of the second", at(140, 2), "9'", true, 12},
		{"on into the first room from there", at(140, 2), "11'", false, 132},
		{"in the second room from its right end", at(250, 6), "2'", true, 96},
		{"on into the second room from the left end of the first", at(100, 6), "13'", true, 12},
	} {
		f, o := newFake(t), &opening{}
		first, second := f.flowing()
		o.Move(f, tt.at)
		f.typed(o, tt.typed)
		want := first.ID
		if tt.second {
			want = second.ID
		}
		if got := f.openings(); len(got) != 1 || got[0].At != plan.OnFace(want, inch(tt.along)) {
			t.Errorf("%s: %+v, said %q, want it %v in along %s", tt.name, got, f.said, tt.along, want)
		}
		f.check()
	}
	f, o := newFake(t), &opening{}
	f.flowing()
	if o.Move(f, at(155.7, 6)); f.preview.Snap.String() != `13' 0" from the left corner` {
		t.Errorf("it rests %q, want 13 ft from where the wall begins, 1 ft into the second room", f.preview.Snap)
	}
}
