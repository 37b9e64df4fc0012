package spacing

import (
	"slices"

	"studbay/fill/fewest"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// site is a stretch of a run where a receptacle can be set, and what speaks against it.
type site struct {
	from, to unit.Length // along the run
	worth    fewest.Worth
	set      func(at unit.Length) plan.Opening // sets one at a place along the run
}

// sites are those of one run; single places are sites without length.
type sites struct {
	all   []site
	grid  unit.Length
	extra []unit.Length // places to be tried beside the grid: against studs
}

// What speaks against a site, what matters most first: where it is, then how it is held.
// The third is how uneven it is about beds and windows, the fourth how uneven otherwise.
const (
	againstBehind = 1 // behind what hides it
	againstFloor  = 2 // in the floor, where the wall takes none

	againstNoStud = 1 // its box wants a stud and is against none
	againstInStud = 2 // in the way of one
)

// wallSites are where receptacles of a wall space can be set.
func (s *service) wallSites(r run) (out sites) {
	out.grid = s.fig.Units.Grid()
	low := part.NewOpening(s.fig.Units, kindWallReceptacle, plan.Anchor{Part: plan.PartFace})
	if low.Height.Value > s.fig.Spacing.ReceptacleMaxHeight {
		low.Height = plan.CentreAt(s.fig.Spacing.ReceptacleMaxHeight)
	}
	above := low
	above.Height = part.NewOpening(s.fig.Units, kindAboveCounter, plan.Anchor{Part: plan.PartFace}).Height
	for _, p := range r.legs {
		if !p.canMount {
			out.add(s.floorSites(r, p)...)
			continue
		}
		out.leg(s, p, low)
		if r.hasCounter() {
			out.leg(s, p, above)
		}
	}
	return out
}

// counterSites are where receptacles of a counter can be set: in the wall above it.
func (s *service) counterSites(r run) (out sites) {
	out.grid = s.fig.Units.Grid()
	for _, p := range r.legs {
		o := newCounterReceptacle(s.fig)
		height, ok := counterHeight(&s.v, p, &o, s.fig)
		if o.Height = height; ok && p.canMount {
			out.leg(s, p, o)
		}
	}
	return out
}

func (t *sites) add(more ...site) { t.all = append(t.all, more...) }

// leg adds where a box like o can be set in a leg, in reach and behind what hides it, in
// the bays and in the way of studs.
func (t *sites) leg(s *service, p leg, o plan.Opening) {
	shift := p.start - p.from
	set := func(at unit.Length) plan.Opening {
		o := o
		o.At = plan.OnFace(p.side.Side.ID, at-shift)
		return o
	}
	box := frame.PlacedIn(p.side.Side, s.v.Room, &o)
	held := fewest.Worth{}
	if box.WantsStud() {
		held[1] = againstNoStud
	}
	for _, inReach := range []bool{true, false} {
		worth := held
		if !inReach {
			worth[0] = againstBehind
		}
		for _, free := range p.clearOf(&o, s.v.Room, frame.Clearance{OfHiding: inReach, OfStuds: true}) {
			t.add(site{free.From + shift, free.To + shift, worth, set})
		}
		worth[1] = againstInStud
		for _, free := range p.clearOf(&o, s.v.Room, frame.Clearance{OfHiding: inReach}) {
			t.add(site{free.From + shift, free.To + shift, worth, set})
		}
	}
	if !box.WantsStud() {
		return
	}
	for _, at := range frame.WallIn(p.side, s.v.Room).ClearPlaces(box.MovedTo((p.from+p.to)/2), s.fig.Units.Step()) {
		for _, free := range p.clearOf(&o, s.v.Room, frame.Clearance{OfHiding: true}) {
			if free.From <= at && at <= free.To {
				t.add(site{at + shift, at + shift, fewest.Worth{}, set})
				t.extra = append(t.extra, at+shift)
			}
		}
	}
}

// floorSites are places in the floor before a leg that takes no box.
func (s *service) floorSites(r run, p leg) (out []site) {
	for at := p.start; at <= p.start+p.length(); at += sidestep {
		o, ok := r.floorOpening(spot{at, at, at, s.fig.Units.Grid(), s.fig.Units.Step()}, &s.v, s.fig)
		if !ok {
			continue
		}
		for _, place := range r.placesOfFloor(o.At.At, &s.v, s.fig.Spacing.FloorReach) {
			out = append(out, site{place, place, fewest.Worth{againstFloor}, func(unit.Length) plan.Opening { return o }})
		}
	}
	return out
}

// best returns the best site that holds a place along the run.
func (t *sites) best(at unit.Length) (best *site) {
	for i := range t.all {
		if s := &t.all[i]; s.from <= at && at <= s.to && (best == nil || s.worth.Compare(best.worth) < 0) {
			best = s
		}
	}
	return best
}

// closure returns places among which the fewest are sure to be found: the farthest from
// either end of a gap that still serve it, and the ends of sites, each time twice the reach
// on.
func (t *sites) closure(from, to, reach unit.Length) (places []unit.Length) {
	chain := func(at, by unit.Length) {
		for ; from-reach <= at && at <= to+reach; at += by {
			places = append(places, at)
		}
	}
	chain(from+reach, 2*reach)
	chain(to-reach, -2*reach)
	for _, s := range t.all {
		chain(s.from, 2*reach)
		chain(s.to, 2*reach)
		chain(s.to, -2*reach)
		chain(s.from, -2*reach)
	}
	return places
}

// around returns such places of a run that closes on itself.
func (t *sites) around(length, reach unit.Length) (places []unit.Length) {
	for _, s := range append([]site{{}}, t.all...) {
		for _, at := range []unit.Length{s.from, s.to} {
			for k := -length / (2 * reach); k <= length/(2*reach); k++ {
				places = append(places, ((at+2*reach*k)%length+length)%length)
			}
		}
	}
	return places
}

// turned returns the sites of a run that closes on itself once more past its end.
func (t sites) turned(length unit.Length) sites {
	for _, s := range slices.Clone(t.all) {
		t.all = append(t.all, site{s.from + length, s.to + length, s.worth, func(at unit.Length) plan.Opening { return s.set(at - length) }})
	}
	for _, at := range slices.Clone(t.extra) {
		t.extra = append(t.extra, at+length)
	}
	return t
}

// sitePlaces are the places to choose from, each with the site that it is in.
type sitePlaces struct {
	list []fewest.Place
	in   []*site
}

// places lists where receptacles can be set from one place to another: those told, those
// against studs, and those of the grid.
func (t *sites) places(told []unit.Length, from, to unit.Length) (out sitePlaces) {
	told = append(told, t.extra...)
	for at := from / t.grid * t.grid; at <= to; at += t.grid {
		told = append(told, at)
	}
	slices.Sort(told)
	for _, at := range slices.Compact(told) {
		if at < from || at > to {
			continue
		}
		if s := t.best(at); s != nil {
			out.list, out.in = append(out.list, fewest.Place{At: at, Worth: s.worth}), append(out.in, s)
		}
	}
	return out
}

func (p sitePlaces) openings(c fewest.Choice) (all []plan.Opening) {
	for _, i := range c.Chosen {
		all = append(all, p.in[i].set(p.list[i].At))
	}
	return all
}

// evenness tells how uneven two neighbors stand about the middle of a bed or a window that
// is between them, and how far apart they are, of which the squares are least where all
// are alike.
func (r run) evenness() func(left, right unit.Length) fewest.Worth {
	middles := r.middles()
	return func(left, right unit.Length) (w fewest.Worth) {
		for _, m := range middles {
			if left < m && m < right {
				w[2] += min(int64((left+right-2*m).Abs()/(unit.Inch/16)), uneven)
			}
		}
		apart := int64((right - left) / (unit.Inch / 16))
		w[3] = apart * apart
		return w
	}
}

// uneven is from where on two neighbors have nothing to do with what is between them: in
// sixteenths of an inch of twice their distance, four feet (common practice).
const uneven = 4 * 12 * 16

// middles returns where along a run the middles of beds and windows are.
func (r run) middles() (all []unit.Length) {
	add := func(p leg, at unit.Length) {
		if p.from < at && at < p.to {
			all = append(all, p.start+at-p.from)
		}
	}
	for _, p := range r.legs {
		for _, f := range p.side.Fixtures {
			if f.Fixture.Kind == plan.FixtureBed {
				add(p, f.Fixture.At.Along+f.Fixture.Width/2)
			}
		}
		for _, c := range p.side.Cuts {
			if c.Break.Kind == plan.BreakWindow {
				add(p, (c.From+c.To)/2)
			}
		}
	}
	return all
}
