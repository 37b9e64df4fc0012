package takeoff

import (
	"strings"
	"testing"
	"testing/fstest"

	"studbay/fill/part"
	"studbay/plan"
)

// TestRecipesThatAreRefused: each cell of the table by its own sentence.
func TestRecipesThatAreRefused(t *testing.T) {
	read := func(text string) ([]step, error) {
		return readRecipes(fstest.MapFS{"catalogue/recipes.csv": {Data: []byte(text)}}, "catalogue/recipes.csv")
	}
	const header = "when,per,part,count,minutes,source\n"
	for _, tt := range []struct{ text, want string }{
		{"when,per\n", "catalogue/recipes.csv:1: the header is not"},
		{header + "round,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is known by "round"`},
		{header + "gangs>=few,box,,,9,\n", "catalogue/recipes.csv:2: when: "},
		{header + "gangs<=few,box,,,9,\n", "catalogue/recipes.csv:2: when: "},
		{header + "gangs=2,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is known by "gangs=2"`},
		{header + "steel round,box,,,9,\n", `catalogue/recipes.csv:2: when: no box is known by "round"`},
		{header + ",yoke,,,9,\n", `catalogue/recipes.csv:2: per: nothing is counted by "yoke"`},
		{header + ",box,nail,1,,\n", `catalogue/recipes.csv:2: part: no part "nail"`},
		{header + ",box,staple,one,,\n", `catalogue/recipes.csv:2: count: "one" is not a number of zero or more`},
		{header + ",box,staple,-1,,\n", `catalogue/recipes.csv:2: count: "-1"`},
		{header + ",box,staple,1001,,\n", `catalogue/recipes.csv:2: count: "1001"`},
		{header + ",box,,,-1,\n", `catalogue/recipes.csv:2: minutes: "-1"`},
		{header + ",box,,,1001,\n", `catalogue/recipes.csv:2: minutes: "1001"`},
		{header + ",box,staple,,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,staple,0,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,,1,9,\n", "catalogue/recipes.csv:2: count: a part and its count go together"},
		{header + ",box,,,9,\n,box,,,x,\n", `catalogue/recipes.csv:3: minutes: "x"`},
	} {
		if all, err := read(tt.text); err == nil || !strings.HasPrefix(err.Error(), tt.want) || all != nil {
			t.Errorf("%q: %v, %v, want %s", tt.text, all, err, tt.want)
		}
	}
	all, err := read(header + ",box,staple,1000,1000,\nsteel,block,,,1,\n")
	if err != nil || len(all) != 2 || all[0].count != 1000 || all[0].minutes != 1000 || all[0].part.ID != "staple" || all[0].per != perBox || all[1].part != nil || all[1].minutes != 1 || all[1].per != perBlock || len(all[1].when) != 1 {
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
			if got := (step{when: []condition{c}}).fits(a); got != want(a) {
				t.Errorf("%s of %s: %v, want %v", word, a.Code, got, want(a))
			}
		}
	}
	steel, _ := conditionOf("steel")
	bracket, _ := conditionOf("bracket")
	for _, a := range part.All().Assemblies {
		want := a.Box.Material == part.Steel && a.Box.Mounting == part.Bracket
		if got := (step{when: []condition{steel, bracket}}).fits(a); got != want {
			t.Errorf("steel bracket of %s: %v", a.Code, got)
		}
	}
}

// TestHolesInTheFinish: of a box its outline, of a ring its collar, round ones apart; a kind with
// a housing of its own brings the hole, and what is not in a wall, ceiling or floor wants none.
func TestHolesInTheFinish(t *testing.T) {
	for _, tt := range []struct {
		name, kind string
		at         plan.Part
		assembly   plan.Assembly
		want       Cut
	}{
		{"a box", "duplex", plan.PartFace, plan.Assembly{Code: "PN1"}, CutBox},
		{"a ring", "duplex", plan.PartFace, plan.Assembly{Code: "SQ1"}, CutRing},
		{"a ring to round", "ceiling-light", plan.PartCeiling, plan.Assembly{Code: "SQ10"}, CutRound},
		{"a round box", "ceiling-light", plan.PartCeiling, plan.Assembly{Code: "RD1"}, CutRound},
		{"in a floor", "floor", plan.PartFloor, plan.Assembly{Code: "PN1"}, CutBox},
		{"a housing", "recessed", plan.PartCeiling, plan.Assembly{}, CutHousing},
		{"nothing set in", "duplex", plan.PartFace, plan.Assembly{}, NoCut},
		{"no such kind", "no such", plan.PartFace, plan.Assembly{}, NoCut},
		{"in a cabinet", "duplex", plan.PartFront, plan.Assembly{Code: "PN1"}, NoCut},
		{"in a top", "duplex", plan.PartTop, plan.Assembly{Code: "PN1"}, NoCut},
	} {
		if got := cutOf(&plan.Opening{Kind: tt.kind, At: plan.Anchor{Part: tt.at}, Assembly: tt.assembly}); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
	for cut, want := range map[Cut]string{CutBox: "box outline", CutRing: "raised ring", CutRound: "round", CutHousing: "housing"} {
		if got := cut.Text().String(); got != want {
			t.Errorf("%s is called %q", cut, got)
		}
	}
	if !NoCut.Text().IsZero() {
		t.Error("no hole has a name")
	}
}

// TestBlanks: of the catalogue's blanks the one that goes on the box and covers its gangs; one
// without gangs covers all.
func TestBlanks(t *testing.T) {
	for _, tt := range []struct {
		box   string
		gangs int
		want  string
	}{{"pn1-18", 1, "blank-1g"}, {"pn1-18", 2, "blank-2g"}, {"sq4-1.5", 1, "blank-4"}, {"oct4-1.5", 0, "blank-rd"}, {"pn1-18", 7, ""}} {
		got := ""
		if add := blankFor(part.All().Box(tt.box), tt.gangs); add != nil {
			got = add.ID
		}
		if got != tt.want {
			t.Errorf("%s of %d gangs: %q, want %q", tt.box, tt.gangs, got, tt.want)
		}
	}
}
