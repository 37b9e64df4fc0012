package edit_test

import (
	"errors"
	"fmt"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"testing"
)

// Each edit of something that is not in the plan says what kind of thing is no longer
// there, and so does each that names another thing beside it.
func TestEveryEditSaysWhatIsNotThere(t *testing.T) {
	const (
		noOpening, noRoom, noSide, noBreak, noFixture, noLevel = "ozzzzzzzz", "rzzzzzzzz", "szzzzzzzz", "bzzzzzzzz", "fzzzzzzzz", "vzzzzzzzz"
		noCable, noControl, noDecision, noCircuit              = "czzzzzzzz", "tzzzzzzzz", "dzzzzzzzz", "kzzzzzzzz"
	)
	things := func(ids ...plan.ID) []plan.ID { return ids }
	opening, room, side := plan.Opening{ID: noOpening}, plan.Room{ID: noRoom}, plan.Side{ID: noSide}
	for want, edits := range map[string][]edit.Edit{
		"the opening": {
			edit.MoveOpening{ID: noOpening}, edit.SetHeight{ID: noOpening}, edit.ChangeOpening{Opening: opening}, edit.SetAssembly{ID: noOpening},
			edit.SetContents{ID: noOpening}, edit.SetStatus{ID: noOpening}, edit.Retag{ID: noOpening}, edit.ChangeKind{ID: noOpening},
			edit.SetListed{ID: noOpening}, edit.SetCircuit{ID: noOpening}, edit.SetNote{ID: noOpening}, edit.Change{Thing: &opening},
			arrange.SetHeights{Things: things(noOpening)}, edit.ToStuds{Moves: []edit.StudMove{{ID: noOpening}}}, edit.ToSteps{Places: []edit.StepPlace{{ID: noOpening}}},
			edit.PairUp{Opening: noOpening, About: north}, edit.Succeed{Old: noOpening}, edit.SetFate{ID: noOpening},
			arrange.Move{Things: things(n1, noOpening)}, arrange.Turn{Things: things(n1, noOpening)}, arrange.Mirror{Things: things(n1, noOpening)},
			arrange.Spread{Things: things(n1, n2, noOpening)}, arrange.AlignHeights{To: noOpening, Things: things(n1)}, arrange.AlignHeights{To: n1, Things: things(noOpening)},
			arrange.SameDistance{As: noOpening, Things: things(n1)}, arrange.SameDistance{As: n1, Things: things(noOpening)},
			arrange.MeasureFrom{ID: noOpening, From: n1}, arrange.MeasureFrom{ID: n1, From: noOpening},
			arrange.SetApart{ID: noOpening, From: n1}, arrange.SetApart{ID: n1, From: noOpening}, edit.Remove{Things: things(noOpening)},
			arrange.MoveDoor{ID: door, To: plan.OnFace(south, 2*ft), With: things(noOpening)},
		},
		"the door, window or cased opening": {
			edit.MoveBreak{ID: noBreak}, edit.ChangeBreak{Break: plan.Break{ID: noBreak}}, arrange.MoveDoor{ID: noBreak}, edit.Remove{Things: things(noBreak)},
			arrange.Move{Things: things(noBreak)},
		},
		"the cabinet or furniture": {
			edit.MoveFixture{ID: noFixture}, edit.ChangeFixture{Fixture: plan.Fixture{ID: noFixture}}, edit.Remove{Things: things(noFixture)}, arrange.Turn{Things: things(noFixture)},
		},
		"the room": {
			edit.ChangeRoom{Room: room}, edit.MoveRoom{ID: noRoom}, edit.RenameRoom{ID: noRoom}, edit.SetCondition{Rooms: things(shedRoom, noRoom)},
			edit.Remove{Things: things(noRoom)}, arrange.Mirror{Things: things(noRoom)},
		},
		"the side": {
			edit.ChangeSide{Side: side}, edit.MoveCorner{Side: noSide}, edit.MoveSide{Side: noSide}, edit.SetSideLength{Side: noSide}, edit.SplitSide{Side: noSide, NewID: "saaaaaaaa"},
			edit.RemoveCorner{Side: noSide}, edit.SetStuds{Side: noSide}, edit.SetTape{Side: noSide}, edit.AddProbe{Side: noSide}, edit.Remove{Things: things(noSide)}, arrange.Move{Things: things(noSide)},
		},
		"the level": {
			edit.ChangeLevel{ID: noLevel}, edit.Add{Thing: &plan.Room{ID: "raaaaaaaa"}, Level: noLevel}, edit.Remove{Things: things(noLevel)},
			edit.AddRoom{Level: noLevel, Room: room}, edit.AddRoom{Room: room},
		},
		"the cable":             {edit.SetCableExisting{ID: noCable}, edit.SetGrounding{ID: noCable}, edit.Change{Thing: &plan.Cable{ID: noCable}}},
		"the control":           {edit.JoinControl{ID: noControl, Opening: n1}, edit.LeaveControl{ID: noControl, Opening: n1}},
		"the decision":          {edit.SettleDecision{ID: noDecision}, edit.Change{Thing: &plan.Decision{ID: noDecision}}},
		"the circuit":           {edit.ChangeCircuit{Circuit: plan.Circuit{ID: noCircuit}}, edit.Remove{Things: things(circuit, noCircuit)}},
		"the pair":              {edit.Change{Thing: &plan.Pair{ID: "pzzzzzzzz"}}},
		"the amendment":         {edit.Change{Thing: &plan.Amendment{ID: "azzzzzzzz"}}},
		"what a client said":    {edit.Change{Thing: &plan.Wish{ID: "qzzzzzzzz"}}},
		"the finding set aside": {edit.Change{Thing: &plan.Waiver{ID: "wzzzzzzzz"}}},
	} {
		for _, e := range edits {
			next, err := e.Apply(shed(t))
			if !errors.Is(err, plan.ErrGone) || err.Error() != want+" is no longer in the plan" {
				t.Errorf("%#v: %v, want that %s is gone", e, err, want)
			}
			if !same(next, plan.Plan{}) {
				t.Errorf("%#v: is refused and gives a plan", e)
			}
		}
	}
}

// What an edit names beside the thing that it is of must be there too.
func TestEveryEditNeedsWhatItNames(t *testing.T) {
	for name, e := range map[string]edit.Edit{
		"a circuit":                edit.SetCircuit{ID: n1, Circuit: "kzzzzzzzz"},
		"a switch":                 edit.BeginControl{ID: "taaaaaaaa", Switch: "ozzzzzzzz", Opening: n1},
		"a lamp":                   edit.BeginControl{ID: "taaaaaaaa", Switch: n1, Opening: "ozzzzzzzz"},
		"a second switch":          edit.BeginControl{ID: "taaaaaaaa", Switch: n1, Opening: "ozzzzzzzz", IsSwitch: true},
		"what joins a control":     edit.JoinControl{ID: control, Opening: "ozzzzzzzz"},
		"what a wish is about":     edit.TakeWishes{Wishes: []*plan.Wish{{ID: "qaaaaaaaa", Kind: plan.WishAgreed, About: "ozzzzzzzz"}}},
		"the wall of a copy":       arrange.Paste{Clip: arrange.ClipOf(shed(t), []plan.ID{n1}), As: []plan.ID{"oaaaaaaaa"}, Onto: "szzzzzzzz"},
		"the room of a copy":       arrange.Paste{Clip: arrange.ClipOf(shed(t), []plan.ID{n1}), As: []plan.ID{"oaaaaaaaa"}, Onto: "rzzzzzzzz"},
		"the level of a copy":      arrange.Paste{Clip: arrange.ClipOf(shed(t), []plan.ID{n1}), As: []plan.ID{"oaaaaaaaa"}, Level: "vzzzzzzzz"},
		"the place of an opening":  edit.MoveOpening{ID: n1, To: plan.OnFace("szzzzzzzz", ft)},
		"the place of a fixture":   edit.MoveFixture{ID: bench, To: plan.OnFace("szzzzzzzz", ft)},
		"the place of a door":      edit.MoveBreak{ID: door, To: plan.OnFace("szzzzzzzz", ft)},
		"the place of a new thing": edit.AddFixture{Fixture: plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureBed, At: plan.OnFloor("rzzzzzzzz", at(ft, ft)), Width: ft}},
	} {
		t.Run(name, func(t *testing.T) { refused(t, shed(t), e, plan.ErrGone) })
	}
}

// An ID that something has is given to nothing else.
func TestNoIDIsGivenTwice(t *testing.T) {
	for _, e := range []edit.Edit{
		edit.AddLevel{ID: ground}, arrange.CopyLevel{ID: ground}, edit.AddBreak{Break: plan.Break{ID: door}}, edit.AddFixture{Fixture: plan.Fixture{ID: bench}},
		edit.AddOpening{Opening: plan.Opening{ID: n1}}, edit.BeginControl{ID: control, Switch: n1, Opening: lamp},
		edit.SplitSide{Side: north, At: ft, NewID: east}, edit.MoveSide{Side: north, By: ft, Joints: [2]plan.ID{"", east}},
		arrange.Paste{Clip: arrange.ClipOf(shed(t), []plan.ID{n1}), As: []plan.ID{n2}, Along: ft},
		edit.Succeed{Old: n1, By: plan.Opening{ID: n2}, Status: plan.StatusMoved},
	} {
		p := shed(t)
		if _, is := e.(edit.Succeed); is {
			p = after(t, p, edit.SetStatus{ID: n1, Status: plan.StatusExisting})
		}
		t.Run(fmt.Sprintf("%T", e), func(t *testing.T) { refused(t, p, e, plan.ErrTaken) })
	}
}
