package card

import (
	"errors"
	"strconv"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// spelling is how values of a type are written on a card, and read from what is typed.
type spelling[V any] struct {
	show func(V) string
	read func(text string) (V, error) // its error is said as it says itself
}

// checked is a spelling that also refuses what ok has an error for.
func (s spelling[V]) checked(ok func(V) error) spelling[V] {
	return spelling[V]{s.show, func(text string) (V, error) {
		v, err := s.read(text)
		if err == nil {
			err = ok(v)
		}
		return v, err
	}}
}

// orNothing is a spelling that shows a value of nothing as an empty line.
func orNothing[V comparable](s spelling[V]) spelling[V] {
	var none V
	return spelling[V]{func(v V) string {
		if v == none {
			return ""
		}
		return s.show(v)
	}, s.read}
}

// clearable is a spelling that reads an empty line as nothing.
func clearable[V any](s spelling[V]) spelling[V] {
	return spelling[V]{s.show, func(text string) (v V, err error) {
		if strings.TrimSpace(text) == "" {
			return v, nil
		}
		return s.read(text)
	}}
}

// texts are written as they are.
func texts(*Context) spelling[string] {
	return spelling[string]{
		func(text string) string { return text },
		func(text string) (string, error) { return strings.TrimSpace(text), nil },
	}
}

// lengths are written in the form of the units; a rounded one begins with ≈.
func lengths(c *Context) spelling[unit.Length] { return spelling[unit.Length]{c.long, c.readLength} }

// heights are lengths in inches or millimetres alone.
func heights(c *Context) spelling[unit.Length] { return spelling[unit.Length]{c.short, c.readLength} }

// thicknesses are heights of what is thin: 12.7 is no 12.7 m.
func thicknesses(c *Context) spelling[unit.Length] {
	return spelling[unit.Length]{c.short, func(text string) (unit.Length, error) { return readThickness(c.Voice, text) }}
}

// short writes a height; a rounded one begins with ≈.
func (c *Context) short(l unit.Length) string { return c.say("plain", "{0}", words.Height(l)) }

// long writes a length; a rounded one begins with ≈.
func (c *Context) long(l unit.Length) string { return c.say("plain", "{0}", l) }

func (c *Context) readLength(text string) (unit.Length, error) { return ReadLength(c.Voice, text) }

// counts are whole numbers above zero.
func counts(c *Context) spelling[int] {
	return whole(1, 1<<30, func() error {
		return c.wanted("count.wanted", "write a whole number above zero, such as 20")
	})
}

// whole is the spelling of whole numbers between two, both of them included.
func whole(least, most int, wanted func() error) spelling[int] {
	return spelling[int]{strconv.Itoa, func(text string) (int, error) {
		n, err := strconv.Atoi(strings.TrimSpace(text))
		if err != nil || n < least || n > most {
			return 0, wanted()
		}
		return n, nil
	}}
}

// wireSizes are numbers of the American wire gauge.
func wireSizes(c *Context) spelling[unit.AWG] {
	return spelling[unit.AWG]{unit.AWG.String, parsed(c, unit.ParseAWG, words.NoWireSize)}
}

// volumes are written in the units of the plan; none is an empty line.
func volumes(c *Context) spelling[*unit.Volume] {
	parse := parsed(c, unit.ParseVolume, words.NoVolume)
	return spelling[*unit.Volume]{
		func(v *unit.Volume) string {
			if v == nil {
				return ""
			}
			return c.say("plain", "{0}", *v)
		},
		func(text string) (*unit.Volume, error) {
			if strings.TrimSpace(text) == "" {
				return nil, nil
			}
			v, err := parse(text)
			return &v, err
		},
	}
}

// parsed reads a value, or says what such a text is like.
func parsed[V any](c *Context, parse func(string) (V, error), wanted func(text string) words.Text) func(string) (V, error) {
	return func(text string) (V, error) {
		text = strings.TrimSpace(text)
		v, err := parse(text)
		if err != nil {
			err = errors.New(c.Voice.Say(wanted(text)))
		}
		return v, err
	}
}

// ReadLength reads a length as fields show it or as people write it; without a unit it is
// as unit.System.Parse has it. Its error says in the voice's words how a length is
// written.
func ReadLength(v words.Voice, text string) (unit.Length, error) {
	return readLength(v, text, v.System.Parse)
}

func readThickness(v words.Voice, text string) (unit.Length, error) {
	return readLength(v, text, func(text string) (unit.Length, error) { return unit.Parse(text, v.System.Bare()) })
}

func readLength(v words.Voice, text string, parse func(string) (unit.Length, error)) (unit.Length, error) {
	text = strings.TrimSpace(strings.TrimPrefix(strings.TrimSpace(text), "≈"))
	l, err := parse(text)
	switch {
	case err == nil:
		return l, nil
	case text == "":
		return 0, errors.New(v.Say(words.New("length.none", "enter a length, such as {0}", words.LengthSample(v.System))))
	case errors.Is(err, unit.ErrRange), errors.Is(err, unit.ErrInexact):
		return 0, errors.New(v.Say(words.New("length.unheld", "“{0}” is too long or too fine; write it such as {1}", text, words.LengthSample(v.System))))
	}
	return 0, errors.New(v.Say(words.NoLength(text, v.System)))
}
