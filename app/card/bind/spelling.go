package bind

import (
	"strconv"
	"strings"

	"studbay/app/look"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Spelling is how values of a type are written on a card, and read from what is typed.
type Spelling[V any] struct {
	Show func(V) string
	Read func(text string) (V, error) // its error is said as it says itself
}

// Checked is a spelling that also refuses what ok has an error for.
func (s Spelling[V]) Checked(ok func(V) error) Spelling[V] {
	return Spelling[V]{s.Show, func(text string) (V, error) {
		v, err := s.Read(text)
		if err == nil {
			err = ok(v)
		}
		return v, err
	}}
}

// OrNothing is a spelling that shows a value of nothing as an empty line.
func OrNothing[V comparable](s Spelling[V]) Spelling[V] {
	return Spelling[V]{func(v V) string {
		var none V
		if v == none {
			return ""
		}
		return s.Show(v)
	}, s.Read}
}

// Clearable is a spelling that reads an empty line as nothing.
func Clearable[V any](s Spelling[V]) Spelling[V] {
	return Spelling[V]{s.Show, func(text string) (v V, err error) {
		if strings.TrimSpace(text) == "" {
			return v, nil
		}
		return s.Read(text)
	}}
}

// Texts are written as they are.
func Texts(*Context) Spelling[string] {
	return Spelling[string]{
		func(text string) string { return text },
		func(text string) (string, error) { return strings.TrimSpace(text), nil },
	}
}

// Lengths are written in the form of the units; a rounded one begins with ≈.
func Lengths(c *Context) Spelling[unit.Length] { return lengths(c, long, look.ReadLength) }

// Heights are lengths in inches or millimetres alone.
func Heights(c *Context) Spelling[unit.Length] { return lengths(c, short, look.ReadLength) }

// Thicknesses are heights of what is thin: 12.7 is no 12.7 m.
func Thicknesses(c *Context) Spelling[unit.Length] { return lengths(c, short, look.ReadThickness) }

func lengths(c *Context, write func(unit.Length) words.Text, read func(words.Voice, string) (unit.Length, error)) Spelling[unit.Length] {
	return Spelling[unit.Length]{
		func(l unit.Length) string { return c.Voice.Say(write(l)) },
		func(text string) (unit.Length, error) { return read(c.Voice, text) },
	}
}

func long(l unit.Length) words.Text  { return words.New("plain", "{0}", l) }
func short(l unit.Length) words.Text { return words.New("plain", "{0}", words.Height(l)) }

// Counts are whole numbers above zero.
func Counts(c *Context) Spelling[int] {
	return Whole(c, 1, 1<<30, words.New("count.wanted", "write a whole number above zero, such as 20"))
}

// Whole is the spelling of whole numbers between two, both of them included.
func Whole(c *Context, least, most int, wanted words.Text) Spelling[int] {
	return Spelling[int]{strconv.Itoa, func(text string) (int, error) {
		n, err := strconv.Atoi(strings.TrimSpace(text))
		if err != nil || n < least || n > most {
			return 0, look.Said(c.Voice, &words.Error{Text: wanted})
		}
		return n, nil
	}}
}

// WireSizes are numbers of the American wire gauge.
func WireSizes(c *Context) Spelling[unit.AWG] {
	return Spelling[unit.AWG]{unit.AWG.String, parsed(c, unit.ParseAWG, words.NoWireSize)}
}

// Volumes are written in the units of the plan; none is an empty line.
func Volumes(c *Context) Spelling[*unit.Volume] {
	parse := parsed(c, unit.ParseVolume, words.NoVolume)
	return Clearable(Spelling[*unit.Volume]{
		func(v *unit.Volume) string {
			if v == nil {
				return ""
			}
			return c.Say("plain", "{0}", *v)
		},
		func(text string) (*unit.Volume, error) {
			v, err := parse(text)
			return &v, err
		},
	})
}

// Weights are written in the units of the plan; none is an empty line.
func Weights(c *Context) Spelling[unit.Weight] {
	return OrNothing(Spelling[unit.Weight]{
		func(w unit.Weight) string { return c.Say("plain", "{0}", w) },
		parsed(c, func(text string) (unit.Weight, error) { return unit.ParseWeight(text, c.Voice.System.BareWeight()) }, words.NoWeight),
	})
}

// Currents are written in amperes; none is an empty line.
func Currents(c *Context) Spelling[unit.Current] {
	return Clearable(OrNothing(Spelling[unit.Current]{unit.Current.Text, func(text string) (unit.Current, error) {
		v, err := unit.ParseCurrent(text)
		if err != nil {
			err = look.Said(c.Voice, &words.Error{Text: words.New("current.wanted", "write what its plate says in amperes, such as 9.8")})
		}
		return v, err
	}}))
}

// parsed reads a value, or says what such a text is like.
func parsed[V any](c *Context, parse func(string) (V, error), wanted func(text string) words.Text) func(string) (V, error) {
	return func(text string) (V, error) {
		text = strings.TrimSpace(text)
		v, err := parse(text)
		if err != nil {
			err = look.Said(c.Voice, &words.Error{Text: wanted(text)})
		}
		return v, err
	}
}
