package card

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/tell"
)

// wished lists what a client has said something of, openings by their tags before rooms;
// what has gone since is left out.
func wished(p plan.Plan) (ids []plan.ID) {
	for w := range p.Wishes.All() {
		if w.About != "" && w.Kind != plan.WishInitials && !slices.Contains(ids, w.About) {
			ids = append(ids, w.About)
		}
	}
	tag := func(id plan.ID) string {
		if o, _ := p.Opening(id); o != nil {
			return o.Tag
		}
		return ""
	}
	slices.SortStableFunc(ids, func(a, b plan.ID) int {
		return cmp.Or(cmp.Compare(a.Kind(), b.Kind()), plan.CompareTags(tag(a), tag(b)))
	})
	return ids
}

// wishText says what a client said of one thing: change “two inches higher”, note “brass”.
func wishText(ix *index.Index, id plan.ID) (said words.Text) {
	p := ix.Plan()
	said = p.Text(id)
	for w := range p.Wishes.All() {
		if w.About != id || w.Kind == plan.WishInitials {
			continue
		}
		one := w.Kind.Text()
		if w.Note != "" {
			one = words.New("wish.noted", "{0} “{1}”", w.Kind.Text(), w.Note)
		}
		said = words.New("wish.row", "{0}: {1}", said, one)
		if drawn := tell.WishedText(ix, w); !drawn.IsZero() {
			said = words.New("wish.row-drawn", "{0}, {1}", said, drawn)
		}
	}
	return said
}
