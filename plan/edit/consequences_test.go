package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

// What goes and what stays follows from the shed: see its comment.
func TestConsequencesTellWhatGoesAlong(t *testing.T) {
	p := shed(t)
	for _, tt := range []struct {
		name        string
		edit        edit.Edit
		goes, stays []plan.ID
	}{
		{"the bench takes its sink and opening", edit.Remove{Things: []plan.ID{bench}}, []plan.ID{sink, front}, nil},
		{"the panel takes its cable, and its circuit stays", edit.Remove{Things: []plan.ID{panel}}, []plan.ID{feed}, []plan.ID{circuit}},
		{"openings and cable of a circuit stay", edit.Remove{Things: []plan.ID{circuit}}, nil, []plan.ID{feed, run}},
		{"an opening takes its cables", edit.Remove{Things: []plan.ID{n1}}, []plan.ID{feed, run}, nil},
		{"a switch leaves its control and the question about it", edit.Remove{Things: []plan.ID{n2}}, []plan.ID{run}, []plan.ID{control, question}},
		{"switch and lamp together take the control", edit.Remove{Things: []plan.ID{n2, lamp}}, []plan.ID{run, control}, []plan.ID{question}},
		{"a move takes nothing", edit.MoveOpening{ID: n1, To: plan.OnFace(north, 4*ft)}, nil, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			all, err := edit.Consequences(p, tt.edit)
			if err != nil {
				t.Fatal(err)
			}
			var goes, stays []plan.ID
			for _, c := range all {
				if c.Text.IsZero() {
					t.Errorf("%s has no name", c.ID)
				}
				if c.Goes {
					goes = append(goes, c.ID)
				} else {
					stays = append(stays, c.ID)
				}
			}
			if !sameIDs(goes, tt.goes) || !sameIDs(stays, tt.stays) {
				t.Errorf("%v go and %v stay, want %v and %v", goes, stays, tt.goes, tt.stays)
			}
		})
	}
	if _, err := edit.Consequences(p, edit.Remove{Things: []plan.ID{"oaaaaaaaa"}}); err == nil {
		t.Error("what is not in the plan goes with something")
	}
}

// A control that goes because all it named goes is no longer named either.
func TestADecisionForgetsAControlThatGoes(t *testing.T) {
	d := plan.Decision{ID: "dcntr2222", Question: "Which switch?", About: []plan.ID{control}}
	p := after(t, shed(t), edit.Add{Thing: &d}, edit.Remove{Things: []plan.ID{n2, lamp}})
	if now, _ := p.Decisions.Get(d.ID); now == nil || len(now.About) != 0 {
		t.Errorf("the decision is %+v, want one about nothing", now)
	}
}
