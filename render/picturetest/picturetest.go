// Package picturetest holds what is drawn to the pictures that a person looked at and
// kept. It knows no drawing: tests of any package hand it PNGs.
package picturetest

import (
	"bytes"
	"errors"
	"flag"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "keep the pictures as they are drawn now")

// stray is how many pixels may differ plainly: floats round otherwise on another
// processor. The least stroke of a symbol, a tick, is twice as many.
const stray = 10

// Kept compares a picture, a PNG, with the one of that name that the test's package keeps
// in testdata. One that differs is written below bin/differs, where it outlives the test,
// and the failure names it. With -update the picture is kept instead.
func Kept(t testing.TB, name string, got []byte) {
	t.Helper()
	kept := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(kept, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(kept)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		t.Fatal(err)
	}
	n := -1
	if err == nil {
		n = differing(decode(t, got), decode(t, want))
	}
	if n >= 0 && n <= stray {
		return
	}
	file, err := set(name, got)
	switch {
	case err != nil:
		t.Errorf("%s is not what is drawn, and what is could not be written: %v", kept, err)
	case n < 0:
		t.Errorf("%s is not there yet; look at %s, then run with -update", kept, file)
	default:
		t.Errorf("%d pixels differ from %s; look at %s, then run with -update", n, kept, file)
	}
}

// set writes a picture below bin/differs of the module, in the folder of the test's
// package, and returns its whole path.
func set(name string, data []byte) (string, error) {
	folder, err := os.Getwd()
	if err != nil {
		return "", err
	}
	top := folder
	for {
		if _, err := os.Stat(filepath.Join(top, "go.mod")); err == nil {
			break
		}
		if filepath.Dir(top) == top {
			return "", errors.New("no module around " + folder)
		}
		top = filepath.Dir(top)
	}
	within, err := filepath.Rel(top, folder)
	if err != nil {
		return "", err
	}
	file := filepath.Join(top, "bin", "differs", within, name)
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		return "", err
	}
	return file, os.WriteFile(file, data, 0o644)
}

func decode(t testing.TB, data []byte) image.Image {
	t.Helper()
	picture, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return picture
}

// differing counts pixels that differ by more than a shade; of pictures of two sizes, all.
func differing(a, b image.Image) (n int) {
	if a.Bounds() != b.Bounds() {
		return max(1, a.Bounds().Dx()*a.Bounds().Dy()) + stray
	}
	for y := a.Bounds().Min.Y; y < a.Bounds().Max.Y; y++ {
		for x := a.Bounds().Min.X; x < a.Bounds().Max.X; x++ {
			if isUnlike(a.At(x, y), b.At(x, y)) {
				n++
			}
		}
	}
	return n
}

// isUnlike reports whether two colours are more than a shade apart in any part.
func isUnlike(a, b color.Color) bool {
	const shade = 16 << 8
	apart := func(x, y uint32) bool { return max(x, y)-min(x, y) > shade }
	r, g, bl, al := a.RGBA()
	r2, g2, bl2, al2 := b.RGBA()
	return apart(r, r2) || apart(g, g2) || apart(bl, bl2) || apart(al, al2)
}
