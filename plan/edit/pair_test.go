package edit_test

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"testing"
)

// twoLights is a bedroom wall of 144 in with a mirror from 60 to 96, its middle at 78, and a
// light at 54 bound with its like at 102: 24 in off the middle at either hand.
func twoLights(t *testing.T) plan.Plan {
	left := plantest.Duplex()
	left.At.Along, left.Height = 54*unit.Inch, plan.CentreAt(62*unit.Inch)
	return after(t, plantest.Bedroom(),
		edit.AddFixture{Fixture: plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureMirror, At: plan.OnFace("saaaaaaaa", 60*unit.Inch), Width: 36 * unit.Inch, Depth: unit.Inch, Bottom: 42 * unit.Inch, Height: 36 * unit.Inch}},
		edit.AddOpening{Opening: left},
		edit.PairUp{Pair: "paaaaaaaa", Opening: "oaaaaaaaa", About: "faaaaaaaa", New: "obbbbbbbb", Near: unit.Foot})
}

// Each place is worked out by hand from the middle of the mirror.
func TestAPairStaysOne(t *testing.T) {
	move := func(id plan.ID, inches unit.Length) edit.Edit {
		return edit.MoveOpening{ID: id, To: plan.OnFace("saaaaaaaa", inches*unit.Inch)}
	}
	for _, tt := range []struct {
		name        string
		do          edit.Edit
		left, right unit.Length // in inches
		up          unit.Length
	}{
		{"as it was added", edit.Steps{}, 54, 102, 62},
		{"one is moved 4 in nearer", move("oaaaaaaaa", 58), 58, 98, 62},
		{"the other is moved 10 in away", move("obbbbbbbb", 112), 44, 112, 62},
		{"one is raised", edit.SetHeight{ID: "obbbbbbbb", Height: plan.CentreAt(66 * unit.Inch)}, 54, 102, 66},
		{"the mirror is moved 6 in to the right", edit.MoveFixture{ID: "faaaaaaaa", To: plan.OnFace("saaaaaaaa", 66*unit.Inch)}, 60, 108, 62},
		// 36 in becomes 40, from the same left end: the middle is at 80
		{"the mirror is made wider", edit.ChangeFixture{Fixture: plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureMirror, At: plan.OnFace("saaaaaaaa", 60*unit.Inch), Width: 40 * unit.Inch, Depth: unit.Inch, Bottom: 42 * unit.Inch, Height: 36 * unit.Inch}}, 56, 104, 62},
		{"both are moved to where one goes alone", edit.ToStuds{Moves: []edit.StudMove{{ID: "oaaaaaaaa", To: 50 * unit.Inch}, {ID: "obbbbbbbb", To: 106 * unit.Inch}}}, 50, 106, 62},
		// 144 in less each place
		{"the room is mirrored", arrange.Mirror{Things: []plan.ID{"raaaaaaaa"}}, 90, 42, 62},
	} {
		p := after(t, twoLights(t), tt.do)
		one, other := opening(t, p, "oaaaaaaaa"), opening(t, p, "obbbbbbbb")
		if one.At.Along != tt.left*unit.Inch || other.At.Along != tt.right*unit.Inch || one.Height.Value != tt.up*unit.Inch || other.Height != one.Height {
			t.Errorf("%s: at %v and %v, %v and %v high; want %v″, %v″ and %v″", tt.name, one.At.Along, other.At.Along, one.Height.Value, other.Height.Value, tt.left, tt.right, tt.up)
		}
	}
	refused(t, twoLights(t), move("oaaaaaaaa", 0-1), plan.ErrNoRoom)
}

// A pair goes with what it is of, and what is bound takes its like at the other hand.
func TestPairsAreBoundAndUndone(t *testing.T) {
	p := twoLights(t)
	for _, id := range []plan.ID{"oaaaaaaaa", "obbbbbbbb", "faaaaaaaa", "paaaaaaaa"} {
		if left := after(t, p, edit.Remove{Things: []plan.ID{id}}); left.Pairs.Len() != 0 {
			t.Errorf("without %s there is still a pair", id)
		}
	}
	if apart := after(t, p, edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("sbbbbbbbb", unit.Foot)}); opening(t, apart, "obbbbbbbb").At.Along != 102*unit.Inch {
		t.Error("its partner follows to another wall")
	}
	refused(t, p, edit.PairUp{Pair: "pbbbbbbbb", Opening: "oaaaaaaaa", About: "saaaaaaaa", New: "occcccccc"}, plan.ErrTaken)
	refused(t, p, edit.PairUp{Pair: "pbbbbbbbb", Opening: "occcccccc", About: "saaaaaaaa"}, plan.ErrGone)
	loose := after(t, p, edit.Remove{Things: []plan.ID{"paaaaaaaa"}}, edit.MoveOpening{ID: "obbbbbbbb", To: plan.OnFace("saaaaaaaa", 110*unit.Inch)})
	again := after(t, loose, edit.PairUp{Pair: "pbbbbbbbb", Opening: "oaaaaaaaa", About: "faaaaaaaa", New: "occcccccc", Near: 8 * unit.Inch})
	if opening(t, again, "obbbbbbbb").At.Along != 102*unit.Inch || again.Levels[0].Openings.Len() != 2 {
		t.Error("one 8 in from the place at the other hand does not become the partner")
	}
	more := after(t, loose, edit.PairUp{Pair: "pbbbbbbbb", Opening: "oaaaaaaaa", About: "faaaaaaaa", New: "occcccccc", Near: 8*unit.Inch - 1})
	if opening(t, more, "occcccccc").At.Along != 102*unit.Inch || opening(t, more, "obbbbbbbb").At.Along != 110*unit.Inch {
		t.Error("one farther off becomes the partner")
	}
	refused(t, loose, edit.PairUp{Pair: "pbbbbbbbb", Opening: "oaaaaaaaa", About: "sbbbbbbbb", New: "occcccccc"}, plan.ErrNoRoom)
}

// Two chosen lights, at 50 and 110 in of a wall of 144 whose mirror has its middle at 78, are
// bound about it: it is 2 in from theirs, that of the wall 8. The first stays, the other comes to
// 2 × 78 − 50 = 106. Without the mirror it is the wall's middle, 72, and 94.
func TestTwoChosenAreBoundAboutTheLineBetween(t *testing.T) {
	loose := after(t, twoLights(t), edit.Remove{Things: []plan.ID{"paaaaaaaa"}},
		edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 50*unit.Inch)}, edit.MoveOpening{ID: "obbbbbbbb", To: plan.OnFace("saaaaaaaa", 110*unit.Inch)})
	bare := after(t, loose, edit.Remove{Things: []plan.ID{"faaaaaaaa"}})
	for _, tt := range []struct {
		p     plan.Plan
		about plan.ID
		want  unit.Length
	}{{loose, "faaaaaaaa", 106}, {bare, "saaaaaaaa", 94}} {
		up, ok := edit.PairBetween(tt.p, "oaaaaaaaa", "obbbbbbbb", "pbbbbbbbb")
		if !ok || up.About != tt.about {
			t.Fatalf("about %s, %v; want %s", up.About, ok, tt.about)
		}
		bound := after(t, tt.p, up)
		if one, other := opening(t, bound, "oaaaaaaaa"), opening(t, bound, "obbbbbbbb"); one.At.Along != 50*unit.Inch || other.At.Along != tt.want*unit.Inch || bound.Pairs.Len() != 1 {
			t.Errorf("about %s: at %v and %v, %d pairs", tt.about, one.At.Along, other.At.Along, bound.Pairs.Len())
		}
		if back, ok := edit.PairBetween(tt.p, "obbbbbbbb", "oaaaaaaaa", "pbbbbbbbb"); !ok || back.Opening != "obbbbbbbb" || back.With != "oaaaaaaaa" {
			t.Errorf("chosen the other way round: %+v, %v", back, ok)
		}
	}
	beside := after(t, loose, edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 100*unit.Inch)})
	away := after(t, loose, edit.MoveOpening{ID: "obbbbbbbb", To: plan.OnFace("sbbbbbbbb", unit.Foot)})
	// The mirror's middle is at 78, the wall's at 72: one of the two stands at the former, and
	// the latter is not between them.
	from := after(t, loose, edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 78*unit.Inch)})
	to := after(t, loose, edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 74*unit.Inch)}, edit.MoveOpening{ID: "obbbbbbbb", To: plan.OnFace("saaaaaaaa", 78*unit.Inch)})
	other := after(t, beside, edit.MoveFixture{ID: "faaaaaaaa", To: plan.OnFace("scccccccc", 87*unit.Inch)})
	for name, p := range map[string]plan.Plan{"one at the line": from, "the other at the line": to, "the line of a mirror on another wall": other, "both to the right of every line": beside, "on two walls": away, "bound already": twoLights(t)} {
		if up, ok := edit.PairBetween(p, "oaaaaaaaa", "obbbbbbbb", "pbbbbbbbb"); ok {
			t.Errorf("%s: %+v", name, up)
		}
	}
	if _, ok := edit.PairBetween(loose, "oaaaaaaaa", "oaaaaaaaa", "pbbbbbbbb"); ok {
		t.Error("one is bound with itself")
	}
	for _, two := range [][2]plan.ID{{"ozzzzzzzz", "obbbbbbbb"}, {"oaaaaaaaa", "ozzzzzzzz"}} {
		if up, ok := edit.PairBetween(loose, two[0], two[1], "pbbbbbbbb"); ok {
			t.Errorf("%v, one of which is not there: %+v", two, up)
		}
	}
	refused(t, loose, edit.PairUp{Pair: "pbbbbbbbb", Opening: "oaaaaaaaa", About: "faaaaaaaa", With: "ozzzzzzzz"}, plan.ErrGone)
}
