//go:build cgo

package main

import (
	"os"
	"testing"

	"fyne.io/fyne/v2/app"
)

// TestLastWorkIsTakenFromTheLoop holds what runWindows relies on: with work left for the end of
// the toolkit's loop, the program may wait for it forever.
func TestLastWorkIsTakenFromTheLoop(t *testing.T) {
	folder, err := os.MkdirTemp("", "studbay-window-")
	if err != nil {
		t.Fatal(err)
	}
	// The toolkit may still be writing its settings there, which t.TempDir would mind.
	t.Cleanup(func() { _ = os.RemoveAll(folder) })
	t.Setenv("HOME", folder)
	t.Setenv("XDG_CONFIG_HOME", folder)
	program := app.NewWithID("studbay-test")
	cycle, ok := program.Lifecycle().(interface{ OnStopped() func() })
	if !ok {
		t.Fatal("the toolkit no longer tells what it does at the end of its loop")
	}
	if cycle.OnStopped() == nil {
		t.Fatal("the toolkit does nothing at the end of its loop: runWindows need not take it away")
	}
	program.Preferences().SetString("name", "value")
	last := takeLastWork(program)
	if cycle.OnStopped() != nil {
		t.Error("work is left for the end of the loop")
	}
	last()
}
