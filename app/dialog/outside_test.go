package dialog

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/windowtest"
	"studbay/plan/unit"
)

// opener puts a program in place of the desktop's own that notes what it is asked to open
// and ends with a code.
func (s *stand) opener(code string) (noted string) {
	s.t.Helper()
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		s.t.Skip("the desktop's own program is not looked for by its name alone")
	}
	folder := s.t.TempDir()
	noted = filepath.Join(folder, "noted")
	script := "#!/bin/sh\nprintf %s \"$1\" > " + noted + "\nexit " + code + "\n"
	if err := os.WriteFile(filepath.Join(folder, "xdg-open"), []byte(script), 0o755); err != nil {
		s.t.Fatal(err)
	}
	s.t.Setenv("PATH", folder)
	return noted
}

func TestWhatIsWrittenCanBeOpenedAndShown(t *testing.T) {
	for _, tt := range []struct {
		press string
		want  func(path string) string
	}{
		{"Open", func(path string) string { return path }},
		{"Show in folder", filepath.Dir},
	} {
		s := newStand(t)
		noted := s.opener("0")
		path := filepath.Join(t.TempDir(), "den.csv")
		s.ExportSchedule(s.house(14*unit.Foot, 12*unit.Foot), ".csv")
		s.write(path)
		s.press(s.dialog(), tt.press)
		s.noDialog()
		s.until("the file to be opened", func() bool {
			data, _ := os.ReadFile(noted)
			select {
			case s.queue <- func() {}: // keeps looking
			default:
			}
			return string(data) == tt.want(path)
		})
	}
}

func TestWhatCannotBeOpenedIsSaid(t *testing.T) {
	s := newStand(t)
	s.opener("3")
	s.showOutside("den.pdf", openCommand("den.pdf"))
	s.says("found no program for it (3)")
	s.press(s.dialog(), "OK")

	t.Setenv("PATH", t.TempDir())
	s.showOutside("den.pdf", openCommand("den.pdf"))
	if said := windowtest.TextOf(s.dialog()); !strings.Contains(said, "There is no xdg-open") || !strings.Contains(said, "den.pdf") {
		t.Errorf("said %q", said)
	}
}

func TestEscapeOpensNothing(t *testing.T) {
	s := newStand(t)
	noted := s.opener("0")
	s.tellWritten("den.pdf", "den.pdf")
	s.canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	s.noDialog()
	if _, err := os.Stat(noted); err == nil {
		t.Error("Escape opens the file")
	}
}
