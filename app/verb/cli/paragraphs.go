package cli

import (
	"io"
	"strings"
	"unicode/utf8"

	"studbay/plan/words"
)

// lineWidth is what a terminal is sure to hold.
const lineWidth = 80

// Paragraphs gathers text for people, broken at lineWidth.
type Paragraphs struct {
	b     strings.Builder
	Voice words.Voice
}

// Blank leaves a line empty.
func (p *Paragraphs) Blank() { p.b.WriteByte('\n') }

// Put writes a text behind a first mark, its further lines as far in.
func (p *Paragraphs) Put(mark string, t words.Text) {
	in := utf8.RuneCountInString(mark)
	line, written := mark, false
	for word := range strings.FieldsSeq(p.Voice.Say(t)) {
		if written && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > lineWidth {
			p.b.WriteString(strings.TrimRight(line, " ") + "\n")
			line, written = strings.Repeat(" ", in), false
		}
		if written {
			line += " "
		}
		line, written = line+word, true
	}
	p.b.WriteString(strings.TrimRight(line, " ") + "\n")
}

// Text writes a text as it is, its line ends in it.
func (p *Paragraphs) Text(text string) { p.b.WriteString(text) }

// Caution writes what goes with everything that judges.
func (p *Paragraphs) Caution() { p.Text(p.Voice.Say(Caution) + "\n") }

// Write writes all that was gathered.
func (p *Paragraphs) Write(w io.Writer) error {
	_, err := io.WriteString(w, p.b.String())
	return err
}
