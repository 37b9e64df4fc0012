package demo

import (
	"studbay/fill/place"
	"studbay/fill/remodel"
	"studbay/plan"
	"studbay/plan/edit"
)

// Farmhouse builds one bedroom of a farmhouse of the 1920s that is altered while its walls
// stay closed: plaster on wood lath, studs where a tape found them, an old box that nobody
// could open and one that was seen in part, a switch that moves to the other side of the
// door, a light that becomes a fan. Place and people are invented.
//
// Left in on purpose: what becomes of the old switch box is not said, the cable of the old
// light has no end yet, a fire block is behind the place of one receptacle and nobody has
// looked behind others, the new receptacles hang on an old cable of which nobody knows
// whether it carries a ground, studs past the last reading are to be found, nobody has read
// the breaker, nobody says which way one cable goes, and there is no smoke alarm.
func Farmhouse() (plan.Plan, error) {
	b := &builder{seed: "farmhouse bedroom"}
	b.p = plan.New("Farmhouse bedroom", b.id(plan.KindLevel))
	h := *b.p.Header
	h.Author, h.Client, h.Revision, h.Date, h.Edition, h.Built = "Demo", "An invented family", "A", "2026-11-30", "2023", 1926
	b.do(edit.ChangeHeader{Header: h})
	f := &farmhouse{builder: b}
	f.room()
	f.walls()
	f.found()
	f.planned()
	return b.p, b.err
}

type farmhouse struct {
	*builder
	bed, hall room
	wiring    plan.ID
	old       plan.ID // the receptacle that feeds the new ones
}

var (
	lathed  = plan.Layer{Name: "plaster on wood lath", Thickness: in(0.75), Lath: plan.WoodLath}
	fullLow = plan.Studs{Spacing: in(16), Depth: in(3.75), Thick: in(1.75)}
	lathing = wall{plan.SideWall, fullLow, []plan.Layer{lathed}}
)

func (f *farmhouse) room() {
	f.bed = f.builder.room("Bedroom", "B", plan.UseBedroom, 104,
		corner{0, 0, lathing}, corner{148, 0, lathing}, corner{148, 132, lathing}, corner{0, 132, lathing})
	f.hall = f.builder.room("Hall", "H", plan.UseHall, 104,
		corner{0, 137.25, lathing}, corner{148, 137.25, lathing}, corner{148, 179, lathing}, corner{0, 179, lathing})
	f.do(edit.SetCondition{Rooms: []plan.ID{f.bed.id, f.hall.id}, Condition: plan.ConditionClosed})
	r, _ := f.p.Room(f.bed.id)
	if r != nil { // the attic floor comes up, so the ceiling is reached from above
		now := *r
		now.Overhead = plan.ConditionOpened
		f.do(edit.ChangeRoom{Room: now})
	}
	f.window(f.bed.on(0, 56), 32, 30, 86)
	f.door(f.bed.on(2, 40), 30, plan.HandLeft, plan.SwingIn)
}

// walls tells what was taped, opened and looked into.
func (f *farmhouse) walls() {
	baseboard := plan.Trim{Name: "baseboard", Height: in(8), Thick: in(0.75), Measured: true}
	for i := range 4 {
		f.bed.face(i, func(s *plan.Side) { s.Trim = []plan.Trim{baseboard} })
	}
	f.bed.face(1, taped(13.5, 31, 46.75, 63, 79.5, 96))
	f.bed.face(1, func(s *plan.Side) {
		s.Probes = []plan.Probe{
			{From: in(33), To: in(45), Clear: true},
			{From: in(64), To: in(78), Bottom: in(10), Top: in(22), What: "fire block"},
		}
	})
	f.bed.face(3, func(s *plan.Side) { // a strip of plaster is down; board on furring brings it even
		s.Zones = []plan.Zone{{From: in(24), To: in(72), Condition: plan.ConditionOpened, Finish: []plan.Layer{
			{Name: "furring", Thickness: in(0.25), Combustible: true}, board,
		}}}
	})
}

// found is what is there: none of its boxes has a size that anybody has read.
func (f *farmhouse) found() {
	f.wiring = f.circuit("", "3", "bedroom and hall, existing", 15, 120)
	if c, ok := f.p.Circuits.Get(f.wiring); ok { // nobody has read its breaker
		now := *c
		now.AFCI, now.GFCI = plan.FlagUnsaid, plan.FlagUnsaid
		f.do(edit.ChangeCircuit{Circuit: now})
	}
	was := func(o *plan.Opening) { o.Status, o.Assembly = plan.StatusExisting, plan.Assembly{} }
	f.old = f.opening("duplex", f.bed.on(1, 22), f.wiring, was, up(16), func(o *plan.Opening) {
		o.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: []plan.Item{{What: plan.ItemCable, Times: 2}}}
	})
	sw := f.opening("switch", f.bed.on(2, 30), f.wiring, was, up(50))
	light := f.opening("ceiling-light", f.bed.ceiling(74, 66), f.wiring, was)
	f.control("a", []plan.ID{sw}, []plan.ID{light})
	hall := f.opening("ceiling-light", f.hall.ceiling(74, 158), f.wiring, was)
	by := f.opening("switch", f.hall.on(2, 60), f.wiring, was, up(50))
	f.control("b", []plan.ID{by}, []plan.ID{hall})
	f.opening("duplex", f.hall.on(2, 100), f.wiring, was, up(16))
	f.cable(light, sw, plan.AnswerNo)
	f.moves(sw, f.bed.on(2, 76.5))
	f.becomes(light, "fan-light")
}

// moves moves an existing opening, and what becomes of its box is left open.
func (f *farmhouse) moves(id plan.ID, to plan.Anchor) {
	if o, _ := f.p.Opening(id); o != nil && f.err == nil {
		f.do(remodel.Move(f.p, o, to))
	}
}

// becomes replaces an existing opening whose box comes out.
func (f *farmhouse) becomes(id plan.ID, kind string) {
	if o, _ := f.p.Opening(id); o != nil && f.err == nil {
		f.do(remodel.Replace(f.p, o, kind))
		f.do(edit.SetFate{ID: id, Fate: plan.FateOut})
	}
}

// cable is one in the wall already, of which it is said what it carries.
func (f *farmhouse) cable(from, to plan.ID, ground plan.Answer) {
	id := f.id(plan.KindCable)
	f.do(edit.Add{Thing: &plan.Cable{ID: id, From: from, To: to, Size: 14, Wires: 2}})
	f.do(edit.SetCableExisting{ID: id, Existing: true})
	f.do(edit.SetGrounding{ID: id, Answer: ground})
}

// planned is what is new.
func (f *farmhouse) planned() {
	put := func(kind string, at plan.Anchor, more ...func(*plan.Opening)) plan.ID {
		return f.opening(kind, at, f.wiring, append([]func(*plan.Opening){func(o *plan.Opening) { *o = place.ForWall(f.p, *o) }}, more...)...)
	}
	first := put("duplex", f.bed.on(1, 39), up(16))
	second := put("duplex", f.bed.on(1, 71), up(16))
	far := put("duplex", f.bed.on(1, 118), up(16))
	patch := put("duplex", f.bed.on(3, 50), up(16))
	window := put("duplex", f.bed.on(0, 26), up(16))
	corner := put("duplex", f.bed.on(2, 110), up(16))
	f.run(f.wiring, 14, 2, f.old, first, second, far, corner)
	f.run(f.wiring, 14, 2, f.old, window, patch)
	for c := range f.p.Cables.All() { // the attic floor is up; the way to the strip is not settled
		if !c.Existing && c.To != patch {
			f.do(edit.SetWay{ID: c.ID, Way: plan.WayAttic})
		}
	}
	source := f.opening("junction", f.hall.on(0, 20), f.wiring, func(o *plan.Opening) { o.Status, o.Assembly = plan.StatusExisting, plan.Assembly{} }, up(16))
	f.cable(source, f.old, plan.Unsaid)
}
