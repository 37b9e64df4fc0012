package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// counterOutlets returns the receptacle outlets that serve wall counters of a room: in the
// wall above them, in their top, and where the edition lets them count, below.
func counterOutlets(v *index.RoomView, fig *code.Figures) (out []outlet) {
	for i := range v.Sides {
		s := &v.Sides[i]
		cabinets := cabinetsAt(*v, s)
		for _, o := range s.Openings {
			if !isCounterOutlet(o) || isWhollyControlled(o, *v) || isInGlass(o, v.Room, s) || isInCabinet(o, v.Room, cabinets) {
				continue
			}
			top, ok := counterTop(v, s.Frame.Point(o.At.Along, 0))
			if up := frame.CentreHeight(o, v.Room) - top; ok && 0 <= up && up <= fig.Outlets.CounterAbove {
				out = append(out, outlet{of: o.ID, side: s.Side.ID, along: o.At.Along})
			}
		}
		for _, f := range s.Fixtures {
			if part.All().Fixture(f.Fixture.Kind).FloorLine == part.CounterLine {
				out = append(out, onCounter(s.Side.ID, f, v.Room, fig)...)
			}
		}
	}
	return out
}

// onCounter returns the outlets in a counter itself that serve the wall line behind it.
func onCounter(side plan.ID, f index.FixtureView, room *plan.Room, fig *code.Figures) (out []outlet) {
	for _, o := range f.Openings {
		serves := o.At.Part == plan.PartTop || o.At.Part == plan.PartFront && fig.Outlets.BelowWallCounter && isJustBelow(o, f.Fixture, room, fig)
		if isCounterOutlet(o) && serves {
			out = append(out, outlet{of: o.ID, side: side, along: f.Fixture.At.Along + o.At.Along})
		}
	}
	return out
}

// isJustBelow reports whether an outlet in the side of a fixture is near enough below its
// top. The plan draws top and base as one: there is no overhang.
func isJustBelow(o *plan.Opening, f *plan.Fixture, room *plan.Room, fig *code.Figures) bool {
	down := f.Top() - frame.CentreHeight(o, room)
	return 0 <= down && down <= fig.Outlets.CounterBelow
}

// isCounterOutlet reports whether an opening is a receptacle that may serve a counter: one that
// is said to be for a machine does not.
func isCounterOutlet(o *plan.Opening) bool {
	return o.IsInUse() && o.For == plan.ApplianceUnsaid && part.All().Kind(o.Kind).IsGeneral() && !isWhollySwitched(o)
}

// counterTop returns the height of the highest counter that stands at a point of a wall.
func counterTop(v *index.RoomView, at geom.Point) (top unit.Length, ok bool) {
	look := func(f index.FixtureView) {
		if !isWorktop(f.Fixture) {
			return
		}
		if f.Footprint.Distance(at) <= touches {
			top, ok = max(top, f.Fixture.Top()), true
		}
	}
	for _, s := range v.Sides {
		for _, f := range s.Fixtures {
			look(f)
		}
	}
	for _, f := range v.Standing {
		look(f)
	}
	return top, ok
}

// isWorktop reports whether a fixture on the floor is one that a counter runs over.
func isWorktop(f *plan.Fixture) bool {
	return f.Bottom == 0 && (part.All().Fixture(f.Kind).FloorLine == part.CounterLine || f.Kind == plan.FixtureDishwasher)
}
