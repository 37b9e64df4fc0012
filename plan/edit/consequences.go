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

// Telling says what goes with an edit and what stays without what goes, each in a sentence
// of its own; none where there is nothing of the kind.
func Telling(all []Consequence) (sentences []words.Text) {
	var goes, stays []words.Text
	for _, c := range all {
		if c.Goes {
			goes = append(goes, c.Text)
		} else {
			stays = append(stays, c.Text)
		}
	}
	if len(goes) > 0 {
		sentences = append(sentences, words.New("consequence.goes", "These go with it: {0}.", plan.Listed(goes)))
	}
	if len(stays) > 0 {
		sentences = append(sentences, words.New("consequence.stays", "These stay, without it: {0}.", plan.Listed(stays)))
	}
	return sentences
}
