package table

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
)

// Save writes a table to a file in the form its name asks for. The file appears whole or
// not at all: on an error what stood under the name before still does.
func Save(file string, t Table) error {
	form, err := FormOf(file)
	if err != nil {
		return err
	}
	if info, err := os.Stat(file); err == nil && info.IsDir() {
		return fmt.Errorf("%s: is a folder: choose a file name", file)
	}
	draft, err := os.CreateTemp(filepath.Dir(file), "."+filepath.Base(file)+".*")
	if err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	defer os.Remove(draft.Name()) // gone already where it was named
	if err := complete(draft, form, t); err != nil {
		draft.Close()
		return fmt.Errorf("%s: %w", file, err)
	}
	if err := draft.Close(); err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	return os.Rename(draft.Name(), file)
}

// complete writes the draft and makes sure that the disk holds it. A temporary file begins
// readable by its owner alone.
func complete(draft *os.File, form Form, t Table) error {
	w := bufio.NewWriter(draft)
	if err := form.Write(w, t); err != nil {
		return err
	}
	if err := w.Flush(); err != nil {
		return err
	}
	if err := draft.Chmod(0o644); err != nil {
		return err
	}
	return draft.Sync()
}
