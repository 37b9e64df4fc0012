package file

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"sync"

	"studbay/plan"
)

// kind is how a Go type stands in a file.
type kind int

const (
	object    kind = iota // struct
	list                  // slice
	set                   // plan.Set: a list in the order of IDs
	counts                // map of free keys to whole numbers
	pointerTo             // what it points to
	text                  // string
	whole                 // int
	truth                 // bool
	quantity              // a type with a JSON form of its own: a number or a string
)

// shape is a type as a file holds it. Field names, order and omission are those of the
// json tags, so that a new field needs no line here.
type shape struct {
	kind   kind
	typ    reflect.Type
	fields []field // of an object
	elem   *shape  // of a list, set, pointer or counts
	sets   setOps  // of a set
	extra  *field  // of a noun: where its unknown members go
	flat   bool    // written on one line
}

// field is one member of an object.
type field struct {
	key   string
	outer int // index of the embedded struct it stands in, or -1
	index int
	shape *shape
	omit  omission
}

type omission int

const (
	always omission = iota
	omitEmpty
	omitZero
)

func (f *field) of(v reflect.Value) reflect.Value {
	if f.outer >= 0 {
		v = v.Field(f.outer)
	}
	return v.Field(f.index)
}

// documentShape is that of the whole file, made once.
var documentShape = sync.OnceValue(func() *shape {
	return shapes{}.of(reflect.TypeFor[document]())
})

// shapes are those made so far. No type of a plan holds itself.
type shapes map[reflect.Type]*shape

var (
	jsonType  = reflect.TypeFor[json.Unmarshaler]()
	extraType = reflect.TypeFor[plan.Extra]()
)

func (made shapes) of(t reflect.Type) *shape {
	if s, ok := made[t]; ok {
		return s
	}
	s := &shape{typ: t}
	made[t] = s
	made.fill(s)
	s.flat = isFlat(s)
	return s
}

func (made shapes) fill(s *shape) {
	t := s.typ
	if ops, ok := setTable[t]; ok {
		s.kind, s.sets, s.elem = set, ops, made.of(ops.noun)
		return
	}
	if reflect.PointerTo(t).Implements(jsonType) {
		s.kind = quantity
		return
	}
	switch t.Kind() {
	case reflect.String:
		s.kind = text
	case reflect.Int:
		s.kind = whole
	case reflect.Bool:
		s.kind = truth
	case reflect.Pointer:
		s.kind, s.elem = pointerTo, made.of(t.Elem())
	case reflect.Slice:
		s.kind, s.elem = list, made.of(t.Elem())
	case reflect.Map:
		s.kind, s.elem = counts, made.of(t.Elem())
	case reflect.Struct:
		s.kind = object
		made.members(s, t, -1)
	default:
		panic("file: a plan holds a " + t.String() + ", which has no form in a file")
	}
}

// members adds the fields of a struct, and of one embedded in it, to a shape.
func (made shapes) members(s *shape, t reflect.Type, outer int) {
	for i := range t.NumField() {
		f := t.Field(i)
		if f.Anonymous {
			made.members(s, f.Type, i)
			continue
		}
		tag, option, _ := strings.Cut(f.Tag.Get("json"), ",")
		switch {
		case f.Type == extraType:
			s.extra = &field{outer: outer, index: i}
		case tag == "" || tag == "-":
			panic(fmt.Sprintf("file: %s.%s has no key in its json tag", t, f.Name))
		default:
			omit := map[string]omission{"": always, "omitempty": omitEmpty, "omitzero": omitZero}[option]
			s.fields = append(s.fields, field{tag, outer, i, made.of(f.Type), omit})
		}
	}
	if len(s.fields) > 64 {
		panic(fmt.Sprintf("file: %s has more than 64 fields, and the reader marks them in 64 bits", t))
	}
}

// isFlat reports whether a value is small enough for one line: no noun, no list of
// objects, no free keys.
func isFlat(s *shape) bool {
	switch s.kind {
	case object:
		for _, f := range s.fields {
			if !f.shape.flat {
				return false
			}
		}
		return s.extra == nil
	case list:
		return s.elem.flat && s.elem.kind != object && s.elem.kind != list
	case pointerTo:
		return s.elem.flat
	case set, counts:
		return false
	}
	return true
}
