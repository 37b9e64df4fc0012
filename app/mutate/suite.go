package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// test is one test, fuzz test or example of a package.
type test struct {
	program *program
	name    string
	cost    time.Duration // of processor time
}

// program is the tests of one package, compiled with all mutants in them.
type program struct {
	path   string
	folder string // it runs in, that of the package
	tests  []*test
}

// bench is all programs, and the folder that they write to.
type bench struct {
	folder   string
	programs []*program
}

// build compiles the tests of all packages that the patterns name with the mutants of the
// others in them, and lists the tests.
func build(folder string, patterns []string, packages []*pkg, chosen []*mutant) (*bench, error) {
	overlay, err := writeOverlay(folder, packages, chosen)
	if err != nil {
		return nil, err
	}
	say("compiling the tests")
	// Vet would refuse some of the changes, such as a comparison made twice.
	args := append([]string{"test", "-c", "-vet=off", "-overlay", overlay, "-o", folder + string(filepath.Separator)}, patterns...)
	if out, err := exec.Command("go", args...).CombinedOutput(); err != nil {
		return nil, fmt.Errorf("compiling the tests: %w\n%s", err, bytes.TrimSpace(out))
	}
	b := &bench{folder: folder}
	tested, err := goList(patterns)
	if err != nil {
		return nil, err
	}
	for _, l := range tested {
		prog := &program{path: filepath.Join(folder, filepath.Base(l.ImportPath)+".test"), folder: l.Dir}
		if l.DepOnly {
			continue
		}
		if _, err := os.Stat(prog.path); err != nil {
			continue // it has no tests
		}
		if err := prog.listTests(); err != nil {
			return nil, err
		}
		b.programs = append(b.programs, prog)
	}
	return b, nil
}

func (p *program) listTests() error {
	cmd := exec.Command(p.path, "-test.list", "^(Test|Fuzz|Example)")
	cmd.Dir = p.folder
	out, err := cmd.Output()
	if err != nil {
		return fmt.Errorf("listing the tests of %s: %w", p.folder, err)
	}
	for _, name := range strings.Fields(string(out)) {
		p.tests = append(p.tests, &test{program: p, name: name})
	}
	return nil
}

// trace runs every test once with no mutant on and notes what each reaches and costs. A
// test that fails already is told and asked nothing.
func (b *bench) trace(chosen []*mutant) error {
	say("running every test once")
	for _, p := range b.programs {
		for _, t := range p.tests {
			seen := filepath.Join(b.folder, "seen")
			if err := os.RemoveAll(seen); err != nil {
				return err
			}
			state, out := p.run([]*test{t}, 10*time.Minute, chosenVar+"=0", seenVar+"="+seen)
			if !state.Success() {
				say("%s fails without a mutant, and is left out\n%s", t.name, out)
				continue
			}
			t.cost = state.UserTime() + state.SystemTime()
			text, _ := os.ReadFile(seen) // absent where nothing was reached
			for _, line := range strings.Fields(string(text)) {
				if n, err := strconv.Atoi(line); err == nil && !slices.Contains(chosen[n-1].reached, t) {
					chosen[n-1].reached = append(chosen[n-1].reached, t)
				}
			}
		}
	}
	return nil
}

// cheap is what a test may cost to be run with others in one go.
const cheap = 300 * time.Millisecond

// judge runs the tests that reach a mutant, cheapest first, until one notices.
func (b *bench) judge(m *mutant) {
	m.fate = notReached
	for _, group := range groups(m.reached) {
		m.fate = survived
		var cost time.Duration
		for _, t := range group {
			cost += t.cost
		}
		if state, _ := group[0].program.run(group, 10*cost+10*time.Second, fmt.Sprint(chosenVar, "=", m.number)); !state.Success() {
			m.fate = killed
			if len(group) == 1 {
				m.by = group[0]
			}
			return
		}
	}
	if known[m.name()] != "" {
		m.fate = equivalent
	}
}

// groups puts the cheap tests of each program together, and each dear one by itself at
// the end.
func groups(tests []*test) (out [][]*test) {
	together := map[*program]int{}
	var dear []*test
	for _, t := range tests {
		if t.cost > cheap {
			dear = append(dear, t)
			continue
		}
		if _, has := together[t.program]; !has {
			together[t.program] = len(out)
			out = append(out, nil)
		}
		i := together[t.program]
		out[i] = append(out[i], t)
	}
	slices.SortStableFunc(dear, func(a, b *test) int { return int(a.cost - b.cost) })
	for _, t := range dear {
		out = append(out, []*test{t})
	}
	return out
}

// run runs tests of the program, and fails them where they take more processor time than
// given, or memory that no test takes: some mutants never come to an end.
func (p *program) run(tests []*test, limit time.Duration, env ...string) (*os.ProcessState, []byte) {
	var names []string
	for _, t := range tests {
		names = append(names, t.name)
	}
	pattern := "^(" + strings.Join(names, "|") + ")$"
	script := fmt.Sprintf(`ulimit -t %d; ulimit -v 8000000; exec "$0" "$@"`, int(limit.Seconds())+1)
	cmd := exec.Command("sh", "-c", script, p.path, "-test.run", pattern, "-test.failfast", "-test.timeout", (10 * limit).String())
	cmd.Dir = p.folder
	cmd.Env = append(os.Environ(), append(env, "RAPID_NOFAILFILE=1")...) // property tests would write to testdata
	cmd.WaitDelay = time.Second
	out, _ := cmd.CombinedOutput() // how it ended is in its state
	return cmd.ProcessState, out
}
