package demo

import (
	"studbay/plan"
	"studbay/plan/edit"
)

// Hillside builds a two-story house over a basement, with a garage, a deck and stairs.
// Place and people are invented. Walls are served by the program's own proposals.
//
// Left in on purpose, so that each rule about where openings are has something to say: a
// counter of which a part has no receptacle, a powder room and a laundry without one, a deck
// and an unfinished basement without one, two bays in the garage and one receptacle, which
// nothing protects, as nothing does the receptacles of the finished part of the basement, an
// upper hall and an entry without one; all counters on one circuit; a
// bedroom without a light, a deck door without one, a bedroom whose switch is on its far
// wall, one whose switch is behind the door; a switch too high, one whose only cable has no
// neutral; a pendant in a closet and one over the tub; bedrooms that no breaker protects
// against arc faults; too many openings on one circuit; a bedroom without a smoke alarm and
// none for carbon monoxide, though the water heater burns gas; an old box that is not
// grounded; a water heater before the panel.
func Hillside() (plan.Plan, error) {
	b := &builder{seed: "hillside house"}
	b.p = plan.New("Hillside house", b.id(plan.KindLevel))
	b.do(edit.ChangeLevel{ID: b.p.Levels[0].ID, Title: "Basement"})
	h := *b.p.Header
	h.Author, h.Client, h.Revision, h.Date, h.Edition = "Demo", "An invented family", "A", "2026-11-25", "2023"
	b.do(edit.ChangeHeader{Header: h})
	d := &hillside{builder: b}
	d.basement()
	d.upon("Ground floor", 108)
	d.ground()
	d.doors()
	d.kitchenThings()
	d.upon("Upper floor", 216)
	d.upper()
	d.circuits()
	d.servedRooms()
	d.groundLights()
	d.upperLights()
	d.alarms()
	d.toTheStuds()
	return b.p, b.err
}

// hillside holds what later steps hang things on.
type hillside struct {
	*builder
	cellar, recreation                                                                room
	kitchen, dining, living, entry, laundry, powder, garage, deck, porch, drive       room
	hall, first, second, third, bath, closet                                          room
	panel                                                                             plan.ID
	general, counters, sleeping, baths, washing, garageCircuit, lights, old, outdoors plan.ID
}

// rectangle is a room of four walls: its sides are 0 at the back, 1 at the right,
// 2 at the front, 3 at the left.
func (b *builder) rectangle(name, prefix string, use plan.Use, of [4]wall, left, back, right, front float64) room {
	return b.room(name, prefix, use, 96, corner{left, back, of[0]}, corner{right, back, of[1]}, corner{right, front, of[2]}, corner{left, front, of[3]})
}

// inner are the walls of a room that has others on all sides.
var inner = [4]wall{partition, partition, partition, partition}

func (d *hillside) basement() {
	d.cellar = d.rectangle("Unfinished basement", "Z", plan.UseBasement, inner, 244.5, 0, 400, 420)
	d.recreation = d.rectangle("Recreation room", "R", plan.UseRecreation, inner, 404.5, 0, 540, 420)
	d.door(d.cellar.on(1, 300), 32, plan.HandLeft, plan.SwingIn)
	d.panel = d.stand(plan.FixturePanel, "", d.cellar.on(3, 120), 14.5, 4, 48, 30)
	heater := plan.Fixture{ID: d.id(plan.KindFixture), Kind: plan.FixtureWaterHeater, At: d.cellar.floor(270, 293), Width: in(22), Depth: in(22), Height: in(60), Fuel: "gas"}
	d.do(edit.AddFixture{Fixture: heater})
}

// stairs stands a flight, 36 in wide and as long as told, that leads to another level.
func (d *hillside) stairs(at plan.Anchor, long float64, leads plan.ID) {
	d.do(edit.AddFixture{Fixture: plan.Fixture{
		ID: d.id(plan.KindFixture), Kind: plan.FixtureStairs, At: at, Width: in(36), Depth: in(long), Height: in(96), Risers: 14, Leads: leads,
	}})
}

func (d *hillside) ground() {
	d.kitchen = d.room("Kitchen", "K", plan.UseKitchen, 96,
		corner{0, 0, outside}, corner{190, 0, open}, corner{190, 168, partition}, corner{0, 168, outside})
	d.dining = d.room("Dining room", "D", plan.UseDining, 96,
		corner{190, 0, outside}, corner{330, 0, partition}, corner{330, 168, partition}, corner{190, 168, open})
	d.living = d.rectangle("Living room", "L", plan.UseLiving, [4]wall{outside, outside, partition, partition}, 334.5, 0, 540, 224)
	d.entry = d.rectangle("Entry", "H", plan.UseFoyer, [4]wall{partition, outside, outside, partition}, 334.5, 228.5, 540, 420)
	d.laundry = d.rectangle("Laundry", "M", plan.UseLaundry, inner, 244.5, 172.5, 330, 290)
	d.powder = d.rectangle("Powder room", "P", plan.UseBath, [4]wall{partition, partition, outside, partition}, 244.5, 294.5, 330, 420)
	d.garage = d.rectangle("Garage", "G", plan.UseGarage, [4]wall{partition, partition, outside, outside}, 0, 172.5, 240, 420)
	d.deck = d.room("Deck", "X", plan.UseOutdoors, 100,
		corner{100, -103.25, railing}, corner{330, -103.25, railing}, corner{330, -7.25, siding}, corner{100, -7.25, railing})
	d.porch = d.room("Front porch", "F", plan.UseOutdoors, 96,
		corner{380, 427.25, siding}, corner{500, 427.25, open}, corner{500, 487.25, open}, corner{380, 487.25, open})
	d.drive = d.room("Driveway", "V", plan.UseOutdoors, 96,
		corner{0, 427.25, siding}, corner{240, 427.25, open}, corner{240, 547.25, open}, corner{0, 547.25, open})
	d.changeRoom(d.porch, func(of *plan.Room) { of.Faces = plan.FacesFront })
	d.changeRoom(d.deck, func(of *plan.Room) { of.Faces = plan.FacesBack })
	d.changeRoom(d.garage, func(of *plan.Room) { of.Bays = 2 })
}

func (d *hillside) changeRoom(r room, change func(*plan.Room)) {
	if d.err != nil {
		return
	}
	now, _ := d.p.Room(r.id)
	next := *now
	change(&next)
	d.do(edit.ChangeRoom{Room: next})
}

// doors of the ground floor. Along a right side one measures from the back, along a left
// one from the front, along a front one from the right.
func (d *hillside) doors() {
	d.door(d.entry.on(2, 70), 36, plan.HandLeft, plan.SwingIn)
	d.with(plan.BreakPassage, d.entry.on(0, 30), 60, 0, 84, nil)
	d.with(plan.BreakPassage, d.dining.on(1, 40), 72, 0, 84, nil)
	d.door(d.entry.on(3, 30), 30, plan.HandLeft, plan.SwingOut)
	d.door(d.entry.on(3, 140), 30, plan.HandLeft, plan.SwingOut)
	d.door(d.laundry.on(3, 20), 32, plan.HandRight, plan.SwingIn)
	d.with(plan.BreakSlider, d.dining.on(0, 30), 72, 0, 80, func(b *plan.Break) {
		b.Panels, b.Grade = []plan.Panel{plan.PanelFixed, plan.PanelMoving}, plan.AtGrade
	})
	d.with(plan.BreakDoor, d.garage.on(2, 24), 192, 0, 84, func(b *plan.Break) { b.Vehicle = true })
	d.window(d.kitchen.on(0, 70), 48, 44, 80)
	d.window(d.living.on(0, 60), 72, 30, 80)
	d.window(d.living.on(1, 80), 60, 30, 80)
	d.stairs(d.entry.floor(520, 310), 130, "")
}

func (d *hillside) kitchenThings() {
	k := d.kitchen
	back := d.stand(plan.FixtureCounter, "", k.on(0, 0), 150, 25, 0, 36)
	d.stand(plan.FixtureSink, "", plan.Anchor{Host: back, Part: plan.PartTop, Along: in(94), Out: in(12.5)}, 33, 20, 28, 8)
	d.stand(plan.FixtureRefrigerator, "", k.on(0, 152), 36, 30, 0, 70)
	d.stand(plan.FixtureCounter, "", k.on(3, 95), 48, 25, 0, 36)
	d.stand(plan.FixtureRange, "", k.on(3, 65), 30, 26, 0, 36)
	d.stand(plan.FixtureCounter, "", k.on(3, 20), 45, 25, 0, 36)
	d.stand(plan.FixtureWasher, "", d.laundry.on(0, 4), 27, 30, 0, 38)
	d.stand(plan.FixtureDryer, "", d.laundry.on(0, 34), 27, 30, 0, 38)
	vanity := d.stand(plan.FixtureCabinet, "vanity", d.powder.on(0, 20), 36, 21, 0, 34)
	d.stand(plan.FixtureBasin, "", plan.Anchor{Host: vanity, Part: plan.PartTop, Along: in(18), Out: in(11)}, 20, 15, 28, 6)
}

// The upper hall runs along the front of the bedrooms and down to the stairs.
func (d *hillside) upper() {
	d.hall = d.room("Upper hall", "U", plan.UseHall, 96,
		corner{0, 172.5, partition}, corner{540, 172.5, outside}, corner{540, 420, outside}, corner{334.5, 420, partition},
		corner{334.5, 216, partition}, corner{0, 216, outside})
	d.first = d.rectangle("Bedroom 1", "B", plan.UseBedroom, [4]wall{outside, partition, partition, outside}, 0, 0, 180, 168)
	d.second = d.rectangle("Bedroom 2", "C", plan.UseBedroom, [4]wall{outside, partition, partition, partition}, 184.5, 0, 330, 168)
	d.third = d.rectangle("Bedroom 3", "E", plan.UseBedroom, [4]wall{outside, outside, partition, partition}, 334.5, 0, 480, 168)
	d.bath = d.rectangle("Bath", "T", plan.UseBath, inner, 200, 220.5, 330, 330)
	d.closet = d.rectangle("Linen closet", "W", plan.UseCloset, inner, 100, 220.5, 195.5, 300)
	d.door(d.first.on(2, 20), 30, plan.HandLeft, plan.SwingIn)
	d.door(d.second.on(2, 20), 30, plan.HandLeft, plan.SwingIn)
	d.door(d.third.on(2, 40), 30, plan.HandLeft, plan.SwingIn)
	d.door(d.bath.on(0, 20), 30, plan.HandRight, plan.SwingIn)
	d.door(d.closet.on(0, 20), 30, plan.HandRight, plan.SwingOut)
	for _, r := range []room{d.first, d.second, d.third} {
		d.window(r.on(0, 50), 48, 30, 80)
	}
	d.stand(plan.FixtureBed, "", d.first.on(3, 50), 60, 80, 0, 24)
	d.stand(plan.FixtureRod, "", d.closet.on(2, 10), 70, 2, 66, 2)
	vanity := d.stand(plan.FixtureCabinet, "vanity", d.bath.on(2, 60), 48, 21, 0, 34)
	d.stand(plan.FixtureBasin, "", plan.Anchor{Host: vanity, Part: plan.PartTop, Along: in(24), Out: in(11)}, 20, 15, 28, 6)
	d.stand(plan.FixtureTub, "", d.bath.on(1, 40), 60, 32, 0, 20)
	d.leadUp()
}

// leadUp says where the two flights lead, once the levels are there.
func (d *hillside) leadUp() {
	if d.err != nil {
		return
	}
	ground, upper := d.p.Levels[1], d.p.Levels[2]
	for f := range ground.Fixtures.All() {
		if f.Kind == plan.FixtureStairs {
			next := *f
			next.Leads = upper.ID
			d.do(edit.ChangeFixture{Fixture: next})
		}
	}
	d.stairs(d.recreation.floor(520, 310), 130, ground.ID)
}

func (d *hillside) circuits() {
	d.general = d.circuit(d.panel, "1", "living rooms", 20, 120)
	d.counters = d.circuit(d.panel, "2", "counters", 20, 120)
	d.sleeping = d.circuit(d.panel, "3", "bedrooms", 20, 120)
	d.baths = d.circuit(d.panel, "4", "bath", 20, 120)
	d.washing = d.circuit(d.panel, "5", "laundry", 20, 120)
	d.garageCircuit = d.circuit(d.panel, "6", "garage", 20, 120)
	d.lights = d.circuit(d.panel, "7", "lights and alarms", 15, 120)
	d.old = d.circuit(d.panel, "8", "recreation room", 15, 120)
	d.outdoors = d.circuit(d.panel, "9", "outdoors", 20, 120)
	d.groundFault(d.baths, d.outdoors, d.washing, d.counters)
	if c, ok := d.p.Circuits.Get(d.sleeping); ok && d.err == nil {
		next := *c
		next.AFCI = plan.FlagNo
		d.do(edit.ChangeCircuit{Circuit: next})
	}
}

// servedRooms takes what the program proposes for walls and counters, but for one counter.
func (d *hillside) servedRooms() {
	d.serve(d.living, d.general, d.general)
	d.serve(d.dining, d.counters, d.counters)
	added := d.serve(d.kitchen, d.counters, d.counters)
	if n := len(added); n > 0 {
		d.do(edit.Removing(added[n-1]))
	}
	d.serve(d.recreation, d.old, d.old)
	for _, r := range []room{d.first, d.second, d.third} {
		d.serve(r, d.sleeping, d.sleeping)
	}
	d.opening("duplex", d.garage.on(3, 100), d.garageCircuit, up(48))
	d.opening("outdoor", d.porch.on(0, 110), d.outdoors)
	d.opening("basin", d.bath.on(2, 112), d.baths)
	cooking, cold := d.circuit(d.panel, "10/12", "range", 50, 240), d.circuit(d.panel, "11", "refrigerator", 20, 120)
	d.groundFault(cooking, cold)
	d.opening("range", d.kitchen.on(3, 80), cooking)
	d.opening("refrigerator", d.kitchen.on(0, 170), cold)
	d.opening("duplex", d.recreation.on(1, 30), d.old, func(o *plan.Opening) {
		there(o)
		o.Grounded = plan.AnswerNo
	}, noted("from before the basement was finished"))
}

// light puts a light in a ceiling and a switch that puts it on.
func (d *hillside) light(letter, kind string, at, button plan.Anchor, more ...func(*plan.Opening)) {
	lamp := d.opening(kind, at, d.lights)
	d.control(letter, []plan.ID{d.opening("switch", button, d.lights, more...)}, []plan.ID{lamp})
}

func (d *hillside) groundLights() {
	d.light("a", "ceiling-light", d.cellar.ceiling(320, 200), d.cellar.on(1, 341))
	below := d.opening("ceiling-light", d.recreation.ceiling(450, 120), d.lights)
	d.control("b", []plan.ID{d.opening("three-way", d.recreation.on(1, 382), d.lights), d.opening("three-way", d.entry.on(1, 9), d.lights)}, []plan.ID{below})
	d.light("c", "ceiling-light", d.kitchen.ceiling(95, 90), d.kitchen.on(2, 20))
	d.light("d", "pendant", d.dining.ceiling(260, 84), d.dining.on(1, 30))
	d.light("e", "ceiling-light", d.living.ceiling(437, 112), d.living.on(2, 100),
		holds(plan.Item{What: plan.ItemCable, Size: 14, Wires: 2}, plan.Item{What: plan.ItemDevice, Size: 14}))
	d.light("f", "ceiling-light", d.laundry.ceiling(287, 240), d.laundry.on(1, 69))
	d.light("g", "vanity-light", d.powder.on(0, 38), d.powder.on(1, 57))
	d.light("h", "ceiling-light", d.garage.ceiling(120, 300), d.garage.on(1, 124), up(84))
	d.light("i", "porch-light", d.porch.on(0, 30), d.entry.on(2, 115))
	lamp := d.opening("ceiling-light", d.entry.ceiling(430, 330), d.lights)
	d.control("j", []plan.ID{d.opening("three-way", d.entry.on(2, 122), d.lights), d.opening("three-way", d.entry.on(1, 158), d.lights)}, []plan.ID{lamp})
}

func (d *hillside) upperLights() {
	lamp := d.opening("ceiling-light", d.hall.ceiling(430, 200), d.lights)
	d.control("k", []plan.ID{d.opening("three-way", d.hall.on(1, 60), d.lights), d.opening("three-way", d.entry.on(1, 168), d.lights)}, []plan.ID{lamp})
	d.light("l", "ceiling-light", d.first.ceiling(95, 84), d.first.on(2, 10))
	d.light("m", "ceiling-light", d.second.ceiling(262, 84), d.second.on(0, 110))
	mirror, tub := d.opening("vanity-light", d.bath.on(2, 84), d.lights), d.opening("pendant", d.bath.ceiling(312, 290), d.lights)
	both := []plan.ID{d.opening("switch-2", d.bath.on(0, 12), d.lights)}
	d.control("n", both, []plan.ID{mirror})
	d.control("o", both, []plan.ID{tub})
	d.light("p", "pendant", d.closet.ceiling(150, 260), d.hall.on(4, 220))
}

func (d *hillside) alarms() {
	d.opening("smoke", d.first.ceiling(150, 84), d.lights)
	d.opening("smoke", d.third.ceiling(407, 84), d.lights)
	d.opening("smoke", d.hall.ceiling(360, 195), d.lights)
	d.opening("smoke", d.living.ceiling(437, 180), d.lights)
	d.opening("smoke", d.recreation.ceiling(450, 60), d.lights)
}
