// Package table holds what a plan says in rows and columns, free of how it is shown:
// the schedule of openings, and the forms a table is written in.
//
// Cells are typed and exact. A form writes numbers as numbers, and no cell of text can
// run as a formula where a spreadsheet reads it.
package table

import (
	"slices"
	"strings"
	"time"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Kind says what a cell holds.
type Kind uint8

// The kinds of cell. The zero value is an empty cell.
const (
	Empty Kind = iota
	Text
	Length
	Volume
	Number
	Figure // a plain decimal, such as money or feet
)

// Cell is one value. What it holds depends on Kind. A schedule of many openings has hundreds
// of thousands of them: it is kept small.
type Cell struct {
	Kind Kind
	// FromMemory says of a volume that it rests on a mark that nobody has seen.
	FromMemory bool
	Text       string
	amount     int64 // of a length, a volume or a number
}

// Length returns what a cell of a length holds.
func (c Cell) Length() unit.Length { return unit.Length(c.amount) }

// Volume returns what a cell of a volume holds.
func (c Cell) Volume() unit.Volume { return unit.Volume(c.amount) }

// Number returns what a cell of a whole number holds.
func (c Cell) Number() int { return int(c.amount) }

// TextOf returns a cell of text, an empty one where there is none.
func TextOf(text string) Cell {
	if text == "" {
		return Cell{}
	}
	return Cell{Kind: Text, Text: text}
}

// LengthOf returns a cell of a length.
func LengthOf(l unit.Length) Cell { return Cell{Kind: Length, amount: int64(l)} }

// VolumeOf returns a cell of a volume.
func VolumeOf(v unit.Volume) Cell { return Cell{Kind: Volume, amount: int64(v)} }

// FigureOf returns a cell of a plain decimal, such as 4.50, kept as it is written.
func FigureOf(decimal string) Cell { return Cell{Kind: Figure, Text: decimal} }

// NumberOf returns a cell of a whole number.
func NumberOf(n int) Cell { return Cell{Kind: Number, amount: int64(n)} }

// Column is one column. All its cells are of Kind or empty.
type Column struct {
	ID    string // stable: the key of the JSON form
	Title words.Text
	Kind  Kind
}

// Row is one row, a cell a column.
type Row struct {
	Of    plan.ID // the noun it tells of
	Group plan.ID // what it belongs to, such as the room of an opening
	Cells []Cell
}

// Table is rows under columns.
type Table struct {
	// Unchecked says that nothing was checked; the column of findings says why.
	Unchecked bool
	Title     words.Text
	Voice     words.Voice // the language of titles and the system of lengths
	Date      time.Time   // of what it tells, zero where nobody says
	Columns   []Column
	Rows      []Row
}

// At returns where the column of an ID stands, or −1.
func (t Table) At(column string) int {
	return slices.IndexFunc(t.Columns, func(c Column) bool { return c.ID == column })
}

// Cell returns the cell of a row under the column of an ID, empty where there is none.
func (t Table) Cell(row Row, column string) Cell {
	if i := t.At(column); i >= 0 {
		return row.Cells[i]
	}
	return Cell{}
}

// With returns the table with just the columns of these IDs, in their order, and behind them
// what they must not go without: that nothing was checked, and what a volume from memory
// rests on. It fails for an ID it has not, and for one that comes twice.
func (t Table) With(ids []string) (Table, error) {
	out := Table{Title: t.Title, Voice: t.Voice, Date: t.Date, Unchecked: t.Unchecked}
	var from []int
	for _, id := range append(slices.Clone(ids), t.owed(ids)...) {
		i := t.At(id)
		switch {
		case i < 0:
			return Table{}, words.Fault("table.no-column", "no column \"{0}\"; there are {1}", id, strings.Join(t.IDs(), ", "))
		case slices.Contains(from, i):
			return Table{}, words.Fault("table.twice", "column \"{0}\" comes twice", id)
		}
		from, out.Columns = append(from, i), append(out.Columns, t.Columns[i])
	}
	for _, row := range t.Rows {
		cells := make([]Cell, len(from))
		for k, i := range from {
			cells[k] = row.Cells[i]
		}
		out.Rows = append(out.Rows, Row{row.Of, row.Group, cells})
	}
	return out, nil
}

// owed are the columns that go with a choice that leaves them out.
func (t Table) owed(ids []string) (more []string) {
	lacks := func(id string) bool { return t.At(id) >= 0 && !slices.Contains(ids, id) }
	if t.Unchecked && lacks(findingsColumn) {
		more = append(more, findingsColumn)
	}
	isFromMemory := func(r Row) bool {
		return slices.ContainsFunc(ids, func(id string) bool {
			i := t.At(id)
			return i >= 0 && i < len(r.Cells) && r.Cells[i].FromMemory
		})
	}
	if lacks(basisColumn) && slices.ContainsFunc(t.Rows, isFromMemory) {
		more = append(more, basisColumn)
	}
	return more
}

// IDs lists the IDs of the columns in their order.
func (t Table) IDs() (ids []string) {
	for _, c := range t.Columns {
		ids = append(ids, c.ID)
	}
	return ids
}

// Decimal returns a length as a decimal number of inches or millimetres. Inches that
// have no end are cut at eight decimals, under a nanometre, so that the length is
// still told apart from every other.
func Decimal(l unit.Length, s unit.System) string {
	if s == unit.Metric {
		return l.Exact()
	}
	return inches(l)
}

// lengthUnits are the units of Decimal in words; DecimalUnit's are those that programs read.
var lengthUnits = map[unit.System]words.Text{
	unit.Imperial: words.New("unit.in", "in"),
	unit.Metric:   words.New("unit.mm", "mm"),
}

// DecimalUnit names the unit of Decimal: in or mm.
func DecimalUnit(s unit.System) string {
	if s == unit.Metric {
		return "mm"
	}
	return "in"
}
