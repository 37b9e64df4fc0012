package edit_test

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
)

func TestOpeningsJoinAndLeaveAControl(t *testing.T) {
	const id plan.ID = "tcaaaaaaa"
	p := after(t, shed(t), edit.Add{Thing: &plan.Control{ID: id, Switches: []plan.ID{n1}}})
	control := func(p plan.Plan) plan.Control {
		c, ok := p.Controls.Get(id)
		if !ok {
			t.Fatal("the control is gone")
		}
		return *c
	}
	joined := after(t, p, edit.JoinControl{ID: id, Opening: front, IsSwitch: true}, edit.JoinControl{ID: id, Opening: n2})
	if c := control(joined); !slices.Equal(c.Switches, []plan.ID{n1, front}) || !slices.Equal(c.Loads, []plan.ID{n2}) {
		t.Errorf("joined, it is %+v", c)
	}
	if c := control(p); len(c.Switches) != 1 || len(c.Loads) != 0 {
		t.Errorf("the plan before has %+v", c)
	}
	if same := after(t, joined, edit.JoinControl{ID: id, Opening: n2}, edit.LeaveControl{ID: id, Opening: "oaaaaaaaa"}); !plan.Equal(same, joined) {
		t.Error("joining twice, or leaving without being in it, changes something")
	}
	left := after(t, joined, edit.LeaveControl{ID: id, Opening: n1}, edit.LeaveControl{ID: id, Opening: n2})
	if c := control(left); !slices.Equal(c.Switches, []plan.ID{front}) || len(c.Loads) != 0 {
		t.Errorf("left by two, it is %+v", c)
	}
	if _, ok := after(t, left, edit.LeaveControl{ID: id, Opening: front}).Controls.Get(id); ok {
		t.Error("a control that the last has left is still there")
	}
	refused(t, p, edit.JoinControl{ID: id, Opening: "oaaaaaaaa"}, plan.ErrGone)
	refused(t, p, edit.JoinControl{ID: "tcbbbbbbb", Opening: n2}, plan.ErrGone)
	refused(t, p, edit.LeaveControl{ID: "tcbbbbbbb", Opening: n2}, plan.ErrGone)
}

func TestASettledDecisionIsNotedOnWhatHangsOnIt(t *testing.T) {
	const id plan.ID = "daaaaaaaa"
	p := after(t, shed(t), edit.Add{Thing: &plan.Decision{ID: id, Question: "Which door?", About: []plan.ID{n1, north, shedRoom}}})
	first := opening(t, p, n1)
	first.Note = "by the bench"
	p = after(t, p, edit.ChangeOpening{Opening: first})
	settled := after(t, p, edit.SettleDecision{ID: id, Said: "Which door? A wide one"})
	if _, ok := settled.Decisions.Get(id); ok {
		t.Error("it is still open")
	}
	if got, want := opening(t, settled, n1).Note, "by the bench\nWhich door? A wide one"; got != want {
		t.Errorf("the opening's note is %q, want %q", got, want)
	}
	if got, want := room(t, settled).Note, "Which door? A wide one"; got != want {
		t.Errorf("the room, named by itself and by a face, has the note %q, want %q", got, want)
	}
	refused(t, shed(t), edit.SettleDecision{ID: id}, plan.ErrGone)
}

func TestAnotherKindBeginsTheBoxAnew(t *testing.T) {
	was := opening(t, shed(t), n1)
	was.Note, was.Devices = "by the bench", []plan.Device{{Kind: "duplex receptacle", Size: 12}}
	p := after(t, shed(t), edit.ChangeOpening{Opening: was},
		edit.ChangeKind{ID: n1, Kind: "quad", Gangs: 2, Assembly: plan.Assembly{Code: "PN2"}})
	now := opening(t, p, n1)
	if now.Kind != "quad" || now.Gangs != 2 || now.Assembly.Code != "PN2" || now.Devices != nil {
		t.Errorf("it is %+v", now)
	}
	if now.At != was.At || now.Height != was.Height || now.Tag != was.Tag || now.Note != was.Note || now.Status != was.Status {
		t.Errorf("its place or what was said of it differs: %+v", now)
	}
	refused(t, shed(t), edit.ChangeKind{ID: "oaaaaaaaa", Kind: "quad"}, plan.ErrGone)
}

// Letters go on after z with aa, ab, as the columns of a spreadsheet do: common practice.
func TestAControlBegunHasTheNextLetter(t *testing.T) {
	p := shed(t)
	var taken []string
	ids := plantest.NewIDs(8)
	for range 28 {
		id := ids.New(plan.KindControl)
		p = after(t, p, edit.BeginControl{ID: id, Switch: n2, Opening: lamp})
		c, _ := p.Controls.Get(id)
		taken = append(taken, c.Letter)
	}
	if taken[0] != "a" || taken[25] != "z" || taken[26] != "aa" || taken[27] != "ab" {
		t.Errorf("the letters are %v", taken)
	}
	refused(t, shed(t), edit.BeginControl{ID: "taaaaaaaa", Switch: n2, Opening: "oaaaaaaaa"}, plan.ErrGone)
}
