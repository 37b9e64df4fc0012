package file

import (
	"bytes"
	"errors"
	"io"
	"strconv"

	"github.com/go-json-experiment/json/jsontext"

	"studbay/plan/words"
)

// reader is a jsontext.Decoder that knows where in the text it stands and puts in words
// what is no JSON. The text is valid UTF-8.
type reader struct {
	data []byte
	dec  *jsontext.Decoder
}

func newReader(data []byte, options ...jsontext.Options) *reader {
	return &reader{data, jsontext.NewDecoder(bytes.NewBuffer(data), options...)}
}

// here is where the last token ended, less so many bytes.
func (r *reader) here(less int) int { return int(r.dec.InputOffset()) - less }

// next is where the next token begins.
func (r *reader) next() int {
	at := r.here(0)
	for at < len(r.data) && bytes.IndexByte([]byte(" \t\r\n,:"), r.data[at]) >= 0 {
		at++
	}
	return at
}

// pointer is that of the value to be read next.
func (r *reader) pointer() string {
	p := r.dec.StackPointer()
	if kind, n := r.dec.StackIndex(r.dec.StackDepth()); kind == '[' {
		if n > 0 {
			p = p.Parent()
		}
		p = p.AppendToken(strconv.FormatInt(n, 10))
	}
	return string(p)
}

// wholeText is the pointer to all of a file.
const wholeText = ""

// fail returns the trouble of a fault at a byte.
func (r *reader) fail(at int, pointer, id, english string, args ...any) error {
	return &trouble{at: at, pointer: pointer, err: fault(nil, id, english, args...)}
}

// unwanted says that something else should stand at a place.
func (r *reader) unwanted(at int, pointer string, want words.Text) error {
	if at >= len(r.data) {
		return r.fail(len(r.data), pointer, "file.truncated",
			"the file ends in the middle of the plan; it was cut short: open a backup or a recovered copy")
	}
	return r.fail(at, pointer, "file.syntax", "{0} stands where {1} should be", r.seen(at), want)
}

// seen quotes what stands at a place, in short.
func (r *reader) seen(at int) string {
	rest := r.data[at:min(at+80, len(r.data))]
	end := 1
	for end < len(rest) && bytes.IndexByte([]byte(" \t\r\n,:]}"), rest[end]) < 0 {
		end++
	}
	return clipped(string(bytes.ToValidUTF8(rest[:end], nil)))
}

// failing puts in words what jsontext says of a text that is no JSON. Want is what should
// stand where the value at hand begins.
func (r *reader) failing(err error, want words.Text) error {
	var s *jsontext.SyntacticError
	switch {
	case err == nil:
		return nil
	case errors.Is(err, io.EOF):
		return r.unwanted(len(r.data), r.pointer(), want)
	case !errors.As(err, &s):
		return err
	}
	at, pointer := int(s.ByteOffset), string(s.JSONPointer)
	if errors.Is(err, io.ErrUnexpectedEOF) {
		return r.unwanted(len(r.data), pointer, want)
	}
	if errors.Is(err, jsontext.ErrDuplicateName) {
		return r.twice(at, s.JSONPointer)
	}
	if at >= len(r.data) {
		return r.unwanted(at, pointer, want)
	}
	if f := r.inText(at); f != nil {
		return &trouble{at: at, pointer: pointer, err: f}
	}
	if c := r.data[at]; '0' <= c && c <= '9' && at > 0 && r.data[at-1] == '0' {
		return r.fail(at-1, string(r.dec.StackPointer()), "file.zero", "a number begins with 0; write it without")
	}
	if rest := bytes.TrimLeft(r.data[at+1:], " \t\r\n"); r.data[at] == ',' && len(rest) > 0 && (rest[0] == '}' || rest[0] == ']') {
		at = len(r.data) - len(rest) // the comma is right, if only something came behind it
	}
	return r.unwanted(at, pointer, r.due(want))
}

func (r *reader) twice(at int, pointer jsontext.Pointer) error {
	return r.fail(at, string(pointer), "file.twice", "the key {0} is twice in this object; keep one of the two",
		strconv.Quote(clipped(pointer.LastToken())))
}

// inText says what is wrong within a text, where the fault is within one.
func (r *reader) inText(at int) *Fault {
	rest := r.data[at:]
	switch {
	case rest[0] < ' ':
		return fault(nil, "file.control", "a line break or control character stands in a text; write it as in {0}", `"\n"`)
	case rest[0] != '\\':
		return nil
	case len(rest) >= 6 && rest[1] == 'u' && isHex(rest[2:6]):
		return fault(nil, "file.surrogate", "this escape is half of a character; write the character itself")
	}
	return fault(nil, "file.escape", `there is no such escape; write {0} for one backslash`, `\\`)
}

func isHex(b []byte) bool {
	_, err := strconv.ParseUint(string(b), 16, 16)
	return err == nil
}

// due is what should come next, where the value at hand is not begun or is over.
func (r *reader) due(want words.Text) words.Text {
	kind, n := r.dec.StackIndex(r.dec.StackDepth())
	last := bytes.TrimRight(r.data[:r.next()], " \t\r\n")
	parted := n == 0 || len(last) > 0 && last[len(last)-1] == ','
	switch {
	case kind == '{' && n%2 == 1:
		if last[len(last)-1] != ':' {
			return wantColon
		}
		return want
	case kind == '{' && parted:
		return wantKey
	case kind == '{' || kind == '[' && !parted:
		return words.New("file.want.more", "a comma or {0}", string(rune(kind+2)))
	}
	return want
}

// seek returns the byte at which the value of an RFC 6901 pointer begins, or -1. The text
// has been read before and is right.
func seek(data []byte, pointer string) int {
	r := newReader(data)
	for step := range jsontext.Pointer(pointer).Tokens() {
		if !r.descend(step) {
			return -1
		}
	}
	return r.next()
}

// descend goes to the member or element of the value at hand.
func (r *reader) descend(step string) bool {
	open, err := r.dec.ReadToken()
	if err != nil {
		return false
	}
	kind := open.Kind()
	for i := 0; r.dec.PeekKind() != kind+2; i++ {
		at := strconv.Itoa(i)
		if kind == '{' {
			name, err := r.dec.ReadToken()
			if err != nil {
				return false
			}
			at = name.String()
		}
		if at == step {
			return true
		}
		if r.dec.SkipValue() != nil {
			return false
		}
	}
	return false
}
