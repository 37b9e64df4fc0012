package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// code has a node for every kind of change, some inside others, and comparisons whose
// bound its test tries or does not.
const code = `package part

import "time"

const far = 2 * time.Hour

var table = []int{0: 7, 1: 8}

// Fits tries its bound in the test.
func Fits(taken, room int) bool { return taken <= room }

// Reaches does not.
func Reaches(length, reach time.Duration) bool { return length <= reach }

// Alone is called by no test.
func Alone(a int) int { return a + 1 }

// Clamp counts up to a number and leaves the rest; where the loop has no end, the test
// must not hang.
func Clamp(n, most int) (count int) {
	for i := 0; i < n; i++ {
		if i >= most || n < 0 && most+1 > 0 {
			break
		}
		count++
		count += table[i%2] - table[i%2]
	}
	switch {
	case count < 0:
		count = 0
	}
	if time.Duration(count) > far {
		return 0
	}
	return count
}
`

const codeTest = `package part

import (
	"testing"
	"time"
)

func TestFits(t *testing.T) {
	if !Fits(3, 3) || Fits(4, 3) {
		t.Error("the bound")
	}
}

func TestReaches(t *testing.T) {
	if !Reaches(time.Second, time.Minute) {
		t.Error("within")
	}
}

func TestClamp(t *testing.T) {
	if Clamp(5, 3) != 3 || Clamp(2, 3) != 2 {
		t.Error("clamped")
	}
}
`

// TestMutants plays a whole run over a module of two files: what a test can tell apart
// must be killed, what none tries must survive, and the tree must stay as it was.
func TestMutants(t *testing.T) {
	if testing.Short() {
		t.Skip("compiles a program")
	}
	folder := t.TempDir()
	for name, text := range map[string]string{"go.mod": "module part\n\ngo 1.24\n", "part.go": code, "part_test.go": codeTest} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	t.Chdir(folder)
	packages, err := load([]string{"./..."})
	if err != nil {
		t.Fatal(err)
	}
	all := draw(packages[0].mutants(), 0, 1)
	b, err := build(t.TempDir(), []string{"./..."}, packages, all)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.trace(all); err != nil {
		t.Fatal(err)
	}
	fates, kinds := map[string]fate{}, map[string]bool{}
	for _, m := range all {
		b.judge(m)
		fates[m.name()], kinds[m.kind] = m.fate, true
	}
	for _, tt := range []struct {
		name string
		want fate
		why  string
	}{
		{"part.go Fits: boundary: taken <= room -> taken < room", killed, "3 of 3 is tried"},
		{"part.go Reaches: boundary: length <= reach -> length < reach", survived, "the bound is not tried"},
		{"part.go Alone: sum: a + 1 -> a - 1", notReached, "no test calls it"},
		{"part.go Clamp: sum: i++ -> i--", "", "what a loop does after each turn is no statement of a list"},
		{"part.go Clamp: drop: break -> nothing", killed, "5 of 3 is tried"},
		{"part.go Clamp: drop: count++ -> nothing", killed, "the count is compared"},
		{"part.go Clamp: sum: count++ -> count--", killed, "the count is compared"},
		{"part.go Clamp: logic: n < 0 && most+1 > 0 -> n < 0 || most+1 > 0", killed, "it would break at once"},
		{"part.go Clamp: operand: i >= most -> false", killed, "nothing else ends the loop at the most"},
		{"part.go Clamp: operand: most+1 > 0 -> true", notReached, "it is never asked of a count below zero"},
		{"part.go Clamp: constant: 0 -> 1", killed, "the first turn would be left out"},
		{"part.go Clamp: constant: 0 -> 1 #4", survived, "an empty count, which the test has none of"},
		{"part.go Clamp: constant: far -> 3600000000000", survived, "no count is that far"},
		{"part.go var: constant: 7 -> 8", survived, "it is taken away again"},
	} {
		if got := fates[tt.name]; got != tt.want {
			t.Errorf("%s: %q, want %q: %s", tt.name, got, tt.want, tt.why)
		}
	}
	for _, kind := range []string{"drop", "negate", "operand", "sum", "boundary", "logic", "constant"} {
		if !kinds[kind] {
			t.Errorf("nothing of kind %q is tried", kind)
		}
	}
	if text, err := os.ReadFile("part.go"); err != nil || string(text) != code {
		t.Errorf("the code was written to: %v", err)
	}
}

// TestSampleIsTheSameForTheSameSeed, or a figure could not be compared with the last.
func TestSampleIsTheSameForTheSameSeed(t *testing.T) {
	var all []*mutant
	file := &source{name: "part.go"}
	for i := range 100 {
		all = append(all, &mutant{file: file, from: i})
	}
	pick := func(seed uint64) (out []int) {
		for _, m := range draw(all, 10, seed) {
			out = append(out, m.from)
		}
		return out
	}
	same := func(a, b []int) bool {
		for i := range a {
			if a[i] != b[i] {
				return false
			}
		}
		return len(a) == len(b)
	}
	if a := pick(1); !same(a, pick(1)) || len(a) != 10 {
		t.Errorf("seed 1 draws %v, then others", a)
	}
	if same(pick(1), pick(2)) {
		t.Error("seeds 1 and 2 draw the same")
	}
}

// TestSampleKeepsTheOrder of the code, also of changes to one node: of two, the first is
// written around the second, and would be lost where it came after.
func TestSampleKeepsTheOrder(t *testing.T) {
	var all []*mutant
	for i := range 100 {
		all = append(all, &mutant{file: &source{name: "part.go"}, nth: i})
	}
	last := -1
	for _, m := range draw(all, 50, 1) {
		if m.nth <= last {
			t.Errorf("%d comes after %d", m.nth, last)
		}
		last = m.nth
	}
}

// TestReport holds the figure: what no test could notice is neither killed nor left out.
func TestReport(t *testing.T) {
	file := &source{name: "part.go"}
	var all []*mutant
	for _, f := range []fate{killed, killed, killed, survived, notReached, equivalent} {
		all = append(all, &mutant{file: file, kind: "drop", fate: f})
	}
	var out bytes.Buffer
	report(&out, all)
	want := "all        killed 3 of 6 (50.0 %); 1 survived, 1 not reached by any test, 1 that no test could notice\n"
	if !strings.Contains(out.String(), want) {
		t.Errorf("the report is\n%swant in it\n%s", out.String(), want)
	}
}

// TestKnownHaveReasons: a change is passed over only with a reason beside it.
func TestKnownHaveReasons(t *testing.T) {
	got := readKnown("# about\na.go f: drop: x -> nothing\n  since x\n  is y\n\nb.go g: negate: c -> !(c)\n")
	if len(got) != 1 || got["a.go f: drop: x -> nothing"] != "since x is y" {
		t.Errorf("read %q: want the one with its reason and not the one without", got)
	}
}
