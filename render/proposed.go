package render

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Proposed tells where an opening would stand that is not in the plan yet.
func Proposed(ix *index.Index, o plan.Opening) words.Text {
	ref, ok := ix.Side(o.At.Host)
	if o.At.Part != plan.PartFace || !ok {
		return words.New("proposed.floor", "in the floor")
	}
	name := FaceNames(ix, ref.Room)[ref.At]
	return words.New("proposed.face", "{0} wall: {1} from its left corner, {2} high", name, o.At.Along, words.Height(frame.CentreHeight(&o, ref.Room)))
}
