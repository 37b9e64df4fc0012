package main

import (
	_ "embed"
	"fmt"
	"io"
	"strings"
)

//go:embed equivalent.txt
var equivalents string

// known are the mutants that no test could notice, with the reason.
var known = readKnown(equivalents)

// readKnown reads lines of a mutant and, below it and set in, the reason.
func readKnown(text string) map[string]string {
	out := map[string]string{}
	name := ""
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\n")
		switch reason := strings.TrimSpace(line); {
		case reason == "" || strings.HasPrefix(line, "#"):
		case reason == line:
			name = line
		default:
			out[name] = strings.TrimSpace(out[name] + " " + reason)
		}
	}
	return out
}

// report writes what became of the mutants: by kind, then those that no test noticed.
func report(w io.Writer, all []*mutant) {
	total := map[fate]int{}
	made, dead := map[string]int{}, map[string]int{}
	var order []string
	for _, m := range all {
		total[m.fate]++
		if made[m.kind]++; made[m.kind] == 1 {
			order = append(order, m.kind)
		}
		if m.fate == killed {
			dead[m.kind]++
		}
	}
	for _, kind := range order {
		fmt.Fprintf(w, "%-10s killed %d of %d\n", kind, dead[kind], made[kind])
	}
	fmt.Fprintf(w, "all        killed %d of %d (%.1f %%); %d survived, %d not reached by any test, %d that no test could notice\n",
		total[killed], len(all), 100*float64(total[killed])/float64(max(1, len(all))), total[survived], total[notReached], total[equivalent])
	for _, f := range []fate{survived, notReached, equivalent} {
		for _, m := range all {
			if m.fate == f {
				fmt.Fprintf(w, "%s: %s\n", f, m)
			}
		}
	}
}
