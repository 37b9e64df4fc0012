package main

import (
	"bytes"
	"fmt"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// suite is the benchmarks of one package, built once and run many times.
type suite struct {
	folder  string // of the package, from the module's
	benches []string
	program string
}

// suites gathers the benchmarks that rows name, by package, in the order of the rows.
func suites(rows []row) (all []*suite) {
	for _, r := range rows {
		for _, f := range []figure{r.ours, r.limit} {
			folder, bench, found := strings.Cut(f.bench, ":")
			if !found {
				continue
			}
			i := slices.IndexFunc(all, func(s *suite) bool { return s.folder == folder })
			if i < 0 {
				i, all = len(all), append(all, &suite{folder: folder})
			}
			if s := all[i]; !slices.Contains(s.benches, bench) {
				s.benches = append(s.benches, bench)
			}
		}
	}
	return all
}

// pattern picks just the suite's benchmarks, as -test.bench wants it.
func (s *suite) pattern() string {
	var all []string
	for _, b := range s.benches {
		parts := strings.Split("Benchmark"+b, "/")
		all = append(all, "^"+strings.Join(parts, "$/^")+"$")
	}
	return strings.Join(all, "|")
}

// build compiles the suite into a folder.
func (s *suite) build(folder string) error {
	program := filepath.Join(folder, strings.ReplaceAll(s.folder, "/", "-")+".test")
	out, err := exec.Command("go", "test", "-c", "-o", program, "./"+s.folder).CombinedOutput()
	if err != nil {
		return fmt.Errorf("building the benchmarks of %s: %w\n%s", s.folder, err, bytes.TrimSpace(out))
	}
	s.program = program
	return nil
}

// run runs every benchmark of the suite once, for at least a time such as 300ms, and
// notes what it reports.
func (s *suite) run(time string, notes *notes) error {
	cmd := exec.Command(s.program, "-test.run", "^$", "-test.bench", s.pattern(), "-test.benchtime", time)
	cmd.Dir = s.folder
	out, err := cmd.CombinedOutput()
	if err != nil {
		return fmt.Errorf("benchmarks of %s: %w\n%s", s.folder, err, bytes.TrimSpace(out))
	}
	return notes.read(s.folder, out)
}
