// Package rows reads the program's own CSV tables: a header line, then one row a
// thing. Cells are asked for by column name, and what is wrong with one is an
// error that names file, line and column.
package rows

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
)

// Row is one line of a table.
type Row struct {
	File string
	Line int // counted from 1, the header included

	columns, cells []string
}

// Error says where in a table something is wrong.
type Error struct {
	File   string
	Line   int
	Column string // empty where the whole line is meant
	Err    error
}

func (e *Error) Error() string {
	place := fmt.Sprintf("%s:%d: ", e.File, e.Line)
	if e.Column != "" {
		place += e.Column + ": "
	}
	return place + e.Err.Error()
}

func (e *Error) Unwrap() error { return e.Err }

// Read returns the rows of a file whose header is the columns given, in that order.
func Read(from fs.FS, file string, columns ...string) ([]Row, error) {
	f, err := from.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	r := csv.NewReader(f)
	header, err := r.Read()
	if err != nil {
		return nil, &Error{File: file, Line: 1, Err: err}
	}
	if !slices.Equal(header, columns) {
		want := strings.Join(columns, ",")
		return nil, &Error{File: file, Line: 1, Err: errors.New("the header is not " + want)}
	}
	return readRows(r, file, columns)
}

func readRows(r *csv.Reader, file string, columns []string) ([]Row, error) {
	var all []Row
	for {
		cells, err := r.Read()
		if err == io.EOF {
			return all, nil
		}
		if bad := new(csv.ParseError); errors.As(err, &bad) {
			return nil, &Error{File: file, Line: bad.Line, Err: bad.Err}
		}
		if err != nil {
			return nil, &Error{File: file, Err: err}
		}
		line, _ := r.FieldPos(0)
		all = append(all, Row{file, line, columns, cells})
	}
}

// Cell returns the text of a column. It panics for one the table does not have.
func (r Row) Cell(column string) string {
	i := slices.Index(r.columns, column)
	if i < 0 {
		panic("rows: no column " + column + " in " + r.File)
	}
	return r.cells[i]
}

// Wrong returns err with the place of a column in front of it; an empty column means
// the whole line.
func (r Row) Wrong(column string, err error) error {
	return &Error{r.File, r.Line, column, err}
}

// Get reads a column with a parser and puts the row's place on its error.
func Get[T any](r Row, column string, parse func(string) (T, error)) (T, error) {
	value, err := parse(r.Cell(column))
	if err != nil {
		return value, r.Wrong(column, err)
	}
	return value, nil
}
