package sheet

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
)

// TestEachReaderHasTheirPages: everybody has the plan, nobody has a page that the whole
// set has not, and the crew alone of these has how boxes are held beside the inspector.
func TestEachReaderHasTheirPages(t *testing.T) {
	ix := index.New(plantest.House(5, 40))
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	titles := func(r Reader) (all []string) {
		pages, err := Build(ix, result, Options{Reader: r})
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range pages {
			all = append(all, p.Meta.Title)
		}
		return all
	}
	has := func(all []string, title string) bool {
		return slices.ContainsFunc(all, func(t string) bool { return slices.Contains(strings.Split(t, " · "), title) })
	}
	set := titles(ForAll)
	if !slices.Equal(set, titles("")) {
		t.Error("the usual set is not the whole")
	}
	for _, r := range Readers {
		pages := titles(r)
		if len(pages) == 0 || pages[0] != set[0] {
			t.Errorf("%s begins with %v, want the plan, %q", r, pages, set[0])
		}
		if got, want := has(pages, "Framing and blocks"), r == ForAll || r == ForCrew || r == ForInspector; got != want {
			t.Errorf("%s has how boxes are held: %v, want %v", r, got, want)
		}
	}
	if _, err := ReaderNamed("plumber"); err == nil {
		t.Error("a plumber has pages")
	}
}
