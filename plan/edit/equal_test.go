package edit_test

import (
	"encoding/json"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/plantest"
)

// copied returns a plan that says the same and shares nothing.
func copied(t interface{ Fatal(...any) }, p plan.Plan) (q plan.Plan) {
	text, err := json.Marshal(p)
	if err == nil {
		err = json.Unmarshal(text, &q)
	}
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func TestACopyIsEqual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.Random(t)
		if !plan.Equal(p, copied(t, p)) {
			t.Fatal("a plan differs from its copy")
		}
	})
}

func TestEqualAgreesWithTheText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.Random(t)
		q := edited(t, p)
		a, _ := json.Marshal(p)
		b, _ := json.Marshal(q)
		if want := string(a) == string(b); plan.Equal(p, q) != want || plan.Equal(copied(t, q), copied(t, p)) != want {
			t.Fatalf("Equal is %v, as text they are the same: %v", plan.Equal(p, q), want)
		}
	})
}

// TestEqualSeesEveryField changes each field of each noun in turn, kept members of newer
// files and fields added later included.
func TestEqualSeesEveryField(t *testing.T) {
	for _, noun := range []any{
		&plan.Header{}, &plan.Level{}, &plan.Room{}, &plan.Break{}, &plan.Fixture{}, &plan.Opening{}, &plan.Circuit{},
		&plan.Cable{}, &plan.Control{}, &plan.Pair{}, &plan.Decision{}, &plan.Waiver{}, &plan.Amendment{},
	} {
		kind := reflect.TypeOf(noun).Elem()
		for i := range kind.NumField() {
			field := kind.Field(i)
			if kind == reflect.TypeFor[plan.Level]() && field.Type.Kind() == reflect.Struct {
				continue // its sets are tried by their nouns
			}
			changed := reflect.New(kind)
			fill(changed.Elem().Field(i))
			a, b := holding(noun), holding(changed.Interface())
			if plan.Equal(a, b) || plan.Equal(b, a) {
				t.Errorf("Equal does not see %s.%s", kind.Name(), field.Name)
			}
			if !plan.Equal(b, holding(changed.Interface())) {
				t.Errorf("a plan is not Equal to itself with %s.%s set", kind.Name(), field.Name)
			}
		}
	}
}

// fill puts something that is not zero into a value.
func fill(v reflect.Value) {
	switch v.Kind() {
	case reflect.String:
		v.SetString("x")
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Int, reflect.Int64:
		v.SetInt(7)
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
		fill(v.Index(0))
	case reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		v.SetMapIndex(reflect.ValueOf("x"), reflect.ValueOf(7))
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		fill(v.Elem())
	case reflect.Struct:
		fill(v.Field(v.NumField() - 1))
	default:
		panic("a kind of field that fill does not know: " + v.Kind().String())
	}
}

// holding returns a plan with one noun in it.
func holding(noun any) plan.Plan {
	p := plan.Plan{Levels: []*plan.Level{{}}}
	l := p.Levels[0]
	switch n := noun.(type) {
	case *plan.Header:
		p.Header = n
	case *plan.Level:
		p.Levels[0] = n
	case *plan.Room:
		l.Rooms = l.Rooms.With(n)
	case *plan.Break:
		l.Breaks = l.Breaks.With(n)
	case *plan.Fixture:
		l.Fixtures = l.Fixtures.With(n)
	case *plan.Opening:
		l.Openings = l.Openings.With(n)
	case *plan.Circuit:
		p.Circuits = p.Circuits.With(n)
	case *plan.Cable:
		p.Cables = p.Cables.With(n)
	case *plan.Control:
		p.Controls = p.Controls.With(n)
	case *plan.Decision:
		p.Decisions = p.Decisions.With(n)
	case *plan.Waiver:
		p.Waivers = p.Waivers.With(n)
	case *plan.Pair:
		p.Pairs = p.Pairs.With(n)
	case *plan.Amendment:
		p.Amendments = p.Amendments.With(n)
	}
	return p
}

func TestNothingInAListEqualsNoList(t *testing.T) {
	a := holding(&plan.Opening{ID: n1, Devices: []plan.Device{}})
	if b := holding(&plan.Opening{ID: n1}); !plan.Equal(a, b) || !plan.Equal(b, a) {
		t.Error("an empty list differs from none")
	}
}

func TestTheOrderOfLevelsCounts(t *testing.T) {
	a := plan.Plan{Levels: []*plan.Level{{ID: "vaaaaaaaa"}, {ID: "vbbbbbbbb"}}}
	b := plan.Plan{Levels: []*plan.Level{a.Levels[1], a.Levels[0]}}
	if plan.Equal(a, b) || plan.Equal(a, plan.Plan{Levels: a.Levels[:1]}) {
		t.Error("levels in another order, or fewer, are Equal")
	}
}
