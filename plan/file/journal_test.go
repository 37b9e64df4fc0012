package file

import (
	"bytes"
	"errors"
	"testing"
)

// TestAJournalWhoseHeadIsWrong is refused, however right the rest of it is.
func TestAJournalWhoseHeadIsWrong(t *testing.T) {
	good, err := Unsaved{Doc: "shed", Time: noon, Plan: sample()}.encode()
	if err != nil {
		t.Fatal(err)
	}
	if u, err := decodeJournal("shed", good); err != nil || u.Doc != "shed" {
		t.Fatalf("as it is: %v", err)
	}
	for _, tt := range []struct{ name, old, new string }{
		{"a number for the document", `"doc":"shed"`, `"doc":5`},
		{"another version", `"journal":1`, `"journal":2`},
		{"no version", `"journal":1,`, ``},
		{"a byte less", `"bytes":`, `"bytes":1`},
		{"no hash", `"hash":"`, `"hash":"00`},
		{"a time that is none", `"time":"`, `"time":"x`},
	} {
		bad := bytes.Replace(good, []byte(tt.old), []byte(tt.new), 1)
		if bytes.Equal(bad, good) {
			t.Fatalf("%s: nothing was replaced", tt.name)
		}
		if _, err := decodeJournal("shed", bad); !errors.Is(err, errJournal) {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}
