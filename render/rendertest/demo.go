package rendertest

import (
	"path/filepath"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan/file"
	"studbay/plan/index"
)

// Demos returns the plans that travel with the program, each with what is found in it.
func Demos(t testing.TB) map[string]*index.Index {
	t.Helper()
	names, err := filepath.Glob("../../assets/demo/*.studbay")
	if err != nil || len(names) < 2 {
		t.Fatalf("%d demos, %v", len(names), err)
	}
	all := map[string]*index.Index{}
	for _, name := range names {
		p, _, err := file.Load(name)
		if err != nil {
			t.Fatal(err)
		}
		all[filepath.Base(name)] = index.New(p)
	}
	return all
}

// Found returns what is found in a plan.
func Found(t testing.TB, ix *index.Index) []rule.Finding {
	t.Helper()
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return result.All()
}
