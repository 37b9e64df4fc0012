package tell

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AsMuch is how far off the straight a client may draw something and mean nothing by it: 2 in.
// Nobody draws a thing to the eye's inch.
const AsMuch = 2 * unit.Inch

// Settled is where a client means who draws an opening to a place and a height above the
// finished floor: on the step that is laid out by hand, within the face, and as it is where the
// place is hardly off that. It reports false where nothing else is asked for.
func Settled(ix *index.Index, id plan.ID, to plan.Anchor, height unit.Length) (plan.Anchor, unit.Length, bool) {
	o, _ := ix.Plan().Opening(id)
	if o == nil {
		return to, height, false
	}
	place, ok := ix.Place(o.At)
	if !ok {
		return to, height, false
	}
	step := ix.Plan().Header.System().Grid()
	if to.Part == plan.PartCeiling {
		to.At.X, to.At.Y = to.At.X.Rounded(step), to.At.Y.Rounded(step)
		return to, 0, to.At.Distance(place.Foot) > AsMuch
	}
	own := frame.CentreHeight(o, place.Room)
	isLevel := (height - own).Abs() <= AsMuch
	isUpright := to.Host == o.At.Host && (to.Along-o.At.Along).Abs() <= AsMuch
	if height = onStep(height, step, place.Room.Ceiling); isLevel {
		height = own
	}
	if to.Along = onStep(to.Along, step, ix.Plan().FaceLength(to)); isUpright {
		to.Along = o.At.Along
	}
	return to, height, !isLevel || !isUpright
}

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
	return WishedBy(words.New("plain", "{0}", words.Spoken(far)))
}

// onStep rounds a length to a step that is no longer than there is room.
func onStep(l, step, most unit.Length) unit.Length {
	if l = l.Rounded(step); l > most {
		l -= step
	}
	return max(l, 0)
}

// WishedBy says it of a distance in words.
func WishedBy(far words.Text) words.Text {
	return words.New("tell.wished", "drawn {0} from where it is", far)
}
