package wire

import (
	"studbay/fill/fish"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The figures of a run, common practice all: cables between low boxes of walls are drilled
// through the studs 24 in above the floor, round the room or through a wall into the next one;
// all others go over the ceiling, as do those that doors bar from that way and those that are
// shorter so. A foot is left at each end to make up the box. One that is fished goes where its
// way leads.
const (
	Drilled = 24 * unit.Inch
	Low     = 36 * unit.Inch // a box whose centre is no higher is low
	Tail    = unit.Foot
	step    = 6 * unit.Inch
)

// Run is how long a cable is to be cut.
type Run struct {
	Level unit.Length // along the walls; over a ceiling square to them
	Rise  unit.Length // up and down at both ends
	Tails unit.Length
	Total unit.Length // rounded up to the half foot
	// Drilled is how high above the floor the studs are drilled for it; 0: it goes over the
	// ceiling, or nobody says.
	Drilled unit.Length
	// PastDoor says that it would be drilled, but for a door in its way, over which it goes.
	PastDoor bool
	// Measured says that the user said the length: the parts are zero then.
	Measured bool
}

// RunOf returns the run of a cable. It reports false where an end of it has no place, and
// where it is fished and nobody names its way.
func RunOf(ix *index.Index, c *plan.Cable) (Run, bool) {
	if c.Length > 0 {
		return Run{Total: c.Length, Measured: true}, true
	}
	fished := fish.Of(ix, c)
	if fished.Wants() {
		return Run{}, false
	}
	a, ok := endOf(ix, c.From)
	b, there := endOf(ix, c.To)
	if !ok || !there {
		return Run{}, false
	}
	return runBy(fished, a, b), true
}

// runBy returns the run of a cable from one end to another: through framing that is open, or
// as it is fished.
func runBy(f fish.Path, a, b end) Run {
	up, down := a.toCeiling()+b.toCeiling(), a.height+b.height
	switch {
	case !f.Is() || a.level != b.level:
		return between(a, b)
	case f.InBay:
		return runOf(a, b, (a.height - b.height).Abs())
	case f.Way == plan.WayCellar:
		return runOf(a, b, down)
	case f.Way == plan.WayAttic, f.ByCeiling:
		return runOf(a, b, up)
	}
	return between(a, b)
}

// Between returns the run of a cable through open framing from one thing to another as it is
// guessed: an opening or a panel.
func Between(ix *index.Index, from, to plan.ID) (Run, bool) {
	a, ok := endOf(ix, from)
	b, there := endOf(ix, to)
	if !ok || !there {
		return Run{}, false
	}
	return between(a, b), true
}

// end is where a cable ends: its place in the plan and its height above the floor of its
// level.
type end struct {
	at         geom.Point
	level      unit.Length // elevation
	height     unit.Length
	ceiling    unit.Length
	isOverhead bool // it sits in a ceiling
	along      along
}

func between(a, b end) Run {
	switch {
	case a.level != b.level:
		return runOf(a, b, (a.level + a.height - b.level - b.height).Abs())
	case a.isOverhead || b.isOverhead || a.height > Low || b.height > Low:
		return runOf(a, b, a.toCeiling()+b.toCeiling())
	}
	over := runOf(a, b, a.toCeiling()+b.toCeiling())
	r := runOf(a, b, (Drilled-a.height).Abs()+(Drilled-b.height).Abs())
	if a.along.isTold() && b.along.isTold() {
		w, ok := drilledWay(a.along, b.along)
		r = r.along(max(w.length, r.Level))
		if over.PastDoor = ok && w.isPastDoor(); !w.isOpen || r.Total > over.Total {
			return over
		}
	}
	r.Drilled = Drilled
	return r
}

func runOf(a, b end, rise unit.Length) Run {
	r := Run{Level: (a.at.X - b.at.X).Abs() + (a.at.Y - b.at.Y).Abs(), Rise: rise, Tails: 2 * Tail}
	return r.along(r.Level)
}

// along returns the run with another length on the level.
func (r Run) along(level unit.Length) Run {
	r.Level = level
	r.Total = (r.Level + r.Rise + r.Tails + step - 1) / step * step
	return r
}

func (e end) toCeiling() unit.Length { return max(e.ceiling-e.height, 0) }

func endOf(ix *index.Index, id plan.ID) (e end, ok bool) {
	p := ix.Plan()
	if o, level := p.Opening(id); o != nil {
		place, _ := ix.Place(o.At)
		if place.Room == nil {
			return e, false
		}
		e = end{at: place.Foot, level: level.Elevation, ceiling: place.Room.Ceiling}
		switch o.At.Part {
		case plan.PartCeiling:
			e.height, e.isOverhead = place.Room.Ceiling, true
		case plan.PartFloor:
		case plan.PartTop:
			if place.On != nil {
				e.height = place.On.Top()
			}
		default:
			e.height, e.along = frame.CentreHeight(o, place.Room), alongOf(ix, place.Room.ID, o.At)
		}
		return e, true
	}
	f, level := p.Fixture(id)
	if f == nil {
		return e, false
	}
	place, _ := ix.Place(f.At)
	if place.Room == nil {
		return e, false
	}
	return end{at: place.Foot, level: level.Elevation, ceiling: place.Room.Ceiling, height: f.Top()}, true
}
