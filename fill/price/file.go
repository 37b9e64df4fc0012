package price

import (
	"bytes"
	"io"
	"os"
	"path/filepath"

	"studbay/plan"
	"studbay/plan/words"
)

// mostBytes bounds a table that is read whole: 4 MiB, far more than any book of prices.
const mostBytes = 4 << 20

// ReadSmall returns the bytes of a table of a user's own. It fails for what is no file, and for
// one that is too large.
func ReadSmall(path string) ([]byte, error) {
	info, err := os.Stat(path)
	switch {
	case os.IsNotExist(err):
		return nil, words.Fault("verb.no-file", "{0}: there is no such file", path)
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, words.Fault("price.no-regular", "{0}: it is no file of its own", path)
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	if err == nil && len(data) > mostBytes {
		err = words.Fault("verb.large", "{0}: too large for a table", path)
	}
	return data, err
}

// ReadFile reads a book from a path, to be known by a name.
func ReadFile(path, name string) (*Book, error) {
	data, err := ReadSmall(path)
	if err != nil {
		return nil, err
	}
	return Read(name, bytes.NewReader(data))
}

// Beside returns where a book lies that the plan of a file names: beside it, unless the name
// says more.
func Beside(planFile, name string) string {
	name = filepath.FromSlash(name)
	if name == "" || filepath.IsAbs(name) || planFile == "" {
		return name
	}
	return filepath.Join(filepath.Dir(planFile), name)
}

// NameIn returns how the plan of a file names a book: by its way from there where it lies beside
// it or below, else by its whole path.
func NameIn(planFile, book string) string {
	if book == "" || planFile == "" {
		return book
	}
	there, err := filepath.Rel(filepath.Dir(planFile), book)
	if err != nil || !filepath.IsLocal(there) {
		return book
	}
	return filepath.ToSlash(there)
}

// OfPlan returns the book that the plan of a file names: ours where it names none. It fails where
// the book cannot be read.
func OfPlan(planFile string, h *plan.Header) (*Book, error) {
	if h == nil || h.Prices == "" {
		return Trial(), nil
	}
	return ReadFile(Beside(planFile, h.Prices), h.Prices)
}
