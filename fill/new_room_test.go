package fill_test

import (
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestAUsualRoom: 1/2 in board on 2×4 studs (3-1/2 in deep) at 16 in and a ceiling at 8 ft;
// metric plans have the sizes that such parts are sold in (common practice).
func TestAUsualRoom(t *testing.T) {
	for _, tt := range []struct {
		units                          unit.System
		ceiling, spacing, depth, board unit.Length
	}{
		{unit.Imperial, 96 * unit.Inch, 16 * unit.Inch, 7 * unit.Inch / 2, unit.Inch / 2},
		{unit.Metric, 2400 * unit.Millimetre, 400 * unit.Millimetre, 89 * unit.Millimetre, unit.Inch / 2},
	} {
		corners := geom.Polygon{{}, {X: 3 * unit.Metre}, {X: 3 * unit.Metre, Y: 3 * unit.Metre}}
		r := fill.NewRoom(tt.units, "raaaaaaaa", "Bedroom", corners, []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc"})
		if r.Ceiling != tt.ceiling || len(r.Sides) != 3 || r.Use != plan.UseBedroom {
			t.Errorf("%v: %+v", tt.units, r)
		}
		for _, s := range r.Sides {
			if s.Studs.Spacing != tt.spacing || s.Studs.Depth != tt.depth || plan.Thickness(s.Finish) != tt.board || s.Kind != plan.SideWall {
				t.Errorf("%v: side %+v", tt.units, s)
			}
		}
	}
}

// TestTheUseFollowsTheNameUntilSomebodyChoosesIt: a name tells a use, and one that tells
// none takes none away.
func TestTheUseFollowsTheNameUntilSomebodyChoosesIt(t *testing.T) {
	for _, tt := range []struct {
		name string
		use  plan.Use
		next string
		want plan.Use
	}{
		{"Room 1", plan.UseUnknown, "Kitchen", plan.UseKitchen},
		{"Kitchen", plan.UseKitchen, "Bath", plan.UseBath},
		{"Kitchen", plan.UseDen, "Bath", ""},
		{"Room 1", plan.UseDen, "Bath", ""},
		{"Kitchen", plan.UseKitchen, "Zebra", ""},
	} {
		r := plan.Room{ID: "raaaaaaaa", Name: tt.name, Use: tt.use}
		if got := fill.RenameRoom(&r, tt.next); got.Use != tt.want || got.Title != tt.next {
			t.Errorf("%s of use %s becomes %s: %+v, want the use %q", tt.name, tt.use, tt.next, got, tt.want)
		}
	}
}
