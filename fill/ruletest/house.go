// Package ruletest builds small houses of several rooms in inches for tests of rules, and
// tells what one rule finds in them, also turned every way. Of one room alone filltest is.
package ruletest

import (
	"fmt"
	"strings"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// House is a plan under test.
type House struct {
	T       *testing.T
	Plan    plan.Plan
	rooms   []*Room
	count   int
	Edition string // 2023 unless told
	Metric  bool
}

// Room is a room of it whose sides can be named by their number.
type Room struct {
	*House
	*plan.Room
	level int
}

// New returns a house of one level without a room.
func New(t *testing.T) *House {
	h := &House{T: t, Edition: "2023"}
	h.Plan = plan.New("Test", h.ID(plan.KindLevel))
	return h
}

// ID returns the next ID of a kind.
func (h *House) ID(kind byte) plan.ID {
	h.count++
	return filltest.IDOf(kind, h.count)
}

// In returns a length of inches that sixteenths hold exactly.
func In(inches float64) unit.Length { return filltest.In(inches) }

// Level adds a level above and returns its number.
func (h *House) Level(name string) int {
	h.Plan.Levels = append(h.Plan.Levels, &plan.Level{
		ID: h.ID(plan.KindLevel), Name: name, Elevation: unit.Length(len(h.Plan.Levels)) * 9 * unit.Foot,
	})
	return len(h.Plan.Levels) - 1
}

// Room adds a room of corners in inches, clockwise, on the first level.
func (h *House) Room(use plan.Use, corners ...float64) *Room { return h.RoomOn(0, use, corners...) }

// RoomOn adds a room on a level.
func (h *House) RoomOn(level int, use plan.Use, corners ...float64) *Room {
	r := &plan.Room{ID: h.ID(plan.KindRoom), Name: string(use), Use: use, Ceiling: In(96), Prefix: "R"}
	for i := 0; i < len(corners); i += 2 {
		r.Sides = append(r.Sides, &plan.Side{
			ID: h.ID(plan.KindSide), Kind: plan.SideWall, Start: geom.Point{X: In(corners[i]), Y: In(corners[i+1])},
		})
	}
	room := &Room{h, r, level}
	h.rooms = append(h.rooms, room)
	return room
}

// Square adds a rectangular room: left, top, width, height in inches. Its sides are 0 at
// the top, 1 at the right, 2 at the bottom, 3 at the left.
func (h *House) Square(use plan.Use, x, y, width, height float64) *Room {
	return h.Room(use, x, y, x+width, y, x+width, y+height, x, y+height)
}

// On returns the anchor on a side.
func (r *Room) On(side int, along float64) plan.Anchor {
	return plan.OnFace(r.Sides[side].ID, In(along))
}

// Fixture adds one at a side, 24 in deep and 36 in high.
func (r *Room) Fixture(kind plan.FixtureKind, side int, along, width float64, more ...func(*plan.Fixture)) *plan.Fixture {
	return r.Stand(kind, r.On(side, along), width, 24, more...)
}

// Island adds one of a size in the middle of the floor.
func (r *Room) Island(x, y, width, depth float64) *plan.Fixture {
	return r.Stand(plan.FixtureIsland, plan.OnFloor(r.Room.ID, geom.Point{X: In(x), Y: In(y)}), width, depth)
}

// Stand adds a fixture anywhere.
func (r *Room) Stand(kind plan.FixtureKind, at plan.Anchor, width, depth float64, more ...func(*plan.Fixture)) *plan.Fixture {
	f := &plan.Fixture{ID: r.House.ID(plan.KindFixture), Kind: kind, At: at, Width: In(width), Depth: In(depth), Height: In(36)}
	for _, m := range more {
		m(f)
	}
	l := r.Plan.Levels[r.level]
	l.Fixtures = l.Fixtures.With(f)
	return f
}

// InTop adds a fixture in the top of another: the middle of it from the left and the back.
func (r *Room) InTop(of *plan.Fixture, kind plan.FixtureKind, along, out, width, depth float64) *plan.Fixture {
	return r.Stand(kind, plan.Anchor{Host: of.ID, Part: plan.PartTop, Along: In(along), Out: In(out)}, width, depth, func(f *plan.Fixture) { f.Height = In(8) })
}

// Opening adds one of a kind as it starts out, with what differs.
func (r *Room) Opening(kind string, at plan.Anchor, more ...func(*plan.Opening)) *plan.Opening {
	o := part.NewOpening(unit.Imperial, kind, at)
	o.ID = r.House.ID(plan.KindOpening)
	o.Tag = string(o.ID)
	for _, m := range more {
		m(&o)
	}
	l := r.Plan.Levels[r.level]
	l.Openings = l.Openings.With(&o)
	return &o
}

// Up sets the height to the centre.
func Up(inches float64) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Height = plan.CentreAt(In(inches)) }
}

// Removed marks an opening that goes.
func Removed(o *plan.Opening) { o.Status = plan.StatusRemove }

// Ceiling returns the anchor in the ceiling.
func (r *Room) Ceiling(x, y float64) plan.Anchor {
	return plan.OnCeiling(r.Room.ID, geom.Point{X: In(x), Y: In(y)})
}

// Break adds a break of a kind to a side, from the floor to 80 in.
func (r *Room) Break(kind plan.BreakKind, side int, along, width float64, more ...func(*plan.Break)) *plan.Break {
	b := &plan.Break{ID: r.House.ID(plan.KindBreak), Kind: kind, At: r.On(side, along), Width: In(width), Head: In(80)}
	if kind == plan.BreakDoor {
		b.Hand, b.Swing = plan.HandLeft, plan.SwingIn
	}
	for _, m := range more {
		m(b)
	}
	l := r.Plan.Levels[r.level]
	l.Breaks = l.Breaks.With(b)
	return b
}

// Circuit adds a circuit.
func (h *House) Circuit(amps int, more ...func(*plan.Circuit)) *plan.Circuit {
	c := &plan.Circuit{ID: h.ID(plan.KindCircuit), Number: fmt.Sprint(h.Plan.Circuits.Len() + 1), Amps: amps, Volts: 120, Poles: 1, GFCI: plan.FlagNo, AFCI: plan.FlagNo}
	for _, m := range more {
		m(c)
	}
	h.Plan.Circuits = h.Plan.Circuits.With(c)
	return c
}

// On puts an opening on a circuit.
func On(c *plan.Circuit) func(*plan.Opening) { return func(o *plan.Opening) { o.Circuit = c.ID } }

// Control says which switches serve which loads.
func (h *House) Control(switches, loads []*plan.Opening) *plan.Control {
	c := &plan.Control{ID: h.ID(plan.KindControl)}
	for _, o := range switches {
		c.Switches = append(c.Switches, o.ID)
	}
	for _, o := range loads {
		c.Loads = append(c.Loads, o.ID)
	}
	h.Plan.Controls = h.Plan.Controls.With(c)
	return c
}

// Cable draws one from an opening to another.
func (h *House) Cable(from, to plan.ID, size unit.AWG, wires int, circuit *plan.Circuit) *plan.Cable {
	c := &plan.Cable{ID: h.ID(plan.KindCable), From: from, To: to, Size: size, Wires: wires, Ground: true}
	if circuit != nil {
		c.Circuit = circuit.ID
	}
	h.Plan.Cables = h.Plan.Cables.With(c)
	return c
}

// Made returns the plan with its rooms.
func (h *House) Made() plan.Plan {
	header := *h.Plan.Header
	header.Edition = h.Edition
	if h.Metric {
		header.Units = plan.UnitsMetric
	}
	p := h.Plan
	p.Header = &header
	p.Levels = nil
	for i, l := range h.Plan.Levels {
		level := *l
		for _, r := range h.rooms {
			if r.level == i {
				level.Rooms = level.Rooms.With(r.Room)
			}
		}
		p.Levels = append(p.Levels, &level)
	}
	return p
}

// Found returns what a rule finds in the house.
func (h *House) Found(of *rule.Rule) []rule.Finding {
	h.T.Helper()
	return filltest.FoundIn(h.T, h.Made(), of.ID)
}

// Stretches lists those of findings as side:from-to in inches, where the host is a side of
// the room.
func (r *Room) Stretches(found []rule.Finding) (all []string) {
	for _, f := range found {
		var parts []string
		for _, s := range f.Stretches {
			if at := r.SideAt(s.Host); at >= 0 {
				parts = append(parts, fmt.Sprintf("%d:%s-%s", at, s.From.Inches(16), s.To.Inches(16)))
			}
		}
		if len(parts) > 0 {
			all = append(all, strings.Join(parts, " "))
		}
	}
	return all
}

// Tagged gives an opening the tag that findings name it by.
func Tagged(tag string) func(*plan.Opening) { return func(o *plan.Opening) { o.Tag = tag } }

// Existing marks an opening that is there already.
func Existing(o *plan.Opening) { o.Status = plan.StatusExisting }

// Rooms returns the rooms that were added, in order.
func (h *House) Rooms() []*Room { return h.rooms }
