package words

import (
	"errors"
	"strings"
	"unicode/utf8"

	"studbay/plan/unit"
)

// Error is an error that a Voice can say. Error itself says it in English with imperial
// units.
type Error struct{ Text Text }

// Fault returns an *Error of a text.
func Fault(id, english string, args ...any) error { return &Error{New(id, english, args...)} }

func (e *Error) Error() string { return e.Text.String() }

// Teller is an error that a Voice can say, beside *Error.
type Teller interface {
	error
	Told() Text
}

// SayError says an error in the voice's language as far as it is one that a Voice can say,
// what stands before or after such a cause as it is, and any other as it says itself.
func (v Voice) SayError(err error) string {
	switch e := err.(type) {
	case *Error:
		return v.Say(e.Text)
	case Teller:
		return v.Say(e.Told())
	case *unit.SyntaxError:
		return v.unread(e)
	}
	switch err {
	case unit.ErrInexact:
		return v.Say(New("unit.inexact", "finer than can be held exactly"))
	case unit.ErrRange:
		return v.Say(New("unit.range", "too large to hold"))
	}
	if cause := errors.Unwrap(err); cause != nil {
		if before, ok := strings.CutSuffix(err.Error(), cause.Error()); ok {
			return before + v.SayError(cause)
		}
	}
	return err.Error()
}

// unread says at which character a quantity cannot be read; in English it says more.
func (v Voice) unread(e *unit.SyntaxError) string {
	if v.Catalogue == nil {
		return e.Error()
	}
	return v.Say(New("unit.unread", "“{0}” is not understood at character {1}", e.Text, utf8.RuneCountInString(e.Text[:min(e.At, len(e.Text))])+1))
}
