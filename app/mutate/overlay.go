package main

import (
	"encoding/json"
	"fmt"
	"go/ast"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// The environment that a test program with mutants in it reads.
const (
	chosenVar = "STUDBAY_MUTANT"      // the number of the one that is on
	seenVar   = "STUDBAY_MUTANT_SEEN" // the file that takes the numbers of those reached
)

// switches is what each package with mutants in it is given.
const switches = `package %s

import (
	mutantatomic "sync/atomic"
	mutantos "os"
	mutantstrconv "strconv"
)

var (
	mutantChosen, _ = mutantstrconv.Atoi(mutantos.Getenv("STUDBAY_MUTANT"))
	mutantLog       = mutantos.Getenv("STUDBAY_MUTANT_SEEN")
	mutantSeen      [%d]mutantatomic.Bool
)

func mutantOn(n int) bool {
	if mutantLog != "" && !mutantSeen[n].Swap(true) {
		if f, err := mutantos.OpenFile(mutantLog, mutantos.O_APPEND|mutantos.O_CREATE|mutantos.O_WRONLY, 0o600); err == nil {
			f.WriteString(mutantstrconv.Itoa(n) + "\n")
			f.Close()
		}
	}
	return n == mutantChosen
}

type mutantNumber interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr | ~float32 | ~float64
}

func mutantAdd[T mutantNumber](n int, a, b T) T {
	if mutantOn(n) {
		return a - b
	}
	return a + b
}

func mutantTake[T mutantNumber](n int, a, b T) T {
	if mutantOn(n) {
		return a + b
	}
	return a - b
}

func mutantPick[T any](n int, was, is T) T {
	if mutantOn(n) {
		return is
	}
	return was
}
`

// writeOverlay writes the files of the packages with the chosen mutants in them into a
// folder and returns the path of what -overlay is told.
func writeOverlay(folder string, packages []*pkg, chosen []*mutant) (string, error) {
	replace := map[string]string{}
	put := func(path, text string) error {
		to := filepath.Join(folder, fmt.Sprintf("%d.go", len(replace)))
		replace[path] = to
		return os.WriteFile(to, []byte(text), 0o600)
	}
	for _, p := range packages {
		any := false
		for _, file := range p.files {
			in := slices.DeleteFunc(slices.Clone(chosen), func(m *mutant) bool { return m.file != file })
			if len(in) == 0 {
				continue
			}
			any = true
			if err := put(file.path, file.with(in)); err != nil {
				return "", err
			}
		}
		if !any {
			continue
		}
		if err := put(filepath.Join(p.folder, "zz_mutant.go"), fmt.Sprintf(switches, p.types.Name(), len(chosen)+1)); err != nil {
			return "", err
		}
	}
	text, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	path := filepath.Join(folder, "overlay.json")
	return path, os.WriteFile(path, text, 0o600)
}

// with returns the text of the file with mutants in it. They come as they were found:
// outer nodes before inner ones, and of the same node as kinds has them.
func (s *source) with(in []*mutant) string {
	slices.SortStableFunc(in, func(a, b *mutant) int {
		if a.from != b.from {
			return a.from - b.from
		}
		return b.to - a.to
	})
	return s.render(0, len(s.text), in)
}

func (s *source) render(from, to int, in []*mutant) string {
	var b strings.Builder
	for len(in) > 0 {
		m := in[0]
		n := 1
		for n < len(in) && in[n].from < m.to {
			n++
		}
		inner := in[1:n]
		in = in[n:]
		b.Write(s.text[from:m.from])
		b.WriteString(m.render(m.number, func(node ast.Node) string {
			lo, hi := s.pkg.fset.Position(node.Pos()).Offset, s.pkg.fset.Position(node.End()).Offset
			within := slices.DeleteFunc(slices.Clone(inner), func(i *mutant) bool { return i.from < lo || i.to > hi })
			return s.render(lo, hi, within)
		}))
		from = m.to
	}
	b.Write(s.text[from:to])
	return b.String()
}
