package file

import (
	"bytes"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"

	"studbay/plan"
)

// survey goes through a text before values are made of it, and refuses what a plan may
// not hold: more than the limits, nulls, values of another kind, keys not known. What is
// no JSON, and a key that stands twice, jsontext refuses on the way.
type survey struct {
	*reader
	keep bool // unknown members are kept; else they are errors
	rows int  // list elements and free keys so far
	kept map[string]plan.Extra
	key  []byte // the last read, without quotes and escapes
}

// surveyed returns the members that are not known, by the noun that is to keep them.
func surveyed(data []byte, keep bool) (kept map[string]plan.Extra, err error) {
	s := &survey{reader: newReader(data), keep: keep, kept: map[string]plan.Extra{}}
	if err := s.value(documentShape(), nil); err != nil {
		return nil, err
	}
	if rest := bytes.TrimLeft(data[s.here(0):], " \t\r\n"); len(rest) > 0 {
		at := len(data) - len(rest)
		return nil, s.fail(at, wholeText, "file.trailing", "{0} stands behind the end of the plan; delete what follows the last brace", s.seen(at))
	}
	return s.kept, nil
}

// owner is the noun whose members are read.
type owner struct {
	id    string
	depth int // steps of the pointer to it
	extra plan.Extra
}

// value takes a value of a shape, or of any where that is nil.
func (s *survey) value(f *shape, own *owner) error {
	at := s.next()
	kind := s.dec.PeekKind()
	if f != nil && kind != jsontext.KindInvalid && strings.IndexByte(f.kinds, byte(kind)) < 0 {
		return s.unwanted(at, s.pointer(), s.due(f.want))
	}
	switch {
	case kind == '{' && f != nil && f.members != nil:
		return s.object(f, own)
	case kind == '{' || kind == '[':
		return s.open(f, kind, own)
	}
	want := wantValue
	if f != nil {
		want = f.want
	}
	return s.failing(s.dec.SkipValue(), want)
}

// enter takes an opening bracket.
func (s *survey) enter() error {
	if _, err := s.dec.ReadToken(); err != nil {
		return s.failing(err, wantValue)
	}
	if s.dec.StackDepth() > MaxDepth {
		return s.fail(s.here(1), string(s.dec.StackPointer()), "file.deep", "more than {0} objects and lists stand within one another; no plan needs that", MaxDepth)
	}
	return nil
}

// open takes a list, or an object of free keys.
func (s *survey) open(f *shape, kind jsontext.Kind, own *owner) error {
	var elem *shape
	if f != nil {
		elem = f.elem
	}
	if err := s.enter(); err != nil {
		return err
	}
	for end := s.dec.PeekKind(); end != kind+2; end = s.dec.PeekKind() { // "{" and "}", "[" and "]" are two apart
		if err := s.row(); err != nil {
			return err
		}
		if kind == '{' {
			if _, err := s.dec.ReadValue(); err != nil {
				return s.failing(err, wantKey)
			}
		}
		if err := s.value(elem, own); err != nil {
			return err
		}
	}
	_, err := s.dec.ReadToken()
	return s.failing(err, wantValue)
}

// row counts one list element or free key.
func (s *survey) row() error {
	if s.rows++; s.rows > MaxRows {
		return s.fail(s.next(), s.pointer(), "file.rows", "the lists of this file hold more than {0} things together; it is damaged or no plan of Studbay", strconv.Itoa(MaxRows))
	}
	return nil
}

// object takes an object of known keys.
func (s *survey) object(f *shape, own *owner) error {
	if f.noun {
		own = &owner{depth: s.dec.StackDepth()}
		if s.keep {
			own.id = string(s.dec.StackPointer())
		}
	}
	if err := s.enter(); err != nil {
		return err
	}
	for s.dec.PeekKind() != '}' {
		raw, err := s.dec.ReadValue()
		if err != nil {
			return s.failing(err, wantKey)
		}
		s.key, _ = jsontext.AppendUnquote(s.key[:0], raw)
		member, ok := f.members[string(s.key)]
		switch {
		case !ok:
			err = s.unknown(f, len(raw), own)
		case f.noun && string(s.key) == "id":
			own.id, err = s.word(member)
		default:
			err = s.value(member, own)
		}
		if err != nil {
			return err
		}
	}
	if _, err := s.dec.ReadToken(); err != nil {
		return s.failing(err, wantKey)
	}
	return s.give(f, own)
}

// word takes a text of a shape and returns it.
func (s *survey) word(f *shape) (string, error) {
	start := s.next()
	if err := s.value(f, nil); err != nil {
		return "", err
	}
	text, _ := jsontext.AppendUnquote(nil, s.data[start:s.here(0)])
	return string(text), nil
}

// unknown keeps a member that this version does not know, or refuses it. Its key, of so
// many bytes, was read.
func (s *survey) unknown(f *shape, length int, own *owner) error {
	at, pointer := s.here(length), s.dec.StackPointer()
	if !s.keep {
		return &trouble{at: at, pointer: string(pointer), err: f.notKnown(pointer.LastToken())}
	}
	if err := s.row(); err != nil {
		return err
	}
	start := s.next()
	if err := s.value(nil, own); err != nil {
		return err
	}
	value := jsontext.Value(bytes.Clone(s.data[start:s.here(0)]))
	if err := value.Compact(); err != nil {
		return s.failing(err, wantValue)
	}
	own.extra = append(own.extra, plan.ExtraMember{Pointer: below(string(pointer), own.depth), Value: string(value)})
	return nil
}

// below is a pointer without its first steps.
func below(pointer string, steps int) string {
	for range steps {
		pointer = pointer[1:]
		pointer = pointer[strings.IndexByte(pointer, '/'):]
	}
	return pointer
}

// give hands a noun the members kept of it, in an order that does not hang on where they
// stood among the known ones.
func (s *survey) give(f *shape, own *owner) error {
	if !f.noun || len(own.extra) == 0 {
		return nil
	}
	if len(own.extra) > maxExtra {
		return s.fail(s.here(1), string(s.dec.StackPointer()), "file.extra", "more than {0} members here are of a newer Studbay; update to open this file", strconv.Itoa(maxExtra))
	}
	s.kept[own.id] = sortedExtra(own.extra)
	return nil
}
