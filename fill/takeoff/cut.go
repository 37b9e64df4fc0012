package takeoff

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/words"
)

// Cut is the kind of hole that an opening wants in the finish.
type Cut string

// The kinds of hole. The empty one is none.
const (
	NoCut      Cut = ""
	CutBox     Cut = "box"     // the outline of a box
	CutRing    Cut = "ring"    // the collar of a raised ring
	CutRound   Cut = "round"   // a box or collar that is round
	CutHousing Cut = "housing" // of what comes with its own
)

// Cuts lists the kinds in the order of a table.
var Cuts = []Cut{CutBox, CutRing, CutRound, CutHousing}

// Text returns the kind in words.
func (c Cut) Text() words.Text {
	switch c {
	case CutBox:
		return words.New("cutout.box", "box outline")
	case CutRing:
		return words.New("cutout.ring", "raised ring")
	case CutRound:
		return words.New("cutout.round", "round")
	case CutHousing:
		return words.New("cutout.housing", "housing")
	}
	return words.Text{}
}

// cutOf returns the hole that an opening wants: none in the side of a cabinet, which is cut
// by who makes that, nor where nothing is set in.
func cutOf(o *plan.Opening) Cut {
	switch o.At.Part {
	case plan.PartFace, plan.PartCeiling, plan.PartFloor:
	default:
		return NoCut
	}
	body, built := frame.BodyOf(o.Assembly)
	if !built {
		if k := part.All().Kind(o.Kind); k != nil && !k.Cutout.IsZero() {
			return CutHousing
		}
		return NoCut
	}
	switch {
	case frame.CutoutOf(o).IsRound:
		return CutRound
	case body.HasRing:
		return CutRing
	}
	return CutBox
}
