package edit_test

import (
	"fmt"
	"slices"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"testing"
)

// A level changed has the name and the elevation that it was given, and all that was on it.
func TestALevelIsChanged(t *testing.T) {
	p := after(t, shed(t), edit.AddLevel{ID: upper, Title: "Loft", Elevation: 9 * ft}, edit.ChangeLevel{ID: ground, Title: "Cellar", Elevation: -8 * ft})
	l, up := p.Level(ground), p.Level(upper)
	if l.Name != "Cellar" || l.Elevation != -8*ft || l.Openings.Len() != 4 || up.Name != "Loft" || up.Elevation != 9*ft || len(p.Levels) != 2 {
		t.Errorf("they are %+v and %+v", l, up)
	}
	refused(t, p, edit.ChangeLevel{ID: ground, Elevation: plan.Reach + 1}, plan.ErrNoRoom)
	refused(t, p, edit.AddLevel{ID: "vaaaaaaaa", Elevation: plan.Reach + 1}, plan.ErrNoRoom)
}

// Sides chosen with other things move across themselves; each takes the two joints that
// stand for it in the row. Of the north side 4 to 8 ft are split off and pushed in by 1 ft.
func TestSidesMoveAmongOtherThings(t *testing.T) {
	p := after(t, shed(t), edit.SplitSide{Side: north, At: 8 * ft, NewID: "sccccccc2"}, edit.SplitSide{Side: north, At: 4 * ft, NewID: "sdddddddd"})
	middle := plan.ID("")
	for _, s := range room(t, p).Sides {
		if s.Start == at(4*ft, 0) {
			middle = s.ID
		}
	}
	joints := []plan.ID{"seeeeeee2", "sfffffff2", "sggggggg2", "shhhhhhh2"}
	now := after(t, p, arrange.Move{Things: []plan.ID{east, lamp, middle}, By: at(0, ft), Joints: joints})
	// the east side runs down the sheet: a way along it moves it nowhere
	if got := corners(room(t, now)); !slices.Equal(got, []int{0, 0, 48, 0, 48, 12, 96, 12, 96, 0, 144, 0, 144, 120, 0, 120}) {
		t.Errorf("corners %v", got)
	}
	var ids []plan.ID
	for _, s := range room(t, now).Sides {
		ids = append(ids, s.ID)
	}
	if !slices.Contains(ids, joints[2]) || !slices.Contains(ids, joints[3]) || slices.Contains(ids, joints[0]) {
		t.Errorf("the sides are %v, want the joints that stand for the second side", ids)
	}
	if got := anchorIn(t, now, lamp).At; got != at(6*ft, 6*ft) {
		t.Errorf("the lamp is at %v", got)
	}
	// Without joints for it a side stays.
	if still := after(t, p, arrange.Move{Things: []plan.ID{east, middle}, By: at(0, ft), Joints: joints[:2]}); !same(still, p) {
		t.Error("a side without joints was moved")
	}
	if wide := after(t, shed(t), arrange.Move{Things: []plan.ID{east}, By: at(ft, ft), Joints: joints[:2]}); room(t, wide).Outline().Box().Max != at(13*ft, 10*ft) {
		t.Error("a side was not moved as far across itself as the way goes")
	}
}

// A new side between two that run in line is as the one that is moved; where its studs
// stand is not known.
func TestAJointIsLikeItsSide(t *testing.T) {
	ref, _ := shed(t).Side(north)
	s := *ref.Side()
	s.Finish, s.Studs = []plan.Layer{{Name: "board", Thickness: in / 2}}, plan.Studs{Spacing: 16 * in, Depth: 3 * in, First: 5 * in}
	s.Places = []plan.StudPlace{{At: ft, State: plan.StudMeasured}}
	p := after(t, shed(t), edit.ChangeSide{Side: s}, edit.SplitSide{Side: north, At: 5 * ft, NewID: "saaaaaaaa"})
	p = after(t, p, edit.MoveSide{Side: "saaaaaaaa", By: -ft, Joints: [2]plan.ID{"sbbbbbbbb", "scccccccc"}})
	joint, _ := p.Side("scccccccc")
	if joint == nil {
		t.Fatal("there is no joint")
	}
	if got := joint.Side(); got.Studs.First != 0 || got.Places != nil || got.Studs.Spacing != 16*in || got.Studs.Depth != 3*in || len(got.Finish) != 1 || joint.Line().Length() != ft {
		t.Errorf("the joint is %+v, %v long", got, joint.Line().Length())
	}
}

// Of two sides that become one the longer gives its ID; of two alike the first.
func TestWhichSideStays(t *testing.T) {
	for half, want := range map[unit.Length]plan.ID{5 * ft: north, 6 * ft: "", 7 * ft: north} {
		p := after(t, shed(t), edit.SplitSide{Side: north, At: half, NewID: "saaaaaaaa"})
		r := room(t, p)
		first, second := r.Sides[0].ID, r.Sides[1].ID
		if want == "" {
			want = first
		}
		p = after(t, p, edit.RemoveCorner{Side: second})
		if got := room(t, p).Sides[0].ID; got != want || len(room(t, p).Sides) != 4 {
			t.Errorf("split at %v, %s stays, want %s", half, got, want)
		}
	}
}

// What would fall off a side that a corner shortens slides back where it is asked to.
func TestAClampedCorner(t *testing.T) {
	e := edit.MoveCorner{Side: east, To: at(8*ft, 0)}
	refused(t, shed(t), e, plan.ErrNoRoom, n2)
	e.Clamp = true
	if got := anchorIn(t, after(t, shed(t), e), n2); got != plan.OnFace(north, 8*ft) {
		t.Errorf("it is at %+v, want at the end", got)
	}
	away := edit.MoveSide{Side: east, By: -7 * ft, Clamp: true} // the lamp, at 6 ft, would be outside from 5 ft on
	p := after(t, shed(t), edit.Removing(panel, door), away)
	if got := anchorIn(t, p, lamp).At; got != at(5*ft, 5*ft) {
		t.Errorf("the lamp is at %v, want on the wall", got)
	}
	near := after(t, shed(t), edit.MoveSide{Side: east, By: -in, Clamp: true})
	if got := anchorIn(t, near, lamp).At; got != at(6*ft, 5*ft) {
		t.Errorf("a lamp that is inside was moved to %v", got)
	}
}

// On another face, or to nowhere, a door goes alone.
func TestADoorGoesAlone(t *testing.T) {
	p := after(t, shed(t), edit.MoveOpening{ID: n2, To: plan.OnFace(south, 5*ft)})
	now := after(t, p, arrange.MoveDoor{ID: door, To: plan.OnFace(north, 4*ft), With: []plan.ID{n2}})
	if got := anchorIn(t, now, n2); got != plan.OnFace(south, 5*ft) {
		t.Errorf("its switch went to %+v", got)
	}
	refused(t, p, arrange.MoveDoor{ID: door, To: plan.OnFace("szzzzzzzz", 0), With: []plan.ID{n2}}, plan.ErrGone)
}

// The old opening keeps its tag with a mark, and a second of the same tag a number too; what
// switched it, and what it switched, goes to the new one.
func TestOldTagsAreMarked(t *testing.T) {
	p := after(t, shed(t), edit.SetStatus{ID: n2, Status: plan.StatusExisting}, edit.SetStatus{ID: lamp, Status: plan.StatusExisting})
	by := opening(t, p, n2)
	by.ID, by.At.Along = "oaaaaaaaa", 8*ft
	p = after(t, p, edit.Succeed{Old: n2, By: by, Status: plan.StatusMoved})
	p = after(t, p, edit.SetStatus{ID: "oaaaaaaaa", Status: plan.StatusExisting})
	by.ID, by.At.Along = "obbbbbbbb", 7*ft
	p = after(t, p, edit.Succeed{Old: "oaaaaaaaa", By: by, Status: plan.StatusReplaced})
	for id, want := range map[plan.ID]string{n2: "S2-old", "oaaaaaaaa": "S2-old1", "obbbbbbbb": "S2"} {
		if got := opening(t, p, id).Tag; got != want {
			t.Errorf("%s is %s, want %s", id, got, want)
		}
	}
	light := opening(t, p, lamp)
	light.ID = "occcccccc"
	p = after(t, p, edit.Succeed{Old: lamp, By: light, Status: plan.StatusReplaced})
	c, _ := p.Controls.Get(control)
	if !slices.Equal(c.Switches, []plan.ID{"obbbbbbbb"}) || !slices.Equal(c.Loads, []plan.ID{"occcccccc"}) {
		t.Errorf("%v switch %v", c.Switches, c.Loads)
	}
}

// Each opening comes to the place worked out for it, and its way is told.
func TestPlacesWorkedOutBeforehand(t *testing.T) {
	p := after(t, shed(t), edit.ToSteps{Places: []edit.StepPlace{{ID: n1, At: plan.OnFace(north, 2*ft), Height: 20 * in}, {ID: n2, At: plan.OnFace(north, 8*ft), Height: 22 * in}}})
	for id, want := range map[plan.ID][2]unit.Length{n1: {2 * ft, 20 * in}, n2: {8 * ft, 22 * in}} {
		if o := opening(t, p, id); o.At != plan.OnFace(north, want[0]) || o.Height != plan.CentreAt(want[1]) {
			t.Errorf("%s is at %+v, %+v", id, o.At, o.Height)
		}
	}
	e := edit.ToStuds{Moves: []edit.StudMove{{ID: n1, Tag: "S1", From: 36 * in, To: 38 * in}, {ID: n2, Tag: "S2", From: 108 * in, To: 105 * in}}}
	var told []string
	for _, s := range e.Told() {
		told = append(told, s.String())
	}
	if want := []string{`S1 to the right by 2"`, `S2 to the left by 3"`}; !slices.Equal(told, want) {
		t.Errorf("told %q, want %q", told, want)
	}
	refused(t, p, edit.ToSteps{Places: []edit.StepPlace{{ID: n1, At: plan.OnFace(north, 99*ft)}}}, plan.ErrNoRoom)
	places := []plan.StudPlace{{At: ft, State: plan.StudStated}}
	studs := after(t, shed(t), edit.SetStuds{Side: north, Places: places})
	if ref, _ := studs.Side(north); !slices.Equal(ref.Side().Places, places) || !same(studs, after(t, studs, edit.SetStuds{Side: north, Places: places})) {
		t.Errorf("the studs are %+v", ref.Side().Places)
	}
}

// What the same person said of the same thing before gives place, unless it is of a later
// day; of what has no date nobody can tell which was first.
func TestWishesTakePlaces(t *testing.T) {
	said := func(id plan.ID, by, date string, about plan.ID) *plan.Wish {
		return &plan.Wish{ID: id, Kind: plan.WishChange, About: about, By: by, Date: date}
	}
	first := said("qaaaaaaaa", "Ann", "2026-03-02", n1)
	for _, tt := range []struct {
		name string
		now  *plan.Wish
		left []plan.ID
	}{
		{"later", said("qbbbbbbbb", "Ann", "2026-03-03", n1), []plan.ID{"qbbbbbbbb"}}, {"the same day", said("qbbbbbbbb", "Ann", "2026-03-02", n1), []plan.ID{"qbbbbbbbb"}},
		{"the day before", said("qbbbbbbbb", "Ann", "2026-03-01", n1), []plan.ID{"qaaaaaaaa"}}, {"no day", said("qbbbbbbbb", "Ann", "", n1), []plan.ID{"qbbbbbbbb"}},
		{"someone else", said("qbbbbbbbb", "Bob", "2026-03-01", n1), []plan.ID{"qaaaaaaaa", "qbbbbbbbb"}}, {"something else", said("qbbbbbbbb", "Ann", "2026-03-01", n2), []plan.ID{"qaaaaaaaa", "qbbbbbbbb"}},
	} {
		p := after(t, shed(t), edit.TakeWishes{Wishes: []*plan.Wish{first}}, edit.TakeWishes{Wishes: []*plan.Wish{tt.now}})
		var left []plan.ID
		for w := range p.Wishes.All() {
			left = append(left, w.ID)
		}
		if !slices.Equal(left, tt.left) {
			t.Errorf("%s: %v are left, want %v", tt.name, left, tt.left)
		}
	}
	undated := after(t, shed(t), edit.TakeWishes{Wishes: []*plan.Wish{said("qaaaaaaaa", "Ann", "", n1)}}, edit.TakeWishes{Wishes: []*plan.Wish{said("qbbbbbbbb", "Ann", "2026-03-01", n1)}})
	if _, has := undated.Wishes.Get("qbbbbbbbb"); !has || undated.Wishes.Len() != 1 {
		t.Error("what has no date was taken for later")
	}
	refused(t, undated, edit.TakeWishes{Wishes: []*plan.Wish{said("qbbbbbbbb", "Bob", "", n1)}}, plan.ErrTaken)
}

// As many things may stand on one another as a plan takes: what stands on the last of them
// still moves along its top, and as much out of it.
func TestWhatStandsOnManyMoves(t *testing.T) {
	p, on := shed(t), plan.ID(bench)
	for i := range plan.MaxStack {
		if i > 0 {
			next := plan.ID(fmt.Sprintf("fstack%c22", 'a'+i))
			p = after(t, p, edit.AddFixture{Fixture: plan.Fixture{ID: next, Kind: plan.FixtureDesk, At: plan.Anchor{Host: on, Part: plan.PartTop, Along: 3 * ft, Out: ft}, Width: 6 * ft, Depth: 2 * ft, Height: in}})
			on = next
		}
		at0 := plan.Anchor{Host: on, Part: plan.PartTop, Along: ft, Out: ft}
		o := plan.Opening{ID: "ostack222", Kind: "floor", At: at0, Gangs: 1, Status: plan.StatusNew}
		q := after(t, p, edit.AddOpening{Opening: o})
		// The bench stands at the west wall, which runs up the sheet.
		q = after(t, q, arrange.Move{Things: []plan.ID{o.ID}, By: at(2*in, -3*in)})
		if got := anchorIn(t, q, o.ID); got.Along != ft+3*in || got.Out != ft+2*in {
			t.Errorf("on %d things it comes to %v along and %v out, want 15 and 14 in", i+1, got.Along, got.Out)
		}
	}
}

// A panel that circuits name stays one, whatever else of it changes.
func TestANamedPanelStaysOne(t *testing.T) {
	p := shed(t)
	f, _ := p.Fixture(panel)
	wide := *f
	wide.Width = 20 * in
	if now, _ := after(t, p, edit.ChangeFixture{Fixture: wide}).Fixture(panel); now.Width != 20*in {
		t.Errorf("it is %v wide", now.Width)
	}
	desk := *f
	desk.Kind = plan.FixtureDesk
	refused(t, p, edit.ChangeFixture{Fixture: desk}, plan.ErrInUse)
}

// A door that is moved to where it is leaves the plan as it was; what takes the place of an
// opening is refused where it can stand nowhere.
func TestWhatMovesNowhere(t *testing.T) {
	p := shed(t)
	d, _ := p.Break(door)
	if still := after(t, p, edit.MoveBreak{ID: door, To: d.At}); !same(still, p) || still.Levels[0] != p.Levels[0] {
		t.Error("the plan is another")
	}
	old := after(t, p, edit.SetStatus{ID: n2, Status: plan.StatusExisting})
	by := opening(t, old, n2)
	by.ID, by.At.Host = "oaaaaaaaa", "szzzzzzzz"
	refused(t, old, edit.Succeed{Old: n2, By: by, Status: plan.StatusMoved}, plan.ErrGone)
}

// A door that is turned on to a shorter wall stands at its end: 3 ft of it before the end of
// a wall of 10 ft.
func TestATurnedDoorStaysOnItsWall(t *testing.T) {
	p := after(t, shed(t), edit.Remove{Things: []plan.ID{bench, panel}, Cascade: true}, edit.MoveBreak{ID: door, To: plan.OnFace(south, 9*ft)})
	if got := anchorIn(t, after(t, p, arrange.Turn{Things: []plan.ID{door}}), door); got != plan.OnFace(west, 7*ft) {
		t.Errorf("it stands at %+v, want 7 ft along the west wall", got)
	}
}

// What hangs in the ceiling of a room and what stands on its floor are not spread together.
func TestACeilingAndAFloorAreTwo(t *testing.T) {
	outlet := opening(t, shed(t), lamp)
	outlet.ID, outlet.Kind, outlet.Tag, outlet.At = "oaaaaaaaa", "floor", "", plan.OnFloor(shedRoom, at(2*ft, 2*ft))
	third := opening(t, shed(t), lamp)
	third.ID, third.Tag, third.At.At = "obbbbbbbb", "", at(9*ft, 9*ft)
	p := after(t, shed(t), edit.AddOpening{Opening: outlet}, edit.AddOpening{Opening: third})
	refused(t, p, arrange.Spread{Things: []plan.ID{lamp, "obbbbbbbb", "oaaaaaaaa"}}, plan.ErrNoRoom)
}
