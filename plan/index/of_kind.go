package index

import "studbay/plan"

// ofKind is the openings of one kind.
type ofKind struct {
	kind     plan.ID
	openings plan.Set[*plan.Opening]
}

func (k *ofKind) Key() plan.ID { return k.kind }

// OfKind returns the openings of a kind, on all levels, in the order of IDs. It is the
// same set for as long as none of them comes, goes or changes.
func (ix *Index) OfKind(kind string) plan.Set[*plan.Opening] {
	if k, ok := ix.ofKinds.Get(plan.ID(kind)); ok {
		return k.openings
	}
	return plan.Set[*plan.Opening]{}
}

// rekind changes the set of a kind, and forgets a kind of which there is none.
func (u *updating) rekind(kind string, change func(plan.Set[*plan.Opening]) plan.Set[*plan.Opening]) {
	k := ofKind{kind: plan.ID(kind), openings: change(u.OfKind(kind))}
	if k.openings.Len() == 0 {
		u.ofKinds = u.ofKinds.Without(k.kind)
		return
	}
	u.ofKinds = u.ofKinds.With(&k)
}
