package filltest

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// Furnished returns a plan of one to three rooms, side by side or back to back, with any
// kinds of side, break, fixture and opening, close together and in places where they
// should not be. Next returns a number below its bound; the same numbers give the same
// plan. What the plan refuses is left out.
func Furnished(next func(below int) int) plan.Plan {
	f := &furnishing{next: next, ids: plantest.NewIDs(uint64(next(1 << 16)))}
	f.p = plan.New("Furnished", f.ids.New(plan.KindLevel))
	h := *f.p.Header
	editions := code.Editions()
	h.Edition = editions[next(len(editions))]
	if next(3) == 0 {
		h.Units = plan.UnitsMetric
		f.units = unit.Metric
	}
	f.p.Header = &h
	x := unit.Length(0)
	for range 1 + next(3) {
		x = f.room(x) + []unit.Length{9 * unit.Inch / 2, 4 * unit.Foot}[next(2)]
	}
	for range next(12) {
		f.add(edit.AddBreak{Break: f.aBreak()})
	}
	for range next(12) {
		f.add(edit.AddFixture{Fixture: f.fixture()})
	}
	for range next(24) {
		f.add(edit.AddOpening{Opening: f.opening()})
	}
	return f.p
}

type furnishing struct {
	next  func(below int) int
	ids   *plantest.IDs
	units unit.System
	p     plan.Plan
	rooms []plan.Room
}

func (f *furnishing) add(e edit.Edit) {
	if p, err := e.Apply(f.p); err == nil {
		f.p = p
	}
}

// length draws a length of whole inches, now and then with some sixteenths more.
func (f *furnishing) length(low, high int) unit.Length {
	l := unit.Length(low+f.next(high-low+1)) * unit.Inch
	if f.next(5) == 0 {
		l += unit.Length(f.next(16)) * unit.Inch / 16
	}
	return l
}

func pick[T any](f *furnishing, list []T) T { return list[f.next(len(list))] }

// room adds a room whose left side stands at x, and returns how far right it reaches.
func (f *furnishing) room(x unit.Length) unit.Length {
	w, d := f.length(20, 260), f.length(20, 220)
	corners := geom.Polygon{{}, {X: w}, {X: w, Y: d}, {Y: d}}
	switch f.next(4) {
	case 0:
		corners = geom.Polygon{{}, {X: w}, {X: w, Y: d / 2}, {X: w / 2, Y: d / 2}, {X: w / 2, Y: d}, {Y: d}}
	case 1:
		corners = geom.Polygon{{}, {X: w}, {X: w, Y: d / 2}, {X: w / 2, Y: d}, {Y: d}}
	}
	sides := make([]plan.ID, len(corners))
	for i := range sides {
		sides[i] = f.ids.New(plan.KindSide)
	}
	r := plan.NewRoom(f.ids.New(plan.KindRoom), "Room", pick(f, plan.Uses), corners.Moved(geom.Point{X: x}), sides)
	if f.next(4) > 0 {
		r.Use = pick(f, []plan.Use{plan.UseBedroom, plan.UseKitchen, plan.UseLiving})
	}
	r.Ceiling = f.length(84, 110)
	if f.next(4) == 0 {
		r.Floor = []plan.Layer{{Name: "tile", Thickness: f.length(0, 2)}}
	}
	r.Overhead = pick(f, plan.Conditions)
	for _, s := range r.Sides {
		f.standing(s)
		if f.next(3) == 0 {
			s.Kind = pick(f, []plan.SideKind{plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen})
		}
	}
	f.add(edit.AddRoom{Level: f.p.Levels[0].ID, Room: r})
	f.rooms = append(f.rooms, r)
	return x + w
}

// standing says what of a face is opened, what is known behind it and what runs along it.
func (f *furnishing) standing(s *plan.Side) {
	if f.next(3) > 0 {
		return
	}
	s.Condition = pick(f, plan.Conditions)
	at := f.length(0, 60)
	s.Zones = []plan.Zone{{From: at, To: at + f.length(1, 90), Condition: pick(f, plan.Conditions[1:])}}
	s.Probes = []plan.Probe{{From: at, To: at + f.length(1, 30), Clear: f.next(2) == 0}}
	s.Trim = []plan.Trim{{Name: "baseboard", Height: f.length(1, 16)}}
}

// face draws a place along a side of a room.
func (f *furnishing) face() plan.Anchor {
	r := pick(f, f.rooms)
	i := f.next(len(r.Sides))
	length := int(r.Outline().Edge(i).Length() / unit.Inch)
	return plan.OnFace(r.Sides[i].ID, f.length(0, max(1, length)))
}

// inRoom draws a room and a point that may be in it.
func (f *furnishing) inRoom() (plan.ID, geom.Point) {
	r := pick(f, f.rooms)
	box := r.Outline().Box()
	size := box.Max.Sub(box.Min)
	at := geom.Point{X: f.length(0, int(size.X/unit.Inch)), Y: f.length(0, int(size.Y/unit.Inch))}
	return r.ID, box.Min.Add(at)
}

func (f *furnishing) aBreak() plan.Break {
	b := part.All().Break(pick(f, plan.BreakKinds)).NewBreak(f.units)
	b.ID, b.At = f.ids.New(plan.KindBreak), f.face()
	if f.next(2) == 0 {
		b.Width = f.length(10, 60)
	}
	if b.Kind != plan.BreakDoor && f.next(2) == 0 {
		b.Sill = f.length(0, 40)
	}
	if b.Kind == plan.BreakDoor {
		b.Hand, b.Swing = pick(f, []plan.Hand{plan.HandUnknown, plan.HandLeft, plan.HandDouble}), pick(f, []plan.Swing{plan.SwingIn, plan.SwingOut, plan.SwingNone})
	}
	return b
}

func (f *furnishing) fixture() plan.Fixture {
	x := part.All().Fixture(pick(f, part.All().FixtureIDs())).NewFixture(f.units)
	x.ID, x.At = f.ids.New(plan.KindFixture), f.face()
	switch f.next(6) {
	case 0:
		x.At = plan.OnFloor(f.inRoom())
		x.Turn = f.next(4)
	case 1:
		x.Bottom = f.length(0, 60)
	case 2:
		x.Width = f.length(6, 96)
	}
	return x
}

func (f *furnishing) opening() plan.Opening {
	kinds := part.All().Kinds
	k := kinds[f.next(len(kinds))]
	if f.next(2) == 0 {
		k = part.All().Kind("duplex")
	}
	at := f.face()
	switch {
	case k.Host == part.Ceiling:
		at = plan.OnCeiling(f.inRoom())
	case k.Host == part.Floor:
		at = plan.OnFloor(f.inRoom())
	case f.next(12) == 0:
		at = f.onFixture()
	}
	o := part.NewOpening(f.units, k.ID, at)
	o.ID = f.ids.New(plan.KindOpening)
	if at.Part == plan.PartFace && f.next(3) == 0 {
		o.Height = plan.CentreAt(f.length(0, 112))
	}
	if f.next(4) == 0 {
		assemblies := part.All().Assemblies
		o.Assembly = plan.Assembly{Code: assemblies[f.next(len(assemblies))].Code}
	}
	if f.next(6) == 0 {
		o.Status = pick(f, []plan.Status{plan.StatusExisting, plan.StatusRemove, plan.StatusMoved, plan.StatusReplaced})
		fates := plan.FatesOf(o.Status)
		o.Fate = pick(f, fates)
	}
	if f.next(4) == 0 {
		o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
			{What: plan.ItemCable, Size: pick(f, []unit.AWG{14, 12, 10}), Wires: 2 + f.next(2), Times: 1 + f.next(5)},
			{What: plan.ItemDevice, Size: 12, Times: 1 + f.next(2)},
		}}
	}
	return o
}

// onFixture draws a place on a fixture, or on a side where there is none.
func (f *furnishing) onFixture() plan.Anchor {
	fixtures := slices.Collect(f.p.Levels[0].Fixtures.All())
	if len(fixtures) == 0 {
		return f.face()
	}
	part := pick(f, []plan.Part{plan.PartFront, plan.PartBack, plan.PartLeft, plan.PartRight})
	return plan.Anchor{Host: pick(f, fixtures).ID, Part: part, Along: f.length(0, 40)}
}
