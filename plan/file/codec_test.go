package file

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"studbay/plan"
)

// read decodes text of our version without asking whether it makes sense as a plan.
func read(t testing.TB, data []byte) plan.Plan {
	t.Helper()
	data, found, err := current.migrated(data)
	if err == nil {
		var p plan.Plan
		if p, err = current.read(data, found); err == nil {
			return p
		}
	}
	t.Fatal(place("text", data, err))
	return plan.Plan{}
}

func encode(t testing.TB, p plan.Plan) []byte {
	t.Helper()
	data, err := Encode(p)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// same compares all there is, through sets.
func same(t testing.TB, a, b plan.Plan) bool {
	t.Helper()
	return bytes.Equal(encode(t, a), encode(t, b)) && plan.Equal(a, b)
}

func TestEveryFieldComesBack(t *testing.T) {
	for number := range uint64(60) {
		want := filled(number, 3, number%2 == 1)
		got := read(t, encode(t, want))
		if !same(t, got, want) {
			t.Fatalf("number %d: a plan does not come back:\n%s\n%s", number, encode(t, want), encode(t, got))
		}
	}
}

// encoding/json knows nothing of our layout, but must see the very same members in the
// same order, and read the same values.
func TestAgreesWithEncodingJSON(t *testing.T) {
	for number := range uint64(60) {
		p := filled(number, 3, number%2 == 1)
		data := encode(t, p)
		doc := document{Format: formatName, Version: versionFor(p), Plan: p}
		reference, err := json.Marshal(doc)
		if err != nil {
			t.Fatal(err)
		}
		var line bytes.Buffer
		if err := json.Compact(&line, data); err != nil {
			t.Fatal(err)
		}
		if got, want := plainNull(line.String()), plainNull(string(reference)); got != want {
			t.Fatalf("number %d: Encode\n%s\nencoding/json\n%s", number, got, want)
		}
		var back document
		if err := json.Unmarshal(data, &back); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(encode(t, back.Plan), data) {
			t.Fatalf("number %d: encoding/json reads another plan", number)
		}
	}
}

// plainNull undoes what encoding/json writes otherwise: null for an empty list, and
// escapes of characters that HTML minds.
func plainNull(text string) string {
	return strings.NewReplacer(":null", ":[]", `\u003c`, "<", `\u003e`, ">", `\u0026`, "&").Replace(text)
}

func TestLayout(t *testing.T) {
	data := encode(t, filled(1, 2, false))
	if !bytes.HasPrefix(data, []byte("{\n  \"format\": \"studbay\",\n  \"version\": \"1.1\",\n  \"header\": {\n    \"title\": ")) {
		t.Errorf("begins with %.80q", data)
	}
	if !bytes.HasSuffix(data, []byte("]\n}\n")) {
		t.Errorf("ends with %q", data[len(data)-20:])
	}
	if bytes.Contains(data, []byte(" \n")) {
		t.Error("a line ends with a space")
	}
}
