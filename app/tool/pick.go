package tool

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Under returns what a press of the pointer would be on, or nothing.
func Under(t Window, p Pointer) plan.ID { return pick(t, p) }

// deepWall is as thick as walls are that can be pointed at by their middle.
const deepWall = unit.Foot

// pick returns what is pointed at, the smallest thing first: an opening, a break, the
// line of a control or cable, a fixture, a side, a room; or nothing.
func pick(t Window, p Pointer) plan.ID {
	if p.Symbol != "" {
		return p.Symbol
	}
	if p.OnUnfold && p.Part.Host != "" {
		return p.Part.Host
	}
	if p.OnUnfold {
		return pickOnFace(t.Index(), p)
	}
	ix := t.Index()
	least := rankOf(p.Line)
	type found struct {
		id             plan.ID
		rank           int
		distance, size unit.Length
	}
	var all []found
	for _, id := range ix.Search(t.Level(), geom.BoxOf(p.At).Expand(max(p.Reach, deepWall))) {
		if d, size, ok := distanceTo(ix, id, p); ok && (p.Line == "" || rankOf(id) < least) {
			all = append(all, found{id, rankOf(id), d, size})
		}
	}
	if len(all) == 0 {
		return p.Line
	}
	return slices.MinFunc(all, func(a, b found) int {
		return cmp.Or(cmp.Compare(a.rank, b.rank), cmp.Compare(a.distance, b.distance),
			cmp.Compare(a.size, b.size), cmp.Compare(a.id, b.id))
	}).id
}

// pickOnFace returns the break or fixture that stands where the pointer is in the
// unfolded room, else the face itself.
func pickOnFace(ix *index.Index, p Pointer) plan.ID {
	s, ok := faceOf(ix, p.Side, p.At)
	if !ok {
		return ""
	}
	for _, f := range ix.FixturesOn(p.Side) {
		if s.along >= f.At.Along && s.along <= f.At.Along+f.Width && p.Height >= f.Bottom && p.Height <= f.Top() {
			return f.ID
		}
	}
	for _, c := range ix.Cuts(p.Side) {
		if s.along >= c.From && s.along <= c.To && p.Height >= c.Break.Sill && p.Height <= c.Break.Head {
			return c.Break.ID
		}
	}
	return p.Side
}

func rankOf(id plan.ID) int {
	switch id.Kind() {
	case plan.KindOpening:
		return 0
	case plan.KindBreak:
		return 1
	case plan.KindControl, plan.KindCable:
		return 2
	case plan.KindFixture:
		return 3
	case plan.KindSide:
		return 4
	}
	return 5
}

// distanceTo returns how far a thing is from the pointer, and how large it is, or false
// beyond reach.
func distanceTo(ix *index.Index, id plan.ID, p Pointer) (d, size unit.Length, ok bool) {
	switch id.Kind() {
	case plan.KindOpening:
		o, _ := ix.Plan().Opening(id)
		place, there := ix.Place(o.At)
		d = place.Foot.Distance(p.At)
		return d, 0, there && d <= p.Reach
	case plan.KindBreak:
		b, _ := ix.Plan().Break(id)
		line, there := ix.BreakLine(b)
		if !there {
			return 0, 0, false
		}
		along, off := line.Project(p.At)
		// A break is as deep as its wall, which lies behind the face.
		if along < -p.Reach/2 || along > b.Width+p.Reach/2 || off > p.Reach/2 || off < -wallDepth(ix, b.At.Host)-p.Reach/2 {
			return 0, 0, false
		}
		return 0, b.Width, true
	case plan.KindFixture:
		f, _ := ix.Plan().Fixture(id)
		outline, there := ix.Footprint(f)
		if !there || !outline.Contains(p.At) {
			return 0, 0, false
		}
		return 0, f.Width + f.Depth, true
	case plan.KindSide:
		ref, there := ix.Side(id)
		if !there {
			return 0, 0, false
		}
		_, d = ref.Line().Nearest(p.At)
		// The wall behind it is drawn too, and as easily pointed at.
		along, off := ref.Line().Project(p.At)
		isInWall := ref.Side().Kind == plan.SideWall && along >= 0 && along <= ref.Line().Length() && off < 0 && off >= -wallDepth(ix, id)
		return d, 0, d <= p.Reach*2/3 || isInWall
	case plan.KindRoom:
		r := ix.RoomOf(id)
		return 0, r.Outline().Perimeter(), r != nil && r.Outline().Contains(p.At)
	}
	return 0, 0, false
}

// wallDepth returns how thick the wall behind a side is: to the face behind it, or as if
// one stood there.
func wallDepth(ix *index.Index, side plan.ID) unit.Length {
	deepest := unit.Length(0)
	for _, b := range ix.Behind(side) {
		deepest = max(deepest, b.Gap)
	}
	if ref, ok := ix.Side(side); ok && deepest == 0 {
		return frame.PartitionBehind(ref.Side())
	}
	return deepest
}

// cornerAt returns the side whose left end is pointed at, or nothing.
func cornerAt(ix *index.Index, room plan.ID, p Pointer) (plan.ID, bool) {
	r := ix.RoomOf(room)
	if r == nil {
		return "", false
	}
	for _, s := range r.Sides {
		if s.Start.Distance(p.At) <= p.Reach {
			return s.ID, true
		}
	}
	return "", false
}

// within lists the openings, breaks and fixtures that lie in a box, or the rooms where
// there are none of these. Of an opening its place or its body will do.
func within(t Window, box geom.Box) (ids []plan.ID) {
	ix := t.Index()
	ids = t.DrawnIn(box)
	var rooms []plan.ID
	for _, id := range ix.Search(t.Level(), box) {
		switch id.Kind() {
		case plan.KindOpening:
			o, _ := ix.Plan().Opening(id)
			if place, ok := ix.Place(o.At); ok && box.Contains(place.Foot) && !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		case plan.KindBreak:
			b, _ := ix.Plan().Break(id)
			if line, ok := ix.BreakLine(b); ok && box.ContainsBox(line.Box()) {
				ids = append(ids, id)
			}
		case plan.KindFixture:
			f, _ := ix.Plan().Fixture(id)
			if outline, ok := ix.Footprint(f); ok && box.ContainsBox(outline.Box()) {
				ids = append(ids, id)
			}
		case plan.KindRoom:
			if r := ix.RoomOf(id); box.ContainsBox(r.Outline().Box()) {
				rooms = append(rooms, id)
			}
		}
	}
	if len(ids) == 0 {
		return rooms
	}
	return ids
}
