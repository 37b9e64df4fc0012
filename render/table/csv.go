package table

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// byteOrderMark tells spreadsheets that the text is UTF-8 (Unicode 23.8); without it they
// take "½" for two letters (common practice).
const byteOrderMark = "\ufeff"

// WriteCSV writes a table by RFC 4180 behind a byte order mark: a line of titles, a line a
// row, CRLF at each end.
// Lengths and volumes are plain decimals with their unit in the title. Text that a
// spreadsheet could run as a formula gets a leading apostrophe, and control characters
// are left out.
func WriteCSV(w io.Writer, t Table) error {
	if _, err := io.WriteString(w, byteOrderMark); err != nil {
		return err
	}
	out := csv.NewWriter(w)
	out.UseCRLF = true
	line := make([]string, len(t.Columns))
	for i, c := range t.Columns {
		line[i] = harmless(t.heading(c))
	}
	if err := out.Write(line); err != nil {
		return err
	}
	for _, row := range t.Rows {
		for i, cell := range row.Cells {
			line[i] = cell.plain(t.Voice.System)
		}
		if err := out.Write(line); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

// heading is a column's title with the unit of what is under it.
func (t Table) heading(c Column) string {
	title := t.Voice.Say(c.Title)
	switch c.Kind {
	case Length:
		return title + " (" + t.Voice.Say(lengthUnits[t.Voice.System]) + ")"
	case Volume:
		return title + " (" + t.Voice.Say(words.CubicInch) + ")"
	}
	return title
}

// plain is a cell as a spreadsheet takes it.
func (c Cell) plain(s unit.System) string {
	if c.Kind == Text {
		return harmless(c.Text)
	}
	return c.decimal(s)
}

// decimal is what a cell holds but text, as a plain decimal; nothing where it is empty.
func (c Cell) decimal(s unit.System) string {
	switch c.Kind {
	case Length:
		return Decimal(c.Length(), s)
	case Volume:
		return c.Volume().String()
	case Number:
		return strconv.Itoa(c.Number())
	case Figure:
		return c.Text
	}
	return ""
}

// harmless puts an apostrophe before text that spreadsheets take for a formula: the
// first characters are those of the CSV injection page of the OWASP foundation, and the
// small forms of the same (Unicode block Small Form Variants). Text counts as it came, as
// it is written, and without spaces and format characters before it, as a reader may drop
// what begins it.
func harmless(text string) string {
	seen := visible(text)
	if isFormula(text) || isFormula(strings.TrimLeftFunc(seen, isDropped)) {
		return "'" + seen
	}
	return seen
}

// isDropped reports whether a reader may drop a character at the beginning of a cell.
func isDropped(r rune) bool { return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) }

func isFormula(text string) bool {
	first, _ := utf8.DecodeRuneInString(text)
	return text != "" && strings.ContainsRune("=+-@＝＋－＠﹦﹢﹣﹫\t\r\n\x00", first)
}

// visible is text without the characters that show nothing or turn the order of others,
// and those that no workbook can hold (XML 1.0, production 2). Line breaks and tabs part
// words, so they become spaces.
func visible(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t' || unicode.In(r, unicode.Zl, unicode.Zp):
			return ' '
		case plan.IsUnseen(r) || r == 0xfffe || r == 0xffff:
			return -1
		}
		return r
	}, text)
}
