package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// grain is the most that rounding adds: a limit is passed or missed by more than this or
// not at all.
const grain = rule.Grain

// leg is a part of one side along the floor line that is wall space, in whole.
type leg struct {
	side     *index.SideView
	from, to unit.Length // along the side
	start    unit.Length // of the leg along its run
	// canMount is false where no box can be set in the wall: glass, a railing, a fixed
	// panel of a slider.
	canMount bool
	cabinets []frame.Rect // that stand against its side
	stairs   []frame.Rect // of its side, where nobody reaches one
	wet      []frame.Rect // of its side, where no receptacle is offered
}

func (p leg) length() unit.Length { return p.to - p.from }

// run is a wall space: legs that follow one another round corners. A closed run has
// no break and its end meets its start.
type run struct {
	legs     []leg
	length   unit.Length
	isClosed bool
}

// wallSpaces returns the wall spaces of a room, however short.
func wallSpaces(v index.RoomView, fig *code.Figures) []run {
	var all [][]marking
	for i := range v.Sides {
		all = append(all, floorLine(&v, i, fig))
	}
	return joined(v, all, fig)
}

// joined strings the wall markings of all sides into runs. Corners do not end a run;
// one that goes on over the first corner is put together.
func joined(v index.RoomView, all [][]marking, fig *code.Figures) (runs []run) {
	isOpen, anyBreak := false, false
	zones := rule.WetZones(&v, fig)
	for i, line := range all {
		cabinets, stairs, wet := cabinetsAt(v, &v.Sides[i]), stairsAt(v, &v.Sides[i]), rule.WetOn(zones, &v.Sides[i])
		for _, s := range line {
			if s.looks >= isFixedEnd {
				isOpen, anyBreak = false, true
				continue
			}
			if !isOpen {
				runs = append(runs, run{})
				isOpen = true
			}
			r := &runs[len(runs)-1]
			r.add(leg{side: &v.Sides[i], from: s.from, to: s.to, canMount: s.looks == isWall && v.Sides[i].Side.Kind == plan.SideWall, cabinets: cabinets, stairs: stairs, wet: wet})
		}
	}
	switch {
	case len(runs) == 0:
		return nil
	case !anyBreak:
		runs[0].isClosed = true
	case isOpen && beginsWithWall(all) && len(runs) > 1:
		last := runs[len(runs)-1]
		for _, p := range runs[0].legs {
			last.add(p)
		}
		runs[0] = last
		runs = runs[:len(runs)-1]
	}
	return runs
}

// beginsWithWall reports whether the first marking is wall; a side without length has
// none.
func beginsWithWall(all [][]marking) bool {
	for _, line := range all {
		if len(line) > 0 {
			return line[0].looks < isFixedEnd
		}
	}
	return false
}

func (r *run) add(p leg) {
	p.start = r.length
	r.legs = append(r.legs, p)
	r.length += p.length()
}

// stretches returns the parts of sides between two places along the run. On a closed
// run To may lie past the end.
func (r run) stretches(from, to unit.Length) (out []rule.Stretch) {
	for _, turn := range []unit.Length{0, r.length} {
		if turn > 0 && !r.isClosed {
			break
		}
		for _, p := range r.legs {
			lo := max(from-turn, p.start)
			hi := min(to-turn, p.start+p.length())
			if lo < hi {
				out = append(out, rule.OnSide(p.side, p.from+lo-p.start, p.from+hi-p.start))
			}
		}
	}
	return out
}

// at returns the leg and the place along its side for a place along the run.
func (r run) at(place unit.Length) (leg, unit.Length) {
	if r.isClosed {
		place = (place%r.length + r.length) % r.length
	}
	for _, p := range r.legs {
		if place <= p.start+p.length() {
			return p, p.from + place - p.start
		}
	}
	last := r.legs[len(r.legs)-1]
	return last, last.to
}
