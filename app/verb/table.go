package verb

import (
	"io"
	"strings"
	"unicode/utf8"

	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// table gathers lines of text and rows whose volumes align at the decimal point.
type table struct {
	voice words.Voice
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

// line puts down a line of its own; a zero text is an empty one.
func (t *table) line(text words.Text) {
	t.lines = append(t.lines, tableLine{text: t.voice.Say(text)})
}

// paragraph puts down text broken at 80 columns.
func (t *table) paragraph(text words.Text) {
	line := ""
	for word := range strings.FieldsSeq(t.voice.Say(text)) {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > 80 {
			t.lines = append(t.lines, tableLine{text: line})
			line = ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	t.lines = append(t.lines, tableLine{text: line})
}

func (t *table) heading(what words.Text, figure string) {
	t.lines = append(t.lines, tableLine{columns: true, name: t.voice.Say(what), figure: figure})
}

func (t *table) row(name string, what words.Text, work string, v unit.Volume) {
	t.lines = append(t.lines, tableLine{columns: true, name: name, what: t.voice.Say(what), work: work, figure: twoPlaces(v)})
}

func (t *table) total(v unit.Volume) {
	t.lines = append(t.lines, tableLine{columns: true, figure: twoPlaces(v), rule: true})
}

// twoPlaces writes v with two decimals, or more where it has more.
func twoPlaces(v unit.Volume) string { return schedule.TwoPlaces(v) }

// write lays the columns out and writes everything at once.
func (t *table) write(w io.Writer) error {
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
			text = padRight(padRight(l.name, name)+"  "+l.what, name+2+what) + "  " + padLeft(l.work, work) + "  " +
				padLeft(l.figure, figure)
		}
		b.WriteString(strings.TrimRight(text, " ") + "\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func (t *table) widths() (name, what, work, figure int) {
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
func (t *table) align(column func(*tableLine) *string) {
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

func padRight(text string, width int) string {
	return text + strings.Repeat(" ", max(0, width-utf8.RuneCountInString(text)))
}

func padLeft(text string, width int) string {
	return strings.Repeat(" ", max(0, width-utf8.RuneCountInString(text))) + text
}
