package file

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"sync"

	"github.com/go-json-experiment/json/jsontext"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// shape is a type of the plan as a file holds it: what no library can know of it.
type shape struct {
	kinds    string            // what JSON values it may be, by jsontext.Kind
	want     words.Text        // the same, for messages
	members  map[string]*shape // of an object, by key
	keys     []string          // of an object, in order
	elem     *shape            // of a list, or of the values of free keys
	set      bool              // a list that the plan keeps in the order of IDs
	noun     bool              // an object that keeps the members it does not know
	optional bool              // left out where it is nil
	flat     bool              // written on one line
}

// documentShape is that of the whole file, made once. Keys are those of the json tags, so
// that a new field needs no line here.
var documentShape = sync.OnceValue(func() *shape { return shapeOf(reflect.TypeFor[document]()) })

var (
	ownedType    = reflect.TypeFor[plan.Owned]()
	ownType      = reflect.TypeFor[*plan.Own]()
	extraType    = reflect.TypeFor[plan.Extra]()
	quantityType = reflect.TypeFor[json.Unmarshaler]()
	setType      = reflect.TypeFor[interface {
		Len() int
		MarshalJSONTo(*jsontext.Encoder) error
	}]()
)

// shapeOf returns the shape of a type. No type of a plan holds itself.
func shapeOf(t reflect.Type) *shape {
	if t.Implements(setType) {
		get, _ := t.MethodByName("Get")
		return &shape{kinds: "[", want: wantList, elem: shapeOf(get.Type.Out(0)), set: true}
	}
	if reflect.PointerTo(t).Implements(quantityType) {
		return quantityShape(t)
	}
	switch t.Kind() {
	case reflect.String:
		return &shape{kinds: `"`, want: wantText, flat: true}
	case reflect.Int:
		return &shape{kinds: "0", want: wantNumber, flat: true}
	case reflect.Bool:
		return &shape{kinds: "tf", want: wantFlag, flat: true}
	case reflect.Pointer:
		f := *shapeOf(t.Elem())
		f.optional = true
		return &f
	case reflect.Slice:
		elem := shapeOf(t.Elem())
		return &shape{kinds: "[", want: wantList, elem: elem, flat: elem.flat && elem.members == nil}
	case reflect.Map:
		return &shape{kinds: "{", want: wantObject, elem: shapeOf(t.Elem())}
	case reflect.Struct:
		return objectShape(t)
	}
	panic("file: a plan holds a " + t.String() + ", which has no shape in a file")
}

// quantityShape is that of a type that knows its JSON itself.
func quantityShape(t reflect.Type) *shape {
	f := &shape{kinds: "0", want: wantedOf(t), flat: true}
	switch t {
	case reflect.TypeFor[unit.AWG]():
		f.kinds = `0"`
	case reflect.TypeFor[plan.Flag]():
		f.kinds = "tf"
	}
	return f
}

// objectShape is that of a struct. It is written on one line where it is small: no noun,
// no list of objects, no free keys.
func objectShape(t reflect.Type) *shape {
	f := &shape{kinds: "{", want: wantObject, members: map[string]*shape{}}
	f.add(t)
	f.flat = !f.noun
	for _, m := range f.members {
		f.flat = f.flat && m.flat
	}
	return f
}

// add adds the fields of a struct, and of one embedded in it.
func (f *shape) add(t reflect.Type) {
	for i := range t.NumField() {
		field := t.Field(i)
		key, _, _ := strings.Cut(field.Tag.Get("json"), ",")
		switch {
		case field.Anonymous:
			f.add(field.Type)
		case field.Type == extraType:
			f.noun = true
		case field.Type == ownedType, field.Type == ownType: // of things that stand in the file by themselves
		case key == "" || key == "-":
			panic(fmt.Sprintf("file: %s.%s has no key in its json tag", t, field.Name))
		default:
			f.members[key] = shapeOf(field.Type)
			f.keys = append(f.keys, key)
		}
	}
}
