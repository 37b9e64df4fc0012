package tool

import (
	"studbay/plan/geom"
	"studbay/plan/words"
)

// measure tells the distance between two places; it changes nothing.
type measure struct {
	from, to *geom.Point
	last     Pointer
	known    bool
	pressed  bool
}

var _ Tool = (*measure)(nil)

func (*measure) ID() string { return "measure" }

func (m *measure) Hint() words.Text {
	if m.from == nil || m.to != nil {
		return words.New("tool.measure.hint", "Click where to measure from; Shift measures freely")
	}
	return words.New("tool.measure.hint-to", "Click where to measure to")
}

// rest returns the place pointed at: on a corner, on a face, or as it is.
func (m *measure) rest(t Table) (geom.Point, words.Text) {
	p := m.last
	if p.Shift {
		return p.At, words.Text{}
	}
	if o, _ := t.Plan().Opening(pick(t, p)); o != nil {
		if place, ok := t.Index().Place(o.At); ok {
			return place.Foot, words.New("snap.centre", "centre of {0}", o.Tag)
		}
	}
	if c, ok := otherCorner(t, p, nil); ok {
		return c.at, c.snap
	}
	if side, ok := faceAt(t, p, nil); ok && side.off.Abs() <= p.Reach {
		return side.ref.Line().At(side.along), words.New("snap.on-face", "on a face of {0}", side.ref.Room.Name)
	}
	return p.At, words.Text{}
}

func (m *measure) Down(t Table, p Pointer) {
	m.last, m.known, m.pressed = p, true, true
	at, _ := m.rest(t)
	if m.from == nil || m.to != nil {
		m.from, m.to = &at, nil
	} else {
		m.to = &at
	}
	m.show(t)
}

func (m *measure) Move(t Table, p Pointer) {
	m.last, m.known = p, true
	m.show(t)
}

// Up ends a measure that was dragged.
func (m *measure) Up(t Table, p Pointer) {
	m.last = p
	if at, _ := m.rest(t); m.pressed && m.from != nil && m.to == nil && m.from.Distance(at) > 2*p.Reach {
		m.to = &at
	}
	m.pressed = false
	m.show(t)
}

func (*measure) Type(Table, Key) bool { return false }

func (m *measure) Cancel(t Table) bool {
	if m.from == nil {
		return false
	}
	m.from, m.to = nil, nil
	m.show(t)
	return true
}

func (m *measure) Leave(t Table) {
	*m = measure{}
	t.Preview(Preview{})
}

func (m *measure) show(t Table) {
	p := Preview{Cursor: CursorCross}
	if !m.known {
		t.Preview(p)
		return
	}
	at, name := m.rest(t)
	p.Snap = name
	if !name.IsZero() {
		p.SnapAt = &at
	}
	if m.to != nil {
		at = *m.to
	}
	if m.from != nil && *m.from != at {
		p.Dims = []Dim{{From: *m.from, To: at, Text: t.System().Format(m.from.Distance(at))}}
		across, down := (at.X - m.from.X).Abs(), (at.Y - m.from.Y).Abs()
		if across != 0 && down != 0 {
			t.Say(words.New("tool.measure.both", "{0} in all, {1} across, {2} down", m.from.Distance(at), across, down))
		}
	}
	t.Preview(p)
}
