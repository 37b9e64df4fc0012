package main

import (
	"fmt"
	"go/ast"
	"strings"
)

// mutant is one change of the code.
type mutant struct {
	file     *source
	from, to int // of the node that is written anew, in bytes of the file
	line     int
	kind     string // of change, such as "boundary"
	was, is  string // in short, for who reads the report
	function string // that it stands in
	nth      int    // of those that read the same in the function, from 1
	// render writes the code with both behind the switch; text gives what stands in a
	// node with the other mutants in it.
	render func(number int, text func(ast.Node) string) string

	number  int // in the sample
	reached []*test
	fate    fate
	by      *test // that noticed it, if one did by itself
}

// fate is what became of a mutant.
type fate string

const (
	killed     fate = "killed"
	survived   fate = "survived"
	equivalent fate = "equivalent" // survived, and no test could notice
	notReached fate = "not reached"
)

// String is the name with the line.
func (m *mutant) String() string {
	return fmt.Sprintf("%s (line %d)", m.name(), m.line)
}

// name tells a mutant from all others by words that hold when lines move: what
// equivalent.txt keeps.
func (m *mutant) name() string {
	name := fmt.Sprintf("%s %s: %s: %s -> %s", m.file.name, m.function, m.kind, m.was, m.is)
	if m.nth > 1 {
		name += fmt.Sprintf(" #%d", m.nth)
	}
	return name
}

// brief is a text on one line, cut off where it is long.
func brief(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	if r := []rune(text); len(r) > 70 {
		return string(r[:67]) + "..."
	}
	return text
}
