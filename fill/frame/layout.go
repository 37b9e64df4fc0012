package frame

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// laidOut returns the studs that the layouts of a wall put behind a face, from left to
// right, without those at its ends and at breaks.
//
// Of two faces with different layouts the one that says its studs holds, of two alike the
// longer, whose wall was framed in one piece, and of two as long that of the lower ID.
func (f Face) laidOut() (studs []Stud) {
	if f.Side.Kind != plan.SideWall {
		return nil
	}
	isOther := func(b index.Backing) bool { return b.Side.Kind == plan.SideWall && !f.goesBefore(b) }
	if !slices.ContainsFunc(f.Behind, isOther) {
		return within(layout(f.Side, f.Length), 0, f.Length)
	}
	var all []Stud // of its own layout, where that holds anywhere
	own := func(from, to unit.Length) []Stud {
		if from <= to && all == nil {
			all = layout(f.Side, f.Length)
		}
		return within(all, from, to)
	}
	studs = make([]Stud, 0, usualStuds(f.Length)+usualEnds)
	at := unit.Length(0)
	for _, b := range f.Behind {
		if b.Side.Kind != plan.SideWall || b.To <= at {
			continue
		}
		studs = append(studs, own(at, b.From-1)...)
		if from := max(at, b.From); isOther(b) {
			studs = f.addBehind(studs, b, from, b.To)
		} else {
			studs = append(studs, own(from, b.To)...)
		}
		at = b.To + 1
	}
	studs = append(studs, own(at, f.Length)...)
	slices.SortStableFunc(studs, func(a, b Stud) int { return cmp.Compare(a.At, b.At) })
	return studs
}

// isTold reports whether the face is a wall of which it or one behind tells the studs.
func (f Face) isTold() bool {
	return f.Side.Kind == plan.SideWall && (said(f.Side) > 0 || slices.ContainsFunc(f.Behind, func(b index.Backing) bool {
		return b.Side.Kind == plan.SideWall && said(b.Side) > 0
	}))
}

// within returns what of studs that come from left to right is between two places, both
// included. It shares their list.
func within(studs []Stud, from, to unit.Length) []Stud {
	at := func(s Stud, l unit.Length) int { return cmp.Compare(s.At, l) }
	i, _ := slices.BinarySearchFunc(studs, from, at)
	j, _ := slices.BinarySearchFunc(studs, to+1, at)
	return studs[i:max(i, j):max(i, j)]
}

// usualEnds is room for the studs at the ends of a face and of what stands behind.
const usualEnds = 4

// usualStuds returns room for the studs of a face at the usual spacing of 16 in.
func usualStuds(length unit.Length) int { return int(length/(16*unit.Inch)) + 2 }

// addBehind adds the studs between two places that another wall tells which stands behind.
func (f Face) addBehind(studs []Stud, b index.Backing, from, to unit.Length) []Stud {
	_, end := f.across(b)
	for _, s := range slices.Backward(layout(b.Side, lengthOf(b))) {
		s.At = end - s.At
		if from <= s.At && s.At <= to {
			studs = append(studs, s)
		}
	}
	return studs
}

// across returns where the face of a side behind begins and ends along this one: it runs
// the other way, so that its left end is the latter.
func (f Face) across(b index.Backing) (from, to unit.Length) {
	line := b.Room.Segment(b.Room.SideAt(b.Side.ID))
	to, _ = geom.FrameOf(f.Line).Project(line.A)
	from, _ = geom.FrameOf(f.Line).Project(line.B)
	return from, to
}

func lengthOf(b index.Backing) unit.Length {
	return b.Room.Segment(b.Room.SideAt(b.Side.ID)).Length()
}

// goesBefore reports whether the layout of the face holds before that of a side behind it.
func (f Face) goesBefore(b index.Backing) bool {
	return cmp.Or(
		cmp.Compare(said(f.Side), said(b.Side)),
		cmp.Compare(f.Length, lengthOf(b)),
		cmp.Compare(b.Side.ID, f.Side.ID),
	) > 0
}

// said ranks what a side tells of its studs: nothing, a spacing, where they begin, and
// each by itself.
func said(s *plan.Side) int {
	switch {
	case len(s.Places) > 0:
		return 3
	case s.Studs.Spacing <= 0 && slices.ContainsFunc(s.Zones, func(z plan.Zone) bool { return z.Spacing > 0 }):
		return 1
	case s.Studs.Spacing <= 0:
		return 0
	case s.Studs.First == 0 && !s.Studs.FromRight:
		return 1
	}
	return 2
}

// layout returns the studs that a side tells along its length, from left to right. Where
// only a spacing is told the centre of the first stands one spacing from the left end, so
// that sheets break on a centre (plate layout, constructionmanuals.tpub.com).
//
// A zone with a spacing of its own is laid out by that from its left end, where no stud in it
// was taped or said by itself.
func layout(s *plan.Side, length unit.Length) []Stud {
	studs := ofFace(s, length)
	for _, z := range s.Zones {
		there := within(studs, z.From, min(z.To, length))
		if z.Spacing <= 0 || slices.ContainsFunc(there, func(s Stud) bool { return s.isPlaced }) {
			continue
		}
		var own []Stud
		for at := z.From + z.Spacing; at <= min(z.To, length); at += z.Spacing {
			own = append(own, Stud{At: at, Thick: cmp.Or(s.Studs.Thick, StudThick), Kind: CommonStud, State: plan.StudAssumed})
		}
		studs = slices.Concat(within(studs, 0, z.From-1), own, within(studs, z.To+1, length))
	}
	return studs
}

func ofFace(s *plan.Side, length unit.Length) (studs []Stud) {
	thick := cmp.Or(s.Studs.Thick, StudThick)
	if s.Studs.Spacing > 0 || len(s.Places) > 0 {
		studs = make([]Stud, 0, max(len(s.Places), int(length/max(s.Studs.Spacing, unit.Inch))+1))
	}
	for _, p := range s.Places {
		studs = append(studs, Stud{At: p.At, Thick: thick, Kind: CommonStud, State: p.State, isPlaced: true})
	}
	if len(studs) > 0 || s.Studs.Spacing <= 0 {
		return studs
	}
	state := plan.StudAssumed
	if said(s) > 1 {
		state = plan.StudStated
	}
	for at := cmp.Or(s.Studs.First, s.Studs.Spacing); at <= length; at += s.Studs.Spacing {
		studs = append(studs, Stud{At: at, Thick: thick, Kind: CommonStud, State: state})
	}
	if s.Studs.FromRight {
		slices.Reverse(studs)
		for i := range studs {
			studs[i].At = length - studs[i].At
		}
	}
	return studs
}

// ends returns the studs at the ends of the face and, where another wall stands behind, at
// the ends of that one, since its corners are framed too. Of two that would overlap that of
// the face whose layout holds is kept.
func (f Face) ends(state plan.StudState) (studs []Stud) {
	at := func(left unit.Length, s *plan.Side) Stud {
		thick := cmp.Or(s.Studs.Thick, StudThick)
		return Stud{At: left + thick/2, Thick: thick, Kind: EndStud, State: state}
	}
	pair := func(from, to unit.Length, s *plan.Side) []Stud {
		thick := cmp.Or(s.Studs.Thick, StudThick)
		if to-from < 2*thick {
			return []Stud{at(from, s)}
		}
		return []Stud{at(from, s), at(to-thick, s)}
	}
	studs = pair(0, f.Length, f.Side)
	for _, b := range f.Behind {
		if b.Side.Kind != plan.SideWall {
			continue
		}
		from, to := f.across(b)
		for _, s := range pair(from, to, b.Side) {
			switch {
			case s.Right() <= 0 || s.Left() >= f.Length:
			case !slices.ContainsFunc(studs, s.overlaps):
				studs = append(studs, s)
			case !f.goesBefore(b):
				studs = append(slices.DeleteFunc(studs, s.overlaps), s)
			}
		}
	}
	return studs
}

// LayoutState says how well the studs of a face are known as a whole: measured or stated
// where any of them is.
func (f Face) LayoutState() plan.StudState { return surest(f.laidOut()) }

func surest(laid []Stud) plan.StudState {
	state := plan.StudAssumed
	for _, s := range laid {
		if s.State == plan.StudMeasured {
			return s.State
		}
		if s.State == plan.StudStated {
			state = s.State
		}
	}
	return state
}
