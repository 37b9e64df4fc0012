package plan

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"
)

// Texts in every kind of place: a field, a part of a part, a list, a free key.
func TestTextsHaveALimitAndNothingUnseen(t *testing.T) {
	const source = "Unicode category Cc; Unicode Standard Annex 9, tables 1 to 3"
	long := strings.Repeat("½", MaxText)
	for _, tt := range []struct {
		name  string
		noun  any
		field string // none where it is sound
		id    string
	}{
		{"the longest name", &Room{Name: long}, "", ""},
		{"a name a letter longer", &Room{Name: long + "a"}, "/name", "refuse.text-long"},
		{"the longest note", &Room{Note: strings.Repeat("n", MaxNote)}, "", ""},
		{"a note a letter longer", &Opening{Note: strings.Repeat("n", MaxNote+1)}, "/note", "refuse.text-long"},
		{"a note of two lines", &Opening{Note: "one\n\ttwo"}, "", ""},
		{"a name of two lines", &Room{Name: "one\ntwo"}, "/name", "refuse.text-unseen"},
		{"a reason with an escape", &Waiver{Reason: "be\x1b[31m red"}, "/reason", "refuse.text-unseen"},
		{"NUL in a question", &Decision{Question: "why\x00"}, "/question", "refuse.text-unseen"},
		{"DEL in a circuit's number", &Circuit{Number: "\x7f3"}, "/number", "refuse.text-unseen"},
		{"a C1 control", &Circuit{Name: "a\u0085b"}, "/name", "refuse.text-unseen"},
		{"a line separator in a name", &Room{Name: "one\u2028two"}, "/name", "refuse.text-unseen"},
		{"a paragraph separator in a name", &Room{Name: "one\u2029two"}, "/name", "refuse.text-unseen"},
		{"a line separator in a note", &Opening{Note: "one\u2028two"}, "", ""},
		{"an override", &Fixture{Name: "a\u202eb"}, "/name", "refuse.text-unseen"},
		{"an isolate", &Break{Note: "a\u2066b"}, "/note", "refuse.text-unseen"},
		{"a mark of direction", &Control{Letter: "\u200f"}, "/letter", "refuse.text-unseen"},
		{"a joiner, which some scripts need", &Room{Name: "a\u200db"}, "", ""},
		{"letters of the right-to-left scripts", &Room{Name: "חדר"}, "", ""},
		{"in a layer of a side", &Room{Sides: []*Side{{}, {Finish: []Layer{{Name: "x\x01"}}}}}, "/sides/1/finish/0/name", "refuse.text-unseen"},
		{"in what is on a yoke", &Opening{Devices: []Device{{Kind: long + long}}}, "/devices/0/kind", "refuse.text-long"},
		{"in a host", &Opening{At: Anchor{Host: "s\u202e"}}, "/at/host", "refuse.text-unseen"},
		{"in a free key", &Header{NextTag: map[string]int{"A\x07": 1}}, "/nextTag", "refuse.text-unseen"},
		{"kept of a newer version", &Room{Extra: Extra{{"/a", "\x00"}}}, "", ""},
		{"nothing", (*Header)(nil), "", ""},
	} {
		err := checkText(tt.noun)
		var r *Refusal
		if is := errors.As(err, &r); is != (tt.id != "") || is && (r.Field != tt.field || r.Text.ID != tt.id) {
			t.Errorf("%s: %v at %q, want %s at %q (%s)", tt.name, err, fieldOf(r), tt.id, tt.field, source)
		}
	}
}

func fieldOf(r *Refusal) string {
	if r == nil {
		return ""
	}
	return r.Field
}

// Whatever stands in a text, its refusal is one line that a terminal can show.
func TestRefusalQuotesNoMoreThanALine(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("x", 1_000_000), strings.Repeat("\x1b", 1_000_000), "\u202e" + strings.Repeat("é", 3000), strings.Repeat("½", 100) + "\x00",
	} {
		p := New("Shed", "vgrnd2222")
		h := *p.Header
		h.Title = text
		p.Header = &h
		err := Check(p)
		if err == nil || utf8.RuneCountInString(err.Error()) > 200 || strings.ContainsFunc(err.Error(), IsUnseen) {
			t.Errorf("%.60q...: says %q", text, fmt.Sprint(err))
		}
	}
}

// Every noun's own check looks at its texts first, and every edit asks that check: else a
// plan could be saved and not be opened again.
func TestChecksOfNounsRefuseTexts(t *testing.T) {
	const bad = "a\u202eb"
	var s levelSides
	var p Plan
	has := func(ID) bool { return true }
	for name, err := range map[string]error{
		"header":    (&Header{Title: bad}).Check(),
		"level":     (&Level{Name: bad}).Check(),
		"room":      (&Room{Name: bad}).Check(),
		"side":      (&Room{Sides: []*Side{{Finish: []Layer{{Name: bad}}}}}).Check(),
		"break":     s.checkBreak(&Break{Note: bad}),
		"fixture":   s.checkFixture(&Fixture{Name: bad}),
		"opening":   s.checkOpening(&Opening{Note: bad}),
		"circuit":   p.checkCircuit(&Circuit{Name: bad}),
		"cable":     p.checkCable(&Cable{Note: bad}),
		"control":   p.checkControl(&Control{Note: bad}),
		"decision":  checkDecision(&Decision{Question: bad}, has),
		"waiver":    checkWaiver(&Waiver{Reason: bad}, has),
		"amendment": checkAmendment(&Amendment{Reason: bad}),
	} {
		if r := new(Refusal); !errors.As(err, &r) || r.Text.ID != "refuse.text-unseen" {
			t.Errorf("%s: says %v, want that a character cannot be seen", name, err)
		}
	}
}

// At most so many characters and a mark that there were more; what cannot be seen is U+FFFD.
func TestClippedTexts(t *testing.T) {
	for _, tt := range []struct {
		text string
		most int
		want string
	}{
		{"", 0, ""}, {"a", 0, "…"}, {"½½½", 3, "½½½"}, {"½½½½", 3, "½½½…"}, {"½½½½", 4, "½½½½"}, {"a\nb\u202ec\u2028d\u2029\x7f", 9, "a\uFFFDb\uFFFDc\uFFFDd\uFFFD\uFFFD"}, {"a\xff", 5, "a\uFFFD"},
	} {
		if got := Clipped(tt.text, tt.most); got != tt.want {
			t.Errorf("%q clipped to %d is %q, want %q", tt.text, tt.most, got, tt.want)
		}
	}
	var f Flag
	if err, want := f.UnmarshalJSON([]byte(strings.Repeat("x", 25))), strings.Repeat("x", 24)+"…"; err == nil || !strings.Contains(err.Error(), `"`+want+`"`) {
		t.Errorf("a flag says %v, want %s", err, want)
	}
}

// A kind letter and eight of the 32 letters: each place is looked at.
func TestIDsAreWellFormed(t *testing.T) {
	const letters = "abcdefghijkmnpqrstuvwxyz23456789"
	for at := range 9 {
		for r := rune(1); r < 0x80; r++ {
			id := []byte("oaaaaaaaa")
			id[at] = byte(r)
			want := at > 0 && strings.ContainsRune(letters, r) || at == 0 && r == 'o'
			if err := ID(id).Check(KindOpening); (err == nil) != want {
				t.Errorf("%q: %v", id, err)
			}
		}
	}
	for _, id := range []ID{"", "o", "oaaaaaaa", "oaaaaaaaaa"} {
		if id.Check(KindOpening) == nil {
			t.Errorf("%q is well formed", id)
		}
	}
	if ID("").Kind() != 0 || ID("oaaaaaaaa").Kind() != KindOpening {
		t.Error("the kind of an ID is not its first letter")
	}
}
