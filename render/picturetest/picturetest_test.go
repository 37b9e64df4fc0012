package picturetest

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// told takes what a test would be told.
type told struct {
	testing.TB
	said []string
}

func (*told) Helper() {}

func (t *told) Errorf(format string, args ...any) {
	t.said = append(t.said, fmt.Sprintf(format, args...))
}

// picture returns a white PNG with so many black pixels.
func picture(t *testing.T, width, black int) []byte {
	t.Helper()
	im := image.NewGray(image.Rect(0, 0, width, 10))
	for i := range im.Pix {
		im.Pix[i] = 0xff
	}
	for i := range black {
		im.SetGray(i%width, i/width, color.Gray{})
	}
	var b bytes.Buffer
	if err := png.Encode(&b, im); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// TestKept plays a test in a module of its own: what differs must be there afterwards,
// under the name that the failure gives.
func TestKept(t *testing.T) {
	for _, tt := range []struct {
		name string
		kept []byte
		got  []byte
		said string
	}{
		{"as kept", picture(t, 20, 30), picture(t, 20, 30), ""},
		{"as many strays as rounding makes", picture(t, 20, 0), picture(t, 20, stray), ""},
		{"one stray more", picture(t, 20, 0), picture(t, 20, stray+1), "11 pixels differ from testdata/a.png"},
		{"another size", picture(t, 20, 0), picture(t, 21, 0), "pixels differ from testdata/a.png"},
		{"none kept", nil, picture(t, 20, 0), "testdata/a.png is not there yet"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			top := t.TempDir()
			for name, data := range map[string][]byte{"go.mod": {}, "part/testdata/a.png": tt.kept} {
				if err := os.MkdirAll(filepath.Join(top, filepath.Dir(name)), 0o700); err != nil {
					t.Fatal(err)
				}
				if data == nil && strings.HasSuffix(name, ".png") {
					continue
				}
				if err := os.WriteFile(filepath.Join(top, name), data, 0o600); err != nil {
					t.Fatal(err)
				}
			}
			t.Chdir(filepath.Join(top, "part"))
			test := &told{TB: t}
			Kept(test, "a.png", tt.got)
			said := filepath.ToSlash(strings.Join(test.said, "\n"))
			if (said == "") != (tt.said == "") || !strings.Contains(said, tt.said) {
				t.Fatalf("it says %q, want %q", said, tt.said)
			}
			left, err := os.ReadFile(filepath.Join(top, "bin", "differs", "part", "a.png"))
			if tt.said == "" {
				if err == nil {
					t.Error("a picture was left though none differs")
				}
				return
			}
			if !bytes.Equal(left, tt.got) {
				t.Errorf("what was drawn is not left in bin/differs: %v", err)
			}
			if !strings.Contains(said, "bin/differs/part/a.png") {
				t.Errorf("%q does not say where the picture is", said)
			}
		})
	}
}
