package plantest

import (
	"strconv"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// anchor draws a place for something: mostly a side, else a ceiling, floor or fixture.
func (g draw) anchor() plan.Anchor {
	switch g.n(0, 11) {
	case 0:
		return plan.Anchor{Host: g.fixture().ID, Part: "shelf"}
	case 1, 2:
		return plan.OnCeiling(g.inRoom())
	case 3:
		return plan.OnFloor(g.inRoom())
	case 4:
		return plan.Anchor{Host: g.fixture().ID, Part: plan.PartTop, Along: g.length(0, 40), Out: g.length(0, 30)}
	case 5:
		part := pick(g, []plan.Part{plan.PartFront, plan.PartBack, plan.PartLeft, plan.PartRight})
		return plan.Anchor{Host: g.fixture().ID, Part: part, Along: g.length(0, 40)}
	}
	return plan.OnFace(g.side().ID, g.length(-1, 120))
}

// inRoom draws a room and a point that may be in it.
func (g draw) inRoom() (plan.ID, geom.Point) {
	r := g.room()
	if len(r.Sides) == 0 {
		return r.ID, geom.Point{}
	}
	at := r.Sides[0].Start
	return r.ID, at.Add(geom.Point{X: g.length(0, 100), Y: g.length(0, 100)})
}

func (g draw) aBreak(id plan.ID) plan.Break {
	b := plan.Break{
		ID: id, Kind: pick(g, plan.BreakKinds), At: plan.OnFace(g.side().ID, g.length(-1, 110)),
		Width: g.length(6, 60), Head: g.length(60, 90), Sill: g.length(0, 40),
		Hand: pick(g, []plan.Hand{plan.HandUnknown, plan.HandLeft, plan.HandDouble}),
	}
	if g.seldom() {
		b.Hand = "upper"
	}
	if b.Kind == plan.BreakSlider && g.n(0, 3) > 0 {
		b.Panels = []plan.Panel{plan.PanelFixed, plan.PanelMoving}
	}
	return b
}

func (g draw) addBreak() edit.Edit {
	return edit.AddBreak{Break: g.aBreak(g.id(plan.KindBreak))}
}

func (g draw) moveBreak() edit.Edit {
	return edit.MoveBreak{ID: g.breaks().ID, To: plan.OnFace(g.side().ID, g.length(-1, 110))}
}

func (g draw) changeBreak() edit.Edit { return edit.ChangeBreak{Break: g.aBreak(g.breaks().ID)} }

func (g draw) removeBreak() edit.Edit { return edit.Remove{Things: []plan.ID{g.breaks().ID}} }

// fixtureKinds are some of every sort, panels more often: circuits are fed from them.
var fixtureKinds = []plan.FixtureKind{
	plan.FixturePanel, plan.FixturePanel, plan.FixtureCounter, plan.FixtureCabinet, plan.FixtureUpper, plan.FixtureIsland,
	plan.FixtureRange, plan.FixtureBed, plan.FixtureStairs, plan.FixtureRod, "loom",
}

func (g draw) aFixture(id plan.ID) plan.Fixture {
	return plan.Fixture{
		ID: id, Kind: pick(g, fixtureKinds), At: g.anchor(),
		Bottom: g.length(0, 12), Width: g.length(1, 72), Depth: g.length(0, 36), Height: g.length(0, 84), Turn: g.n(0, 3),
	}
}

func (g draw) addFixture() edit.Edit {
	return edit.AddFixture{Fixture: g.aFixture(g.id(plan.KindFixture))}
}

func (g draw) moveFixture() edit.Edit {
	return edit.MoveFixture{ID: g.fixture().ID, To: g.anchor()}
}

func (g draw) changeFixture() edit.Edit {
	return edit.ChangeFixture{Fixture: g.aFixture(g.fixture().ID)}
}

func (g draw) removeFixture() edit.Edit {
	return edit.Remove{Things: []plan.ID{g.fixture().ID}, Cascade: g.n(0, 2) == 0}
}

func (g draw) height() plan.Height {
	return plan.Height{
		Value: g.length(4, 84),
		To:    pick(g, []plan.BoxLine{plan.BoxCentre, plan.BoxBottom, plan.BoxTop}),
		From:  pick(g, []plan.Datum{plan.FinishedFloor, plan.Subfloor}),
	}
}

func (g draw) contents() *plan.Contents {
	if g.chance() {
		return nil
	}
	return &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
		{What: plan.ItemCable, Size: 14, Wires: 2, Times: g.n(0, 3)}, {What: plan.ItemDevice, Size: 12},
	}}
}

func (g draw) assembly() plan.Assembly {
	a := plan.Assembly{Code: "PN1", Box: "pn1-18"}
	if g.chance() {
		marked := unit.Volume(g.n(0, 400_000))
		a = plan.Assembly{Box: "unheard-of", Marked: &marked, Parts: []plan.AssemblyPart{{Part: "ring-1g-1/2"}}}
	}
	return a
}

func (g draw) anOpening(id plan.ID) plan.Opening {
	return plan.Opening{
		ID: id, Tag: g.tag(), Kind: pick(g, []string{"duplex", "switch", "ceiling-light", "whatnot"}),
		At: g.anchor(), Height: g.height(), Gangs: g.n(0, 4), Contents: g.contents(), Assembly: g.assembly(),
		Status:  pick(g, []plan.Status{plan.StatusNew, plan.StatusExisting, plan.StatusRemove}),
		Circuit: g.aCircuitID(), Devices: []plan.Device{{Kind: "duplex receptacle", Size: 12}},
	}
}

// tag draws a tag: mostly none, so that one is given out.
func (g draw) tag() string {
	if g.n(0, 4) > 0 {
		return ""
	}
	if g.seldom() {
		return "two words"
	}
	return pick(g, []string{"A", "B", "K-"}) + strconv.Itoa(g.n(1, 30))
}

func (g draw) addOpening() edit.Edit {
	return edit.AddOpening{Opening: g.anOpening(g.id(plan.KindOpening))}
}

func (g draw) moveOpening() edit.Edit {
	return edit.MoveOpening{ID: g.opening().ID, To: g.anchor()}
}

func (g draw) changeOpening() edit.Edit {
	old := g.opening()
	o := g.anOpening(old.ID)
	o.Tag = old.Tag
	return edit.ChangeOpening{Opening: o}
}

func (g draw) setOpening() edit.Edit {
	id := g.opening().ID
	switch g.n(0, 3) {
	case 0:
		return edit.SetHeight{ID: id, Height: g.height()}
	case 1:
		return edit.SetAssembly{ID: id, Assembly: g.assembly()}
	case 2:
		return edit.SetContents{ID: id, Contents: g.contents()}
	}
	return edit.SetStatus{ID: id, Status: pick(g, []plan.Status{plan.StatusNew, plan.StatusExisting, "mislaid"})}
}

func (g draw) retag() edit.Edit { return edit.Retag{ID: g.opening().ID, Tag: g.tag()} }

func (g draw) removeOpening() edit.Edit { return edit.Remove{Things: []plan.ID{g.opening().ID}} }
