package takeoff

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"sync"

	"studbay/assets"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/fill/rows"
)

// per is what a step of a recipe is counted by.
type per string

// The measures of a recipe.
const (
	perBox    per = "box"
	perCable  per = "cable"        // that enters
	perSplice per = "splice"       // a wire connector
	perBlock  per = "block"        // of lumber between studs or joists
	perLength per = "block-length" // inches of such blocks
	perEdge   per = "edge"         // stud bored too near to its edges
)

// step is a row of the table of recipes: a part or minutes, or both, of each box that is
// as said.
type step struct {
	when    []condition
	per     per
	part    *price.Part // nil: only minutes
	count   int
	minutes int
}

// condition is one thing a box is or is not.
type condition struct {
	holds func(*part.Assembly) bool
	not   bool
}

// fits reports whether a step is of an assembly.
func (s step) fits(a *part.Assembly) bool {
	for _, c := range s.when {
		if c.holds(a) == c.not {
			return false
		}
	}
	return true
}

var recipeColumns = []string{"when", "per", "part", "count", "minutes", "source"}

// recipes are the steps of the table, in its order.
var recipes = sync.OnceValue(func() []step {
	all, err := readRecipes(assets.Tables, "catalogue/recipes.csv")
	if err != nil {
		panic(err) // our own table, and tested
	}
	return all
})

func readRecipes(from fs.FS, name string) (all []step, err error) {
	table, err := rows.Read(from, name, recipeColumns...)
	if err != nil {
		return nil, err
	}
	for _, r := range table {
		s, err := readStep(r)
		if err != nil {
			return nil, err
		}
		all = append(all, s)
	}
	return all, nil
}

func readStep(r rows.Row) (s step, err error) {
	for word := range strings.FieldsSeq(r.Cell("when")) {
		c, err := conditionOf(word)
		if err != nil {
			return s, r.Wrong("when", err)
		}
		s.when = append(s.when, c)
	}
	s.per = per(r.Cell("per"))
	if !slices.Contains([]per{perBox, perCable, perSplice, perBlock, perLength, perEdge}, s.per) {
		return s, r.Wrong("per", fmt.Errorf("nothing is counted by %q", s.per))
	}
	if id := r.Cell("part"); id != "" {
		p, ok := price.Find(id)
		if !ok {
			return s, r.Wrong("part", fmt.Errorf("no part %q", id))
		}
		s.part = &p
	}
	if s.count, err = number(r, "count"); err != nil {
		return s, err
	}
	if s.minutes, err = number(r, "minutes"); err != nil {
		return s, err
	}
	if (s.part == nil) != (s.count == 0) {
		return s, r.Wrong("count", errors.New("a part and its count go together"))
	}
	return s, nil
}

func number(r rows.Row, column string) (int, error) {
	text := r.Cell(column)
	if text == "" {
		return 0, nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > 1000 {
		return n, r.Wrong(column, fmt.Errorf("%q is not a number of zero or more", text))
	}
	return n, nil
}

// words of a condition beside the names of mountings and materials.
const (
	metal     = "metal"
	unclamped = "unclamped" // without clamps of its own
)

// conditionOf reads a word: a mounting, a material, metal, unclamped, gangs>=3 or gangs<=2;
// one that ends in =no is not to be.
func conditionOf(word string) (c condition, err error) {
	name, no := strings.CutSuffix(word, "=no")
	c.not = no
	mountings := []part.Mounting{part.NailOn, part.Bracket, part.Screw, part.BarHanger, part.Joist, part.OldWork, part.Surface, part.InMasonry, part.InFloor, part.OnRaceways}
	materials := []part.Material{part.Plastic, part.Steel, part.Cast}
	switch {
	case slices.Contains(mountings, part.Mounting(name)):
		c.holds = func(a *part.Assembly) bool { return a.Box.Mounting == part.Mounting(name) }
	case slices.Contains(materials, part.Material(name)):
		c.holds = func(a *part.Assembly) bool { return a.Box.Material == part.Material(name) }
	case name == metal:
		c.holds = func(a *part.Assembly) bool { return isMetal(a) }
	case name == unclamped:
		c.holds = func(a *part.Assembly) bool { return !a.Box.Clamps }
	default:
		return gangCondition(name, c)
	}
	return c, nil
}

func gangCondition(word string, c condition) (condition, error) {
	for _, by := range []struct {
		sign string
		is   func(gangs, n int) bool
	}{{">=", func(gangs, n int) bool { return gangs >= n }}, {"<=", func(gangs, n int) bool { return gangs <= n }}} {
		if text, ok := strings.CutPrefix(word, "gangs"+by.sign); ok {
			n, err := strconv.Atoi(text)
			c.holds = func(a *part.Assembly) bool { return by.is(a.Gangs(), n) }
			return c, err
		}
	}
	return c, fmt.Errorf("no box is known by %q", word)
}

func isMetal(a *part.Assembly) bool { return a.Box.Material != part.Plastic }
