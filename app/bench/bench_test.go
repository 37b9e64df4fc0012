package main

import (
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"testing"
)

// printed is what go test prints of benchmarks on a machine of so many processors.
func printed(processors int) []byte {
	suffix := "-" + strconv.Itoa(processors)
	if processors == 1 {
		suffix = ""
	}
	return []byte(strings.ReplaceAll(`goos: linux
cpu: Some Processor 3000
pkg: studbay/fill
BenchmarkCheck/200#         	   10000	     30800 ns/op
BenchmarkCheck/10000#       	    5000	     61600 ns/op	    1.5 extra/op
--- SKIP: BenchmarkCheck/none
BenchmarkKept#              	       1	         0 ns/op	  1480 bytes/edit
PASS
`, "#", suffix))
}

func TestReadsWhatBenchmarksPrint(t *testing.T) {
	n := &notes{}
	n.begin()
	if err := n.read("fill", printed(runtime.GOMAXPROCS(0))); err != nil {
		t.Fatal(err)
	}
	for key, want := range map[measured]float64{
		{"fill:Check/200", "ns/op"}:      30800,
		{"fill:Check/10000", "ns/op"}:    61600,
		{"fill:Check/10000", "extra/op"}: 1.5,
		{"fill:Kept", "bytes/edit"}:      1480,
	} {
		if got, found := n.rounds[0][key]; !found || got != want {
			t.Errorf("%v: %v, %v, want %v", key, got, found, want)
		}
	}
	if got, want := len(n.rounds[0]), 5; got != want {
		t.Errorf("%d values, want %d", got, want)
	}
	if n.processor != "Some Processor 3000" {
		t.Errorf("processor %q", n.processor)
	}
}

func TestRefusesAValueThatIsNone(t *testing.T) {
	n := &notes{}
	n.begin()
	if err := n.read("fill", []byte("BenchmarkCheck 10 fast ns/op\n")); err == nil || !strings.Contains(err.Error(), "fast") {
		t.Errorf("error %v, want one that shows the line", err)
	}
}

func TestNamesKeepTheirOwnNumbers(t *testing.T) {
	for _, tt := range []struct {
		printed    string
		processors int
		want       string
	}{
		{"BenchmarkCheck/200-2", 2, "Check/200"},
		{"BenchmarkCheck/200-2", 1, "Check/200-2"},
		{"BenchmarkCheck/200", 1, "Check/200"},
		{"BenchmarkCheck/a-2-16", 16, "Check/a-2"},
	} {
		if got := nameOf(tt.printed, tt.processors); got != tt.want {
			t.Errorf("nameOf(%q, %d) = %q, want %q", tt.printed, tt.processors, got, tt.want)
		}
	}
}

// noted puts values of ours and of a limit into rounds.
func noted(ours, limits []float64) *notes {
	n := &notes{}
	for i := range ours {
		n.begin()
		n.note("p:Ours", "ns/op", ours[i])
		n.note("p:Limit", "ns/op", limits[i])
	}
	return n
}

func TestLine(t *testing.T) {
	against := row{what: "Work", ours: took("p:Ours"), limit: took("p:Limit"), name: "less of it", most: 1.5}
	fixed := against
	fixed.limit = figure{fixed: 1e-3}
	scaled := against
	scaled.limit = took("p:Limit").by(50)
	missing := against
	missing.limit = took("p:Nothing")
	needy := missing
	needy.tool = "no-such-program-anywhere"
	for _, tt := range []struct {
		name string
		r    row
		n    *notes
		want string
	}{
		{"medians", against, noted([]float64{3e6, 1e6, 2e6}, []float64{2e6, 2e6, 2e6}), "Work|2.00 ms|less of it|2.00 ms|1.00×|≤ 1.5×"},
		{"a round disturbed as a whole counts by its ratio", against, noted([]float64{90e6, 1e6, 2e6}, []float64{90e6, 1e6, 2e6}), "Work|2.00 ms|less of it|2.00 ms|1.00×|≤ 1.5×"},
		{"missed", against, noted([]float64{4e6}, []float64{2e6}), "Work|4.00 ms|less of it|2.00 ms|2.00×|≤ 1.5× missed"},
		{"just met", against, noted([]float64{3e6}, []float64{2e6}), "Work|3.00 ms|less of it|2.00 ms|1.50×|≤ 1.5×"},
		{"a fixed limit", fixed, noted([]float64{360}, []float64{1}), "Work|360 ns|less of it|1.00 ms|< 0.01×|≤ 1.5×"},
		{"many times the limit", scaled, noted([]float64{100e6}, []float64{2e6}), "Work|100 ms|less of it|100 ms|1.00×|≤ 1.5×"},
		{"not measured", missing, noted([]float64{1}, []float64{1}), "Work||less of it|not measured||≤ 1.5×"},
		{"no program for it", needy, noted([]float64{1}, []float64{1}), "Work||less of it|no-such-program-anywhere is not installed||≤ 1.5×"},
	} {
		if got := strings.Join(tt.r.line(tt.n), "|"); got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
	}
}

func TestUnits(t *testing.T) {
	for _, tt := range []struct {
		write func(float64) string
		value float64
		want  string
	}{
		{seconds, 1.234, "1.23 s"},
		{seconds, 0.99996, "1.00 s"},
		{seconds, 0.5, "500 ms"},
		{seconds, 12.34e-6, "12.3 µs"},
		{seconds, 9.996e-6, "10.0 µs"},
		{seconds, 99.96e-6, "100 µs"},
		{seconds, 0, "0.00 ns"},
		{byteCount, 100e6, "100 MB"},
		{byteCount, 1970, "1.97 kB"},
		{byteCount, 12, "12.0 B"},
	} {
		if got := tt.write(tt.value); got != tt.want {
			t.Errorf("%v is written %q, want %q", tt.value, got, tt.want)
		}
	}
}

func TestTableStandsInLine(t *testing.T) {
	var out strings.Builder
	write(&out, [][]string{{"Sheet, 36 × 24 in", "1 µs", "blank", "2 µs", "0.50×", "≤ 1×"}})
	want := `
| What              | Takes | Beside | Which takes | Ratio | Goal |
|-------------------|-------|--------|-------------|-------|------|
| Sheet, 36 × 24 in | 1 µs  | blank  | 2 µs        | 0.50× | ≤ 1× |
`
	if got := "\n" + out.String(); got != want {
		t.Errorf("got %s\nwant %s", got, want)
	}
}

func TestPatternPicksWhatRowsName(t *testing.T) {
	all := suites([]row{
		{ours: took("fill:Check/10000"), limit: took("fill:Check/200")},
		{ours: took("plan:Kept"), limit: figure{fixed: 1}},
		{ours: took("fill:Check/10000"), limit: figure{fixed: 1}},
	})
	if len(all) != 2 || all[0].folder != "fill" || all[1].folder != "plan" {
		t.Fatalf("suites %+v, want fill and plan", all)
	}
	if got, want := all[0].pattern(), "^BenchmarkCheck$/^10000$|^BenchmarkCheck$/^200$"; got != want {
		t.Errorf("pattern %s, want %s", got, want)
	}
}

// Every row names a benchmark that there is and a unit that can be written, the same for
// both its figures.
func TestRowsNameWhatThereIs(t *testing.T) {
	written := map[string]string{}
	for unit, s := range scales {
		written[unit] = s.write(1)
	}
	for _, r := range rows {
		if r.limit.bench != "" && written[r.ours.unit] != written[r.limit.unit] || written[r.ours.unit] == "" {
			t.Errorf("%s: units %q and %q", r.what, r.ours.unit, r.limit.unit)
		}
		for _, f := range []figure{r.ours, r.limit} {
			folder, bench, found := strings.Cut(f.bench, ":")
			if found && !hasBenchmark(t, folder, strings.Split(bench, "/")[0]) {
				t.Errorf("%s: %s has no benchmark %s", r.what, folder, bench)
			}
		}
	}
}

func hasBenchmark(t *testing.T, folder, name string) bool {
	t.Helper()
	files, err := filepath.Glob(filepath.Join("..", "..", folder, "*_test.go"))
	if err != nil {
		t.Fatal(err)
	}
	head := regexp.MustCompile(`(?m)^func Benchmark` + name + `\(`)
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		if head.Match(text) {
			return true
		}
	}
	return false
}
