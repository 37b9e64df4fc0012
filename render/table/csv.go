package table

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
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
		return title + " (" + DecimalUnit(t.Voice.System) + ")"
	case Volume:
		return title + " (" + t.Voice.Say(words.CubicInch) + ")"
	}
	return title
}

// plain is a cell as a spreadsheet takes it.
func (c Cell) plain(s unit.System) string {
	switch c.Kind {
	case Text:
		return harmless(c.Text)
	case Length:
		return Decimal(c.Length, s)
	case Volume:
		return c.Volume.String()
	case Number:
		return strconv.Itoa(c.Number)
	case Figure:
		return c.Text
	}
	return ""
}

// harmless puts an apostrophe before text that spreadsheets take for a formula: the
// first characters are those of the CSV injection page of the OWASP foundation. Text
// counts as it came and as it is written, as a reader may drop what begins it.
func harmless(text string) string {
	seen := visible(text)
	if isFormula(text) || isFormula(seen) {
		return "'" + seen
	}
	return seen
}

func isFormula(text string) bool {
	first, _ := utf8.DecodeRuneInString(text)
	return text != "" && strings.ContainsRune("=+-@＝＋－＠\t\r\n\x00", first)
}

// visible is text without the characters that show nothing or turn the order of others,
// and those that no workbook can hold (XML 1.0, production 2). Line breaks and tabs part
// words, so they become spaces.
func visible(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return ' '
		case plan.IsUnseen(r) || r == 0xfffe || r == 0xffff:
			return -1
		}
		return r
	}, text)
}
