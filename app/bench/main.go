// Bench measures size and speed, each beside what it is held against in the same run, and
// prints the table that the README quotes. Run it by make bench.
//
// It builds the benchmarks first and then runs all of them in turn, round after round, so
// that what is compared is measured within seconds. The table has the medians. A goal that
// is missed is said there and fails nothing: a busy machine may be the cause.
package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
	"runtime"
)

func main() {
	rounds := flag.Int("rounds", 5, "how many times each benchmark runs")
	least := flag.String("time", "300ms", "how long each runs at least, or how many times as 3x")
	flag.Parse()
	if err := run(*rounds, *least); err != nil {
		fmt.Fprintln(os.Stderr, "bench:", err)
		os.Exit(1)
	}
}

// run measures and prints. What could not be built or run is an error in the end; the
// table has the rest all the same.
func run(rounds int, least string) error {
	if rounds < 1 {
		return errors.New("-rounds: want one or more")
	}
	folder, err := os.MkdirTemp("", "studbay-bench-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	say("building the program and the benchmarks")
	runs, errs := prepare(folder)
	n := &notes{}
	for i := range rounds {
		say("round %d of %d", i+1, rounds)
		n.begin()
		for _, measure := range runs {
			if err := measure(least, n); err != nil {
				errs = append(errs, err)
			}
		}
	}
	var lines [][]string
	for _, r := range rows {
		lines = append(lines, r.line(n))
	}
	write(os.Stdout, lines)
	fmt.Printf("\nMedian of %d; %s on %s, %d cores of %s.\n", rounds, runtime.Version(), runtime.GOOS+"/"+runtime.GOARCH, runtime.NumCPU(), n.processor)
	return errors.Join(errs...)
}

// prepare builds all there is to run, into a folder.
func prepare(folder string) (runs []func(least string, n *notes) error, errs []error) {
	for _, s := range suites(rows) {
		if err := s.build(folder); err != nil {
			errs = append(errs, err)
			continue
		}
		runs = append(runs, s.run)
	}
	p, err := buildProgram(folder)
	if err != nil {
		return runs, append(errs, err)
	}
	return append(runs, func(_ string, n *notes) error { return p.measure(n) }), errs
}

func say(format string, args ...any) { fmt.Fprintf(os.Stderr, "bench: "+format+"\n", args...) }
