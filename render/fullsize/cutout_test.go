package fullsize_test

import (
	"math"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/fullsize"
	"studbay/render/scene"
)

// TestWhatIsRoundACutOut: a one-gang plate is 2-3/4 in wide (archtoolbox.com, electrical
// faceplate types and dimensions); the heads of a ring's screws are 3/8 in from two corners of a
// box of 4 in (common practice), so 1-5/8 from its middle; a nail-on box has none behind board.
func TestWhatIsRoundACutOut(t *testing.T) {
	for _, tt := range []struct {
		code  string
		heads []scene.Point
	}{
		{"SQ3", []scene.Point{{X: -1.625 * 25.4, Y: -1.625 * 25.4}, {X: 1.625 * 25.4, Y: 1.625 * 25.4}}},
		{"PN2", nil},
	} {
		c := fullsize.CutOutOf(&plan.Opening{Kind: "duplex", Gangs: 1, Assembly: plan.Assembly{Code: tt.code}, At: plan.OnFace("saaaaaaaa", unit.Foot)})
		if c.Plate.Width != 11*unit.Inch/4 {
			t.Errorf("%s: a plate %v wide", tt.code, c.Plate.Width)
		}
		heads := c.Heads()
		if len(heads) != len(tt.heads) {
			t.Errorf("%s: %d heads, want %d", tt.code, len(heads), len(tt.heads))
			continue
		}
		for i, at := range heads {
			if math.Hypot(at.X-tt.heads[i].X, at.Y-tt.heads[i].Y) > 25.4/64 {
				t.Errorf("%s: a head at %v, want %v", tt.code, at, tt.heads[i])
			}
		}
	}
}

// TestTilesMeetEdgeToEdge: a hatch of 22 by 30 in on pages of 200 by 260 mm takes as many tiles
// as its extent asks for, each next beginning where the one before ends.
func TestTilesMeetEdgeToEdge(t *testing.T) {
	c := fullsize.CutOut{Outline: part.Outline{Width: 22 * unit.Inch, Height: 30 * unit.Inch}}
	wide, tall := c.Extent(1)
	all, w, h := c.Tiles(1, 200, 260)
	if len(all) != 3*3 || w > 200 || h > 260 { // 566.8 of 200 and 770 of 260
		t.Fatalf("%d tiles of %.1f × %.1f", len(all), w, h)
	}
	covered := 0.0
	for _, tile := range all {
		left, top := tile.Middle.X-w/2, tile.Middle.Y-h/2
		if math.Abs(left-(float64(tile.Across)*w-wide/2)) > 1e-9 || math.Abs(top-(float64(tile.Down)*h-tall/2)) > 1e-9 {
			t.Errorf("tile %d across, %d down begins at %.2f, %.2f", tile.Across, tile.Down, left, top)
		}
		covered += w * h
	}
	if math.Abs(covered-wide*tall) > 1e-6 {
		t.Errorf("they cover %.1f of %.1f", covered, wide*tall)
	}
}
