package desk

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card"
	"studbay/plan/unit"
)

// choiceNamed finds a choice among what is in sight by what it shows beside its name.
func (b *bench) choice(in fyne.CanvasObject, name string) *card.Choice {
	b.t.Helper()
	var found *card.Choice
	walk(in, func(o fyne.CanvasObject) {
		if c, ok := o.(*card.Choice); ok && c.Label() == name {
			found = c
		}
	})
	if found == nil {
		b.t.Fatalf("no choice %q in:\n%s", name, textOf(in))
	}
	return found
}

func (b *bench) take(c *card.Choice, begins string) {
	b.t.Helper()
	for _, o := range c.Options() {
		if strings.HasPrefix(o.Label, begins) {
			o.Do()
			return
		}
	}
	b.t.Fatalf("no option begins with %q", begins)
}

// write answers the chooser in sight with a path.
func (b *bench) write(path string) {
	b.t.Helper()
	var name *formEntry
	walk(b.dialog(), func(o fyne.CanvasObject) {
		if e, ok := o.(*formEntry); ok {
			name = e
		}
	})
	if name == nil {
		b.t.Fatalf("no chooser in sight:\n%s", textOf(b.dialog()))
	}
	name.SetText(path)
	name.OnSubmitted(path)
}

func (b *bench) dialogSays(what string) {
	b.t.Helper()
	b.until("the dialog to say "+what, func() bool {
		top := b.window.Canvas().Overlays().Top()
		return top != nil && strings.Contains(textOf(top), what)
	})
}

func TestExportShowsThePagesAndWritesThem(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.Run("export")
	b.dialogSays("1 of 1: Ground floor")
	form := b.dialog()
	b.take(b.choice(form, "Paper"), "Letter")
	b.dialogSays("11 × 8-1/2 in, true to scale")
	path := filepath.Join(t.TempDir(), "den.pdf")
	b.press(form, "Choose a file")
	b.write(path)
	b.dialogSays("den.pdf written")
	if data, err := os.ReadFile(path); err != nil || !bytes.HasPrefix(data, []byte("%PDF-")) {
		t.Errorf("the file is %v, begins %.8q; want a PDF", err, data)
	}
	if got := b.prefs.paper(); got != "letter" {
		t.Errorf("the paper remembered is %q, want letter", got)
	}
}

func TestExportAsPicturesHasTheirDots(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.Run("export")
	b.dialogSays("1 of 1")
	form := b.dialog()
	if strings.Contains(textOf(form), "Dots an inch") {
		t.Error("a PDF is asked for its dots an inch")
	}
	b.take(b.choice(form, "Written as"), "PNG")
	b.take(b.choice(form, "Dots an inch"), "100")
	path := filepath.Join(t.TempDir(), "den.png")
	b.press(form, "Choose a file")
	b.write(path)
	b.dialogSays("den.png written")
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	head := make([]byte, 24)
	if _, err := f.Read(head); err != nil || head[18] != 1700>>8 || head[19] != 1700&255 {
		t.Errorf("17 in at 100 an inch is %v pixels wide (%v), want 1700", int(head[18])<<8|int(head[19]), err)
	}
}

func TestAPlanTooLargeForThePaperSaysWhatWouldDo(t *testing.T) {
	b := newBench(t)
	b.room(300*unit.Foot, 200*unit.Foot)
	b.Run("export")
	b.dialogSays("1 of")
	form := b.dialog()
	b.take(b.choice(form, "Paper"), "Letter")
	b.take(b.choice(form, "Scale"), "1 in")
	b.dialogSays("would take about")
	if said := textOf(form); !strings.Contains(said, "would do") {
		t.Errorf("nothing is said of what would do:\n%s", said)
	}
	b.press(form, "Choose a file")
	if !strings.Contains(textOf(b.dialog()), "Export the sheets") {
		t.Error("pages that are not there can be written")
	}
}

func TestTheScheduleIsWrittenAsATable(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	folder := t.TempDir()
	for command, begins := range map[string]string{"schedule-csv": "\xef\xbb\xbfTag", "schedule-xlsx": "PK"} {
		b.Run(command)
		path := filepath.Join(folder, command+"."+strings.TrimPrefix(command, "schedule-"))
		b.write(path)
		b.press(b.dialog(), "Understood")
		data, err := os.ReadFile(path)
		if err != nil || !bytes.HasPrefix(data, []byte(begins)) && !bytes.HasPrefix(data, []byte("Tag")) {
			t.Errorf("%s: %v, begins %.12q", command, err, data)
		}
	}
}

func TestTheChooserGuardsWhatIsThere(t *testing.T) {
	b := newBench(t)
	folder := t.TempDir()
	path := filepath.Join(folder, "old.studbay")
	if err := os.WriteFile(path, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	taken := ""
	ask := choosing{title: "Save", yes: "Save", name: "new", extensions: []string{".studbay"}}
	b.Desk.choose(ask, func(p string) { taken = p })
	b.write(filepath.Join(folder, "old")) // without its ending
	b.press(b.dialog(), "Go back")
	if taken != "" {
		t.Fatal("going back took the file all the same")
	}
	b.write(filepath.Join(folder, "none", "x.studbay"))
	b.dialogSays("There is no folder")
	b.write(filepath.Join(folder, "old.studbay"))
	b.press(b.dialog(), "Replace it")
	b.noDialog()
	if taken != path {
		t.Errorf("took %q, want %q", taken, path)
	}
	if got, want := b.prefs.lastFolder(), folder; got != want {
		t.Errorf("the folder remembered is %q, want %q", got, want)
	}
}

func TestTheChooserListsFoldersAndPlans(t *testing.T) {
	b := newBench(t)
	folder := t.TempDir()
	for _, name := range []string{"b.studbay", "a.txt", ".hidden.studbay"} {
		if err := os.WriteFile(filepath.Join(folder, name), nil, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Mkdir(filepath.Join(folder, "jobs"), 0o700); err != nil {
		t.Fatal(err)
	}
	b.prefs.setFolder(filepath.Join(folder, "x"))
	taken := ""
	b.Desk.choose(choosing{title: "Open", yes: "Open", extensions: []string{".studbay"}, open: true}, func(p string) { taken = p })
	b.dialogSays("b.studbay")
	if said := textOf(b.dialog()); strings.Contains(said, "a.txt") || strings.Contains(said, "hidden") || !strings.Contains(said, "jobs") {
		t.Errorf("the chooser lists:\n%s", said)
	}
	b.press(b.dialog(), "b.studbay")
	b.press(b.dialog(), "b.studbay")
	if taken != filepath.Join(folder, "b.studbay") {
		t.Errorf("taken %q, want the plan pressed twice", taken)
	}
}

func TestADraggedDividerIsRemembered(t *testing.T) {
	b := newBench(t)
	was := b.shell.card.Size().Width
	divider := b.shell.dividers[divideCard]
	divider.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(-60, 0)})
	divider.DragEnd()
	if got := b.shell.card.Size().Width; got != was+60 {
		t.Errorf("the card is %v wide, want %v", got, was+60)
	}
	if got := b.prefs.sizes().Card; got != was+60 {
		t.Errorf("the width remembered is %v, want %v", got, was+60)
	}
	test.DoubleTap(divider)
	if got := b.shell.card.Size().Width; got != was {
		t.Errorf("a double click leaves %v, want the usual %v", got, was)
	}
}
