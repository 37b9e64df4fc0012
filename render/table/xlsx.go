package table

import (
	"fmt"
	"io"
	"strconv"
	"time"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"
)

// sheetName is what the one sheet of a workbook is called where the title is empty.
const sheetName = "Table"

// Maker is what a workbook names as the program that made it.
const Maker = "Studbay"

// WriteXLSX writes a table as an Office Open XML workbook (ECMA-376) of one sheet: a
// bold line of titles that stays in sight, filters, and is printed on each page; a row a
// row. Numbers, lengths and volumes
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
	if err := t.describe(book); err != nil {
		return err
	}
	if err := printed(book, name); err != nil {
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
	if err := t.filters(book, name); err != nil {
		return err
	}
	if err := t.stream(out, bold); err != nil {
		return err
	}
	_, err = book.WriteTo(w)
	return err
}

// describe says who made the book and what is in it, and when the plan is of where that
// is known; the library's own name and day go.
func (t Table) describe(book *excelize.File) error {
	made := t.Date
	if made.IsZero() {
		made = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC) // the first day of the archive's files
	}
	day := made.UTC().Format(time.RFC3339)
	if err := book.SetDocProps(&excelize.DocProperties{
		Title: visible(t.Voice.Say(t.Title)), Creator: Maker, LastModifiedBy: Maker, Created: day, Modified: day,
	}); err != nil {
		return err
	}
	return book.SetAppProps(&excelize.AppProperties{Application: Maker})
}

// printed has the titles on each printed page, all columns on its width, and its number
// at the foot.
func printed(book *excelize.File, sheet string) error {
	landscape, fit, across, down := "landscape", true, 1, 0 // no limit downwards
	if err := book.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	if err := book.SetPageLayout(sheet, &excelize.PageLayoutOptions{Orientation: &landscape, FitToWidth: &across, FitToHeight: &down}); err != nil {
		return err
	}
	if err := book.SetHeaderFooter(sheet, &excelize.HeaderFooterOptions{OddFooter: "&L&A&R&P / &N"}); err != nil {
		return err
	}
	return book.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: "'" + sheet + "'!$1:$1", Scope: sheet})
}

// filters puts one on each column.
func (t Table) filters(book *excelize.File, sheet string) error {
	if len(t.Columns) == 0 {
		return nil
	}
	last, err := excelize.CoordinatesToCellName(len(t.Columns), len(t.Rows)+1)
	if err != nil {
		return err
	}
	return book.AutoFilter(sheet, "A1:"+last, nil)
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
		return c.Number(), nil
	}
	return strconv.ParseFloat(c.plain(t.Voice.System), 64)
}
