package tool

import (
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestTypedIsReadBack(t *testing.T) {
	for _, tt := range []struct {
		text   string
		of     rune
		system unit.System
		want   string
	}{
		{"14", 0, unit.Imperial, `14| → 1' 2"`},
		{"3'", 0, unit.Imperial, `3'| → 3' 0"`},
		{"30", 'w', unit.Imperial, `width 30| → 2' 6"`},
		{"", 'h', unit.Imperial, `height |`},
		{"12'×10'", 0, unit.Imperial, `12'×10'| → 12' 0" × 10' 0"`},
		{"1'/", 0, unit.Imperial, `1'/|`},
	} {
		typed := typing{text: tt.text, of: tt.of}
		if got := typed.shown(tt.system).String(); got != tt.want {
			t.Errorf("%q of %q is shown as %q, want %q", tt.text, tt.of, got, tt.want)
		}
	}
	if got := (&typing{}).shown(unit.Imperial); !got.IsZero() {
		t.Errorf("nothing typed is shown as %q", got)
	}
}

func TestSizesAreTyped(t *testing.T) {
	f := newFake(t)
	f.square()
	b := &brk{kind: plan.BreakWindow}
	b.Move(f, at(72, 3))
	f.typed(b, "w30")
	if f.Plan().Level(ground).Breaks.Len() != 0 {
		t.Error("a typed width places a window")
	}
	b.Type(f, Key{Rune: 'W'})
	if b.Hint(f).String() != sizeHint.String() || !b.Cancel(f) || b.Cancel(f) {
		t.Error("a width begun is not told or not left by Esc")
	}
	f.click(b, at(72, 3))
	for k := range f.Plan().Level(ground).Breaks.All() {
		if k.Width != inch(30) || k.At.Along != inch(57) {
			t.Errorf("window %+v, want 30 in wide about the middle", k)
		}
	}
	x := &fixture{kind: plan.FixtureCounter}
	x.Move(f, at(72, 110))
	f.typed(x, "w50")
	f.typed(x, "d20")
	f.click(x, at(72, 110))
	for k := range f.Plan().Level(ground).Fixtures.All() {
		if k.Width != inch(50) || k.Depth != inch(20) || k.Height != inch(36) {
			t.Errorf("counter %+v, want 50 × 20 in, 36 high", k)
		}
	}
	o := &opening{}
	o.Move(f, at(142, 30))
	f.typed(o, "h48")
	f.click(o, at(142, 30))
	if got := f.openings()[0].Height.Value; got != inch(48) {
		t.Errorf("the opening is %v high, want 48 in", got)
	}
}

func TestARoomOfALineIsRefusedInWords(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0, 0))
	f.click(r, at(60, 0))
	f.click(r, at(120, 0))
	r.Type(f, Key{Name: "Enter"})
	if f.said.ID != "tool.room.flat" || len(f.rooms()) != 0 || len(r.corners) != 3 {
		t.Errorf("said %q; %d rooms, %d corners kept", f.said, len(f.rooms()), len(r.corners))
	}
}

// onUnfold is a pointer in the unfolded room, at inches along the north face and up.
func onUnfold(side plan.ID, x, up float64) Pointer {
	return Pointer{At: geom.Point{X: inch(x)}, Reach: 2 * unit.Inch, OnUnfold: true, Side: side, Height: inch(up)}
}

func TestHeightIsTypedInTheUnfoldedRoom(t *testing.T) {
	f, r := furnished(t)
	o, side := f.onNorth(r), r.Sides[0].ID
	c := &choose{}
	from := onUnfold(side, 30, 16)
	from.Symbol = o.ID
	c.Down(f, from)
	c.Move(f, onUnfold(side, 31, 40))
	f.typed(c, "50")
	now, _ := f.Plan().Opening(o.ID)
	if now.Height.Value != inch(50) {
		t.Errorf("dragged up and typed 50 it is %v high", now.Height.Value)
	}
	c.Down(f, from)
	c.Move(f, onUnfold(side, 60, 18))
	f.typed(c, "40")
	if now, _ = f.Plan().Opening(o.ID); now.At.Along != inch(40) {
		t.Errorf("dragged along and typed 40 it is at %v", now.At.Along)
	}
	c.Down(f, from)
	c.Move(f, onUnfold(side, 60, 18))
	f.typed(c, "h44")
	if now, _ = f.Plan().Opening(o.ID); now.Height.Value != inch(44) {
		t.Errorf("dragged along and typed h44 it is %v high", now.Height.Value)
	}
	f.check()
}

func TestOnAFixturesFaceInTheUnfoldedRoom(t *testing.T) {
	f := newFake(t)
	f.square()
	x := &fixture{kind: plan.FixtureIsland}
	f.click(x, at(72, 60))
	var island *plan.Fixture
	for k := range f.Plan().Level(ground).Fixtures.All() {
		island = k
	}
	onFace := func(along, up float64) Pointer {
		return Pointer{At: geom.Point{X: inch(along)}, OnUnfold: true, Reach: 2 * unit.Inch, Height: inch(up),
			Part: plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: inch(along)}}
	}
	o := &opening{}
	f.click(o, onFace(35, 24))
	first := f.openings()[0]
	if first.At.Along != island.Width/2 || first.Height.Value != inch(24) {
		t.Errorf("dropped at %+v, %v high, want the middle of the face, 24 in high", first.At, first.Height.Value)
	}
	o.Move(f, onFace(60, 25))
	if got := f.preview.Snap.String(); got != "as high as "+first.Tag+`, 24"` {
		t.Errorf("the snap is %q", got)
	}
	c := &choose{}
	from := onFace(36, 24)
	from.Symbol = first.ID
	c.Down(f, from)
	c.Move(f, onFace(20, 24))
	f.typed(c, "10")
	if now, _ := f.Plan().Opening(first.ID); now.At.Along != inch(10) || now.At.Part != plan.PartFront {
		t.Errorf("dragged and typed 10 it is at %+v", now.At)
	}
	c.Down(f, from)
	c.Move(f, onFace(36, 60))
	c.Up(f, onFace(36, 60))
	if now, _ := f.Plan().Opening(first.ID); now.Height.Value > island.Top() {
		t.Errorf("it is %v high, over the island", now.Height.Value)
	}
	f.check()
}

// What is typed into a length is never a command, whatever the letter: the tool takes each.
func TestEveryLetterOfALengthIsTheTools(t *testing.T) {
	f := newFake(t)
	f.square()
	for _, tool := range []Tool{&opening{}, &brk{kind: plan.BreakDoor}, &fixture{kind: plan.FixtureCounter}} {
		tool.Move(f, at(72, 3))
		for _, text := range []string{"1.2 m", "1.2 M", "90cm", `4-1/2"`, "3 feet", "-2", ",5"} {
			for _, r := range text {
				if !tool.Type(f, Key{Rune: r}) {
					t.Errorf("%s leaves the letter %q of %q to a command", tool.ID(), r, text)
				}
			}
			tool.Cancel(f)
		}
		if tool.Type(f, Key{Rune: 'v'}) {
			t.Errorf("%s keeps a letter that begins no length", tool.ID())
		}
	}
}

// Rooms are given in metres by those who measure so; common practice.
func TestAMetricRoomOfFourByThreeIsMetres(t *testing.T) {
	for _, tt := range []struct {
		text string
		w, h unit.Length
	}{
		{"4x3", 4 * unit.Metre, 3 * unit.Metre},
		{"4 X 3", 4 * unit.Metre, 3 * unit.Metre},
		{"4000×3000", 4 * unit.Metre, 3 * unit.Metre},
		{"4.2*3", 42 * unit.Metre / 10, 3 * unit.Metre},
	} {
		f, r := newFake(t), &room{}
		f.isMetric = true
		r.Move(f, at(0, 0))
		for _, letter := range tt.text {
			r.Type(f, Key{Rune: letter})
		}
		if got := f.preview.Typed.String(); !strings.Contains(got, "→ ") {
			t.Errorf("%s is echoed as %q, not as it is read", tt.text, got)
		}
		r.Type(f, Key{Name: "Enter"})
		if len(f.rooms()) != 1 {
			t.Errorf("%s makes %d rooms; said %s", tt.text, len(f.rooms()), f.said)
			continue
		}
		if box := f.rooms()[0].Outline().Box(); box.Width() != tt.w || box.Height() != tt.h || !f.asked.IsZero() {
			t.Errorf("%s makes %v × %v, asked %q; want %v × %v", tt.text, box.Width(), box.Height(), f.asked, tt.w, tt.h)
		}
	}
}

func TestARoomUnderAFootAsks(t *testing.T) {
	f, r := newFake(t), &room{}
	f.click(r, at(0, 0))
	r.Move(f, at(50, 50))
	f.typed(r, "11x120")
	if f.asked.ID != "room.tiny" || len(f.rooms()) != 1 {
		t.Errorf("asked %q, %d rooms; want a question, and the room where it is answered by yes", f.asked, len(f.rooms()))
	}
	f.asked = words.Text{}
	f.click(r, at(300, 0))
	r.Move(f, at(350, 50))
	f.typed(r, "12x120")
	if !f.asked.IsZero() {
		t.Errorf("asked %q of a room of one foot", f.asked)
	}
}

// A distance typed from a corner is told from that corner afterwards: from the right one as the
// side that meets its own there.
func TestTheCornerThatADistanceIsTypedFromIsKept(t *testing.T) {
	f := newFake(t)
	r := f.square()
	east := r.Sides[1].ID
	for _, tt := range []struct {
		tool Tool
		name string
	}{{&opening{}, "an opening"}, {&brk{kind: plan.BreakWindow}, "a window"}, {&fixture{kind: plan.FixtureCounter}, "a counter"}} {
		for _, c := range []struct {
			at   Pointer
			want plan.ID
		}{{at(30, 3), ""}, {at(120, 3), east}} {
			f.chosen = nil
			tt.tool.Move(f, c.at)
			f.typed(tt.tool, "20")
			if len(f.chosen) != 1 || f.failed != nil {
				t.Fatalf("%s is not placed: %v", tt.name, f.failed)
			}
			made, _ := f.Plan().Find(f.chosen[0])
			if got := *plan.FromOf(made); got != c.want {
				t.Errorf("%s typed at %v is told from %q, want %q", tt.name, c.at.At, got, c.want)
			}
			if err := f.Do(edit.Removing(f.chosen[0])); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// So it is where a thing is dragged.
func TestTheCornerThatADragIsTypedFromIsKept(t *testing.T) {
	f := newFake(t)
	east := f.square().Sides[1].ID
	for _, tt := range []struct {
		tool  Tool
		from  Pointer // where it is taken
		right Pointer
	}{{&opening{}, at(50, 3), at(120, 3)}, {&brk{kind: plan.BreakWindow}, at(72, 0), at(110, 0)}, {&fixture{kind: plan.FixtureCounter}, at(50, 10), at(110, 10)}} {
		f.click(tt.tool, tt.from)
		id := f.chosen[0]
		c := &choose{}
		c.Down(f, tt.from)
		c.Move(f, tt.right)
		f.typed(c, "20")
		c.Up(f, tt.right)
		moved, _ := f.Plan().Find(id)
		if got := *plan.FromOf(moved); got != east || f.failed != nil {
			t.Errorf("%s, dragged and typed from the right, is told from %q, want %q; %v", id, got, east, f.failed)
		}
		if err := f.Do(edit.Removing(id)); err != nil {
			t.Fatal(err)
		}
	}
}
