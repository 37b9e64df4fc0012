package file

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"time"

	"studbay/plan"
)

// Unsaved is a plan with edits that its file has not.
type Unsaved struct {
	// Doc names the document within one run of the program: for a file its path, for one
	// never saved a random name, as two runs may each have one.
	Doc   string
	Path  string // of the plan's file; empty where it was never saved
	Stamp Stamp  // of that file when it was read or last saved
	Time  time.Time
	Plan  plan.Plan
}

// journalHead is the first line of a journal; the text of the plan's file follows.
type journalHead struct {
	Journal int       `json:"journal"` // version of this shape
	Doc     string    `json:"doc"`
	Path    string    `json:"path,omitempty"`
	Stamp   Stamp     `json:"stamp"`
	Time    time.Time `json:"time"`
	Bytes   int       `json:"bytes"` // that follow
	Hash    Hash      `json:"hash"`  // of them
}

const (
	journalVersion = 1
	journalSuffix  = ".journal"
)

// journalName is the file of a document's journal, which may have any characters.
func journalName(doc string) string {
	sum := sha256.Sum256([]byte(doc))
	return hex.EncodeToString(sum[:16]) + journalSuffix
}

func (u Unsaved) encode() ([]byte, error) {
	body, err := Encode(u.Plan)
	if err != nil {
		return nil, err
	}
	head := journalHead{journalVersion, u.Doc, u.Path, u.Stamp, u.Time, len(body), sha256.Sum256(body)}
	line, err := json.Marshal(head)
	if err != nil {
		return nil, err
	}
	return append(append(line, '\n'), body...), nil
}

var errJournal = errors.New("the journal is damaged")

func decodeJournal(name string, data []byte) (Unsaved, error) {
	line, body, _ := bytes.Cut(data, []byte{'\n'})
	var h journalHead
	if err := json.Unmarshal(line, &h); err != nil {
		return Unsaved{}, errors.Join(errJournal, err)
	}
	if h.Journal != journalVersion || h.Bytes != len(body) || h.Hash != sha256.Sum256(body) {
		return Unsaved{}, errJournal
	}
	p, err := Decode(name, body)
	return Unsaved{h.Doc, h.Path, h.Stamp, h.Time, p}, err
}
