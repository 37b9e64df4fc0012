package flat_test

import (
	"testing"

	"studbay/fill/flat"
	"studbay/plan"
	"studbay/plan/geom"
)

// The walls of a U, of which the arms are 20 in wide and the bottom 20 deep, and of the same
// turned on its side: the nearest to either hand is found, also past which others lie.
func TestTheNearestOfWallsBehindOneAnother(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }
	ids := []plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6", "saaaaaaa7", "saaaaaaa8", "saaaaaaa9"}
	u := geom.Polygon{p(0, 0), p(20, 0), p(20, 80), p(80, 80), p(80, 0), p(100, 0), p(100, 100), p(0, 100)}
	var turned geom.Polygon // x for y, and so the other way round
	for i := range u {
		q := u[len(u)-1-i]
		turned = append(turned, geom.Point{X: q.Y, Y: q.X})
	}
	for _, tt := range []struct {
		x, y                  float64
		left, right, up, down float64
	}{
		{8, 30, 8, 12, 30, 70}, {92, 30, 12, 8, 30, 70}, {50, 88, 50, 50, 8, 12},
	} {
		for _, isTurned := range []bool{false, true} {
			at, want, corners := p(tt.x, tt.y), []float64{tt.left, tt.right, tt.up, tt.down}, u
			if isTurned {
				at, want, corners = p(tt.y, tt.x), []float64{tt.up, tt.down, tt.left, tt.right}, turned
			}
			r := plan.NewRoom("raaaaaaa2", "U", plan.UseLiving, corners, ids)
			got := flat.ToWalls(&r, at)
			if len(got) != 4 {
				t.Errorf("from %v: %+v", at, got)
				continue
			}
			for i, d := range got {
				if d.Length != in(want[i]) {
					t.Errorf("from %v, way %d: %v, want %v", at, i, d.Length, want[i])
				}
			}
		}
	}
	// Without walls to either hand in the left arm no tape reaches past it to the right one.
	r := plan.NewRoom("raaaaaaa2", "U", plan.UseLiving, u, ids)
	r.Sides[7].Kind, r.Sides[1].Kind = plan.SideOpen, plan.SideOpen
	for _, part := range []plan.Part{plan.PartCeiling, plan.PartFloor} {
		if got := flat.NearWalls(&r, part, p(8, 30)); len(got) != 1 || got[0].Wall != ids[0] || got[0].Length != in(30) {
			t.Errorf("%+v, want 30 up alone", got)
		}
	}
	for kind, want := range map[plan.SideKind][2]bool{plan.SideWall: {true, true}, plan.SideGlass: {true, true}, plan.SideRailing: {false, true}, plan.SideOpen: {false, false}} {
		s := &plan.Side{Kind: kind}
		if got := [2]bool{flat.StandsAt(s, plan.PartCeiling), flat.StandsAt(s, plan.PartFloor)}; got != want {
			t.Errorf("%s: at a ceiling, at a floor %v, want %v", kind, got, want)
		}
	}
}

// A wall stands before a place as far as a hair past its ends, and no nanometer farther: an L of
// 120 by 100 in whose lower right quarter is cut away.
func TestAHairPastTheEndOfAWall(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }
	ids := []plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6", "saaaaaaa7"}
	r := plan.NewRoom("raaaaaaa2", "Ell", plan.UseLiving, geom.Polygon{p(0, 0), p(120, 0), p(120, 50), p(60, 50), p(60, 100), p(0, 100)}, ids)
	for _, tt := range []struct {
		at   geom.Point
		side int
	}{
		{p(60, 47).Sub(geom.Point{X: plan.Slack}), 2}, {p(60, 47).Sub(geom.Point{X: plan.Slack + 1}), 0},
		{p(40, 50).Sub(geom.Point{Y: plan.Slack}), 3}, {p(40, 50).Sub(geom.Point{Y: plan.Slack + 1}), 5},
	} {
		if got := flat.NearWalls(&r, plan.PartCeiling, tt.at); len(got) == 0 || got[0].Wall != ids[tt.side] {
			t.Errorf("from %v: %+v, want side %d first", tt.at, got, tt.side)
		}
	}
}
