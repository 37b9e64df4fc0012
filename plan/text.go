package plan

import (
	"fmt"
	"reflect"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"
)

// The most characters of a text. No name, note or ID of a house comes near; they bound
// what a sheet must set and a message may quote.
const (
	MaxText = 200   // of one line: names, tags, IDs, kinds
	MaxNote = 4_000 // of what may have several lines: notes, reasons, questions
	quoted  = 40    // of a text in a refusal
)

// longTexts are the keys of texts that may have several lines.
var longTexts = map[string]bool{"note": true, "reason": true, "question": true}

// IsUnseen reports whether a character shows nothing or turns the order of its
// neighbors: a control character (Unicode category Cc) or one of the explicit
// directional formatting characters (Unicode Standard Annex 9, tables 1 to 3).
func IsUnseen(r rune) bool {
	return unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)
}

// Clipped is a text fit to stand in a message: at most so many characters of it, and a
// mark in place of each that cannot be seen.
func Clipped(text string, most int) string {
	var b strings.Builder
	n := 0
	for _, r := range text {
		if n++; n > most {
			return b.String() + "…"
		}
		if IsUnseen(r) || isLineEnd(r) {
			r = utf8.RuneError
		}
		b.WriteRune(r)
	}
	return b.String()
}

// checkText reports a text of a noun, or of what is in it, that is too long or holds
// what cannot be seen. Noun is a pointer to a struct. It comes first of all checks, so
// that the refusals of others may quote.
func checkText(noun any) error {
	if v := reflect.ValueOf(noun); !v.IsNil() {
		return checkTexts(v.Elem(), "")
	}
	return nil
}

// checkTexts looks at a value under a key of the file.
func checkTexts(v reflect.Value, key string) error {
	switch v.Kind() {
	case reflect.String:
		return checkOneText(v.String(), longTexts[key])
	case reflect.Pointer:
		if !v.IsNil() {
			return checkTexts(v.Elem(), key)
		}
	case reflect.Slice:
		for i := range v.Len() {
			if err := checkTexts(v.Index(i), key); err != nil {
				return In(fmt.Sprintf("/%d", i), err)
			}
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			if err := checkOneText(k.String(), false); err != nil {
				return err
			}
		}
	case reflect.Struct:
		for _, f := range textMembersOf(v.Type()) {
			if err := checkTexts(v.Field(f.index), f.key); err != nil {
				return In("/"+f.key, err)
			}
		}
	}
	return nil
}

func checkOneText(text string, long bool) error {
	most := MaxText
	if long {
		most = MaxNote
	}
	if len(text) > most { // bytes: nearly all texts need no counting
		if n := utf8.RuneCountInString(text); n > most {
			return Refuse(nil, "text-long", "the text that begins with “{0}” has {1} characters; {2} are the most that can stand here", Clipped(text, quoted), n, most)
		}
	}
	for at, r := range text {
		if (r < ' ' || r >= 0x7f) && (IsUnseen(r) && !(long && (r == '\n' || r == '\t')) || !long && isLineEnd(r)) {
			from := strings.ToValidUTF8(text[max(0, at-quoted/2):], "")
			return Refuse(nil, "text-unseen", "the text “{0}” holds a character that cannot be seen ({1}); delete it", Clipped(from, quoted), fmt.Sprintf("U+%04X", r))
		}
	}
	return nil
}

// isLineEnd reports whether a character ends a line or a paragraph without being a control
// (Unicode categories Zl and Zp).
func isLineEnd(r rune) bool { return unicode.In(r, unicode.Zl, unicode.Zp) }

// textMember is a member of a noun that holds text, itself or further in.
type textMember struct {
	index int
	key   string
}

var textMembers sync.Map // of a type of struct: []textMember

// textMembersOf returns the fields of a type that may hold text. Nouns of a set are looked
// at by themselves, and what a newer version wrote is not ours to judge.
func textMembersOf(t reflect.Type) []textMember {
	if known, ok := textMembers.Load(t); ok {
		return known.([]textMember)
	}
	var found []textMember
	for i := range t.NumField() {
		key, _, _ := strings.Cut(t.Field(i).Tag.Get("json"), ",")
		if key != "" && key != "-" && hasText(t.Field(i).Type) {
			found = append(found, textMember{i, key})
		}
	}
	textMembers.Store(t, found)
	return found
}

func hasText(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.String, reflect.Map:
		return true
	case reflect.Pointer, reflect.Slice:
		return hasText(t.Elem())
	case reflect.Struct:
		return len(textMembersOf(t)) > 0
	}
	return false
}
