package dialog

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"studbay/app/windowtest"
	"studbay/plan/unit"
)

func TestExportShowsThePagesAndWritesThem(t *testing.T) {
	s := newStand(t)
	s.AskExport(s.house(14*unit.Foot, 12*unit.Foot), s.memory)
	s.says("1 of 1: Ground floor")
	form := s.dialog()
	s.take(s.choice(form, "Paper"), "Letter")
	s.says("11 × 8-1/2 in, true to scale")
	path := filepath.Join(t.TempDir(), "den.pdf")
	s.press(form, "Choose a file")
	s.write(path)
	s.says("den.pdf saved")
	if data, err := os.ReadFile(path); err != nil || !bytes.HasPrefix(data, []byte("%PDF-")) {
		t.Errorf("the file is %v, begins %.8q; want a PDF", err, data)
	}
	if got := s.memory.paper; got != "letter" {
		t.Errorf("the paper remembered is %q, want letter", got)
	}
}

func TestExportAsPicturesHasTheirDots(t *testing.T) {
	s := newStand(t)
	s.AskExport(s.house(14*unit.Foot, 12*unit.Foot), s.memory)
	s.says("1 of 1")
	form := s.dialog()
	if strings.Contains(windowtest.TextOf(form), "Dots per inch") {
		t.Error("a PDF is asked for its dots an inch")
	}
	s.take(s.choice(form, "Format"), "PNG")
	s.take(s.choice(form, "Dots per inch"), "100")
	s.says("the one there is")
	path := filepath.Join(t.TempDir(), "den.png")
	s.press(form, "Choose a file")
	s.write(path)
	s.says("den.png saved")
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
	s := newStand(t)
	s.AskExport(s.house(300*unit.Foot, 200*unit.Foot), s.memory)
	s.says("1 of")
	form := s.dialog()
	s.take(s.choice(form, "Paper"), "Letter")
	s.take(s.choice(form, "Scale"), "1 in")
	s.says("would take about")
	if said := windowtest.TextOf(form); !strings.Contains(said, "would do") {
		t.Errorf("nothing is said of what would do:\n%s", said)
	}
	s.press(form, "Choose a file")
	if !strings.Contains(windowtest.TextOf(s.dialog()), "Export the sheets") {
		t.Error("pages that are not there can be written")
	}
}

func TestTheScheduleIsWrittenAsATable(t *testing.T) {
	s := newStand(t)
	house := s.house(14*unit.Foot, 12*unit.Foot)
	folder := t.TempDir()
	for extension, begins := range map[string]string{".csv": "\xef\xbb\xbfTag", ".xlsx": "PK"} {
		s.ExportSchedule(house, extension)
		path := filepath.Join(folder, "den"+extension)
		s.write(path)
		s.press(s.dialog(), "OK")
		data, err := os.ReadFile(path)
		if err != nil || !bytes.HasPrefix(data, []byte(begins)) && !bytes.HasPrefix(data, []byte("Tag")) {
			t.Errorf("%s: %v, begins %.12q", extension, err, data)
		}
	}
}
