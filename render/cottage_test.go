package render

import (
	"fmt"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// builder makes a plan for tests, in inches.
type builder struct {
	t     testing.TB
	level *plan.Level
	p     plan.Plan
	n     int
}

func newBuilder(t testing.TB) *builder {
	level := &plan.Level{ID: "vaaaaaaaa", Name: "Ground floor"}
	return &builder{t: t, level: level, p: plan.New("Cottage", level.ID)}
}

func (b *builder) id(kind byte) plan.ID {
	b.n++
	return plan.ID(fmt.Sprintf("%c%08d", kind, b.n))
}

func in(v float64) unit.Length { return unit.Length(v * float64(unit.Inch)) }

func at(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }

// room adds a room by its corners, clockwise.
func (b *builder) room(name string, use plan.Use, corners ...float64) *plan.Room {
	r := &plan.Room{ID: b.id('r'), Name: name, Use: use, Ceiling: in(96)}
	for i := 0; i < len(corners); i += 2 {
		r.Sides = append(r.Sides, &plan.Side{
			ID: b.id('s'), Start: at(corners[i], corners[i+1]), Kind: plan.SideWall,
			Finish: []plan.Layer{{Name: "board", Thickness: in(0.5)}},
			Studs:  plan.Studs{Spacing: in(16), Depth: in(3.5)},
		})
	}
	b.level.Rooms = b.level.Rooms.With(r)
	return r
}

func (b *builder) box(name string, use plan.Use, x, y, to, bottom float64) *plan.Room {
	return b.room(name, use, x, y, to, y, to, bottom, x, bottom)
}

func (b *builder) cut(r *plan.Room, side int, kind plan.BreakKind, along, width float64) *plan.Break {
	k := &plan.Break{ID: b.id('b'), Kind: kind, At: plan.OnFace(r.Sides[side].ID, in(along)), Width: in(width), Head: in(80)}
	if kind == plan.BreakWindow {
		k.Sill = in(30)
	}
	b.level.Breaks = b.level.Breaks.With(k)
	return k
}

func (b *builder) door(r *plan.Room, side int, along, width float64, hand plan.Hand, swing plan.Swing) *plan.Break {
	k := b.cut(r, side, plan.BreakDoor, along, width)
	k.Hand, k.Swing = hand, swing
	return k
}

func (b *builder) opening(tag, kind string, a plan.Anchor, height float64) *plan.Opening {
	o := &plan.Opening{ID: b.id('o'), Tag: tag, Kind: kind, At: a, Gangs: 1, Status: plan.StatusNew}
	if height > 0 {
		o.Height = plan.CentreAt(in(height))
	}
	b.level.Openings = b.level.Openings.With(o)
	return o
}

func (b *builder) on(tag, kind string, r *plan.Room, side int, along, height float64) *plan.Opening {
	return b.opening(tag, kind, plan.OnFace(r.Sides[side].ID, in(along)), height)
}

func (b *builder) ceiling(tag, kind string, r *plan.Room, x, y float64) *plan.Opening {
	return b.opening(tag, kind, plan.OnCeiling(r.ID, at(x, y)), 0)
}

func (b *builder) fixture(kind plan.FixtureKind, r *plan.Room, side int, along, width, depth, height float64) *plan.Fixture {
	f := &plan.Fixture{ID: b.id('f'), Kind: kind, At: plan.OnFace(r.Sides[side].ID, in(along)), Width: in(width), Depth: in(depth), Height: in(height)}
	b.level.Fixtures = b.level.Fixtures.With(f)
	return f
}

func (b *builder) stands(kind plan.FixtureKind, r *plan.Room, x, y, width, depth float64, turn int) *plan.Fixture {
	f := &plan.Fixture{ID: b.id('f'), Kind: kind, At: plan.OnFloor(r.ID, at(x, y)), Width: in(width), Depth: in(depth), Height: in(36), Turn: turn}
	b.level.Fixtures = b.level.Fixtures.With(f)
	return f
}

func (b *builder) control(letter string, switches, loads []*plan.Opening) {
	c := &plan.Control{ID: b.id('t'), Letter: letter}
	for _, o := range switches {
		c.Switches = append(c.Switches, o.ID)
	}
	for _, o := range loads {
		c.Loads = append(c.Loads, o.ID)
	}
	b.p.Controls = b.p.Controls.With(c)
}

func (b *builder) index() *plan.Index { return plan.NewIndex(b.p.WithLevel(b.level)) }

// cottage is a house of five rooms and a porch with every sort of thing in it.
type cottage struct {
	ix                                    *plan.Index
	level                                 plan.ID
	sitting, bedroom, hall, bath, laundry *plan.Room
	headed                                *plan.Opening // right of the bed, box too small
	findings                              []fill.Finding
}

func newCottage(t testing.TB) cottage {
	b := newBuilder(t)
	var c cottage
	c.sitting = b.box("Sitting room", plan.UseLiving, 0, 0, 216, 168)
	c.bedroom = b.room("Bedroom", plan.UseBedroom, 220.5, 0, 346.5, 0, 376.5, 30, 376.5, 144, 220.5, 144)
	c.hall = b.box("Hall", plan.UseHall, 0, 172.5, 216, 240)
	c.bath = b.box("Bath", plan.UseBath, 220.5, 148.5, 316.5, 240)
	c.laundry = b.box("Laundry", plan.UseLaundry, 321, 148.5, 376.5, 240)
	porch := b.box("Porch", plan.UseOutdoors, -77.25, 60, -5.25, 168)
	porch.Sides[0].Kind, porch.Sides[2].Kind, porch.Sides[3].Kind = plan.SideRailing, plan.SideOpen, plan.SideRailing

	s := c.sitting
	b.cut(s, 0, plan.BreakWindow, 48, 72)
	b.door(s, 3, 48, 36, plan.HandLeft, plan.SwingIn)
	b.door(s, 2, 36, 32, plan.HandRight, plan.SwingIn)
	b.on("S1", "duplex", s, 0, 26, 16)
	b.on("S2", "duplex", s, 0, 134, 16)
	b.on("S3", "duplex", s, 1, 92, 16)
	s4 := b.on("S4", "switch-2", s, 1, 104, 46)
	b.on("S5", "duplex", s, 2, 120, 16)
	s6 := b.on("S6", "three-way", s, 2, 76, 46)
	b.on("S7", "duplex", s, 3, 112, 16)
	b.on("S8", "data", s, 3, 100, 16)
	s9 := b.on("S9", "three-way", s, 3, 36, 46)
	s10 := b.ceiling("S10", "fan-light", s, 108, 56)
	b.cut(s, 3, plan.BreakFireplace, 130, 30)
	b.control("a", []*plan.Opening{s4}, []*plan.Opening{s10})

	r := c.bedroom
	b.cut(r, 0, plan.BreakWindow, 36, 60)
	b.cut(r, 2, plan.BreakWindow, 14, 50)
	b.door(r, 4, 12, 32, plan.HandRight, plan.SwingIn)
	b.door(r, 3, 4, 30, plan.HandLeft, plan.SwingIn)
	bed := b.fixture(plan.FixtureBed, r, 3, 50, 60, 80, 40)
	bed.Name = "bed 60"
	b.on("B1", "duplex", r, 0, 20, 16)
	b.on("B2", "duplex", r, 0, 108, 16)
	b.on("B3", "duplex", r, 2, 80, 16)
	b.on("B4", "duplex", r, 3, 118, 26)
	c.headed = b.on("B5", "duplex", r, 3, 44, 26)
	b6 := b.on("B6", "switch", r, 4, 56, 46)
	b.ceiling("B7", "smoke", r, 290, 24)
	b8 := b.ceiling("B8", "ceiling-light", r, 300, 60)
	b.on("B9", "switch", r, 1, 20, 46)
	b.control("b", []*plan.Opening{b6}, []*plan.Opening{b8})

	h := c.hall
	b.door(h, 1, 16, 28, plan.HandLeft, plan.SwingOut)
	h1 := b.on("H1", "duplex", h, 0, 118, 16)
	h1.Status = plan.StatusExisting
	h2 := b.ceiling("H2", "ceiling-light", h, 60, 214)
	h3 := b.ceiling("H3", "ceiling-light", h, 130, 214)
	h4 := b.on("H4", "three-way", h, 1, 54, 46)
	b.control("c", []*plan.Opening{h4, s6, s9}, []*plan.Opening{h2, h3})

	w := c.bath
	b.fixture(plan.FixtureBasin, w, 0, 56, 22, 18, 34)
	b.fixture(plan.FixtureMirror, w, 0, 54, 26, 1, 36).Bottom = in(40)
	b.fixture(plan.FixtureTub, w, 2, 36, 60, 32, 20)
	b.fixture(plan.FixtureToilet, w, 1, 50, 20, 28, 30)
	b.on("T1", "wall-light", w, 0, 48, 62)
	b.on("T2", "wall-light", w, 0, 86, 62)
	b.on("T3", "gfci", w, 0, 36, 44)
	b.ceiling("T4", "exhaust-fan", w, 262, 186)
	b.cut(w, 2, plan.BreakWindow, 40, 36)

	l := c.laundry
	b.fixture(plan.FixtureWasher, l, 2, 2, 26, 28, 38)
	b.fixture(plan.FixtureDryer, l, 2, 29, 26, 28, 38)
	b.on("L1", "washer", l, 2, 15, 42)
	b.on("L2", "dryer", l, 2, 42, 36)
	b.on("L3", "junction", l, 1, 30, 60)
	b.on("L4", "whatever", l, 3, 40, 46)
	st := b.on("L5", "switch", l, 3, 70, 46)
	b.on("L6", "duplex", l, 3, 70, 16)
	_ = st
	b.on("P1", "outdoor", porch, 1, 18, 26)

	c.ix, c.level = b.index(), b.level.ID
	c.findings = c.found()
	return c
}

// found is what a check might say of the cottage.
func (c cottage) found() []fill.Finding {
	stretch := func(r *plan.Room, side int, from, to float64) fill.Stretch {
		f := plan.FrameOf(r.Segment(side))
		return fill.Stretch{
			Side: r.Sides[side].ID, From: in(from), To: in(to),
			Line: geom.Segment{A: f.Point(in(from), 0), B: f.Point(in(to), 0)},
		}
	}
	open := c.openingByTag("L4")
	switched := c.openingByTag("S9")
	return []fill.Finding{
		{Rule: "box-fill", Severity: fill.Stop, Level: c.level, Room: c.bedroom.ID, Opening: c.headed.ID, About: c.headed.ID, Message: words.New("x", "The box is too small")},
		{Rule: "swing", Severity: fill.Warn, Level: c.level, Room: c.sitting.ID, Opening: switched.ID, About: switched.ID},
		{Rule: "kind", Severity: fill.Note, IsOpen: true, Level: c.level, Room: c.laundry.ID, Opening: open.ID, About: open.ID},
		{
			Rule: "wall-reach", Severity: fill.Stop, Level: c.level, Room: c.sitting.ID, About: c.sitting.Sides[0].ID,
			Stretches: []fill.Stretch{stretch(c.sitting, 0, 202, 216), stretch(c.sitting, 1, 0, 15)},
			Label:     words.New("stretch.missed", "{0} not served", in(29)),
		},
	}
}

func (c cottage) openingByTag(tag string) *plan.Opening {
	for _, o := range c.ix.Plan().Openings() {
		if o.Tag == tag {
			return o
		}
	}
	panic("no opening " + tag)
}
