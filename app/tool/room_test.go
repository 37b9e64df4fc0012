package tool

import (
	"slices"
	"strings"
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func corners(xy ...float64) (p geom.Polygon) {
	for i := 0; i < len(xy); i += 2 {
		p = append(p, geom.Point{X: inch(xy[i]), Y: inch(xy[i+1])})
	}
	return p
}

func sameOutline(a, b geom.Polygon) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

func TestTraceRoomByClicks(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0.2, -0.3))
	f.click(r, at(144.3, 2)) // square to the last, on the grid
	f.click(r, at(143, 120.2))
	f.click(r, at(1.5, 121))
	if snap := f.preview.Snap.String(); !strings.Contains(snap, "square") {
		t.Errorf("the snap of the last corner is told as %q", snap)
	}
	f.click(r, at(1, 2)) // the first corner
	if len(f.rooms()) != 1 {
		t.Fatalf("%d rooms after closing, want 1; refused: %v", len(f.rooms()), f.failed)
	}
	got := f.rooms()[0].Outline()
	if want := corners(0, 0, 144, 0, 144, 120, 0, 120); !sameOutline(got, want) {
		t.Errorf("outline %v, want %v", got, want)
	}
	if f.chosen[0] != f.rooms()[0].ID {
		t.Error("the new room is not chosen")
	}
	f.check()
}

func TestTraceRoomByTypedLengths(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0, 0))
	for _, step := range []struct {
		toward Pointer
		text   string
	}{{at(50, 1), `12' 6"`}, {at(151, 40), "10'"}, {at(100, 119), "150"}} {
		r.Move(f, step.toward)
		f.typed(r, step.text)
	}
	if !r.Type(f, Key{Name: "Enter"}) {
		t.Fatal("Enter does not close the room")
	}
	if len(f.rooms()) != 1 {
		t.Fatalf("no room: %v, said %s", f.failed, f.said)
	}
	if got, want := f.rooms()[0].Outline(), corners(0, 0, 150, 0, 150, 120, 0, 120); !sameOutline(got, want) {
		t.Errorf("outline %v, want %v", got, want)
	}
}

func TestRectangleByDraggingAndByWidthTimesDepth(t *testing.T) {
	f := newFake(t)
	f.square()
	if got, want := f.rooms()[0].Outline(), corners(0, 0, 144, 0, 144, 120, 0, 120); !sameOutline(got, want) {
		t.Errorf("dragged outline %v, want %v", got, want)
	}
	r := &room{}
	f.click(r, at(0, 300))
	r.Move(f, at(10, 310))
	f.typed(r, `14' x 8' 6"`)
	if len(f.rooms()) != 2 {
		t.Fatalf("typed width × depth made no room: %v", f.failed)
	}
	for _, room := range f.rooms() {
		box := room.Outline().Box()
		if box.Min.Y == inch(300) && (box.Width() != 14*unit.Foot || box.Height() != 102*unit.Inch) {
			t.Errorf("typed room is %v by %v", box.Width(), box.Height())
		}
	}
}

func TestNextRoomSnapsAPartitionAway(t *testing.T) {
	f, r := newFake(t), &room{}
	f.square()
	r.Move(f, at(147, 1.5)) // the east face is at 144; 4-1/2 in beyond is 148.5
	if got := f.preview.SnapAt; got == nil || *got != (geom.Point{X: inch(148.5), Y: 0}) {
		t.Fatalf("snaps to %v (%s), want 148.5, 0", got, f.preview.Snap)
	}
	for _, want := range []string{`4-1/2" partition from Room 1`, "in line with a face of Room 1"} {
		if !strings.Contains(f.preview.Snap.String(), want) {
			t.Errorf("the snap says %q, which lacks %q", f.preview.Snap, want)
		}
	}
}

func TestRoomStepsBackAndDoesNotCrossItself(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0, 0))
	f.click(r, at(100, 0))
	r.Type(f, Key{Rune: '5'})
	if !r.Cancel(f) || len(r.corners) != 2 || !r.typed.isEmpty() {
		t.Error("Esc does not first take back what was typed")
	}
	if !r.Cancel(f) || len(r.corners) != 1 || !r.Cancel(f) || r.Cancel(f) {
		t.Error("Esc does not step back one corner at a time, and then say there is nothing left")
	}
	for _, p := range []Pointer{at(0, 0), at(100, 0), at(100, 100), at(50, 100), at(50, -50), at(0, -50)} {
		p.Shift = true
		f.click(r, p)
	}
	r.Type(f, Key{Name: "Enter"})
	if f.failed == nil || len(f.rooms()) != 0 {
		t.Fatal("a room that crosses itself was made")
	}
	if len(r.corners) != 6 {
		t.Error("what was traced is lost with the refusal")
	}
}

func TestTypedNonsenseIsNamed(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0, 0))
	r.Move(f, at(50, 0))
	f.typed(r, "5//")
	if !strings.Contains(f.said.String(), "5//") {
		t.Errorf("said %q, which does not name what was typed", f.said)
	}
}

func TestMetricGrid(t *testing.T) {
	f, r := newFake(t), &room{}
	f.isMetric = true
	f.click(r, Pointer{At: geom.Point{X: 3 * unit.Millimetre, Y: -4 * unit.Millimetre}, Reach: unit.Centimetre})
	f.click(r, Pointer{At: geom.Point{X: 3127 * unit.Millimetre}, Reach: unit.Centimetre})
	if got, want := r.corners[1], (geom.Point{X: 3130 * unit.Millimetre}); got != want {
		t.Errorf("second corner %v, want %v: whole centimetres", got, want)
	}
}

// Both sizes typed show the room as Enter would make it.
func TestTypedSizesShowTheRoomTheyMake(t *testing.T) {
	f := newFake(t)
	r := &room{}
	f.click(r, at(100, 100))
	r.Move(f, at(60, 130))
	for _, c := range "8' x 5'" {
		r.Type(f, Key{Rune: c})
	}
	want := geom.BoxOf(geom.Point{X: inch(4), Y: inch(100)}, geom.Point{X: inch(100), Y: inch(160)})
	if got := f.preview.Area.Box(); got != want || len(f.preview.Dims) != 2 {
		t.Errorf("shown is %v with %d dimensions, want %v with both", got, len(f.preview.Dims), want)
	}
	r.Type(f, Key{Name: "Enter"})
	if got := f.rooms(); len(got) != 1 || got[0].Outline().Box() != want {
		t.Errorf("made are %d rooms", len(got))
	}
}

// A room is called as the language of the window has it, by a number that is free.
func TestARoomIsNamedInTheLanguageOfTheWindow(t *testing.T) {
	for _, tt := range []struct {
		language words.Catalogue
		want     []string
	}{
		{nil, []string{"Room 1", "Room 2"}},
		{words.Catalogue{"tool.room.name": "Habitación {0}"}, []string{"Habitación 1", "Habitación 2"}},
	} {
		f := newFake(t)
		f.language = tt.language
		for i := range tt.want {
			x := float64(200 * i)
			f.drag(&room{}, at(x, 0), at(x+120, 96))
		}
		var got []string
		for _, room := range f.rooms() {
			got = append(got, room.Name)
		}
		slices.Sort(got)
		if !slices.Equal(got, tt.want) {
			t.Errorf("rooms are called %q, want %q", got, tt.want)
		}
	}
}
