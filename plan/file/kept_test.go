package file

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// newer is the kept file of version 1.0 as a newer minor would have written it: each old
// text is there once at least, and the first is another.
func newer(t *testing.T, pairs ...string) []byte {
	t.Helper()
	text := string(oldFile(t, "v1.0.studbay"))
	for pair := range slices.Chunk(append(pairs, `"version": "1.0"`, `"version": "1.9"`), 2) {
		if !strings.Contains(text, pair[0]) {
			t.Fatalf("no %s in the file", pair[0])
		}
		text = strings.Replace(text, pair[0], pair[1], 1)
	}
	return []byte(text)
}

// TestMembersOfWhatIsLeftOutAreKept: an object that says nothing of ours is left out of a
// file; where it holds what we do not know it is written all the same. A list of one line
// is set in lines only where it must be.
func TestMembersOfWhatIsLeftOutAreKept(t *testing.T) {
	data := newer(t,
		`"studs": {"spacing": 406.4, "depth": 88.9}`, `"studs": {"spacing": 406.4, "depth": 88.9}, "rating": {"hours": 1, "of": {"a": [1, 2]}}`,
		`"casing": 63.5`, `"casing": 63.5, "rough": {"slope": [1,12]}`,
		`"id": "kbench222"`, `"\u0069d": "kbench222", "spare": true`)
	got := encode(t, decoded(t, data))
	if g, w := sortedLines(got), sortedLines([]byte(strings.Replace(string(data), `\u0069`, "i", 1))); g != w {
		t.Errorf("saves\n%s", got)
	}
	for _, want := range []string{`"rough": {"slope": [1,12]}`, `"rating": {"hours": 1, "of": {"a":[1,2]}}`, `"spare": true`} {
		if !strings.Contains(string(got), want) {
			t.Errorf("saves no %s", want)
		}
	}
}

// TestMembersGoWithWhatHeldThem: what is deleted takes with it what we did not know of it.
func TestMembersGoWithWhatHeldThem(t *testing.T) {
	p := decoded(t, newer(t, `"source": "stated",`, `"source": "stated", "seen": "by lamp",`, `"tag": "S2",`, `"tag": "S2", "hue": 3,`))
	o, l := p.Opening("obench222")
	if got := string(encode(t, p)); !strings.Contains(got, `"seen": "by lamp"`) || !strings.Contains(got, `"hue": 3`) {
		t.Fatalf("saves\n%s", got)
	}
	bare, level := *o, *l
	bare.Contents = nil
	level.Openings = l.Openings.With(&bare)
	if got := string(encode(t, p.WithLevel(&level))); strings.Contains(got, "by lamp") || !strings.Contains(got, `"hue": 3`) {
		t.Errorf("without its contents it saves\n%s", got)
	}
}

// TestDepthIsBounded: 64 objects and lists within one another are read, one more is told.
func TestDepthIsBounded(t *testing.T) {
	for depth, id := range map[int]string{MaxDepth: "", MaxDepth + 1: "file.deep"} {
		n := depth - 1 // within the object of the file
		deep := strings.Repeat("[", n) + strings.Repeat("]", n)
		_, err := Decode("shed", newer(t, `"header": {`, `"deep": `+deep+`, "header": {`))
		var e *Error
		if said := errors.As(err, &e); said != (id != "") || said && (e.Text().ID != id || e.Place != "/deep"+strings.Repeat("/0", n-1)) {
			t.Errorf("%d within one another: %v", depth, err)
		}
	}
}

// TestRowsAreBounded: as many as may be are read.
func TestRowsAreBounded(t *testing.T) {
	for n, id := range map[int]string{maxExtra: "", maxExtra + 1: "file.extra"} {
		_, err := Decode("shed", newer(t, `"title": "Boat shed",`, `"title": "Boat shed", `+manyKeys(n)+","))
		var e *Error
		if said := errors.As(err, &e); said != (id != "") || said && e.Text().ID != id {
			t.Errorf("%d members of one noun: %v", n, err)
		}
	}
}

// TestAWordIsReadWhole: a quote within it does not end it.
func TestAWordIsReadWhole(t *testing.T) {
	for text, id := range map[string]string{
		`{"format": "x\"studbay", "version": "1.0"}`:           "file.format",
		`{"format": "studbay", "version": "9\"1.0"}`:           "file.version",
		`{"format": "studbay", "version": "1."}`:               "file.version",
		`{"format": "studbay", "version": "1.x"}`:              "file.version",
		`{"format": "studbay", "version": "x.1"}`:              "file.version",
		`{"levels": 1, "format": "studbay", "version": "1.0"}`: "file.syntax",
		`{7: 1, "format": "studbay", "version": "1.0"}`:        "file.syntax",
		`{"format": "studbay" "version": "1.0"}`:               "file.syntax",
	} {
		_, err := Decode("shed", []byte(text))
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != id {
			t.Errorf("%s: %v, want %s", text, err, id)
		}
	}
}

// TestAFaultIsPlacedAsTheFileHasIt: sides stand in a file as they go round the room, and
// rooms in any order. The place is a pointer into the file (RFC 6901).
func TestAFaultIsPlacedAsTheFileHasIt(t *testing.T) {
	text := strings.Replace(string(oldFile(t, "v1.0.studbay")), `"snrth2222",`+"\n              \"start\": {\"x\": 0, \"y\": 0},\n              \"kind\": \"wall\"",
		`"snrth2222",`+"\n              \"start\": {\"x\": 0, \"y\": 0},\n              \"kind\": \"hedge\"", 1)
	_, err := Decode("shed", []byte(text))
	var e *Error
	if !errors.As(err, &e) || !strings.HasPrefix(e.Place, "/levels/0/rooms/0/sides/0") {
		t.Errorf("%v", err)
	}
}

// TestALongPlaceIsCut at 200 characters, for a line of text.
func TestALongPlaceIsCut(t *testing.T) {
	for n, isWhole := range map[int]bool{200: true, 201: false} {
		place := "/" + strings.Repeat("a", n-1)
		e := &Error{File: "shed", Place: place, Err: errors.New("bad")}
		if got := strings.Contains(e.Error(), place+": bad"); got != isWhole {
			t.Errorf("a place of %d characters stands whole: %v", n, got)
		}
	}
}

// TestWhatIsAskedOfAPathThroughAFile: no folder is there to look into.
func TestWhatIsAskedOfAPathThroughAFile(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	write(t, path, "x")
	within := filepath.Join(path, "den.studbay")
	var e *Error
	if changed, err := HasChanged(within, Stamp{}); changed || !errors.As(err, &e) || e.File != within {
		t.Errorf("changed %v, %v", changed, err)
	}
	if _, err := StampOf(within); !errors.As(err, &e) {
		t.Errorf("stamped, %v", err)
	}
	if changed, err := HasChanged(folder, Stamp{Size: 1}); err == nil && !changed {
		t.Error("a folder in place of the file is no change")
	}
	if _, err := ClaimFile(within, path); !errors.As(err, &e) {
		t.Errorf("claimed from a folder that cannot be, %v", err)
	}
	if lock, err := tryLock(filepath.Join(folder, "none", "lock")); err == nil || errors.Is(err, errLocked) {
		t.Errorf("locked %v where there is no folder: %v", lock, err)
	}
}
