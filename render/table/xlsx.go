package table

import (
	"fmt"
	"io"
	"strconv"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"
)

// sheetName is what the one sheet of a workbook is called where the title is empty.
const sheetName = "Table"

// WriteXLSX writes a table as an Office Open XML workbook (ECMA-376) of one sheet: a
// bold line of titles that stays in sight, a row a row. Numbers, lengths and volumes
// are numbers; text is stored as text, so none of it can run as a formula, without its
// control characters.
func WriteXLSX(w io.Writer, t Table) (err error) {
	book := excelize.NewFile()
	defer func() {
		if closed := book.Close(); err == nil {
			err = closed
		}
	}()
	name := t.sheetName()
	if err := book.SetSheetName(book.GetSheetName(0), name); err != nil {
		return err
	}
	out, err := book.NewStreamWriter(name)
	if err != nil {
		return err
	}
	if err := t.layout(out); err != nil {
		return err
	}
	bold, err := book.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true}})
	if err != nil {
		return err
	}
	if err := t.stream(out, bold); err != nil {
		return err
	}
	_, err = book.WriteTo(w)
	return err
}

// sheetName is the title cut to what a sheet may be called: 31 characters, and none of
// a few signs.
func (t Table) sheetName() string {
	name := []rune{}
	for _, r := range t.Voice.Say(t.Title) {
		switch r {
		case ':', '\\', '/', '?', '*', '[', ']', '\'':
			continue
		}
		if name = append(name, r); len(name) == 31 {
			break
		}
	}
	if len(name) == 0 {
		return sheetName
	}
	return string(name)
}

// The width of a column in letters, as wide as what is in it within reason.
const (
	leastWidth = 6
	mostWidth  = 48
)

func (t Table) layout(out *excelize.StreamWriter) error {
	for i, c := range t.Columns {
		width := utf8.RuneCountInString(t.heading(c))
		for _, row := range t.Rows {
			width = max(width, utf8.RuneCountInString(row.Cells[i].plain(t.Voice.System)))
		}
		if err := out.SetColWidth(i+1, i+1, float64(min(max(width, leastWidth), mostWidth)+2)); err != nil {
			return err
		}
	}
	return out.SetPanes(&excelize.Panes{
		Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft",
	})
}

func (t Table) stream(out *excelize.StreamWriter, bold int) error {
	line := make([]any, len(t.Columns))
	for i, c := range t.Columns {
		line[i] = excelize.Cell{StyleID: bold, Value: t.heading(c)}
	}
	if err := out.SetRow("A1", line); err != nil {
		return err
	}
	for n, row := range t.Rows {
		for i, cell := range row.Cells {
			value, err := t.value(cell)
			if err != nil {
				return err
			}
			line[i] = value
		}
		if err := out.SetRow(fmt.Sprintf("A%d", n+2), line); err != nil {
			return err
		}
	}
	return out.Flush()
}

// value is a cell as the workbook holds it: its numbers are binary floats.
func (t Table) value(c Cell) (any, error) {
	switch c.Kind {
	case Empty:
		return nil, nil
	case Text:
		return visible(c.Text), nil
	case Number:
		return c.Number, nil
	}
	return strconv.ParseFloat(c.plain(t.Voice.System), 64)
}
