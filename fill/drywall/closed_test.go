package drywall

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
)

// A strip from 24 to 72 in of a wall 144 long and 96 high is opened: it is 48 in wide and takes
// one piece a row, and its two edges are joined to the plaster, 8 ft each, beside the joint
// between the rows, 4 ft.
func TestBoardLeavesWhatStaysClosed(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
	s := r.Sides[0]
	s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	s.Condition = plan.ConditionClosed
	s.Zones = []plan.Zone{{From: ruletest.In(24), To: ruletest.In(72), Condition: plan.ConditionOpened}}
	r.Opening("duplex", r.On(0, 50), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "PN1"} })
	v := view(t, h, r.Room.ID)
	l := lay(wallOf(&v), Way{Long12, false})
	if got, want := pieces(l), "A 24-72 0-48; B 24-72 48-96"; got != want {
		t.Errorf("pieces %s, want %s", got, want)
	}
	if want := ruletest.In(96 + 96 + 48); l.Joints != want {
		t.Errorf("joints of %v, want %v", l.Joints, want)
	}
	if len(l.Holes) != 1 || l.Pieces[l.Holes[0].Piece].Letter != "A" {
		t.Errorf("holes %+v", l.Holes)
	}
	if up := lay(wallOf(&v), Way{Long8, true}); pieces(up) != "A 24-48 0-96; B 48-72 0-96" {
		t.Errorf("on end: %s", pieces(up))
	}
	if len(l.Sheets.Boards) != 1 {
		t.Errorf("%d sheets of 12 ft, want one", len(l.Sheets.Boards))
	}
}

// Of a wall that stays closed 24 to 48 in is opened and 48 to 72 new: they are one part, with
// no joint at 48.
func TestPartsThatTouchAreBoardedAsOne(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
	s := r.Sides[0]
	s.Condition = plan.ConditionClosed
	s.Zones = []plan.Zone{
		{From: ruletest.In(24), To: ruletest.In(48), Condition: plan.ConditionOpened}, {From: ruletest.In(48), To: ruletest.In(72), Condition: plan.ConditionNew},
	}
	r.Opening("duplex", r.On(0, 50))
	v := view(t, h, r.Room.ID)
	if got, want := pieces(lay(wallOf(&v), Way{Long12, false})), "A 24-72 0-48; B 24-72 48-96"; got != want {
		t.Errorf("pieces %s, want %s", got, want)
	}
}
