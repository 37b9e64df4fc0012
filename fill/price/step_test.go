package price

import "testing"

// Lines come and go at their places, and the book they were made from stays as it was.
func TestStepsComeAndGo(t *testing.T) {
	old := Trial()
	n := len(old.Recipes())
	more, err := old.WithNewStep("steel", PerCable, "staple")
	if err != nil {
		t.Fatal(err)
	}
	steps := more.Recipes()
	if last := steps[len(steps)-1]; len(steps) != n+1 || last.When != "steel" || last.Per != PerCable || last.Part != "staple" || last.Count != 1 || len(last.when) != 1 {
		t.Errorf("of %d the last is %+v", len(steps), last)
	}
	if minutes, err := old.WithNewStep("", PerBox, ""); err != nil || minutes.Recipes()[n].Count != 0 {
		t.Errorf("one of minutes alone: %v", err)
	}
	for _, bad := range [][3]string{{"golden", "box", "staple"}, {"", "week", "staple"}, {"", "box", "crown jewel"}} {
		if _, err := old.WithNewStep(bad[0], Per(bad[1]), bad[2]); err == nil {
			t.Errorf("%v is taken", bad)
		}
	}
	less := more.WithoutStep(0)
	if len(less.Recipes()) != n || less.Recipes()[0].When != steps[1].When || len(old.Recipes()) != n || len(more.Recipes()) != n+1 {
		t.Error("a line is not gone from its place, or from a book that should have stayed")
	}
	for len(less.Recipes()) > 1 {
		less = less.WithoutStep(len(less.Recipes()) - 1)
	}
	if got := less.WithoutStep(0); len(got.Recipes()) != 1 {
		t.Errorf("without its last line it has %d", len(got.Recipes()))
	}
}
