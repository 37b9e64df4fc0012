package demo

import (
	"studbay/plan"
	"studbay/plan/edit"
)

// Cottage builds a small new lake cottage on one level. Place and people are invented.
//
// Left in on purpose: a short wall by the bath door without a receptacle, a bedside
// box too small for its three cables, two decisions still open and a stretch of counter out of
// reach. As it is built boxes stand at studs, but for one
// over the counter that could move to none without leaving counter unserved, whose stud has
// to move; two boxes of three gangs want a block at their far side,
// the boxes beside the bed are higher than the room's others, and of the ceilings under
// two fans nobody has told the joists. The lights of the mirror and the boxes beside the bed
// are pairs.
func Cottage() (plan.Plan, error) {
	b := &builder{seed: "otter cove cottage"}
	b.p = plan.New("Otter Cove cottage", b.id(plan.KindLevel))
	h := *b.p.Header
	h.Author, h.Client, h.Revision, h.Date = "Demo", "An invented family", "A", "2026-11-25"
	b.do(edit.ChangeHeader{Header: h})
	c := &cottage{builder: b}
	c.rooms()
	c.breaks()
	c.fixtures()
	c.circuits()
	c.livingRoom()
	c.kitchenCorner()
	c.mudRoom()
	c.bedroomSide()
	c.outside()
	c.wiring()
	c.walls()
	c.toTheStuds()
	return b.p, b.err
}

// cottage holds what later steps hang things on.
type cottage struct {
	*builder
	living, kitchen, mud, bedroom, bath, bunk, porch, stoop room

	island, panel, bunkDoor, bed, mirror plan.ID

	general, sleeping, counterA, counterB, bathroom, laundry, rangeCircuit, dryer, refrigerator, dishwasher, microwave, heater, outdoors plan.ID

	dayLights, livingLights, nightLights plan.ID // circuits of kitchen, mud room and outdoors; of the living room, with the alarms; of bedrooms and bath

	chain, southChain                                         []plan.ID // receptacles of the living room and of a counter, panel first
	livingSwitch, slideSwitch, fan                            plan.ID
	downlights, kitchenDownlights, porchLights                []plan.ID
	kitchenSwitch, pendantA, pendantB                         plan.ID
	mudSwitch, mudLight, stoopLight                           plan.ID
	bathSwitch, mirrorLeft, mirrorRight, bathCeiling, bathFan plan.ID
	bedSwitch, bedFan, bunkSwitch, bunkLight                  plan.ID
	bedLeft, bedRight                                         plan.ID
	tiled                                                     []plan.ID // boxes that wait on the tile
}

// The outside walls are 2x6 with half-inch board; the porch lies beyond them, so its
// house side is the outer face, 7-1/4 in out.
func (c *cottage) rooms() {
	c.living = c.room("Living room", "L", plan.UseLiving, 108,
		corner{0, 0, outside}, corner{288, 0, partition}, corner{288, 192, partition},
		corner{168, 192, open}, corner{0, 192, outside})
	c.kitchen = c.room("Kitchen", "K", plan.UseKitchen, 96,
		corner{0, 192, open}, corner{168, 192, partition}, corner{168, 336, outside}, corner{0, 336, outside})
	c.mud = c.room("Mud room", "M", plan.UseMudroom, 96,
		corner{172.5, 196.5, partition}, corner{288, 196.5, partition}, corner{288, 336, outside}, corner{172.5, 336, partition})
	c.bedroom = c.room("Bedroom", "B", plan.UseBedroom, 96,
		corner{292.5, 0, outside}, corner{456, 0, outside}, corner{456, 144, partition}, corner{292.5, 144, partition})
	c.bath = c.room("Bath", "T", plan.UseBath, 96,
		corner{292.5, 148.75, partition}, corner{456, 148.75, outside}, corner{456, 240, partition}, corner{292.5, 240, partition})
	c.bunk = c.room("Bunk room", "U", plan.UseBedroom, 96,
		corner{292.5, 244.5, partition}, corner{456, 244.5, outside}, corner{456, 336, outside}, corner{292.5, 336, partition})
	c.porch = c.room("Covered porch", "P", plan.UseOutdoors, 100,
		corner{0, -103.25, railing}, corner{288, -103.25, railing}, corner{288, -7.25, siding}, corner{0, -7.25, railing})
	c.stoop = c.room("Stoop", "S", plan.UseOutdoors, 96,
		corner{188, 343.25, siding}, corner{264, 343.25, open}, corner{264, 391.25, open}, corner{188, 391.25, open})
}

func (c *cottage) breaks() {
	c.with(plan.BreakSlider, c.living.on(0, 96), 96, 0, 80, func(b *plan.Break) {
		b.Panels = []plan.Panel{plan.PanelFixed, plan.PanelMoving}
	})
	c.window(c.living.on(0, 24), 48, 24, 80)
	c.window(c.living.on(0, 216), 48, 24, 80)
	c.window(c.living.on(4, 84), 48, 30, 80)
	c.with(plan.BreakFireplace, c.living.on(4, 24), 48, 0, 40, nil)
	c.window(c.kitchen.on(2, 66), 36, 44, 80)
	c.with(plan.BreakPassage, c.kitchen.on(1, 58), 36, 0, 84, nil)
	c.door(c.mud.on(0, 63.5), 32, plan.HandRight, plan.SwingIn)
	c.door(c.mud.on(2, 44), 36, plan.HandRight, plan.SwingIn)
	c.door(c.bedroom.on(3, 10), 30, plan.HandLeft, plan.SwingIn)
	c.window(c.bedroom.on(0, 57.5), 48, 30, 80)
	c.window(c.bedroom.on(1, 48), 48, 30, 80)
	c.door(c.bath.on(3, 56), 30, plan.HandRight, plan.SwingIn)
	c.window(c.bath.on(1, 33.5), 24, 54, 80)
	c.bunkDoor = c.door(c.bunk.on(3, 10), 30, plan.HandUnknown, plan.SwingNone)
	c.window(c.bunk.on(1, 25.5), 36, 36, 80)
}

func (c *cottage) fixtures() {
	k := c.kitchen
	c.stand(plan.FixtureRefrigerator, "", k.on(2, 0), 36, 30, 0, 70)
	south := c.stand(plan.FixtureCounter, "", k.on(2, 36), 132, 25, 0, 36)
	c.stand(plan.FixtureSink, "", plan.Anchor{Host: south, Part: plan.PartTop, Along: in(48), Out: in(12.5)}, 33, 20, 28, 8)
	c.stand(plan.FixtureDishwasher, "", k.on(2, 103), 24, 24, 0, 34)
	c.stand(plan.FixtureUpper, "", k.on(2, 102), 66, 13, 54, 36)
	c.stand(plan.FixtureCounter, "", k.on(3, 25), 35, 25, 0, 36)
	c.stand(plan.FixtureRange, "", k.on(3, 60), 30, 26, 0, 36)
	c.stand(plan.FixtureCounter, "", k.on(3, 90), 48, 25, 0, 36)
	c.stand(plan.FixtureUpper, "", k.on(3, 90), 48, 13, 54, 36)
	c.island = c.stand(plan.FixtureIsland, "", k.floor(100, 252), 60, 30, 0, 36)

	c.panel = c.stand(plan.FixturePanel, "", c.mud.on(3, 18), 14.5, 4, 48, 30)
	c.stand(plan.FixtureWasher, "", c.mud.on(0, 1), 27, 30, 0, 38)
	c.stand(plan.FixtureDryer, "", c.mud.on(0, 30), 27, 30, 0, 38)
	c.stand(plan.FixtureWaterHeater, "", c.mud.on(2, 2), 22, 22, 0, 60)

	c.bed = c.stand(plan.FixtureBed, "", c.bedroom.on(2, 53.5), 60, 80, 0, 46)
	vanity := c.stand(plan.FixtureCabinet, "vanity", c.bath.on(0, 50), 60, 21, 0, 34)
	c.stand(plan.FixtureBasin, "", plan.Anchor{Host: vanity, Part: plan.PartTop, Along: in(30), Out: in(11)}, 20, 15, 28, 6)
	c.mirror = c.stand(plan.FixtureMirror, "", c.bath.on(0, 62), 36, 1, 42, 36)
	c.stand(plan.FixtureTub, "", c.bath.on(1, 15.5), 60, 32, 0, 20)
	c.stand(plan.FixtureToilet, "", c.bath.on(2, 70), 20, 28, 0, 30)
	c.stand(plan.FixtureBed, "bunks", c.bunk.on(2, 6), 76, 40, 0, 66)
	c.stand(plan.FixtureDesk, "", c.bunk.on(0, 60), 48, 24, 0, 29)
}

func (c *cottage) circuits() {
	c.counterA = c.circuit(c.panel, "1", "kitchen counters, west", 20, 120)
	c.counterB = c.circuit(c.panel, "2", "kitchen counters, south and island", 20, 120)
	c.refrigerator = c.circuit(c.panel, "3", "refrigerator", 20, 120)
	c.dishwasher = c.circuit(c.panel, "4", "dishwasher", 20, 120)
	c.rangeCircuit = c.circuit(c.panel, "5/7", "range", 50, 240)
	c.bathroom = c.circuit(c.panel, "6", "bath", 20, 120)
	c.laundry = c.circuit(c.panel, "8", "laundry", 20, 120)
	c.general = c.circuit(c.panel, "9", "living room", 20, 120)
	c.dryer = c.circuit(c.panel, "10/12", "dryer", 30, 240)
	c.sleeping = c.circuit(c.panel, "11", "bedroom and bunk room", 20, 120)
	c.outdoors = c.circuit(c.panel, "13", "porch", 20, 120)
	c.dayLights = c.circuit(c.panel, "14", "lights of kitchen, mud room and outdoors", 15, 120)
	c.livingLights = c.circuit(c.panel, "15", "lights of living room, alarms", 15, 120)
	c.microwave = c.circuit(c.panel, "16", "microwave", 20, 120)
	c.nightLights = c.circuit(c.panel, "17", "lights of bedrooms and bath", 15, 120)
	c.heater = c.circuit(c.panel, "18/20", "water heater", 30, 240)
	c.groundFault(c.refrigerator, c.dishwasher, c.rangeCircuit, c.dryer, c.microwave)
	c.role(plan.RoleAppliance, c.counterA, c.counterB)
	c.role(plan.RoleMachine, c.refrigerator, c.dishwasher, c.rangeCircuit, c.dryer, c.microwave, c.heater)
	c.role(plan.RoleBath, c.bathroom)
	c.role(plan.RoleLaundry, c.laundry)
	c.role(plan.RoleGeneral, c.general, c.sleeping, c.outdoors)
	c.role(plan.RoleLights, c.dayLights, c.livingLights, c.nightLights)
}

func (c *cottage) livingRoom() {
	l := c.living
	corner := c.opening("duplex", l.on(2, 88), c.general)
	east := c.opening("duplex", l.on(1, 48), c.general)
	north := c.opening("duplex", l.on(0, 204), c.general)
	c.chain = []plan.ID{c.panel, corner, east, north}
	c.opening("duplex", l.on(0, 80), c.general)
	c.opening("duplex", l.on(4, 132), c.general)
	c.opening("duplex", l.on(4, 12), c.general)
	c.opening("floor", l.floor(150, 110), c.general, noted("under the sofa table"))
	c.opening("tv-power", l.on(4, 54), c.general, up(66))
	c.opening("coax", l.on(4, 42), "", up(66))
	c.livingSwitch = c.opening("switch-3", l.on(2, 62), c.livingLights, yokes(threeWay, onePole, threeWay))
	c.slideSwitch = c.opening("switch-2", l.on(0, 199), c.livingLights, yokes(threeWay, onePole))
	c.fan = c.opening("fan-light", l.ceiling(144, 96), c.livingLights)
	for _, x := range []float64{60, 228} {
		c.downlights = append(c.downlights, c.opening("recessed", l.ceiling(x, 48), c.livingLights), c.opening("recessed", l.ceiling(x, 144), c.livingLights))
	}
	c.opening("smoke-co", l.ceiling(264, 120), c.livingLights)
	c.opening("thermostat", l.on(2, 104), "")
}

// The kitchen is built in steel, for the tile behind its counters.
func (c *cottage) kitchenCorner() {
	k := c.kitchen
	for _, along := range []float64{42, 114} {
		c.opening("counter", k.on(3, along), c.counterA, builtAs("SQ4"))
	}
	c.southChain = append(c.southChain, c.panel, c.opening("counter", k.on(2, 50), c.counterB, builtAs("SQ4")))
	c.opening("counter", k.on(2, 122), c.counterB, builtAs("SQ4"))
	c.opening("island", plan.Anchor{Host: c.island, Part: plan.PartTop, Along: in(50), Out: in(15)}, c.counterB, builtAs("SQ4"), noted("in the top, of a make listed for countertops"))
	c.opening("refrigerator", k.on(2, 18), c.refrigerator, builtAs("SQ2"))
	c.opening("dishwasher", k.on(2, 92), c.dishwasher, builtAs("SQ2"), noted("under the sink, beside the machine"))
	c.opening("range", k.on(3, 75), c.rangeCircuit)
	c.opening("microwave", k.on(3, 75), c.microwave, builtAs("SQ2"))
	c.pendantA = c.opening("pendant", k.ceiling(84, 252), c.dayLights)
	c.pendantB = c.opening("pendant", k.ceiling(116, 252), c.dayLights)
	for _, x := range []float64{42, 126} {
		c.kitchenDownlights = append(c.kitchenDownlights, c.opening("recessed", k.ceiling(x, 300), c.dayLights))
	}
	c.kitchenSwitch = c.opening("switch-2", k.on(1, 50), c.dayLights, builtAs("SQ6"))
	for _, along := range []float64{30, 104} {
		c.southChain = append(c.southChain, c.opening("duplex", k.on(1, along), c.counterB, builtAs("SQ2")))
	}
}

func (c *cottage) mudRoom() {
	m := c.mud
	c.opening("washer", m.on(0, 14), c.laundry, builtAs("SQ4"))
	c.opening("dryer", m.on(0, 44), c.dryer)
	c.opening("gfci", m.on(3, 40), c.laundry, builtAs("SQ2"))
	c.opening("equipment", m.on(2, 13), c.heater, up(66))
	c.mudSwitch = c.opening("switch-2", m.on(2, 36), c.dayLights, builtAs("SQ6"), yokes(threeWay, onePole))
	c.mudLight = c.opening("ceiling-light", m.ceiling(230, 270), c.dayLights, builtAs("RD3"))
	c.opening("smoke-co", m.ceiling(264, 312), c.livingLights)
	c.opening("junction-ceiling", m.ceiling(196, 306), c.dayLights, noted("home runs meet here; keep it reachable"))
	c.opening("chime", m.on(1, 60), "")
}

func (c *cottage) bedroomSide() {
	b := c.bedroom
	c.opening("duplex", b.on(3, 100), c.sleeping)
	c.opening("data", b.on(3, 106), "")
	c.opening("duplex", b.on(0, 30), c.sleeping)
	c.opening("duplex", b.on(0, 130), c.sleeping)
	c.opening("duplex", b.on(1, 100), c.sleeping)
	c.bedRight = c.opening("duplex", b.on(2, 43.5), c.sleeping, up(26))
	c.bedLeft = c.opening("duplex", b.on(2, 123.5), c.sleeping, up(26), builtAs("PN1"),
		holds(plan.Item{What: plan.ItemCable, Size: 12, Wires: 2, Times: 3}, plan.Item{What: plan.ItemDevice, Size: 12}),
		noted("feeds the bunk room too"))
	c.bedSwitch = c.opening("fan-control", b.on(3, 46), c.nightLights)
	c.bedFan = c.opening("fan-light", b.ceiling(374, 62), c.nightLights)
	c.opening("smoke", b.ceiling(430, 62), c.livingLights)

	t := c.bath
	basin := c.opening("basin", t.on(0, 44), c.bathroom)
	c.mirrorLeft = c.opening("wall-light", t.on(0, 56), c.nightLights, up(62))
	c.mirrorRight = c.opening("wall-light", t.on(0, 104), c.nightLights, up(62))
	c.tiled = []plan.ID{basin, c.mirrorLeft, c.mirrorRight}
	c.bathSwitch = c.opening("switch-3", t.on(3, 48), c.nightLights)
	c.bathCeiling = c.opening("ceiling-light", t.ceiling(350, 206), c.nightLights)
	c.bathFan = c.opening("exhaust-fan", t.ceiling(410, 206), c.nightLights)

	u := c.bunk
	c.opening("duplex", u.on(3, 80), c.sleeping)
	c.opening("duplex", u.on(0, 120), c.sleeping)
	c.opening("data", u.on(0, 84), "")
	c.opening("duplex", u.on(1, 75), c.sleeping)
	c.opening("duplex", u.on(2, 105), c.sleeping)
	c.bunkSwitch = c.opening("switch", u.on(3, 46), c.nightLights)
	c.bunkLight = c.opening("ceiling-light", u.ceiling(374, 290), c.nightLights)
	c.opening("smoke", u.ceiling(316, 268), c.livingLights)
}

func (c *cottage) outside() {
	c.opening("outdoor", c.porch.on(2, 82), c.outdoors)
	for _, along := range []float64{82, 206} {
		c.porchLights = append(c.porchLights, c.opening("porch-light", c.porch.on(2, along), c.dayLights))
	}
	c.stoopLight = c.opening("porch-light", c.stoop.on(0, 66), c.dayLights)
	c.opening("doorbell", c.stoop.on(0, 60), "")
}

// walls says of some walls what differs: tile over the counters of the west wall, tile not
// yet chosen behind the vanity, a rated wall towards the water heater with two boxes back to
// back in it, studs that were taped, one of them off the others' layout; and what of both
// sides of mirror and bed belongs together.
func (c *cottage) walls() {
	c.kitchen.face(3, func(s *plan.Side) {
		s.Finish = append(s.Finish[:1:1], plan.Layer{Name: "mosaic tile", Thickness: in(0.25)})
	})
	c.bath.face(0, func(s *plan.Side) {
		s.Finish = append(s.Finish[:1:1], plan.Layer{Name: "tile", Thickness: in(0.25), Undecided: true})
	})
	c.kitchen.face(1, rated("1 hour, board on either face"))
	c.mud.face(3, rated("1 hour, board on either face"))
	c.bunk.face(0, taped(16, 32, 48, 64, 80, 98.5, 112, 128, 144, 160))
	c.pair(c.mirrorLeft, c.mirrorRight, c.mirror)
	c.pair(c.bedLeft, c.bedRight, c.bed)
}

func (c *cottage) wiring() {
	c.run(c.general, 12, 2, c.chain...)
	c.run(c.counterB, 12, 2, c.southChain...)
	one := func(of plan.ID) []plan.ID { return []plan.ID{of} }
	c.control("a", []plan.ID{c.livingSwitch, c.slideSwitch}, one(c.fan))
	c.control("b", one(c.kitchenSwitch), []plan.ID{c.pendantA, c.pendantB})
	c.control("c", one(c.bathSwitch), []plan.ID{c.mirrorLeft, c.mirrorRight})
	c.control("d", one(c.livingSwitch), c.downlights)
	c.control("e", []plan.ID{c.livingSwitch, c.mudSwitch}, one(c.mudLight))
	c.control("f", one(c.kitchenSwitch), c.kitchenDownlights)
	c.control("g", one(c.bathSwitch), one(c.bathCeiling))
	c.control("h", one(c.bathSwitch), one(c.bathFan))
	c.control("i", one(c.bedSwitch), one(c.bedFan))
	c.control("j", one(c.bunkSwitch), one(c.bunkLight))
	c.control("k", one(c.slideSwitch), c.porchLights)
	c.control("l", one(c.mudSwitch), one(c.stoopLight))
	c.ask("How thick is the tile behind the vanity?", c.tiled...)
	c.ask("On which side does the bunk room door hang?", c.bunkDoor)
}
