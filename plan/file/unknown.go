package file

import (
	"cmp"
	"reflect"
	"slices"
	"strings"

	"studbay/plan"
)

// eachNoun calls do for every noun below a value of a plan, with its ID; the plan and its
// header have none and go by their pointers, which no ID can be.
func eachNoun(v reflect.Value, do func(id string, extra *plan.Extra)) {
	switch {
	case v.Kind() == reflect.Pointer:
		if v.IsNil() {
			return
		}
		v = v.Elem()
	case v.Kind() == reflect.Slice:
		for i := range v.Len() {
			eachNoun(v.Index(i), do)
		}
		return
	}
	if v.Kind() != reflect.Struct {
		return
	}
	if v.Type().Implements(setType) {
		for noun := range v.MethodByName("All").Call(nil)[0].Seq() {
			eachNoun(noun, do)
		}
		return
	}
	if extra := v.FieldByName("Extra"); extra.IsValid() {
		do(idOf(v), extra.Addr().Interface().(*plan.Extra))
	}
	for i := range v.NumField() {
		eachNoun(v.Field(i), do)
	}
}

func idOf(noun reflect.Value) string {
	if id := noun.FieldByName("ID"); id.IsValid() {
		return id.String()
	}
	if noun.Type() == reflect.TypeFor[plan.Header]() {
		return "/header"
	}
	return ""
}

// sortedExtra puts kept members in the order in which they are written.
func sortedExtra(extra plan.Extra) plan.Extra {
	slices.SortStableFunc(extra, func(a, b plan.ExtraMember) int {
		return cmp.Compare(parentOf(a.Pointer), parentOf(b.Pointer))
	})
	return extra
}

// parentOf is a pointer without its last step.
func parentOf(pointer string) string { return pointer[:max(0, strings.LastIndexByte(pointer, '/'))] }
