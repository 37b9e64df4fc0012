package revision

import (
	"studbay/plan/words"
	"studbay/render/table"
)

// Text names what became of an opening.
func (k Kind) Text() words.Text {
	switch k {
	case Added:
		return words.New("revision.added", "added")
	case Moved:
		return words.New("revision.moved", "moved")
	case Removed:
		return words.New("revision.removed", "removed")
	}
	return words.New("revision.changed", "changed")
}

// Text says what became of the opening: "moved 6 in, and changed".
func (c Change) Text() words.Text {
	switch {
	case c.Kind != Moved:
		return c.Kind.Text()
	case len(c.Differs) > 0:
		return words.New("revision.moved-changed", "moved {0}, and changed", c.Moved)
	}
	return words.New("revision.moved-by", "moved {0}", c.Moved)
}

// Told says it with all that it says otherwise: "moved 6 in, and changed: gangs: 2, was 1".
func (c Change) Told() words.Text {
	said := c.Text()
	for i, d := range c.Differs {
		if i == 0 {
			said = words.New("revision.told", "{0}: {1}", said, d.Text())
			continue
		}
		said = words.New("revision.told-more", "{0}; {1}", said, d.Text())
	}
	return said
}

// Line says of which opening and where, for those who know no tags.
func (c Change) Line() words.Text {
	if r := c.At().Room; r != nil {
		return words.New("revision.line", "{0}, {1}: {2}", r.Name, table.What(c.Opening()), c.Told())
	}
	return words.New("revision.line-nowhere", "{0}: {1}", table.What(c.Opening()), c.Told())
}

// Sum counts the changes by their kinds.
func (l List) Sum() words.Text {
	if len(l.Changes) == 0 {
		return words.New("revision.none", "No opening differs.")
	}
	return words.New("revision.sum", "Openings: {0} added, {1} moved, {2} changed, {3} removed.",
		l.Count(Added), l.Count(Moved), l.Count(Changed), l.Count(Removed))
}

// Besides counts what else differs, or nothing where nothing does.
func (l List) Besides() words.Text {
	rooms, rest := l.Others.Rooms, l.Others.Others
	if rooms.IsZero() && rest.IsZero() {
		if len(l.Changes) == 0 && !l.IsSame {
			return words.New("revision.besides-header", "Besides: what the plan says of itself, or how it is told.")
		}
		return words.Text{}
	}
	return words.New("revision.besides", "Besides: rooms {0} added, {1} changed, {2} removed; other things {3} added, {4} changed, {5} removed.",
		rooms.Added, rooms.Altered, rooms.Gone, rest.Added, rest.Altered, rest.Gone)
}
