package symbol

import (
	"image"
	"math"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/paint/raster"
	"studbay/render/scene"
)

func anySpec(t *rapid.T) Spec {
	return Spec{
		Family:  Family(rapid.IntRange(0, len(bodies)-1).Draw(t, "family")),
		Yokes:   rapid.IntRange(0, 5).Draw(t, "yokes"),
		Letters: rapid.SampledFrom([]string{"", "3", "GF", "50"}).Draw(t, "letters"),
		Note:    rapid.SampledFrom([]string{"", "44"}).Draw(t, "note"),
		Status:  Status(rapid.IntRange(0, 2).Draw(t, "status")),
	}
}

func anyPlace(t *rapid.T) Place {
	p := Place{Foot: scene.Point{X: 40, Y: 30}}
	if rapid.Bool().Draw(t, "wall") {
		p.Into = scene.Direction(rapid.Float64Range(0, 360).Draw(t, "into"))
	}
	return p
}

func TestTableIsInTheOrderOfTheFamilies(t *testing.T) {
	for i, b := range bodies {
		if int(b.family) != i {
			t.Errorf("row %d is of family %d", i, b.family)
		}
	}
}

func TestBoxesHoldAllInk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		style := black
		style.Size = rapid.Float64Range(1, 30).Draw(t, "size")
		specs := rapid.SliceOfN(rapid.Custom(anySpec), 1, 3).Draw(t, "specs")
		d := Draw(anyPlace(t), style, specs...)
		if len(d.Bodies) != len(specs) {
			t.Fatalf("%d bodies for %d openings", len(d.Bodies), len(specs))
		}
		ink, boxes := scene.Bounds(d.Items...), d.Bounds()
		// Half a thin pen may lie outside of a body's nominal outline.
		if loose := boxes.Expanded(.1 * style.Size); ink.Union(loose) != loose {
			t.Fatalf("ink %v outside boxes %v", ink, boxes)
		}
	})
}

func TestNothingIsDrawnInsideTheWall(t *testing.T) {
	for _, f := range Families() {
		for _, status := range []Status{New, Existing, Remove} {
			for quarter := range 4 {
				spec := Spec{Family: f, Status: status, Yokes: 3, Letters: "GF", Note: "44"}
				for _, specs := range [][]Spec{{spec}, {spec, spec}} {
					inWall, inRoom := inkEitherSide(float64(quarter)*90, specs)
					if inWall > 0 || inRoom == 0 {
						t.Errorf("%v, status %d, quarter %d: %d pixels of ink in the wall, %d in the room", f, status, quarter, inWall, inRoom)
					}
				}
			}
		}
	}
}

// inkEitherSide counts inked pixels behind the wall line and before it.
func inkEitherSide(angle float64, specs []Spec) (inWall, inRoom int) {
	const scale, half = 5, 80
	into := scene.Direction(angle)
	im := image.NewRGBA(image.Rect(0, 0, 2*half, 2*half))
	raster.Items(im, scale, scene.Point{X: half, Y: half}, Draw(Place{Into: into}, black, specs...).Items...)
	for y := range 2 * half {
		for x := range 2 * half {
			if im.RGBAAt(x, y).A == 0 {
				continue
			}
			if (float64(x)+.5-half)*into.X+(float64(y)+.5-half)*into.Y < 0 {
				inWall++
			} else {
				inRoom++
			}
		}
	}
	return inWall, inRoom
}

func TestNothingOfOneFootCoversAnother(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		into := scene.Direction(float64(rapid.IntRange(0, 3).Draw(t, "quarter")) * 90)
		specs := rapid.SliceOfN(rapid.Custom(anySpec), 2, 4).Draw(t, "specs")
		d := Draw(Place{Into: into}, black, specs...)
		boxes := append(append([]scene.Rect{}, d.Bodies...), d.Written...)
		for i, a := range boxes {
			for _, b := range boxes[:i] {
				// Text boxes count the room for letters that reach under the line.
				if a.Expanded(-.2).Overlaps(b.Expanded(-.2)) {
					t.Fatalf("boxes %v and %v overlap", a, b)
				}
			}
		}
	})
}

func TestLowestStandsNearestTheWall(t *testing.T) {
	d := Draw(Place{Into: scene.Point{Y: 1}}, black, Spec{}, Spec{Family: Switch}, Spec{Family: Light})
	if !(d.Bodies[0].Max.Y < d.Bodies[1].Min.Y && d.Bodies[1].Max.Y < d.Bodies[2].Min.Y) {
		t.Errorf("bodies %v are not in a row into the room", d.Bodies)
	}
}

func TestEachYokeBeyondTheFirstIsATick(t *testing.T) {
	count := func(yokes int) int {
		return len(Draw(Place{Into: scene.Point{Y: 1}}, black, Spec{Yokes: yokes}).Items)
	}
	for _, tt := range []struct{ yokes, ticks int }{{0, 0}, {1, 0}, {2, 1}, {3, 2}, {5, 4}} {
		if got := count(tt.yokes) - count(1); got != tt.ticks {
			t.Errorf("%d yokes: %d ticks, want %d", tt.yokes, got, tt.ticks)
		}
	}
}

func TestSpread(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := float64(rapid.IntRange(0, 3).Draw(t, "quarter")) * 90
		along := scene.Direction(angle)
		w := Wall{Start: scene.Point{X: 100, Y: 100}, Along: along, Into: along.Turned(), Long: 200}
		at := rapid.SliceOfN(rapid.Float64Range(20, 180), 1, 8).Draw(t, "at")
		specs := make([][]Spec, len(at))
		for i := range specs {
			specs[i] = []Spec{anySpec(t)}
		}
		places := Spread(w, black, at, specs)
		var drawn []Drawn
		for i, p := range places {
			want := w.Start.Add(along.Mul(at[i]))
			if p.Foot != want {
				t.Fatalf("foot %d at %v, its true place is %v", i, p.Foot, want)
			}
			drawn = append(drawn, Draw(p, black, specs[i]...))
		}
		for i, a := range drawn {
			for j, b := range drawn[:i] {
				if a.Bodies[0].Expanded(-.01).Overlaps(b.Bodies[0].Expanded(-.01)) {
					t.Fatalf("bodies %d %v and %d %v overlap", j, b.Bodies[0], i, a.Bodies[0])
				}
			}
		}
	})
}

func TestApartMovesOnlyWhatMust(t *testing.T) {
	half := []float64{1, 1, 1}
	for _, tt := range []struct {
		name       string
		feet, want []float64
		long       float64
		reason     string
	}{
		{"far", []float64{5, 10, 20}, []float64{5, 10, 20}, 0, "nothing is near"},
		{"a pair", []float64{5, 6, 20}, []float64{4.5, 6.5, 20}, 0, "2 apart about their mean"},
		{"one place", []float64{9, 9, 9}, []float64{7, 9, 11}, 0, "2 apart about 9"},
		{"pushed into a third", []float64{5, 6, 8}, []float64{13. / 3, 19. / 3, 25. / 3}, 0, "least squares: mean of 5, 4, 4"},
		{"at the corner", []float64{0.2, 9, 18}, []float64{1, 9, 18}, 20, "half a body off the corner"},
		{"no room", []float64{1, 2, 3}, []float64{0, 2, 4}, 5, "left to lie over the ends"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := apart(tt.feet, half, 0, tt.long)
			for i := range got {
				if math.Abs(got[i]-tt.want[i]) > 1e-9 {
					t.Fatalf("apart(%v) = %v, want %v: %s", tt.feet, got, tt.want, tt.reason)
				}
			}
		})
	}
}

func TestMarksAndIconsStayInTheirSquare(t *testing.T) {
	square := scene.RectAround(scene.Point{X: 5, Y: 5}, 10, 10).Expanded(.5)
	for m := range marks {
		if ink := scene.Bounds(DrawMark(Mark(m), scene.Point{X: 5, Y: 5}, 10, ink, white)...); ink.IsEmpty() || ink.Union(square) != square {
			t.Errorf("mark %d: ink %v outside %v", m, ink, square)
		}
	}
	for _, i := range Icons() {
		if ink := scene.Bounds(DrawIcon(i, scene.Point{X: 5, Y: 5}, 10, ink)...); ink.IsEmpty() || ink.Union(square) != square {
			t.Errorf("icon %d: ink %v outside %v", i, ink, square)
		}
	}
}
