package desk

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/plan/unit"
)

// opener puts a program in place of the desktop's own that notes what it is asked to open
// and ends with a code.
func (b *bench) opener(code string) (noted string) {
	b.t.Helper()
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		b.t.Skip("the desktop's own program is not looked for by its name alone")
	}
	folder := b.t.TempDir()
	noted = filepath.Join(folder, "noted")
	script := "#!/bin/sh\nprintf %s \"$1\" > " + noted + "\nexit " + code + "\n"
	if err := os.WriteFile(filepath.Join(folder, "xdg-open"), []byte(script), 0o755); err != nil {
		b.t.Fatal(err)
	}
	b.t.Setenv("PATH", folder)
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
		b := newBench(t)
		noted := b.opener("0")
		b.room(14*unit.Foot, 12*unit.Foot)
		path := filepath.Join(t.TempDir(), "den.csv")
		b.Run("schedule-csv")
		b.write(path)
		b.press(b.dialog(), tt.press)
		b.noDialog()
		b.until("the file to be opened", func() bool {
			data, _ := os.ReadFile(noted)
			select {
			case b.queue <- func() {}: // keeps looking
			default:
			}
			return string(data) == tt.want(path)
		})
	}
}

func TestWhatCannotBeOpenedIsSaid(t *testing.T) {
	b := newBench(t)
	b.opener("3")
	b.showOutside("den.pdf", openCommand("den.pdf"))
	b.dialogSays("found no program for it (3)")
	b.press(b.dialog(), "Understood")

	t.Setenv("PATH", t.TempDir())
	b.showOutside("den.pdf", openCommand("den.pdf"))
	if said := textOf(b.dialog()); !strings.Contains(said, "There is no xdg-open") || !strings.Contains(said, "den.pdf") {
		t.Errorf("said %q", said)
	}
}

func TestEscapeOpensNothing(t *testing.T) {
	b := newBench(t)
	noted := b.opener("0")
	b.tellWritten("den.pdf", "den.pdf")
	b.window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	b.noDialog()
	if _, err := os.Stat(noted); err == nil {
		t.Error("Escape opens the file")
	}
}
