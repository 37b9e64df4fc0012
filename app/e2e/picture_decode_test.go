//go:build linux

package e2e

import (
	"bytes"
	"encoding/binary"
	"image/color"
	"testing"
)

// dumpOf writes a dump of two by one pixels, red and blue, with one entry in the
// colour map and a line padded to twelve bytes.
func dumpOf(t *testing.T, change func(*dumpHeader)) []byte {
	t.Helper()
	head := dumpHeader{
		HeaderSize: 80, FileVersion: 7, PixmapFormat: 2, PixmapDepth: 24,
		Width: 2, Height: 1, BitsPerPixel: 32, BytesPerLine: 12,
		RedMask: 0xff0000, GreenMask: 0xff00, BlueMask: 0xff, NColors: 1,
	}
	if change != nil {
		change(&head)
	}
	var dump bytes.Buffer
	if err := binary.Write(&dump, binary.BigEndian, head); err != nil {
		t.Fatal(err)
	}
	dump.Write(make([]byte, 12))
	dump.Write([]byte{0, 0, 0xff, 0, 0xff, 0, 0, 0, 9, 9, 9, 9})
	return dump.Bytes()
}

func TestDecodeDump(t *testing.T) {
	pic, err := decodeDump(dumpOf(t, nil))
	if err != nil {
		t.Fatal(err)
	}
	for x, want := range []color.RGBA{{0xff, 0, 0, 0xff}, {0, 0, 0xff, 0xff}} {
		if got := pic.RGBAAt(x, 0); got != want {
			t.Errorf("pixel %d is %v, want %v", x, got, want)
		}
	}
	whole := dumpOf(t, nil)
	for name, dump := range map[string][]byte{
		"empty":              nil,
		"cut in the head":    whole[:50],
		"cut in the pixels":  whole[:len(whole)-1],
		"another version":    dumpOf(t, func(h *dumpHeader) { h.FileVersion = 6 }),
		"sixteen bits":       dumpOf(t, func(h *dumpHeader) { h.BitsPerPixel = 16 }),
		"lines overlapping":  dumpOf(t, func(h *dumpHeader) { h.BytesPerLine = 4 }),
		"red and blue apart": dumpOf(t, func(h *dumpHeader) { h.RedMask, h.BlueMask = h.BlueMask, h.RedMask }),
	} {
		if _, err := decodeDump(dump); err == nil {
			t.Errorf("%s: decoded, want an error", name)
		}
	}
}
