package table

import (
	"fmt"
	"io"

	"studbay/plan/disk"
)

// Save writes a table to a file in the format its name asks for. The file appears whole or
// not at all: on an error what stood under the name before still does.
func Save(file string, t Table) error {
	format, err := FormatOf(file)
	if err != nil {
		return err
	}
	err = disk.Put(disk.Real{}, file, 0o666, func(w io.Writer) error { return format.Write(w, t) })
	if err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	return nil
}
