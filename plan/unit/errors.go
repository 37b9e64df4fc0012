package unit

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"
)

// What a well-written quantity can still fail with.
var (
	// ErrInexact says that the whole number behind a quantity cannot hold the value.
	ErrInexact = errors.New("finer than can be held exactly")
	// ErrRange says that the value is too large to hold.
	ErrRange = errors.New("too large to hold")
)

// SyntaxError says which character of a text cannot be read and what would be.
type SyntaxError struct {
	Text string // the whole text, as given
	At   int    // byte offset of the character; len(Text) where the text ends too early
	Want string // what was expected there, in English
}

// Error names the character by its place counted in characters from 1.
func (e *SyntaxError) Error() string {
	if e.Text == "" {
		return "nothing written, want " + e.Want
	}
	if e.At >= len(e.Text) {
		return fmt.Sprintf("%s ends too early, want %s", quoted(e.Text), e.Want)
	}
	r, _ := utf8.DecodeRuneInString(e.Text[e.At:])
	place := utf8.RuneCountInString(e.Text[:e.At]) + 1
	return fmt.Sprintf("%s: %s at character %d, want %s", quoted(e.Text), character(r), place, e.Want)
}

// character quotes a character, a quotation mark in the other kind of quotes.
func character(r rune) string {
	if r == '\'' {
		return `"'"`
	}
	return fmt.Sprintf("%q", r)
}

// quoted quotes a text for a message, one with inch marks so that it is read as typed, only the start of one no person has typed.
func quoted(text string) string {
	end := ""
	if len(text) > maxText {
		text, end = text[:maxText], "..."
	}
	if strings.Contains(text, `"`) && strconv.CanBackquote(text) {
		return "`" + text + "`" + end
	}
	return strconv.Quote(text) + end
}

// quantityError says which text a value that cannot be held was written in.
func quantityError(text string, err error) error {
	return fmt.Errorf("%s: %w", quoted(text), err)
}
