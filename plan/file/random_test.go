package file

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
)

// filler puts something in every field a plan has, whether or not it makes sense, so that
// the codec is tested on fields added later too.
type filler struct {
	*rand.Rand
	sparse bool // leave half of the fields zero
	rows   int  // how many nouns in a set
}

func (f *filler) plan() plan.Plan {
	var p plan.Plan
	f.fill(reflect.ValueOf(&p).Elem())
	return p
}

func (f *filler) fill(v reflect.Value) {
	switch to := v.Addr().Interface().(type) {
	case *plan.Extra, *plan.Owned:
		return
	case *plan.ID:
		*to = plan.ID(f.word())
		return
	case *unit.AWG:
		v.SetInt([]int64{-3, -1, 1, 12, 14}[f.IntN(5)])
		return
	case *plan.Flag:
		v.SetInt(int64(f.IntN(3)))
		return
	case *unit.Length, *unit.Volume, *unit.Weight:
		v.SetInt((f.Int64() - f.Int64()) >> f.IntN(60))
		return
	}
	if v.Type().Implements(setType) {
		f.set(v)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if name := v.Type().Field(i).Name; name == "ID" {
				v.Field(i).SetString(f.id())
			} else if v.Type().Field(i).Tag.Get("json") == "-" && name == "Owned" {
				continue // the plan's own, which no noun has in a file
			} else if !f.sparse || f.IntN(2) == 0 || name == "Header" {
				f.fill(v.Field(i))
			}
		}
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		f.fill(v.Elem())
	case reflect.Slice:
		n := 1 + f.IntN(3)
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		for i := range n {
			f.fill(v.Index(i))
		}
	case reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		for range 1 + f.IntN(4) {
			v.SetMapIndex(reflect.ValueOf(f.word()), reflect.ValueOf(f.IntN(100)))
		}
	case reflect.String:
		v.SetString(f.word())
	case reflect.Int:
		v.SetInt(f.Int64() - f.Int64())
	case reflect.Bool:
		v.SetBool(f.IntN(2) == 0)
	}
}

func (f *filler) set(v reflect.Value) {
	with := v.MethodByName("With").Type()
	for range f.rows {
		noun := reflect.New(with.In(0)).Elem()
		f.fill(noun)
		v.Set(v.MethodByName("With").Call([]reflect.Value{noun})[0])
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
