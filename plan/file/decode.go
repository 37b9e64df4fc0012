package file

import (
	"encoding/json"
	"errors"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
)

// document reads the whole text into doc.
func (d *decoder) document(doc *document) error {
	d.space()
	if err := d.value(reflect.ValueOf(doc).Elem(), documentShape()); err != nil {
		return err
	}
	d.space()
	if d.at < len(d.data) {
		return d.fail(d.at, "file.trailing", "{0} stands behind the end of the plan; delete what follows the last brace", d.seen())
	}
	return nil
}

// value reads the value at hand into v.
func (d *decoder) value(v reflect.Value, s *shape) error {
	switch s.kind {
	case object:
		return d.object(v, s)
	case pointerTo:
		fresh := reflect.New(s.elem.typ)
		if err := d.value(fresh.Elem(), s.elem); err != nil {
			return err
		}
		v.Set(fresh)
		return nil
	case list:
		return d.list(v, s.elem)
	case set:
		return d.set(v, s)
	case counts:
		return d.counts(v, s)
	case text:
		var read string
		if err := d.text(&read); err != nil {
			return err
		}
		v.SetString(read)
		return nil
	case whole:
		return d.whole(v)
	case truth:
		return d.truth(v)
	}
	return d.quantity(v)
}

// object reads members into fields.
func (d *decoder) object(v reflect.Value, s *shape) error {
	if err := d.enter('{', wantObject); err != nil {
		return err
	}
	kept := len(d.extra)
	var read progress
	for first := true; ; first = false {
		ok, err := d.more(first, '}')
		if err != nil {
			return err
		}
		if !ok {
			return d.give(v, s, kept)
		}
		if err := d.member(v, s, &read); err != nil {
			return err
		}
	}
}

// progress is how far an object is read.
type progress struct {
	seen    uint64 // a bit for each field
	next    int    // field that should come: a saved file has them in order
	unknown map[string]bool
}

// member reads one member of an object with its key.
func (d *decoder) member(v reflect.Value, s *shape, read *progress) error {
	at := d.at
	key, err := d.key()
	if err != nil {
		return err
	}
	i := s.find(key, read.next)
	if i < 0 {
		return within(d.unknown(s, string(key), at, read), string(key))
	}
	f := &s.fields[i]
	if read.seen&(1<<i) != 0 {
		return within(d.twice(at, f.key), f.key)
	}
	read.seen |= 1 << i
	read.next = i + 1
	mark := len(d.extra)
	if err := d.value(f.of(v), f.shape); err != nil {
		return within(err, f.key)
	}
	d.prefix(mark, f.key)
	return nil
}

// find returns the field of a key, or -1.
func (s *shape) find(key []byte, from int) int {
	for i := from; i < len(s.fields); i++ {
		if s.fields[i].key == string(key) {
			return i
		}
	}
	for i := range from {
		if s.fields[i].key == string(key) {
			return i
		}
	}
	return -1
}

// unknown keeps a member that this version does not know, or refuses it.
func (d *decoder) unknown(s *shape, key string, at int, read *progress) error {
	if !d.keep {
		return &trouble{at: at, err: s.notKnown(key)}
	}
	if read.unknown[key] {
		return d.twice(at, key)
	}
	if read.unknown == nil {
		read.unknown = map[string]bool{}
	}
	read.unknown[key] = true
	if err := d.row(); err != nil {
		return err
	}
	value, err := d.skipped()
	if err != nil {
		return err
	}
	d.extra = append(d.extra, plan.ExtraMember{Pointer: "/" + escaped(key), Value: value})
	return nil
}

// prefix adds a step to the pointers of members kept since mark.
func (d *decoder) prefix(mark int, step string) {
	for i := mark; i < len(d.extra); i++ {
		d.extra[i].Pointer = "/" + escaped(step) + d.extra[i].Pointer
	}
}

// give hands the members kept since mark to the noun that was read, if it is one. They
// are put in an order that does not hang on where they stood among the known ones.
func (d *decoder) give(v reflect.Value, s *shape, mark int) error {
	if len(d.extra) == mark || s.extra == nil {
		return nil
	}
	if len(d.extra)-mark > maxExtra {
		return d.fail(d.at-1, "file.extra", "more than {0} members here are of a newer Studbay; update to open this file", strconv.Itoa(maxExtra))
	}
	extra := slices.Clone(d.extra[mark:])
	slices.SortStableFunc(extra, func(a, b plan.ExtraMember) int {
		return strings.Compare(parentOf(a.Pointer), parentOf(b.Pointer))
	})
	s.extra.of(v).Set(reflect.ValueOf(extra))
	d.extra = d.extra[:mark]
	return nil
}

func (d *decoder) list(v reflect.Value, elem *shape) error {
	if err := d.enter('[', wantList); err != nil {
		return err
	}
	for i := 0; ; i++ {
		ok, err := d.more(i == 0, ']')
		if err != nil || !ok {
			return err
		}
		if err := d.row(); err != nil {
			return err
		}
		if i == v.Cap() {
			v.Grow(1)
		}
		v.SetLen(i + 1)
		mark := len(d.extra)
		if err := d.value(v.Index(i), elem); err != nil {
			return within(err, strconv.Itoa(i))
		}
		if len(d.extra) > mark {
			d.prefix(mark, strconv.Itoa(i))
		}
	}
}

func (d *decoder) set(v reflect.Value, s *shape) error {
	at := d.at
	rows := s.sets.rows()
	if err := d.list(rows.Elem(), s.elem); err != nil {
		return err
	}
	twice, id := s.sets.fill(v, rows)
	if twice < 0 {
		return nil
	}
	step := strconv.Itoa(twice)
	return within(d.fail(at+seek(d.data[at:], "/"+step), "file.id-twice",
		"the id {0} stands twice in this list; give one of the two another", strconv.Quote(clipped(string(id)))), step)
}

// counts reads an object of free keys.
func (d *decoder) counts(v reflect.Value, s *shape) error {
	v.Set(reflect.MakeMap(s.typ))
	n := reflect.New(s.elem.typ).Elem()
	return d.members(func(key string, at int) error {
		name := reflect.ValueOf(key).Convert(v.Type().Key())
		if v.MapIndex(name).IsValid() {
			return d.twice(at, key)
		}
		if err := d.row(); err != nil {
			return err
		}
		if err := d.value(n, s.elem); err != nil {
			return err
		}
		v.SetMapIndex(name, n)
		return nil
	}, func() bool { return false })
}

func (d *decoder) text(to *string) error {
	raw, escapes, err := d.quoted(wantText)
	if err != nil {
		return err
	}
	if escapes {
		*to = unquoted(raw)
	} else {
		*to = string(raw[1 : len(raw)-1])
	}
	return nil
}

func (d *decoder) whole(v reflect.Value) error {
	at := d.at
	raw, err := d.number()
	if err != nil {
		return err
	}
	n, err := strconv.ParseInt(string(raw), 10, 64)
	switch {
	case errors.Is(err, strconv.ErrRange) || err == nil && v.OverflowInt(n):
		return d.fail(at, "file.range", "the number {0} is too large", clipped(string(raw)))
	case err != nil:
		return d.fail(at, "file.whole", "{0} should be a whole number", clipped(string(raw)))
	}
	v.SetInt(n)
	return nil
}

func (d *decoder) truth(v reflect.Value) error {
	at := d.at
	c := d.peek()
	if c == 't' || c == 'f' {
		if err := d.skip(); err != nil {
			return err
		}
		v.SetBool(c == 't')
		return nil
	}
	d.at = at
	return d.want(wantFlag)
}

// quantity reads a value whose type knows its JSON form.
func (d *decoder) quantity(v reflect.Value) error {
	at := d.at
	c := d.peek()
	to := v.Addr().Interface()
	if _, isSize := to.(*unit.AWG); c != '"' && c != '-' && (c < '0' || c > '9') || c == '"' && !isSize {
		return d.want(wantedOf(to))
	}
	if err := d.skip(); err != nil {
		return err
	}
	err := to.(json.Unmarshaler).UnmarshalJSON(d.data[at:d.at])
	if err == nil {
		return nil
	}
	raw := clipped(string(d.data[at:d.at]))
	if errors.Is(err, unit.ErrRange) {
		return &trouble{at: at, err: fault(err, "file.range", "the number {0} is too large", raw)}
	}
	return &trouble{at: at, err: fault(err, "file.quantity", "{0} should be {1}", raw, wantedOf(to))}
}
