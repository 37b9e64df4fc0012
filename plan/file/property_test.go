package file

import (
	"bytes"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/plantest"
)

// Every plan on the way of a random job is the same after a trip through the file.
func TestRandomPlansComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.Random(t)
		for range 4 {
			data, err := Encode(p)
			if err != nil {
				t.Fatal(err)
			}
			back, err := Decode("random", data)
			if err != nil {
				t.Fatalf("%v:\n%s", err, data)
			}
			if !plan.Equal(back, p) {
				again, _ := Encode(back)
				t.Fatalf("another plan comes back:\n%s\n%s", data, again)
			}
			if next, err := plantest.Edit(t, p).Apply(p); err == nil {
				p = next
			}
		}
	})
}

// Decode never panics; what it reads it writes, and reads again as the same; and all of
// it is JSON to encoding/json.
func FuzzDecode(f *testing.F) {
	for _, pattern := range []string{"testdata/*.studbay", "testdata/bad/*.studbay"} {
		names, err := filepath.Glob(pattern)
		if err != nil || len(names) == 0 {
			f.Fatal("no files to begin with", err)
		}
		for _, name := range names {
			data, err := os.ReadFile(name)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(data)
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := Decode("fuzz", data)
		if err != nil {
			var e *Error
			if !errors.As(err, &e) || e.Text().IsZero() || e.Line < 0 || e.Line > bytes.Count(data, []byte{'\n'})+1 {
				t.Fatalf("%#v", err)
			}
			return
		}
		if !json.Valid(data) {
			t.Fatal("reads what is no JSON")
		}
		once := encode(t, p)
		back, err := Decode("fuzz", once)
		if err != nil {
			t.Fatalf("does not read what it wrote: %v\n%s", err, once)
		}
		if !same(t, p, back) {
			t.Fatalf("writes another plan:\n%s\n%s", once, encode(t, back))
		}
	})
}

// What is JSON to encoding/json we take too, but for what we refuse on purpose: doubled
// keys, halves of characters, depth; and we take nothing else.
func FuzzSurvey(f *testing.F) {
	for _, text := range []string{`{"a":[1,-0.5e+3,true,false,null,"\u00e9\ud83d\ude00\n"]}`, `[01]`, `[1.]`, `[-]`, `"\x"`, `{"a":1,}`, `[1 2]`, `tru`, "\"\x01\"", ``} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if firstInvalid([]byte(text)) < len(text) {
			return
		}
		s := &survey{reader: newReader([]byte(text))}
		err := s.value(nil, nil)
		whole := err == nil && s.next() == len(text)
		if whole && !json.Valid([]byte(text)) && !strings.ContainsAny(text[s.here(0):], ",:") {
			t.Fatal("takes what is no JSON")
		}
		var fault *Fault
		if err != nil && json.Valid([]byte(text)) {
			if errors.As(err.(*trouble).err, &fault) {
				switch fault.Text.ID {
				case "file.twice", "file.surrogate", "file.deep":
					return
				}
			}
			t.Fatalf("refuses what is JSON: %v", err)
		}
	})
}
