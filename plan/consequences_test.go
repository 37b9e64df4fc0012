package plan_test

import (
	"testing"

	"studbay/plan"
)

// What goes and what stays follows from the shed: see its comment.
func TestConsequencesTellWhatGoesAlong(t *testing.T) {
	p := shed(t)
	for _, tt := range []struct {
		name        string
		edit        plan.Edit
		goes, stays []plan.ID
	}{
		{"the bench takes its sink and opening", plan.Remove{Things: []plan.ID{bench}}, []plan.ID{sink, front}, nil},
		{"the panel takes its cable, and its circuit stays", plan.Remove{Things: []plan.ID{panel}}, []plan.ID{feed}, []plan.ID{circuit}},
		{"openings and cable of a circuit stay", plan.Remove{Things: []plan.ID{circuit}}, nil, []plan.ID{feed, run}},
		{"an opening takes its cables", plan.Remove{Things: []plan.ID{n1}}, []plan.ID{feed, run}, nil},
		{"a switch leaves its control and the question about it", plan.Remove{Things: []plan.ID{n2}}, []plan.ID{run}, []plan.ID{control, question}},
		{"switch and lamp together take the control", plan.Remove{Things: []plan.ID{n2, lamp}}, []plan.ID{run, control}, []plan.ID{question}},
		{"a move takes nothing", plan.MoveOpening{ID: n1, To: plan.OnFace(north, 4*ft)}, nil, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			all, err := plan.Consequences(p, tt.edit)
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
	if _, err := plan.Consequences(p, plan.Remove{Things: []plan.ID{"oaaaaaaaa"}}); err == nil {
		t.Error("what is not in the plan goes with something")
	}
}

// A control that goes because all it named goes is no longer named either.
func TestADecisionForgetsAControlThatGoes(t *testing.T) {
	d := plan.Decision{ID: "dcntr2222", Question: "Which switch?", About: []plan.ID{control}}
	p := after(t, shed(t), plan.Add{Thing: &d}, plan.Remove{Things: []plan.ID{n2, lamp}})
	if now, _ := p.Decisions.Get(d.ID); now == nil || len(now.About) != 0 {
		t.Errorf("the decision is %+v, want one about nothing", now)
	}
}
