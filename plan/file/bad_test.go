package file

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"unicode/utf8"
)

var update = flag.Bool("update", false, "write what is said of bad files anew")

// What is said of each bad file stands in testdata/bad/said.txt, for people to read.
func TestBadFiles(t *testing.T) {
	names, err := filepath.Glob("testdata/bad/*.studbay")
	if err != nil || len(names) == 0 {
		t.Fatal("no bad files", err)
	}
	var said bytes.Buffer
	for _, name := range names {
		_, _, err := Load(name)
		var e *Error
		if !errors.As(err, &e) {
			t.Errorf("%s: %v is no *Error", name, err)
			continue
		}
		e.File = filepath.Base(name)
		if e.Text().String() != e.Err.Error() || e.Text().ID == "file.other" {
			t.Errorf("%s: %v is not said in words", name, err)
		}
		fmt.Fprintln(&said, e)
	}
	golden := "testdata/bad/said.txt"
	if *update {
		if err := os.WriteFile(golden, said.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := said.String(), string(want); got != want {
		t.Errorf("said:\n%s\nwant:\n%s", got, want)
	}
}

// A line and column must be where an editor shows the fault.
func TestPlaceOfFault(t *testing.T) {
	good := string(oldFile(t, "v1.0.studbay"))
	text := strings.Replace(good, `"note": "Beside`, `"note": "½½½½", "Note": "Beside`, 1)
	_, err := Decode("shed", []byte(text))
	var e *Error
	if !errors.As(err, &e) {
		t.Fatal(err)
	}
	lines := strings.Split(text, "\n")
	before := lines[e.Line-1][:strings.Index(lines[e.Line-1], `"Note"`)]
	if e.Column != utf8.RuneCountInString(before)+1 || e.Place != "/levels/0/openings/0/Note" {
		t.Errorf("found at %d:%d %s", e.Line, e.Column, e.Place)
	}
	if e.Text().ID != "file.case" {
		t.Errorf("says %v", e.Text())
	}
}

// What a file leaves out has no place in it: the fault is where its object begins.
func TestPlaceOfWhatIsLeftOut(t *testing.T) {
	good := string(oldFile(t, "v1.2.studbay"))
	for _, tt := range []struct{ without, object string }{
		{`"ceiling": 2438.4,`, "/levels/0/rooms/0"},
		{`"edition": "2023",`, "/header"},
	} {
		text := strings.Replace(good, tt.without, "", 1)
		_, err := Decode("shed", []byte(text))
		var e *Error
		if !errors.As(err, &e) || e.Place != tt.object {
			t.Errorf("without %s: %v at %q, want it at %q", tt.without, err, e.Place, tt.object)
			continue
		}
		if line := strings.Split(text, "\n")[e.Line-1]; !strings.HasSuffix(line[:e.Column], "{") {
			t.Errorf("without %s it is found at %d:%d, behind %q", tt.without, e.Line, e.Column, line[:e.Column-1])
		}
	}
}

// Every cut of a good file is refused, and never as good.
func TestEveryCutIsRefused(t *testing.T) {
	good := oldFile(t, "v1.0.studbay")
	end := bytes.LastIndexByte(good, '}')
	for n := range end + 1 {
		if _, err := Decode("cut", good[:n]); err == nil {
			t.Fatalf("cut to %d bytes it is read", n)
		}
	}
}

func TestHostileSizes(t *testing.T) {
	head := `{"format": "studbay", "version": "1.2", `
	for _, tt := range []struct{ name, text, id string }{
		{"a million layers", head + `"levels": [{"rooms": [{"floor": [{}` + strings.Repeat(",{}", MaxRows) + `]}]}]}`, "file.rows"},
		{"a million unknown elements", head + `"x": [0` + strings.Repeat(",0", MaxRows) + `]}`, "file.rows"},
		{"a million unknown keys", head + `"x": {` + manyKeys(MaxRows+1) + `}}`, "file.rows"},
		{"a thousand unknown members of one noun", head + `"header": {` + manyKeys(maxExtra+1) + `}}`, "file.extra"},
		{"as many of the plan", head + manyKeys(maxExtra+1) + `}`, "file.extra"},
	} {
		_, err := Decode("hostile", []byte(tt.text))
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != tt.id {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}

func manyKeys(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, `"k%d":0,`, i)
	}
	return strings.TrimSuffix(b.String(), ",")
}

// The largest noun in the smallest text: what the limits let it cost is bounded.
func TestHostileSizesCostLittle(t *testing.T) {
	text := []byte(`{"format": "studbay", "version": "1.0", "levels": [{"openings": [{}` + strings.Repeat(",{}", 8<<20) + `]}]}`)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, err := Decode("hostile", text)
	runtime.ReadMemStats(&after)
	if err == nil || after.TotalAlloc-before.TotalAlloc > 600<<20 {
		t.Errorf("%v, after %d MB", err, (after.TotalAlloc-before.TotalAlloc)>>20)
	}
}

func TestNewerMajorCanBeBranchedOn(t *testing.T) {
	if _, _, err := Load("testdata/bad/newer-major.studbay"); !errors.Is(err, ErrNewer) {
		t.Error(err)
	}
}

// A sparse file is large to look at and costs nothing: nothing of it may be read.
func TestTooLargeAFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "large.studbay")
	if err := os.WriteFile(path, []byte("{"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(path, MaxBytes+1); err != nil {
		t.Fatal(err)
	}
	_, _, err := Load(path)
	var e *Error
	if !errors.As(err, &e) || e.Text().ID != "file.large" {
		t.Error(err)
	}
}

func TestNoFileToLoad(t *testing.T) {
	folder := t.TempDir()
	for path, id := range map[string]string{filepath.Join(folder, "none"): "file.missing", folder: "file.folder", os.DevNull: "file.special"} {
		_, _, err := Load(path)
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != id || e.File != path {
			t.Errorf("%s: %v", path, err)
		}
	}
}
