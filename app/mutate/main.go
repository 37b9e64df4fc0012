// Mutate asks whether the tests would notice: it changes the code in small ways, one at a
// time, and runs the tests that reach each change. Run it by make mutate.
//
// All changes of a sample are compiled into the test programs at once, through -overlay,
// each behind a switch that the environment sets; the tree itself is never written to.
// Every test runs once by itself to learn what it costs and which changes it reaches;
// then, for each change, the tests that reach it run, cheapest first, until one fails. A
// change that none of them notices survives, unless it stands in equivalent.txt with the
// reason why no test could.
package main

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"regexp"
	"slices"
	"strings"
)

func main() {
	var o options
	flag.IntVar(&o.sample, "sample", 200, "how many changes to try; 0 tries all")
	flag.Uint64Var(&o.seed, "seed", 1, "what the sample is drawn by")
	flag.StringVar(&o.only, "only", "", "try only changes whose description matches, such as wall_space")
	flag.BoolVar(&o.list, "list", false, "list the changes of the sample and try none")
	tests := flag.String("tests", strings.Join(testers, " "), "whose tests are to notice, beside those of the packages changed")
	flag.Parse()
	o.tests = strings.Fields(*tests)
	if o.patterns = flag.Args(); len(o.patterns) == 0 {
		o.patterns = []string{"./plan/...", "./fill/..."}
	}
	if err := run(o); err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(1)
	}
}

type options struct {
	sample   int
	seed     uint64
	only     string
	list     bool
	patterns []string // packages, as the go command takes them
	tests    []string // likewise
}

// testers have tests of what plan and fill answer, on paper and to a script, and need no
// window.
var testers = []string{"./render/...", "./app/verb", "./app/demo"}

func run(o options) error {
	only, err := regexp.Compile(o.only)
	if err != nil {
		return fmt.Errorf("-only: %w", err)
	}
	packages, err := load(o.patterns)
	if err != nil {
		return err
	}
	var all []*mutant
	for _, p := range packages {
		all = append(all, p.mutants()...)
	}
	all = slices.DeleteFunc(all, func(m *mutant) bool { return !only.MatchString(m.String()) })
	chosen := draw(all, o.sample, o.seed)
	say("%d of %d changes", len(chosen), len(all))
	if o.list {
		for _, m := range chosen {
			fmt.Println(m)
		}
		return nil
	}
	folder, err := os.MkdirTemp("", "studbay-mutate-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	b, err := build(folder, slices.Concat(o.patterns, o.tests), packages, chosen)
	if err != nil {
		return err
	}
	if err := b.trace(chosen); err != nil {
		return err
	}
	for i, m := range chosen {
		b.judge(m)
		say("%d/%d %s: %s", i+1, len(chosen), m.fate, m)
	}
	report(os.Stdout, chosen)
	return nil
}

// draw picks n of the mutants, the same ones for the same seed, and numbers them from 1
// in the order of the code.
func draw(all []*mutant, n int, seed uint64) []*mutant {
	chosen := slices.Clone(all)
	if n > 0 && n < len(all) {
		at := map[*mutant]int{}
		for i, m := range all {
			at[m] = i
		}
		r := rand.New(rand.NewPCG(seed, 0))
		r.Shuffle(len(chosen), func(i, j int) { chosen[i], chosen[j] = chosen[j], chosen[i] })
		chosen = chosen[:n]
		slices.SortFunc(chosen, func(a, b *mutant) int { return at[a] - at[b] })
	}
	for i, m := range chosen {
		m.number = i + 1
	}
	return chosen
}

func say(format string, args ...any) { fmt.Fprintf(os.Stderr, "mutate: "+format+"\n", args...) }
