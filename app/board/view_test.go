package board

import (
	"fmt"
	"image"
	"testing"

	"fyne.io/fyne/v2"
	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

func TestViewRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := View{Zoom: rapid.Float64Range(leastZoom, mostZoom).Draw(t, "zoom"), At: image.Pt(rapid.IntRange(-5000, 5000).Draw(t, "x"), rapid.IntRange(-5000, 5000).Draw(t, "y"))}
		p := geom.Point{X: unit.Millimetre * unit.Length(rapid.IntRange(-30_000, 30_000).Draw(t, "px")), Y: unit.Millimetre * unit.Length(rapid.IntRange(-30_000, 30_000).Draw(t, "py"))}
		x, y := v.Screen(p)
		if got := v.Plan(x, y); got.Distance(p) > unit.Millimetre/100 {
			t.Fatalf("%v comes back as %v", p, got)
		}
		sx, sy := float64(rapid.IntRange(0, 1500).Draw(t, "sx")), float64(rapid.IntRange(0, 900).Draw(t, "sy"))
		under := v.Plan(sx, sy)
		z := v.Zoomed(v.Zoom*rapid.Float64Range(0.3, 4).Draw(t, "by"), 1, sx, sy)
		if gx, gy := z.Screen(under); gx-sx > 0.51 || sx-gx > 0.51 || gy-sy > 0.51 || sy-gy > 0.51 {
			t.Fatalf("zoomed about %v, %v the place went to %v, %v", sx, sy, gx, gy)
		}
		if z.Zoom < leastZoom || z.Zoom > mostZoom {
			t.Fatalf("zoom %v is out of bounds", z.Zoom)
		}
	})
}

func TestFittedShowsAll(t *testing.T) {
	on := image.Rect(22, 22, 1000, 700)
	for _, box := range []geom.Box{
		geom.BoxOf(geom.Point{}, geom.Point{X: 40 * unit.Foot, Y: 30 * unit.Foot}),
		geom.BoxOf(geom.Point{X: -9 * unit.Foot}, geom.Point{X: 3 * unit.Foot, Y: 90 * unit.Foot}),
		geom.BoxOf(geom.Point{X: unit.Foot, Y: unit.Foot}),
	} {
		v := Fitted(box, on, mostZoom, 1)
		for _, p := range box.Corners() {
			if x, y := v.Screen(p); !image.Pt(int(x), int(y)).In(on) {
				t.Errorf("corner %v of %v stands at %v, %v", p, box, x, y)
			}
		}
	}
}

func TestScaleInWords(t *testing.T) {
	metric := words.Voice{System: unit.Metric}
	for _, tt := range []struct {
		ratio float64
		voice words.Voice
		want  string
	}{
		{1.0 / 48, words.Voice{}, "1/4 in = 1 ft"},
		{1.0 / 96, words.Voice{}, "1/8 in = 1 ft"},
		{0.86 / 48, words.Voice{}, "86 % of 1/4 in = 1 ft"},
		{1.0 / 50, metric, "1:50"},
		{1.0 / 40, metric, "125 % of 1:50"},
	} {
		if got := scaleText(tt.ratio, tt.voice); got != tt.want {
			t.Errorf("%v is said as %q, want %q", tt.ratio, got, tt.want)
		}
	}
}

func TestTapeLabels(t *testing.T) {
	for _, tt := range []struct {
		l    unit.Length
		s    unit.System
		want string
	}{
		{12 * unit.Foot, unit.Imperial, "12'"}, {-4 * unit.Foot, unit.Imperial, "-4'"},
		{18 * unit.Inch, unit.Imperial, `1' 6"`}, {1500 * unit.Millimetre, unit.Metric, "1.5 m"},
	} {
		if got := tapeLabel(tt.l, tt.s); got != tt.want {
			t.Errorf("%v is labelled %q, want %q", tt.l, got, tt.want)
		}
	}
	for _, s := range []unit.System{unit.Imperial, unit.Metric} {
		for zoom := leastZoom; zoom < mostZoom; zoom *= 1.1 {
			r := rulingAt(zoom, s)
			if r.label%r.mark != 0 {
				t.Errorf("labels each %v do not fall on marks each %v", r.label, r.mark)
			}
			if gap := r.mark.Millimetres() * zoom; gap < 3 && zoom > 0.01 {
				t.Errorf("at %v marks stand %v apart", zoom, gap)
			}
		}
	}
}

func TestRevealedMovesNoFartherThanNeeded(t *testing.T) {
	on := image.Rect(22, 22, 1022, 722)
	v := View{Zoom: 0.1, At: image.Pt(100, 100)} // a foot is 30.48 pixels
	box := func(x, y, w, h unit.Length) geom.Box {
		return geom.BoxOf(geom.Point{X: x, Y: y}, geom.Point{X: x + w, Y: y + h})
	}
	for _, tt := range []struct {
		name string
		box  geom.Box
		want image.Point
	}{
		{"in view", box(0, 0, 10*unit.Foot, 10*unit.Foot), image.Pt(0, 0)},
		{"beyond the left", box(-5*unit.Metre, 0, unit.Metre, unit.Metre), image.Pt(462, 0)},
		{"beyond the right and below", box(9*unit.Metre, 6*unit.Metre, unit.Metre, unit.Metre), image.Pt(-118, -118)},
		{"half above", box(0, -unit.Metre, unit.Metre, 2*unit.Metre), image.Pt(0, 62)},
	} {
		got := v.Revealed(tt.box, on, 1)
		if got.Zoom != v.Zoom || got.At.Sub(v.At) != tt.want {
			t.Errorf("%s: moved by %v at zoom %v, want %v at %v", tt.name, got.At.Sub(v.At), got.Zoom, tt.want, v.Zoom)
		}
	}
	large := box(0, 0, 30*unit.Metre, unit.Metre)
	got := v.Revealed(large, on, 1)
	for _, p := range large.Corners() {
		if x, y := got.Screen(p); !image.Pt(int(x), int(y)).In(on) {
			t.Errorf("corner %v of what is too large stands at %v, %v", p, x, y)
		}
	}
}

// A level fitted to the board shows its outer walls whole, however small its room is.
func TestASmallRoomIsFittedWithItsWalls(t *testing.T) {
	s := newStage(t, 0)
	s.window.Resize(fyne.NewSize(900, 300))
	room := &plan.Room{ID: "rbath2222", Ceiling: 8 * unit.Foot}
	for i, c := range geom.BoxOf(geom.Point{}, geom.Point{X: 8 * unit.Foot, Y: 5 * unit.Foot}).Corners() {
		room.Sides = append(room.Sides, &plan.Side{ID: plan.ID(fmt.Sprintf("sside%c222", 'a'+i)), Kind: plan.SideWall, Start: c})
	}
	p, err := edit.AddRoom{Level: s.board.pic.Level, Room: *room}.Apply(plan.New("Bath", s.board.pic.Level))
	if err != nil {
		t.Fatal(err)
	}
	s.board.SetPicture(Picture{Index: index.New(p), Level: s.board.pic.Level, Theme: render.Light})
	s.board.Fit()
	// The studs of 2×4 and what is usual outside of them: common practice.
	thick := 7*unit.Inch/2 + 5*unit.Inch/4
	for _, corner := range room.Outline().Box().Expand(thick).Corners() {
		if x, y := s.board.view.Screen(corner); !image.Pt(int(x), int(y)).In(s.board.screen()) {
			t.Errorf("the outer corner %v stands at %.0f, %.0f of %v", corner, x, y, s.board.screen())
		}
	}
}
