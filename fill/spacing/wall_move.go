package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// moveNeighbor offers to move a receptacle beside a gap by as much as the gap is long,
// where all that it served stays served. One that is there already stays.
func moveNeighbor(r run, room *plan.Room, outlets []outlet, places []unit.Length, g gap, fig *code.Figures) (offers []rule.Remedy) {
	by := (g.to - g.from + fig.Units.Step() - 1) / fig.Units.Step() * fig.Units.Step()
	if by > rule.MostMoved {
		return nil
	}
	reach := fig.Spacing.WallReach
	for _, side := range []struct{ at, by unit.Length }{{g.from - reach, by}, {g.to + reach, -by}} {
		o, p := r.movable(room, outlets, side.at)
		if o == nil || !r.stillServed(places, side.at, side.by, reach, g.to-g.from) {
			continue
		}
		along := o.At.Along + side.by
		if !p.isFreeFor(o, room, along) {
			continue
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.wall-reach.remedy.move", "Move {0} by {1}", o.Tag, words.Height(by)),
			Edit:  edit.MoveOpening{ID: o.ID, To: plan.OnFace(o.At.Host, along)},
		})
	}
	return offers
}

// movable returns the new receptacle at a place of the run that is free to move, and the
// leg that it is on.
func (r run) movable(room *plan.Room, outlets []outlet, at unit.Length) (*plan.Opening, leg) {
	for _, p := range r.legs {
		for _, o := range p.side.Openings {
			isIt := func(out outlet) bool { return out.of == o.ID }
			if o.Status == plan.StatusNew && p.canMount && p.holds(o.At.Along) && slices.ContainsFunc(outlets, isIt) &&
				r.same(p.start+o.At.Along-p.from, at) {
				return o, p
			}
		}
	}
	return nil, leg{}
}

// same reports whether two places along the run are one; a closed run begins again.
func (r run) same(a, b unit.Length) bool {
	off := (a - b).Abs()
	return off <= grain || r.isClosed && (off-r.length).Abs() <= grain
}

// stillServed reports whether a move of the receptacle at a place closes a gap of a length
// and lets none begin or grow.
func (r run) stillServed(places []unit.Length, at, by, reach, closed unit.Length) bool {
	moved := make([]unit.Length, 0, len(places))
	for _, p := range places {
		if r.same(p, at) {
			p += by
		}
		moved = append(moved, p)
	}
	slices.Sort(moved)
	return total(r.gaps(moved, reach)) <= total(r.gaps(places, reach))-closed+grain
}

func total(gaps []gap) (sum unit.Length) {
	for _, g := range gaps {
		sum += g.to - g.from
	}
	return sum
}

// isFreeFor reports whether a box stands clear at another place of the leg.
func (p leg) isFreeFor(o *plan.Opening, room *plan.Room, along unit.Length) bool {
	return slices.ContainsFunc(p.clearOf(o, room, frame.Clearance{OfHiding: true}), func(i geom.Interval) bool {
		return i.From <= along && along <= i.To
	})
}
