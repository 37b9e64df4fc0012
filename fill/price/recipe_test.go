package price

import (
	"strings"
	"testing"
	"testing/fstest"

	"studbay/fill/part"
)

// TestRecipesThatAreRefused: each cell of the table by its own sentence.
func TestRecipesThatAreRefused(t *testing.T) {
	read := func(text string) ([]Step, error) {
		return ReadSteps(fstest.MapFS{"catalogue/recipes.csv": {Data: []byte(text)}}, "catalogue/recipes.csv")
	}
	const header = "when,per,part,count,minutes,source\n"
	for _, tt := range []struct{ text, want string }{
		{"when,per\n", "catalogue/recipes.csv:1: the header is not"},
		{header + "round,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is called "round"`},
		{header + "gangs>=few,box,,,9,\n", "catalogue/recipes.csv:2: when: "},
		{header + "gangs<=few,box,,,9,\n", "catalogue/recipes.csv:2: when: "},
		{header + "gangs=2,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is called "gangs=2"`},
		{header + "steel round,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is called "round"`},
		{header + ",yoke,,,9,\n", `catalogue/recipes.csv:2: per: nothing is counted by "yoke"`},
		{header + ",box,nail,1,,\n", `catalogue/recipes.csv:2: part: no part "nail"`},
		{header + ",box,staple,one,,\n", `catalogue/recipes.csv:2: count: "one" is not a number of zero or more`},
		{header + ",box,staple,-1,,\n", `catalogue/recipes.csv:2: count: "-1"`},
		{header + ",box,staple,1001,,\n", `catalogue/recipes.csv:2: count: "1001"`},
		{header + ",box,,,-1,\n", `catalogue/recipes.csv:2: minutes: "-1"`},
		{header + ",box,,,1001,\n", `catalogue/recipes.csv:2: minutes: "1001"`},
		{header + ",box,staple,,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,,0,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,,1,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,,,9,\n,box,,,x,\n", `catalogue/recipes.csv:3: minutes: "x"`},
	} {
		if all, err := read(tt.text); err == nil || !strings.HasPrefix(err.Error(), tt.want) || all != nil {
			t.Errorf("%q: %v, %v, want %s", tt.text, all, err, tt.want)
		}
	}
	all, err := read(header + ",box,staple,1000,1000,\nsteel,block,,,1,\n")
	if err != nil || len(all) != 2 || all[0].Count != 1000 || all[0].Minutes != 1000 || all[0].Part != "staple" || all[0].Per != PerBox || all[1].Part != "" || all[1].Minutes != 1 || all[1].Per != PerBlock || len(all[1].when) != 1 {
		t.Errorf("%+v, %v", all, err)
	}
}

// TestWhichBoxesAStepIsOf asks each word of each assembly of the catalogue.
func TestWhichBoxesAStepIsOf(t *testing.T) {
	words := map[string]func(*part.Assembly) bool{
		"metal":        func(a *part.Assembly) bool { return a.Box.Material == part.Steel || a.Box.Material == part.Cast },
		"unclamped":    func(a *part.Assembly) bool { return !a.Box.Clamps },
		"gangs>=2":     func(a *part.Assembly) bool { return a.Gangs() > 1 },
		"gangs<=2":     func(a *part.Assembly) bool { return a.Gangs() < 3 },
		"metal=no":     func(a *part.Assembly) bool { return a.Box.Material == part.Plastic },
		"gangs>=3=no":  func(a *part.Assembly) bool { return a.Gangs() < 3 },
		"unclamped=no": func(a *part.Assembly) bool { return a.Box.Clamps },
	}
	for _, m := range []part.Mounting{"nail-on", "bracket", "screw", "bar-hanger", "joist", "old-work", "surface", "masonry", "floor", "raceway"} {
		words[string(m)] = func(a *part.Assembly) bool { return a.Box.Mounting == m }
		words[string(m)+"=no"] = func(a *part.Assembly) bool { return a.Box.Mounting != m }
	}
	for _, m := range []part.Material{"plastic", "steel", "cast"} {
		words[string(m)] = func(a *part.Assembly) bool { return a.Box.Material == m }
	}
	for word, want := range words {
		c, err := conditionOf(word)
		if err != nil {
			t.Errorf("%s: %v", word, err)
			continue
		}
		for _, a := range part.All().Assemblies {
			if got := (Step{when: []condition{c}}).Fits(a); got != want(a) {
				t.Errorf("%s of %s: %v, want %v", word, a.Code, got, want(a))
			}
		}
	}
	steel, _ := conditionOf("steel")
	bracket, _ := conditionOf("bracket")
	for _, a := range part.All().Assemblies {
		want := a.Box.Material == part.Steel && a.Box.Mounting == part.Bracket
		if got := (Step{when: []condition{steel, bracket}}).Fits(a); got != want {
			t.Errorf("steel bracket of %s: %v", a.Code, got)
		}
	}
}
