package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// Consequence is what an edit does to a thing that it does not name.
type Consequence struct {
	ID   plan.ID
	Text words.Text // how a sentence calls it, as the plan is before the edit
	Goes bool       // it goes; else it stays with another thing no longer named in it
}

// Consequences tells beforehand what an edit takes out of the plan beside the things it
// is asked to, and for Remove also what stops naming them. A Remove is taken with Cascade:
// it tells what that would do. It fails as Apply does.
func Consequences(p plan.Plan, e Edit) ([]Consequence, error) {
	asked, isRemove := map[plan.ID]bool{}, false
	if r, ok := e.(Remove); ok {
		r.Cascade = true
		e, isRemove = r, true
		for _, id := range r.Things {
			asked[id] = true
		}
	}
	next, err := e.Apply(p)
	if err != nil {
		return nil, err
	}
	var all []Consequence
	for old, now := range plan.Diff(p, next).All() {
		switch {
		case old == nil || asked[old.Key()] || now == nil && next.Has(old.Key()):
			// It is new, what was asked for, or only went to another level.
		case now == nil || isRemove:
			all = append(all, Consequence{old.Key(), p.Text(old.Key()), now == nil})
		}
	}
	return all, nil
}
