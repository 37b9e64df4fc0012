package revision

import (
	"slices"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
)

// AtWalk returns the plan as it was when it was last walked through with the client, checked
// where now is. It fails with file.ErrNoWalk where no walk is kept. Name is the file as the
// user named it, for errors.
func AtWalk(name string, now Side) (old Side, err error) {
	p, err := file.LastWalk(name, now.Index.Plan())
	if err != nil {
		return old, err
	}
	old.Index = index.New(p)
	if now.Result.Figures != nil {
		old.Result, err = fill.Check(old.Index)
	}
	return old, err
}

// SinceWalk lists what changed since the last walk-through, and gives its day as it is
// kept. Where no walk is kept, or what is kept cannot be read, there are no changes.
func SinceWalk(now *index.Index) (list List, day string) {
	old, err := AtWalk("", Side{Index: now})
	if err != nil {
		return list, ""
	}
	return Compare(old, Side{Index: now}), now.Plan().Header.Walked.Date
}

// Since heads the list of what changed since a walk of a day.
func Since(day string) words.Text {
	if day == "" {
		return words.New("revision.since-last", "Changed since the last walk-through")
	}
	return words.New("revision.since", "Changed since the walk-through of {0}", day)
}

// OfOpening returns the change of an opening; false where it has none.
func (l List) OfOpening(id plan.ID) (Change, bool) {
	i := slices.IndexFunc(l.Changes, func(c Change) bool { return c.Opening().ID == id })
	if i < 0 {
		return Change{}, false
	}
	return l.Changes[i], true
}
