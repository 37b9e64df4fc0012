package file

import (
	"bytes"
	"encoding/json"
	"strconv"
	"unicode/utf8"

	"studbay/plan"
	"studbay/plan/words"
)

// decoder reads JSON (RFC 8259) in one pass. Its input is valid UTF-8.
type decoder struct {
	data  []byte
	at    int
	depth int
	rows  int        // list elements and free keys so far
	keep  bool       // unknown members go to extra; else they are errors
	extra plan.Extra // kept and not yet given to a noun
}

// fail returns the trouble of a fault at a byte.
func (d *decoder) fail(at int, id, english string, args ...any) error {
	return &trouble{at: at, err: fault(nil, id, english, args...)}
}

func (d *decoder) space() {
	for d.at < len(d.data) {
		switch d.data[d.at] {
		case ' ', '\n', '\r', '\t':
			d.at++
		default:
			return
		}
	}
}

// peek returns the byte at hand, or 0 at the end of the text.
func (d *decoder) peek() byte {
	if d.at < len(d.data) {
		return d.data[d.at]
	}
	return 0
}

// want reports that something else should stand here.
func (d *decoder) want(what words.Text) error {
	if d.at >= len(d.data) {
		return d.fail(len(d.data), "file.truncated",
			"the file ends in the middle of the plan; it was cut short: open a backup or a recovered copy")
	}
	return d.fail(d.at, "file.syntax", "{0} stands where {1} should be", d.seen(), what)
}

// seen quotes what stands here, in short.
func (d *decoder) seen() string {
	rest := d.data[d.at:min(d.at+80, len(d.data))]
	end := 1
	for end < len(rest) && bytes.IndexByte([]byte(" \t\r\n,:]}"), rest[end]) < 0 {
		end++
	}
	return clipped(string(rest[:end]))
}

// clipped shortens a text from outside for a message.
func clipped(text string) string {
	const most = 24
	if utf8.RuneCountInString(text) <= most {
		return text
	}
	return string([]rune(text)[:most]) + "…"
}

// enter takes an opening bracket.
func (d *decoder) enter(bracket byte, what words.Text) error {
	if d.peek() != bracket {
		return d.want(what)
	}
	if d.depth++; d.depth > MaxDepth {
		return d.fail(d.at, "file.deep", "more than {0} objects and lists stand within one another; no plan needs that", MaxDepth)
	}
	d.at++
	return nil
}

// more reports whether another member or element comes, and stands at it; else it has
// taken the closing bracket.
func (d *decoder) more(first bool, bracket byte) (bool, error) {
	d.space()
	switch c := d.peek(); {
	case c == bracket:
		d.at++
		d.depth--
		return false, nil
	case first:
		return true, nil
	case c == ',':
		d.at++
		d.space()
		return true, nil
	}
	return false, d.want(words.New("file.want.more", "a comma or {0}", string(bracket)))
}

// key reads the key of a member and its colon, and stands at the value.
func (d *decoder) key() ([]byte, error) {
	raw, escapes, err := d.quoted(wantKey)
	if err != nil {
		return nil, err
	}
	key := raw[1 : len(raw)-1]
	if escapes {
		key = []byte(unquoted(raw))
	}
	d.space()
	if d.peek() != ':' {
		return nil, d.want(wantColon)
	}
	d.at++
	d.space()
	return key, nil
}

// row counts one list element or free key.
func (d *decoder) row() error {
	if d.rows++; d.rows > MaxRows {
		return d.fail(d.at, "file.rows", "the lists of this file hold more than {0} things together; it is damaged or no plan of Studbay", strconv.Itoa(MaxRows))
	}
	return nil
}

// quoted takes a string and returns it with its quotes, and whether it holds escapes.
func (d *decoder) quoted(what words.Text) (raw []byte, escapes bool, err error) {
	if d.peek() != '"' {
		return nil, false, d.want(what)
	}
	start := d.at
	for d.at++; d.at < len(d.data); d.at++ {
		switch c := d.data[d.at]; {
		case c == '"':
			d.at++
			return d.data[start:d.at], escapes, nil
		case c == '\\':
			escapes = true
			if err := d.escape(); err != nil {
				return nil, false, err
			}
		case c < ' ':
			return nil, false, d.fail(d.at, "file.control", "a line break or control character stands in a text; write it as in {0}", `"\n"`)
		}
	}
	return nil, false, d.want(wantText)
}

// escape steps on to the last byte of an escape and checks it.
func (d *decoder) escape() error {
	start := d.at
	d.at++
	switch d.peek() {
	case '"', '\\', '/', 'b', 'f', 'n', 'r', 't':
		return nil
	case 'u':
		if unit, ok := hex4(d.data[d.at+1:]); ok {
			return d.surrogates(start, unit)
		}
	}
	if d.at >= len(d.data) {
		return d.want(wantText)
	}
	return d.fail(start, "file.escape", `there is no such escape; write {0} for one backslash`, `\\`)
}

// surrogates checks that a UTF-16 unit is whole by itself or has its other half.
func (d *decoder) surrogates(start int, unit uint64) error {
	d.at += 4
	if unit < 0xd800 || unit > 0xdfff {
		return nil
	}
	rest := d.data[d.at+1:]
	if unit < 0xdc00 && len(rest) > 2 && rest[0] == '\\' && rest[1] == 'u' {
		if low, ok := hex4(rest[2:]); ok && low >= 0xdc00 && low <= 0xdfff {
			d.at += 6
			return nil
		}
	}
	return d.fail(start, "file.surrogate", "this escape is half of a character; write the character itself")
}

func hex4(b []byte) (uint64, bool) {
	if len(b) < 4 {
		return 0, false
	}
	n, err := strconv.ParseUint(string(b[:4]), 16, 16)
	return n, err == nil
}

// unquoted returns the text of a string whose escapes are checked.
func unquoted(raw []byte) (text string) {
	if err := json.Unmarshal(raw, &text); err != nil {
		panic("file: a checked string does not unquote: " + err.Error())
	}
	return text
}

// number takes a JSON number of any length.
func (d *decoder) number() ([]byte, error) {
	start := d.at
	d.skipOne('-')
	if !d.skipOne('0') && !d.digits() {
		return nil, d.want(wantNumber)
	}
	if d.skipOne('.') && !d.digits() {
		return nil, d.want(wantDigit)
	}
	if d.skipOne('e') || d.skipOne('E') {
		_ = d.skipOne('+') || d.skipOne('-')
		if !d.digits() {
			return nil, d.want(wantDigit)
		}
	}
	if c := d.peek(); '0' <= c && c <= '9' {
		return nil, d.fail(start, "file.zero", "a number begins with 0; write it without")
	}
	return d.data[start:d.at], nil
}

func (d *decoder) skipOne(c byte) bool {
	if d.peek() != c {
		return false
	}
	d.at++
	return true
}

func (d *decoder) digits() bool {
	start := d.at
	for d.at < len(d.data) && '0' <= d.data[d.at] && d.data[d.at] <= '9' {
		d.at++
	}
	return d.at > start
}
