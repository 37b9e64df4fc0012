package demo

import (
	"studbay/plan"
	"studbay/plan/edit"
)

// RowHouse builds kitchen, dining room and a bedroom of an old row house that is altered:
// plaster on brick and on studs, what is there already, what goes and what is new.
// Place and people are invented.
//
// Left in on purpose: boxes that nobody has opened yet, a dimmer box too small for a
// further cable and too deep for the box behind it, a wall of the dining room that was
// set aside with a reason, a thickness still to be measured, old switches out of reach of who
// comes from the stair hall, tile on the kitchen's west wall that is still to be chosen, for
// which five rings wait, and a landing outside of the bedroom that is not drawn. Over the bed and beside
// the mirror upstairs lights stand in pairs, one wall there is rated, and of another the
// studs were taped, one off the others' layout.
func RowHouse() (plan.Plan, error) {
	b := &builder{seed: "row house kitchen"}
	b.p = plan.New("Row house kitchen", b.id(plan.KindLevel))
	h := *b.p.Header
	h.Author, h.Client, h.Revision, h.Date, h.Edition = "Demo", "An invented couple", "B", "2026-11-25", "2020"
	b.do(edit.ChangeHeader{Header: h})
	r := &rowHouse{builder: b}
	r.rooms()
	r.breaks()
	r.fixtures()
	r.circuits()
	r.diningRoom()
	r.kitchenWalls()
	r.kitchenMiddle()
	r.stairHall()
	r.yardSide()
	r.upstairs()
	r.agreed()
	return b.p, b.err
}

type rowHouse struct {
	*builder
	dining, hall, kitchen, yard room

	island, panel plan.ID

	old, counters, islandCircuit, rangeCircuit, cold, wash, microwave, outdoors, lights plan.ID

	chandelier, pendants, downlights []plan.ID
	unopened                         []plan.ID
}

var (
	plaster  = plan.Layer{Name: "plaster on lath", Thickness: in(0.75)}
	onBrick  = plan.Layer{Name: "plaster on brick", Thickness: in(0.75)}
	oldStuds = plan.Studs{Spacing: in(16), Depth: in(3.75)}
	brick    = plan.Studs{Depth: in(8)}

	oldWall   = wall{plan.SideWall, oldStuds, []plan.Layer{plaster}}
	partyWall = wall{plan.SideWall, brick, []plan.Layer{onBrick}}
	bareBrick = wall{plan.SideWall, brick, nil}
)

// The party walls are the long sides; a framed wall parts kitchen and front rooms.
func (r *rowHouse) rooms() {
	r.dining = r.room("Dining room", "D", plan.UseDining, 108,
		corner{0, 0, partyWall}, corner{148, 0, oldWall}, corner{148, 156, oldWall}, corner{0, 156, partyWall})
	r.hall = r.room("Stair hall", "H", plan.UseHall, 108,
		corner{153.25, 0, partyWall}, corner{204, 0, partyWall}, corner{204, 156, oldWall}, corner{153.25, 156, oldWall})
	r.kitchen = r.room("Kitchen", "K", plan.UseKitchen, 102,
		corner{0, 161.25, oldWall}, corner{204, 161.25, partyWall}, corner{204, 353.25, partyWall}, corner{0, 353.25, partyWall})
	r.yard = r.room("Yard", "Y", plan.UseOutdoors, 102,
		corner{0, 362, bareBrick}, corner{204, 362, open}, corner{204, 434, open}, corner{0, 434, open})
}

func (r *rowHouse) breaks() {
	r.window(r.dining.on(0, 20), 36, 24, 92)
	r.window(r.dining.on(0, 92), 36, 24, 92)
	r.with(plan.BreakPassage, r.dining.on(2, 38), 72, 0, 90, nil)
	r.with(plan.BreakPassage, r.dining.on(1, 54), 48, 0, 90, nil)
	r.door(r.hall.on(0, 8), 34, plan.HandRight, plan.SwingIn)
	r.door(r.hall.on(2, 10), 28, plan.HandLeft, plan.SwingOut)
	r.window(r.kitchen.on(2, 104), 48, 44, 90)
	r.door(r.kitchen.on(2, 16), 32, plan.HandLeft, plan.SwingIn)
}

func (r *rowHouse) fixtures() {
	k := r.kitchen
	south := r.stand(plan.FixtureCounter, "", k.on(2, 71), 133, 25, 0, 36)
	r.stand(plan.FixtureSink, "", plan.Anchor{Host: south, Part: plan.PartTop, Along: in(57), Out: in(12.5)}, 33, 20, 28, 8)
	r.stand(plan.FixtureDishwasher, "", k.on(2, 152), 24, 24, 0, 34)
	r.stand(plan.FixtureCounter, "", k.on(3, 25), 41, 25, 0, 36)
	r.stand(plan.FixtureRange, "", k.on(3, 66), 30, 27, 0, 36)
	r.stand(plan.FixtureCounter, "", k.on(3, 96), 36, 25, 0, 36)
	r.stand(plan.FixtureRefrigerator, "", k.on(3, 134), 36, 30, 0, 70)
	r.stand(plan.FixtureUpper, "", k.on(3, 96), 36, 13, 54, 42)
	r.stand(plan.FixtureUpper, "", k.on(3, 25), 41, 13, 54, 42)
	r.island = r.stand(plan.FixtureIsland, "", k.floor(108, 262), 72, 36, 0, 36)
	r.stand(plan.FixtureCabinet, "pantry", k.on(1, 12), 48, 24, 0, 84)
	r.panel = r.stand(plan.FixturePanel, "", r.hall.on(1, 100), 14.5, 4, 48, 36)
}

func (r *rowHouse) circuits() {
	r.old = r.circuit(r.panel, "2", "front rooms, existing", 15, 120)
	r.counters = r.circuit(r.panel, "5", "counters", 20, 120)
	r.islandCircuit = r.circuit(r.panel, "7", "island and pantry wall", 20, 120)
	r.rangeCircuit = r.circuit(r.panel, "8/10", "range", 50, 240)
	r.cold = r.circuit(r.panel, "9", "refrigerator", 20, 120)
	r.wash = r.circuit(r.panel, "11", "dishwasher and disposer", 20, 120)
	r.lights = r.circuit(r.panel, "12", "lights", 15, 120)
	r.microwave = r.circuit(r.panel, "14", "microwave", 20, 120)
	r.outdoors = r.circuit(r.panel, "15", "yard", 20, 120)
	r.groundFault(r.wash)
}

// there marks what is there already, its box not opened yet.
func there(o *plan.Opening) {
	o.Status = plan.StatusExisting
	o.Contents = &plan.Contents{Source: plan.ContentsNotKnown}
	o.Assembly = plan.Assembly{Code: "DV2"}
}

// goes marks what is taken out.
func goes(o *plan.Opening) {
	o.Status = plan.StatusRemove
	o.Assembly = plan.Assembly{Code: "DV2"}
}

func (r *rowHouse) diningRoom() {
	d := r.dining
	west := r.opening("duplex", d.on(3, 78), r.old, up(14), there)
	north := r.opening("duplex", d.on(0, 74), r.old, up(14), there)
	r.unopened = []plan.ID{west, north}
	r.opening("duplex", d.on(2, 20), r.old, goes, noted("in the way of the wider passage"))
	r.opening("duplex", d.on(2, 128), r.counters, builtAs("OW2"))
	r.opening("duplex", d.on(1, 28), r.counters, builtAs("OW2"))
	r.opening("duplex", d.on(1, 124), r.counters, builtAs("OW2"))
	dimmer := r.opening("dimmer", d.on(2, 31), r.lights, builtAs("OW1"),
		holds(plan.Item{What: plan.ItemCable, Size: 14, Wires: 2}, plan.Item{What: plan.ItemCable, Size: 14, Wires: 3},
			plan.Item{What: plan.ItemCable, Size: 14, Wires: 2}, plan.Item{What: plan.ItemDevice, Size: 14}))
	light := r.opening("pendant", d.ceiling(74, 78), r.lights, func(o *plan.Opening) {
		o.Status, o.Contents = plan.StatusExisting, &plan.Contents{Source: plan.ContentsNotKnown}
	}, noted("hung over the table"))
	r.chandelier = []plan.ID{dimmer, light}
}

// The kitchen's boxes are steel: its new walls take tile.
func (r *rowHouse) kitchenWalls() {
	k := r.kitchen
	for _, at := range []plan.Anchor{k.on(2, 88), k.on(2, 164), k.on(2, 200), k.on(3, 44), k.on(3, 114)} {
		r.opening("counter", at, r.counters, builtAs("SQ4"))
	}
	r.opening("dishwasher", k.on(2, 140), r.wash, builtAs("SQ2"), noted("under the sink, beside the machine"))
	r.opening("range", k.on(3, 81), r.rangeCircuit)
	r.opening("microwave", k.on(3, 81), r.microwave, builtAs("SQ2"))
	r.opening("refrigerator", k.on(3, 152), r.cold, builtAs("SQ2"))
	r.opening("duplex", k.on(1, 78), r.islandCircuit, builtAs("OW2"))
	r.opening("duplex", k.on(1, 150), r.islandCircuit, builtAs("OW2"))
	r.opening("duplex", k.on(0, 10), r.islandCircuit, builtAs("OW2"))
	r.opening("duplex", k.on(0, 140), r.old, up(14), there)
	r.opening("duplex", k.on(1, 120), r.old, goes)
	r.opening("switch", k.on(2, 60), r.old, goes, up(52))
	r.opening("data", k.on(1, 84), "", noted("beside the receptacle on the pantry wall"))
}

func (r *rowHouse) kitchenMiddle() {
	k := r.kitchen
	r.opening("island", plan.Anchor{Host: r.island, Part: plan.PartLeft, Along: in(18)}, r.islandCircuit, builtAs("SQ2"))
	r.opening("island", plan.Anchor{Host: r.island, Part: plan.PartBack, Along: in(48)}, r.islandCircuit, builtAs("SQ2"))
	for _, x := range []float64{84, 132} {
		r.pendants = append(r.pendants, r.opening("pendant", k.ceiling(x, 262), r.lights, builtAs("OW4")))
	}
	for _, x := range []float64{50, 150} {
		r.downlights = append(r.downlights, r.opening("recessed", k.ceiling(x, 200), r.lights), r.opening("recessed", k.ceiling(x, 325), r.lights))
	}
	r.opening("ceiling-light", k.ceiling(108, 220), r.old, func(o *plan.Opening) { o.Status = plan.StatusRemove })
	bank := r.opening("switch-2", k.on(2, 58), r.lights, builtAs("SQ6"), yokes(threeWay, onePole))
	far := r.opening("three-way", k.on(0, 116), r.lights, builtAs("OW2"))
	r.control("b", []plan.ID{bank, far}, r.downlights)
	r.control("c", []plan.ID{bank}, r.pendants)
}

func (r *rowHouse) stairHall() {
	h := r.hall
	upstairs := r.opening("three-way", h.on(1, 40), r.old, up(52), there, noted("with the one upstairs"))
	light := r.opening("ceiling-light", h.ceiling(178, 60), r.old, there, builtAs(""))
	r.control("d", []plan.ID{upstairs}, []plan.ID{light})
	r.opening("duplex", h.on(3, 120), r.old, up(14), there)
	r.opening("smoke", h.ceiling(178, 120), r.lights, builtAs("RD4"))
	r.opening("chime", h.on(3, 30), "", func(o *plan.Opening) { o.Status = plan.StatusExisting })
	r.opening("thermostat", h.on(1, 76), "", func(o *plan.Opening) { o.Status = plan.StatusExisting })
}

func (r *rowHouse) yardSide() {
	light := r.opening("porch-light", r.yard.on(0, 144), r.lights)
	r.control("e", []plan.ID{r.opening("switch", r.kitchen.on(2, 65), r.lights, builtAs("SQ2"))}, []plan.ID{light})
	r.opening("outdoor", r.yard.on(0, 130), r.outdoors)
}

// upstairs is the bedroom over the dining room: new boxes in old walls, of one of which the
// studs were taped and one is off the others' layout. The party wall is rated.
func (r *rowHouse) upstairs() {
	r.do(edit.AddLevel{ID: r.id(plan.KindLevel), Title: "Upper floor", Elevation: in(120)})
	b := r.room("Front bedroom", "B", plan.UseBedroom, 102,
		corner{0, 0, partyWall}, corner{148, 0, oldWall}, corner{148, 156, oldWall}, corner{0, 156, partyWall})
	r.window(b.on(0, 20), 36, 24, 84)
	r.window(b.on(0, 92), 36, 24, 84)
	r.door(b.on(1, 112), 30, plan.HandRight, plan.SwingIn)
	bed := r.stand(plan.FixtureBed, "", b.on(2, 44), 60, 80, 0, 46)
	mirror := r.stand(plan.FixtureMirror, "", b.on(1, 60), 36, 1, 42, 36)
	b.face(2, taped(16, 32, 48, 64, 82.5, 96, 112, 128))
	b.face(3, rated("2 hours, brick"))

	circuit := r.circuit(r.panel, "13", "front bedroom", 20, 120)
	r.opening("duplex", b.on(3, 96), r.old, up(14), there)
	for _, at := range []plan.Anchor{b.on(0, 74), b.on(1, 20), b.on(1, 106), b.on(2, 20), b.on(2, 124)} {
		r.opening("duplex", at, circuit, up(14), builtAs("OW2"))
	}
	light := func(at plan.Anchor, high float64) plan.ID {
		return r.opening("wall-light", at, circuit, up(high), builtAs("OW4"))
	}
	mirrorLights := []plan.ID{light(b.on(1, 54), 62), light(b.on(1, 102), 62)}
	bedLights := []plan.ID{light(b.on(2, 40), 60), light(b.on(2, 108), 60)}
	r.pair(mirrorLights[0], mirrorLights[1], mirror)
	r.pair(bedLights[0], bedLights[1], bed)
	ceiling := r.opening("pendant", b.ceiling(74, 78), circuit, builtAs("OW4"))
	r.opening("smoke", b.ceiling(120, 120), circuit, builtAs("RD4"))
	r.control("f", []plan.ID{r.opening("switch", b.on(1, 106), circuit, builtAs("OW1"))}, append(mirrorLights, ceiling))
	r.control("g", []plan.ID{r.opening("switch", b.on(2, 124), circuit, builtAs("OW1"))}, bedLights)
}

func (r *rowHouse) agreed() {
	r.control("a", r.chandelier[:1], r.chandelier[1:])
	r.ask("What is in the two old boxes of the dining room?", r.unopened...)
	r.kitchen.face(3, func(s *plan.Side) {
		s.Finish = append(s.Finish[:1:1], plan.Layer{Name: "tile", Thickness: in(0.25), Undecided: true})
	})
	r.ask("How thick are plaster and tile together on the kitchen's west wall?", r.kitchen.sides[3])
	r.do(edit.Add{Thing: &plan.Amendment{
		ID: r.id(plan.KindAmendment), Rule: "partition-depth", Reason: "old walls, measured by hand to the nearest half inch",
	}})
	r.do(edit.Add{Thing: &plan.Waiver{
		ID: r.id(plan.KindWaiver), Rule: "wall-reach", About: r.dining.sides[3], By: "the client",
		Reason: "a built-in hutch will take this corner",
	}})
}
