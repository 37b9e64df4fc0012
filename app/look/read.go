package look

import (
	"errors"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ErrorText says an error in a voice where it is one of ours, else as it says itself.
func ErrorText(v words.Voice, err error) string {
	var refusal *plan.Refusal
	if errors.As(err, &refusal) {
		return v.Say(refusal.Text)
	}
	var fault *words.Error
	if errors.As(err, &fault) {
		return v.Say(fault.Text)
	}
	return err.Error()
}

// Said is an error that says itself in a voice; no error stays none.
func Said(v words.Voice, err error) error {
	if err == nil {
		return nil
	}
	return errors.New(ErrorText(v, err))
}

// ReadLength reads a length as fields show it or as people write it; without a unit it is
// as unit.System.Parse has it. Its error says in the voice's words how a length is
// written.
func ReadLength(v words.Voice, text string) (unit.Length, error) {
	return readLength(v, text, v.System.Parse)
}

// ReadThickness is ReadLength for what is thin: in metric 12.7 is no 12.7 m.
func ReadThickness(v words.Voice, text string) (unit.Length, error) {
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
