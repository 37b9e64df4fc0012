package tool

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// measure tells the distance between two places; it changes nothing.
type measure struct {
	from, to *measured
	last     Pointer
	known    bool
	pressed  bool
}

var _ Tool = (*measure)(nil)

func (*measure) ID() string { return "measure" }

func (m *measure) Hint(Window) words.Text {
	if m.from == nil || m.to != nil {
		return words.New("tool.measure.hint", "Click where to measure from: corners, faces and openings hold it; Shift leaves them")
	}
	return words.New("tool.measure.hint-to", "Click where to measure to; Esc starts over")
}

// measured is one end of what is measured.
type measured struct {
	at   geom.Point
	side *onSide // the face it is on, or nil
}

// farFoot is how many reaches the foot of an opening may be from the pointer that its
// symbol is under: beyond, only its tag is pointed at.
const farFoot = 5

// rest returns the place pointed at: on a corner, on a face, or as it is.
func (m *measure) rest(t Window) (measured, words.Text) {
	p := m.last
	if p.Shift {
		return measured{at: p.At}, words.Text{}
	}
	if o, _ := t.Plan().Opening(pick(t, p)); o != nil {
		place, ok := t.Index().Place(o.At)
		if ok && place.Foot.Distance(p.At) <= farFoot*p.Reach {
			end := measured{at: place.Foot}
			if side, ok := faceOf(t.Index(), o.At.Host, place.Foot); ok && o.At.Part == plan.PartFace {
				end.side = &side
			}
			return end, words.New("snap.centre", "center of {0}", o.Tag)
		}
	}
	side, onFace := faceAt(t, p, nil)
	if onFace = onFace && side.off.Abs() <= p.Reach; onFace {
		if c, ok := ownCorner(side, p); ok {
			side.along = c
			return measured{side.ref.Line().At(c), &side}, words.New("snap.room-corner", "corner of {0}", nameOf(side.ref.Room))
		}
	}
	if c, ok := otherCorner(t, p, nil); ok {
		return measured{at: c.at}, c.snap
	}
	if onFace {
		return measured{side.ref.Line().At(side.along), &side}, words.New("snap.on-face", "on a face of {0}", nameOf(side.ref.Room))
	}
	return measured{at: p.At}, words.Text{}
}

// ownCorner returns the end of a side that is within reach.
func ownCorner(s onSide, p Pointer) (along unit.Length, ok bool) {
	for _, along := range []unit.Length{0, s.length()} {
		if s.ref.Line().At(along).Distance(p.At) <= p.Reach {
			return along, true
		}
	}
	return 0, false
}

// alongWalls returns the shorter way along the faces of a room between two places on
// different ones, and its length; nothing where they are not on faces of one room.
func alongWalls(a, b measured) (way []geom.Segment, long unit.Length) {
	if a.side == nil || b.side == nil || a.side.ref.Room.ID != b.side.ref.Room.ID || a.side.id() == b.side.id() {
		return nil, 0
	}
	way, long = clockwise(*a.side, *b.side)
	if other, shorter := clockwise(*b.side, *a.side); shorter < long {
		return other, shorter
	}
	return way, long
}

// clockwise returns the way from one place along the faces to another, to the right as
// seen standing in the room.
func clockwise(a, b onSide) (way []geom.Segment, long unit.Length) {
	room := a.ref.Room
	add := func(s geom.Segment) {
		way, long = append(way, s), long+s.Length()
	}
	line := a.ref.Line()
	add(geom.Segment{A: line.At(a.along), B: line.B})
	for i := (a.ref.At + 1) % len(room.Sides); i != b.ref.At; i = (i + 1) % len(room.Sides) {
		add(room.Segment(i))
	}
	line = b.ref.Line()
	add(geom.Segment{A: line.A, B: line.At(b.along)})
	return way, long
}

func (m *measure) Down(t Window, p Pointer) {
	m.last, m.known, m.pressed = p, true, true
	at, _ := m.rest(t)
	if m.from == nil || m.to != nil {
		m.from, m.to = &at, nil
	} else {
		m.to = &at
	}
	m.show(t)
}

func (m *measure) Move(t Window, p Pointer) {
	m.last, m.known = p, true
	m.show(t)
}

// Up ends a measure that was dragged.
func (m *measure) Up(t Window, p Pointer) {
	m.last = p
	if at, _ := m.rest(t); m.pressed && m.from != nil && m.to == nil && m.from.at.Distance(at.at) > 2*p.Reach {
		m.to = &at
	}
	m.pressed = false
	m.show(t)
}

func (*measure) Type(Window, Key) bool { return false }

func (m *measure) Cancel(t Window) bool {
	if m.from == nil {
		return false
	}
	m.from, m.to = nil, nil
	m.show(t)
	return true
}

func (m *measure) Leave(t Window) {
	*m = measure{}
	t.Preview(Preview{})
}

func (m *measure) show(t Window) {
	p := Preview{Cursor: CursorCross}
	if !m.known {
		t.Preview(p)
		return
	}
	end, name := m.rest(t)
	p.Snap = name
	if !name.IsZero() {
		p.SnapAt = &end.at
	}
	if m.to != nil {
		end = *m.to
	}
	if m.from != nil && m.from.at != end.at {
		m.tell(t, &p, *m.from, end)
	}
	t.Preview(p)
}

// tell shows what is between two places, straight and along the walls.
func (m *measure) tell(t Window, p *Preview, from, to measured) {
	straight := from.at.Distance(to.at)
	p.Dims = []Dim{{From: from.at, To: to.at, Text: t.System().Format(straight)}}
	across, down := (to.at.X - from.at.X).Abs(), (to.at.Y - from.at.Y).Abs()
	way, long := alongWalls(from, to)
	switch {
	case long > straight:
		p.Lines = way
		longest := slices.MaxFunc(way, func(a, b geom.Segment) int { return cmp.Compare(a.Length(), b.Length()) })
		p.Notes = []Note{{longest.At(longest.Length() / 2), t.System().Format(long)}}
		t.Say(words.New("tool.measure.walls", "{0} straight, {1} along the walls; {2} across, {3} down", straight, long, across, down))
	case across != 0 && down != 0:
		t.Say(words.New("tool.measure.both", "{0} straight, {1} across, {2} down", straight, across, down))
	default:
		t.Say(words.New("tool.measure.one", "{0} straight", straight))
	}
}
