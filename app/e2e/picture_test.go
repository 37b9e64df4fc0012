//go:build linux

package e2e

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"
	"time"
)

// still is how long a picture must not change to count as finished.
const still = 250 * time.Millisecond

// Picture returns what the display shows now.
func (d *Display) Picture() *image.RGBA {
	d.t.Helper()
	dump, err := os.ReadFile(d.frames)
	if err != nil {
		d.t.Fatal(err)
	}
	pic, err := decodeDump(dump)
	if err != nil {
		d.t.Fatalf("%s: %v", d.frames, err)
	}
	return pic
}

// WaitStill waits until the display has stopped changing and returns its picture.
// A blinking cursor in a text field never stops: wait for something else there.
func (d *Display) WaitStill() *image.RGBA {
	d.t.Helper()
	last, since := d.Picture(), time.Now()
	d.Until("the picture to come to rest", func() bool {
		now := d.Picture()
		if !bytes.Equal(now.Pix, last.Pix) {
			last, since = now, time.Now()
		}
		return time.Since(since) >= still
	})
	return last
}

// WaitChange waits until the part of the display in r differs from before, then
// Until all is at rest, and returns the new picture.
func (d *Display) WaitChange(what string, before *image.RGBA, r image.Rectangle) *image.RGBA {
	d.t.Helper()
	d.Until(what, func() bool { return Differs(before, d.Picture(), r) })
	return d.WaitStill()
}

// Differs reports whether two pictures of one display differ anywhere in r.
func Differs(a, b *image.RGBA, r image.Rectangle) bool {
	r = r.Intersect(a.Rect).Intersect(b.Rect)
	for y := r.Min.Y; y < r.Max.Y; y++ {
		from, to := a.PixOffset(r.Min.X, y), a.PixOffset(r.Max.X, y)
		if !bytes.Equal(a.Pix[from:to], b.Pix[from:to]) {
			return true
		}
	}
	return false
}

// Shot saves a picture of the display as name.png and returns it.
func (d *Display) Shot(name string) *image.RGBA {
	d.t.Helper()
	pic := d.Picture()
	var out bytes.Buffer
	if err := png.Encode(&out, pic); err != nil {
		d.t.Fatal(err)
	}
	file := filepath.Join(d.shots, name+".png")
	if err := os.WriteFile(file, out.Bytes(), 0o644); err != nil {
		d.t.Fatal(err)
	}
	d.t.Logf("picture: %s", file)
	return pic
}

// shotIfFailed keeps a picture of the moment a test failed at.
func (d *Display) shotIfFailed() {
	if d.t.Failed() {
		d.Shot("failed")
	}
}

// shotsFolder is where a test's pictures go: STUDBAY_SHOTS, else a temporary
// folder that is removed when the test passes.
func shotsFolder(t testing.TB) string {
	t.Helper()
	if folder := os.Getenv("STUDBAY_SHOTS"); folder != "" {
		if err := os.MkdirAll(folder, 0o755); err != nil {
			t.Fatal(err)
		}
		return folder
	}
	folder, err := os.MkdirTemp("", "studbay-shots-")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if !t.Failed() {
			os.RemoveAll(folder)
		}
	})
	return folder
}

// dumpHeader is the head of an X window dump, every field big-endian (X11's
// XWDFile.h, version 7). Only what a true-colour dump needs is read further.
type dumpHeader struct {
	HeaderSize, FileVersion, PixmapFormat, PixmapDepth uint32
	Width, Height, XOffset, ByteOrder                  uint32
	BitmapUnit, BitmapBitOrder, BitmapPad              uint32
	BitsPerPixel, BytesPerLine, VisualClass            uint32
	RedMask, GreenMask, BlueMask                       uint32
	BitsPerRGB, ColormapEntries, NColors               uint32
}

// decodeDump reads an X window dump of 32 bits a pixel, as Xvfb keeps one of its
// screen: blue, green, red and a byte unused.
func decodeDump(dump []byte) (*image.RGBA, error) {
	var head dumpHeader
	if err := binary.Read(bytes.NewReader(dump), binary.BigEndian, &head); err != nil {
		return nil, fmt.Errorf("reading the head of a window dump: %w", err)
	}
	const colourSize = 12 // of an entry in the colour map
	start := int(head.HeaderSize) + int(head.NColors)*colourSize
	width, height, stride := int(head.Width), int(head.Height), int(head.BytesPerLine)
	switch {
	case head.FileVersion != 7:
		return nil, fmt.Errorf("window dump of version %d, want 7", head.FileVersion)
	case head.BitsPerPixel != 32 || head.ByteOrder != 0 || head.RedMask != 0xff0000 || head.GreenMask != 0xff00 || head.BlueMask != 0xff:
		return nil, errors.New("window dump of a pixel format other than 32 bits, blue first")
	case len(dump) < start+stride*height || stride < 4*width:
		return nil, errors.New("window dump cut short")
	}
	pic := image.NewRGBA(image.Rect(0, 0, width, height))
	for y := range height {
		from := dump[start+y*stride:]
		to := pic.Pix[pic.PixOffset(0, y):]
		for x := 0; x < 4*width; x += 4 {
			to[x], to[x+1], to[x+2], to[x+3] = from[x+2], from[x+1], from[x], 0xff
		}
	}
	return pic, nil
}

// plain reports whether a picture is all of one colour.
func plain(pic *image.RGBA) bool {
	for i := 4; i < len(pic.Pix); i += 4 {
		if !bytes.Equal(pic.Pix[i:i+4], pic.Pix[:4]) {
			return false
		}
	}
	return true
}
