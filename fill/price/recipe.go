package price

import (
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"sync"

	"studbay/assets"
	"studbay/fill/part"
	"studbay/fill/rows"
	"studbay/plan/words"
)

// Per is what a step of a recipe is counted by.
type Per string

// The measures of a recipe.
const (
	PerBox    Per = "box"
	PerCable  Per = "cable"        // that enters
	PerSplice Per = "splice"       // a wire connector
	PerBlock  Per = "block"        // of lumber between studs or joists
	PerLength Per = "block-length" // inches of such blocks
	PerEdge   Per = "edge"         // stud bored too near to its edges
)

// Pers lists them all.
var Pers = []Per{PerBox, PerCable, PerSplice, PerBlock, PerLength, PerEdge}

// Step is a line of the recipes: a part or minutes, or both, of each box that is as said.
type Step struct {
	When    string // words of which boxes it is, as the table has them; empty: of every one
	Per     Per
	Part    string // ID of a part of the table; empty: only minutes
	Count   int    // of the part, 0 to 1000
	Minutes int    // 0 to 1000
	Source  string

	when []condition
}

// Fits reports whether a step is of an assembly.
func (s Step) Fits(a *part.Assembly) bool {
	for _, c := range s.when {
		if c.holds(a) == c.not {
			return false
		}
	}
	return true
}

var recipeColumns = []string{"when", "per", "part", "count", "minutes", "source"}

// standing are the steps of our own table, in its order.
var standing = sync.OnceValue(func() []Step {
	all, err := ReadSteps(assets.Tables, "catalogue/recipes.csv")
	if err != nil {
		panic(err) // our own table, and tested
	}
	return all
})

// ReadSteps reads a table of steps. It fails with a *rows.Error that says which cell cannot be
// read.
func ReadSteps(from fs.FS, name string) (all []Step, err error) {
	table, err := rows.Read(from, name, recipeColumns...)
	if err != nil {
		return nil, err
	}
	for _, r := range table {
		s, column, err := stepOf(r.Cell)
		if err != nil {
			return nil, r.Wrong(column, err)
		}
		s.Source = r.Cell("source")
		all = append(all, s)
	}
	return all, nil
}

// stepOf reads the cells of a step but its source, or says in which column what is wrong.
func stepOf(cell func(column string) string) (s Step, column string, err error) {
	s.When = cell("when")
	for word := range strings.FieldsSeq(s.When) {
		c, err := conditionOf(word)
		if err != nil {
			return s, "when", err
		}
		s.when = append(s.when, c)
	}
	if s.Per = Per(cell("per")); !slices.Contains(Pers, s.Per) {
		return s, "per", words.Fault("recipe.no-per", "nothing is counted by \"{0}\"", string(s.Per))
	}
	if s.Part = cell("part"); s.Part != "" {
		if _, ok := Find(s.Part); !ok {
			return s, "part", words.Fault("recipe.no-part", "no part \"{0}\"", s.Part)
		}
	}
	if s.Count, err = Figure(cell("count")); err != nil {
		return s, "count", err
	}
	if s.Minutes, err = Figure(cell("minutes")); err != nil {
		return s, "minutes", err
	}
	if (s.Part == "") != (cell("count") == "") {
		return s, "count", words.Fault("recipe.no-count", "a part and its count go together")
	}
	return s, "", nil
}

// Figure reads a count or minutes of a step; nothing written is none.
func Figure(text string) (int, error) {
	if text == "" {
		return 0, nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > 1000 {
		return n, words.Fault("recipe.no-number", "\"{0}\" is not a number of zero or more", text)
	}
	return n, nil
}

// words of a condition beside the names of mountings and materials.
const (
	metal     = "metal"
	unclamped = "unclamped" // without clamps of its own
)

var (
	mountings = []part.Mounting{part.NailOn, part.Bracket, part.Screw, part.BarHanger, part.Joist, part.OldWork, part.Surface, part.InMasonry, part.InFloor, part.OnRaceways}
	materials = []part.Material{part.Plastic, part.Steel, part.Cast}
)

// condition is one thing a box is or is not.
type condition struct {
	holds func(*part.Assembly) bool
	not   bool
}

// conditionOf reads a word: a mounting, a material, metal, unclamped, gangs>=3 or gangs<=2;
// one that ends in =no is not to be.
func conditionOf(word string) (c condition, err error) {
	name, no := strings.CutSuffix(word, "=no")
	c.not = no
	switch {
	case slices.Contains(mountings, part.Mounting(name)):
		c.holds = func(a *part.Assembly) bool { return a.Box.Mounting == part.Mounting(name) }
	case slices.Contains(materials, part.Material(name)):
		c.holds = func(a *part.Assembly) bool { return a.Box.Material == part.Material(name) }
	case name == metal:
		c.holds = IsMetal
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
			n, err := Figure(text)
			c.holds = func(a *part.Assembly) bool { return by.is(a.Gangs(), n) }
			return c, err
		}
	}
	return c, words.Fault("recipe.no-box", "no box is called \"{0}\"", word)
}

// IsMetal reports whether the box of an assembly is of metal.
func IsMetal(a *part.Assembly) bool { return a.Box.Material != part.Plastic }
