package dialog

import (
	"errors"
	"strconv"

	"studbay/app/look"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Length reads a length in the units of the plan.
func (s *Stage) Length(text string) (unit.Length, error) { return look.ReadLength(s.voice, text) }

// IsLength is a check that a text is a length.
func (s *Stage) IsLength(text string) error {
	_, err := s.Length(text)
	return err
}

// IsLengthOverNothing is a check that a text is a length above zero.
func (s *Stage) IsLengthOverNothing(text string) error {
	l, err := s.Length(text)
	if err == nil && l <= 0 {
		return errors.New(s.say("form.positive", "it must be more than zero, such as {0}", words.LengthSample(s.voice.System)))
	}
	return err
}

// Count reads a whole number from 1 to 1000.
func (s *Stage) Count(text string) (int, error) {
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > 1000 {
		return 0, errors.New(s.say("form.count", "“{0}” is not a whole number from 1 to 1000; write it such as 20", text))
	}
	return n, nil
}

// IsCount is a check that a text is such a number.
func (s *Stage) IsCount(text string) error {
	_, err := s.Count(text)
	return err
}

// IsSaid returns a check that something is written, with a sample.
func (s *Stage) IsSaid(sample string) func(string) error {
	return func(text string) error {
		if text == "" {
			return errors.New(s.say("form.empty", "write something here, {0}", sample))
		}
		return nil
	}
}
