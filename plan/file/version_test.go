package file

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"

	"studbay/plan"
)

func oldFile(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func decoded(t testing.TB, data []byte) plan.Plan {
	t.Helper()
	p, err := Decode("kept", data)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// The file of each version is kept as it was written then and never made anew.
func TestKeptFileOf1_0(t *testing.T) {
	data := oldFile(t, "v1.0.studbay")
	p := decoded(t, data)
	if !same(t, p, sample()) {
		t.Errorf("reads\n%s", encode(t, p))
	}
	if got := encode(t, p); !bytes.Equal(got, data) {
		t.Errorf("saves\n%s", got)
	}
}

func TestNewerMinorIsSavedAsItCame(t *testing.T) {
	data := oldFile(t, "v1.2.studbay")
	got := encode(t, decoded(t, data))
	// Only the place of unknown members may change: behind the known ones.
	if g, w := sortedLines(got), sortedLines(data); g != w {
		t.Errorf("saves\n%s", got)
	}
	if again := encode(t, decoded(t, got)); !bytes.Equal(again, got) {
		t.Errorf("saves again\n%s", again)
	}
}

// sortedLines is a file without regard to the order of its lines and of the members in
// them.
func sortedLines(data []byte) string {
	counts := map[string]int{}
	for _, line := range strings.FieldsFunc(string(data), func(r rune) bool { return r == '\n' || r == ',' }) {
		counts[strings.ReplaceAll(line, " ", "")]++
	}
	return fmt.Sprint(counts)
}

func TestEditOfNewerMinorKeepsUnknownMembers(t *testing.T) {
	p := decoded(t, oldFile(t, "v1.2.studbay"))
	o, l := p.Opening("obench222")
	moved := *o
	moved.At.Along, moved.Note = 2_000_000_000, "moved"
	moved.Devices = moved.Devices[:1] // the switch goes, and its finish with it
	level := *l
	level.Openings = l.Openings.With(&moved)
	got := string(encode(t, p.WithLevel(&level)))
	for _, want := range []string{
		`"version": "1.2"`,
		`"palette": {"walls":["#333","#999"],"deep":[[{"a":1e400}]]}`,
		`"a/b~c": "a key that a pointer must escape"`,
		`"along": 2000, "tilt": {"degrees":2}}`,
		`{"name": "tile", "thickness": 10, "colour": "slate"}`,
		`"depth": 88.9, "species": "spruce"}`,
		`"insulation": "R-15"`,
		`"note": "moved",` + "\n          " + `"installed": false,` + "\n          " + `"photos": ["a.jpg","b.jpg"]`,
		`"seal": null`,
		`"slab": true`,
		`"weather": null`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("saved without %s:\n%s", want, got)
		}
	}
	if strings.Contains(got, "bronze") {
		t.Error("a deleted device is still there")
	}
}

func TestPointersOfKeptMembersBeginAtTheirNoun(t *testing.T) {
	p := decoded(t, oldFile(t, "v1.2.studbay"))
	o, l := p.Opening("obench222")
	room, _ := p.Room("rshed2222")
	for _, tt := range []struct {
		where string
		extra plan.Extra
		want  string
	}{
		{"plan", p.Extra, `[{/version "1.2"} {/palette {"walls":["#333","#999"],"deep":[[{"a":1e400}]]}} {/weather null}]`},
		{"header", p.Header.Extra, `[{/a~1b~0c "a key that a pointer must escape"}]`},
		{"level", l.Extra, `[{/slab true}]`},
		{"room", room.Extra, `[]`},
		{"side", room.Sides[0].Extra, `[{/insulation "R-15"} {/finish/1/colour "slate"} {/studs/species "spruce"}]`},
		{"opening", o.Extra, `[{/installed false} {/photos ["a.jpg","b.jpg"]} {/assembly/seal null} {/at/tilt {"degrees":2}} {/devices/1/finish "bronze"}]`},
	} {
		if got := fmt.Sprint(tt.extra); got != tt.want {
			t.Errorf("%s keeps %s, want %s", tt.where, got, tt.want)
		}
	}
}

func TestBrokenKeptMemberIsAnError(t *testing.T) {
	for _, m := range []plan.ExtraMember{{Pointer: "", Value: "1"}, {Pointer: "/a", Value: "{"}, {Pointer: "a", Value: "1"}} {
		p := sample()
		p.Extra = plan.Extra{m}
		if _, err := Encode(p); err == nil {
			t.Errorf("%v is written", m)
		}
	}
}

func TestMigrationsRunInOrder(t *testing.T) {
	replace := func(from, to string) func([]byte) ([]byte, error) {
		return func(data []byte) ([]byte, error) {
			if !bytes.Contains(data, []byte(from)) {
				return nil, errors.New("not text of the version before")
			}
			return bytes.Replace(data, []byte(from), []byte(to), 1), nil
		}
	}
	later := format{version: version{3, 0}, steps: []step{
		{version{2, 0}, replace(`"title"`, `"heading"`)},
		{version{3, 0}, replace(`"heading"`, `"title"`)},
	}}
	p, err := later.decode("old", oldFile(t, "v1.0.studbay"))
	if err != nil || !same(t, p, sample()) {
		t.Errorf("through two steps: %v", err)
	}
	_, err = later.decode("old", []byte(`{"format": "studbay", "version": "1.0", "title": 1}`))
	var e *Error
	if !errors.As(err, &e) || e.Line != 0 {
		t.Errorf("a fault found behind a step names line %d of a text that nobody sees: %v", e.Line, err)
	}
}

func TestParseVersion(t *testing.T) {
	for text, want := range map[string]bool{
		"1.0": true, "1.12": true, "9999.9999": true,
		"": false, "1": false, "0.9": false, "1.": false, ".1": false, "01.0": false, "1.00": false,
		"+1.0": false, "1.0.0": false, "1.-1": false, "10000.0": false, "1.0 ": false,
	} {
		if v, ok := parseVersion(text); ok != want || ok && v.String() != text {
			t.Errorf("parseVersion(%q) = %v, %v", text, v, ok)
		}
	}
}
