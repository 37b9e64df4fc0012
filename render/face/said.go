package face

import (
	"studbay/fill/frame"
	"studbay/plan/words"
	"studbay/render/table"
)

// HeldBy says what holds a box, by the number of its stud, nothing where that is not known.
func (f Face) HeldBy(v words.Voice, b Box) string {
	if far := b.Hold.FarSide; b.IsBuiltIn && far > 0 {
		return v.Say(words.New("face.far", "{0}; block {1} at the far side", f.nearBy(v, b), words.Height(far)))
	}
	return f.nearBy(v, b)
}

// nearBy is HeldBy without what holds the far side of a wide box.
func (f Face) nearBy(v words.Voice, b Box) string {
	h := b.Hold
	if !b.IsBuiltIn {
		return ""
	}
	if k := h.Block; k != nil {
		return v.Say(words.New("face.block", "block {0}", words.Height(k.Length)))
	}
	if n, atRight, ok := h.Beside(b.Rect, f.studs); ok {
		if atRight {
			return v.Say(words.New("face.right-of", "{0}, right of stud {1}", f.how(v, h.By), n))
		}
		return v.Say(words.New("face.left-of", "{0}, left of stud {1}", f.how(v, h.By), n))
	}
	return v.Say(table.Held(h.By))
}

// how says nail or bracket.
func (f Face) how(v words.Voice, by frame.Way) string {
	if by == frame.ByBracket {
		return v.Say(table.Held(by))
	}
	return v.Say(words.New("face.nail", "nail"))
}

// Set says how far a box stands proud of the studs, and of what raise its ring is.
func (f Face) Set(v words.Voice, b Box) string {
	switch box := frame.BoxOf(b.Opening.Assembly); {
	case box != nil && box.Fit.Adjusts:
		return v.Say(words.New("face.adjusts", "set {0} proud, adjusts to {1}", words.Height(b.Front()), words.Height(box.Fit.ProudMax)))
	case !b.Body.HasRing:
		return v.Say(words.New("face.proud", "set {0} proud", words.Height(b.Front())))
	}
	return v.Say(words.New("face.ring", "even with stud, ring {0}", words.Height(b.Body.Raise)))
}
