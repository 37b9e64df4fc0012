package table

import (
	"encoding/csv"
	"strings"
	"testing"
	"unicode/utf8"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// FuzzCSV writes texts as cells and reads them back by another reader of RFC 4180: the
// rows and columns are those of the table, the numbers are untouched, and no cell begins
// as a formula does (the characters are those of OWASP's page on CSV injection: = + - @,
// tab, carriage return, line feed and the full-width signs; and NUL, which some readers
// pass over).
func FuzzCSV(f *testing.F) {
	for _, seed := range []string{"", "Kitchen", `12" box, old`, "=1+1", "two\r\nlines", "-5", "@SUM(A1)", "\tA", "a;b,c", `"`, "\n=1", "\x00=1", "＝1", "＋1", "－1", "＠A1"} {
		f.Add(seed, seed)
	}
	f.Fuzz(func(t *testing.T, a, b string) {
		written := Table{
			Title: words.New("plain", "{0}", "t"),
			Columns: []Column{
				{ID: "a", Title: words.New("plain", "{0}", "A"), Kind: Text},
				{ID: "n", Title: words.New("plain", "{0}", "N"), Kind: Number},
				{ID: "b", Title: words.New("plain", "{0}", "B"), Kind: Text},
				{ID: "l", Title: words.New("plain", "{0}", "L"), Kind: Length},
			},
			Rows: []Row{
				{Cells: []Cell{TextOf(a), NumberOf(1), TextOf(b), LengthOf(-unit.Inch)}},
				{Cells: []Cell{TextOf(b), NumberOf(-2), TextOf(a), LengthOf(unit.Inch)}},
			},
		}
		var out strings.Builder
		if err := WriteCSV(&out, written); err != nil {
			t.Fatal(err)
		}
		read, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(out.String(), "\ufeff"))).ReadAll()
		if err != nil {
			t.Fatalf("%v in %q", err, out.String())
		}
		if len(read) != 3 {
			t.Fatalf("%d lines of %q, want 3", len(read), out.String())
		}
		for i, want := range [][2]string{{"1", "-1"}, {"-2", "1"}} {
			line := read[i+1]
			if len(line) != 4 || line[1] != want[0] || line[3] != want[1] {
				t.Errorf("line %q, want %q in the second and last of four", line, want)
			}
			for _, cell := range []string{line[0], line[2]} {
				if first, _ := utf8.DecodeRuneInString(cell); cell != "" && strings.ContainsRune("=+-@\t\r\n\x00＝＋－＠", first) {
					t.Errorf("cell %q begins as a formula does", cell)
				}
				if strings.ContainsRune(cell, 0) {
					t.Errorf("cell %q holds a NUL", cell)
				}
			}
		}
	})
}
