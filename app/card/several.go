package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// mixedPage shows things of several kinds, none of them an opening.
var mixedPage = page[plan.ID]{
	get: func(ix *index.Index, id plan.ID) *plan.ID {
		if t, _ := ix.Plan().Find(id); t == nil {
			return nil
		}
		return &id
	},
	put: func(plan.ID) edit.Edit { return edit.Steps{} },
}

// mostAlone is how many of the things chosen are listed.
const mostAlone = 20

func (k *pageCard[T]) severalHead() (title, second string) {
	return k.Say("several.title", "{0} selected", len(k.chosen)),
		k.Say("several.second", "Drag to move them together; Del deletes them.")
}

// eachAlone lists what is chosen: one that is pressed is chosen alone.
func (k *pageCard[T]) eachAlone() bind.Row {
	first := func() []plan.ID { return k.chosen[:min(len(k.chosen), mostAlone)] }
	more := len(k.chosen) - mostAlone
	return bind.Column(look.Grid/2, k.Links(0, first, k.NameOf), k.Said(func() string {
		if more > 0 {
			return k.Say("several.more", "and {0} more", more)
		}
		return ""
	}).ShowIf(func() bool { return more > 0 }))
}
