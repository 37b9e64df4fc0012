package edit_test

import (
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// cabin is a plan for properties: two rooms of which one has a slanted side, with things
// on every part that things can stand on, and sides that tell studs, zones and probes.
type cabin struct {
	plan.Plan
	level        plan.ID
	main, annex  plan.ID
	sides        []plan.ID // of the main room: top, slanted, right, bottom, left
	island       plan.ID
	all          []plan.ID // what stands somewhere
	breaks, tops []plan.ID
	ids          *plantest.IDs
}

// built are the cabins by what was drawn for them: plans are never written to.
var built = map[[3]int]cabin{}

// newCabin draws where the rooms lie and how the island is turned.
func newCabin(t *rapid.T) *cabin {
	drawn := [3]int{rapid.IntRange(-1, 1).Draw(t, "x"), rapid.IntRange(-1, 1).Draw(t, "y"), rapid.IntRange(0, 3).Draw(t, "turn")}
	c, ok := built[drawn]
	if !ok {
		c = *buildCabin(t, at(unit.Length(drawn[0])*7*ft, unit.Length(drawn[1])*(1001*in/16+3)), drawn[2])
		built[drawn] = c
	}
	c.ids = plantest.NewIDs(4)
	return &c
}

// buildCabin puts the upper left corner of the main room at a place. Its slanted side goes
// 4 ft across and 3 ft down, so that it is 5 ft long.
func buildCabin(t *rapid.T, o geom.Point, turn int) *cabin {
	c := &cabin{ids: plantest.NewIDs(3)}
	c.level = c.ids.New(plan.KindLevel)
	c.Plan = plan.New("Cabin", c.level)
	c.sides = c.ids.Row(plan.KindSide, 5)
	r := plan.NewRoom(c.ids.New(plan.KindRoom), "Main", plan.UseLiving,
		geom.Polygon{at(0, 0), at(16*ft, 0), at(20*ft, 3*ft), at(20*ft, 16*ft), at(0, 16*ft)}.Moved(o), c.sides)
	r.Ceiling = 9 * ft
	dress(r.Sides)
	c.main = r.ID
	annex := plan.NewRoom(c.ids.New(plan.KindRoom), "Annex", plan.UseStorage,
		geom.Polygon{at(0, 17*ft), at(12*ft, 17*ft), at(12*ft, 25*ft), at(0, 25*ft)}.Moved(o), c.ids.Row(plan.KindSide, 4))
	annex.Ceiling = 9 * ft
	c.annex = annex.ID
	c.do(t, edit.AddRoom{Level: c.level, Room: r}, edit.AddRoom{Level: c.level, Room: annex})
	c.furnish(t, o, turn)
	for _, host := range []plan.Anchor{plan.OnFace(annex.Sides[0].ID, 2*ft), plan.OnCeiling(annex.ID, at(3*ft, 20*ft).Add(o))} {
		c.opening(t, host)
	}
	return c
}

// dress tells of each side what runs along it.
func dress(sides []*plan.Side) {
	for i, s := range sides {
		s.Studs = plan.Studs{Spacing: 16 * in, Depth: 7 * in / 2, First: unit.Length(3+i) * in, FromRight: i%2 == 1}
		s.Finish = []plan.Layer{{Name: "board", Thickness: in / 2}}
		s.Places = []plan.StudPlace{{At: 6 * in, State: plan.StudStated}, {At: 23 * in, State: plan.StudMeasured}, {At: 50 * in, State: plan.StudStated}}
		s.Zones = []plan.Zone{{From: ft, To: 2 * ft, Condition: plan.ConditionClosed}, {From: 3 * ft, To: 55 * in, Condition: plan.ConditionOpened}}
		s.Probes = []plan.Probe{{From: 5 * in, To: 9 * in, What: "brace"}, {From: 30 * in, To: 32 * in, Clear: true}}
	}
}

func (c *cabin) furnish(t *rapid.T, o geom.Point, turn int) {
	c.fixture(t, plan.OnFace(c.sides[0], 10*ft), 4*ft, 2*ft, 0)
	counter := c.all[len(c.all)-1]
	c.fixture(t, plan.OnFace(c.sides[1], ft), 2*ft, 20*in, 0)
	c.fixture(t, plan.OnFloor(c.main, at(9*ft, 9*ft).Add(o)), 5*ft, 3*ft, turn)
	c.island = c.all[len(c.all)-1]
	c.fixture(t, plan.OnCeiling(c.main, at(14*ft, 12*ft).Add(o)), 2*ft, ft, 1)
	for _, f := range []plan.ID{counter, c.island} {
		c.fixture(t, plan.Anchor{Host: f, Part: plan.PartTop, Along: 20 * in, Out: 10 * in}, 16*in, 12*in, 0)
		onTop := c.all[len(c.all)-1]
		c.tops = append(c.tops, onTop)
		c.opening(t, plan.Anchor{Host: onTop, Part: plan.PartFront, Along: 5 * in})
		c.opening(t, plan.Anchor{Host: f, Part: plan.PartTop, Along: 7 * in, Out: 6 * in})
		for i, part := range []plan.Part{plan.PartFront, plan.PartLeft, plan.PartRight} {
			c.opening(t, plan.Anchor{Host: f, Part: part, Along: unit.Length(6+3*i) * in})
		}
	}
	c.opening(t, plan.Anchor{Host: c.island, Part: plan.PartBack, Along: 9 * in})
	for i, side := range c.sides {
		c.opening(t, plan.OnFace(side, unit.Length(8+i)*in))
	}
	c.opening(t, plan.OnFace(c.sides[0], 5*ft))
	c.opening(t, plan.OnCeiling(c.main, at(3*ft, 4*ft).Add(o)))
	c.opening(t, plan.OnFloor(c.main, at(5*ft, 13*ft).Add(o)))
	for i, b := range []plan.Break{
		{Kind: plan.BreakDoor, At: plan.OnFace(c.sides[3], 2*ft), Hand: plan.HandLeft, Swing: plan.SwingIn},
		{Kind: plan.BreakWindow, At: plan.OnFace(c.sides[2], 4*ft), Sill: 3 * ft},
		{Kind: plan.BreakSlider, At: plan.OnFace(c.sides[4], 5*ft), Panels: []plan.Panel{plan.PanelFixed, plan.PanelMoving, plan.PanelMoving}},
		{Kind: plan.BreakDoor, At: plan.OnFace(c.sides[3], 10*ft), Hand: plan.HandRight, Swing: plan.SwingOut},
	} {
		b.ID, b.Width, b.Head = c.ids.New(plan.KindBreak), unit.Length(30+2*i)*in, 80*in
		c.do(t, edit.AddBreak{Break: b})
		c.all, c.breaks = append(c.all, b.ID), append(c.breaks, b.ID)
	}
}

func (c *cabin) fixture(t *rapid.T, a plan.Anchor, width, depth unit.Length, turn int) {
	f := plan.Fixture{ID: c.ids.New(plan.KindFixture), Kind: plan.FixtureCabinet, At: a, Width: width, Depth: depth, Height: 3 * ft, Turn: turn}
	c.do(t, edit.AddFixture{Fixture: f})
	c.all = append(c.all, f.ID)
}

func (c *cabin) opening(t *rapid.T, a plan.Anchor) {
	o := plan.Opening{ID: c.ids.New(plan.KindOpening), Kind: "duplex", At: a, Gangs: 1, Status: plan.StatusNew}
	if a.Part != plan.PartCeiling && a.Part != plan.PartFloor && a.Part != plan.PartTop {
		o.Height = plan.CentreAt(18 * in)
	}
	c.do(t, edit.AddOpening{Opening: o})
	c.all = append(c.all, o.ID)
}

// do makes edits that must be possible.
func (c *cabin) do(t *rapid.T, edits ...edit.Edit) {
	for _, e := range edits {
		next, err := e.Apply(c.Plan)
		if err != nil {
			t.Fatalf("%#v: %v", e, err)
		}
		c.Plan = next
	}
}

// some draws some of what stands somewhere.
func (c *cabin) some(t *rapid.T) []plan.ID {
	return rapid.SliceOfNDistinct(rapid.SampledFrom(c.all), 1, 5, rapid.ID[plan.ID]).Draw(t, "things")
}

func TestTheCabinIsSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		if err := plan.Check(newCabin(t).Plan); err != nil {
			t.Fatal(err)
		}
	})
}
