package code

import (
	"fmt"
	"io/fs"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets"
	"studbay/plan/unit"
)

// leaves lists the fields of figures that hold a value, by name.
func leaves(v reflect.Value, name string, all map[string]any) map[string]any {
	if v.Kind() != reflect.Struct || v.Type() == reflect.TypeFor[unit.Area]() {
		all[name] = v.Interface()
		return all
	}
	for i := range v.NumField() {
		if f := v.Type().Field(i); f.IsExported() && f.Name != "Amendments" {
			leaves(v.Field(i), name+"."+f.Name, all)
		}
	}
	return all
}

// TestEachFigureIsReadIntoAFieldOfItsOwn: the words of each unit, what they come to by
// arithmetic (1 in is 25.4 mm by NIST SP 811, 1 ft² is 144 in²), and words that are refused.
func TestEachFigureIsReadIntoAFieldOfItsOwn(t *testing.T) {
	const mm = unit.Millimetre
	squareFoot := (254 * mm / 10).Times(254 * mm / 10).Mul(144)
	type words struct {
		text string
		want any
	}
	units := map[string]struct {
		taken   []words
		refused []string
	}{
		"in":      {[]words{{"10", 254 * mm}, {"1 ft", 3048 * mm / 10}, {"25.4 mm", 254 * mm / 10}, {"0.000001 mm", unit.Length(1)}}, []string{"", "0", "-1", "wide", "0 mm"}},
		"in3":     {[]words{{"0", unit.Volume(0)}, {"0.25", unit.CubicInch / 4}, {"18", 18 * unit.CubicInch}}, []string{"", "-1", "much"}},
		"lb":      {[]words{{"6", 6 * unit.Pound}, {"0.01", unit.Pound / 100}, {"16 kg", 16 * unit.Kilogram}}, []string{"", "0", "-1", "heavy"}},
		"count":   {[]words{{"0", int64(0)}, {"10", int64(10)}, {"65535", int64(65535)}}, []string{"", "-1", "1.5", "65536", "few", "0x10"}},
		"percent": {[]words{{"0", int64(0)}, {"10", int64(10)}, {"65535", int64(65535)}}, []string{"", "-1", "1.5", "65536", "few"}},
		"awg":     {[]words{{"14", unit.AWG(14)}, {"1/0", unit.AWG(-1)}}, []string{"", "13", "thin"}},
		"rule":    {[]words{{"yes", true}, {"no", false}}, []string{"", "true", "Yes"}},
		"ft2":     {[]words{{"1", squareFoot}, {"10", squareFoot.Mul(10)}, {"65535", squareFoot.Mul(65535)}}, []string{"", "0", "-1", "1.5", "65536", "wide"}},
		"cite":    {[]words{{"", nil}}, []string{"0", "yes"}},
	}
	owner := map[string]string{}
	for _, b := range bindings {
		set := func(text string) map[string]any {
			f := *Latest()
			if err := b.set(&f, text); err != nil {
				t.Errorf("%s in %s, %q: %v", b.name, b.unit, text, err)
			}
			return leaves(reflect.ValueOf(f), "", map[string]any{})
		}
		of := units[b.unit]
		if of.taken == nil {
			t.Fatalf("%s is in %q", b.name, b.unit)
		}
		for _, text := range of.refused {
			f := *Latest()
			if err := b.set(&f, text); err == nil || err.Error() == "" {
				t.Errorf("%s in %s: %q is taken", b.name, b.unit, text)
			}
			if !reflect.DeepEqual(f, *Latest()) {
				t.Errorf("%s in %s: %q is refused and changes it", b.name, b.unit, text)
			}
		}
		field := ""
		first, last := set(of.taken[0].text), set(of.taken[len(of.taken)-1].text)
		for name := range first {
			if !reflect.DeepEqual(first[name], last[name]) {
				if field != "" {
					t.Errorf("%s sets %s and %s", b.name, field, name)
				}
				field = name
			}
		}
		if b.unit == "cite" {
			continue
		}
		if field == "" || owner[field] != "" {
			t.Fatalf("%s sets %q, as does %q", b.name, field, owner[field])
		}
		owner[field] = b.name
		for _, w := range of.taken {
			if got := set(w.text)[field]; !reflect.DeepEqual(got, w.want) {
				t.Errorf("%s in %s: %q is %v, want %v", b.name, b.unit, w.text, got, w.want)
			}
		}
	}
}

// TestAllowancesAreKeptBySize: a row takes the place of that of its size, or comes in behind
// the thinner ones; what it was laid on stays.
func TestAllowancesAreKeptBySize(t *testing.T) {
	table := []Allowance{{14, 2}, {12, 3}, {8, 5}}
	for _, tt := range []struct {
		row  Allowance
		want []Allowance
	}{
		{Allowance{12, 4}, []Allowance{{14, 2}, {12, 4}, {8, 5}}},
		{Allowance{10, 4}, []Allowance{{14, 2}, {12, 3}, {10, 4}, {8, 5}}},
		{Allowance{18, 1}, []Allowance{{18, 1}, {14, 2}, {12, 3}, {8, 5}}},
		{Allowance{6, 9}, []Allowance{{14, 2}, {12, 3}, {8, 5}, {6, 9}}},
		{Allowance{-1, 9}, []Allowance{{14, 2}, {12, 3}, {8, 5}, {-1, 9}}},
	} {
		if got := withAllowance(table, tt.row); !reflect.DeepEqual(got, tt.want) {
			t.Errorf("with %v it is %v", tt.row, got)
		}
	}
	if !reflect.DeepEqual(table, []Allowance{{14, 2}, {12, 3}, {8, 5}}) {
		t.Errorf("the table was written to: %v", table)
	}
	for name, want := range map[string]unit.AWG{"allowance-12": 12, "allowance-1/0": -1, "allowance-13": 99, "allowance": 99, "12": 99, "allowance-": 99} {
		if got, ok := allowanceSize(name); ok != (want != 99) || ok && got != want {
			t.Errorf("%s is of %v, %v", name, got, ok)
		}
	}
	for text, is := range map[string]bool{"0.0001": true, "2": true, "0": false, "-1": false, "much": false, "": false} {
		f := *Latest()
		if err := allowance(12)(&f, text); (err == nil) != is {
			t.Errorf("an allowance of %q: %v", text, err)
		}
		got, _ := f.Fill.Allowance(12)
		was, _ := Latest().Fill.Allowance(12)
		if (got != was) != is {
			t.Errorf("an allowance of %q becomes %v", text, got)
		}
	}
	if v, ok := Latest().Fill.Allowance(4); ok || v != 0 {
		t.Errorf("4 AWG takes %v: the table runs from 18 to 6 AWG", v)
	}
}

// spoiled returns our tables with one text in place of another.
func spoiled(t *testing.T, file, old, text string) fs.FS {
	t.Helper()
	tables := fstest.MapFS{}
	for _, name := range append([]string{"code/editions.csv", "code/printed.csv"}, figureFiles...) {
		data, err := fs.ReadFile(assets.Tables, name)
		if err != nil {
			t.Fatal(err)
		}
		if name == file && old == "" {
			continue // it is not there
		}
		if name == file {
			if !strings.Contains(string(data), old) {
				t.Fatalf("%s has no %q", file, old)
			}
			data = []byte(strings.Replace(string(data), old, text, 1))
		}
		tables[name] = &fstest.MapFile{Data: data}
	}
	return tables
}

// TestTablesOfTheCodeThatAreRefused: each fault names the file, and the cell where there is
// one.
func TestTablesOfTheCodeThatAreRefused(t *testing.T) {
	for _, name := range append([]string{"code/editions.csv", "code/printed.csv"}, figureFiles...) {
		if _, err := load(spoiled(t, name, "", "")); err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("without %s: %v", name, err)
		}
	}
	const spacing, printed = "code/spacing.csv", "code/printed.csv"
	for _, c := range []struct{ file, old, text, want string }{
		{spacing, "wall-reach,2014", "wall-grasp,2014", `figure: no rule asks for "wall-grasp"`},
		{spacing, "72,in,", "72,in3,", "unit: wall-reach is in in"},
		{spacing, "wall-reach,2014", "wall-reach,2011", `edition: "2011" is not in editions.csv`},
		{spacing, ",72,in,", ",0,in,", "value: "},
		{spacing, "wall-reach,2014", "wall-reach,2017", "edition 2014: no row for wall-reach"},
		{"code/box-fill.csv", "allowance-18,2023", "allowance-18,2014", "edition: allowance-18 comes twice for an edition, or out of order"},
		{printed, "wall-reach,6 ft", "conductor,6 ft", "figure: no figure that is a length"},
		{printed, "wall-reach,6 ft", "wall-grasp,6 ft", "figure: no figure that is a length"},
		{printed, "wall-reach,6 ft", "wall-reach,far", "imperial: "},
		{printed, "wall-reach,6 ft", "wall-reach,7 ft", "imperial: edition 2014 has another figure"},
		{printed, "6 ft,1.8 m", "6 ft,far", "metric: "},
		{printed, "1.8 m,greater", "1.8 m,lesser", "lighter: it is greater or smaller"},
	} {
		if _, err := load(spoiled(t, c.file, c.old, c.text)); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%q for %q: %v, want %q", c.text, c.old, err, c.want)
		}
	}
}

// TestEitherFigureOfAPair: a metric plan has the one that asks less, whichever it is; an
// imperial plan, and a figure that was amended, have what they have.
func TestEitherFigureOfAPair(t *testing.T) {
	reach := func(f *Figures) unit.Length { return f.Spacing.WallReach }
	for _, tt := range []struct {
		metric  string
		greater bool
		want    unit.Length
	}{
		{"1828.8", true, 72 * unit.Inch}, {"1828.800001", true, 72*unit.Inch + 1}, {"1828.799999", true, 72 * unit.Inch},
		{"1828.800001", false, 72 * unit.Inch}, {"1828.799999", false, 72*unit.Inch - 1}, {"1", false, unit.Millimetre},
	} {
		lighter := map[bool]string{true: "greater", false: "smaller"}[tt.greater]
		all, err := load(spoiled(t, "code/printed.csv", "wall-reach,6 ft,1.8 m,greater", fmt.Sprintf("wall-reach,6 ft,%s,%s", tt.metric, lighter)))
		if err != nil {
			t.Fatal(err)
		}
		f := all[len(all)-1]
		if got := reach(f.InUnits(unit.Metric)); got != tt.want {
			t.Errorf("%s mm, the %s the lighter: %d, want %d", tt.metric, lighter, got, tt.want)
		}
		if f.InUnits(unit.Imperial) != f || reach(f) != 72*unit.Inch {
			t.Errorf("an imperial plan has %v", reach(f.InUnits(unit.Imperial)))
		}
		metric := f.InUnits(unit.Metric)
		if metric.InUnits(unit.Metric) != metric {
			t.Error("metric figures are made metric again")
		}
		local, err := f.WithAmendments([]Amendment{{Figure: "wall-reach", Value: "5 ft", Reason: "local"}})
		if err != nil || reach(local.InUnits(unit.Metric)) != 60*unit.Inch {
			t.Errorf("an amended one is %v, %v", reach(local.InUnits(unit.Metric)), err)
		}
	}
	if same, err := Latest().WithAmendments(nil); same != Latest() || err != nil {
		t.Errorf("without changes it is another: %v", err)
	}
	if got := Latest().Limit("counter-reach").String(); got == "" || strings.Contains(got, "(") {
		t.Errorf("a limit that is not printed reads %q", got)
	}
}
