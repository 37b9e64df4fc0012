package edit_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestRemovingWhatThingsHangOn(t *testing.T) {
	p := shed(t)
	all := []plan.ID{n1, n2, lamp, front, door, window, bench, sink, panel}
	refused(t, p, edit.Remove{Things: []plan.ID{shedRoom}}, plan.ErrInUse, all...)
	refused(t, p, edit.Remove{Things: []plan.ID{ground}}, plan.ErrInUse, shedRoom)
	refused(t, p, edit.Remove{Things: []plan.ID{bench}}, plan.ErrInUse, sink, front)
	refused(t, p, edit.Remove{Things: []plan.ID{panel}}, plan.ErrInUse, circuit, feed)
	refused(t, p, edit.Remove{Things: []plan.ID{circuit}}, plan.ErrInUse, feed, run)

	// A tap on the sink on the bench, whose ID comes before both.
	tap := plan.Fixture{ID: "faaaaaaaa", Kind: "tap", At: plan.Anchor{Host: sink, Part: plan.PartTop}, Width: in}
	refused(t, after(t, p, edit.AddFixture{Fixture: tap}), edit.Remove{Things: []plan.ID{bench}}, plan.ErrInUse, sink, front, tap.ID)

	_, err := edit.Remove{Things: []plan.ID{shedRoom}}.Apply(p)
	if got := err.Error(); !strings.Contains(got, "opening S1, opening S2") || !strings.Contains(got, "and 5 more") {
		t.Errorf("the refusal reads %q", got)
	}
}

func TestCascadesLeaveNothingBehind(t *testing.T) {
	for _, tt := range []struct {
		name string
		edit edit.Edit
	}{
		{"room", edit.Remove{Things: []plan.ID{shedRoom}, Cascade: true}},
		{"level", edit.Remove{Things: []plan.ID{ground}, Cascade: true}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p := after(t, shed(t), tt.edit)
			if p.Cables.Len()+p.Controls.Len()+p.Waivers.Len() != 0 {
				t.Errorf("cables %d, controls %d, waivers %d are left", p.Cables.Len(), p.Controls.Len(), p.Waivers.Len())
			}
			if c, _ := p.Circuits.Get(circuit); c == nil || c.Panel != "" {
				t.Errorf("the circuit is %+v, want one without a panel", c)
			}
			if got := p.Header.NextTag["S"]; got != 5 {
				t.Errorf("the next tag is S%d, want S5", got)
			}
		})
	}
	p := after(t, shed(t), edit.Remove{Things: []plan.ID{bench}, Cascade: true})
	if o, _ := p.Opening(front); o != nil {
		t.Error("the opening in the bench is still there")
	}
	p = after(t, shed(t), edit.Remove{Things: []plan.ID{circuit}, Cascade: true})
	if c, _ := p.Cables.Get(run); c == nil || c.Circuit != "" {
		t.Errorf("the cable is %+v, want one on no circuit", c)
	}
}

func TestMoveRoomCarriesAll(t *testing.T) {
	by := at(5*ft, -2*ft)
	p := after(t, shed(t), edit.AddOpening{Opening: plan.Opening{ID: "oaaaaaaaa", Kind: "floor", At: plan.OnFloor(shedRoom, at(ft, ft)), Status: plan.StatusNew}},
		edit.MoveRoom{ID: shedRoom, By: by})
	if got, want := opening(t, p, lamp).At.At, at(6*ft, 5*ft).Add(by); got != want {
		t.Errorf("the lamp hangs at %v, want %v", got, want)
	}
	if got, want := opening(t, p, "oaaaaaaaa").At.At, at(ft, ft).Add(by); got != want {
		t.Errorf("the floor opening is at %v, want %v", got, want)
	}
	if got, want := opening(t, p, n1).At, plan.OnFace(north, 3*ft); got != want {
		t.Errorf("S1 stands at %v, want %v", got, want)
	}
	if got := corners(room(t, p)); !slices.Equal(got, []int{60, -24, 204, -24, 204, 96, 60, 96}) {
		t.Errorf("corners %v", got)
	}
	refused(t, p, edit.MoveRoom{ID: shedRoom, By: at(plan.Reach, 0)}, plan.ErrNoRoom)
}

func TestRoomsAreClockwise(t *testing.T) {
	r := plan.NewRoom("raaaaaaaa", "Porch", plan.UseOutdoors, geom.Polygon{at(0, 0), at(0, ft), at(2*ft, ft), at(2*ft, 0)},
		[]plan.ID{"swwwwwwww", "sssssssss", "seeeeeeee", "snnnnnnnn"})
	r.Sides[1].Kind = plan.SideRailing
	r.Ceiling = 8 * ft
	p := after(t, plan.New("Porch", ground), edit.AddRoom{Level: ground, Room: r})
	got, _ := p.Room("raaaaaaaa")
	if !slices.Equal(corners(got), []int{0, 0, 24, 0, 24, 12, 0, 12}) {
		t.Errorf("corners %v", corners(got))
	}
	i := got.SideAt("sssssssss")
	if s := got.Sides[i]; s.Kind != plan.SideRailing || got.Segment(i) != (geom.Segment{A: at(2*ft, ft), B: at(0, ft)}) {
		t.Errorf("the railing is %+v along %v", s, got.Segment(i))
	}
	if got.Prefix != "P" {
		t.Errorf("the prefix is %q, want P", got.Prefix)
	}
}

func TestRoomsRefuse(t *testing.T) {
	p := shed(t)
	room := func(corners geom.Polygon, change func(*plan.Room)) edit.Edit {
		ids := []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"}
		r := plan.NewRoom("raaaaaaaa", "Bath", plan.UseBath, corners, ids)
		r.Ceiling = 8 * ft
		if change != nil {
			change(&r)
		}
		return edit.AddRoom{Level: ground, Room: r}
	}
	square := geom.Polygon{at(0, 0), at(ft, 0), at(ft, ft), at(0, ft)}
	for _, tt := range []struct {
		name  string
		edit  edit.Edit
		cause error
	}{
		{"two corners", room(square[:2], nil), plan.ErrNoRoom},
		{"crossing itself", room(geom.Polygon{at(0, 0), at(ft, 0), at(0, ft), at(ft, ft)}, nil), plan.ErrNoRoom},
		{"a side without length", room(geom.Polygon{at(0, 0), at(ft, 0), at(ft, 0), at(0, ft)}, nil), plan.ErrNoRoom},
		{"flat", room(geom.Polygon{at(0, 0), at(ft, 0), at(2*ft, 0)}, nil), plan.ErrNoRoom},
		{"a side's ID in use", room(square, func(r *plan.Room) { r.Sides[2].ID = north }), plan.ErrTaken},
		{"a side's ID twice", room(square, func(r *plan.Room) { r.Sides[2].ID = r.Sides[0].ID }), plan.ErrTaken},
		{"a room's ID in use", room(square, func(r *plan.Room) { r.ID = shedRoom }), plan.ErrTaken},
		{"an ID of another kind", room(square, func(r *plan.Room) { r.ID = "oaaaaaaaa" }), nil},
		{"a missing side", room(square, func(r *plan.Room) { r.Sides[2] = nil }), plan.ErrTaken},
		{"no ceiling", room(square, func(r *plan.Room) { r.Ceiling = 0 }), nil},
		{"a prefix with a space", room(square, func(r *plan.Room) { r.Prefix = "A B" }), nil},
		{"beyond reach", room(square.Moved(at(plan.Reach, 0)), nil), plan.ErrNoRoom},
		{"no level", edit.AddRoom{Level: "vzzzzzzzz"}, plan.ErrGone},
		{"a ceiling below a window", edit.ChangeRoom{Room: plan.Room{ID: shedRoom, Ceiling: 6 * ft}}, plan.ErrNoRoom},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, p, tt.edit, tt.cause) })
	}
}

func TestBreaksRefuse(t *testing.T) {
	p := shed(t)
	add := func(along, width unit.Length, change func(*plan.Break)) edit.Edit {
		b := plan.Break{ID: "baaaaaaaa", Kind: plan.BreakDoor, At: plan.OnFace(south, along), Width: width, Head: 80 * in}
		if change != nil {
			change(&b)
		}
		return edit.AddBreak{Break: b}
	}
	after(t, p, add(4*ft, 2*ft, nil), edit.MoveBreak{ID: door, To: plan.OnFace(south, 9*ft)}) // they may touch
	for _, tt := range []struct {
		name   string
		edit   edit.Edit
		cause  error
		things []plan.ID
	}{
		{"over another", add(2*ft, ft, nil), plan.ErrNoRoom, []plan.ID{door, "baaaaaaaa"}},
		{"an inch over another", add(47*in, ft, nil), plan.ErrNoRoom, []plan.ID{door, "baaaaaaaa"}},
		{"past the end", add(10*ft, 3*ft, nil), plan.ErrNoRoom, nil},
		{"in a ceiling", add(0, ft, func(b *plan.Break) { b.At = plan.OnCeiling(shedRoom, at(ft, ft)) }), plan.ErrNoRoom, nil},
		{"no width", add(6*ft, 0, nil), nil, nil},
		{"above the ceiling", add(6*ft, ft, func(b *plan.Break) { b.Head = 9 * ft }), plan.ErrNoRoom, nil},
		{"a sill above the head", add(6*ft, ft, func(b *plan.Break) { b.Sill = 7 * ft }), nil, nil},
		{"a slider without panels", add(6*ft, ft, func(b *plan.Break) { b.Kind = plan.BreakSlider }), nil, nil},
		{"an unknown panel", add(6*ft, ft, func(b *plan.Break) { b.Panels = []plan.Panel{"stuck"} }), nil, nil},
		{"an unknown hand", add(6*ft, ft, func(b *plan.Break) { b.Hand = "upper" }), nil, nil},
		{"moved over another", edit.Steps{Edits: []edit.Edit{add(6*ft, ft, nil), edit.MoveBreak{ID: door, To: plan.OnFace(south, 5*ft)}}}, plan.ErrNoRoom, nil},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, p, tt.edit, tt.cause, tt.things...) })
	}
}

func TestFixturesRefuse(t *testing.T) {
	p := shed(t)
	changed := func(id plan.ID, change func(*plan.Fixture)) edit.Edit {
		f, _ := p.Fixture(id)
		c := *f
		change(&c)
		return edit.ChangeFixture{Fixture: c}
	}
	onTop := func(host plan.ID) plan.Anchor { return plan.Anchor{Host: host, Part: plan.PartTop, Along: in, Out: in} }
	for _, tt := range []struct {
		name   string
		edit   edit.Edit
		cause  error
		things []plan.ID
	}{
		{"on itself", edit.MoveFixture{ID: bench, To: onTop(bench)}, plan.ErrNoRoom, nil},
		{"on what stands on it", edit.MoveFixture{ID: bench, To: onTop(sink)}, plan.ErrGone, nil},
		{"past the end", edit.MoveFixture{ID: bench, To: plan.OnFace(west, 5*ft)}, plan.ErrNoRoom, nil},
		{"in front of another", edit.MoveFixture{ID: sink, To: plan.Anchor{Host: bench, Part: plan.PartFront}}, plan.ErrNoRoom, nil},
		{"too narrow for its sink", changed(bench, func(f *plan.Fixture) { f.Width = 2 * ft }), plan.ErrNoRoom, []plan.ID{sink}},
		{"too low for its opening", changed(bench, func(f *plan.Fixture) { f.Height = ft }), plan.ErrNoRoom, []plan.ID{front}},
		{"no longer a panel", changed(panel, func(f *plan.Fixture) { f.Kind = plan.FixtureDesk }), plan.ErrInUse, []plan.ID{circuit, feed}},
		{"a fifth quarter", changed(sink, func(f *plan.Fixture) { f.Turn = 5 }), nil, nil},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, p, tt.edit, tt.cause, tt.things...) })
	}
}

func TestThingsMoveToAnotherLevel(t *testing.T) {
	r := plan.NewRoom("ratt22222", "Loft", plan.UseDen, geom.Polygon{at(0, 0), at(20*ft, 0), at(20*ft, 20*ft)}, []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc"})
	r.Ceiling = 8 * ft
	p := after(t, shed(t), edit.AddLevel{ID: "vupr22222", Title: "Upper", Elevation: 9 * ft}, edit.AddRoom{Level: "vupr22222", Room: r},
		edit.MoveFixture{ID: bench, To: plan.OnFace("saaaaaaaa", 0)},
		edit.MoveOpening{ID: n1, To: plan.OnFace("sbbbbbbbb", ft)},
		edit.MoveBreak{ID: door, To: plan.OnFace("sbbbbbbbb", ft)})
	upper := p.Level("vupr22222")
	if upper.Openings.Len() != 2 || upper.Fixtures.Len() != 2 || upper.Breaks.Len() != 1 {
		t.Errorf("upstairs are %d openings, %d fixtures and %d breaks, want 2, 2 and 1", upper.Openings.Len(), upper.Fixtures.Len(), upper.Breaks.Len())
	}
	if o := opening(t, p, n1); o.Tag != "S1" {
		t.Errorf("the opening became %s, want S1", o.Tag)
	}
}

func TestStepsAreAllOrNothing(t *testing.T) {
	p := shed(t)
	label := words.New("test.both", "Both")
	e := edit.Steps{Label: label, Edits: []edit.Edit{edit.SetUnits{Units: plan.UnitsMetric}, edit.Remove{Things: []plan.ID{"ozzzzzzzz"}}}}
	refused(t, p, e, plan.ErrGone)
	e.Edits = e.Edits[:1]
	if got := after(t, p, e); got.Header.Units != plan.UnitsMetric || e.Name().String() != "Both" {
		t.Errorf("after %s the units are %s", e.Name(), got.Header.Units)
	}
}

func TestHeaderKeepsWhatTheUserDoesNotSee(t *testing.T) {
	p := after(t, shed(t), edit.Remove{Things: []plan.ID{front}})
	p = after(t, p, edit.ChangeHeader{Header: plan.Header{Title: "Boat shed", Units: plan.UnitsMetric, Edition: "2020", North: 90}})
	if p.Header.Title != "Boat shed" || p.Header.NextTag["S"] != 5 {
		t.Errorf("the header is %+v", p.Header)
	}
	refused(t, p, edit.ChangeHeader{Header: plan.Header{Units: "ells", Edition: "2020"}}, nil)
	refused(t, p, edit.ChangeHeader{Header: plan.Header{Units: plan.UnitsMetric}}, nil)
	unseen := plan.Header{Title: "a\u202eb", Units: plan.UnitsMetric, Edition: "2020"} // no file may have it
	refused(t, p, edit.ChangeHeader{Header: unseen}, nil)
}

func TestRefusalsAreTyped(t *testing.T) {
	_, err := edit.MoveOpening{ID: n1, To: plan.OnFace(north, 13*ft)}.Apply(shed(t))
	var r *plan.Refusal
	if !errors.As(err, &r) || r.Field != "/at/along" {
		t.Fatalf("the refusal is %#v", err)
	}
	if got, want := (words.Voice{System: unit.Metric}).Say(r.Text), "opening S1 would stand past the end of its side, which is ≈ 3.658 m long"; got != want {
		t.Errorf("in metric it reads %q, want %q", got, want)
	}
}
