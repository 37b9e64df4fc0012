package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// windowed is a room with a window in its north face, a door in its south face, and an
// upper cabinet on the east one.
func windowed(t *testing.T) (f *fake, r *plan.Room, window, door, upper plan.ID) {
	f = newFake(t)
	r = f.square()
	window, door, upper = f.NewID(plan.KindBreak), f.NewID(plan.KindBreak), f.NewID(plan.KindFixture)
	for _, e := range []edit.Edit{
		edit.AddBreak{Break: plan.Break{ID: window, Kind: plan.BreakWindow, At: plan.OnFace(r.Sides[0].ID, inch(50)), Width: inch(36), Sill: inch(30), Head: inch(70)}},
		edit.AddBreak{Break: plan.Break{ID: door, Kind: plan.BreakDoor, At: plan.OnFace(r.Sides[2].ID, inch(40)), Width: inch(32), Head: inch(80)}},
		edit.AddFixture{Fixture: plan.Fixture{ID: upper, Kind: plan.FixtureUpper, At: plan.OnFace(r.Sides[1].ID, inch(20)), Width: inch(48), Depth: inch(12), Bottom: inch(54), Height: inch(30)}},
	} {
		if f.Do(e); f.failed != nil {
			t.Fatal(f.failed)
		}
	}
	return f, r, window, door, upper
}

// onFaceOf is a pointer in the unfolded room, at inches along a face and up.
func (f *fake) onFaceOf(side plan.ID, x, up float64) Pointer {
	ref, _ := f.index.Side(side)
	return Pointer{At: geom.FrameOf(ref.Line()).Point(inch(x), 0), Reach: 4 * unit.Inch, OnUnfold: true, Side: side, Height: inch(up)}
}

func freely(p Pointer) Pointer { p.Shift = true; return p }

func TestBreaksAndFixturesAreDraggedInTheUnfoldedRoom(t *testing.T) {
	f, r, window, door, upper := windowed(t)
	before := f.Plan()
	c := &choose{}
	for _, tt := range []struct {
		name              string
		id                plan.ID
		from, to          Pointer
		along, foot, high float64 // inches
	}{
		{"a window, freely", window, f.onFaceOf(r.Sides[0].ID, 68, 50), freely(f.onFaceOf(r.Sides[0].ID, 78.5, 57)), 60.5, 37, 77},
		{"a window, to the step", window, f.onFaceOf(r.Sides[0].ID, 68, 50), f.onFaceOf(r.Sides[0].ID, 84.3, 42.4), 66.5, 22.5, 62.5},
		{"a window, its head to the door's", window, f.onFaceOf(r.Sides[0].ID, 68, 50), f.onFaceOf(r.Sides[0].ID, 84.3, 58), 66.5, 40, 80},
		{"a window, no lower than the floor", window, f.onFaceOf(r.Sides[0].ID, 68, 50), freely(f.onFaceOf(r.Sides[0].ID, 68, 2)), 50, 0, 40},
		{"a window, to another face", window, f.onFaceOf(r.Sides[0].ID, 68, 50), freely(f.onFaceOf(r.Sides[3].ID, 68, 50)), 50, 30, 70},
		{"a door, along only", door, f.onFaceOf(r.Sides[2].ID, 50, 40), freely(f.onFaceOf(r.Sides[2].ID, 60, 50)), 50, 0, 80},
		{"an upper cabinet", upper, f.onFaceOf(r.Sides[1].ID, 30, 60), freely(f.onFaceOf(r.Sides[1].ID, 35, 63)), 25, 57, 87},
	} {
		f.chosen = nil
		f.drag(c, tt.from, tt.to)
		got, _ := uprightOf(f.Plan(), tt.id)
		if got.at.Along != inch(tt.along) || got.foot != inch(tt.foot) || got.top != inch(tt.high) || got.at.Host != tt.to.Side {
			t.Errorf("%s: it stands %v along, from %v to %v", tt.name, got.at.Along, got.foot, got.top)
		}
		f.check()
		if f.history.Undo(); !plan.Equal(f.Plan(), before) {
			t.Fatalf("%s: one undo does not take it back", tt.name)
		}
		f.index = f.index.Updated(f.Plan())
	}
}

func TestSnapOfAHeightIsNamed(t *testing.T) {
	f, r, _, _, _ := windowed(t)
	c := &choose{}
	c.Move(f, f.onFaceOf(r.Sides[0].ID, 68, 50))
	c.Down(f, f.onFaceOf(r.Sides[0].ID, 68, 50))
	c.Move(f, f.onFaceOf(r.Sides[0].ID, 95.4, 58.5))
	if got := f.preview.Snap.String(); got != "level with the head of the door" {
		t.Errorf("the snap is called %q", got)
	}
	c.Up(f, f.onFaceOf(r.Sides[0].ID, 95.4, 58.5))
}

func TestEdgesOfWhatIsChosenAreDragged(t *testing.T) {
	f, r, window, door, _ := windowed(t)
	before := f.Plan()
	c := &choose{}
	side := r.Sides[0].ID
	for _, tt := range []struct {
		name                     string
		id                       plan.ID
		from, to                 Pointer
		typed                    string
		along, width, foot, high float64
		cursor                   Cursor
	}{
		{"right", window, f.onFaceOf(side, 87, 50), f.onFaceOf(side, 98.2, 50), "", 50, 48, 30, 70, CursorAcross},
		{"left, from outside", window, f.onFaceOf(side, 49, 50), f.onFaceOf(side, 43.8, 50), "", 44, 42, 30, 70, CursorAcross},
		{"left, as wide as typed", window, f.onFaceOf(side, 50, 50), f.onFaceOf(side, 43, 50), "30", 56, 30, 30, 70, CursorAcross},
		{"top, level with the door", window, f.onFaceOf(side, 68, 70), f.onFaceOf(side, 68, 78), "", 50, 36, 30, 80, CursorUpDown},
		{"bottom", window, f.onFaceOf(side, 68, 30), f.onFaceOf(side, 68, 41.7), "", 50, 36, 41.5, 70, CursorUpDown},
		{"bottom, past the top", window, f.onFaceOf(side, 68, 30), freely(f.onFaceOf(side, 68, 90)), "", 50, 36, 68, 70, CursorUpDown},
		{"top of a door", door, f.onFaceOf(r.Sides[2].ID, 56, 80), freely(f.onFaceOf(r.Sides[2].ID, 56, 84)), "", 40, 32, 0, 84, CursorUpDown},
	} {
		f.chosen = []plan.ID{tt.id}
		c.Move(f, tt.from)
		if f.preview.Cursor != tt.cursor {
			t.Errorf("%s: the cursor is %v, want %v", tt.name, f.preview.Cursor, tt.cursor)
		}
		if tt.typed != "" {
			c.Down(f, tt.from)
			c.Move(f, tt.to)
			f.typed(c, tt.typed)
			c.Up(f, tt.to)
		} else {
			f.drag(c, tt.from, tt.to)
		}
		got, _ := uprightOf(f.Plan(), tt.id)
		if got.at.Along != inch(tt.along) || got.width != inch(tt.width) || got.foot != inch(tt.foot) || got.top != inch(tt.high) {
			t.Errorf("%s: %v wide at %v, from %v to %v", tt.name, got.width, got.at.Along, got.foot, got.top)
		}
		f.check()
		if f.history.Undo(); !plan.Equal(f.Plan(), before) {
			t.Fatalf("%s: one undo does not take it back", tt.name)
		}
		f.index = f.index.Updated(f.Plan())
	}
}

func TestABottomOnTheFloorIsNoEdge(t *testing.T) {
	f, r, _, door, _ := windowed(t)
	f.chosen = []plan.ID{door}
	if _, e := chosenEdge(f, f.onFaceOf(r.Sides[2].ID, 56, 0)); e != noEdge {
		t.Errorf("the foot of a door is edge %v", e)
	}
}
