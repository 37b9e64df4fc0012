package table

import (
	"bytes"
	"encoding/csv"
	"testing"

	"github.com/xuri/excelize/v2"

	"studbay/plan/words"
)

// What a cell of text becomes in CSV, where a reader may take it for a formula, and in a
// workbook, which says of each cell that it is text.
var textCells = []struct{ name, text, csv, xlsx, source string }{
	{"plain", "GFCI, counter", "GFCI, counter", "GFCI, counter", "RFC 4180"},
	{"an equals sign", "=1+1", "'=1+1", "=1+1", "OWASP CSV injection"},
	{"plus, minus, at", "+1", "'+1", "+1", "OWASP CSV injection"},
	{"minus", "-1", "'-1", "-1", "OWASP CSV injection"},
	{"at", "@SUM(1)", "'@SUM(1)", "@SUM(1)", "OWASP CSV injection"},
	{"a tab", "\t=1", "' =1", " =1", "OWASP CSV injection"},
	{"a carriage return", "\r=1", "'=1", "=1", "OWASP CSV injection"},
	{"a line feed", "\n=1", "' =1", " =1", "OWASP CSV injection"},
	{"a line feed and no sign", "\nnote", "' note", " note", "OWASP CSV injection"},
	{"a NUL", "\x00=1", "'=1", "=1", "readers drop NUL: common practice"},
	{"full width equals", "＝1+1", "'＝1+1", "＝1+1", "OWASP CSV injection, full-width forms"},
	{"full width plus", "＋1", "'＋1", "＋1", "OWASP CSV injection, full-width forms"},
	{"full width minus", "－1", "'－1", "－1", "OWASP CSV injection, full-width forms"},
	{"full width at", "＠SUM(1)", "'＠SUM(1)", "＠SUM(1)", "OWASP CSV injection, full-width forms"},
	{"small forms", "﹦1+1", "'﹦1+1", "﹦1+1", "OWASP CSV injection; Unicode block Small Form Variants"},
	{"a space before a sign", " =1", "' =1", " =1", "readers drop spaces: common practice"},
	{"a byte order mark before a sign", "\ufeff=1", "'\ufeff=1", "\ufeff=1", "readers drop it: common practice"},
	{"a line separator", "two\u2028lines", "two lines", "two lines", "one cell is one line here"},
	{"a control before a sign", "\x1b=1", "'=1", "=1", "what is left begins with a sign"},
	{"an override before a sign", "\u202e=1", "'=1", "=1", "what is left begins with a sign"},
	{"controls within", "by\x07 the\x1b[31m \u202edoor\u202c\x7f", "by the[31m door", "by the[31m door", "Unicode category Cc, annex 9"},
	{"two lines", "beside\r\nthe bench", "beside the bench", "beside the bench", "one cell is one line here"},
	{"no character", "a\ufffeb", "ab", "ab", "XML 1.0 production 2"},
	{"a sign within", "a=b", "a=b", "a=b", "RFC 4180"},
	{"other letters", "½ é 電", "½ é 電", "½ é 電", "RFC 4180"},
}

// unmarked reads the byte order mark that a spreadsheet wants before UTF-8.
func unmarked(t *testing.T, written *bytes.Buffer) *bytes.Buffer {
	t.Helper()
	if mark := written.Next(3); string(mark) != "\xef\xbb\xbf" {
		t.Fatalf("CSV begins with % x, want the byte order mark ef bb bf (Unicode 16, table 2-4)", mark)
	}
	return written
}

func TestCellsOfText(t *testing.T) {
	in := Table{Title: words.New("t", "T"), Columns: []Column{{"note", words.New("c.note", "Note"), Text}}}
	for _, tt := range textCells {
		in.Rows = append(in.Rows, Row{Cells: []Cell{TextOf(tt.text)}})
	}
	var plain, workbook bytes.Buffer
	if err := WriteCSV(&plain, in); err != nil {
		t.Fatal(err)
	}
	lines, err := csv.NewReader(unmarked(t, &plain)).ReadAll()
	if err != nil || len(lines) != len(textCells)+1 {
		t.Fatalf("%d lines (%v), want %d", len(lines), err, len(textCells)+1)
	}
	if err := WriteXLSX(&workbook, in); err != nil {
		t.Fatal(err)
	}
	book, err := excelize.OpenReader(&workbook)
	if err != nil {
		t.Fatal(err)
	}
	for i, tt := range textCells {
		if got := lines[i+1][0]; got != tt.csv {
			t.Errorf("%s: CSV has %q, want %q (%s)", tt.name, got, tt.csv, tt.source)
		}
		cell, _ := excelize.CoordinatesToCellName(1, i+2)
		if got, err := book.GetCellValue("T", cell); err != nil || got != tt.xlsx {
			t.Errorf("%s: the workbook has %q (%v), want %q (%s)", tt.name, got, err, tt.xlsx, tt.source)
		}
	}
}
