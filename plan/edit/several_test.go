package edit_test

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"testing"
)

// Where things come to follows from the shed: see its comment.
func TestThingsMoveTogether(t *testing.T) {
	all := []plan.ID{n1, n2, window, lamp, bench, front}
	p := after(t, shed(t), arrange.Move{Things: all, By: at(6*in, -12*in)})
	for id, want := range map[plan.ID]plan.Anchor{
		n1:     plan.OnFace(north, 42*in), // the north side runs to the right
		n2:     plan.OnFace(north, 114*in),
		window: plan.OnFace(east, 24*in), // the east side runs down the sheet
		bench:  plan.OnFace(west, 36*in), // the west side runs up it
		lamp:   plan.OnCeiling(shedRoom, at(78*in, 48*in)),
		front:  {Host: bench, Part: plan.PartFront, Along: ft}, // it goes with the bench
	} {
		if got := anchorIn(t, p, id); got != want {
			t.Errorf("%s is at %+v, want %+v", id, got, want)
		}
	}
	if _, err := (arrange.Move{Things: all, By: at(4*ft, 0)}).Apply(shed(t)); err == nil {
		t.Error("one that would stand past its end does not refuse all of them")
	}
}

// An opening in the front of the bench runs with it: up the sheet, as the west side does.
func TestWhatIsOnAFixtureMovesAlongItsFace(t *testing.T) {
	p := after(t, shed(t), arrange.Move{Things: []plan.ID{front, sink}, By: at(2*in, -6*in)})
	if got := anchorIn(t, p, front).Along; got != 18*in {
		t.Errorf("the opening is %v along the bench, want 18 in", got)
	}
	if got := anchorIn(t, p, sink); got.Along != 42*in || got.Out != 14*in {
		t.Errorf("the sink is at %+v, want 42 in along and 14 in out", got)
	}
}

// A room takes what is in it along once, though both are chosen.
func TestWhatIsInARoomMovesWithItOnce(t *testing.T) {
	p := after(t, shed(t), arrange.Move{Things: []plan.ID{shedRoom, lamp, n1}, By: at(ft, ft)})
	if got := anchorIn(t, p, lamp).At; got != at(7*ft, 6*ft) {
		t.Errorf("the lamp is at %v, want 7 ft by 6 ft", got)
	}
	if got := anchorIn(t, p, n1); got != plan.OnFace(north, 3*ft) {
		t.Errorf("the opening is at %+v, want where it was on its face", got)
	}
}

// Two windows side by side move by less than their width: each is in the other's way.
func TestThingsInEachOthersWayMoveTogether(t *testing.T) {
	second := plan.Break{ID: "bscnd2222", Kind: plan.BreakWindow, At: plan.OnFace(east, 6*ft), Width: 3 * ft, Head: 80 * in, Sill: 3 * ft}
	p := after(t, shed(t), edit.AddBreak{Break: second}, arrange.Move{Things: []plan.ID{window, second.ID}, By: at(0, ft)})
	if a, b := anchorIn(t, p, window).Along, anchorIn(t, p, second.ID).Along; a != 4*ft || b != 7*ft {
		t.Errorf("they are at %v and %v, want 4 ft and 7 ft", a, b)
	}
}

// The shed's middle is at 6 by 5 ft: a quarter turn clockwise takes its upper left corner
// to 11 by −1 ft, where the north side, now facing west, begins.
func TestARoomTurnsWithAllInIt(t *testing.T) {
	p := after(t, shed(t), arrange.Turn{Things: []plan.ID{shedRoom}})
	r, _ := p.Room(shedRoom)
	if got := r.Sides[r.SideAt(north)].Start; got != at(11*ft, -ft) {
		t.Errorf("the north side starts at %v, want 11 ft, −1 ft", got)
	}
	if got := anchorIn(t, p, n1); got != plan.OnFace(north, 3*ft) {
		t.Errorf("the opening is at %+v, want where it was on its side", got)
	}
	four := arrange.Turn{Things: []plan.ID{shedRoom}}
	if !plan.Equal(shed(t), after(t, shed(t), four, four, four, four)) {
		t.Error("four quarter turns leave something other than it was")
	}
}

func TestWhatIsOnAFaceTurnsToTheNext(t *testing.T) {
	p := after(t, shed(t), arrange.Turn{Things: []plan.ID{n1, n2}})
	if got := anchorIn(t, p, n1); got != plan.OnFace(east, 3*ft) {
		t.Errorf("at %+v, want 3 ft along the east side", got)
	}
}

// Mirrored, the north side (12 ft) has its openings at 9 and 3 ft; the bench (6 ft at 2 ft
// of 10) is on the west side, which is on the right of the sheet then, at 2 ft again, its
// opening at 5 ft; and twice is as it was.
func TestARoomIsMirrored(t *testing.T) {
	once := arrange.Mirror{Things: []plan.ID{shedRoom}}
	p := after(t, shed(t), once)
	for id, want := range map[plan.ID]plan.Anchor{
		n1:    plan.OnFace(north, 9*ft),
		door:  plan.OnFace(south, 8*ft), // 12 − 1 − 3
		bench: plan.OnFace(west, 2*ft),
		front: {Host: bench, Part: plan.PartFront, Along: 5 * ft},
		lamp:  plan.OnCeiling(shedRoom, at(6*ft, 5*ft)),
	} {
		if got := anchorIn(t, p, id); got != want {
			t.Errorf("%s is at %+v, want %+v", id, got, want)
		}
	}
	ref, _ := index.New(p).Side(west)
	if line := ref.Line(); line.A.X != 12*ft || line.B.X != 12*ft {
		t.Errorf("the west side runs %v, want at the right of the sheet", line)
	}
	twice := after(t, p, once)
	for _, id := range []plan.ID{n1, door, bench, front, sink} {
		if got, want := anchorIn(t, twice, id), anchorIn(t, shed(t), id); got != want {
			t.Errorf("mirrored twice %s is at %+v, was %+v", id, got, want)
		}
	}
}

func TestADoorMirroredIsHungTheOtherWay(t *testing.T) {
	b, _ := shed(t).Break(door)
	hung := *b
	hung.Hand, hung.Swing = plan.HandLeft, plan.SwingIn
	p := after(t, shed(t), edit.ChangeBreak{Break: hung}, arrange.Mirror{Things: []plan.ID{door}})
	if now, _ := p.Break(door); now.Hand != plan.HandRight || now.At.Along != 8*ft {
		t.Errorf("it is %+v, want right hand at 8 ft", now)
	}
}

// Of 12 ft of the north side, three openings between 1 and 9 ft stand at 1, 5 and 9; to
// the ends, at 3, 6 and 9.
func TestOpeningsAreSpreadEvenly(t *testing.T) {
	p := after(t, shed(t),
		edit.MoveOpening{ID: n1, To: plan.OnFace(north, ft)},
		edit.AddOpening{Opening: plan.Opening{ID: "othrd2222", Kind: "duplex", At: plan.OnFace(north, 2*ft), Height: plan.CentreAt(18 * in), Gangs: 1, Status: plan.StatusNew}})
	three := []plan.ID{n1, n2, "othrd2222"}
	for _, tt := range []struct {
		edit edit.Edit
		want [3]unit.Length
	}{
		{arrange.Spread{Things: three}, [3]unit.Length{ft, 9 * ft, 5 * ft}},
		{arrange.Spread{Things: three, ToEnds: true}, [3]unit.Length{3 * ft, 9 * ft, 6 * ft}},
	} {
		now := after(t, p, tt.edit)
		for i, id := range three {
			if got := anchorIn(t, now, id).Along; got != tt.want[i] {
				t.Errorf("%+v: %s is at %v, want %v", tt.edit, id, got, tt.want[i])
			}
		}
	}
	refused(t, p, arrange.Spread{Things: []plan.ID{n1, window}, ToEnds: true}, plan.ErrNoRoom)
	refused(t, p, arrange.Spread{Things: []plan.ID{n1, n2}}, nil)
}

func TestHeightsAreAligned(t *testing.T) {
	high := plan.Height{Value: 44 * in, To: plan.BoxBottom, From: plan.Subfloor}
	p := after(t, shed(t), edit.SetHeight{ID: n1, Height: high}, arrange.AlignHeights{To: n1, Things: []plan.ID{n1, n2, lamp, door}})
	if o, _ := p.Opening(n2); o.Height != high {
		t.Errorf("it is at %+v, want %+v", o.Height, high)
	}
	if o, _ := p.Opening(lamp); o.Height.Value != 18*in {
		t.Errorf("what is in the ceiling has become %+v", o.Height)
	}
}

// From its right end, 12 − 9 = 3 ft: on the east side of 10 ft the window of 3 ft stands
// at 10 − 3 − 3 = 4 ft.
func TestSameDistanceFromAnEnd(t *testing.T) {
	p := after(t, shed(t), arrange.SameDistance{As: n2, Things: []plan.ID{window}, IsRight: true})
	if got := anchorIn(t, p, window).Along; got != 4*ft {
		t.Errorf("it is at %v, want 4 ft", got)
	}
	refused(t, shed(t), arrange.SameDistance{As: n2, Things: []plan.ID{lamp}}, plan.ErrNoRoom)
}

// anchorIn returns where a thing of a plan is.
func anchorIn(t *testing.T, p plan.Plan, id plan.ID) plan.Anchor {
	t.Helper()
	found, _ := p.Find(id)
	switch x := found.(type) {
	case *plan.Opening:
		return x.At
	case *plan.Break:
		return x.At
	case *plan.Fixture:
		return x.At
	}
	t.Fatalf("%s is not in the plan", id)
	return plan.Anchor{}
}

// The window of the east side is from 3 to 6 ft: an opening at 8 ft is 2 ft from its right
// edge, and at 1 ft 6 in as far as 18 in from its left one.
func TestDistancesFromAnotherThing(t *testing.T) {
	p := after(t, shed(t), edit.MoveOpening{ID: n2, To: plan.OnFace(east, 8*ft)}, arrange.SetApart{ID: n2, From: window, Away: 12 * in})
	if got := anchorIn(t, p, n2); got != plan.OnFace(east, 7*ft) {
		t.Errorf("it is at %+v, want 7 ft along the east side", got)
	}
	if o, _ := p.Opening(n2); o.From != window {
		t.Errorf("its distance is told from %q, want the window", o.From)
	}
	p = after(t, shed(t), edit.MoveOpening{ID: n2, To: plan.OnFace(east, 18*in)})
	if got, ok := arrange.Apart(p, n2, window); !ok || got != 18*in {
		t.Errorf("they are %v apart, want 18 in", got)
	}
	refused(t, shed(t), arrange.SetApart{ID: n1, From: window, Away: ft}, plan.ErrNoRoom)
}

func TestADistanceIsToldFromWhatIsThere(t *testing.T) {
	refused(t, shed(t), arrange.MeasureFrom{ID: n1, From: "ozzzzzzzz"}, plan.ErrGone)
	o := opening(t, shed(t), n1)
	o.From = "ozzzzzzzz"
	refused(t, shed(t), edit.ChangeOpening{Opening: o}, plan.ErrGone)
}

// What a distance is told from may go without a question; the thing stays.
func TestWhatADistanceIsToldFromMayGo(t *testing.T) {
	p := after(t, shed(t), arrange.MeasureFrom{ID: n1, From: n2}, arrange.MeasureFrom{ID: door, From: panel},
		edit.Remove{Things: []plan.ID{n2}})
	if o, _ := p.Opening(n1); o == nil || o.From != "" {
		t.Errorf("it is %+v, want it there and told from its corners", o)
	}
	p = after(t, p, edit.Removing(panel))
	if b, _ := p.Break(door); b == nil || b.From != "" {
		t.Errorf("the door is %+v", b)
	}
}
