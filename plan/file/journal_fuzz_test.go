package file

import (
	"crypto/sha256"
	"encoding/json"
	"errors"
	"testing"
)

// FuzzJournal reads journals of any bytes, and those whose head is right for whatever
// follows it. What is read is written, and then read as the same; what is not is refused
// in words.
func FuzzJournal(f *testing.F) {
	good, err := Unsaved{Doc: "shed", Path: "/plans/shed.studbay", Time: noon, Plan: sample()}.encode()
	if err != nil {
		f.Fatal(err)
	}
	for _, seed := range []string{"", "\n", "{}\n", `{"journal":1}` + "\n{}", `{"journal":1,"bytes":0,"hash":""}` + "\n", string(good), string(good[:len(good)/2]), string(good[10:])} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		tryJournal(t, data)
		head, err := json.Marshal(journalHead{Journal: journalVersion, Doc: "shed", Bytes: len(data), Hash: sha256.Sum256(data)})
		if err != nil {
			t.Fatal(err)
		}
		tryJournal(t, append(append(head, '\n'), data...))
	})
}

func tryJournal(t *testing.T, data []byte) {
	t.Helper()
	u, err := decodeJournal("fuzz", data)
	if err != nil {
		var e *Error
		if !errors.Is(err, errJournal) && !errors.As(err, &e) {
			t.Fatalf("refused as %#v", err)
		}
		return
	}
	once, err := u.encode()
	if err != nil {
		t.Fatalf("does not write what it read: %v", err)
	}
	back, err := decodeJournal("fuzz", once)
	if err != nil {
		t.Fatalf("does not read what it wrote: %v", err)
	}
	if back.Doc != u.Doc || back.Path != u.Path || !back.Time.Equal(u.Time) || !equalStamps(back.Stamp, u.Stamp) || !same(t, back.Plan, u.Plan) {
		t.Fatalf("reads %v, then %v", u, back)
	}
}
