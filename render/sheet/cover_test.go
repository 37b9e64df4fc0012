package sheet

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan/plantest"
	"studbay/plan/words"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/sheet/proof"
	"studbay/render/tell"
)

// TestCoverSaysWhatIsInTheSet: the sheets listed follow on one another to the last, and what
// must change before it is built is counted.
func TestCoverSaysWhatIsInTheSet(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		pages, err := Build(ix, result, Options{Cover: true})
		if err != nil {
			t.Fatal(err)
		}
		texts := proof.Texts(pages[0])
		next := 1
		for _, text := range texts[slices.Index(texts, "Sheets")+1 : slices.Index(texts, "What was found")] {
			first, last, isRange := strings.Cut(text, " to ")
			n, err := strconv.Atoi(first)
			if err != nil {
				continue // its name
			}
			if n != next {
				t.Errorf("%s: sheet %d is listed where %d comes next", name, n, next)
			}
			if isRange {
				n, _ = strconv.Atoi(last)
			}
			next = n + 1
		}
		if next != len(pages)+1 {
			t.Errorf("%s: the list ends at sheet %d of %d", name, next-1, len(pages))
		}
		stops := 0
		for _, f := range result.All() {
			if !f.IsOpen && f.Waived == nil && f.Severity == rule.Stop {
				stops++
			}
		}
		if want := words.New("", "{0} to change before it is built", stops).String(); stops > 0 && !slices.Contains(texts, want) {
			t.Errorf("%s: the cover does not say %q", name, want)
		}
	}
}

// TestCoverCarriesEveryCaution: on the smallest paper too.
func TestCoverCarriesEveryCaution(t *testing.T) {
	size, err := paper.Named("letter")
	if err != nil {
		t.Fatal(err)
	}
	for name, ix := range rendertest.Demos(t) {
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		pages, err := Build(ix, result, Options{Cover: true, Paper: size, Reader: ForSupplier})
		if err != nil {
			t.Fatal(err)
		}
		said := strings.Join(proof.Texts(pages[0]), " ")
		for _, c := range cautionsOf(ix.Plan()) {
			if !strings.Contains(said, c.String()) {
				t.Errorf("%s: the cover does not say %q", name, c)
			}
		}
	}
}

// TestNoCoverUnlessAskedFor: a picture of the plan begins with the plan.
func TestNoCoverUnlessAskedFor(t *testing.T) {
	pages := build(t, plantest.House(3, 12), Options{})
	if pages[0].Meta.Title == "Cover" {
		t.Error("a set begins with a cover that nobody asked for")
	}
}

// TestClientSignsEachRoom: each room with something in it stands with its openings in plain
// words, and once more to be initialed; nothing of what was found is drawn there.
func TestClientSignsEachRoom(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	pages, err := Build(ix, result, Options{Reader: ForClient})
	if err != nil {
		t.Fatal(err)
	}
	var texts, own []string // of their pages, and of those that have nothing else on them
	for _, p := range pages {
		if strings.HasPrefix(p.Meta.Title, "Your rooms") {
			own = append(own, proof.Texts(p)...)
		}
		if strings.Contains(p.Meta.Title, "Your rooms") {
			texts = append(texts, proof.Texts(p)...)
		}
	}
	sign := slices.Index(texts, "Gone through and agreed")
	if sign < 0 {
		t.Fatal("there is no place to sign")
	}
	for _, r := range tell.Rooms(ix) {
		if !slices.Contains(texts[sign:], r.Name) {
			t.Errorf("%s is not to be initialed", r.Name)
		}
		for _, o := range tell.Room(ix, r.ID) {
			if !slices.Contains(texts[:sign], o.Headline().String()) {
				t.Errorf("%s: %q is not said", r.Name, o.Headline())
			}
		}
	}
	for _, text := range own {
		if strings.Contains(text, "not served") {
			t.Errorf("a client reads %q", text)
		}
	}
}

// TestCoverSaysWhichRoomsWereChecked: each room of the list with by how many checks and by how
// many not, and, of what is open in it, by the title of the check that waits.
func TestCoverSaysWhichRoomsWereChecked(t *testing.T) {
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	pages := build(t, ix.Plan(), Options{Cover: true})
	text := strings.Join(proof.Texts(pages[0]), " ")
	if n := strings.Count(text, "checked by "); n != 2 {
		t.Errorf("%d rooms say by what they were checked, want 2:\n%s", n, text)
	}
	if !strings.Contains(text, "waiting for an answer: ") {
		t.Error("nothing says which checks wait for an answer")
	}
}
