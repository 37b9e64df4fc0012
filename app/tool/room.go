package tool

import (
	"slices"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// room traces rooms corner by corner, or as a rectangle by dragging or by typing its
// width × depth.
type room struct {
	corners []geom.Point
	typed   typing
	last    Pointer
	known   bool
	pressed *geom.Point // where the button went down, while it is held
}

var _ Tool = (*room)(nil)

func (*room) ID() string { return "room" }

func (r *room) Hint(Window) words.Text {
	switch {
	case len(r.corners) == 0:
		return words.New("tool.room.hint", "Click the first corner, or drag a rectangle; Shift leaves the snaps")
	case len(r.corners) == 1:
		return words.New("tool.room.hint-second", "Click the next corner, type a length and Enter, or both sizes with an x between; Shift frees the angle")
	case len(r.corners) < 3:
		return words.New("tool.room.hint-next", "Click the next corner, or type a length and Enter; Shift frees the angle, Esc steps back")
	}
	return words.New("tool.room.hint-close", "Enter or the first corner closes the room; Esc steps back")
}

func (r *room) Down(t Window, p Pointer) {
	r.last, r.known = p, true
	c := r.next(t)
	r.pressed = &c.at
	if c.closes || p.Double && len(r.corners) >= 3 {
		r.close(t)
		return
	}
	r.put(t, c.at)
}

func (r *room) Move(t Window, p Pointer) {
	r.last, r.known = p, true
	r.show(t)
}

// Up ends a dragged rectangle; a click leaves its corner.
func (r *room) Up(t Window, p Pointer) {
	r.last = p
	if box, _, ok := r.dragged(t); ok {
		r.make(t, box.Corners())
	}
	r.pressed = nil
	r.show(t)
}

// dragged returns the rectangle from where the button went down and its corner at the
// pointer, if it has gone far enough to be meant.
func (r *room) dragged(t Window) (box geom.Box, to corner, ok bool) {
	if r.pressed == nil || len(r.corners) != 1 {
		return geom.Box{}, corner{}, false
	}
	from, far := *r.pressed, 2*r.last.Reach
	to = r.opposite(t, from)
	box = geom.BoxOf(from, to.at)
	return box, to, box.Width() > far && box.Height() > far
}

// opposite returns the corner of a rectangle that lies across from one.
func (r *room) opposite(t Window, from geom.Point) corner {
	p := r.last
	if c, ok := otherCorner(t, p, nil); ok && c.at.X != from.X && c.at.Y != from.Y && !p.Shift {
		return c
	}
	l := lines{}
	if !p.Shift {
		l = linesNear(t, p.At, "")
	}
	x, nameX := restFrom(l.xs, p.At.X, from.X, p.Reach, t.System().Grid())
	y, nameY := restFrom(l.ys, p.At.Y, from.Y, p.Reach, t.System().Grid())
	return corner{at: geom.Point{X: x, Y: y}, snap: both(nameX, nameY)}
}

func (r *room) put(t Window, at geom.Point) {
	if n := len(r.corners); n == 0 || r.corners[n-1] != at {
		r.corners = append(r.corners, at)
	}
	r.typed.clear()
	r.show(t)
}

func (r *room) Type(t Window, k Key) bool {
	if k.Name == "Enter" {
		return r.enter(t)
	}
	r.typed.ofRoom = true
	used := r.cross(k) || r.typed.take(k)
	if used {
		r.show(t)
	}
	return used
}

// cross takes the x between a width and a depth.
func (r *room) cross(k Key) bool {
	if len(r.corners) > 1 || r.typed.isEmpty() || k.Rune != 'x' && k.Rune != 'X' && k.Rune != '×' && k.Rune != '*' {
		return false
	}
	r.typed.text += "×"
	return true
}

func (r *room) enter(t Window) bool {
	switch {
	case r.typed.isEmpty() && len(r.corners) >= 3:
		r.close(t)
		return true
	case r.typed.isEmpty() && len(r.corners) > 0:
		t.Refuse(tooFlat)
		return true
	case r.typed.isEmpty():
		return false
	}
	if w, h, ok, err := r.typed.two(t.System()); ok {
		return r.rectangle(t, w, h, err)
	}
	if len(r.corners) == 0 {
		t.Say(words.New("tool.room.first", "Click the first corner, then type the length of a wall; or type both sizes with an x between"))
		return true
	}
	l, err := r.typed.length(t.System())
	switch {
	case err != nil:
		t.Refuse(words.NoLength(r.typed.text, t.System()))
	case l <= 0:
		t.Refuse(notPositive)
	default:
		r.put(t, r.next(t).at)
	}
	return true
}

// rectangle makes a room by its width and depth from the first corner, towards the
// pointer.
func (r *room) rectangle(t Window, w, h unit.Length, err error) bool {
	if err != nil {
		t.Refuse(words.NoLength(r.typed.text, t.System()))
		return true
	}
	if len(r.corners) == 0 && !r.known {
		t.Say(r.Hint(t))
		return true
	}
	r.make(t, r.sized(t, w, h).Corners())
	return true
}

// sized returns the rectangle of a width and a depth from the first corner, towards the
// pointer.
func (r *room) sized(t Window, w, h unit.Length) geom.Box {
	from := r.next(t).at
	if len(r.corners) > 0 {
		from = r.corners[0]
	}
	if r.last.At.X < from.X {
		w = -w
	}
	if r.last.At.Y < from.Y {
		h = -h
	}
	return geom.BoxOf(from, from.Add(geom.Point{X: w, Y: h}))
}

// Cancel takes back what was typed, else the last corner.
func (r *room) Cancel(t Window) bool {
	switch {
	case !r.typed.isEmpty():
		r.typed.clear()
	case len(r.corners) > 0:
		r.corners = r.corners[:len(r.corners)-1]
	default:
		return false
	}
	r.pressed = nil
	r.show(t)
	return true
}

func (r *room) Leave(t Window) {
	*r = room{}
	t.Preview(Preview{})
}

var tooFlat = words.New("tool.room.flat", "A room needs three corners that are not in one line: click another, or Esc to step back")

func (r *room) close(t Window) {
	outline := tidy(r.corners)
	if len(outline) < 3 {
		t.Refuse(tooFlat)
		r.show(t)
		return
	}
	r.make(t, outline)
}

// tidy leaves out corners in the middle of a straight side.
func tidy(corners []geom.Point) (p geom.Polygon) {
	n := len(corners)
	for i, c := range corners {
		if geom.Orientation(corners[(i+n-1)%n], c, corners[(i+1)%n]) != 0 {
			p = append(p, c)
		}
	}
	return p
}

func (r *room) make(t Window, corners geom.Polygon) {
	sides := make([]plan.ID, len(corners))
	for i := range sides {
		sides[i] = t.NewID(plan.KindSide)
	}
	made := fill.NewRoom(t.System(), t.NewID(plan.KindRoom), freeName(t), corners, sides)
	AskIfTiny(made, t.Ask, func() { r.add(t, made) })
}

// AskIfTiny does something with a new room, after a question where its size was hardly
// meant.
func AskIfTiny(made plan.Room, ask func(question, body, yes words.Text, do func()), do func()) {
	if !plan.IsTiny(made) {
		do()
		return
	}
	box := made.Outline().Box()
	ask(words.New("room.tiny", "Is the room to be {0} × {1}?", box.Width(), box.Height()),
		words.New("room.tiny.body", "Lengths are read in the units of the plan unless another is typed with them."),
		words.New("room-form.yes", "Draw it"), do)
}

func (r *room) add(t Window, made plan.Room) {
	if err := t.Do(edit.AddRoom{Level: t.Level(), Room: made}); err != nil {
		r.show(t)
		return // what was traced stays, to be mended
	}
	r.corners, r.pressed = nil, nil
	r.typed.clear()
	t.Select(made.ID)
	r.show(t)
}

// freeName returns a name that no room has yet, in the language of the window.
func freeName(t Window) string {
	var names []string
	for _, l := range t.Plan().Levels {
		for room := range l.Rooms.All() {
			names = append(names, room.Name)
		}
	}
	for n := len(names) + 1; ; n++ {
		if name := t.Said(words.New("tool.room.name", "Room {0}", n)); !slices.Contains(names, name) {
			return name
		}
	}
}

// show previews the outline as it would go on.
func (r *room) show(t Window) {
	p := Preview{Cursor: CursorCross, Typed: r.typed.shown(t.System())}
	if !r.known {
		t.Preview(p)
		return
	}
	c := r.next(t)
	box, to, isBox := r.dragged(t)
	if isBox {
		c = to
	} else if w, h, ok, err := r.typed.two(t.System()); ok && err == nil && w > 0 && h > 0 {
		box, isBox = r.sized(t, w, h), true
		if len(r.corners) > 0 {
			c = corner{at: r.corners[0]}
		}
	}
	p.Snap = c.snap
	if !c.snap.IsZero() {
		p.SnapAt = &c.at
	}
	p.Area = append(slices.Clone(geom.Polygon(r.corners)), c.at)
	if c.closes {
		p.Area = p.Area[:len(r.corners)]
	}
	if isBox {
		p.Area = box.Corners()
		p.Dims = []Dim{r.dim(t, box.Min, geom.Point{X: box.Max.X, Y: box.Min.Y}), r.dim(t, geom.Point{X: box.Max.X, Y: box.Min.Y}, box.Max)}
	} else if n := len(r.corners); n > 0 && r.corners[n-1] != c.at {
		p.Dims = []Dim{r.dim(t, r.corners[n-1], c.at)}
	}
	t.Preview(p)
}

// dim is a dimension that stands to the left of its direction, outside of a room that
// is traced with the clock.
func (r *room) dim(t Window, a, b geom.Point) Dim {
	v := b.Sub(a)
	return Dim{From: a, To: b, Text: t.System().Format(a.Distance(b)), Aside: geom.Point{X: v.Y, Y: -v.X}}
}
