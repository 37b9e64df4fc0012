package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// An opening aimed at an open side is refused, and so is a door: neither goes to the wall
// opposite.
func TestWhatIsAimedAtAnOpenSideIsRefused(t *testing.T) {
	f := newFake(t)
	r := f.square()
	open := *r.Sides[0]
	open.Kind = plan.SideOpen
	if err := f.Do(edit.ChangeSide{Side: open}); err != nil {
		t.Fatal(err)
	}
	f.click(&opening{}, at(40, 6))
	if len(f.openings()) != 0 || f.refused.ID != "tool.opening.open" {
		t.Errorf("%d openings, refused by %q", len(f.openings()), f.refused)
	}
	f.click(&brk{kind: plan.BreakDoor}, at(40, 6))
	if n := f.Plan().Level(ground).Breaks.Len(); n != 0 || f.refused.ID != "tool.break.nowhere" {
		t.Errorf("%d doors, refused by %q", n, f.refused)
	}
}

// What nothing else snaps lands on 1/2 in or 10 mm.
func TestAClickLandsOnTheStepOfThePlan(t *testing.T) {
	for _, tt := range []struct {
		isMetric bool
		at       Pointer
		want     unit.Length
	}{
		{false, at(40.3, 6), 40*unit.Inch + unit.Inch/2},
		{false, at(40.2, 6), 40 * unit.Inch},
		{true, Pointer{At: geom.Point{X: 1016 * unit.Millimetre, Y: 100 * unit.Millimetre}, Reach: 20 * unit.Millimetre}, 1020 * unit.Millimetre},
	} {
		f := newFake(t)
		f.isMetric = tt.isMetric
		f.square()
		f.click(&opening{}, tt.at)
		if len(f.openings()) != 1 {
			t.Fatalf("no opening: %v, said %q", f.failed, f.said)
		}
		if got := f.openings()[0].At.Along; got != tt.want {
			t.Errorf("metric %v: it is at %v, want %v", tt.isMetric, got, tt.want)
		}
	}
}

// A door, a cabinet and what is dragged land on the same step as an opening does.
func TestWhatStandsOnAFaceLandsOnTheStepOfThePlan(t *testing.T) {
	f := newFake(t)
	f.square()
	f.click(&brk{kind: plan.BreakWindow}, at(50.3, 6))
	f.click(&fixture{kind: "desk"}, at(55.3, 114))
	var window *plan.Break
	for b := range f.Plan().Level(ground).Breaks.All() {
		window = b
	}
	var desk *plan.Fixture
	for x := range f.Plan().Level(ground).Fixtures.All() {
		desk = x
	}
	if window == nil || desk == nil {
		t.Fatalf("window %v, desk %v, said %q", window, desk, f.said)
	}
	// What is pointed at is the middle of either: half of the width is to the left.
	if want := (inch(50.3) - window.Width/2).Rounded(unit.Inch / 2); window.At.Along != want {
		t.Errorf("the window is at %v, want %v", window.At.Along, want)
	}
	if want := (inch(144-55.3) - desk.Width/2).Rounded(unit.Inch / 2); desk.At.Along != want {
		t.Errorf("the desk is at %v, want %v", desk.At.Along, want)
	}
	f.chosen = nil
	f.drag(&choose{}, at(50, 0), at(58.6, 0))
	now, _ := f.Plan().Break(window.ID)
	if by := now.At.Along - window.At.Along; by != inch(8.5) {
		t.Errorf("dragged 8.6 in the window went %v, want 8 1/2 in", by)
	}
}

// below gives a fake a hall on the level that shows as a ghost.
func below(t *testing.T, f *fake) {
	f.ghost = "vbbbbbbbb"
	hall := plan.NewRoom("rbbbbbbbb", "Hall", plan.UseHall,
		geom.Polygon{{X: inch(30), Y: inch(30)}, {X: inch(130), Y: inch(30)}, {X: inch(130), Y: inch(110)}, {X: inch(30), Y: inch(110)}},
		[]plan.ID{"sabbbbbbb", "sbbbbbbbb", "scbbbbbbb", "sdbbbbbbb"})
	hall.Ceiling = 8 * unit.Foot
	for _, e := range []edit.Edit{edit.AddLevel{ID: f.ghost, Title: "Below", Elevation: -9 * unit.Foot}, edit.AddRoom{Level: f.ghost, Room: hall}} {
		if err := f.Do(e); err != nil {
			t.Fatal(err)
		}
	}
}

// The faces and corners of the level that shows as a ghost are snapped to, and named.
func TestTheGhostIsSnappedTo(t *testing.T) {
	f := newFake(t)
	below(t, f)
	r := &room{}
	r.Move(f, at(31, 28.5))
	if got := f.preview.Snap.String(); got != "corner of Hall on Below" || f.preview.SnapAt == nil {
		t.Errorf("over the corner of the hall the snap is %q", got)
	}
	f.click(r, at(31, 28.5))
	if len(r.corners) != 1 || r.corners[0] != (geom.Point{X: inch(30), Y: inch(30)}) {
		t.Fatalf("the first corner is at %v, want that of the hall below", r.corners)
	}
	r.Move(f, at(90, 108))
	r.Down(f, at(132, 33))
	if got := r.corners[1]; got != (geom.Point{X: inch(130), Y: inch(30)}) {
		t.Errorf("the second is at %v, want the hall's next", got)
	}
	f.ghost = ""
	r = &room{}
	f.click(r, at(31, 28.5))
	if r.corners[0] == (geom.Point{X: inch(30), Y: inch(30)}) {
		t.Error("a level that does not show is snapped to")
	}
}

// A rectangle, a corner, a wall and a whole room that are dragged snap to the ghost too, and
// the snap is told while they are on the way.
func TestWhatIsDraggedSnapsToTheGhost(t *testing.T) {
	drawn := func(t *testing.T) (*fake, *plan.Room) {
		f := newFake(t)
		f.drag(&room{}, at(200, 200), at(300, 280))
		below(t, f)
		return f, f.rooms()[0]
	}
	for name, tt := range map[string]struct {
		of       func(*plan.Room) plan.ID // what is chosen
		from, to Pointer
		tool     Tool
		snap     string
		is       func(now geom.Polygon) bool
	}{
		"a rectangle": {nil, at(60, 50), at(128, 111.5), &room{}, "corner of Hall on Below",
			func(now geom.Polygon) bool {
				return now.Box() == geom.BoxOf(geom.Point{X: inch(60), Y: inch(50)}, geom.Point{X: inch(130), Y: inch(110)})
			}},
		"a corner": {func(r *plan.Room) plan.ID { return r.ID }, at(200, 200), at(131, 112), &choose{}, "corner of Hall on Below",
			func(now geom.Polygon) bool { return now.Box().Min == geom.Point{X: inch(130), Y: inch(110)} }},
		"a wall": {func(r *plan.Room) plan.ID { return r.Sides[0].ID }, at(250, 200), at(250, 111), &choose{}, "in line with Hall on Below",
			func(now geom.Polygon) bool { return now.Box().Min.Y == inch(110) }},
		"a room": {func(r *plan.Room) plan.ID { return r.ID }, at(250, 240), at(180.5, 240), &choose{}, "in line with Hall on Below",
			func(now geom.Polygon) bool { return now.Box().Min.X == inch(130) }},
	} {
		t.Run(name, func(t *testing.T) {
			f, r := drawn(t)
			if tt.of != nil {
				f.chosen = []plan.ID{tt.of(r)}
			}
			tt.tool.Move(f, tt.from)
			tt.tool.Down(f, tt.from)
			tt.tool.Move(f, Pointer{At: tt.from.At.Add(geom.Point{X: inch(20), Y: inch(20)}), Reach: tt.from.Reach})
			tt.tool.Move(f, tt.to)
			if got := f.preview.Snap.String(); got != tt.snap {
				t.Errorf("on the way the snap is %q, want %q", got, tt.snap)
			}
			tt.tool.Up(f, tt.to)
			var outlines []geom.Polygon
			isThere := false
			for _, now := range f.rooms() {
				outlines = append(outlines, now.Outline())
				isThere = isThere || tt.is(now.Outline())
			}
			if !isThere {
				t.Errorf("the rooms are %v; failed %v", outlines, f.failed)
			}
		})
	}
}

// A door dragged with the control key takes its switch along, without it goes alone.
func TestADraggedDoorTakesItsSwitchAlong(t *testing.T) {
	for _, asked := range []bool{false, true} {
		f, r := furnished(t)
		var door *plan.Break
		for b := range f.Plan().Level(ground).Breaks.All() {
			door = b
		}
		f.kind = "switch"
		o := &opening{}
		o.Move(f, at(20, 119)) // the south face runs to the left
		f.click(o, at(20, 119))
		var before *plan.Opening
		for _, x := range f.openings() {
			if x.Kind == "switch" {
				before = x
			}
		}
		if before == nil || before.At.Host != r.Sides[2].ID {
			t.Fatalf("the switch is %+v, said %q", before, f.said)
		}
		from, to := at(50, 120), at(70, 120)
		from.Control, to.Control = asked, asked
		f.chosen = nil
		f.drag(&choose{}, from, to)
		now, _ := f.Plan().Break(door.ID)
		after, _ := f.Plan().Opening(before.ID)
		moved, want := now.At.Along-door.At.Along, unit.Length(0)
		if asked {
			want = moved
		}
		if moved == 0 || after.At.Along-before.At.Along != want {
			t.Errorf("asked %v: the door went %v, its switch %v", asked, moved, after.At.Along-before.At.Along)
		}
	}
}
