package tool

import (
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

func TestDropOpenings(t *testing.T) {
	for _, tt := range []struct {
		name  string
		at    Pointer
		side  int // north, east, south, west
		along float64
		snap  string
	}{
		{"on the nearest face, on the step of 1/2 in", at(40.4, 6), 0, 40.5, ""},
		{"in the middle of the wall", at(73, 10), 0, 72, "center of the wall"},
		{"a round distance from a corner", at(59.7, 4), 0, 60, `5' 0" from the left corner`},
		{"the middle of another wall", at(143, 61), 1, 60, "center of the wall"},
		{"measured from the left end as seen in the room", at(100.2, 118), 2, 44, ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			f, o := newFake(t), &opening{}
			r := f.square()
			o.Move(f, tt.at)
			if got := f.preview.Snap.String(); got != tt.snap {
				t.Errorf("the snap shown is %q, want %q", got, tt.snap)
			}
			f.click(o, tt.at)
			if len(f.openings()) != 1 {
				t.Fatalf("no opening: %v, said %q", f.failed, f.said)
			}
			got := f.openings()[0]
			if got.At.Host != r.Sides[tt.side].ID {
				t.Errorf("it is on side %d, want %d", r.SideAt(got.At.Host), tt.side)
			}
			if d := got.At.Along - inch(tt.along); d != 0 {
				t.Errorf("it is %v along, want %v", got.At.Along, inch(tt.along))
			}
			if got.Height.Value != 16*unit.Inch || got.Tag == "" || len(f.chosen) != 1 || f.chosen[0] != got.ID {
				t.Errorf("height %v, tag %q, chosen %v", got.Height.Value, got.Tag, f.chosen)
			}
			f.check()
		})
	}
}

func TestSnapIsShownBeforeTheClick(t *testing.T) {
	f, o := newFake(t), &opening{}
	f.square()
	o.Move(f, at(73, 10))
	if f.preview.Snap.String() != "center of the wall" || f.preview.SnapAt == nil || f.preview.Ghost == nil {
		t.Fatalf("preview %+v", f.preview)
	}
	if got, want := f.preview.Ghost.Foot, (geom.Point{X: inch(72)}); got != want {
		t.Errorf("the ghost's foot is at %v, want %v", got, want)
	}
	if len(f.preview.Dims) != 2 || f.preview.Dims[0].Text != "6'" && f.preview.Dims[0].Text != `6' 0"` {
		t.Errorf("dimensions %+v, want 6 ft on either hand", f.preview.Dims)
	}
	free := at(73, 10)
	free.Shift = true
	o.Move(f, free)
	if got := f.preview.Ghost.At.Along; got != inch(73) || !f.preview.Snap.IsZero() {
		t.Errorf("with Shift it goes to %v (%s), want 73 in exactly", got, f.preview.Snap)
	}
}

func TestTypedDistanceIsFromTheNearerCorner(t *testing.T) {
	f, o := newFake(t), &opening{}
	f.square()
	o.Move(f, at(30, 3))
	f.typed(o, "14 1/2")
	o.Move(f, at(120, 3))
	f.typed(o, `1' 6"`)
	got := f.openings()
	if len(got) != 2 {
		t.Fatalf("%d openings; %v", len(got), f.failed)
	}
	along := map[unit.Length]bool{got[0].At.Along: true, got[1].At.Along: true}
	if !along[inch(14.5)] || !along[inch(126)] {
		t.Errorf("they stand at %v, want 14.5 and 126 in", along)
	}
	if !o.typed.isEmpty() {
		t.Error("what was typed is still there for the next")
	}
}

func TestOpeningsLineUp(t *testing.T) {
	f, o := newFake(t), &opening{}
	f.square()
	f.kind = "duplex"
	o.Move(f, at(20, 3))
	f.typed(o, "20")
	o.Move(f, at(50, 3))
	f.typed(o, "50")
	tag := func(along float64) string {
		for _, got := range f.openings() {
			if got.At.Along == inch(along) {
				return got.Tag
			}
		}
		return "?"
	}
	for _, tt := range []struct {
		at   Pointer
		want float64
		snap string
	}{
		{at(34, 3), 35, "halfway from " + tag(20) + " to " + tag(50)},
		{at(81.5, 3), 80, "as far as from " + tag(20) + " to " + tag(50)},
		{at(51, 118), 94, "in line with " + tag(50)},
	} {
		o.Move(f, tt.at)
		if got := f.preview.Ghost.At.Along; got != inch(tt.want) || f.preview.Snap.String() != tt.snap {
			t.Errorf("at %v it goes to %v (%s), want %v in (%s)", tt.at.At, got, f.preview.Snap, tt.want, tt.snap)
		}
	}
}

func TestCeilingAndFloorAndIsland(t *testing.T) {
	f, o := newFake(t), &opening{}
	r := f.square()
	f.kind = "ceiling-light"
	f.click(o, at(71, 62))
	f.kind = "floor"
	f.click(o, at(30, 30))
	fx := &fixture{kind: plan.FixtureIsland}
	f.click(fx, at(72, 60))
	f.kind = "island"
	f.click(o, at(72, 77)) // near the island's front, 78 in down the sheet
	if len(f.openings()) != 3 {
		t.Fatalf("%d openings; %v", len(f.openings()), f.failed)
	}
	parts := map[plan.Part]*plan.Opening{}
	for _, got := range f.openings() {
		parts[got.At.Part] = got
	}
	if c := parts[plan.PartCeiling]; c == nil || c.At.Host != r.ID || c.At.At != (geom.Point{X: inch(72), Y: inch(60)}) {
		t.Errorf("ceiling light at %+v, want the middle of the room", c)
	}
	if parts[plan.PartFloor] == nil {
		t.Error("no floor receptacle")
	}
	if i := parts[plan.PartFront]; i == nil || i.At.Along != inch(36) || i.Height.Value != inch(30) {
		t.Errorf("island receptacle %+v, want in the middle of the front, 30 in up", i)
	}
	f.check()
}

func TestNoWallIsSaid(t *testing.T) {
	f, o := newFake(t), &opening{}
	f.click(o, at(10, 10))
	if f.said.IsZero() || f.preview.Cursor != CursorNo {
		t.Errorf("dropped on no wall: said %q, cursor %v", f.said, f.preview.Cursor)
	}
	if o.Cancel(f) {
		t.Error("Esc with nothing typed is said to have stepped back")
	}
}

func TestUnfoldedHeightSnaps(t *testing.T) {
	f, o := newFake(t), &opening{}
	r := f.square()
	p := Pointer{At: geom.Point{X: inch(30)}, Reach: 2 * unit.Inch, OnUnfold: true, Side: r.Sides[0].ID, Height: inch(17)}
	o.Move(f, p)
	if got := f.preview.Ghost.Height; got != inch(16) || !strings.Contains(f.preview.Snap.String(), "usual height") {
		t.Errorf("height %v (%s), want the usual 16 in", got, f.preview.Snap)
	}
	p.Height = inch(40.3)
	f.click(o, p)
	if got := f.openings()[0].Height.Value; got != inch(40.5) {
		t.Errorf("height %v, want 40.5 in", got)
	}
}

func TestSnapsAreTheSameEachTime(t *testing.T) {
	f, o := newFake(t), &opening{}
	f.square()
	for _, x := range []float64{20, 35, 50, 77} {
		o.Move(f, at(x, 3))
		f.typed(o, "12")
		f.click(o, at(x, 117))
	}
	for x := 0.0; x < 144; x += 0.7 {
		o.Move(f, at(x, 3))
		first := f.preview
		o.Move(f, at(x, 3))
		if f.preview.Snap.String() != first.Snap.String() || *f.preview.Ghost != *first.Ghost {
			t.Fatalf("at %v: %s and then %s", x, first.Snap, f.preview.Snap)
		}
	}
}

// A wall of 12 ft with a door from 3 ft to 5 ft 6 in: what is set at 8 ft is 2 ft 6 in from
// the door and 4 ft from the corner.
func TestDimensionsRunToADoor(t *testing.T) {
	f, o := newFake(t), &opening{}
	r := f.square()
	door := plan.Break{ID: f.NewID(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(r.Sides[0].ID, inch(36)), Width: inch(30), Head: inch(80)}
	if err := f.Do(edit.AddBreak{Break: door}); err != nil {
		t.Fatal(err)
	}
	o.Move(f, at(96, 4))
	dims := f.preview.Dims
	if len(dims) != 2 || dims[0].Text != `2' 6"` || !strings.HasPrefix(dims[1].Text, "4'") {
		t.Errorf("dimensions %+v, want 2 ft 6 in to the door and 4 ft to the corner", dims)
	}
}

// Studs at 16 in whose first centre is 5 in from the left end stand at 5, 21 and 37: a box
// 2-5/16 in wide against the right flank of the one at 21 is at 21 + 3/4 + 1-5/32, or 22-29/32: by the tape's sixteenths at
// 22-15/16, 1/32 in off the flank.
func TestBoxesSnapToTheStudsThereAre(t *testing.T) {
	f, o := newFake(t), &opening{}
	r := f.square()
	side := *r.Sides[0]
	side.Studs = plan.Studs{Spacing: 16 * unit.Inch, First: 5 * unit.Inch}
	if err := f.Do(edit.ChangeSide{Side: side}); err != nil {
		t.Fatal(err)
	}
	f.click(o, at(22.7, 4))
	if got, want := f.openings()[0].At.Along, inch(22.9375); got != want {
		t.Errorf("set at %s, want %s: against the stud", got, want)
	}
	// A round distance at which a stud stands is not offered: one is at 37 in, none near 48.
	for x, isOffered := range map[float64]bool{36: false, 48: true} {
		o.Move(f, at(x, 4))
		if got := strings.Contains(f.preview.Snap.String(), "from the left corner"); got != isOffered {
			t.Errorf("%v in from the corner is offered %v, want %v: the snap is %q", x, got, isOffered, f.preview.Snap)
		}
	}
}

// A dimension tells how deep the room is that it stands in, and how thick the wall behind.
func TestADimensionTellsOfItsRoom(t *testing.T) {
	f := newFake(t)
	f.square()
	o := &opening{}
	o.Move(f, at(40, 1))
	if len(f.preview.Dims) != 2 {
		t.Fatalf("dimensions: %+v", f.preview.Dims)
	}
	for _, d := range f.preview.Dims {
		// A partition of 2×4 with 1/2 in on either face: common practice.
		if d.Deep != 120*unit.Inch || d.Wall != 9*unit.Inch/2 {
			t.Errorf("%s: the room is %v deep, its wall %v", d.Text, d.Deep, d.Wall)
		}
	}
}

// What goes into a ceiling is told to go into a room, and not along a face.
func TestTheHintGoesByWhereTheKindGoes(t *testing.T) {
	f := newFake(t)
	for kind, want := range map[string]string{"duplex": "tool.opening.hint", "ceiling-light": "tool.opening.hint-flat", "floor": "tool.opening.hint-flat"} {
		f.kind = kind
		if got := (&opening{}).Hint(f).ID; got != want {
			t.Errorf("of a %s: %s, want %s", kind, got, want)
		}
	}
}
