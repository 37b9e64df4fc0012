package rendertest

import (
	"fmt"
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Builder makes a plan for tests, in inches.
type Builder struct {
	t     testing.TB
	Level *plan.Level
	Plan  plan.Plan
	n     int
}

func NewBuilder(t testing.TB) *Builder {
	level := &plan.Level{ID: "vaaaaaaaa", Name: "Ground floor"}
	return &Builder{t: t, Level: level, Plan: plan.New("Cottage", level.ID)}
}

func (b *Builder) id(kind byte) plan.ID {
	b.n++
	return plan.ID(fmt.Sprintf("%c%08d", kind, b.n))
}

func In(v float64) unit.Length { return unit.Length(v * float64(unit.Inch)) }

func At(x, y float64) geom.Point { return geom.Point{X: In(x), Y: In(y)} }

// room adds a room by its corners, clockwise.
func (b *Builder) Room(name string, use plan.Use, corners ...float64) *plan.Room {
	r := &plan.Room{ID: b.id('r'), Name: name, Use: use, Ceiling: In(96)}
	for i := 0; i < len(corners); i += 2 {
		r.Sides = append(r.Sides, &plan.Side{
			ID: b.id('s'), Start: At(corners[i], corners[i+1]), Kind: plan.SideWall,
			Finish: []plan.Layer{{Name: "board", Thickness: In(0.5)}},
			Studs:  plan.Studs{Spacing: In(16), Depth: In(3.5)},
		})
	}
	b.Level.Rooms = b.Level.Rooms.With(r)
	return r
}

func (b *Builder) Box(name string, use plan.Use, x, y, to, bottom float64) *plan.Room {
	return b.Room(name, use, x, y, to, y, to, bottom, x, bottom)
}

func (b *Builder) Cut(r *plan.Room, side int, kind plan.BreakKind, along, width float64) *plan.Break {
	k := &plan.Break{ID: b.id('b'), Kind: kind, At: plan.OnFace(r.Sides[side].ID, In(along)), Width: In(width), Head: In(80)}
	if kind == plan.BreakWindow {
		k.Sill = In(30)
	}
	b.Level.Breaks = b.Level.Breaks.With(k)
	return k
}

func (b *Builder) Door(r *plan.Room, side int, along, width float64, hand plan.Hand, swing plan.Swing) *plan.Break {
	k := b.Cut(r, side, plan.BreakDoor, along, width)
	k.Hand, k.Swing = hand, swing
	return k
}

func (b *Builder) Opening(tag, kind string, a plan.Anchor, height float64) *plan.Opening {
	o := &plan.Opening{ID: b.id('o'), Tag: tag, Kind: kind, At: a, Gangs: 1, Status: plan.StatusNew}
	if height > 0 {
		o.Height = plan.CentreAt(In(height))
	}
	b.Level.Openings = b.Level.Openings.With(o)
	return o
}

func (b *Builder) On(tag, kind string, r *plan.Room, side int, along, height float64) *plan.Opening {
	return b.Opening(tag, kind, plan.OnFace(r.Sides[side].ID, In(along)), height)
}

func (b *Builder) Ceiling(tag, kind string, r *plan.Room, x, y float64) *plan.Opening {
	return b.Opening(tag, kind, plan.OnCeiling(r.ID, At(x, y)), 0)
}

func (b *Builder) Fixture(kind plan.FixtureKind, r *plan.Room, side int, along, width, depth, height float64) *plan.Fixture {
	f := &plan.Fixture{ID: b.id('f'), Kind: kind, At: plan.OnFace(r.Sides[side].ID, In(along)), Width: In(width), Depth: In(depth), Height: In(height)}
	b.Level.Fixtures = b.Level.Fixtures.With(f)
	return f
}

func (b *Builder) Stands(kind plan.FixtureKind, r *plan.Room, x, y, width, depth float64, turn int) *plan.Fixture {
	f := &plan.Fixture{ID: b.id('f'), Kind: kind, At: plan.OnFloor(r.ID, At(x, y)), Width: In(width), Depth: In(depth), Height: In(36), Turn: turn}
	b.Level.Fixtures = b.Level.Fixtures.With(f)
	return f
}

func (b *Builder) Control(letter string, switches, loads []*plan.Opening) {
	c := &plan.Control{ID: b.id('t'), Letter: letter}
	for _, o := range switches {
		c.Switches = append(c.Switches, o.ID)
	}
	for _, o := range loads {
		c.Loads = append(c.Loads, o.ID)
	}
	b.Plan.Controls = b.Plan.Controls.With(c)
}

func (b *Builder) Index() *index.Index { return index.New(b.Plan.WithLevel(b.Level)) }

// Cottage is a house of five rooms and a porch with every sort of thing in it.
type Cottage struct {
	Index                                 *index.Index
	Level                                 plan.ID
	Sitting, Bedroom, Hall, Bath, Laundry *plan.Room
	Headed                                *plan.Opening // right of the bed, box too small
	Findings                              []rule.Finding
}

func NewCottage(t testing.TB) Cottage {
	b := NewBuilder(t)
	var c Cottage
	c.Sitting = b.Box("Sitting room", plan.UseLiving, 0, 0, 216, 168)
	c.Bedroom = b.Room("Bedroom", plan.UseBedroom, 220.5, 0, 346.5, 0, 376.5, 30, 376.5, 144, 220.5, 144)
	c.Hall = b.Box("Hall", plan.UseHall, 0, 172.5, 216, 240)
	c.Bath = b.Box("Bath", plan.UseBath, 220.5, 148.5, 316.5, 240)
	c.Laundry = b.Box("Laundry", plan.UseLaundry, 321, 148.5, 376.5, 240)
	porch := b.Box("Porch", plan.UseOutdoors, -77.25, 60, -5.25, 168)
	porch.Sides[0].Kind, porch.Sides[2].Kind, porch.Sides[3].Kind = plan.SideRailing, plan.SideOpen, plan.SideRailing

	s := c.Sitting
	b.Cut(s, 0, plan.BreakWindow, 48, 72)
	b.Door(s, 3, 48, 36, plan.HandLeft, plan.SwingIn)
	b.Door(s, 2, 36, 32, plan.HandRight, plan.SwingIn)
	b.On("S1", "duplex", s, 0, 26, 16)
	b.On("S2", "duplex", s, 0, 134, 16)
	b.On("S3", "duplex", s, 1, 92, 16)
	s4 := b.On("S4", "switch-2", s, 1, 104, 46)
	b.On("S5", "duplex", s, 2, 120, 16)
	s6 := b.On("S6", "three-way", s, 2, 76, 46)
	b.On("S7", "duplex", s, 3, 112, 16)
	b.On("S8", "data", s, 3, 100, 16)
	s9 := b.On("S9", "three-way", s, 3, 36, 46)
	s10 := b.Ceiling("S10", "fan-light", s, 108, 56)
	b.Cut(s, 3, plan.BreakFireplace, 130, 30)
	b.Control("a", []*plan.Opening{s4}, []*plan.Opening{s10})

	r := c.Bedroom
	b.Cut(r, 0, plan.BreakWindow, 36, 60)
	b.Cut(r, 2, plan.BreakWindow, 14, 50)
	b.Door(r, 4, 12, 32, plan.HandRight, plan.SwingIn)
	b.Door(r, 3, 4, 30, plan.HandLeft, plan.SwingIn)
	bed := b.Fixture(plan.FixtureBed, r, 3, 50, 60, 80, 40)
	bed.Name = "bed 60"
	b.On("B1", "duplex", r, 0, 20, 16)
	b.On("B2", "duplex", r, 0, 108, 16)
	b.On("B3", "duplex", r, 2, 80, 16)
	b.On("B4", "duplex", r, 3, 118, 26)
	c.Headed = b.On("B5", "duplex", r, 3, 44, 26)
	b6 := b.On("B6", "switch", r, 4, 56, 46)
	b.Ceiling("B7", "smoke", r, 290, 24)
	b8 := b.Ceiling("B8", "ceiling-light", r, 300, 60)
	b.On("B9", "switch", r, 1, 20, 46)
	b.Control("b", []*plan.Opening{b6}, []*plan.Opening{b8})

	h := c.Hall
	b.Door(h, 1, 16, 28, plan.HandLeft, plan.SwingOut)
	h1 := b.On("H1", "duplex", h, 0, 118, 16)
	h1.Status = plan.StatusExisting
	h2 := b.Ceiling("H2", "ceiling-light", h, 60, 214)
	h3 := b.Ceiling("H3", "ceiling-light", h, 130, 214)
	h4 := b.On("H4", "three-way", h, 1, 54, 46)
	b.Control("c", []*plan.Opening{h4, s6, s9}, []*plan.Opening{h2, h3})

	w := c.Bath
	b.Fixture(plan.FixtureBasin, w, 0, 56, 22, 18, 34)
	b.Fixture(plan.FixtureMirror, w, 0, 54, 26, 1, 36).Bottom = In(40)
	b.Fixture(plan.FixtureTub, w, 2, 36, 60, 32, 20)
	b.Fixture(plan.FixtureToilet, w, 1, 50, 20, 28, 30)
	b.On("T1", "wall-light", w, 0, 48, 62)
	b.On("T2", "wall-light", w, 0, 86, 62)
	b.On("T3", "gfci", w, 0, 36, 44)
	b.Ceiling("T4", "exhaust-fan", w, 262, 186)
	b.Cut(w, 2, plan.BreakWindow, 40, 36)

	l := c.Laundry
	b.Fixture(plan.FixtureWasher, l, 2, 2, 26, 28, 38)
	b.Fixture(plan.FixtureDryer, l, 2, 29, 26, 28, 38)
	b.On("L1", "washer", l, 2, 15, 42)
	b.On("L2", "dryer", l, 2, 42, 36)
	b.On("L3", "junction", l, 1, 30, 60)
	b.On("L4", "whatever", l, 3, 40, 46)
	st := b.On("L5", "switch", l, 3, 70, 46)
	b.On("L6", "duplex", l, 3, 70, 16)
	_ = st
	b.On("P1", "outdoor", porch, 1, 18, 26)

	c.Index, c.Level = b.Index(), b.Level.ID
	c.Findings = c.found()
	return c
}

// found is what a check might say of the Cottage.
func (c Cottage) found() []rule.Finding {
	stretch := func(r *plan.Room, side int, from, to float64) rule.Stretch {
		f := geom.FrameOf(r.Segment(side))
		return rule.Stretch{
			Host: r.Sides[side].ID, Part: plan.PartFace, From: In(from), To: In(to),
			Line: geom.Segment{A: f.Point(In(from), 0), B: f.Point(In(to), 0)},
		}
	}
	open := c.OpeningByTag("L4")
	switched := c.OpeningByTag("S9")
	return []rule.Finding{
		{Rule: "box-fill", Severity: rule.Stop, Level: c.Level, Room: c.Bedroom.ID, Opening: c.Headed.ID, About: c.Headed.ID, Message: words.New("plain", "{0}", "The box is too small")},
		{Rule: "swing", Severity: rule.Warn, Level: c.Level, Room: c.Sitting.ID, Opening: switched.ID, About: switched.ID},
		{Rule: "kind", Severity: rule.Note, IsOpen: true, Level: c.Level, Room: c.Laundry.ID, Opening: open.ID, About: open.ID},
		{
			Rule: "wall-reach", Severity: rule.Stop, Level: c.Level, Room: c.Sitting.ID, About: c.Sitting.Sides[0].ID,
			Stretches: []rule.Stretch{stretch(c.Sitting, 0, 202, 216), stretch(c.Sitting, 1, 0, 15)},
			Label:     words.New("stretch.missed", "{0} not served", In(29)),
		},
	}
}

func (c Cottage) OpeningByTag(tag string) *plan.Opening {
	for _, o := range c.Index.Plan().Openings() {
		if o.Tag == tag {
			return o
		}
	}
	panic("no opening " + tag)
}
