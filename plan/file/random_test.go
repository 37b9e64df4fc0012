package file

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"strings"

	"studbay/plan"
)

// filler puts something in every field a plan has, whether or not it makes sense, so that
// the codec is tested on fields added later too.
type filler struct {
	*rand.Rand
	sparse bool // leave half of the fields zero
	rows   int  // how many nouns in a set
}

func (f *filler) plan() plan.Plan {
	var doc document
	f.fill(reflect.ValueOf(&doc).Elem(), documentShape())
	return doc.Plan
}

func (f *filler) fill(v reflect.Value, s *shape) {
	switch s.kind {
	case object:
		for _, m := range s.fields {
			if m.key == "id" {
				m.of(v).SetString(f.id())
			} else if !f.sparse || f.IntN(2) == 0 || m.key == "header" {
				f.fill(m.of(v), m.shape)
			}
		}
	case pointerTo:
		v.Set(reflect.New(s.elem.typ))
		f.fill(v.Elem(), s.elem)
	case list:
		n := 1 + f.IntN(3)
		v.Set(reflect.MakeSlice(s.typ, n, n))
		for i := range n {
			f.fill(v.Index(i), s.elem)
		}
	case set:
		rows := s.sets.rows()
		for range f.rows {
			noun := reflect.New(s.elem.typ).Elem()
			f.fill(noun, s.elem)
			rows.Elem().Set(reflect.Append(rows.Elem(), noun))
		}
		s.sets.fill(v, rows)
	case counts:
		v.Set(reflect.MakeMap(s.typ))
		for range 1 + f.IntN(4) {
			v.SetMapIndex(reflect.ValueOf(f.word()), reflect.ValueOf(f.IntN(100)))
		}
	case text:
		v.SetString(f.word())
	case whole:
		v.SetInt(f.Int64() - f.Int64())
	case truth:
		v.SetBool(f.IntN(2) == 0)
	case quantity:
		if strings.HasSuffix(s.typ.String(), ".AWG") {
			v.SetInt([]int64{-3, -1, 1, 12, 14}[f.IntN(5)])
		} else {
			v.SetInt((f.Int64() - f.Int64()) >> f.IntN(60))
		}
	}
}

func (f *filler) id() string { return fmt.Sprintf("x%08x", f.Uint32()) }

var letters = []string{"a", "Z", "9", " ", "é", "½", "\"", "\\", "/", "~", "\n", "\t", "\x00", "\x7f", "\u2028", "\U0001f50c", "{", "]", ":", ","}

func (f *filler) word() string {
	var b strings.Builder
	for range 1 + f.IntN(8) {
		b.WriteString(letters[f.IntN(len(letters))])
	}
	return b.String()
}

func filled(number uint64, rows int, sparse bool) plan.Plan {
	f := filler{rand.New(rand.NewPCG(number, 7)), sparse, rows}
	return f.plan()
}
