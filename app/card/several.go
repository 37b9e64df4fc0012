package card

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// severalPage shows things chosen together.
func severalPage(chosen []plan.ID) page[[]plan.ID] {
	return page[[]plan.ID]{
		get: func(*index.Index, plan.ID) *[]plan.ID { return &chosen },
		head: func(s subject[[]plan.ID], all []plan.ID) (string, string) {
			return s.say("several.title", "{0} chosen", len(all)),
				s.say("several.second", "Drag to move them together, Delete takes them out.")
		},
		rows: []rowOf[[]plan.ID]{boundRow(words.New("several.height", "Height of all"), heightOfAll, sameHeight)},
	}
}

// sameHeight is a height, or an empty line where there is not one of all.
func sameHeight(c *Context) spelling[unit.Length] { return orNothing(heights(c)) }

// heightOfAll binds the height that the openings on faces have in common, none where they
// have several.
func heightOfAll(s subject[[]plan.ID]) binding[unit.Length] {
	return binding[unit.Length]{
		read: func() (same unit.Length) {
			for i, o := range onFaces(s.Index, s.now()) {
				if i > 0 && o.Height.Value != same {
					return 0
				}
				same = o.Height.Value
			}
			return same
		},
		edit: func(l unit.Length) edit.Edit {
			all := edit.Steps{Label: words.New("edit.heights", "Set heights")}
			for _, o := range onFaces(s.Index, s.now()) {
				h := o.Height
				h.Value = l
				all.Edits = append(all.Edits, edit.SetHeight{ID: o.ID, Height: h})
			}
			return all
		},
	}
}

// onFaces returns the openings among the things that a height means something of.
func onFaces(ix *index.Index, ids []plan.ID) (all []*plan.Opening) {
	for _, id := range ids {
		if o, _ := ix.Plan().Opening(id); o != nil && o.At.Part == plan.PartFace {
			all = append(all, o)
		}
	}
	return all
}
