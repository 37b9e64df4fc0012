package part

import "studbay/plan"

// Known returns the box of an assembly and what is put on it, as far as the catalogue or the
// user has them: the box that it names goes before that of its code. Whether they go together is
// not looked at, as Resolve does: what stands in a wall can be measured all the same.
func Known(a plan.Assembly) (box *Box, adds []*Add) {
	all := All()
	if a.Box == "" {
		listed := all.Assembly(a.Code)
		if listed == nil {
			return nil, nil
		}
		for _, add := range listed.Adds {
			adds = append(adds, add.Add)
		}
		return listed.Box, adds
	}
	for _, p := range a.Parts {
		if add := AddNamed(a, p.Part); add != nil {
			adds = append(adds, add)
		}
	}
	return boxNamed(a), adds
}
