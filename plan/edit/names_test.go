package edit_test

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/words"
	"testing"
)

// Each edit is named as a menu and undo name it: by what it does and to what.
func TestEditsAreNamed(t *testing.T) {
	one := func(id plan.ID) []plan.ID { return []plan.ID{id} }
	two := []plan.ID{n1, n2}
	for _, tt := range []struct {
		edit edit.Edit
		want string
	}{
		{arrange.Move{Things: one(n1)}, "Move opening"}, {arrange.Move{Things: one(door)}, "Move door or window"}, {arrange.Move{Things: one(bench)}, "Move cabinet or furniture"},
		{arrange.Move{Things: one(shedRoom)}, "Move room"}, {arrange.Move{Things: one(north)}, "Move side"}, {arrange.Move{Things: two}, "Move what is selected"},
		{arrange.Move{Things: one(circuit)}, "Move what is selected"}, {arrange.Move{}, "Move what is selected"},
		{arrange.SetApart{ID: n1}, "Move opening"}, {arrange.SetApart{ID: window}, "Move door or window"},
		{edit.Remove{Things: one(n1)}, "Delete opening"}, {edit.Remove{Things: one(north)}, "Delete corner"}, {edit.Remove{Things: one(ground)}, "Delete level"},
		{edit.Remove{Things: one(feed)}, "Delete cable"}, {edit.Remove{Things: two}, "Delete 2 things"}, {edit.Removing(n1, n2, lamp), "Delete 3 things"},
		{arrange.Turn{}, "Turn what is selected"}, {arrange.Mirror{}, "Mirror what is selected"},
		{edit.Steps{}, ""}, {edit.Steps{Edits: []edit.Edit{edit.Retag{}, arrange.Turn{}}}, "Change tag"},
		{edit.Steps{Label: words.New("test.label", "Both"), Edits: []edit.Edit{edit.Retag{}}}, "Both"}, {edit.Steps{Label: words.New("test.label", "None")}, "None"},
		{edit.Succeed{Status: plan.StatusMoved}, "Move existing opening"}, {edit.Succeed{Status: plan.StatusReplaced}, "Replace existing opening"},
		{edit.SetCondition{Condition: plan.ConditionClosed}, "Mark walls and ceiling: stays closed"}, {edit.SetStatus{Status: plan.StatusExisting}, "Mark opening existing"},
		{edit.AddBreak{Break: plan.Break{Kind: plan.BreakWindow}}, "Add window"}, {edit.ChangeFixture{Fixture: plan.Fixture{Kind: plan.FixtureBed}}, "Change bed"},
		{edit.BeginControl{}, "Add control"}, {edit.JoinControl{}, "Change control"}, {edit.LeaveControl{}, "Change control"}, {edit.ChangeCircuit{}, "Change circuit"},
		{edit.PairUp{}, "Bind a pair"}, {edit.Add{Thing: &plan.Level{}}, "Add"}, {edit.Change{Thing: &plan.Side{}}, "Change"},
	} {
		if got := tt.edit.Name().String(); got != tt.want {
			t.Errorf("%#v is named %q, want %q", tt.edit, got, tt.want)
		}
	}
}
