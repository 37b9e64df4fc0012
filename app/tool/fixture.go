package tool

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// fixture stands fixtures against a face or free on the floor.
type fixture struct {
	kind  plan.FixtureKind
	sizes map[plan.FixtureKind]size // typed, in place of the usual ones
	turn  int
	typed typing
	last  Pointer
	known bool
}

var (
	_ Tool    = (*fixture)(nil)
	_ Chooser = (*fixture)(nil)
)

func (*fixture) ID() string { return "fixture" }

func (f *fixture) Hint(Window) words.Text {
	if f.typed.of != 0 {
		return sizeHint
	}
	return words.New("tool.fixture.hint", "Click by a face or on the floor for the {0}; W, D, H set its size; R turns it, Alt keeps it off the face", f.kind.Text())
}

// Choices implements Chooser.
func (*fixture) Choices() (all []Choice) {
	for _, k := range part.All().FixtureIDs() {
		all = append(all, Choice{string(k), k.Text()})
	}
	return all
}

// Choice implements Chooser.
func (f *fixture) Choice() string { return string(f.kind) }

// Choose implements Chooser.
func (f *fixture) Choose(id string) { f.kind = plan.FixtureKind(id) }

func (f *fixture) Down(t Window, p Pointer) {
	f.last, f.known = p, true
	f.put(t)
}

func (f *fixture) Move(t Window, p Pointer) {
	f.last, f.known = p, true
	f.show(t)
}

func (*fixture) Up(Window, Pointer) {}

func (f *fixture) Type(t Window, k Key) bool {
	switch {
	case k.Name == "Enter" && !f.typed.isEmpty():
		f.enter(t)
		return true
	case k.Rune == 'r' || k.Rune == 'R':
		f.turn = (f.turn + 1) % 4
	case k.Rune == '[' || k.Rune == ']':
		f.Choose(step(f.Choices(), f.Choice(), int(k.Rune-'\\')))
	case !f.typed.takeSize(k, "wdh"):
		return false
	}
	f.show(t)
	return true
}

// enter places the fixture where the typed distance says, or takes the typed size.
func (f *fixture) enter(t Window) {
	_, ok := f.typed.read(t)
	switch {
	case !ok:
	case f.typed.of == 0:
		f.put(t)
	default:
		f.sizes = with(f.sizes, f.kind, f.size(t))
		f.typed.clear()
		f.show(t)
	}
}

// size returns the size that is placed: the usual one, with what was typed.
func (f *fixture) size(t Window) size {
	s, ok := f.sizes[f.kind]
	if !ok {
		usual := part.All().Fixture(f.kind).NewFixture(t.System())
		s = size{usual.Width, usual.Depth, usual.Height, usual.Bottom}
	}
	for of, field := range map[rune]*unit.Length{'w': &s.width, 'd': &s.depth, 'h': &s.height} {
		if l, ok := f.typed.size(t.System(), of); ok && l > 0 {
			*field = l
		}
	}
	return s
}

func (f *fixture) Cancel(t Window) bool {
	if f.typed.isEmpty() {
		return false
	}
	f.typed.clear()
	f.show(t)
	return true
}

func (f *fixture) Leave(t Window) {
	*f = fixture{kind: f.kind, sizes: f.sizes}
	t.Preview(Preview{})
}

// size is the width, depth, height and height above the floor a fixture begins with.
type size struct{ width, depth, height, bottom unit.Length }

// byFace is how near a face a fixture is taken to stand at it.
const byFace = 30 * unit.Inch

// find works out the fixture that a click would stand.
func (f *fixture) find(t Window) (made plan.Fixture, side onSide, name words.Text, ok bool) {
	if !f.known {
		return made, side, name, false
	}
	s := f.size(t)
	made = plan.Fixture{Kind: f.kind, Width: s.width, Depth: s.depth, Height: s.height, Bottom: s.bottom}
	side, onFace := faceAt(t, f.last, nil)
	if onFace && (f.last.OnUnfold || part.All().Fixture(f.kind).Stands != part.Floor && side.off < byFace && !f.last.Alt) {
		made.Width = min(made.Width, side.length())
		at := side.along - made.Width/2
		if l, ok := f.typed.place(t.System()); ok {
			side, at, name = fromCorner(t, side, l, made.Width)
			made.From = side.from
		} else if !f.last.Shift {
			at, name = restWithin(fixtureStops(t.Index(), side, made.Width, ""), at, f.last.Reach, side.length()-made.Width, t.System().Placing())
		}
		made.At = plan.OnFace(side.id(), between(at, 0, side.length()-made.Width))
		return made, side, name, true
	}
	room := roomAt(t.Index(), t.Level(), f.last.At)
	if room == nil {
		return made, side, name, false
	}
	at := f.last.At
	if !f.last.Shift {
		at, name = flatRest(t, f.last, room, "")
	}
	made.At, made.Turn = plan.OnFloor(room.ID, at), f.turn
	return made, onSide{}, name, true
}

// fixtureStops lists where the left end of a fixture may come to rest: the corners, the
// middle, and beside others than itself.
func fixtureStops(ix *index.Index, side onSide, width unit.Length, self plan.ID) []stop {
	long := side.length()
	stops := []stop{
		{0, words.New("snap.in-left", "in the left corner"), rankBreak},
		{long - width, words.New("snap.in-right", "in the right corner"), rankBreak},
		{(long - width) / 2, words.New("snap.middle", "center of the wall"), rankMiddle},
	}
	for _, o := range ix.FixturesOn(side.id()) {
		if o.ID == self {
			continue
		}
		name := words.New("snap.beside", "beside the {0}", o.Kind.Text())
		stops = append(stops, stop{o.At.Along + o.Width, name, rankLevel}, stop{o.At.Along - width, name, rankLevel})
		stops = append(stops, stop{o.At.Along + (o.Width-width)/2, words.New("snap.fixture", "center of the {0}", o.Kind.Text()), rankEqual})
	}
	for _, c := range ix.Cuts(side.id()) {
		stops = append(stops, stop{(c.From + c.To - width) / 2, words.New("snap.break", "center of the {0}", c.Break.Kind.Text()), rankEqual})
	}
	return stops
}

func (f *fixture) put(t Window) {
	made, _, _, ok := f.find(t)
	if !ok {
		t.Refuse(words.New("tool.fixture.nowhere", "There is no room here to place it in"))
		return
	}
	made.ID = t.NewID(plan.KindFixture)
	f.typed.clear()
	if t.Do(edit.AddFixture{Fixture: made}) != nil {
		f.show(t)
		return
	}
	t.Select(made.ID)
	t.Preview(placed)
}

func (f *fixture) show(t Window) {
	p := Preview{Cursor: CursorCross, Typed: f.typed.shown(t.System())}
	made, side, name, ok := f.find(t)
	if !ok {
		p.Cursor = CursorNo
		t.Preview(p)
		return
	}
	p.Snap = name
	outline, _ := t.Index().Footprint(&made)
	p.Lines = append(p.Lines, outline.Edges()...)
	if made.At.Part == plan.PartFace {
		p.Dims = besides(t, side, made.At.Along, made.At.Along+made.Width)
	}
	t.Preview(p)
}
