package work

import (
	"os"
	"path/filepath"
	"strings"
)

// Extension ends the name of a plan's file.
const Extension = ".studbay"

// FileName makes a title fit for the name of a file, without its ending.
func FileName(title string) string {
	name := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || r < ' ' {
			return '-'
		}
		return r
	}, strings.TrimSpace(title))
	if name == "" {
		return "plan"
	}
	return name
}

// WithExtension gives a path an ending where it has none.
func WithExtension(path, extension string) string {
	if filepath.Ext(path) == "" {
		return path + extension
	}
	return path
}

// ShortPath writes a path as people know it: the home folder as ~.
func ShortPath(path string) string {
	if home, err := os.UserHomeDir(); err == nil && strings.HasPrefix(path, home+string(filepath.Separator)) {
		return "~" + strings.TrimPrefix(path, home)
	}
	return path
}

// PlainCause is an error of a file without its path, which is told already.
func PlainCause(err error) string {
	if e, ok := err.(*os.PathError); ok {
		return e.Err.Error()
	}
	return err.Error()
}
