package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/fewest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Service is a proposal: the least number of receptacles that serve all of a room's walls
// and wall counters, beside those that are there.
type Service struct {
	Room  *plan.Room
	Lines []ServedLine   // the wall spaces and counters that lack one
	Added []plan.Opening // what is proposed
	Edit  edit.Edit      // adds them in one step; nil where none is proposed
	Left  []rule.Stretch // what no receptacle can be set for
	Not   words.Text     // why nothing was worked out, or nothing
}

// ServedLine is a wall space or a counter that lacks receptacles.
type ServedLine struct {
	IsCounter bool
	Stretches []rule.Stretch // all of it
	Length    unit.Length
	Reach     unit.Length
	There     int // receptacles that count
	Added     int
	Missed    bool // a part of it has no place for one
}

// Text tells the sum of a line.
func (l ServedLine) Text() words.Text {
	switch {
	case l.Missed && l.IsCounter:
		return words.New("serve.counter-missed", "Counter of {0}: a part of it has no place for a receptacle", l.Length)
	case l.Missed:
		return words.New("serve.wall-missed", "Wall space of {0}: a part of it has no place for a receptacle", l.Length)
	case l.IsCounter:
		return words.New("serve.counter", "Counter of {0}: each serves {1} at most; there now: {2}, fewest that serve the rest: {3}", l.Length, 2*l.Reach, l.There, l.Added)
	}
	return words.New("serve.wall", "Wall space of {0}: each serves {1} at most; there now: {2}, fewest that serve the rest: {3}", l.Length, 2*l.Reach, l.There, l.Added)
}

// Serve works out the proposal for a room. It looks only at what wall-reach and
// counter-reach look at: islands and all other receptacles are left to their rules. Of the
// choices with the fewest it takes those in the wall before those in the floor, beside
// what would hide them rather than behind it; then those in a bay, against a stud where
// their box wants one; then those even about beds and windows; then the most even.
func Serve(v index.RoomView, fig *code.Figures) Service {
	s := service{v: v, fig: fig, Service: Service{Room: v.Room}}
	if !fig.IsConfirmed("wall-reach") || !fig.IsConfirmed("counter-reach") {
		s.Not = fig.NotConfirmed()
		return s.Service
	}
	if slices.Contains(wallUses, v.Room.Use) {
		outlets := receptacles(v, fig)
		for _, r := range wallSpaces(v, fig) {
			if r.length+grain >= fig.Spacing.WallSpaceMin {
				s.serve(r, r.places(outlets, &v, fig.Spacing.FloorReach), fig.Spacing.WallReach, s.wallSites(r))
			}
		}
	}
	if slices.Contains(counterUses, v.Room.Use) {
		var lines [][]marking
		for i := range v.Sides {
			lines = append(lines, counterLine(&v, i, fig))
		}
		outlets := counterOutlets(&v, fig)
		s.isCounter = true
		for _, r := range joined(v, lines, fig) {
			if r.length+grain >= fig.Spacing.CounterWidthMin {
				s.serve(r, r.places(outlets, &v, 0), fig.Spacing.CounterReach, s.counterSites(r))
			}
		}
	}
	s.finish()
	return s.Service
}

// service is a proposal in the making.
type service struct {
	Service
	v         index.RoomView
	fig       *code.Figures
	isCounter bool
	edits     []edit.Edit
}

// serve adds what a run lacks.
func (s *service) serve(r run, there []unit.Length, reach unit.Length, sites sites) {
	gaps := r.gaps(there, reach)
	if len(gaps) == 0 {
		return
	}
	line := ServedLine{IsCounter: s.isCounter, Stretches: r.stretches(0, r.length), Length: r.length, Reach: reach, There: len(there)}
	ids := newIDs(s.v, r, 0)
	for _, g := range gaps {
		chosen, ok := s.pick(r, g, there, reach, sites)
		if !ok {
			line.Missed = true
			s.Left = append(s.Left, r.stretches(g.from, g.to)...)
		}
		for _, o := range chosen {
			o.ID = ids.Next()
			s.Added = append(s.Added, o)
			s.edits = append(s.edits, rule.Add(o))
			line.Added++
		}
	}
	s.Lines = append(s.Lines, line)
}

// pick chooses the places for one gap.
func (s *service) pick(r run, g gap, there []unit.Length, reach unit.Length, sites sites) (chosen []plan.Opening, ok bool) {
	even := r.evenness()
	if r.isClosed && len(there) == 0 {
		sites.grid *= ringGrid
		places := sites.places(sites.around(r.length, reach), 0, r.length-1)
		c, ok := fewest.Ring{Length: r.length, Reach: reach, Places: places.list, Beside: even}.Pick()
		return places.openings(c), ok
	}
	if r.isClosed {
		sites = sites.turned(r.length)
	}
	line := fewest.Line{From: g.from, To: g.to, Reach: reach, Beside: even}
	if g.from > 0 {
		before := g.from - reach
		line.Before = &before
	}
	if g.to < r.length || r.isClosed {
		after := g.to + reach
		line.After = &after
	}
	places := sites.places(sites.closure(g.from, g.to, reach), g.from-reach, g.to+reach)
	line.Places = places.list
	c, ok := line.Pick()
	return places.openings(c), ok
}

// ringGrid is by how much fewer places of the grid are tried on a run that closes on itself:
// each of them is tried as the first.
const ringGrid = 6

// finish makes the proposal one edit.
func (s *service) finish() {
	if len(s.edits) == 0 {
		return
	}
	label := words.New("serve.label", "Serve {0} by {1} more receptacles", s.Room.Name, len(s.edits))
	if len(s.edits) == 1 {
		label = words.New("serve.label-one", "Serve {0} by one more receptacle", s.Room.Name)
	}
	s.Edit = edit.Steps{Label: label, Edits: s.edits}
}

// Text tells the proposal in one sentence.
func (s Service) Text() words.Text {
	switch {
	case !s.Not.IsZero():
		return words.New("serve.not", "{0}: {1}", s.Room.Name, s.Not)
	case s.Edit != nil && len(s.Added) == 1:
		return words.New("serve.one", "{0}: one more receptacle is the fewest that serve it", s.Room.Name)
	case s.Edit != nil:
		return words.New("serve.many", "{0}: {1} more receptacles are the fewest that serve it", s.Room.Name, len(s.Added))
	case len(s.Left) > 0:
		return words.New("serve.no-place", "{0}: no receptacle can be set where it lacks one", s.Room.Name)
	}
	return words.New("serve.none", "{0}: its walls and wall counters lack no receptacle", s.Room.Name)
}
