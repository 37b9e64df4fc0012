package tell

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Wished is the straight way from where an opening is to where its client drew it, up and down
// counted, rounded to the nearest nanometre. It is false where nothing was drawn, or either place
// is gone.
func Wished(ix *index.Index, w *plan.Wish) (unit.Length, bool) {
	o, _ := ix.Plan().Opening(w.About)
	if w.To == nil || o == nil {
		return 0, false
	}
	from, isThere := ix.Place(o.At)
	to, ok := ix.Place(*w.To)
	if !isThere || !ok {
		return 0, false
	}
	var up unit.Length
	if w.ToHeight != 0 {
		up = w.ToHeight - frame.CentreHeight(o, from.Room)
	}
	return from.Foot.Slant(to.Foot, up), true
}

// WishedText says how far off its place a client drew an opening; nothing where it was not
// drawn.
func WishedText(ix *index.Index, w *plan.Wish) words.Text {
	far, ok := Wished(ix, w)
	if !ok {
		return words.Text{}
	}
	return words.New("tell.wished", "drawn {0} from where it is", words.Spoken(far))
}
