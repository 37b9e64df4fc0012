package file

import (
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"studbay/plan"
	"studbay/plan/unit"
)

// encoder writes one plan. It keeps its first error.
type encoder struct {
	buf    []byte
	indent int
	extra  plan.Extra // of the noun being written
	path   string     // from that noun; kept only where it has an extra
	err    error
}

// value writes v, which must be addressable.
func (e *encoder) value(v reflect.Value, s *shape) {
	switch s.kind {
	case object:
		e.noun(v, s)
	case pointerTo:
		e.value(v.Elem(), s.elem)
	case list:
		e.list(v, s)
	case set:
		e.set(v, s)
	case counts:
		e.counts(v, s)
	case text:
		e.text(v.String())
	case whole:
		e.buf = strconv.AppendInt(e.buf, v.Int(), 10)
	case truth:
		e.buf = strconv.AppendBool(e.buf, v.Bool())
	case quantity:
		e.quantity(v)
	}
}

// noun writes an object; where it is a noun, with its own kept members.
func (e *encoder) noun(v reflect.Value, s *shape) {
	if s.extra == nil {
		e.object(v, s)
		return
	}
	extra, path := e.extra, e.path
	e.extra, e.path = s.extra.of(v).Interface().(plan.Extra), ""
	e.object(v, s)
	e.extra, e.path = extra, path
}

func (e *encoder) object(v reflect.Value, s *shape) {
	row := e.open('{', s.flat)
	for i := range s.fields {
		f := &s.fields[i]
		fv := f.of(v)
		if f.omits(fv) && !e.keepsBelow(f.key) {
			continue
		}
		row.next()
		e.key(f.key)
		if len(e.extra) == 0 {
			e.value(fv, f.shape)
			continue
		}
		e.below(f.key, func() { e.value(fv, f.shape) })
	}
	for _, m := range e.extra {
		if parentOf(m.Pointer) == e.path {
			row.next()
			e.kept(m)
		}
	}
	row.close('}')
}

// omits reports whether a member is left out, by the rules of encoding/json.
func (f *field) omits(v reflect.Value) bool {
	switch f.omit {
	case omitZero:
		return v.IsZero()
	case omitEmpty:
		if k := v.Kind(); k == reflect.Slice || k == reflect.Map {
			return v.Len() == 0
		}
		return v.Kind() != reflect.Struct && v.IsZero()
	}
	return false
}

// keepsBelow reports whether a member that would be left out holds a kept one. One that
// stood behind a pointer now nil has gone with what held it.
func (e *encoder) keepsBelow(key string) bool {
	if len(e.extra) == 0 {
		return false
	}
	below := e.path + "/" + escaped(key) + "/"
	return slices.ContainsFunc(e.extra, func(m plan.ExtraMember) bool { return strings.HasPrefix(m.Pointer, below) })
}

// below writes with the path one step longer.
func (e *encoder) below(step string, write func()) {
	path := e.path
	e.path += "/" + escaped(step)
	write()
	e.path = path
}

// parentOf is a pointer without its last step.
func parentOf(pointer string) string { return pointer[:max(0, strings.LastIndexByte(pointer, '/'))] }

// kept writes a member that this version does not know.
func (e *encoder) kept(m plan.ExtraMember) {
	key, ok := strings.CutPrefix(m.Pointer[len(e.path):], "/")
	if !ok || !json.Valid([]byte(m.Value)) {
		e.fail(fmt.Errorf("write a plan: the kept member %q: %q is none", m.Pointer, m.Value))
		return
	}
	e.key(unescaped(key))
	e.buf = append(e.buf, m.Value...)
}

func (e *encoder) fail(err error) {
	if e.err == nil {
		e.err = err
	}
}

func (e *encoder) list(v reflect.Value, s *shape) {
	row := e.open('[', s.flat)
	for i := range v.Len() {
		row.next()
		if len(e.extra) == 0 {
			e.value(v.Index(i), s.elem)
			continue
		}
		e.below(strconv.Itoa(i), func() { e.value(v.Index(i), s.elem) })
	}
	row.close(']')
}

func (e *encoder) set(v reflect.Value, s *shape) {
	row := e.open('[', s.flat)
	s.sets.each(v, func(noun reflect.Value) {
		row.next()
		e.value(noun, s.elem)
	})
	row.close(']')
}

// counts writes free keys in the order of their bytes.
func (e *encoder) counts(v reflect.Value, s *shape) {
	keys := v.MapKeys()
	slices.SortFunc(keys, func(a, b reflect.Value) int { return strings.Compare(a.String(), b.String()) })
	row := e.open('{', s.flat)
	for _, k := range keys {
		row.next()
		e.key(k.String())
		e.value(v.MapIndex(k), s.elem)
	}
	row.close('}')
}

func (e *encoder) quantity(v reflect.Value) {
	switch q := v.Addr().Interface().(type) {
	case *unit.Length:
		e.buf = q.AppendExact(e.buf)
	case *unit.Volume:
		e.buf = q.AppendDecimal(e.buf)
	case json.Marshaler:
		form, err := q.MarshalJSON()
		if err != nil {
			e.fail(fmt.Errorf("write a plan: %w", err))
		}
		e.buf = append(e.buf, form...)
	}
}

func (e *encoder) key(key string) {
	e.text(key)
	e.buf = append(e.buf, ':', ' ')
}

// text writes a string. Bytes that are no UTF-8 become U+FFFD: a plan with a bad letter
// in a note must still be saved.
func (e *encoder) text(s string) {
	e.buf = append(e.buf, '"')
	plain := 0
	for i, r := range s {
		if r >= ' ' && r != '"' && r != '\\' && r != utf8.RuneError && r != '\u2028' && r != '\u2029' {
			continue
		}
		_, size := utf8.DecodeRuneInString(s[i:])
		e.buf = append(e.buf, s[plain:i]...)
		e.buf = appendEscape(e.buf, r)
		plain = i + size
	}
	e.buf = append(append(e.buf, s[plain:]...), '"')
}

func appendEscape(b []byte, r rune) []byte {
	switch r {
	case '"', '\\':
		return append(b, '\\', byte(r))
	case '\n':
		return append(b, `\n`...)
	case '\t':
		return append(b, `\t`...)
	case utf8.RuneError:
		return utf8.AppendRune(b, r)
	}
	return fmt.Appendf(b, `\u%04x`, r)
}
