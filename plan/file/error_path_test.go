package file

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

// TestWhatIsSaidOfFaults: what stands where something else should, the character at which
// it stands (it follows the arrow), and the value that it is in, as a pointer (RFC 6901).
// What is right follows from the grammar of RFC 8259.
func TestWhatIsSaidOfFaults(t *testing.T) {
	const head = `{"format": "studbay", "version": "1.0", `
	for _, tt := range []struct {
		name, rest string // the text behind its head
		id, within string
	}{
		{"a number that begins with 0", `"levels": [{"elevation": →012}]}`, "file.zero", "/levels/0"},
		{"two zeros", `"levels": [{"elevation": →00}]}`, "file.zero", "/levels/0"},
		{"a number that ends in 0, then a sign", `"levels": [{"elevation": 0→-1}]}`, "file.syntax", "/levels/0"},
		{"0 alone is a number", `"levels": [{"elevation": 0→]}`, "file.syntax", "/levels"},
		{"so is 10", `"levels": [{"elevation": 10→]}`, "file.syntax", "/levels"},
		{"a comma before the end of an object", `"header": {"title": "x",→}}`, "file.syntax", "/header"},
		{"a comma before the end of a list", `"levels": [{},→]}`, "file.syntax", "/levels"},
		{"two commas", `"header": {"title": "x",→, "north": 0}}`, "file.syntax", "/header"},
		{"no colon", `"header": {"title" →"x"}}`, "file.syntax", "/header"},
		{"no comma", `"header": {"title": "x" →"north": 0}}`, "file.syntax", "/header"},
		{"a key twice", `"header": {"title": "x", →"title": "y"}}`, "file.twice", "/header/title"},
		{"a line break in a text", "\"header\": {\"title\": \"a→\nb\"}}", "file.control", "/header/title"},
		{"no such escape", `"header": {"title": "a→\qb"}}`, "file.escape", "/header/title"},
		{"half a character", `"header": {"title": "a→\ud800b"}}`, "file.surrogate", "/header/title"},
		{"an escape of too few digits", `"header": {"title": "a→\u12"}}`, "file.escape", "/header/title"},
		{"an escape that the file ends in", `"header": {"title": "a\u12→`, "file.truncated", "/header"},
		{"an escape that is no number", `"header": {"title": "a→\u12xy"}}`, "file.escape", "/header/title"},
		{"something behind the end", `"levels": []} →{}`, "file.trailing", ""},
	} {
		before, after, _ := strings.Cut(head+tt.rest, "→")
		_, err := Decode("shed", []byte(before+after))
		var e *Error
		if !errors.As(err, &e) {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if column := len(before) + 1; e.Text().ID != tt.id || e.Line != 1 || e.Column != column || !strings.HasPrefix(e.Place, tt.within) {
			t.Errorf("%s: %s at %d:%d %q (%v), want %s at 1:%d within %q", tt.name, e.Text().ID, e.Line, e.Column, e.Place, e, tt.id, column, tt.within)
		}
	}
}

// TestWhatIsNoPlan: a file is refused by its head before anything is made of it.
func TestWhatIsNoPlan(t *testing.T) {
	for _, tt := range []struct{ name, text, id string }{
		{"nothing", "", "file.empty"},
		{"white space", " \n\t\r\n", "file.empty"},
		{"a list", "[]", "file.not-json"},
		{"a word", "studbay", "file.not-json"},
		{"no format", `{"version": "1.0"}`, "file.format"},
		{"another format", `{"format": "shed", "version": "1.0"}`, "file.format"},
		{"a number for the format", `{"format": 1, "version": "1.0"}`, "file.syntax"},
		{"no version", `{"format": "studbay"}`, "file.no-version"},
		{"a version that is none", `{"format": "studbay", "version": "one"}`, "file.version"},
		{"a version without a minor", `{"format": "studbay", "version": "1"}`, "file.version"},
		{"a newer major", `{"format": "studbay", "version": "2.0"}`, "file.newer"},
		{"a byte order mark", "\xef\xbb\xbf{}", "file.bom"},
		{"a picture", "\x89PNG\r\n\x1a\n\x00\x00", "file.binary"},
		{"a control in the first half thousand bytes", strings.Repeat("x", 511) + "\x01", "file.binary"},
		{"not UTF-8", "{\"format\": \"\xff\"}", "file.utf8"},
		{"the head ends in the middle", `{"format": "studbay", `, "file.truncated"},
		{"the version behind the rest", `{"format": "studbay", "levels": [1], "version": "9.0"}`, "file.newer"},
	} {
		_, err := Decode("shed", []byte(tt.text))
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != tt.id {
			t.Errorf("%s: %v, want %s", tt.name, err, tt.id)
		}
	}
}

// TestAControlCharacterFarBehind is in a text and is said to be; only the beginning tells
// whether a file is binary data.
func TestAControlCharacterFarBehind(t *testing.T) {
	text := `{"format": "studbay", "version": "1.0", "header": {"title": "` + strings.Repeat("x", 600) + "\x01\"}}"
	_, err := Decode("shed", []byte(text))
	var e *Error
	if !errors.As(err, &e) || e.Text().ID != "file.control" || e.Column != strings.IndexByte(text, 1)+1 {
		t.Errorf("%v", err)
	}
}

// TestSeekFindsValues: the byte at which the value of a pointer begins (RFC 6901), or -1.
func TestSeekFindsValues(t *testing.T) {
	const text = `{"a": [1, {"b/c": 2}, "x"], "d~": {"": 3}, "e": []}`
	for pointer, want := range map[string]int{
		"":          0,
		"/a":        strings.Index(text, "[1"),
		"/a/0":      strings.Index(text, "1,"),
		"/a/1":      strings.Index(text, `{"b`),
		"/a/1/b~1c": strings.Index(text, "2}"),
		"/a/2":      strings.Index(text, `"x"`),
		"/d~0":      strings.Index(text, `{""`),
		"/d~0/":     strings.Index(text, "3}"),
		"/a/3":      -1,
		"/a/1/b":    -1,
		"/a/0/x":    -1,
		"/e":        strings.Index(text, "[]"),
		"/e/0":      -1,
		"/f":        -1,
	} {
		if got := seek([]byte(text), pointer); got != want {
			t.Errorf("%q begins at %d, want %d", pointer, got, want)
		}
	}
}

// TestRecoveryWithoutAFolder: a run that cannot begin leaves nothing behind and says where
// it failed.
func TestRecoveryWithoutAFolder(t *testing.T) {
	folder := t.TempDir()
	inTheWay := filepath.Join(folder, "state")
	write(t, inTheWay, "a file")
	fresh := filepath.Join(folder, "fresh", "state")
	if _, err := OpenRecovery(fresh); err != nil {
		t.Fatal(err)
	}
	for _, made := range []string{filepath.Dir(fresh), fresh} {
		if info, err := os.Stat(made); err != nil || runtime.GOOS != "windows" && info.Mode().Perm() != 0o700 {
			t.Errorf("%s: %v, %v, want it closed to others", made, info, err)
		}
	}
	var e *Error
	if _, err := OpenRecovery(inTheWay); !errors.As(err, &e) || e.File != inTheWay {
		t.Errorf("a file in place of the folder: %v", err)
	}
	if _, err := OpenRecovery(filepath.Join(inTheWay, "studbay")); !errors.As(err, &e) {
		t.Errorf("a file in place of the folder above: %v", err)
	}
	if runtime.GOOS == "windows" || os.Getuid() == 0 {
		return // no folder is closed to them
	}
	closed := filepath.Join(folder, "closed")
	if err := os.Mkdir(closed, 0o500); err != nil {
		t.Fatal(err)
	}
	if _, err := OpenRecovery(closed); !errors.As(err, &e) || !strings.HasPrefix(e.File, closed) {
		t.Errorf("a folder that may not be written: %v", err)
	}
}

// TestRecoveryFailsInWords: what cannot be read, dropped or set aside is told, and takes
// nothing else with it.
func TestRecoveryFailsInWords(t *testing.T) {
	folder := t.TempDir()
	dead := opened(t, folder)
	keep(t, dead, "shed", sample(), noon)
	keep(t, dead, "barn", sample(), noon)
	// A folder where a journal should be cannot be read as one.
	bad := filepath.Join(dead.own.path, journalName("shed"))
	if err := os.Remove(bad); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Join(bad, "within"), 0o700); err != nil {
		t.Fatal(err)
	}
	dead.Close()
	r := opened(t, folder)
	found, problems := r.List()
	if len(found) != 1 || found[0].Doc != "barn" || len(problems) != 1 {
		t.Fatalf("found %d, problems %v", len(found), problems)
	}
	var e *Error
	if !errors.As(problems[0], &e) || e.File != bad {
		t.Errorf("says %v", problems[0])
	}
	if err := r.Drop("shed"); !errors.As(err, &e) || e.File != bad {
		t.Errorf("dropping what is no file: %v", err)
	}
	if err := r.Drop("never heard of"); err != nil {
		t.Errorf("dropping what is not there: %v", err)
	}
}

// TestRecoveryWithoutItsFolder: where the folder is gone, the list says so.
func TestRecoveryWithoutItsFolder(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "state")
	r := opened(t, folder)
	r.Close()
	if err := os.RemoveAll(folder); err != nil {
		t.Fatal(err)
	}
	found, problems := r.List()
	var e *Error
	if len(found) != 0 || len(problems) != 1 || !errors.As(problems[0], &e) || e.File != folder {
		t.Errorf("found %d, problems %v", len(found), problems)
	}
}

// TestOnlyFoldersOfRunsAreTakenUp: what else lies in the folder is left alone.
func TestOnlyFoldersOfRunsAreTakenUp(t *testing.T) {
	folder := t.TempDir()
	write(t, filepath.Join(folder, "run-but-a-file"), "x")
	if err := os.Mkdir(filepath.Join(folder, "notes"), 0o700); err != nil {
		t.Fatal(err)
	}
	write(t, filepath.Join(folder, "notes", journalName("shed")), "x")
	r := opened(t, folder)
	if found := offered(t, r); len(found) != 0 {
		t.Errorf("found %d", len(found))
	}
	r.Close()
	for _, name := range []string{"run-but-a-file", filepath.Join("notes", journalName("shed"))} {
		if content(t, filepath.Join(folder, name)) != "x" {
			t.Errorf("%s was touched", name)
		}
	}
}

// TestLatestOfTwoRunsEitherWay: of two journals of a document the later is offered,
// whichever run has it.
func TestLatestOfTwoRunsEitherWay(t *testing.T) {
	for _, later := range []int{0, 1} {
		folder := t.TempDir()
		runs := []*Recovery{opened(t, folder), opened(t, folder)}
		for i, r := range runs {
			at := noon
			if i == later {
				at = noon.Add(time.Second)
			}
			keep(t, r, "shed", sample(), at)
		}
		runs[0].Close()
		runs[1].Close()
		if found := offered(t, opened(t, folder)); len(found) != 1 || !found[0].Time.Equal(noon.Add(time.Second)) {
			t.Errorf("run %d kept it later: found %v", later, found)
		}
	}
}

// TestAVersionThatIsKept: a plan that came from a newer minor of our major is saved as
// that; any other version that a plan may carry is not.
func TestAVersionThatIsKept(t *testing.T) {
	for text, want := range map[string]string{
		`"1.9"`: "1.9", `"2.9"`: "", `"0.9"`: "", `"1.0"`: "", `"one"`: "", `""`: "",
	} {
		p := sample()
		p.Extra = append(p.Extra, struct{ Pointer, Value string }{versionPointer, text})
		if want == "" {
			want = leastVersion(p).String()
		}
		if got := versionFor(p); got != want {
			t.Errorf("a plan of version %s is saved as %s, want %s", text, got, want)
		}
	}
}
