package edit_test

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/words"
)

// same reports whether two plans hold the very same nouns.
func same(a, b plan.Plan) bool {
	return plan.Diff(a, b).IsEmpty() && slices.Equal(a.Levels, b.Levels)
}

// edited applies one drawn edit and holds what every edit promises.
func edited(t *rapid.T, p plan.Plan) plan.Plan { return applied(t, p, plantest.Edit(t, p)) }

func applied(t interface{ Fatalf(string, ...any) }, p plan.Plan, e edit.Edit) plan.Plan {
	before := frozen(p)
	next, err := e.Apply(p)
	if !reflect.DeepEqual(before, frozen(p)) {
		t.Fatalf("%#v wrote to the plan it was given", e)
	}
	if err != nil {
		var r *plan.Refusal
		if !errors.As(err, &r) || r.Error() == "" || r.Text.ID == "" {
			t.Fatalf("%#v: %#v is no refusal in words", e, err)
		}
		if !same(next, plan.Plan{}) {
			t.Fatalf("%#v: refused with %v, yet returned a plan", e, err)
		}
		return p
	}
	if err := plan.Check(next); err != nil {
		t.Fatalf("after %#v: %v", e, err)
	}
	again, err := e.Apply(p)
	if err != nil || !plan.Equal(next, again) {
		t.Fatalf("%#v gives two different plans (%v)", e, err)
	}
	if e.Name().IsZero() {
		t.Fatalf("%#v has no name", e)
	}
	return next
}

// frozen copies out every noun of a plan, one level deep: enough to see one written to.
func frozen(p plan.Plan) (nouns []any) {
	if p.Header != nil {
		nouns = append(nouns, *p.Header)
	}
	for _, l := range p.Levels {
		nouns = append(nouns, *l)
		nouns = append(nouns, copies(l.Rooms)...)
		nouns = append(nouns, copies(l.Breaks)...)
		nouns = append(nouns, copies(l.Fixtures)...)
		nouns = append(nouns, copies(l.Openings)...)
		for r := range l.Rooms.All() {
			for _, s := range r.Sides {
				nouns = append(nouns, *s)
			}
		}
	}
	for _, wide := range [][]any{copies(p.Circuits), copies(p.Cables), copies(p.Controls), copies(p.Pairs), copies(p.Decisions), copies(p.Waivers), copies(p.Amendments)} {
		nouns = append(nouns, wide...)
	}
	return nouns
}

func copies[T plan.Noun](set plan.Set[T]) (out []any) {
	for noun := range set.All() {
		out = append(out, reflect.ValueOf(noun).Elem().Interface())
	}
	return out
}

func TestEveryEditKeepsThePlanSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.Start(t)
		for range rapid.IntRange(1, 60).Draw(t, "edits") {
			p = edited(t, p)
		}
	})
}

func FuzzEdits(f *testing.F) {
	f.Fuzz(func(t *testing.T, text []byte) {
		s := plantest.NewScript(text[:min(len(text), 4000)])
		p := s.Start()
		for e, ok := s.Edit(p); ok; e, ok = s.Edit(p) {
			p = applied(t, p, e)
		}
	})
}

func TestUndoAllThenRedoAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first := plantest.Random(t)
		h := edit.NewHistory(first, 0)
		walk(t, h)
		last := h.Plan()
		steps := 0
		for ; h.CanUndo(); steps++ {
			if h.UndoName().IsZero() || !h.Undo() {
				t.Fatal("a step without a name, or that cannot be undone")
			}
		}
		if !same(h.Plan(), first) || !plan.Equal(h.Plan(), first) || h.IsDirty() {
			t.Fatal("undone to the start, the plan is not the first")
		}
		for range steps {
			if h.RedoName().IsZero() || !h.Redo() {
				t.Fatal("a step without a name, or that cannot be redone")
			}
		}
		if !same(h.Plan(), last) {
			t.Fatal("redone as often as undone, the plan is not as it was")
		}
	})
}

// walk does edits, gestures, undos and redos at random and ends in no gesture.
func walk(t *rapid.T, h *edit.History) {
	for range rapid.IntRange(1, 30).Draw(t, "steps") {
		switch rapid.IntRange(0, 9).Draw(t, "step") {
		case 0:
			h.Begin(words.Text{})
		case 1:
			h.End()
		case 2:
			h.Undo()
		case 3:
			h.Redo()
		default:
			before := h.Plan()
			if err := h.Do(plantest.Edit(t, before)); err != nil && !same(before, h.Plan()) {
				t.Fatal("a refused edit changed the plan")
			}
		}
	}
	h.End()
}

func TestRandomPlansAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		if err := plan.Check(plantest.Random(t)); err != nil {
			t.Fatal(err)
		}
	})
}

func TestHousesAreSound(t *testing.T) {
	for _, openings := range []int{0, 1, 7, 10, 11, 200, 10_000} {
		p := plantest.House(3, openings)
		if err := plan.Check(p); err != nil {
			t.Errorf("House(3, %d): %v", openings, err)
		}
		if got := p.Levels[0].Openings.Len(); got != openings {
			t.Errorf("House(3, %d) has %d openings", openings, got)
		}
		if !plan.Equal(p, plantest.House(3, openings)) {
			t.Errorf("House(3, %d) differs from time to time", openings)
		}
	}
}
