package glyph

import (
	"math"
	"strings"
	"sync"
	"testing"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
	"pgregory.net/rapid"
)

// The letters a sheet or a card may need beyond ASCII.
const needed = "½¼¾⅛⅜⅝⅞⅓⅔′″×°²³→≤≥≈−⌀☐✓△▲◆○…éñüßł·"

func TestEveryNeededLetterHasAShapeOfItsOwn(t *testing.T) {
	for _, w := range []Weight{Regular, Bold} {
		for _, letter := range needed + "0123456789ABCxyz" {
			if g := Of(w, letter); !g.Font.has(letter) || len(g.Outline) == 0 || g.Advance <= 0 {
				t.Errorf("weight %d has no %q", w, letter)
			}
		}
	}
}

func TestLetterOfNoFontIsABox(t *testing.T) {
	if g := Of(Regular, '\U000F1234'); len(g.Outline) == 0 {
		t.Error("a letter of no font leaves no mark")
	}
}

func TestWidthAgreesWithOpentype(t *testing.T) {
	f, err := opentype.Parse(goregular.TTF)
	if err != nil {
		t.Fatal(err)
	}
	face, err := opentype.NewFace(f, &opentype.FaceOptions{Size: 1000, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"Opening schedule", "6'-4 1/2\"", "20.25 in³"} {
		want := 0.0
		for _, letter := range text {
			a, _ := face.GlyphAdvance(letter)
			want += float64(a) / 64
		}
		if got := Width(Regular, 1000, text); math.Abs(got-want) > 0.5 {
			t.Errorf("Width(%q) = %v, opentype says %v", text, got, want)
		}
	}
}

func TestFiguresHaveOneWidth(t *testing.T) {
	for _, w := range []Weight{Regular, Bold} {
		for _, digit := range "123456789" {
			if Of(w, digit).Advance != Of(w, '0').Advance {
				t.Errorf("weight %d: %q is not as wide as 0: columns would not align", w, digit)
			}
		}
	}
}

func TestSplitLosesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("ab ⅓☐½é"))).Draw(t, "text")
		joined := ""
		for i, p := range Split(Bold, text) {
			joined += p.Text
			for _, letter := range p.Text {
				if Of(Bold, letter).Font != p.Font {
					t.Fatalf("part %d %q: %q is of another font", i, p.Text, letter)
				}
			}
		}
		if joined != text {
			t.Fatalf("parts join to %q, want %q", joined, text)
		}
	})
}

func TestWrap(t *testing.T) {
	width := Width(Regular, 10, "the local code")
	for _, tt := range []struct {
		name, text string
		want       string
	}{
		{"nothing", "", ""},
		{"fits", "the local code", "the local code"},
		{"breaks at a blank", "the local code decides", "the local code|decides"},
		{"keeps newlines", "the\nlocal", "the|local"},
		{"a long word stands alone", "a electroluminescence b", "a|electroluminescence|b"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := strings.Join(Wrap(Regular, 10, width, tt.text), "|"); got != tt.want {
				t.Errorf("Wrap(%q) = %q, want %q", tt.text, got, tt.want)
			}
		})
	}
}

func TestFitIsNoWiderThanAsked(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[a-zé ]{0,30}`).Draw(t, "text")
		width := rapid.Float64Range(0, 200).Draw(t, "width")
		got := Fit(Regular, 10, width, text)
		if w := Width(Regular, 10, got); w > width+1e-9 {
			t.Fatalf("Fit(%q, %v) = %q, %v wide", text, width, got, w)
		}
		if Width(Regular, 10, text) <= width && got != text {
			t.Fatalf("Fit(%q, %v) = %q cut for no reason", text, width, got)
		}
	})
}

func TestManyMayAskAtOnce(t *testing.T) {
	var wg sync.WaitGroup
	var seen [8][0x250]*Glyph
	for i := range seen {
		wg.Go(func() {
			for letter := range seen[i] {
				seen[i][letter] = Of(Bold, rune(letter))
			}
		})
	}
	wg.Wait()
	for i := range seen {
		if seen[i] != seen[0] {
			t.Errorf("asker %d was given shapes of its own", i)
		}
	}
}
