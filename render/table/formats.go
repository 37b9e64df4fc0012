package table

import (
	"io"
	"path/filepath"
	"strings"

	"studbay/plan/words"
)

// Format is one kind of file a table can be written as.
type Format struct {
	Ext   string // with its dot, in lower case
	Write func(io.Writer, Table) error
}

// Formats lists the formats, in the order menus show.
var Formats = []Format{
	{".csv", WriteCSV},
	{".xlsx", WriteXLSX},
	{".json", WriteJSON},
}

// FormatError says that a file name ends in no ending of theirs.
type FormatError struct{ File string }

func (e *FormatError) Error() string { return e.Told().String() }

// Told implements words.Teller.
func (e *FormatError) Told() words.Text {
	known := make([]string, len(Formats))
	for i, f := range Formats {
		known[i] = f.Ext
	}
	return words.New("format.no-table", "{0}: unknown kind of table: end the name in {1}", e.File, strings.Join(known, ", "))
}

// FormatOf returns the format that a file name asks for by its ending, in capitals or not.
// It fails with a *FormatError.
func FormatOf(file string) (Format, error) {
	ext := strings.ToLower(filepath.Ext(file))
	for _, f := range Formats {
		if f.Ext == ext {
			return f, nil
		}
	}
	return Format{}, &FormatError{file}
}
