package edit_test

import (
	"fmt"
	"testing"

	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// oneFace is the bedroom with, along its first wall of 144 in, an opening at 10, a cabinet
// from 30 to 50, a window from 60 to 90 and openings at 100 and 120; a fourth opening at 20
// on the next wall, of 120 in, and three in the ceiling.
func oneFace(t *testing.T) plan.Plan {
	add := func(n int, at plan.Anchor) edit.Edit {
		o := plan.Opening{ID: faceID('o', n), Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: at}
		if at.Part == plan.PartFace {
			o.Height = plan.Height{Value: unit.Length(10+n) * in, To: plan.BoxBottom, From: plan.FinishedFloor}
		}
		return edit.AddOpening{Opening: o}
	}
	return after(t, plantest.Bedroom(),
		add(1, plan.OnFace("saaaaaaaa", 10*in)), add(2, plan.OnFace("saaaaaaaa", 100*in)), add(3, plan.OnFace("saaaaaaaa", 120*in)), add(4, plan.OnFace("sbbbbbbbb", 20*in)),
		add(5, plan.OnCeiling("raaaaaaaa", at(10*in, 10*in))), add(6, plan.OnCeiling("raaaaaaaa", at(20*in, 60*in))), add(7, plan.OnCeiling("raaaaaaaa", at(110*in, 50*in))),
		edit.AddFixture{Fixture: plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureMirror, At: plan.OnFace("saaaaaaaa", 30*in), Width: 20 * in, Bottom: 40 * in, Height: 30 * in}},
		edit.AddFixture{Fixture: plan.Fixture{ID: "fbbbbbbbb", Kind: plan.FixtureIsland, At: plan.OnFloor("raaaaaaaa", at(72*in, 60*in)), Width: 20 * in, Depth: 10 * in, Bottom: 3 * in, Height: 30 * in}},
		edit.AddBreak{Break: plan.Break{ID: "baaaaaaaa", Kind: plan.BreakWindow, At: plan.OnFace("saaaaaaaa", 60*in), Width: 30 * in, Sill: 36 * in, Head: 80 * in}},
		edit.AddBreak{Break: plan.Break{ID: "bbbbbbbbb", Kind: plan.BreakDoor, At: plan.OnFace("sbbbbbbbb", 60*in), Width: 30 * in, Head: 84 * in}})
}

func faceID(kind byte, n int) plan.ID { return plan.ID(fmt.Sprintf("%caaaaaaa%c", kind, 'a'+n-1)) }

// The clear distance between two things on one face, by hand from the places above.
func TestDistancesOnAFace(t *testing.T) {
	p := oneFace(t)
	for _, tt := range []struct {
		id, from plan.ID
		want     unit.Length // in inches
		ok       bool
	}{
		{faceID('o', 1), "faaaaaaaa", 20, true}, {"faaaaaaaa", faceID('o', 1), 20, true},
		{"baaaaaaaa", "faaaaaaaa", 10, true}, {"faaaaaaaa", "baaaaaaaa", 10, true},
		{faceID('o', 2), "baaaaaaaa", 10, true}, {faceID('o', 3), faceID('o', 1), 110, true}, {faceID('o', 1), faceID('o', 3), 110, true},
		{faceID('o', 1), faceID('o', 1), 0, false}, {faceID('o', 1), faceID('o', 4), 0, false}, {faceID('o', 5), faceID('o', 6), 0, false},
		{faceID('o', 1), "ozzzzzzzz", 0, false}, {"ozzzzzzzz", faceID('o', 1), 0, false}, {faceID('o', 1), "raaaaaaaa", 0, false}, {"raaaaaaaa", faceID('o', 1), 0, false},
	} {
		if got, ok := arrange.Apart(p, tt.id, tt.from); got != tt.want*in || ok != tt.ok {
			t.Errorf("%s is %v from %s, %t; want %d in", tt.id, got, tt.from, ok, tt.want)
		}
	}
	over := after(t, p, edit.MoveOpening{ID: faceID('o', 1), To: plan.OnFace("saaaaaaaa", 45*in)})
	if got, ok := arrange.Apart(over, faceID('o', 1), "faaaaaaaa"); got != -5*in || !ok {
		t.Errorf("an opening 5 in within the right end of a mirror is %v from it", got)
	}
	for _, tt := range []struct {
		set  arrange.SetApart
		want unit.Length // where it is then, in inches
	}{
		{arrange.SetApart{ID: faceID('o', 1), From: "faaaaaaaa", Away: 5 * in}, 25},
		{arrange.SetApart{ID: faceID('o', 2), From: "baaaaaaaa", Away: 4 * in}, 94},
		{arrange.SetApart{ID: "faaaaaaaa", From: "baaaaaaaa", Away: 3 * in}, 37},
		{arrange.SetApart{ID: "faaaaaaaa", From: faceID('o', 1), Away: 3 * in}, 13},
		{arrange.SetApart{ID: "baaaaaaaa", From: "faaaaaaaa", Away: 0}, 50},
	} {
		moved := after(t, p, tt.set)
		if got := anchorIn(t, moved, tt.set.ID).Along; got != tt.want*in {
			t.Errorf("%+v sets it at %v, want %d in", tt.set, got, tt.want)
		}
		thing, _ := moved.Find(tt.set.ID)
		if got := *plan.FromOf(thing); got != tt.set.From {
			t.Errorf("its distance is told from %s, want %s", got, tt.set.From)
		}
	}
	refused(t, p, arrange.SetApart{ID: faceID('o', 1), From: faceID('o', 4)}, plan.ErrNoRoom)
	refused(t, p, arrange.SetApart{ID: "ozzzzzzzz", From: faceID('o', 4)}, plan.ErrGone)
	refused(t, p, arrange.SetApart{ID: faceID('o', 1), From: "ozzzzzzzz"}, plan.ErrGone)
	refused(t, p, arrange.SetApart{ID: faceID('o', 3), From: faceID('o', 2), Away: 45 * in}, plan.ErrNoRoom)
	refused(t, p, arrange.MeasureFrom{ID: "ozzzzzzzz"}, plan.ErrGone)
	refused(t, p, arrange.MeasureFrom{ID: faceID('o', 1), From: "ozzzzzzzz"}, plan.ErrGone)
	loose := after(t, p, arrange.MeasureFrom{ID: faceID('o', 1), From: "faaaaaaaa"}, arrange.MeasureFrom{ID: faceID('o', 1)})
	if got := opening(t, loose, faceID('o', 1)); got.From != "" {
		t.Errorf("told from the ends alone it is told from %s", got.From)
	}
}

// Alike clear spaces, by hand: between 10 and 100 less a mirror of 20 in lie 70, so 35 at
// either hand of it.
func TestSpreadByHand(t *testing.T) {
	p := oneFace(t)
	o1, o2, o3, o5, o6, o7 := faceID('o', 1), faceID('o', 2), faceID('o', 3), faceID('o', 5), faceID('o', 6), faceID('o', 7)
	for _, tt := range []struct {
		spread arrange.Spread
		want   []unit.Length // of each thing
	}{
		{arrange.Spread{Things: []plan.ID{o1, o2, o3}}, []unit.Length{10 * in, 65 * in, 120 * in}},
		{arrange.Spread{Things: []plan.ID{o3, o1, o2}}, []unit.Length{120 * in, 10 * in, 65 * in}},
		{arrange.Spread{Things: []plan.ID{o1, "faaaaaaaa", o2}}, []unit.Length{10 * in, 45 * in, 100 * in}},
		{arrange.Spread{Things: []plan.ID{o1, o2}, ToEnds: true}, []unit.Length{48 * in, 96 * in}},
		{arrange.Spread{Things: []plan.ID{o1}, ToEnds: true}, []unit.Length{72 * in}},
		{arrange.Spread{Things: []plan.ID{o1, o2, o3}, ToEnds: true}, []unit.Length{36 * in, 72 * in, 108 * in}},
		// 144 less 20, in three spaces
		{arrange.Spread{Things: []plan.ID{"faaaaaaaa", o2}, ToEnds: true}, []unit.Length{124 * in / 3, 20*in + 124*in*2/3}},
	} {
		moved := after(t, p, tt.spread)
		for i, id := range tt.spread.Things {
			if got := anchorIn(t, moved, id).Along; got != tt.want[i] {
				t.Errorf("%+v sets %s at %v, want %v", tt.spread, id, got, tt.want[i])
			}
		}
	}
	for _, tt := range []struct {
		things []plan.ID
		ends   bool
		cause  error
	}{
		{[]plan.ID{o1, o2}, false, nil}, {[]plan.ID{o1, o2, o2}, false, nil}, {nil, true, nil},
		{[]plan.ID{o1, o2, faceID('o', 4)}, false, plan.ErrNoRoom}, {[]plan.ID{o5, o6, o7}, true, plan.ErrNoRoom}, {[]plan.ID{o1, o2, o5}, false, plan.ErrNoRoom},
		{[]plan.ID{o1, o2, "raaaaaaaa"}, false, plan.ErrNoRoom}, {[]plan.ID{o1, o2, "ozzzzzzzz"}, false, plan.ErrGone},
	} {
		if _, err := (arrange.Spread{Things: tt.things, ToEnds: tt.ends}).Apply(p); err == nil {
			t.Errorf("%v are spread", tt.things)
		} else if tt.cause != nil {
			refused(t, p, arrange.Spread{Things: tt.things, ToEnds: tt.ends}, tt.cause)
		}
	}
	// A mirror of 20 in between two openings 20 in apart just fits, and not where they are
	// 1 nm nearer.
	near := func(apart unit.Length) plan.Plan {
		return after(t, p, edit.MoveOpening{ID: o1, To: plan.OnFace("saaaaaaaa", 25*in)}, edit.MoveOpening{ID: o2, To: plan.OnFace("saaaaaaaa", 25*in+apart)})
	}
	three := arrange.Spread{Things: []plan.ID{o1, "faaaaaaaa", o2}}
	refused(t, near(20*in-1), three, plan.ErrNoRoom)
	if got := anchorIn(t, after(t, near(20*in), three), "faaaaaaaa").Along; got != 25*in {
		t.Errorf("where there is just room the mirror is at %v", got)
	}
	// In a ceiling from the first to the last, along the longer way: 100 across, 50 down.
	flat := after(t, p, arrange.Spread{Things: []plan.ID{o7, o5, o6}})
	if got := anchorIn(t, flat, o6).At; got != at(60*in, 30*in) {
		t.Errorf("in the ceiling the middle one is at %v", got)
	}
	if anchorIn(t, flat, o5).At != at(10*in, 10*in) || anchorIn(t, flat, o7).At != at(110*in, 50*in) {
		t.Error("the first or the last has moved")
	}
	down := after(t, p, edit.MoveOpening{ID: o7, To: plan.OnCeiling("raaaaaaaa", at(30*in, 20*in))}, arrange.Spread{Things: []plan.ID{o5, o6, o7}})
	if got := anchorIn(t, down, o7).At; got != at(15*in, 35*in) { // between 10 by 10 and 20 by 60
		t.Errorf("the middle one down the ceiling is at %v", got)
	}
}

// As far from the left end, or the right, as another is from that of its own face.
func TestTheSameDistanceByHand(t *testing.T) {
	p := oneFace(t)
	o1, o4 := faceID('o', 1), faceID('o', 4)
	for _, tt := range []struct {
		as, id  plan.ID
		isRight bool
		want    unit.Length
	}{
		{o1, o4, false, 10}, {"faaaaaaaa", o4, false, 30}, {"bbbbbbbbb", "faaaaaaaa", false, 60},
		{o4, o1, true, 44},          // 100 from the right of 120, so 144 less 100
		{"faaaaaaaa", o4, true, 26}, // 94 from the right of 144, so 120 less 94
		{o4, "faaaaaaaa", true, 24}, // 144 less 100 less 20
		{"bbbbbbbbb", "faaaaaaaa", true, 94},
	} {
		moved := after(t, p, arrange.SameDistance{As: tt.as, Things: []plan.ID{tt.id}, IsRight: tt.isRight})
		if got := anchorIn(t, moved, tt.id).Along; got != tt.want*in {
			t.Errorf("%s as %s is at %v, want %d in", tt.id, tt.as, got, tt.want)
		}
	}
	refused(t, p, arrange.SameDistance{As: "ozzzzzzzz", Things: []plan.ID{o1}}, plan.ErrGone)
	refused(t, p, arrange.SameDistance{As: o1, Things: []plan.ID{"ozzzzzzzz"}}, plan.ErrGone)
	for _, none := range []plan.ID{faceID('o', 5), "raaaaaaaa", "fbbbbbbbb"} {
		refused(t, p, arrange.SameDistance{As: none, Things: []plan.ID{o1}}, plan.ErrNoRoom)
		refused(t, p, arrange.SameDistance{As: o1, Things: []plan.ID{none}}, plan.ErrNoRoom)
	}
}

// Heights in line: each kind by its own, and what has none stays.
func TestHeightsInLine(t *testing.T) {
	p := oneFace(t)
	o1, o2, o5 := faceID('o', 1), faceID('o', 2), faceID('o', 5)
	all := []plan.ID{o1, o2, o5, "baaaaaaaa", "bbbbbbbbb", "faaaaaaaa", "fbbbbbbbb"}
	for to, want := range map[plan.ID][6]unit.Length{ // the openings, the window's sill and head, the door's head, the mirror's bottom
		o2:          {12, 12, 36, 80, 84, 40},
		o5:          {11, 12, 36, 80, 84, 40},
		"bbbbbbbbb": {11, 12, 40, 84, 84, 40},
		"baaaaaaaa": {11, 12, 36, 80, 80, 40},
		"fbbbbbbbb": {11, 12, 36, 80, 84, 3},
	} {
		q := after(t, p, arrange.AlignHeights{To: to, Things: all})
		window, _ := q.Break("baaaaaaaa")
		door, _ := q.Break("bbbbbbbbb")
		mirror, _ := q.Fixture("faaaaaaaa")
		island, _ := q.Fixture("fbbbbbbbb")
		got := [6]unit.Length{opening(t, q, o1).Height.Value / in, opening(t, q, o2).Height.Value / in, window.Sill / in, window.Head / in, door.Head / in, mirror.Bottom / in}
		if got != want || door.Sill != 0 || island.Bottom != 3*in || opening(t, q, o5).Height != (plan.Height{}) {
			t.Errorf("as %s they are %v, want %v", to, got, want)
		}
	}
	refused(t, p, arrange.AlignHeights{To: "ozzzzzzzz", Things: all}, plan.ErrGone)
	refused(t, p, arrange.AlignHeights{To: o1, Things: []plan.ID{"ozzzzzzzz"}}, plan.ErrGone)
	set := after(t, p, arrange.SetHeights{Things: []plan.ID{o1, o5}, Value: 50 * in})
	if got := opening(t, set, o1).Height; got != (plan.Height{Value: 50 * in, To: plan.BoxBottom, From: plan.FinishedFloor}) || opening(t, set, o5).Height != (plan.Height{}) {
		t.Errorf("set at 50 in it is %+v", got)
	}
}

// The switch of a door goes as far as the door, on its own wall, and stays where the door
// goes to another.
func TestADoorGoesWithItsSwitch(t *testing.T) {
	p := oneFace(t)
	o4 := faceID('o', 4)
	along := after(t, p, arrange.MoveDoor{ID: "bbbbbbbbb", To: plan.OnFace("sbbbbbbbb", 66*in), With: []plan.ID{o4}})
	if door, got := anchorIn(t, along, "bbbbbbbbb").Along, anchorIn(t, along, o4).Along; door != 66*in || got != 26*in {
		t.Errorf("6 in along they are at %v and %v", door, got)
	}
	away := after(t, p, arrange.MoveDoor{ID: "bbbbbbbbb", To: plan.OnFace("scccccccc", 66*in), With: []plan.ID{o4}})
	if door, got := anchorIn(t, away, "bbbbbbbbb"), anchorIn(t, away, o4).Along; door != plan.OnFace("scccccccc", 66*in) || got != 20*in {
		t.Errorf("on another wall they are at %v and %v", door, got)
	}
	refused(t, p, arrange.MoveDoor{ID: "bzzzzzzzz", To: plan.OnFace("sbbbbbbbb", 66*in)}, plan.ErrGone)
	refused(t, p, arrange.MoveDoor{ID: "bbbbbbbbb", To: plan.OnFace("szzzzzzzz", 66*in)}, plan.ErrGone)
}
