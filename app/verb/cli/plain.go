package cli

import (
	"io"
	"strings"
	"unicode"
)

// Plain writes text that people read: what a terminal would obey stands as U+FFFD, since
// a name or note in a plan may come from anyone.
type Plain struct{ To io.Writer }

// Write writes all of a text or fails.
func (p Plain) Write(text []byte) (int, error) {
	if _, err := io.WriteString(p.To, strings.Map(harmless, string(text))); err != nil {
		return 0, err
	}
	return len(text), nil
}

// harmless replaces a control character that is no line end or tab, and a mark that turns
// the direction of writing: ISO/IEC 6429 for the former, Unicode UAX #9 for the latter.
func harmless(r rune) rune {
	if r == '\n' || r == '\t' {
		return r
	}
	if unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) {
		return unicode.ReplacementChar
	}
	return r
}

// Exact returns where a writer writes to, for what programs read.
func Exact(w io.Writer) io.Writer {
	if p, ok := w.(Plain); ok {
		return p.To
	}
	return w
}
