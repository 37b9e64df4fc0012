package file

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// keysOf lists the pointers of all that a shape can hold; a star stands for the place in a
// list.
func keysOf(f *shape, at string) (all []string) {
	for key, member := range f.members {
		all = append(append(all, at+"/"+key), keysOf(member, at+"/"+key)...)
	}
	if f.elem != nil {
		all = append(all, keysOf(f.elem, at+"/*")...)
	}
	return all
}

// lone makes a value that says something at one place and nothing elsewhere.
func lone(v reflect.Value, steps []string) {
	switch {
	case v.Type().Implements(setType):
		with := v.MethodByName("With")
		noun := reflect.New(with.Type().In(0).Elem())
		lone(noun, steps[1:])
		v.Set(with.Call([]reflect.Value{noun})[0])
	case v.Kind() == reflect.Pointer:
		if v.IsNil() {
			v.Set(reflect.New(v.Type().Elem()))
		}
		lone(v.Elem(), steps)
	case v.Kind() == reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
		lone(v.Index(0), steps[min(1, len(steps)):])
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			if key, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ","); key == steps[0] {
				lone(v.Field(i), steps[1:])
			}
		}
	case v.Kind() == reflect.String:
		v.SetString("x")
	case v.Kind() == reflect.Bool:
		v.SetBool(true)
	case v.Kind() == reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		v.SetMapIndex(reflect.ValueOf("x"), reflect.ValueOf(1))
	default:
		v.SetInt(1)
	}
}

// TestEachKeySinceTheFirstVersionNeedsTheSecond: testdata/keys-1.0.txt lists what a file of
// version 1.0 could hold, as its structs stood when 1.1 came. A plan that says one thing
// and nothing else is of 1.0 where that is listed, else of 1.1.
func TestEachKeySinceTheFirstVersionNeedsTheSecond(t *testing.T) {
	listed := strings.Fields(string(oldFile(t, "keys-1.0.txt")))
	keys := keysOf(documentShape(), "")
	for _, key := range keys {
		isObject := slices.ContainsFunc(keys, func(k string) bool { return strings.HasPrefix(k, key+"/") })
		if isObject || key == "/format" || key == "/version" || strings.HasSuffix(key, "/fate") {
			continue // a fate goes with a status that is new itself: see the test below
		}
		var p plan.Plan
		lone(reflect.ValueOf(&p).Elem(), strings.Split(key, "/")[1:])
		want := "1.1"
		if slices.Contains(listed, key) {
			want = "1.0"
		}
		if got := versionFor(p); got != want {
			t.Errorf("with nothing but %s it is written as %s, want %s", key, got, want)
		}
	}
}

// TestEachWordSinceTheFirstVersionNeedsTheSecond: a place may be old and what is said there
// new.
func TestEachWordSinceTheFirstVersionNeedsTheSecond(t *testing.T) {
	for _, tt := range []struct {
		name string
		o    plan.Opening
		want string
	}{
		{"new", plan.Opening{Status: plan.StatusNew}, "1.0"},
		{"existing", plan.Opening{Status: plan.StatusExisting}, "1.0"},
		{"to be removed", plan.Opening{Status: plan.StatusRemove}, "1.0"},
		{"moved", plan.Opening{Status: plan.StatusMoved}, "1.1"},
		{"replaced", plan.Opening{Status: plan.StatusReplaced}, "1.1"},
		{"stated", plan.Opening{Contents: &plan.Contents{Source: plan.ContentsStated}}, "1.0"},
		{"seen in part", plan.Opening{Contents: &plan.Contents{Source: plan.ContentsInPart}}, "1.1"},
		{"no space", plan.Opening{Contents: &plan.Contents{Items: []plan.Item{{What: plan.ItemCable, Size: unit.AWG(12)}}}}, "1.0"},
		{"a space", plan.Opening{Contents: &plan.Contents{Items: []plan.Item{{What: plan.ItemCable}, {What: plan.ItemSpace}}}}, "1.1"},
	} {
		tt.o.ID = "obench222"
		p := plan.Plan{Levels: []*plan.Level{{ID: "vshed2222", Openings: one(&tt.o)}}}
		if got := versionFor(p); got != tt.want {
			t.Errorf("%s: written as %s, want %s", tt.name, got, tt.want)
		}
	}
}
