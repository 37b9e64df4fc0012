package index

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// RoomView is a room with all that a rule on rooms may read: its sides with their
// breaks (also those stored on the other face of a partition), fixtures, openings
// and what stands behind.
type RoomView struct {
	Level   plan.ID
	Room    *plan.Room
	Sides   []SideView
	Ceiling []*plan.Opening
	Floor   []*plan.Opening
	// Standing are the fixtures on the floor, not at a side.
	Standing []FixtureView
	// Controls are those that an opening on a side or in the floor is a load of.
	Controls []*plan.Control
	// Circuits are those that anything in the room is on, with all else on them.
	Circuits []CircuitView
	// InBasement tells a room in a basement, finished or not, by its use or by what it or its
	// level is called.
	InBasement bool
}

// IsLoad reports whether a switch is drawn to an opening on a side or in the floor.
func (v RoomView) IsLoad(opening plan.ID) bool {
	return slices.ContainsFunc(v.Controls, func(c *plan.Control) bool { return slices.Contains(c.Loads, opening) })
}

// EachFixture does something with each fixture of the room, also with those on others.
func (v RoomView) EachFixture(do func(FixtureView)) {
	for _, s := range v.Sides {
		eachFixture(s.Fixtures, do)
	}
	eachFixture(v.Standing, do)
}

func eachFixture(list []FixtureView, do func(FixtureView)) {
	for _, f := range list {
		do(f)
		eachFixture(f.OnIt, do)
	}
}

// EachOpening does something with each opening of the room and the point of the plan where
// it is.
func (v RoomView) EachOpening(do func(*plan.Opening, geom.Point)) {
	for _, s := range v.Sides {
		for _, o := range s.Openings {
			do(o, s.Frame.Point(o.At.Along, 0))
		}
	}
	for _, o := range v.Ceiling {
		do(o, o.At.At)
	}
	for _, o := range v.Floor {
		do(o, o.At.At)
	}
	v.EachFixture(func(f FixtureView) {
		for _, o := range f.Openings {
			do(o, f.PointOf(o))
		}
	})
}

// SideView is one side of a room with what is in, at and behind it.
type SideView struct {
	Side     *plan.Side
	Line     geom.Segment
	Frame    geom.Frame
	Length   unit.Length
	Cuts     []Cut // from left to right
	Behind   []Backing
	Fixtures []FixtureView
	Openings []*plan.Opening // from left to right
	// OpeningsBehind are those of each side behind, in the order of Behind.
	OpeningsBehind [][]*plan.Opening
	// Cables are those that end in one of Openings, in any order.
	Cables []*plan.Cable
	// Pairs are those that any of Openings is in.
	Pairs []PairView
}

// FixtureView is a fixture where it stands, with what is on it.
type FixtureView struct {
	Fixture   *plan.Fixture
	Frame     geom.Frame
	Footprint geom.Polygon
	Openings  []*plan.Opening
	OnIt      []FixtureView
}

// Foot returns the point of the plan at a distance along a face of the fixture, from that
// face's left end as one sees it.
func (v FixtureView) Foot(face plan.Part, along unit.Length) geom.Point {
	foot, _ := onFixture(v.Frame, v.Fixture, plan.Anchor{Part: face, Along: along})
	return foot
}

// PointOf returns where in the plan an opening on the fixture is.
func (v FixtureView) PointOf(o *plan.Opening) geom.Point {
	at, _ := onFixture(v.Frame, v.Fixture, o.At)
	return at
}

// OpeningView is an opening with all that a rule on openings may read.
type OpeningView struct {
	Level   plan.ID
	Opening *plan.Opening
	Room    *plan.Room // nil where its host is gone
	Side    *plan.Side // nil where it is not on a face
	On      *plan.Fixture
	Cables  []*plan.Cable // that end in it, in the order of IDs
	Circuit *plan.Circuit
}

// RoomView returns the view of a room. It reports false where the room is gone.
func (ix *Index) RoomView(id plan.ID) (v RoomView, ok bool) {
	ref, ok := ix.rooms.Get(id)
	if !ok {
		return v, false
	}
	v.Level, v.Room = ref.level, ref.room
	v.Sides = make([]SideView, 0, len(ref.room.Sides))
	for i := range ref.room.Sides {
		v.Sides = append(v.Sides, ix.sideView(&plan.SideRef{Level: ref.level, Room: ref.room, At: i}))
	}
	for _, o := range ix.OpeningsOn(id) {
		if o.At.Part == plan.PartCeiling {
			v.Ceiling = append(v.Ceiling, o)
		} else {
			v.Floor = append(v.Floor, o)
		}
	}
	v.Standing = ix.fixtureViews(id, 0)
	for _, s := range v.Sides {
		v.addControls(ix, s.Openings)
	}
	v.addControls(ix, v.Floor)
	v.Circuits = ix.circuitsOf(v)
	v.InBasement = IsInBasement(ix.plan.Level(ref.level), ref.room)
	return v, true
}

func (v *RoomView) addControls(ix *Index, openings []*plan.Opening) {
	for _, o := range openings {
		for _, c := range ix.ControlsOf(o.ID) {
			if !slices.Contains(v.Controls, c) {
				v.Controls = append(v.Controls, c)
			}
		}
	}
}

func (ix *Index) sideView(ref *plan.SideRef) SideView {
	line := ref.Line()
	behind := ix.behind(ref)
	openings := slices.Clone(ix.OpeningsOn(ref.Key()))
	slices.SortStableFunc(openings, func(a, b *plan.Opening) int { return int(min(max(a.At.Along-b.At.Along, -1), 1)) })
	var theirs [][]*plan.Opening
	for _, b := range behind {
		theirs = append(theirs, ix.OpeningsOn(b.Side.ID))
	}
	var cables []*plan.Cable
	for _, o := range openings {
		for _, c := range ix.CablesAt(o.ID) {
			if !slices.Contains(cables, c) {
				cables = append(cables, c)
			}
		}
	}
	return SideView{
		Cables:         cables,
		Pairs:          ix.pairsOf(openings),
		OpeningsBehind: theirs,
		Side:           ref.Side(), Line: line, Frame: geom.FrameOf(line), Length: line.Length(),
		Cuts: ix.cuts(ref, behind), Behind: behind,
		Fixtures: ix.fixtureViews(ref.Key(), 0), Openings: openings,
	}
}

func (ix *Index) fixtureViews(host plan.ID, depth int) (views []FixtureView) {
	if depth == plan.MaxStack {
		return nil
	}
	for _, f := range ix.FixturesOn(host) {
		frame, _, ok := ix.FixtureFrame(f)
		if !ok {
			continue
		}
		views = append(views, FixtureView{
			Fixture: f, Frame: frame, Footprint: frame.Rectangle(f.Width, f.Depth),
			Openings: ix.OpeningsOn(f.ID), OnIt: ix.fixtureViews(f.ID, depth+1),
		})
	}
	return views
}

// OpeningView returns the view of an opening. It reports false where it is gone.
func (ix *Index) OpeningView(id plan.ID) (v OpeningView, ok bool) {
	o, level := ix.plan.Opening(id)
	if o == nil {
		return v, false
	}
	return ix.ViewOf(o, level.ID), true
}

// ViewOf returns the view of an opening of the plan that is on a level.
func (ix *Index) ViewOf(o *plan.Opening, level plan.ID) OpeningView {
	place, _ := ix.Place(o.At)
	v := OpeningView{
		Level: level, Opening: o, Room: place.Room, Side: place.Side, On: place.On,
		Cables: ix.CablesAt(o.ID),
	}
	v.Circuit, _ = ix.plan.Circuits.Get(o.Circuit)
	return v
}

// Parts returns the nouns that the view shows, and what it tells besides. Two views of one room with the same
// parts are the same in all they show.
func (v RoomView) Parts() (parts []any) {
	parts = append(parts, v.Room, v.InBasement)
	for _, s := range v.Sides {
		parts = s.appendTo(parts)
	}
	for _, o := range v.Ceiling {
		parts = append(parts, o)
	}
	for _, o := range v.Floor {
		parts = append(parts, o)
	}
	for _, c := range v.Controls {
		parts = append(parts, c)
	}
	parts = fixtureParts(parts, v.Standing)
	for _, c := range v.Circuits {
		parts = c.appendTo(parts)
	}
	return parts
}

// Parts returns the nouns that the view shows, the side itself first.
func (v SideView) Parts() []any { return v.appendTo([]any{v.Side}) }

func (v SideView) appendTo(parts []any) []any {
	for _, c := range v.Cuts {
		parts = append(parts, c.Break)
	}
	for _, b := range v.Behind {
		parts = append(parts, b.Room)
	}
	for _, o := range v.Openings {
		parts = append(parts, o)
	}
	for _, theirs := range v.OpeningsBehind {
		for _, o := range theirs {
			parts = append(parts, o)
		}
	}
	for _, c := range v.Cables {
		parts = append(parts, c)
	}
	for _, p := range v.Pairs {
		parts = append(parts, p)
	}
	return fixtureParts(parts, v.Fixtures)
}

func fixtureParts(parts []any, views []FixtureView) []any {
	for _, f := range views {
		parts = append(parts, f.Fixture)
		for _, o := range f.Openings {
			parts = append(parts, o)
		}
		parts = fixtureParts(parts, f.OnIt)
	}
	return parts
}

// Parts returns the nouns that the view shows.
func (v OpeningView) Parts() []any {
	parts := []any{v.Opening, v.Room, v.On, v.Circuit}
	for _, c := range v.Cables {
		parts = append(parts, c)
	}
	return parts
}
