package card

import (
	"errors"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// ReadLength reads a length as fields show it or as people write it; without a unit it is
// as unit.System.Parse has it. Its error says in the voice's words how a length is
// written.
func ReadLength(v words.Voice, text string) (unit.Length, error) {
	return readLength(v, text, v.System.Parse)
}

// readThickness is ReadLength of what is thin: 12.7 is no 12.7 m.
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
		return 0, errors.New(v.Say(words.New("length.none", "a length is wanted, such as {0}", words.LengthSample(v.System))))
	case errors.Is(err, unit.ErrRange), errors.Is(err, unit.ErrInexact):
		return 0, errors.New(v.Say(words.New("length.unheld", "“{0}” is too long or too fine to hold; write it such as {1}", text, words.LengthSample(v.System))))
	}
	return 0, errors.New(v.Say(words.NoLength(text, v.System)))
}

// read returns a value that was parsed, or an error that says what such a text is like.
func read[T any](c Context, parse func(string) (T, error), text string, wanted func(text string) words.Text) (T, error) {
	value, err := parse(strings.TrimSpace(text))
	if err != nil {
		return value, errors.New(c.Voice.Say(wanted(strings.TrimSpace(text))))
	}
	return value, nil
}

// wireSize reads a size of wire.
func (c Context) wireSize(text string) (unit.AWG, error) {
	return read(c, unit.ParseAWG, text, words.NoWireSize)
}

// volume reads a volume.
func (c Context) volume(text string) (unit.Volume, error) {
	return read(c, unit.ParseVolume, text, words.NoVolume)
}

// sizeField is a field of a size of wire.
func (c Context) sizeField(label string, now func() string, write func(unit.AWG) error) *Field {
	return NewField(c, Spec{
		Label: label, Read: now,
		Write: func(text string) error {
			size, err := c.wireSize(text)
			if err != nil {
				return err
			}
			return c.fault(write(size))
		},
		Check: func(text string) error {
			_, err := c.wireSize(text)
			return err
		},
	})
}
