package file

import (
	"bytes"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"

	"studbay/plan"
)

// layout sets the line breaks of a text that is on one line, and writes kept members back
// behind the known ones of their object.
type layout struct {
	dec    *jsontext.Decoder
	out    []byte
	indent int
	kept   map[string]plan.Extra // by noun; empty but for a plan of a newer minor
	err    error                 // the first
}

// keeper is the noun being written, where it has kept members.
type keeper struct {
	extra plan.Extra
	path  string // from the noun to the value at hand
}

// step is the keeper one step further in. Below a free key, which a pointer would have to
// escape, nothing is kept.
func (k keeper) step(step string) keeper {
	if len(k.extra) == 0 {
		return k
	}
	return keeper{k.extra, k.path + "/" + step}
}

func oneLine(text []byte) *jsontext.Decoder {
	return jsontext.NewDecoder(bytes.NewBuffer(text), jsontext.AllowDuplicateNames(true))
}

// value writes the value at hand.
func (l *layout) value(f *shape, own keeper) {
	kind := l.dec.PeekKind()
	switch {
	case f.noun:
		own = keeper{}
		if len(l.kept) > 0 {
			own.extra = l.kept[string(l.dec.StackPointer())] // or by its ID, once that is read
		}
		l.object(f, own)
	case kind == '{' && (!f.flat || len(own.extra) > 0):
		l.object(f, own)
	case kind == '[' && (!f.flat || len(own.extra) > 0):
		l.list(f, own)
	default:
		l.copy()
	}
}

// copy writes the value at hand as it stands.
func (l *layout) copy() jsontext.Value {
	raw, err := l.dec.ReadValue()
	l.fail(err)
	l.out = append(l.out, raw...)
	return raw
}

func (l *layout) fail(err error) {
	if l.err == nil {
		l.err = err
	}
}

func (l *layout) token() {
	_, err := l.dec.ReadToken()
	l.fail(err)
}

func (l *layout) list(f *shape, own keeper) {
	l.token()
	row := l.open('[', f.flat)
	for i := 0; l.err == nil && l.dec.PeekKind() != ']'; i++ {
		row.next()
		l.value(f.elem, own.step(strconv.Itoa(i)))
	}
	l.token()
	row.close(']')
}

func (l *layout) object(f *shape, own keeper) {
	l.token()
	row := l.open('{', f.flat)
	var written []string
	for l.err == nil && l.dec.PeekKind() != '}' {
		row.next()
		raw := l.copy()
		l.out = append(l.out, ": "...)
		key := string(raw[1 : len(raw)-1])
		member := f.members[key]
		if member == nil {
			member = f.elem
		}
		if f.noun && key == "id" && len(l.kept) > 0 {
			own = keeper{extra: l.kept[strings.Trim(string(l.copy()), `"`)]}
			continue
		}
		if len(own.extra) > 0 {
			written = append(written, key)
		}
		l.value(member, own.step(key))
	}
	l.token()
	if len(own.extra) > 0 {
		l.omitted(f, own, &row, written)
		l.members(own, &row)
	}
	row.close('}')
}

// omitted writes the objects that were left out, being zero, and yet hold kept members.
// One that stood behind a pointer now nil has gone with what held it.
func (l *layout) omitted(f *shape, own keeper, row *row, written []string) {
	for _, key := range f.keys {
		member, inner := f.members[key], own.step(key)
		if member.members == nil || member.optional || member.noun || slices.Contains(written, key) || !inner.keepsBelow() {
			continue
		}
		row.next()
		l.out = fmt.Appendf(l.out, "%q: ", key)
		dec := l.dec
		l.dec = oneLine([]byte("{}"))
		l.value(member, inner)
		l.dec = dec
	}
}

func (k keeper) keepsBelow() bool {
	return slices.ContainsFunc(k.extra, func(m plan.ExtraMember) bool { return strings.HasPrefix(m.Pointer, k.path+"/") })
}

// members writes the kept members of the object at hand.
func (l *layout) members(own keeper, row *row) {
	for _, m := range own.extra {
		if parentOf(m.Pointer) != own.path {
			continue
		}
		key, ok := strings.CutPrefix(m.Pointer[len(own.path):], "/")
		quoted, err := jsontext.AppendQuote(nil, unescaped(key))
		if !ok || err != nil || !jsontext.Value(m.Value).IsValid() {
			l.fail(fmt.Errorf("write a plan: the kept member %q: %q is none", m.Pointer, m.Value))
			return
		}
		row.next()
		l.out = append(append(append(l.out, quoted...), ": "...), m.Value...)
	}
}

// row is an object or list being written: it sets commas and line breaks.
type row struct {
	l     *layout
	flat  bool
	empty bool
}

// open begins an object or list; a flat one stays on its line.
func (l *layout) open(bracket byte, flat bool) row {
	l.out = append(l.out, bracket)
	l.indent++
	return row{l: l, flat: flat, empty: true}
}

// next goes to where the next member or element is written.
func (r *row) next() {
	if !r.empty {
		r.l.out = append(r.l.out, ',')
		if r.flat {
			r.l.out = append(r.l.out, ' ')
		}
	}
	r.empty = false
	if !r.flat {
		r.l.newline()
	}
}

func (r *row) close(bracket byte) {
	r.l.indent--
	if !r.empty && !r.flat {
		r.l.newline()
	}
	r.l.out = append(r.l.out, bracket)
}

func (l *layout) newline() {
	const spaces = "                                                                "
	l.out = append(l.out, '\n')
	n := 2 * l.indent
	for ; n > len(spaces); n -= len(spaces) {
		l.out = append(l.out, spaces...)
	}
	l.out = append(l.out, spaces[:n]...)
}
