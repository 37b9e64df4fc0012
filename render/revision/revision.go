// Package revision tells how the openings of a plan differ from those of an older one:
// which were added, moved and how far, removed or changed, with what was found of each on
// either side. Command, sheets and the walk-through show this one list.
//
// Openings are the same where their IDs are. It draws nothing and judges nothing: findings
// are those it is given.
package revision

import (
	"cmp"
	"slices"

	"studbay/fill"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Side is one of two plans that are compared, with what was found in it.
type Side struct {
	Index  *index.Index
	Result fill.Result
}

// Kind says what became of an opening.
type Kind string

// The kinds, in the order they are listed for one room. What moved may have changed
// as well.
const (
	Added   Kind = "added"
	Moved   Kind = "moved"
	Changed Kind = "changed"
	Removed Kind = "removed"
)

// Spot is where an opening is: its level, its foot in the plan, and the height of its
// centre above the finished floor, which is that of the ceiling or 0 where it is in one
// of these.
type Spot struct {
	Level  plan.ID
	Room   *plan.Room
	Foot   geom.Point
	Height unit.Length
	// Elevation is the height of the centre above the subfloor of the lowest level.
	Elevation unit.Length
}

// Change is one opening that differs. Number counts from 1 through the whole list: it
// stands in the triangle that marks the change. Old is nil of one that was added, New of
// one that was removed, and so is the spot of each.
type Change struct {
	Number   int
	Kind     Kind
	Old, New *plan.Opening
	From, To Spot
	// Moved is the straight way from its old place to its new one, up and down counted,
	// rounded to the nearest nanometre; 0 of what was not moved.
	Moved unit.Length
	// Differs lists what else it says otherwise.
	Differs []Differing
	// Cleared were found of it before and are no more; Raised are found of it now and were
	// not. What is set aside counts as found.
	Cleared, Raised []rule.Finding
	// Cost is what it costs more than before, or less; nil where the list was not priced.
	Cost *unit.Money
}

// Opening returns the opening as it is now, or as it was where it is gone.
func (c Change) Opening() *plan.Opening {
	if c.New != nil {
		return c.New
	}
	return c.Old
}

// At returns where it is now, or was where it is gone.
func (c Change) At() Spot {
	if c.New != nil {
		return c.To
	}
	return c.From
}

// List is how a plan differs from an older one.
type List struct {
	Old, New Side
	// Changes are in the order of the schedule: by level, room and tag.
	Changes []Change
	// Others counts what else differs; its Openings are those of Changes that say
	// otherwise by themselves, and not where only the house moved round them.
	Others plan.Difference
	// IsSame tells two plans that say the same in everything.
	IsSame bool
	// Cost is the sum of what the changes cost; nil where the list was not priced.
	Cost *unit.Money
}

// Compare returns how a plan differs from an older one.
func Compare(old, now Side) List {
	a, b := old.Index.Plan(), now.Index.Plan()
	list := List{Old: old, New: now, Others: plan.Compare(a, b), IsSame: plan.Equal(a, b)}
	before := openings(a)
	found := sides{foundBy(old.Result), foundBy(now.Result)}
	for _, o := range b.Openings() {
		was := before[o.ID]
		delete(before, o.ID)
		if c, differs := list.change(was, o, found); differs {
			list.Changes = append(list.Changes, c)
		}
	}
	for _, was := range before {
		c, _ := list.change(was, nil, found)
		list.Changes = append(list.Changes, c)
	}
	list.sort()
	return list
}

// Of returns the changes on a level of the newer plan; what is gone counts where it was.
func (l List) Of(level plan.ID) (found []Change) {
	for _, c := range l.Changes {
		if c.At().Level == level {
			found = append(found, c)
		}
	}
	return found
}

// Count returns how many changes are of a kind.
func (l List) Count(k Kind) (n int) {
	for _, c := range l.Changes {
		if c.Kind == k {
			n++
		}
	}
	return n
}

func openings(p plan.Plan) map[plan.ID]*plan.Opening {
	all := map[plan.ID]*plan.Opening{}
	for _, o := range p.Openings() {
		all[o.ID] = o
	}
	return all
}

// change tells how one opening differs, and whether it does.
func (l List) change(old, now *plan.Opening, found sides) (c Change, differs bool) {
	c = Change{Old: old, New: now, From: spotOf(l.Old.Index, old), To: spotOf(l.New.Index, now)}
	switch {
	case old == nil:
		c.Kind, differs = Added, true
	case now == nil:
		c.Kind, differs = Removed, true
	default:
		c.Moved, c.Differs = c.From.Foot.Slant(c.To.Foot, c.To.Elevation-c.From.Elevation), l.differing(old, now)
		c.Kind = Changed
		if c.Moved > 0 {
			c.Kind = Moved
		}
		differs = c.Moved > 0 || len(c.Differs) > 0
	}
	if differs {
		id := c.Opening().ID
		c.Cleared = without(found.old[id], found.now[id])
		c.Raised = without(found.now[id], found.old[id])
	}
	return c, differs
}

// spotOf returns where an opening is; the zero value of none.
func spotOf(ix *index.Index, o *plan.Opening) (s Spot) {
	if o == nil {
		return s
	}
	place, ok := ix.Place(o.At)
	if !ok {
		return s
	}
	s = Spot{Level: place.Level, Room: place.Room, Foot: place.Foot}
	switch {
	case o.At.Part == plan.PartCeiling && place.Room != nil:
		s.Height = place.Room.Ceiling
	case o.At.Part == plan.PartTop && place.On != nil:
		s.Height = place.On.Top()
	case o.At.Part != plan.PartFloor:
		s.Height = frame.CentreHeight(o, place.Room)
	}
	s.Elevation = s.Height
	if place.Room != nil {
		s.Elevation += place.Room.FloorThickness()
	}
	if level := ix.Plan().Level(place.Level); level != nil {
		s.Elevation += level.Elevation
	}
	return s
}

// sides are what was found of each opening on either side, by whichever rule: those on a wall
// or a room name openings too.
type sides struct{ old, now map[plan.ID][]rule.Finding }

func foundBy(r fill.Result) map[plan.ID][]rule.Finding {
	by := map[plan.ID][]rule.Finding{}
	for f := range r.Each() {
		if f.Opening != "" {
			by[f.Opening] = append(by[f.Opening], f)
		}
	}
	return by
}

// without returns the findings that no other one says as well.
func without(found, others []rule.Finding) (rest []rule.Finding) {
	for _, f := range found {
		says := func(g rule.Finding) bool {
			return f.Rule == g.Rule && f.Severity == g.Severity && f.IsOpen == g.IsOpen && f.Message.String() == g.Message.String()
		}
		if !slices.ContainsFunc(others, says) {
			rest = append(rest, f)
		}
	}
	return rest
}

// sort puts the changes in order and numbers them.
func (l *List) sort() {
	order := map[plan.ID]int{}
	for i, level := range l.New.Index.Plan().Levels {
		order[level.ID] = i + 1
	}
	room := func(c Change) (name string, id plan.ID) {
		if r := c.At().Room; r != nil {
			return r.Name, r.ID
		}
		return "", ""
	}
	slices.SortStableFunc(l.Changes, func(a, b Change) int {
		nameA, idA := room(a)
		nameB, idB := room(b)
		return cmp.Or(
			cmp.Compare(order[a.At().Level], order[b.At().Level]), cmp.Compare(nameA, nameB), cmp.Compare(idA, idB),
			plan.CompareTags(a.Opening().Tag, b.Opening().Tag), cmp.Compare(a.Opening().ID, b.Opening().ID),
		)
	})
	for i := range l.Changes {
		l.Changes[i].Number = i + 1
	}
}
