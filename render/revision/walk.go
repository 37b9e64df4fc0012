package revision

import (
	"errors"
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

// SinceWalk lists what changed since the last walk-through, with a line that heads it. Without
// any change the line says nothing, or that what is kept of the walk cannot be read.
func SinceWalk(now *index.Index) (list List, head words.Text) {
	old, err := AtWalk("", Side{Index: now})
	switch {
	case errors.Is(err, file.ErrNoWalk):
		return list, head
	case err != nil:
		return list, unread(now.Plan().Header.Walked.Date)
	}
	if list = Compare(old, Side{Index: now}); len(list.Changes) > 0 {
		head = Since(now.Plan().Header.Walked.Date)
	}
	return list, head
}

// unread says that nobody can tell what changed since a walk of a day.
func unread(day string) words.Text {
	if day == "" {
		return words.New("revision.unread-last", "The last walk-through is kept in this plan but cannot be read, so what changed since cannot be told.")
	}
	return words.New("revision.unread", "The walk-through of {0} is kept in this plan but cannot be read, so what changed since cannot be told.", day)
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
