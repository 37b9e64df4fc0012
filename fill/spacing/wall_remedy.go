package spacing

import (
	"encoding/binary"
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// mostAdded bounds how many receptacles a remedy adds: more is no remedy but a figure
// that somebody mistyped.
const mostAdded = 64

// reachRemedies offers the fewest receptacles that would serve a gap: in the wall
// where a box can be set there, with one more if that keeps them out of the floor, else
// in the floor. It offers nothing where one of them has no place.
func reachRemedies(v index.RoomView, r run, g gap, fig *code.Figures) []rule.Remedy {
	span := 2 * fig.Spacing.WallReach
	least := (g.to - g.from + span - 1) / span
	var first []rule.Remedy
	for n := least; n <= min(least+1, mostAdded); n++ {
		offer, inFloor := reachWith(v, r, g, fig, n)
		if offer != nil && inFloor == 0 {
			return offer
		}
		if first == nil {
			first = offer
		}
	}
	return first
}

// reachWith offers so many receptacles along a gap, evenly, and says how many of them are
// in the floor.
func reachWith(v index.RoomView, r run, g gap, fig *code.Figures, n unit.Length) (offer []rule.Remedy, inFloor int) {
	var edits []edit.Edit
	ids := newIDs(v, r, g.from)
	for i := range n {
		o, ok := reachOpening(v, r, gap{from: g.from + (g.to-g.from)*i/n, to: g.from + (g.to-g.from)*(i+1)/n}, fig)
		if !ok {
			return nil, 0
		}
		o.ID = ids.Next()
		edits = append(edits, rule.AddFresh{AddOpening: edit.AddOpening{Opening: o}})
		if o.At.Part == plan.PartFloor {
			v.Floor = append(slices.Clip(v.Floor), &o) // the next stands clear of it
			inFloor++
		}
	}
	label := reachLabel(int(n), inFloor)
	return []rule.Remedy{{Label: label, Edit: asOne(label, edits)}}, inFloor
}

func reachLabel(n, inFloor int) words.Text {
	switch {
	case n == 1 && inFloor == 1:
		return words.New("rule.wall-reach.remedy.floor", "Add a floor receptacle there")
	case n == 1:
		return words.New("rule.wall-reach.remedy.one", "Add a receptacle there")
	case inFloor > 0:
		return words.New("rule.wall-reach.remedy.mixed", "Add {0} receptacles, {1} in the floor", n, inFloor)
	}
	return words.New("rule.wall-reach.remedy.many", "Add {0} receptacles there", n)
}

func asOne(label words.Text, edits []edit.Edit) edit.Edit {
	if len(edits) == 1 {
		return edits[0]
	}
	return edit.Steps{Label: label, Edits: edits}
}

// reachOpening returns a receptacle that serves a gap no longer than twice the reach:
// as near its middle as a box can be set, beside a bed rather than behind it, else in
// the floor. It reports false where there is no place before the wall either.
func reachOpening(v index.RoomView, r run, g gap, fig *code.Figures) (o plan.Opening, ok bool) {
	reach := fig.Spacing.WallReach
	wish := spot{wish: (g.from + g.to) / 2, low: g.to - reach, high: g.from + reach, step: fig.Units.Grid(), tape: fig.Units.Step()}
	o = part.NewOpening(fig.Units, kindWallReceptacle, plan.Anchor{Part: plan.PartFace})
	if o.Height.Value > fig.Spacing.ReceptacleMaxHeight {
		o.Height = plan.CentreAt(fig.Spacing.ReceptacleMaxHeight)
	}
	above := o
	above.Height = part.NewOpening(fig.Units, kindAboveCounter, plan.Anchor{Part: plan.PartFace}).Height
	for _, try := range []struct {
		o       plan.Opening
		inReach bool
	}{{o, true}, {above, true}, {o, false}} {
		if try.o.Height == above.Height && !r.hasCounter() {
			continue // where nothing stands that it would be set above
		}
		if p, along, ok := r.mountable(wish, &try.o, v.Room, try.inReach); ok {
			try.o.At = plan.OnFace(p.side.Side.ID, along)
			return try.o, true
		}
	}
	return r.floorOpening(wish, &v, fig)
}

// boxMargin is how far from the end of a leg a box is offered, so that casing and
// corner framing stay clear (common practice).
const boxMargin = 6 * unit.Inch

// spot is a place along a run that is wished for, the bounds it must keep, the step it had
// best be a multiple of, and the tape's own, of which a place against a stud is one.
type spot struct{ wish, low, high, step, tape unit.Length }

// within returns the spot's bounds along a leg, less a margin at either end.
func (s spot) within(p leg, turn, margin unit.Length) (lo, hi unit.Length) {
	margin = min(margin, p.length()/2)
	return max(s.low, turn+p.start+margin), min(s.high, turn+p.start+p.length()-margin)
}

// mountable returns the place nearest to a wish where the run can take a box and no
// other box is in its way, and where it shall be in reach, nothing that stands there
// hides it.
func (r run) mountable(s spot, o *plan.Opening, room *plan.Room, inReach bool) (best leg, along unit.Length, found bool) {
	var off unit.Length
	width := frame.FrontOf(o).Width
	for _, turn := range r.turns() {
		for _, p := range r.legs {
			if !p.canMount || p.length() < width {
				continue
			}
			lo, hi := s.within(p, turn, boxMargin)
			shift := p.from - p.start - turn // from the run to the side
			at, ok := p.free(o, room, spot{s.wish + shift, lo + shift, hi + shift, s.step, s.tape}, inReach)
			if away := (at - shift - s.wish).Abs(); ok && (!found || away < off) {
				best, along, off, found = p, at, away, true
			}
		}
	}
	return best, along, found
}

// free returns the place along the leg's side nearest to a wish where a box like o is
// clear of those that are there, and of what would hide it where it shall be in reach,
// at a whole step where that serves as well: it reads better on a tape.
func (p leg) free(o *plan.Opening, room *plan.Room, s spot, inReach bool) (at unit.Length, found bool) {
	if s.low > s.high {
		return 0, false
	}
	wish := min(max(s.wish, s.low), s.high)
	tries := []unit.Length{wish}
	mine := frame.RectOf(o, room)
	half := mine.Right - o.At.Along + 1 // no less than either half of the box
	var others []frame.Rect
	for _, at := range p.inTheWay(o, room, inReach) {
		if at.Bottom < mine.Top && mine.Bottom < at.Top {
			others = append(others, at)
			tries = append(tries, at.Left-half, at.Right+half)
		}
	}
	for _, try := range p.atStuds(o, room, wish, s.tape) {
		if s.low <= try && try <= s.high && !slices.ContainsFunc(others, mine.Moved(try-o.At.Along).Meets) {
			return try, true
		}
	}
	for _, try := range tries {
		moved := mine.Moved(try - o.At.Along)
		if try < s.low || try > s.high || slices.ContainsFunc(others, moved.Meets) {
			continue
		}
		if !found || (try-s.wish).Abs() < (at-s.wish).Abs() {
			at, found = try, true
		}
	}
	down := at / s.step * s.step
	for _, round := range []unit.Length{at.Rounded(s.step), down, down + s.step} {
		if found && round >= s.low && round <= s.high && !slices.ContainsFunc(others, mine.Moved(round-o.At.Along).Meets) {
			return round, true
		}
	}
	return at, found
}

// atStuds returns where along the leg's side a box like o could be built against a stud,
// the nearest to a wish first; none where it wants none.
func (p leg) atStuds(o *plan.Opening, room *plan.Room, wish, tape unit.Length) []unit.Length {
	box := frame.PlacedIn(p.side.Side, room, o).MovedTo(wish)
	if !box.WantsStud() {
		return nil
	}
	return frame.WallIn(p.side, room).ClearPlaces(box, tape)
}

// inTheWay returns what the box of an opening may not meet on the leg's side: what is there,
// the cabinets of the room, what is wet, and, where it shall be in reach, what stands before
// the wall and hides it.
func (p leg) inTheWay(o *plan.Opening, room *plan.Room, inReach bool) []frame.Rect {
	all := append(frame.InTheWay(p.side, room, o), p.taken(o)...)
	if inReach {
		all = append(all, frame.Hiding(p.side)...)
	}
	return all
}

// taken returns what else of the leg's side the box of an opening may not meet, told by the
// whole room: cabinets, within which it would not count and behind which its plate does not
// reach, flights of stairs, and what is wet.
func (p leg) taken(o *plan.Opening) (all []frame.Rect) {
	for _, c := range slices.Concat(p.cabinets, p.stairs) {
		all = append(all, frame.PastPlate(o, c))
	}
	return append(all, p.wet...)
}

// hasCounter reports whether a cabinet with a work surface stands at the run.
func (r run) hasCounter() bool {
	return slices.ContainsFunc(r.legs, func(p leg) bool {
		return slices.ContainsFunc(p.side.Fixtures, func(v index.FixtureView) bool {
			return part.All().Fixture(v.Fixture.Kind).FloorLine == part.CounterLine
		})
	})
}

// standing returns the place nearest to a wish that is clear of corners and breaks by a
// margin, or the wish itself where nothing is.
func (r run) standing(s spot, margin unit.Length) (best leg, along unit.Length) {
	best, along = r.at(s.wish)
	off := unit.Length(-1)
	for _, turn := range r.turns() {
		for _, p := range r.legs {
			lo, hi := s.within(p, turn, margin)
			at := min(max(s.wish, lo), hi)
			if away := (at - s.wish).Abs(); lo <= hi && (off < 0 || away < off) {
				best, along, off = p, p.from+at-p.start-turn, away
			}
		}
	}
	return best, along
}

// turns returns by how much a run is shifted so that places before its start and past
// its end are met too.
func (r run) turns() []unit.Length {
	if r.isClosed {
		return []unit.Length{-r.length, 0, r.length}
	}
	return []unit.Length{0}
}

// newIDs returns the IDs of what a remedy of a run adds: they depend only on what the room
// holds and on where along the run.
func newIDs(v index.RoomView, r run, from unit.Length) *rule.IDs {
	first := r.legs[0]
	seed := []byte(v.Room.ID + first.side.Side.ID)
	for _, l := range []unit.Length{first.from, from} {
		seed = binary.BigEndian.AppendUint64(seed, uint64(l))
	}
	for _, part := range v.Parts() {
		if o, ok := part.(*plan.Opening); ok {
			seed = append(seed, o.ID...)
		}
	}
	return rule.NewIDs(seed)
}

// idsOf returns the IDs of what is added to a thing with some openings.
func idsOf(host plan.ID, openings []*plan.Opening) *rule.IDs {
	seed := []byte(host)
	for _, o := range openings {
		seed = append(seed, o.ID...)
	}
	return rule.NewIDs(seed)
}
