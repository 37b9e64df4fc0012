package table

import (
	"bytes"
	"testing"

	"github.com/xuri/excelize/v2"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// A workbook is read back by the same library that reads those of spreadsheets.
func TestXLSXReadBack(t *testing.T) {
	in := Table{
		Title:   words.New("t", "Openings: level 1/2"),
		Columns: []Column{{"tag", words.New("c.tag", "Tag"), Text}, {"height", words.New("c.height", "Height"), Length}, {"fill", words.New("c.fill", "Fill"), Volume}, {"gangs", words.New("c.gangs", "Gangs"), Number}},
		Rows: []Row{
			{Cells: []Cell{TextOf("L1"), LengthOf(unit.FeetInches(0, 16, 8)), VolumeOf(20 * unit.CubicInch), NumberOf(2)}},
			{Cells: []Cell{TextOf("=1+1"), {}, {}, {}}},
			{Cells: []Cell{TextOf("1.50"), {}, {}, {}}},
		},
	}
	var data bytes.Buffer
	if err := WriteXLSX(&data, in); err != nil {
		t.Fatal(err)
	}
	book, err := excelize.OpenReader(&data)
	if err != nil {
		t.Fatal(err)
	}
	const sheet = "Openings level 12"
	for _, tt := range []struct {
		cell, value string
		kind        excelize.CellType
	}{
		{"A1", "Tag", excelize.CellTypeInlineString},
		{"B1", "Height (in)", excelize.CellTypeInlineString},
		{"A2", "L1", excelize.CellTypeInlineString},
		{"B2", "16.5", excelize.CellTypeUnset}, // a number has no type of its own: ECMA-376 part 1, 18.3.1.4
		{"C2", "20", excelize.CellTypeUnset},
		{"D2", "2", excelize.CellTypeUnset},
		{"A3", "=1+1", excelize.CellTypeInlineString},
		{"A4", "1.50", excelize.CellTypeInlineString},
	} {
		value, err := book.GetCellValue(sheet, tt.cell)
		kind, _ := book.GetCellType(sheet, tt.cell)
		if err != nil || value != tt.value || kind != tt.kind {
			t.Errorf("%s holds %q of type %d, %v, want %q of type %d", tt.cell, value, kind, err, tt.value, tt.kind)
		}
		if formula, err := book.GetCellFormula(sheet, tt.cell); err != nil || formula != "" {
			t.Errorf("%s runs %q, %v", tt.cell, formula, err)
		}
	}
	props, err := book.GetDocProps()
	if err != nil || props.Creator != "Studbay" || props.LastModifiedBy != "Studbay" || props.Title != "Openings: level 1/2" {
		t.Errorf("the book says it is %+v, %v", props, err)
	}
	if app, err := book.GetAppProps(); err != nil || app.Application != "Studbay" {
		t.Errorf("the book says it was made by %+v, %v", app, err)
	}
	names := map[string]string{}
	for _, n := range book.GetDefinedName() {
		names[n.Name] = n.RefersTo
	}
	// ECMA-376 part 1, 18.2.5: the names of what is printed on each page and of filters.
	if names["_xlnm.Print_Titles"] != "'"+sheet+"'!$1:$1" || names["_xlnm._FilterDatabase"] != "'"+sheet+"'!$A$1:$D$4" {
		t.Errorf("print titles and filters are %v", names)
	}
	panes, err := book.GetPanes(sheet)
	if err != nil || !panes.Freeze || panes.YSplit != 1 {
		t.Errorf("the titles do not stay in sight: %+v, %v", panes, err)
	}
}
