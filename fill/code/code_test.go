package code

import (
	"errors"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets"
	"studbay/plan/unit"
)

func TestEditionsLoadInOrderAndKeepTheirPointer(t *testing.T) {
	want := []string{"2014", "2017", "2020", "2023", "2026"}
	if got := Editions(); !slices.Equal(got, want) {
		t.Fatalf("Editions() = %v, want %v", got, want)
	}
	for _, name := range want {
		a, err := Edition(name)
		if err != nil {
			t.Fatal(err)
		}
		if b, _ := Edition(name); a != b {
			t.Errorf("Edition(%s) is not the same pointer twice", name)
		}
	}
	if Latest().Edition != "2023" { // the newest whose text was seen
		t.Errorf("Latest() = %s", Latest().Edition)
	}
	if _, err := Edition("2011"); err == nil || !strings.Contains(err.Error(), "2014, 2017, 2020, 2023, 2026") {
		t.Errorf("Edition(2011) = %v, want an error that lists the editions", err)
	}
}

func TestFiguresByEdition(t *testing.T) {
	in := unit.Inch
	for _, tt := range []struct {
		edition string
		name    string
		got     func(*Figures) any
		want    any
		source  string
	}{
		{"2017", "a fifth ground adds nothing", func(f *Figures) any { return f.Fill.GroundFurther }, int64(0), "ecmag.com, Box Fill Calculations, Part VIII"},
		{"2020", "a fifth ground adds a quarter", func(f *Figures) any { return f.Fill.GroundFurther }, int64(25), "NEC 2020 314.16(B)(5)"},
		{"2017", "an isolated set stands apart", func(f *Figures) any { return f.Fill.IsolatedGroundsApart }, true, "from memory"},
		{"2020", "an isolated set joins", func(f *Figures) any { return f.Fill.IsolatedGroundsApart }, false, "NEC 2020 314.16(B)(5)"},
		{"2020", "a terminal block is free", func(f *Figures) any { return f.Fill.TerminalBlock }, int64(0), "electricallicenserenewal.com, section 1471"},
		{"2023", "a terminal block takes one", func(f *Figures) any { return f.Fill.TerminalBlock }, int64(1), "NEC 2023 314.16(B)(6)"},
		{"2023", "its section", func(f *Figures) any { return f.Section("terminal-block") }, "314.16(B)(6)", "NEC 2023"},
		{"2020", "name of the allowance table", func(f *Figures) any { return f.Section("allowance-12") }, "Table 314.16(B)", "NEC 2020"},
		{"2023", "new name of the allowance table", func(f *Figures) any { return f.Section("allowance-12") }, "Table 314.16(B)(1)", "NEC 2023"},
		{"2014", "reach along a wall", func(f *Figures) any { return f.Spacing.WallReach }, 72 * in, "NEC 210.52(A)(1)"},
		{"2014", "least wall space", func(f *Figures) any { return f.Spacing.WallSpaceMin }, 24 * in, "NEC 210.52(A)(2)"},
		{"2014", "reach of a floor receptacle", func(f *Figures) any { return f.Spacing.FloorReach }, 18 * in, "NEC 210.52(A)(3)"},
		{"2014", "highest receptacle", func(f *Figures) any { return f.Spacing.ReceptacleMaxHeight }, 66 * in, "NEC 210.52, 5-1/2 ft"},
		{"2020", "an appliance does not break a wall", func(f *Figures) any { return f.Spacing.StationaryApplianceBreaks }, false, "NEC 2020 210.52(A)(2)"},
		{"2023", "an appliance breaks a wall", func(f *Figures) any { return f.Spacing.StationaryApplianceBreaks }, true, "serveacademy.it, 2023 NEC changes, Michigan"},
		{"2014", "a fixed cabinet breaks a wall", func(f *Figures) any { return f.Spacing.FixedCabinetBreaks }, true, "ecmweb.com, 2011 NEC changes"},
	} {
		t.Run(tt.edition+" "+tt.name, func(t *testing.T) {
			f, err := Edition(tt.edition)
			if err != nil {
				t.Fatal(err)
			}
			if got := tt.got(f); got != tt.want {
				t.Errorf("got %v, want %v (%s)", got, tt.want, tt.source)
			}
		})
	}
}

// The figures are those of Table 314.16(B)(1), NEC 2023; older editions share them.
func TestAllowances(t *testing.T) {
	want := []Allowance{{18, 15000}, {16, 17500}, {14, 20000}, {12, 22500}, {10, 25000}, {8, 30000}, {6, 50000}}
	for _, name := range Editions() {
		f, _ := Edition(name)
		if !slices.Equal(f.Fill.Allowances, want) {
			t.Errorf("%s: allowances %v, want %v", name, f.Fill.Allowances, want)
		}
	}
	if _, ok := Latest().Fill.Allowance(4); ok {
		t.Error("4 AWG has an allowance; the table ends at 6")
	}
}

func TestEveryFigureHasASectionAndASource(t *testing.T) {
	for _, name := range Editions() {
		f, _ := Edition(name)
		for figure, c := range f.cites {
			if c.Section == "" || c.Source == "" {
				t.Errorf("%s %s: section %q, source %q", name, figure, c.Section, c.Source)
			}
		}
	}
}

func TestAmendments(t *testing.T) {
	base, _ := Edition("2020")
	if same, _ := base.WithAmendments(nil); same != base {
		t.Error("no amendment made other figures")
	}
	f, err := base.WithAmendments([]Amendment{
		{Figure: "wall-reach", Value: "5 ft", Reason: "town rule 7"},
		{Figure: "allowance-12", Value: "2.5", Reason: "town rule 8"},
		{Rule: "box-fill", Reason: "not enforced"},
	})
	if err != nil {
		t.Fatal(err)
	}
	if f == base || f.Spacing.WallReach != 5*unit.Foot || base.Spacing.WallReach != 6*unit.Foot {
		t.Errorf("reach %v, before %v", f.Spacing.WallReach, base.Spacing.WallReach)
	}
	if got, _ := f.Fill.Allowance(12); got != 25000 {
		t.Errorf("amended allowance %v", got)
	}
	if got, _ := base.Fill.Allowance(12); got != 22500 {
		t.Errorf("the edition's own allowance became %v", got)
	}
	if f.Cite("wall-reach").Reason != "town rule 7" || base.Cite("wall-reach").Reason != "" {
		t.Error("the reason is not on the amended figure alone")
	}
	if reason, off := f.Off("box-fill"); !off || reason != "not enforced" {
		t.Errorf("Off = %q, %v", reason, off)
	}
	if _, off := base.Off("box-fill"); off {
		t.Error("the edition itself has the rule off")
	}
}

func TestWrongAmendmentsAreRefused(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change Amendment
		want   string
	}{
		{"no reason", Amendment{Rule: "box-fill"}, "amendment 1: enter a reason"},
		{"neither", Amendment{Reason: "r"}, "one figure or turns off one rule"},
		{"both", Amendment{Figure: "wall-reach", Rule: "x", Reason: "r"}, "one figure or turns off one rule"},
		{"unknown figure", Amendment{Figure: "wall-reech", Value: "1", Reason: "r"}, `no figure “wall-reech”`},
		{"a size the table lacks", Amendment{Figure: "allowance-4", Value: "6", Reason: "r"}, `no figure “allowance-4”`},
		{"a section", Amendment{Figure: "clamps", Value: "2", Reason: "r"}, "clamps: this figure names a section"},
		{"no length", Amendment{Figure: "wall-reach", Value: "abc", Reason: "r"}, "wall-reach: "},
		{"zero length", Amendment{Figure: "wall-reach", Value: "0", Reason: "r"}, "not a length above zero"},
		{"no yes", Amendment{Figure: "fixed-cabinet-breaks", Value: "true", Reason: "r"}, "neither yes nor no"},
		{"zero allowance", Amendment{Figure: "allowance-12", Value: "0", Reason: "r"}, "above zero"},
		{"negative count", Amendment{Figure: "canopy-wires", Value: "-1", Reason: "r"}, "not a whole number"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Latest().WithAmendments([]Amendment{tt.change})
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error %v, want %q in it", err, tt.want)
			}
		})
	}
}

// Each case changes one of our own tables; the error names file and line.
// TestACiteHasNoValue: a figure that only names a section cannot be amended to a number.
func TestACiteHasNoValue(t *testing.T) {
	_, err := Latest().WithAmendments([]Amendment{{Figure: "clamps", Value: "2", Reason: "town rule"}})
	if !errors.Is(err, errOnlyCite) || !strings.Contains(err.Error(), "clamps") {
		t.Errorf("amending what names a section: %v, want %v of clamps", err, errOnlyCite)
	}
}

func TestWrongTablesNameTheirPlace(t *testing.T) {
	for _, tt := range []struct{ name, file, old, new, want string }{
		{"unknown figure", "code/spacing.csv", "wall-reach,", "wal-reach,", `code/spacing.csv:2: figure: no rule asks for "wal-reach"`},
		{"unknown edition", "code/spacing.csv", "wall-reach,2014", "wall-reach,2013", `code/spacing.csv:2: edition: "2013" is not in editions.csv`},
		{"neither carries nor not", "code/editions.csv", "NEC 2026,no", "NEC 2026,maybe", "code/editions.csv:6: carries: it is yes or no"},
		{"wrong unit", "code/spacing.csv", "(1),72,in", "(1),72,ft", "code/spacing.csv:2: unit: wall-reach is in in"},
		{"wrong value", "code/spacing.csv", "(1),72,in", "(1),x,in", "code/spacing.csv:2: value: "},
		{"twice", "code/spacing.csv", "wall-space-min,", "wall-reach,", "code/spacing.csv:3: edition: wall-reach comes twice"},
		{"missing", "code/box-fill.csv", "loop-allowances,2014", "loop-allowances,2020", "edition 2014: no row for loop-allowances"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			tables := fstest.MapFS{}
			for _, file := range append([]string{"code/editions.csv"}, figureFiles...) {
				data, err := assets.Tables.ReadFile(file)
				if err != nil {
					t.Fatal(err)
				}
				if file == tt.file {
					data = []byte(strings.Replace(string(data), tt.old, tt.new, 1))
				}
				tables[file] = &fstest.MapFile{Data: data}
			}
			_, err := load(tables)
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("load = %v, want %q in it", err, tt.want)
			}
		})
	}
}
