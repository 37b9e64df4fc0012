package tool

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// brk puts doors, sliders, passages, windows and fireplaces into faces.
type brk struct {
	kind    plan.BreakKind
	widths  map[plan.BreakKind]unit.Length // typed, in place of the usual ones
	flipped bool                           // hung at the other end
	typed   typing
	last    Pointer
	known   bool
}

var (
	_ Tool    = (*brk)(nil)
	_ Chooser = (*brk)(nil)
)

func (*brk) ID() string { return "break" }

func (b *brk) Hint(Window) words.Text {
	if b.typed.of != 0 {
		return sizeHint
	}
	if part.All().Break(b.kind).IsHung {
		return words.New("tool.break.hint-door", "Click a face for the {0}, or type a distance from the corner; W its width, R its hand, Alt swings it out", b.kind.Text())
	}
	return words.New("tool.break.hint", "Click a face for the {0}, or type a distance from the corner; W sets its width, Shift places freely", b.kind.Text())
}

// Choices implements Chooser.
func (*brk) Choices() (all []Choice) {
	for _, k := range part.All().BreakIDs() {
		all = append(all, Choice{string(k), k.Text()})
	}
	return all
}

// Choice implements Chooser.
func (b *brk) Choice() string { return string(b.kind) }

// Choose implements Chooser.
func (b *brk) Choose(id string) { b.kind = plan.BreakKind(id) }

func (b *brk) Down(t Window, p Pointer) {
	b.last, b.known = p, true
	b.put(t)
}

func (b *brk) Move(t Window, p Pointer) {
	b.last, b.known = p, true
	b.show(t)
}

func (*brk) Up(Window, Pointer) {}

func (b *brk) Type(t Window, k Key) bool {
	switch {
	case k.Name == "Enter" && !b.typed.isEmpty():
		b.enter(t)
		return true
	case k.Rune == 'r' || k.Rune == 'R':
		b.flipped = !b.flipped
	case k.Rune == '[' || k.Rune == ']':
		b.Choose(step(b.Choices(), b.Choice(), int(k.Rune-'\\')))
	case !b.typed.takeSize(k, "w"):
		return false
	}
	b.show(t)
	return true
}

// enter places the break where the typed distance says, or takes the typed width.
func (b *brk) enter(t Window) {
	of := b.typed.of
	l, ok := b.typed.read(t)
	switch {
	case !ok:
	case of == 0:
		b.put(t)
	default:
		b.widths = with(b.widths, b.kind, l)
		b.typed.clear()
		b.show(t)
	}
}

func (b *brk) Cancel(t Window) bool {
	if b.typed.isEmpty() {
		return false
	}
	b.typed.clear()
	b.show(t)
	return true
}

func (b *brk) Leave(t Window) {
	*b = brk{kind: b.kind, widths: b.widths}
	t.Preview(Preview{})
}

// find works out the break that a click would make.
func (b *brk) find(t Window) (made plan.Break, side onSide, name words.Text, ok bool) {
	if !b.known {
		return made, side, name, false
	}
	side, ok = faceAt(t, b.last, func(s *plan.Side) bool { return s.Kind == plan.SideWall || s.Kind == plan.SideGlass })
	if !ok {
		return made, side, name, false
	}
	made = part.All().Break(b.kind).NewBreak(t.System())
	if l, ok := b.widths[b.kind]; ok {
		made.Width = l
	}
	if l, ok := b.typed.size(t.System(), 'w'); ok && l > 0 {
		made.Width = l
	}
	made.Width = min(made.Width, side.length())
	made.Head = min(made.Head, side.ref.Room.Ceiling)
	at := side.along - made.Width/2
	if l, ok := b.typed.place(t.System()); ok {
		side, at, name = fromCorner(t, side, l, made.Width)
		made.From = side.from
	} else if !b.last.Shift {
		at, name = restWithin(breakStops(side, made.Width), at, b.last.Reach, side.length()-made.Width, t.System().Placing())
	}
	made.At = plan.OnFace(side.id(), between(at, 0, side.length()-made.Width))
	if part.All().Break(b.kind).IsHung {
		made.Hand, made.Swing = b.hand(side, made), plan.SwingIn
		if side.off < 0 || b.last.Alt {
			made.Swing = plan.SwingOut
		}
	}
	return made, side, name, true
}

// hand hangs a door at the end nearer to its corner, so that it opens against the side
// wall.
func (b *brk) hand(side onSide, made plan.Break) plan.Hand {
	nearLeft := made.At.Along+made.Width/2 < side.length()/2
	if nearLeft != b.flipped {
		return plan.HandLeft
	}
	return plan.HandRight
}

// doorToCorner is how far a door's edge stands from a corner: room for the casing and a
// stud, common practice.
const doorToCorner = 4 * unit.Inch

// breakStops lists where the left end of something of a width may come to rest.
func breakStops(side onSide, width unit.Length) []stop {
	long := side.length()
	return []stop{
		{(long - width) / 2, words.New("snap.middle", "center of the wall"), rankMiddle},
		{doorToCorner, words.New("snap.by-left", "by the left corner"), rankBreak},
		{long - width - doorToCorner, words.New("snap.by-right", "by the right corner"), rankBreak},
	}
}

func (b *brk) put(t Window) {
	made, _, _, ok := b.find(t)
	if !ok {
		t.Refuse(words.New("tool.break.nowhere", "There is no wall here: point at a face of a room"))
		return
	}
	made.ID = t.NewID(plan.KindBreak)
	b.typed.clear()
	if t.Do(edit.AddBreak{Break: made}) != nil {
		b.show(t)
		return
	}
	t.Select(made.ID)
	t.Preview(placed)
}

func (b *brk) show(t Window) {
	p := Preview{Cursor: CursorCross, Typed: b.typed.shown(t.System())}
	made, side, name, ok := b.find(t)
	if !ok {
		p.Cursor = CursorNo
		t.Preview(p)
		return
	}
	p.Snap = name
	p.Lines, p.Dims = breakLines(t, side, made)
	t.Preview(p)
}

// breakLines draws a break that is not in the plan: its ends through the wall, its
// faces, a door's leaf, and how far it is from the corners.
func breakLines(t Window, side onSide, b plan.Break) (l []geom.Segment, dims []Dim) {
	f := geom.FrameOf(side.ref.Line())
	deep := wallDepth(t.Index(), side.id())
	from, to := b.At.Along, b.At.Along+b.Width
	line := func(a, out, c, out2 unit.Length) {
		l = append(l, geom.Segment{A: f.Point(a, out), B: f.Point(c, out2)})
	}
	line(from, 0, from, -deep)
	line(to, 0, to, -deep)
	line(from, 0, to, 0)
	line(from, -deep, to, -deep)
	if part.All().Break(b.Kind).IsHung {
		hinge, out := from, b.Width
		if b.Hand == plan.HandRight {
			hinge = to
		}
		if b.Swing == plan.SwingOut {
			out = -b.Width - deep
		}
		line(hinge, 0, hinge, out)
	}
	return l, besides(t, side, from, to)
}
