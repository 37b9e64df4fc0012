package edit_test

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

// What is said of walls and ceilings of some rooms is said of all their sides; zones keep
// what is said of them, and nothing else changes.
func TestAConditionIsOfAllSidesAndTheCeiling(t *testing.T) {
	ref, _ := shed(t).Side(north)
	side := *ref.Side()
	side.Zones = []plan.Zone{{From: ft, To: 2 * ft, Condition: plan.ConditionNew}}
	p := after(t, shed(t), edit.ChangeSide{Side: side})
	now := after(t, p, edit.SetCondition{Rooms: []plan.ID{shedRoom, shedRoom}, Condition: plan.ConditionClosed})
	r := room(t, now)
	if r.Overhead != plan.ConditionClosed || r.Condition() != plan.ConditionClosed {
		t.Errorf("the ceiling is %q, all %q", r.Overhead, r.Condition())
	}
	for _, s := range r.Sides {
		if s.Condition != plan.ConditionClosed {
			t.Errorf("side %s is %q", s.ID, s.Condition)
		}
	}
	if zones := r.Sides[0].Zones; len(zones) != 1 || !plan.Same(&zones[0], &side.Zones[0]) {
		t.Errorf("the zones are %+v", zones)
	}
	if back := after(t, now, edit.SetCondition{Rooms: []plan.ID{shedRoom}}); !plan.Equal(back, p) {
		t.Error("with nothing said again it is another plan")
	}
	refused(t, p, edit.SetCondition{Rooms: []plan.ID{shedRoom}, Condition: "torn down"}, nil)
}

func TestAProbeIsAddedToTheOthers(t *testing.T) {
	first, second := plan.Probe{From: 3 * in, To: 5 * in, What: "pipe"}, plan.Probe{From: ft, To: 2 * ft, Clear: true}
	p := after(t, shed(t), edit.AddProbe{Side: east, Probe: first}, edit.AddProbe{Side: east, Probe: second})
	ref, _ := p.Side(east)
	if got := ref.Side().Probes; !slices.Equal(got, []plan.Probe{first, second}) {
		t.Errorf("the probes are %+v", got)
	}
	refused(t, p, edit.AddProbe{Side: east, Probe: plan.Probe{From: ft, To: ft}}, nil)
}

// Of a cable that is in the wall nobody has said whether it carries a ground. To say again
// what is said changes nothing.
func TestCablesThatAreThere(t *testing.T) {
	type grounding struct{ existing, ground, unseen bool }
	of := func(p plan.Plan) grounding {
		c, _ := p.Cables.Get(feed)
		return grounding{c.Existing, c.Ground, c.GroundUnseen}
	}
	there, new := edit.SetCableExisting{ID: feed, Existing: true}, edit.SetCableExisting{ID: feed}
	say := func(a plan.Answer) edit.Edit { return edit.SetGrounding{ID: feed, Answer: a} }
	for _, tt := range []struct {
		name  string
		edits []edit.Edit
		want  grounding
	}{
		{"as drawn, with a ground", nil, grounding{false, true, false}},
		{"said to be new, as it is", []edit.Edit{new}, grounding{false, true, false}},
		{"in the wall", []edit.Edit{there}, grounding{true, false, true}},
		{"in the wall, seen", []edit.Edit{there, say(plan.AnswerYes)}, grounding{true, true, false}},
		{"in the wall, seen, said again", []edit.Edit{there, say(plan.AnswerYes), there}, grounding{true, true, false}},
		{"in the wall, without", []edit.Edit{there, say(plan.AnswerNo)}, grounding{true, false, false}},
		{"in the wall, taken back", []edit.Edit{there, say(plan.AnswerNo), say(plan.Unsaid)}, grounding{true, false, true}},
	} {
		if got := of(after(t, shed(t), tt.edits...)); got != tt.want {
			t.Errorf("%s: %+v, want %+v", tt.name, got, tt.want)
		}
	}
}

// The way of a cable is one of those that there are.
func TestTheWayOfACable(t *testing.T) {
	p := after(t, shed(t), edit.SetWay{ID: feed, Way: plan.WayCellar})
	was, _ := p.Cables.Get(feed)
	if now, _ := after(t, p, edit.SetWay{ID: feed, Way: plan.WayCellar}).Cables.Get(feed); now != was {
		t.Error("the same way again changes the cable")
	}
	if c, _ := p.Cables.Get(feed); c.Way != plan.WayCellar {
		t.Errorf("it goes %q", c.Way)
	}
	if back := after(t, p, edit.SetWay{ID: feed}); !plan.Equal(back, shed(t)) {
		t.Error("with nothing said again it is another plan")
	}
	refused(t, p, edit.SetWay{ID: feed, Way: "through the chimney"}, nil)
	refused(t, p, edit.SetWay{ID: "knowhere22", Way: plan.WayAttic}, plan.ErrGone)
}

// A decision settled about things of every kind is noted on each that has a note, and on
// the room of a side, once; what was noted before stays above.
func TestADecisionIsNotedOnEveryKind(t *testing.T) {
	const id, said = "dsett2222", "How? So."
	d := plan.Decision{ID: id, Question: "How?", About: []plan.ID{n1, window, bench, east, north, shedRoom, feed}}
	p := after(t, shed(t), edit.SetNote{ID: n1, Note: "Before."}, edit.Add{Thing: &d}, edit.SettleDecision{ID: id, Said: said})
	w, _ := p.Break(window)
	b, _ := p.Fixture(bench)
	if opening(t, p, n1).Note != "Before.\n"+said || w.Note != said || b.Note != said || room(t, p).Note != said {
		t.Errorf("noted %q, %q, %q and %q", opening(t, p, n1).Note, w.Note, b.Note, room(t, p).Note)
	}
	if _, ok := p.Decisions.Get(id); ok || p.Decisions.Len() != 1 {
		t.Error("the decision is still open, or the other one is not")
	}
	if lampNote := opening(t, p, lamp).Note; lampNote != "" {
		t.Errorf("what it was not about has the note %q", lampNote)
	}
}

// What goes and what stays is told in a sentence each, none where there is nothing.
func TestConsequencesAreTold(t *testing.T) {
	tell := func(e edit.Edit) (all []string) {
		told, err := edit.Consequences(shed(t), e)
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range edit.Telling(told) {
			all = append(all, s.String())
		}
		return all
	}
	for _, tt := range []struct {
		edit edit.Edit
		want []string
	}{
		{edit.Removing(lamp), []string{"These stay, without it: the control."}},
		{edit.Removing(bench), []string{"These go with it: the sink, opening S4."}},
		{edit.Removing(panel), []string{"These go with it: the cable.", "These stay, without it: circuit 3."}},
		{edit.Removing(door), nil},
		{edit.MoveOpening{ID: n1, To: plan.OnFace(north, ft)}, nil},
	} {
		if got := tell(tt.edit); !slices.Equal(got, tt.want) {
			t.Errorf("%#v tells %q, want %q", tt.edit, got, tt.want)
		}
	}
}
