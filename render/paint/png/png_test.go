package png

import (
	"bytes"
	"context"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/adler32"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"io"
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan/unit"
	"studbay/render/glyph"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

var ink = scene.Color{R: 0x22, G: 0x26, B: 0x2a, A: 0xff}

// busySheet is a page with walls, lines, dashes, circles, clips and text all over,
// many of them across the edges of bands.
func busySheet(width, height unit.Length, walls, symbols, texts int) *scene.Scene {
	s := &scene.Scene{Width: width, Height: height}
	r := rand.New(rand.NewPCG(1, 2))
	at := func() scene.Point {
		return scene.Point{X: r.Float64() * scene.MM(width), Y: r.Float64() * scene.MM(height)}
	}
	grey := scene.Color{R: 0x55, G: 0x55, B: 0x55, A: 0xff}
	for i := range walls {
		w := scene.RectAround(at(), 40*r.Float64(), 2)
		s.Add(scene.Fill{Path: w.Path().Placed(scene.Turning(float64(i%2)*3, scene.Point{})), Color: grey})
	}
	for i := range symbols {
		p := at()
		pen := scene.Pen{Width: 0.5, Color: ink}
		if i%3 == 0 {
			pen.Dash = []float64{1, 0.5}
		}
		s.Add(
			scene.Stroke{Path: scene.LinePath(p, p.Add(scene.Point{X: 0, Y: 3})), Pen: pen},
			scene.Stroke{Path: scene.Circle(p, 1.1), Pen: pen},
			scene.Fill{Path: scene.RectAround(p, 1, 1).Path(), Color: ink},
		)
	}
	clip := scene.Rect{Min: scene.Point{X: 20, Y: 10}, Max: scene.Point{X: 90, Y: 60}}
	group := scene.Group{Layer: scene.Layer{Clip: &clip}}
	for i := range texts {
		run := scene.Run{At: at(), Text: fmt.Sprintf("S%d 6'-4½\" ⅓", i), Size: 7 * scene.PointSize, Color: ink, Weight: glyph.Weight(i % 2)}
		if i%10 == 0 {
			run.Angle = float64(i)
			group.Items = append(group.Items, run)
			continue
		}
		s.Add(run)
	}
	s.Add(group)
	return s
}

func encode(t testing.TB, s *scene.Scene, o Options) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := Encode(context.Background(), &out, s, o); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func TestPictureIsThatOfTheWholePagePaintedAtOnce(t *testing.T) {
	s := busySheet(5*unit.Inch, 7*unit.Inch, 60, 120, 120)
	const dpi = 200
	got, err := png.Decode(bytes.NewReader(encode(t, s, Options{DPI: dpi, Workers: 3})))
	if err != nil {
		t.Fatal(err)
	}
	want := image.NewRGBA(image.Rect(0, 0, 1000, 1400))
	draw.Draw(want, want.Rect, image.White, image.Point{}, draw.Src)
	raster.Items(want, dpi/25.4, scene.Point{}, s.Items...)
	if got.Bounds() != want.Rect {
		t.Fatalf("picture is %v, want %v", got.Bounds(), want.Rect)
	}
	inked := 0
	for y := range 1400 {
		for x := range 1000 {
			g, w := color.RGBAModel.Convert(got.At(x, y)), want.RGBAAt(x, y)
			if g != w {
				t.Fatalf("pixel %d, %d is %v, want %v", x, y, g, w)
			}
			if w.R < 128 {
				inked++
			}
		}
	}
	if inked < 10_000 {
		t.Errorf("only %d dark pixels: the page is all but blank", inked)
	}
}

func TestBytesDoNotDependOnWorkers(t *testing.T) {
	s := busySheet(11*unit.Inch, 8*unit.Inch, 40, 60, 60)
	one := encode(t, s, Options{DPI: 150, Workers: 1})
	for _, workers := range []int{2, 5} {
		if !bytes.Equal(one, encode(t, s, Options{DPI: 150, Workers: workers})) {
			t.Errorf("%d workers gave other bytes than one", workers)
		}
	}
}

func TestFileSaysItsResolution(t *testing.T) {
	s := &scene.Scene{Width: unit.Inch, Height: unit.Inch}
	for _, tt := range []struct {
		dpi    int
		want   uint32
		source string
	}{
		{300, 11811, "300 / 0.0254, rounded"},
		{72, 2835, "72 / 0.0254, rounded"},
	} {
		data := encode(t, s, Options{DPI: tt.dpi})
		i := bytes.Index(data, []byte("pHYs"))
		if i < 0 || i > bytes.Index(data, []byte("IDAT")) {
			t.Fatalf("%d dpi: no pHYs chunk before the picture (PNG 1.2, 4.2.4.2)", tt.dpi)
		}
		x, y, in := binary.BigEndian.Uint32(data[i+4:]), binary.BigEndian.Uint32(data[i+8:]), data[i+12]
		if x != tt.want || y != tt.want || in != 1 {
			t.Errorf("%d dpi: pHYs %d, %d, %d, want %d a metre: %s", tt.dpi, x, y, in, tt.want, tt.source)
		}
	}
}

func TestAdlerOfPartsIsThatOfTheWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.SliceOf(rapid.Byte()).Draw(t, "first")
		b := rapid.SliceOf(rapid.Byte()).Draw(t, "second")
		got := joinAdler(adler32.Checksum(a), adler32.Checksum(b), len(b))
		if want := adler32.Checksum(append(a, b...)); got != want {
			t.Fatalf("joined %08x, whole %08x", got, want)
		}
	})
}

func TestStopsWhenCancelled(t *testing.T) {
	s := busySheet(11*unit.Inch, 17*unit.Inch, 40, 60, 60)
	ctx, cancel := context.WithCancel(context.Background())
	calls := 0
	err := Encode(ctx, io.Discard, s, Options{Workers: 2, Progress: func(done, total int) {
		calls++
		if done == 2 {
			cancel()
		}
	}})
	if !errors.Is(err, context.Canceled) {
		t.Errorf("Encode = %v, want the context's error", err)
	}
	if calls == 0 || calls == 40 {
		t.Errorf("%d of 40 bands written: not stopped on the way", calls)
	}
}

type fullDisk struct{ left int }

func (d *fullDisk) Write(b []byte) (int, error) {
	if d.left -= len(b); d.left < 0 {
		return 0, errNoSpace
	}
	return len(b), nil
}

var errNoSpace = errors.New("no space left")

func TestKeepsTheWritersError(t *testing.T) {
	s := busySheet(11*unit.Inch, 17*unit.Inch, 40, 60, 60)
	for _, room := range []int{0, 20, 5000} {
		if err := Encode(context.Background(), &fullDisk{room}, s, Options{DPI: 150}); !errors.Is(err, errNoSpace) {
			t.Errorf("with room for %d bytes Encode = %v, want the writer's error", room, err)
		}
	}
}

func TestRefusesPagesNoPictureCanHold(t *testing.T) {
	for _, tt := range []struct {
		name string
		s    scene.Scene
		dpi  int
	}{
		{"no size", scene.Scene{}, 300},
		{"too large", scene.Scene{Width: 1000 * unit.Metre, Height: unit.Metre}, 300},
		{"negative resolution", scene.Scene{Width: unit.Inch, Height: unit.Inch}, -1},
		{"absurd resolution", scene.Scene{Width: unit.Inch, Height: unit.Inch}, 1 << 40},
	} {
		if err := Encode(context.Background(), io.Discard, &tt.s, Options{DPI: tt.dpi}); err == nil {
			t.Errorf("%s: no error", tt.name)
		}
	}
}

// BenchmarkARCHD is the sheet of 500 walls, 400 symbols and 1,105 texts beside the
// blank page, which is as fast as this way of writing can be.
func BenchmarkARCHD(b *testing.B) {
	for _, bb := range []struct {
		name string
		s    *scene.Scene
	}{
		{"blank", &scene.Scene{Width: 36 * unit.Inch, Height: 24 * unit.Inch}},
		{"busy", busySheet(36*unit.Inch, 24*unit.Inch, 500, 400, 1105)},
	} {
		b.Run(bb.name, func(b *testing.B) {
			b.ReportAllocs()
			size := 0
			for b.Loop() {
				size = len(encode(b, bb.s, Options{DPI: 300, Workers: 2}))
			}
			b.ReportMetric(float64(size), "file-B")
		})
	}
}
