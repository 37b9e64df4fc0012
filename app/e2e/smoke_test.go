//go:build linux

package e2e

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

// TestOpensQuietly starts the program with nothing, looks at its window and
// closes it: it must show something, say nothing and end well.
func TestOpensQuietly(t *testing.T) {
	if _, err := os.Stat(filepath.Join("..", "desk")); errors.Is(err, fs.ErrNotExist) {
		t.Skip("there is no window yet")
	}
	d := OpenDisplay(t, 1366, 768)
	p := Start(d)
	p.WaitWindow("Studbay")
	pic := d.Shot("smoke")
	if plain(pic) {
		t.Error("the window shows a single colour")
	}
	p.Close()
	if said := p.Said(); said != "" {
		t.Errorf("the program wrote to stderr or stdout, want nothing:\n%s", said)
	}
}
