package plan

import "studbay/plan/words"

// Status says whether a thing is there already, and whether it stays.
type Status string

// The statuses. The last two are from version 1.1 on: what was moved stands elsewhere now,
// and what was replaced gave its place to another; both are named by Was of the new one.
const (
	StatusNew      Status = "new"
	StatusExisting Status = "existing"
	StatusRemove   Status = "remove"
	StatusMoved    Status = "moved"
	StatusReplaced Status = "replaced"
)

// Statuses are all of them.
var Statuses = []Status{StatusNew, StatusExisting, StatusRemove, StatusMoved, StatusReplaced}

// IsOld reports whether the thing was there before the work began.
func (s Status) IsOld() bool { return s != StatusNew && s != "" }

// Fate says what becomes of the old box of an opening that was moved or replaced.
type Fate string

// The fates. What nobody has said is an open decision.
const (
	FateUnsaid  Fate = ""
	FateStays   Fate = "stays"   // under a blank cover, with what is in it; accessible for good, 314.29
	FateEmptied Fate = "emptied" // its cables pulled on to the new box
	FateDead    Fate = "dead"    // its cables disconnected at both ends
	FateReused  Fate = "reused"  // the new thing is set on it
	FateOut     Fate = "out"     // the box is taken out
)

// FatesOf returns what may become of the old box of an opening of a status, none where
// that is no question.
func FatesOf(s Status) []Fate {
	switch s {
	case StatusMoved:
		return []Fate{FateUnsaid, FateStays, FateEmptied, FateDead}
	case StatusReplaced:
		return []Fate{FateUnsaid, FateReused, FateOut}
	}
	return []Fate{FateUnsaid}
}

// Text returns what becomes of the box, as people say it.
func (f Fate) Text() words.Text {
	switch f {
	case FateStays:
		return words.New("fate.stays", "stays, blank cover")
	case FateEmptied:
		return words.New("fate.emptied", "emptied, cables pulled to the new box")
	case FateDead:
		return words.New("fate.dead", "dead, disconnected at both ends")
	case FateReused:
		return words.New("fate.reused", "old box kept for the new one")
	case FateOut:
		return words.New("fate.out", "old box taken out")
	}
	return words.New("fate.unsaid", "not decided")
}

// IsGone reports whether the box counts for nothing in the wall any more: the opening is
// to be removed, was replaced, or was moved and its box does not stay.
func (o *Opening) IsGone() bool {
	switch o.Status {
	case StatusRemove, StatusReplaced:
		return true
	case StatusMoved:
		return o.Fate != FateStays
	}
	return false
}

// IsInUse reports whether the opening serves anybody: a box that stays under a blank cover
// does not.
func (o *Opening) IsInUse() bool { return !o.IsGone() && o.Status != StatusMoved }

// Successor returns the opening that was moved from the place of another or replaces it,
// nil where there is none.
func (p Plan) Successor(of ID) *Opening {
	for _, l := range p.Levels {
		for o := range l.Openings.All() {
			if o.Was == of {
				return o
			}
		}
	}
	return nil
}
