// Package house tells how the rooms of a level lie to one another: through which doors and
// open sides one goes from one to the next.
package house

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Door is a way from one room: a door, slider or cased opening that reaches the floor, or
// an open side.
type Door struct {
	Break    *plan.Break // nil for an open side
	From, To *plan.Room  // To is nil where nothing is drawn beyond
	Cut      index.Cut   // along the side of From; zero for an open side
	Side     *plan.SideRef
	Behind   *plan.Side // of To, which the door cuts too; nil for an open side
	Line     geom.Segment
}

// Level is the rooms of a level and the ways between them.
type Level struct {
	ix    *index.Index
	level *plan.Level
	Rooms []*plan.Room
	ways  map[plan.ID][]Door // by the room that they lead from
}

// levelOf is the key of what Of returns.
type levelOf plan.ID

// Of returns the rooms of a level and the ways between them. Nobody writes to it.
func Of(ix *index.Index, level *plan.Level) *Level {
	return index.Derived(ix, levelOf(level.ID), func() *Level { return newLevel(ix, level) })
}

func newLevel(ix *index.Index, level *plan.Level) *Level {
	l := &Level{ix: ix, level: level, ways: map[plan.ID][]Door{}}
	for r := range level.Rooms.All() {
		l.Rooms = append(l.Rooms, r)
		for i := range r.Sides {
			ref := &plan.SideRef{Level: level.ID, Room: r, At: i}
			l.doors(ref)
			l.openSide(ref)
		}
	}
	return l
}

// From returns the ways that lead from a room.
func (l *Level) From(r *plan.Room) []Door { return l.ways[r.ID] }

// Back returns the same way as it leads from the room beyond: of several open sides between
// the two, that which lies opposite. It reports false where nothing is drawn beyond.
func (l *Level) Back(d Door) (back Door, ok bool) {
	if d.To == nil {
		return back, false
	}
	away := func(b Door) unit.Length { return b.Line.Middle().Distance(d.Line.Middle()) }
	for _, b := range l.From(d.To) {
		if b.To == d.From && b.Break == d.Break && (!ok || away(b) < away(back)) {
			back, ok = b, true
		}
	}
	return back, ok
}

func (l *Level) doors(ref *plan.SideRef) {
	cuts := l.ix.Cuts(ref.Key())
	if !slices.ContainsFunc(cuts, func(c index.Cut) bool { return IsWay(c.Break) }) {
		return
	}
	face, behind := geom.FrameOf(ref.Line()), l.ix.Behind(ref.Key())
	for _, c := range cuts {
		if !IsWay(c.Break) {
			continue
		}
		d := Door{Break: c.Break, From: ref.Room, Cut: c, Side: ref, Line: geom.Segment{A: face.Point(c.From, 0), B: face.Point(c.To, 0)}}
		middle := (c.From + c.To) / 2
		for _, b := range behind {
			if b.From <= middle && middle <= b.To && b.Room != ref.Room {
				d.To, d.Behind = b.Room, b.Side
			}
		}
		l.ways[ref.Room.ID] = append(l.ways[ref.Room.ID], d)
	}
}

// IsWay reports whether people walk through a break.
func IsWay(b *plan.Break) bool {
	return b.Sill == 0 && b.Kind.IsDoorway()
}

// Apart is how far two open sides may lie from one another for one way between their
// rooms: no farther than the faces of a thick wall.
const Apart = index.MaxPartition

func (l *Level) openSide(ref *plan.SideRef) {
	if ref.Side().Kind != plan.SideOpen {
		return
	}
	line := ref.Line()
	for _, id := range l.ix.Search(l.level.ID, line.Box().Expand(Apart)) {
		other, ok := l.ix.Side(id)
		if !ok || other.Room == ref.Room || other.Side().Kind != plan.SideOpen {
			continue
		}
		if shared, gap, ok := line.Overlap(other.Line(), unit.Inch); ok && gap.Abs() <= Apart && shared.Length() > unit.Foot {
			face := geom.FrameOf(line)
			l.ways[ref.Room.ID] = append(l.ways[ref.Room.ID], Door{
				From: ref.Room, To: other.Room, Side: ref, Line: geom.Segment{A: face.Point(shared.From, 0), B: face.Point(shared.To, 0)},
			})
		}
	}
}
