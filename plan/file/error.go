package file

import (
	"bytes"
	"errors"
	"strconv"
	"strings"
	"unicode/utf8"

	"studbay/plan"
	"studbay/plan/words"
)

// Error says what is wrong with a file, and where.
type Error struct {
	File   string // as the user named it
	Place  string // JSON pointer (RFC 6901), such as /levels/0/rooms/2; empty for the whole file
	Line   int    // from 1; 0 where no line can be named
	Column int    // in characters, from 1
	Err    error
}

// Error says file, line, column, place and what is wrong, in English.
func (e *Error) Error() string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Line > 0 {
		b.WriteString(":" + strconv.Itoa(e.Line) + ":" + strconv.Itoa(e.Column))
	}
	if e.Place != "" {
		b.WriteString(": " + plan.Clipped(e.Place, 200))
	}
	return b.String() + ": " + e.Err.Error()
}

// Unwrap returns what is wrong, without the place.
func (e *Error) Unwrap() error { return e.Err }

// Text says what is wrong and what to do, without the place, for a voice to translate.
func (e *Error) Text() words.Text {
	var f *Fault
	var r *plan.Refusal
	switch {
	case errors.As(e.Err, &f):
		return f.Text
	case errors.As(e.Err, &r):
		return r.Text
	}
	return words.New("file.other", "{0}", e.Err.Error())
}

// Fault is one thing that can be wrong with a file, as a text to translate.
type Fault struct {
	Text  words.Text
	Cause error // nil, or what the system or another package said
}

// Told returns what it says, for a Voice.
func (f *Fault) Told() words.Text { return f.Text }

// Error says the fault in English.
func (f *Fault) Error() string { return f.Text.String() }

// Unwrap returns the cause.
func (f *Fault) Unwrap() error { return f.Cause }

func fault(cause error, id, english string, args ...any) *Fault {
	return &Fault{Text: words.New(id, english, args...), Cause: cause}
}

// trouble is a fault on its way out of the reader.
type trouble struct {
	err     error
	at      int    // byte offset; -1 where there is none
	pointer string // JSON pointer (RFC 6901)
}

func (t *trouble) Error() string { return t.err.Error() }

// unescaped reads one step of an RFC 6901 pointer.
func unescaped(step string) string {
	if !strings.Contains(step, "~") {
		return step
	}
	return strings.NewReplacer("~1", "/", "~0", "~").Replace(step)
}

// place makes the *Error of a file from what a reader returned.
func place(name string, data []byte, err error) error {
	e := &Error{File: name, Err: err}
	var t *trouble
	if errors.As(err, &t) {
		e.Err, e.Place = t.err, t.pointer
		if t.at >= 0 {
			e.Line, e.Column = lineColumn(data, t.at)
		}
	}
	return e
}

// lineColumn counts from 1; columns are in characters.
func lineColumn(data []byte, at int) (line, column int) {
	before := data[:min(at, len(data))]
	start := bytes.LastIndexByte(before, '\n') + 1
	return bytes.Count(before, []byte{'\n'}) + 1, utf8.RuneCount(before[start:]) + 1
}
