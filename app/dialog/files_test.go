package dialog

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"studbay/app/windowtest"
)

func TestTheChooserGuardsWhatIsThere(t *testing.T) {
	s := newStand(t)
	folder := t.TempDir()
	path := filepath.Join(folder, "old.studbay")
	if err := os.WriteFile(path, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	taken := ""
	ask := FileForm{Title: "Save", Yes: "Save", Name: "new", Extensions: []string{".studbay"}}
	s.AskFile(ask, func(p string) { taken = p })
	s.write(filepath.Join(folder, "old")) // without its ending
	s.press(s.dialog(), "Cancel")
	if taken != "" {
		t.Fatal("going back took the file all the same")
	}
	s.write(filepath.Join(folder, "none", "x.studbay"))
	s.says("There is no folder")
	s.write(filepath.Join(folder, "old.studbay"))
	s.press(s.dialog(), "Replace it")
	s.noDialog()
	if taken != path {
		t.Errorf("took %q, want %q", taken, path)
	}
	if got, want := filepath.Dir(s.memory.folder), folder; got != want {
		t.Errorf("the folder remembered is %q, want %q", got, want)
	}
}

func TestTheChooserListsFoldersAndPlans(t *testing.T) {
	s := newStand(t)
	folder := t.TempDir()
	for _, name := range []string{"s.studbay", "a.txt", ".hidden.studbay"} {
		if err := os.WriteFile(filepath.Join(folder, name), nil, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Mkdir(filepath.Join(folder, "jobs"), 0o700); err != nil {
		t.Fatal(err)
	}
	s.memory.folder = folder
	taken := ""
	s.AskFile(FileForm{Title: "Open", Yes: "Open", Extensions: []string{".studbay"}, Open: true}, func(p string) { taken = p })
	s.says("s.studbay")
	if said := windowtest.TextOf(s.dialog()); strings.Contains(said, "a.txt") || strings.Contains(said, "hidden") || !strings.Contains(said, "jobs") {
		t.Errorf("the chooser lists:\n%s", said)
	}
	s.press(s.dialog(), "s.studbay")
	s.press(s.dialog(), "s.studbay")
	if taken != filepath.Join(folder, "s.studbay") {
		t.Errorf("taken %q, want the plan pressed twice", taken)
	}
}
