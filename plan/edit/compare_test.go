package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

func TestCompareCountsWhatNounsSay(t *testing.T) {
	old := shed(t)
	if d := plan.Compare(old, copied(t, old)); d != (plan.Difference{}) {
		t.Errorf("a plan and its copy differ by %+v", d)
	}
	r := *room(t, old)
	r.Ceiling = 9 * ft
	now := after(t, copied(t, old),
		edit.ChangeRoom{Room: r},
		edit.MoveOpening{ID: n1, To: plan.OnFace(north, 4*ft)},
		edit.Remove{Things: []plan.ID{front}},
		edit.Remove{Things: []plan.ID{window}},
		edit.Remove{Things: []plan.ID{question}},
		edit.Add{Thing: &plan.Circuit{ID: "knew22222", Number: "4", Amps: 20, Volts: 120, Poles: 1}},
	)
	want := plan.Difference{
		Rooms:    plan.Tally{Altered: 1},
		Openings: plan.Tally{Altered: 1, Gone: 1},
		Others:   plan.Tally{Added: 1, Gone: 2},
	}
	if got := plan.Compare(old, now); got != want {
		t.Errorf("they differ by %+v, want %+v", got, want)
	}
	back := plan.Compare(now, old)
	if back.Openings != (plan.Tally{Added: 1, Altered: 1}) || back.Others != (plan.Tally{Added: 2, Gone: 1}) {
		t.Errorf("the other way round they differ by %+v", back)
	}
}
