package demo

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// builder makes a plan edit by edit and keeps the first error.
type builder struct {
	p     plan.Plan
	seed  string
	count uint64
	err   error
}

// Read gives bytes that depend on the seed alone, so that a demo is the same each time.
func (b *builder) Read(out []byte) (int, error) {
	b.count++
	block := sha256.Sum256(binary.BigEndian.AppendUint64([]byte(b.seed), b.count))
	return copy(out, block[:]), nil
}

func (b *builder) id(kind byte) plan.ID {
	id, _ := plan.NewID(kind, b) // its reader never fails
	return id
}

func (b *builder) do(e edit.Edit) {
	if b.err != nil {
		return
	}
	next, err := e.Apply(b.p)
	if err != nil {
		b.err = fmt.Errorf("%s %+v: %w", e.Name(), e, err)
		return
	}
	b.p = next
}

// in returns a length of inches that quarters hold exactly.
func in(inches float64) unit.Length { return unit.Length(inches*4) * (unit.Inch / 4) }

func pt(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }

// corner is where a side begins and what it is made of.
type corner struct {
	x, y float64
	wall wall
}

// wall is a kind of side with its framing and finish.
type wall struct {
	kind   plan.SideKind
	studs  plan.Studs
	finish []plan.Layer
}

var (
	board    = plan.Layer{Name: "gypsum board", Thickness: in(0.5)}
	framing4 = plan.Studs{Spacing: in(16), Depth: in(3.5)}
	framing6 = plan.Studs{Spacing: in(16), Depth: in(5.5)}

	partition = wall{plan.SideWall, framing4, []plan.Layer{board}}
	outside   = wall{plan.SideWall, framing6, []plan.Layer{board}}
	siding    = wall{plan.SideWall, framing6, []plan.Layer{
		{Name: "sheathing", Thickness: in(0.5), Combustible: true},
		{Name: "cedar boards", Thickness: in(0.75), Combustible: true},
	}}
	open    = wall{kind: plan.SideOpen}
	railing = wall{kind: plan.SideRailing}
)

// room is a room of the plan while things are put in it.
type room struct {
	b     *builder
	id    plan.ID
	sides []plan.ID
}

// room adds a room of clockwise corners on the level added last.
func (b *builder) room(name, prefix string, use plan.Use, ceiling float64, corners ...corner) room {
	made := room{b: b, id: b.id(plan.KindRoom)}
	r := plan.Room{ID: made.id, Name: name, Prefix: prefix, Use: use, Ceiling: in(ceiling)}
	if use != plan.UseOutdoors {
		r.Floor = []plan.Layer{{Name: "floor boards", Thickness: in(0.75), Combustible: true}}
	}
	for _, c := range corners {
		s := &plan.Side{ID: b.id(plan.KindSide), Start: pt(c.x, c.y), Kind: c.wall.kind, Studs: c.wall.studs, Finish: c.wall.finish}
		r.Sides = append(r.Sides, s)
		made.sides = append(made.sides, s.ID)
	}
	b.do(edit.AddRoom{Level: b.p.Levels[len(b.p.Levels)-1].ID, Room: r})
	return made
}

// on returns the anchor on the i-th side, from its left end as seen in the room.
func (r room) on(side int, along float64) plan.Anchor { return plan.OnFace(r.sides[side], in(along)) }

func (r room) ceiling(x, y float64) plan.Anchor { return plan.OnCeiling(r.id, pt(x, y)) }

func (r room) floor(x, y float64) plan.Anchor { return plan.OnFloor(r.id, pt(x, y)) }

// face changes the i-th side of the room.
func (r room) face(i int, change func(*plan.Side)) {
	if r.b.err != nil {
		return
	}
	ref, _ := r.b.p.Side(r.sides[i])
	side := *ref.Side()
	change(&side)
	r.b.do(edit.ChangeSide{Side: side})
}

// rated says that the wall is fire-resistance rated, its boxes with listed pads.
func rated(assembly string) func(*plan.Side) {
	return func(s *plan.Side) {
		s.Rated, s.Rating = true, plan.Rating{Assembly: assembly, Cavity: "mineral wool", Putty: true}
	}
}

// taped sets the studs of a wall where a tape found them.
func taped(inches ...float64) func(*plan.Side) {
	return func(s *plan.Side) {
		for _, at := range inches {
			s.Places = append(s.Places, plan.StudPlace{At: in(at), State: plan.StudMeasured})
		}
	}
}

// pair binds two openings about the middle of what stands between them.
func (b *builder) pair(one, other, about plan.ID) {
	b.do(edit.Add{Thing: &plan.Pair{ID: b.id(plan.KindPair), One: one, Other: other, About: about}})
}

// with fills in a break and adds it.
func (b *builder) with(kind plan.BreakKind, at plan.Anchor, width, sill, head float64, more func(*plan.Break)) plan.ID {
	br := plan.Break{ID: b.id(plan.KindBreak), Kind: kind, At: at, Width: in(width), Sill: in(sill), Head: in(head)}
	if kind != plan.BreakFireplace {
		br.Casing = in(2.25)
	}
	if more != nil {
		more(&br)
	}
	b.do(edit.AddBreak{Break: br})
	return br.ID
}

func (b *builder) window(at plan.Anchor, width, sill, head float64) {
	b.with(plan.BreakWindow, at, width, sill, head, nil)
}

func (b *builder) door(at plan.Anchor, width float64, hand plan.Hand, swing plan.Swing) plan.ID {
	return b.with(plan.BreakDoor, at, width, 0, 80, func(br *plan.Break) { br.Hand, br.Swing = hand, swing })
}

// stand adds a fixture of a width, depth and height, its bottom so far up.
func (b *builder) stand(kind plan.FixtureKind, name string, at plan.Anchor, width, depth, bottom, height float64) plan.ID {
	f := plan.Fixture{
		ID: b.id(plan.KindFixture), Kind: kind, Name: name, At: at,
		Width: in(width), Depth: in(depth), Bottom: in(bottom), Height: in(height),
	}
	b.do(edit.AddFixture{Fixture: f})
	return f.ID
}

// opening adds an opening as its kind starts out, with what differs.
func (b *builder) opening(kind string, at plan.Anchor, circuit plan.ID, more ...func(*plan.Opening)) plan.ID {
	o := part.NewOpening(b.p.Header.System(), kind, at)
	o.ID, o.Circuit = b.id(plan.KindOpening), circuit
	for _, m := range more {
		m(&o)
	}
	b.do(edit.AddOpening{Opening: o})
	return o.ID
}

// up sets the height to the centre.
func up(inches float64) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Height = plan.CentreAt(in(inches)) }
}

// builtAs sets the assembly by its code.
func builtAs(code string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
}

// yokes says what is on each yoke of a box.
func yokes(kinds ...string) func(*plan.Opening) {
	return func(o *plan.Opening) {
		o.Devices = nil
		for _, k := range kinds {
			o.Devices = append(o.Devices, plan.Device{Kind: k})
		}
	}
}

const onePole, threeWay = "one-pole switch", "three-way switch"

func noted(text string) func(*plan.Opening) { return func(o *plan.Opening) { o.Note = text } }

// holds states what is in the box.
func holds(items ...plan.Item) func(*plan.Opening) {
	return func(o *plan.Opening) {
		o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: items}
	}
}

// circuit adds a circuit of the panel; those of 120 V are protected against arc faults.
func (b *builder) circuit(panel plan.ID, number, name string, amps, volts int) plan.ID {
	c := plan.Circuit{ID: b.id(plan.KindCircuit), Number: number, Name: name, Panel: panel, Amps: amps, Volts: volts, Poles: 1 + volts/240, AFCI: plan.FlagNo, GFCI: plan.FlagNo}
	if volts == 120 {
		c.AFCI = plan.FlagYes
	}
	b.do(edit.Add{Thing: &c})
	return c.ID
}

// role says what circuits are there for.
func (b *builder) role(role plan.CircuitRole, circuits ...plan.ID) {
	b.eachCircuit(circuits, func(c *plan.Circuit) { c.Role = role })
}

// groundFault protects circuits against ground faults at their breakers.
func (b *builder) groundFault(circuits ...plan.ID) {
	b.eachCircuit(circuits, func(c *plan.Circuit) { c.GFCI = plan.FlagYes })
}

func (b *builder) eachCircuit(circuits []plan.ID, change func(*plan.Circuit)) {
	for _, id := range circuits {
		if c, ok := b.p.Circuits.Get(id); ok {
			c := *c
			change(&c)
			b.do(edit.ChangeCircuit{Circuit: c})
		}
	}
}

// run draws cables from one thing to the next in a row.
func (b *builder) run(circuit plan.ID, size unit.AWG, wires int, stops ...plan.ID) {
	for i := 1; i < len(stops); i++ {
		b.do(edit.Add{Thing: &plan.Cable{
			ID: b.id(plan.KindCable), From: stops[i-1], To: stops[i], Size: size, Wires: wires, Ground: true, Circuit: circuit,
		}})
	}
}

// control says which switches serve which loads.
func (b *builder) control(letter string, switches, loads []plan.ID) {
	b.do(edit.Add{Thing: &plan.Control{ID: b.id(plan.KindControl), Letter: letter, Switches: switches, Loads: loads}})
}

func (b *builder) ask(question string, about ...plan.ID) {
	b.do(edit.Add{Thing: &plan.Decision{ID: b.id(plan.KindDecision), Question: question, About: about}})
}

// upon adds a level, its subfloor so far above that of the lowest, and goes on there.
func (b *builder) upon(name string, elevation float64) {
	b.do(edit.AddLevel{ID: b.id(plan.KindLevel), Title: name, Elevation: in(elevation)})
}

// serve adds the fewest receptacles that serve a room, those of the walls and those of the
// counters each on a circuit. It returns them.
func (b *builder) serve(r room, walls, counters plan.ID) (added []plan.ID) {
	if b.err != nil {
		return nil
	}
	v, ok := index.New(b.p).RoomView(r.id)
	fig, err := fill.FiguresOf(b.p)
	if err != nil || !ok {
		b.err = err
		return nil
	}
	s := spacing.Serve(v, fig)
	if s.Edit == nil {
		return nil
	}
	b.do(s.Edit)
	for _, o := range s.Added {
		added = append(added, o.ID)
		circuit := walls
		if o.Kind == "counter" {
			circuit = counters
		}
		b.do(edit.SetCircuit{ID: o.ID, Circuit: circuit})
	}
	return added
}

// toTheStuds moves all boxes that reach no stud to the nearest one, up to a foot.
func (b *builder) toTheStuds() {
	if b.err != nil {
		return
	}
	var all []plan.ID
	for _, o := range b.p.Openings() {
		all = append(all, o.ID)
	}
	moves, err := fill.ToTheStuds(index.New(b.p), all, unit.Foot)
	if b.err = err; err == nil {
		b.do(moves)
	}
}
