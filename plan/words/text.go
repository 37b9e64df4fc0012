// Package words holds what the program says to people, before it is put in a
// language and a system of units.
//
// The English source stands where it is used and names its values by place: {0}, {1}.
// A Voice turns it into a line of text; a missing translation shows the English. The
// package decides no meaning: it looks at no value but to print it.
package words

import (
	"fmt"
	"strconv"
	"strings"

	"studbay/plan/unit"
)

// Text is one thing to say. The zero value says nothing.
type Text struct {
	ID      string // stable: catalogues translate by it
	English string // the source, with {0}, {1} ... for the arguments
	Args    []any  // string, int, Text, Height, Spoken, error or a quantity of package unit
}

// Height is a length that is called out in inches or millimetres alone.
type Height unit.Length

// Spoken is a length as one says it to somebody who will not build by it: in whole inches or
// centimetres, rounded half away from zero.
type Spoken unit.Length

// text says it in the units of a system.
func (l Spoken) text(s unit.System) Text {
	if s == unit.Metric {
		return New("unit.spoken-cm", "{0} cm", int(unit.Length(l).Rounded(10*unit.Millimetre)/(10*unit.Millimetre)))
	}
	return New("unit.spoken-in", "{0} in", int(unit.Length(l).Rounded(unit.Inch)/unit.Inch))
}

// SmallArea is an area that is called out in square inches or centimetres.
type SmallArea unit.Area

// FineArea is a small area that is compared with another.
type FineArea unit.Area

// Printed is a quantity as a book prints it, such as 2.0 m; where a decimal comma is written
// it has one.
type Printed string

// HeightBeside is a height that is written beside another which it is compared with: the
// two look the same only where they are.
type HeightBeside struct{ Height, Other unit.Length }

// Beside is a length that is written beside another which it is compared with: the two
// look the same only where they are.
type Beside struct{ Length, Other unit.Length }

// New returns a text with its arguments: strings, ints, lengths, areas, volumes, money,
// wire sizes, heights or other texts.
func New(id, english string, args ...any) Text {
	return Text{ID: id, English: english, Args: args}
}

// String says t in English with imperial units.
func (t Text) String() string { return Voice{}.Say(t) }

// IsZero reports whether t says nothing.
func (t Text) IsZero() bool { return t.ID == "" && t.English == "" }

// Voice says texts in one language and one system of units. The zero value is
// English and imperial. A Voice may be used by many goroutines while nothing writes
// to its catalogue.
type Voice struct {
	Catalogue    Catalogue // nil: English
	System       unit.System
	DecimalComma bool // 14,5 m² for 14.5 m²
}

// Say returns t in the voice's language. A translation that is missing or empty, or that
// asks for an argument the text has not, gives way to the English.
func (v Voice) Say(t Text) string {
	if translated := v.Catalogue[t.ID]; translated != "" {
		if said, ok := v.fill(translated, t.Args); ok {
			return said
		}
	}
	said, _ := v.fill(t.English, t.Args)
	return said
}

// fill puts the arguments in their places. It reports false where a place has no
// argument; the place then stays as written.
func (v Voice) fill(source string, args []any) (said string, complete bool) {
	complete = true
	var b strings.Builder
	for {
		before, place, after, found := cutPlace(source)
		b.WriteString(before)
		if !found {
			return b.String(), complete
		}
		if place < len(args) {
			b.WriteString(v.value(args[place]))
		} else {
			b.WriteString("{" + strconv.Itoa(place) + "}")
			complete = false
		}
		source = after
	}
}

// cutPlace splits source around its first {n}. Other braces are plain text.
func cutPlace(source string) (before string, place int, after string, found bool) {
	for at := range len(source) {
		if source[at] != '{' {
			continue
		}
		inside, after, closed := strings.Cut(source[at+1:], "}")
		if place, ok := placeNumber(inside); ok && closed {
			return source[:at], place, after, true
		}
	}
	return source, 0, "", false
}

// placeNumber reads the one or two digits between braces, as they are counted.
func placeNumber(text string) (int, bool) {
	n, _ := strconv.Atoi(text) // 0 for what is no number, which is not written so
	return n, len(text) <= 2 && n >= 0 && strconv.Itoa(n) == text
}

func (v Voice) value(arg any) string {
	switch a := arg.(type) {
	case string:
		return a
	case int:
		return strings.ReplaceAll(strconv.Itoa(a), "-", "−")
	case Text:
		return v.Say(a)
	case unit.Length:
		return v.decimal(v.System.Format(a))
	case Height:
		return v.decimal(v.System.Short(unit.Length(a)))
	case Spoken:
		return v.Say(a.text(v.System))
	case Printed:
		return v.decimal(string(a))
	case HeightBeside:
		return v.decimal(v.System.ShortApart(a.Height, a.Other))
	case Beside:
		return v.decimal(v.System.FormatApart(a.Length, a.Other))
	case SmallArea:
		return v.named(v.decimal(v.System.FormatSmallArea(unit.Area(a))))
	case FineArea:
		return v.named(v.decimal(v.System.FormatFineArea(unit.Area(a))))
	case unit.Area:
		return v.named(v.decimal(v.System.FormatArea(a)))
	case unit.Volume:
		return v.named(v.decimal(v.System.FormatVolume(a)))
	case unit.Weight:
		return v.decimal(v.System.FormatWeight(a))
	case unit.Money:
		return v.decimal(a.String())
	case error:
		return v.SayError(a)
	}
	return fmt.Sprint(arg)
}

// The units that some languages write otherwise.
var (
	CubicInch  = New("unit.in3", "in³")
	SquareFoot = New("unit.ft2", "ft²")
	squareInch = New("unit.in2", "in²")
)

// named writes the units of a quantity as the language does.
func (v Voice) named(quantity string) string {
	for _, name := range []Text{CubicInch, SquareFoot, squareInch} {
		if translated := v.Catalogue[name.ID]; translated != "" {
			quantity = strings.ReplaceAll(quantity, name.English, translated)
		}
	}
	return quantity
}

func (v Voice) decimal(quantity string) string {
	if v.DecimalComma {
		return strings.ReplaceAll(quantity, ".", ",")
	}
	return quantity
}
