package cli

import (
	"io"
	"strings"
	"unicode/utf8"

	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// Table gathers lines of text and rows whose volumes align at the decimal point.
type Table struct {
	Voice words.Voice
	lines []tableLine
}

// tableLine is a row where it is of columns, else plain text.
type tableLine struct {
	text             string
	columns          bool
	name, what, work string
	figure           string // the last column
	rule             bool   // a line above it, for a sum
}

// Line puts down a line of its own; a zero text is an empty one.
func (t *Table) Line(text words.Text) {
	t.lines = append(t.lines, tableLine{text: t.Voice.Say(text)})
}

// Paragraph puts down text broken at 80 columns.
func (t *Table) Paragraph(text words.Text) {
	line := ""
	for word := range strings.FieldsSeq(t.Voice.Say(text)) {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > 80 {
			t.lines = append(t.lines, tableLine{text: line})
			line = ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	t.lines = append(t.lines, tableLine{text: line})
}

// IsEmpty reports whether nothing was put down.
func (t *Table) IsEmpty() bool { return len(t.lines) == 0 }

// Heading puts down what a column of volumes is of.
func (t *Table) Heading(what words.Text, figure string) {
	t.lines = append(t.lines, tableLine{columns: true, name: t.Voice.Say(what), figure: figure})
}

// Row puts down a volume with where it comes from.
func (t *Table) Row(name string, what words.Text, work string, v unit.Volume) {
	t.lines = append(t.lines, tableLine{columns: true, name: name, what: t.Voice.Say(what), work: work, figure: schedule.TwoPlaces(v)})
}

// Total puts down a sum under a line.
func (t *Table) Total(v unit.Volume) {
	t.lines = append(t.lines, tableLine{columns: true, figure: schedule.TwoPlaces(v), rule: true})
}

// Write lays the columns out and writes everything at once.
func (t *Table) Write(w io.Writer) error {
	t.align(func(l *tableLine) *string { return &l.work })
	t.align(func(l *tableLine) *string { return &l.figure })
	name, what, work, figure := t.widths()
	var b strings.Builder
	for _, l := range t.lines {
		if l.rule {
			b.WriteString(strings.Repeat(" ", name+what+work+6) + strings.Repeat("-", figure) + "\n")
		}
		text := l.text
		if l.columns {
			text = PadRight(PadRight(l.name, name)+"  "+l.what, name+2+what) + "  " + PadLeft(l.work, work) + "  " +
				PadLeft(l.figure, figure)
		}
		b.WriteString(strings.TrimRight(text, " ") + "\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func (t *Table) widths() (name, what, work, figure int) {
	for _, l := range t.lines {
		if l.what != "" { // a heading may run on into the next column
			name = max(name, utf8.RuneCountInString(l.name))
		}
		what = max(what, utf8.RuneCountInString(l.what))
		work = max(work, utf8.RuneCountInString(l.work))
		figure = max(figure, utf8.RuneCountInString(l.figure))
	}
	return name, what, work, figure
}

// align pads a column of decimals behind, so that right-aligned ones meet at the point.
func (t *Table) align(column func(*tableLine) *string) {
	most := 0
	for i := range t.lines {
		most = max(most, decimalsOf(*column(&t.lines[i])))
	}
	for i := range t.lines {
		if cell := column(&t.lines[i]); strings.Contains(*cell, ".") {
			*cell += strings.Repeat(" ", most-decimalsOf(*cell))
		}
	}
}

func decimalsOf(figure string) int {
	_, decimals, _ := strings.Cut(figure, ".")
	return len(decimals)
}

// PadRight fills a text with white at its right to a width in letters.
func PadRight(text string, width int) string {
	return text + strings.Repeat(" ", max(0, width-utf8.RuneCountInString(text)))
}

// PadLeft fills a text with white at its left to a width in letters.
func PadLeft(text string, width int) string {
	return strings.Repeat(" ", max(0, width-utf8.RuneCountInString(text))) + text
}
