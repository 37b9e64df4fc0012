package inside

import (
	"math"
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// seenInGauge is what a gauge shows: the tops and bottoms of its bands from below, the brim,
// what is hatched over it and what is written.
type seenInGauge struct {
	bands     []scene.Rect
	brim      float64
	isRed     bool
	hatched   float64 // height of all that is over the brim
	written   []string
	outermost float64 // the least Y of any band
}

func gaugeOf(t *testing.T, volume unit.Volume, contents string) (seen seenInGauge, r box.Result) {
	t.Helper()
	c, err := box.ParseContents(contents)
	if err != nil {
		t.Fatal(err)
	}
	figures, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	r, err = box.Fill(figures, box.Space{Parts: []box.Part{{What: words.New("plain", "box"), Volume: volume}}}, c)
	if err != nil {
		t.Fatal(err)
	}
	theme := &render.Light
	seen.outermost = math.Inf(1)
	colors := map[scene.Color]bool{}
	for k := ofConductors; k <= ofDevices; k++ {
		colors[k.color(theme)] = true
	}
	for _, it := range NewGauge(r, words.Voice{}).draw(gaugeWidth, gaugeHeight, theme) {
		switch it := it.(type) {
		case scene.Fill:
			b := it.Path.Bounds()
			if colors[it.Color] && b.Height() > gaugeText+1.5 || colors[it.Color] && b.Width() > gaugeWidth-2*(gaugeBrow+gaugeWall)-3 {
				seen.bands = append(seen.bands, b)
				seen.outermost = min(seen.outermost, b.Min.Y)
			}
		case scene.Stroke:
			if it.Pen.Dash != nil {
				seen.brim, seen.isRed = it.Path.Bounds().Min.Y, it.Pen.Color == theme.Stop
			}
		case scene.Group:
			seen.hatched += it.Layer.Clip.Height()
		case scene.Run:
			seen.written = append(seen.written, it.Text)
		}
	}
	return seen, r
}

// TestTheGaugeIsToScale: bands are as high as what they stand for, the brim as high as the
// box's volume, and what is over it is hatched. The volumes are those of 314.16(B) and its
// table: 12 AWG takes 2.25 in³, grounds and clamps one of the largest, a yoke two.
func TestTheGaugeIsToScale(t *testing.T) {
	const contents = "cable 12/2 x2; clamps; device 12" // 4 + 1 + 1 + 2 allowances of 2.25: 18.00
	for _, tt := range []struct {
		name   string
		volume unit.Volume
		over   float64 // in³
	}{
		{"exactly full", 18 * unit.CubicInch, 0},
		{"a quarter over", 18*unit.CubicInch - unit.CubicInch/4, .25},
		{"half over", 12 * unit.CubicInch, 6},
		{"half full", 36 * unit.CubicInch, 0},
	} {
		seen, r := gaugeOf(t, tt.volume, contents)
		if r.Required != 18*unit.CubicInch {
			t.Fatalf("%s: the box needs %v", tt.name, r.Required)
		}
		most := max(float64(tt.volume), float64(r.Required)) / float64(unit.CubicInch)
		perInch := (gaugeHeight - gaugeAbove - gaugeWall - 2) / most
		foot := float64(gaugeHeight - gaugeWall - 1)
		if want := foot - float64(tt.volume)/float64(unit.CubicInch)*perInch; math.Abs(seen.brim-want) > .01 {
			t.Errorf("%s: the brim is at %.2f, not %.2f", tt.name, seen.brim, want)
		}
		if want := foot - 18*perInch; math.Abs(seen.outermost-want) > .01 {
			t.Errorf("%s: the contents reach to %.2f, not %.2f", tt.name, seen.outermost, want)
		}
		// Conductors 9, clamps 2.25, grounds 2.25, the yoke 4.5.
		for i, in := range []float64{9, 2.25, 2.25, 4.5} {
			if len(seen.bands) != 4 {
				t.Fatalf("%s: %d bands", tt.name, len(seen.bands))
			}
			if got := seen.bands[i].Height() + 1; math.Abs(got-in*perInch) > .01 {
				t.Errorf("%s: band %d is %.2f high, not %.2f", tt.name, i, got, in*perInch)
			}
		}
		if got := tt.over > 0; seen.isRed != got {
			t.Errorf("%s: the brim is drawn as one that is passed: %v", tt.name, seen.isRed)
		}
		if tt.over > 1 && math.Abs(seen.hatched-tt.over*perInch) > 2 || tt.over == 0 && seen.hatched > 0 {
			t.Errorf("%s: %.2f of the height is hatched, not %.2f", tt.name, seen.hatched, tt.over*perInch)
		}
	}
}

// TestTheGaugeNamesWhatHasRoom: a band that is high enough says what it is.
func TestTheGaugeNamesWhatHasRoom(t *testing.T) {
	seen, _ := gaugeOf(t, 18*unit.CubicInch, "cable 12/2 x2; clamps; device 12")
	has := map[string]bool{}
	for _, w := range seen.written {
		has[w] = true
	}
	for _, w := range []string{"4 conductors", "clamps", "grounds", "1 yoke"} {
		if !has[w] {
			t.Errorf("%q is not written: %v", w, seen.written)
		}
	}
	if seen, _ = gaugeOf(t, 200*unit.CubicInch, "cable 14/2"); len(seen.written) > 0 {
		t.Errorf("bands too low for it are named: %v", seen.written)
	}
}
