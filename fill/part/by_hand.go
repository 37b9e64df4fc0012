package part

import "studbay/plan"

// TakenApart returns a listed assembly as its parts, with the marks its recipe counts on,
// so that one of them can be changed. It keeps the barriers of the assembly it is of.
func TakenApart(a plan.Assembly) plan.Assembly {
	listed := All().Assembly(a.Code)
	if listed == nil || a.Box != "" {
		return a
	}
	made := plan.Assembly{Box: listed.Box.ID, Barriers: a.Barriers}
	for _, add := range listed.Adds {
		p := plan.AssemblyPart{Part: add.ID}
		if add.Marked > 0 {
			p.Marked = &add.Marked
		}
		made.Parts = append(made.Parts, p)
	}
	if listed.Cover != nil {
		made.Cover = listed.Cover.ID
	}
	return made
}

// OnBox returns an assembly put together by hand on another box: of what was on it, it
// keeps what goes on that.
func OnBox(a plan.Assembly, to *Box) plan.Assembly {
	made := plan.Assembly{Box: to.ID, Barriers: a.Barriers, Cover: a.Cover, Owned: a.Owned}
	for _, p := range a.Parts {
		if add := AddNamed(a, p.Part); add != nil && add.FitsOn(to.Shape) {
			made.Parts = append(made.Parts, p)
		}
	}
	return made
}
