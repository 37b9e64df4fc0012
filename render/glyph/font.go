package glyph

import (
	"sync"

	"codeberg.org/go-fonts/dejavu/dejavusans"
	"codeberg.org/go-fonts/dejavu/dejavusansbold"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// FontID names one of the embedded fonts.
type FontID uint8

// The embedded fonts: the family in two weights, and the second choice for each.
const (
	MainRegular FontID = iota
	MainBold
	SecondRegular
	SecondBold
)

// Fonts lists the embedded fonts, for painters that put them in their file.
var Fonts = [...]FontID{MainRegular, MainBold, SecondRegular, SecondBold}

type face struct {
	name  string
	ttf   []byte
	parse func() *sfnt.Font
}

func newFace(name string, ttf []byte) face {
	return face{name, ttf, sync.OnceValue(func() *sfnt.Font {
		f, err := sfnt.Parse(ttf)
		must(err)
		return f
	})}
}

var faces = [...]face{
	MainRegular:   newFace("go", goregular.TTF),
	MainBold:      newFace("go-bold", gobold.TTF),
	SecondRegular: newFace("dejavu", dejavusans.TTF),
	SecondBold:    newFace("dejavu-bold", dejavusansbold.TTF),
}

// Name returns a short name without blanks, fit for use inside a file.
func (id FontID) Name() string { return faces[id].name }

// TTF returns the font's bytes. They are shared: do not write to them.
func (id FontID) TTF() []byte { return faces[id].ttf }

func (id FontID) parsed() *sfnt.Font { return faces[id].parse() }

func (id FontID) has(letter rune) bool {
	var buf sfnt.Buffer
	index, err := id.parsed().GlyphIndex(&buf, letter)
	return err == nil && index != 0
}

// fontFor returns the font that draws a letter, the first of the weight's two that
// has it. The first draws its box for a letter that neither has.
func fontFor(w Weight, letter rune) FontID {
	main, second := MainRegular, SecondRegular
	if w == Bold {
		main, second = MainBold, SecondBold
	}
	if !main.has(letter) && second.has(letter) {
		return second
	}
	return main
}

// Part is a length of text drawn from one font.
type Part struct {
	Font FontID
	Text string
}

// Split cuts text where its font changes. The parts joined are the text.
func Split(w Weight, text string) (parts []Part) {
	start := 0
	var last FontID
	for i, letter := range text {
		id := Of(w, letter).Font
		if i > 0 && id != last {
			parts = append(parts, Part{last, text[start:i]})
			start = i
		}
		last = id
	}
	if start < len(text) {
		parts = append(parts, Part{last, text[start:]})
	}
	return parts
}
