package words

import (
	"strings"
	"testing"

	"studbay/plan/unit"
)

var spanish = Catalogue{
	"gap":    "Falta un tomacorriente a {1} de {0}",
	"wall":   "la pared {0}",
	"asks":   "pide {2}",
	"silent": "",
}

func TestSay(t *testing.T) {
	gap := New("gap", "No receptacle within {1} of {0}", New("wall", "wall {0}", 3), 6*unit.Foot)
	for _, tt := range []struct {
		name  string
		voice Voice
		text  Text
		want  string
	}{
		{"English and imperial", Voice{}, gap, `No receptacle within 6' 0" of wall 3`},
		{"metric", Voice{System: unit.Metric}, gap, `No receptacle within ≈ 1.829 m of wall 3`},
		{"in another order, inner text translated too", Voice{Catalogue: spanish}, gap, `Falta un tomacorriente a 6' 0" de la pared 3`},
		{"with a decimal comma", Voice{spanish, unit.Metric, true}, gap, `Falta un tomacorriente a ≈ 1,829 m de la pared 3`},
		{"an untranslated text is English", Voice{Catalogue: spanish}, New("new", "New: {0}", "x"), "New: x"},
		{"a translation that asks for too much is English", Voice{Catalogue: spanish}, New("asks", "asks {0}", 1), "asks 1"},
		{"an empty translation is English", Voice{Catalogue: spanish}, New("silent", "noise"), "noise"},
		{"a missing argument stays visible", Voice{}, New("x", "a {1} b {0}", "zero"), "a {1} b zero"},
		{"an argument twice", Voice{}, New("x", "{0} and {0}", 2), "2 and 2"},
		{"an argument's braces are not places", Voice{}, New("x", "{0} {1}", "{1}", "b"), "{1} b"},
		{"other braces are text", Voice{}, New("x", "{ {a} {01} {-1} {0} {", 1), "{ {a} {01} {-1} 1 {"},
		{"a height", Voice{}, New("x", "{0}", Height(26*unit.Inch+unit.Inch/2)), `26-1/2"`},
		{"a metric height", Voice{System: unit.Metric}, New("x", "{0}", Height(1200*unit.Millimetre)), "1200 mm"},
		{"an area", Voice{System: unit.Metric, DecimalComma: true}, New("x", "{0}", unit.SquareFoot.Mul(156)), "14,5 m²"},
		{"a volume", Voice{System: unit.Metric}, New("x", "{0}", unit.Volume(202_500)), "20.25 in³ (332 cm³)"},
		{"money", Voice{}, New("x", "{0}", unit.Money{Cents: 60, Currency: "USD"}), "$0.60"},
		{"a wire size", Voice{}, New("x", "{0} AWG", unit.AWG(-1)), "1/0 AWG"},
		{"a negative count", Voice{}, New("x", "{0}", -3), "−3"},
		{"nothing", Voice{}, Text{}, ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.voice.Say(tt.text); got != tt.want {
				t.Errorf("got %s, want %s", got, tt.want)
			}
		})
	}
}

func TestStringIsEnglishAndImperial(t *testing.T) {
	if got := New("gap", "{0} short", 4*unit.Inch).String(); got != `4" short` {
		t.Errorf("got %s", got)
	}
}

func TestLoad(t *testing.T) {
	for _, tt := range []struct {
		name, data string
		want       []string // parts of the error; none for success
	}{
		{"placeholders in any order", `{"a": "{1} de {0}", "b": ""}`, nil},
		{"no translations", `{}`, nil},
		{"named and open braces, all listed in order", `{"b": "x {name}", "a": "{", "ok": "{0}", "c": "{00}"}`, []string{`a: "{"; b: "x {name}"; c: "{00}"`}},
		{"an ID twice", `{"a": "x", "a": "y"}`, []string{`"a" stands twice`}},
		{"an ID that is no string", `{1: "x"}`, []string{"byte", "invalid character '1'"}},
		{"a translation that is no JSON", `{"a": tru}`, []string{"byte", "invalid character '}'"}},
		{"a translation that is missing", `{"a":`, []string{"byte", "unexpected EOF"}},
		{"not a string", `{"a": "x", "b": {"c": "d"}}`, []string{`"b" is not translated by a string`}},
		{"a list", `["a"]`, []string{"want an object", "byte 1"}},
		{"cut short", `{"a": "x"`, []string{"unexpected"}},
		{"nothing", ``, []string{"byte 0: unexpected EOF"}},
		{"more behind", `{} {}`, []string{"nothing behind"}},
		{"null", `null`, []string{"want an object"}},
		{"broken", `{"a" "b"}`, []string{"byte"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Load([]byte(tt.data))
			if (err == nil) != (tt.want == nil) || (err == nil) == (got == nil) {
				t.Fatalf("Load(%s) = %v, %v", tt.data, got, err)
			}
			for _, part := range tt.want {
				if !strings.Contains(strings.ToLower(err.Error()), strings.ToLower(part)) {
					t.Errorf("Load(%s) fails with %v, want %s", tt.data, err, part)
				}
			}
		})
	}
}

func TestCheckListsWhatDoesNotFit(t *testing.T) {
	texts := []Text{New("a", "{0} of {1}"), New("b", "{0} and {0}"), New("c", "plain")}
	if err := (Catalogue{"a": "{1}: {0}", "b": "{0}"}).Check(texts); err != nil {
		t.Errorf("a catalogue that fits fails with %v", err)
	}
	err := Catalogue{"z": "?", "a": "{0}", "c": "plano"}.Check(texts)
	want := `a: placeholders of "{0} of {1}" and "{0}" differ; z: no such text`
	if err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}

func FuzzLoad(f *testing.F) {
	f.Add([]byte(`{"a": "{1} de {0}"}`))
	f.Add([]byte(`{"a": "{"}`))
	f.Add([]byte(`{"a": "x", "a": "y"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		catalogue, err := Load(data)
		if err != nil {
			return
		}
		for id, translation := range catalogue {
			said := Voice{Catalogue: catalogue}.Say(New(id, "english"))
			if strings.ContainsAny(translation, "{}") && said != "english" {
				t.Errorf("%q without its arguments says %q", translation, said)
			}
		}
	})
}
