package light

import (
	"cmp"
	"slices"

	"studbay/fill/house"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Walk is the way from the entry of a house to each of its rooms, in the dark.
type Walk struct {
	Crossings []*Crossing // the nearest to the entry first
	Missed    []*plan.Room
	Reach     unit.Length // how far from a door a hand looks for a switch
	From      plan.ID     // the room that it begins in; empty for the entry
}

// Crossing is one step of the walk: into a room.
type Crossing struct {
	Before     *Crossing // the one by which one came into From; nil at the entry
	From, Into *plan.Room
	Break      *plan.Break   // nil over an open side and over stairs
	Stairs     *plan.Fixture // nil but over stairs
	Side       *plan.Side    // of the room that is left, or at the entry of the one come into; nil over stairs
	Level      plan.ID       // of Into
	At         geom.Point    // where one comes into it
	Line       geom.Segment
	Walked     unit.Length // from the entry, in the plan
	State      CrossingState
	Switch     *plan.Opening // the nearest that puts on a light ahead; nil where nobody says one
	Away       unit.Length   // how far it is from where one stands; -1 where it is in neither room
	Dark       unit.Length   // how far one walks in the dark until it is in reach
	Across     unit.Length   // through the wall or over the flight, of Walked

	isStart bool // no crossing, but the room that the walk begins in
	isAt    func(*plan.Room) []stance
}

// CrossingState says how one comes into a room.
type CrossingState int

// The states of a crossing.
const (
	CrossingLit    CrossingState = iota
	CrossingOpen                 // over an open side: the light of the room behind shines in
	CrossingUnsaid               // there is a light, and nobody says what puts it on
	CrossingUnlit                // there is no light ahead: that is another rule's to tell
	CrossingHidden               // the switch is in reach, behind the open door
	CrossingDark                 // no switch for a light ahead is in reach
)

// String returns the state as files and the command line write it.
func (s CrossingState) String() string {
	return [...]string{"lit", "open", "unsaid", "no light", "hidden", "dark"}[s]
}

// IsDark reports whether there is a light ahead, and nothing to put it on with.
func (c *Crossing) IsDark() bool { return c.State == CrossingDark || c.State == CrossingHidden }

// Longest returns the dark crossing after which one walks farthest in the dark, or nil.
func (w Walk) Longest() (longest *Crossing) {
	for _, c := range w.Crossings {
		if c.IsDark() && (longest == nil || c.Dark > longest.Dark) {
			longest = c
		}
	}
	return longest
}

// Dark counts the dark crossings.
func (w Walk) Dark() (n int) {
	for _, c := range w.Crossings {
		if c.IsDark() {
			n++
		}
	}
	return n
}

// To returns the crossings from the entry to a room, in the order in which they are walked.
func (w Walk) To(room plan.ID) (way []*Crossing) {
	for _, c := range w.Crossings {
		if c.Into.ID != room {
			continue
		}
		for ; c != nil && !c.isStart; c = c.Before {
			way = append(way, c)
		}
		slices.Reverse(way)
		return way
	}
	return nil
}

// WalkOf walks from the entry of a plan to each of its rooms, with a hand's reach.
func WalkOf(ix *index.Index, reach unit.Length) Walk { return WalkFrom(ix, reach, "") }

// WalkFrom walks from the middle of a room to each other one; from the entry where it is empty.
func WalkFrom(ix *index.Index, reach unit.Length, from plan.ID) Walk {
	return seeWalk(ix).walk(reach, from)
}

// walked is what the walk reads: all levels with their lights.
type walked struct{ levels []*lit }

func seeWalk(ix *index.Index) (v walked) {
	for _, l := range ix.Plan().Levels {
		v.levels = append(v.levels, seeLit(ix, l))
	}
	return v
}

// Parts returns those of each level, and how the levels lie.
func (v walked) Parts() (parts []any) {
	for _, l := range v.levels {
		parts = append(parts, l.Parts()...)
		parts = append(parts, l.level.Name, l.level.Elevation)
	}
	return parts
}

// walker takes the walk.
type walker struct {
	*lit   // of any level: lights, switches and controls are by their rooms
	reach  unit.Length
	rooms  map[plan.ID][]*Crossing // ways that lead from a room
	done   map[plan.ID]bool
	result Walk
}

// walk walks from a room, or from the entry where that is empty.
func (v walked) walk(reach unit.Length, from plan.ID) Walk {
	w := &walker{reach: reach, rooms: map[plan.ID][]*Crossing{}, done: map[plan.ID]bool{}, result: Walk{Reach: reach, From: from}}
	for _, l := range v.levels {
		l.Level = house.Of(l.ix, l.level)
	}
	if len(v.levels) == 0 {
		return w.result
	}
	w.lit = v.levels[0]
	w.gather()
	for _, l := range v.levels {
		w.crossings(l)
	}
	if from == "" {
		w.take(v.entries())
	} else {
		w.take(v.starts(from))
	}
	for _, l := range v.levels {
		for _, r := range l.Rooms {
			if !w.done[r.ID] && r.Use != plan.UseOutdoors {
				w.result.Missed = append(w.result.Missed, r)
			}
		}
	}
	return w.result
}

// crossings gathers the ways of a level that lead from one room into another.
func (w *walker) crossings(l *lit) {
	add := func(c *Crossing) { w.rooms[c.From.ID] = append(w.rooms[c.From.ID], c) }
	for _, r := range l.Rooms {
		for _, d := range l.From(r) {
			if d.To != nil && d.To.Use != plan.UseOutdoors && r.Use != plan.UseOutdoors {
				add(through(l, d))
			}
		}
	}
	for _, s := range house.StairsFrom(l.ix, l.level) {
		up, down := overStairs(s, l.level)
		add(up)
		add(down)
	}
}

// take walks the entries and from room to room, the nearest first; of ways equally long
// that which is lit.
func (w *walker) take(open []*Crossing) {
	for _, c := range open {
		w.judge(c)
	}
	slices.SortStableFunc(open, nearer)
	for len(open) > 0 {
		c := open[0]
		open = open[1:]
		if w.done[c.Into.ID] {
			continue
		}
		w.done[c.Into.ID] = true
		if !c.isStart {
			w.result.Crossings = append(w.result.Crossings, c)
		}
		ways := c.Into.Outline().WaysFrom(c.At)
		for _, next := range w.rooms[c.Into.ID] {
			if w.done[next.Into.ID] {
				continue
			}
			far, ok := ways.To(next.leaves())
			if !ok {
				far = c.At.Distance(next.leaves())
			}
			next := *next
			next.Before, next.Across = c, next.leaves().Distance(next.At)
			next.Walked = c.Walked + far + next.Across
			w.judge(&next)
			at, _ := slices.BinarySearchFunc(open, &next, nearer)
			open = slices.Insert(open, at, &next)
		}
	}
}

func nearer(a, b *Crossing) int {
	return cmp.Or(cmp.Compare(a.Walked, b.Walked), cmp.Compare(a.State, b.State))
}

// leaves returns where one leaves the room behind.
func (c *Crossing) leaves() geom.Point { return c.Line.Middle() }
