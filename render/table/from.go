package table

import (
	"math"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// From is a place a tape starts at, with how far an opening stands from it.
type From struct {
	Name   words.Text // "west corner", "east casing of the door"
	Brief  words.Text // "W corner", "E casing"
	Centre unit.Length
	Edge   unit.Length // to the near edge of the box; below zero where the box reaches past
}

// Froms returns what an opening is measured from: on a face or a fixture's side the
// nearest corner, casing or end; in a ceiling, floor or top the two nearest edges
// that are square to each other. It returns none where the host is gone.
func Froms(ix *plan.Index, o *plan.Opening) []From {
	place, ok := ix.Place(o.At)
	if !ok {
		return nil
	}
	width, _ := fill.BoxSize(o)
	m := measurer{ix: ix, north: northOf(ix.Plan()), half: width / 2}
	switch o.At.Part {
	case plan.PartFace:
		return m.onFace(place, o.At.Along)
	case plan.PartCeiling, plan.PartFloor:
		return m.inRoom(place)
	case plan.PartTop:
		return m.onTop(place.On, o.At)
	}
	return m.onFixture(place.On, o.At)
}

type measurer struct {
	ix    *plan.Index
	north int
	half  unit.Length // of the box
}

// end is a place along a face.
type end struct {
	at          unit.Length
	name, brief words.Text
}

// nearest returns the end nearest to a place, the first of two that are as near.
func (m measurer) nearest(ends []end, along unit.Length) From {
	best := ends[0]
	for _, e := range ends[1:] {
		if (along - e.at).Abs() < (along - best.at).Abs() {
			best = e
		}
	}
	away := (along - best.at).Abs()
	return From{Name: best.name, Brief: best.brief, Centre: away, Edge: away - m.half}
}

func (m measurer) onFace(place plan.Place, along unit.Length) []From {
	at := place.Room.SideAt(place.Side.ID)
	line, n := place.Room.Segment(at), len(place.Room.Sides)
	left, right := windOf(line.A.Sub(line.B), m.north), windOf(line.B.Sub(line.A), m.north)
	ends := []end{
		m.corner(0, left, place.Room.Sides[(at+n-1)%n]),
		m.corner(line.Length(), right, place.Room.Sides[(at+1)%n]),
	}
	for _, c := range m.ix.Cuts(place.Side.ID) {
		trim := c.Break.Casing
		ends = append(ends, casing(c.From-trim, left, c.Break), casing(c.To+trim, right, c.Break))
	}
	return []From{m.nearest(ends, along)}
}

// corner names an end of a wall by the wind it lies to. Beyond it is no corner where
// the next side is none to lay a tape against.
func (m measurer) corner(at unit.Length, w wind, next *plan.Side) end {
	if next.Kind == plan.SideOpen || next.Kind == plan.SideRailing {
		return end{at, words.New("from.end", "{0} end of the wall", w.name()), words.New("from.end.short", "{0} end", w.letters())}
	}
	return end{at, words.New("from.corner", "{0} corner", w.name()), words.New("from.corner.short", "{0} corner", w.letters())}
}

// casing names the edge of a break toward a wind: of its trim, or of the break itself
// where it has none.
func casing(at unit.Length, w wind, b *plan.Break) end {
	if b.Casing == 0 {
		return end{at, words.New("from.edge", "{0} edge of the {1}", w.name(), b.Kind.Text()),
			words.New("from.edge.short", "{0} {1}", w.letters(), b.Kind.Text())}
	}
	return end{at, words.New("from.casing", "{0} casing of the {1}", w.name(), b.Kind.Text()),
		words.New("from.casing.short", "{0} casing", w.letters())}
}

// inRoom measures from two walls: the nearest, and the nearest of those across to it.
func (m measurer) inRoom(place plan.Place) []From {
	var froms []From
	var first geom.Segment
	for range 2 {
		best, found := From{}, false
		var chosen geom.Segment
		for i, s := range place.Room.Sides {
			line := place.Room.Segment(i)
			if s.Kind == plan.SideOpen || len(froms) > 0 && !isAcross(first, line) {
				continue
			}
			if _, away := line.Nearest(place.Foot); !found || away < best.Centre {
				w := windOf(minus(plan.FrameOf(line).Out()), m.north)
				best, found, chosen = m.wall(w, away), true, line
			}
		}
		if !found {
			break
		}
		froms, first = append(froms, best), chosen
	}
	return froms
}

func (m measurer) wall(w wind, away unit.Length) From {
	return From{
		Name: words.New("from.wall", "{0} wall", w.name()), Brief: words.New("from.wall.short", "{0} wall", w.letters()),
		Centre: away, Edge: away - m.half,
	}
}

// isAcross reports whether two lines are nearer to square than to parallel.
func isAcross(a, b geom.Segment) bool {
	u, v := plan.FrameOf(a).Along(), plan.FrameOf(b).Along()
	cross := u.X.Millimetres()*v.Y.Millimetres() - u.Y.Millimetres()*v.X.Millimetres()
	return math.Abs(cross) > 1000*1000*math.Sqrt2/2
}

var (
	leftEnd  = words.New("from.left", "left end")
	rightEnd = words.New("from.right", "right end")
	backEdge = words.New("from.back", "back edge")
)

// onFixture measures along a fixture's side as one looks at it.
func (m measurer) onFixture(on *plan.Fixture, at plan.Anchor) []From {
	wide := on.Width
	if at.Part == plan.PartLeft || at.Part == plan.PartRight {
		wide = on.Depth
	}
	return []From{m.nearest([]end{{0, leftEnd, leftEnd}, {wide, rightEnd, rightEnd}}, at.Along)}
}

func (m measurer) onTop(on *plan.Fixture, at plan.Anchor) []From {
	along := m.nearest([]end{{0, leftEnd, leftEnd}, {on.Width, rightEnd, rightEnd}}, at.Along)
	return []From{along, m.nearest([]end{{0, backEdge, backEdge}}, at.Out)}
}
