package table

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"
)

// Form is one kind of file a table can be written as.
type Form struct {
	Ext   string // with its dot, in lower case
	Write func(io.Writer, Table) error
}

// Forms lists the forms, in the order menus show.
var Forms = []Form{
	{".csv", WriteCSV},
	{".xlsx", WriteXLSX},
	{".json", WriteJSON},
}

// FormError says that a file name ends in no form's ending.
type FormError struct{ File string }

func (e *FormError) Error() string {
	known := make([]string, len(Forms))
	for i, f := range Forms {
		known[i] = f.Ext
	}
	return fmt.Sprintf("%s: unknown kind of table: end the name in %s", e.File, strings.Join(known, " or "))
}

// FormOf returns the form that a file name asks for by its ending, in capitals or not.
// It fails with a *FormError.
func FormOf(file string) (Form, error) {
	ext := strings.ToLower(filepath.Ext(file))
	for _, f := range Forms {
		if f.Ext == ext {
			return f, nil
		}
	}
	return Form{}, &FormError{file}
}
