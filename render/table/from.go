package table

import (
	"studbay/fill/flat"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// From is a place a tape starts at, with how far an opening stands from it.
type From struct {
	Name   words.Text // "west corner", "east casing of the door"
	Brief  words.Text // "W corner", "E casing"
	Centre unit.Length
	Edge   unit.Length // to the near edge of the box; below zero where the box reaches past
	// Rough is how far the centre is from the same edge of the rough opening, where the tape
	// starts at a break that has one: there is no casing yet while walls are bare. There is none
	// in a wall that stays closed.
	Rough    unit.Length
	HasRough bool
	Casing   unit.Length // how wide the casing is that the tape starts at; 0: at none
	// IsAssumed tells a casing that stands already and that nobody has measured.
	IsAssumed bool
}

// Froms returns what an opening is measured from: on a face or a fixture's side the
// nearest corner, casing or end; in a ceiling, floor or top the two nearest edges
// that are square to each other. It returns none where the host is gone.
func Froms(ix *index.Index, o *plan.Opening) []From {
	place, ok := ix.Place(o.At)
	if !ok {
		return nil
	}
	m := measurer{ix: ix, north: northOf(ix.Plan()), half: frame.FrontOf(o).Width / 2}
	switch o.At.Part {
	case plan.PartFace:
		return m.onFace(place, o.At.Along)
	case plan.PartCeiling, plan.PartFloor:
		return m.inRoom(place, o.At.Part)
	case plan.PartTop:
		return m.onTop(place.On, o.At)
	}
	return m.onFixture(place.On, o.At)
}

type measurer struct {
	ix    *index.Index
	north int
	half  unit.Length // of the box
}

func (m measurer) onFace(place index.Place, along unit.Length) []From {
	face, _ := frame.FaceOf(m.ix, place.Side.ID)
	mark, away := frame.Nearest(face.Tapes(), along)
	w := windOf(face.Line.A.Sub(face.Line.B), m.north)
	if mark.IsRight {
		w = windOf(face.Line.B.Sub(face.Line.A), m.north)
	}
	from := From{Centre: away, Edge: away - m.half}
	if mark.Break != nil {
		from.Name, from.Brief = casing(w, mark.Break)
		from.rough(face, mark, along)
		if from.IsAssumed = isAssumed(face, mark); !from.IsAssumed {
			return []From{from}
		}
		from.Name = words.New("from.assumed", "{0}, assumed", from.Name)
		from.Brief = words.New("from.assumed", "{0}, assumed", from.Brief)
		end, far := face.NearerEnd(along)
		return []From{from, m.fromEnd(place, face, end, far)}
	}
	return []From{m.fromEnd(place, face, mark, away)}
}

// isAssumed reports whether a mark is at trim that stands already and that nobody has measured.
func isAssumed(face frame.Face, m frame.Mark) bool {
	return m.Break.Casing > 0 && !m.Break.CasingMeasured && face.Side.StandsAt(m.At)
}

// fromEnd measures from an end of the wall.
func (m measurer) fromEnd(place index.Place, face frame.Face, mark frame.Mark, away unit.Length) From {
	w := windOf(face.Line.A.Sub(face.Line.B), m.north)
	if mark.IsRight {
		w = windOf(face.Line.B.Sub(face.Line.A), m.north)
	}
	from := From{Centre: away, Edge: away - m.half}
	room, at := place.Room, place.Room.SideAt(place.Side.ID)
	if mark.Past != nil {
		room, at = mark.Past.Room, mark.Past.At
	}
	n := len(room.Sides)
	next := room.Sides[(at+n-1)%n]
	if mark.IsRight {
		next = room.Sides[(at+1)%n]
	}
	if from.Name, from.Brief = corner(w, next); room != place.Room {
		from.Name = words.New("from.beyond", "{0}, in {1}", from.Name, room.Name)
		from.Brief = words.New("from.beyond", "{0}, in {1}", from.Brief, room.Name)
	}
	return from
}

// rough tells how wide a casing is that the tape starts at, and the edge of the rough opening
// behind it; where a wall stays closed nobody sees that.
func (f *From) rough(face frame.Face, m frame.Mark, along unit.Length) {
	f.Casing = m.Break.Casing
	if face.Side.ConditionAt(m.At) == plan.ConditionClosed {
		return
	}
	for _, c := range face.Cuts {
		if r, ok := frame.RoughOf(c); ok && c.Break.ID == m.Of {
			edge := r.Left
			if m.IsRight {
				edge = r.Right
			}
			f.Rough, f.HasRough = (along - edge).Abs(), true
		}
	}
}

// corner names an end of a wall by the wind it lies to. Beyond it is no corner where
// the next side is none to lay a tape against.
func corner(w wind, next *plan.Side) (name, brief words.Text) {
	if next.Kind == plan.SideOpen || next.Kind == plan.SideRailing {
		return words.New("from.end", "{0} end of the wall", w.name()), words.New("from.end.short", "{0} end", w.letters())
	}
	return words.New("from.corner", "{0} corner", w.name()), words.New("from.corner.short", "{0} corner", w.letters())
}

// casing names the edge of a break toward a wind: of its trim, or of the break itself
// where it has none.
func casing(w wind, b *plan.Break) (name, brief words.Text) {
	if b.Casing == 0 {
		return words.New("from.edge", "{0} edge of the {1}", w.name(), b.Kind.Text()),
			words.New("from.edge.short", "{0} {1}", w.letters(), b.Kind.Text())
	}
	return words.New("from.casing", "{0} casing of the {1}, {2} wide", w.name(), b.Kind.Text(), words.Height(b.Casing)),
		words.New("from.casing.short", "{0} casing", w.letters())
}

// inRoom measures from the two walls that the frame tells.
func (m measurer) inRoom(place index.Place, part plan.Part) (froms []From) {
	for _, d := range flat.NearWalls(place.Room, part, place.Foot) {
		line := place.Room.Segment(place.Room.SideAt(d.Wall))
		froms = append(froms, m.wall(windOf(minus(geom.FrameOf(line).Out()), m.north), d.Length))
	}
	return froms
}

func (m measurer) wall(w wind, away unit.Length) From {
	return From{
		Name: words.New("from.wall", "{0} wall", w.name()), Brief: words.New("from.wall.short", "{0} wall", w.letters()),
		Centre: away, Edge: away - m.half,
	}
}

var (
	leftEnd  = words.New("from.left", "left end")
	rightEnd = words.New("from.right", "right end")
	backEdge = words.New("from.back", "back edge")
)

// onFixture measures along a fixture's side, or its top, as one looks at it.
func (m measurer) onFixture(on *plan.Fixture, at plan.Anchor) []From {
	left, right := frame.FixtureEnds(on, at.Part)
	mark, away := frame.Nearest([]frame.Mark{left, right}, at.Along)
	name := leftEnd
	if mark.IsRight {
		name = rightEnd
	}
	return []From{{Name: name, Brief: name, Centre: away, Edge: away - m.half}}
}

func (m measurer) onTop(on *plan.Fixture, at plan.Anchor) []From {
	away := at.Out.Abs()
	return append(m.onFixture(on, at), From{Name: backEdge, Brief: backEdge, Centre: away, Edge: away - m.half})
}
