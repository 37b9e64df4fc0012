package bitmap

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// house is a generated plan with its pieces at a zoom.
type house struct {
	ix    *index.Index
	level plan.ID
	found []rule.Finding
	size  image.Point
	zoom  float64
}

func newHouse(t testing.TB, openings int) house {
	p := plantest.House(1, openings)
	h := house{ix: index.New(p), level: p.Levels[0].ID, size: image.Pt(1400, 900), zoom: 0.079}
	result, err := fill.Check(h.ix)
	if err != nil {
		t.Fatal(err)
	}
	h.found = result.All()
	return h
}

// medium shows the plan from its upper left corner.
func (h house) medium() render.Medium {
	return render.BoardMedium(h.zoom, 1, render.Light, words.Voice{}).Centred(geom.Point{}, scene.Point{X: 60, Y: 60})
}

func (h house) pieces() []render.Piece {
	m := h.medium()
	clip := geom.BoxOf(m.FromScene(scene.Point{}), m.FromScene(scene.Point{X: float64(h.size.X), Y: float64(h.size.Y)}))
	return level.Draw(h.ix, h.level, h.found, m, clip)
}

func (h house) frame() image.Rectangle { return image.Rectangle{Max: h.size} }

func paint(l *List, frame image.Rectangle, workers int) *image.RGBA {
	im := image.NewRGBA(frame)
	l.Paint(im, frame, workers)
	return im
}

// TestLooksAsPlainPainting compares the fast way with each item painted in turn. Things
// put on whole pixels stand up to half a pixel elsewhere, so neighbourhoods of 6×6
// pixels are compared by their mean.
func TestLooksAsPlainPainting(t *testing.T) {
	h := newHouse(t, 120)
	pieces := h.pieces()
	got := paint(NewList(pieces, render.Light.Paper, &Cache{}), h.frame(), 2)
	want := image.NewRGBA(h.frame())
	fill2 := render.Light.Paper
	fillAll(want, fill2)
	raster.Items(want, 1, scene.Point{}, render.Items(pieces)...)
	if path := os.Getenv("STUDBAY_PICTURES"); path != "" {
		write(t, path+"/fast.png", got)
		write(t, path+"/plain.png", want)
	}
	const cell = 6
	far, cells := 0, 0
	for y := 0; y+cell <= h.size.Y; y += cell {
		for x := 0; x+cell <= h.size.X; x += cell {
			cells++
			if unlike(mean(got, x, y, cell), mean(want, x, y, cell)) {
				far++
			}
		}
	}
	if share := float64(far) / float64(cells); share > 0.01 {
		t.Errorf("%.2f %% of the neighbourhoods differ, want under 1 %%", 100*share)
	}
	fillAll(want, fill2)
	if bytes.Equal(want.Pix, got.Pix) {
		t.Error("nothing was painted")
	}
}

func fillAll(im *image.RGBA, c scene.Color) { fillBox(im, im.Rect, c) }

func mean(im *image.RGBA, x, y, cell int) (m [3]int) {
	for dy := range cell {
		for dx := range cell {
			c := im.RGBAAt(x+dx, y+dy)
			m[0], m[1], m[2] = m[0]+int(c.R), m[1]+int(c.G), m[2]+int(c.B)
		}
	}
	for i := range m {
		m[i] /= cell * cell
	}
	return m
}

func unlike(a, b [3]int) bool {
	for i := range a {
		if d := a[i] - b[i]; d > 40 || d < -40 {
			return true
		}
	}
	return false
}

func TestBandsAndGoroutinesDoNotShow(t *testing.T) {
	h := newHouse(t, 120)
	l := NewList(h.pieces(), render.Light.Paper, &Cache{})
	one := paint(l, h.frame(), 1)
	if two := paint(l, h.frame(), 2); !bytes.Equal(one.Pix, two.Pix) {
		t.Error("painted by two goroutines it differs from one")
	}
	part := image.Rect(333, 111, 801, 590)
	again := image.NewRGBA(h.frame())
	copy(again.Pix, one.Pix)
	fillBox(again, part, scene.Color{R: 1})
	l.Paint(again, part, 2)
	if !bytes.Equal(one.Pix, again.Pix) {
		t.Error("a part painted anew differs from the whole")
	}
}

func TestDirtyRepaintIsTheWholeRepaint(t *testing.T) {
	h := newHouse(t, 120)
	var sprites Cache
	old := NewList(h.pieces(), render.Light.Paper, &sprites)
	was := paint(old, h.frame(), 2)
	openings := 0
	for _, o := range h.ix.Plan().Openings() {
		if o.At.Part != plan.PartFace || openings > 12 {
			continue
		}
		place, _ := h.ix.Place(o.At)
		if at := h.medium().ToScene(place.Foot); at.X > float64(h.size.X) || at.Y > float64(h.size.Y) {
			continue // out of the picture
		}
		to := o.At
		to.Along += 7 * unit.Inch
		now, err := edit.MoveOpening{ID: o.ID, To: to}.Apply(h.ix.Plan())
		if err != nil {
			continue
		}
		openings++
		after := h
		after.ix = h.ix.Updated(now)
		l := NewList(after.pieces(), render.Light.Paper, &sprites)
		boxes := Dirty(old, l, h.frame())
		if len(boxes) == 0 {
			t.Fatalf("%s moved and nothing is to be painted", o.Tag)
		}
		area := 0
		got := image.NewRGBA(h.frame())
		copy(got.Pix, was.Pix)
		for _, b := range boxes {
			area += b.Dx() * b.Dy()
			l.Paint(got, b, 1)
		}
		if !bytes.Equal(got.Pix, paint(l, h.frame(), 2).Pix) {
			t.Errorf("%s: the parts painted anew differ from the whole", o.Tag)
		}
		if area > h.size.X*h.size.Y/4 {
			t.Errorf("%s: %d pixels painted anew of %d", o.Tag, area, h.size.X*h.size.Y)
		}
	}
	if openings == 0 {
		t.Fatal("no opening could be moved")
	}
	if boxes := Dirty(old, NewList(h.pieces(), render.Light.Paper, &Cache{}), h.frame()); len(boxes) > 0 {
		t.Errorf("the same plan drawn again is to be painted at %v", boxes)
	}
	if boxes := Dirty(old, NewList(h.pieces(), render.Dark.Paper, &sprites), h.frame()); len(boxes) != 1 || boxes[0] != h.frame() {
		t.Errorf("on other paper %v is to be painted, want all", boxes)
	}
}

func TestUprightShapesBecomeBoxes(t *testing.T) {
	corner := scene.Polygon(scene.Point{}, scene.Point{X: 10}, scene.Point{X: 10, Y: 4}, scene.Point{X: 4, Y: 4},
		scene.Point{X: 4, Y: 10}, scene.Point{Y: 10})
	all, straight := rings(corner)
	if !straight || !upright(corner) {
		t.Fatal("a shape of straight upright lines is not seen as one")
	}
	area := 0
	for _, b := range rectangles(all) {
		area += b.Dx() * b.Dy()
	}
	if area != 40+24 {
		t.Errorf("the boxes cover %d pixels, want 64 by arithmetic", area)
	}
	if upright(scene.Polygon(scene.Point{}, scene.Point{X: 10}, scene.Point{X: 5, Y: 4})) {
		t.Error("a triangle is seen as upright")
	}
}

func write(t *testing.T, path string, im image.Image) {
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, im); err != nil {
		t.Fatal(err)
	}
}

// BenchmarkWhole is a picture painted from nothing; the view is the same whatever
// the plan holds.
func BenchmarkWhole(b *testing.B) {
	for _, n := range []int{200, 10_000} {
		b.Run(words.New("", "{0}", n).String(), func(b *testing.B) {
			h := newHouse(b, n)
			var sprites Cache
			im := image.NewRGBA(h.frame())
			for b.Loop() {
				NewList(h.pieces(), render.Light.Paper, &sprites).Paint(im, h.frame(), 2)
			}
		})
	}
}

// BenchmarkPainting is only the pixels of it.
func BenchmarkPainting(b *testing.B) {
	for _, n := range []int{200, 10_000} {
		b.Run(words.New("", "{0}", n).String(), func(b *testing.B) {
			h := newHouse(b, n)
			l := NewList(h.pieces(), render.Light.Paper, &Cache{})
			im := image.NewRGBA(h.frame())
			for b.Loop() {
				l.Paint(im, h.frame(), 2)
			}
		})
	}
}
