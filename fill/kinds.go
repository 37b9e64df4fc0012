package fill

import (
	"studbay/fill/part"
	"studbay/plan"
)

// The kinds that remedies add.
const (
	kindWallReceptacle  = "duplex"
	kindFloorReceptacle = "floor"
)

// kindCounts reports whether a kind is a receptacle that can count for wall spacing.
// An unknown kind cannot.
func kindCounts(id string) bool {
	k := part.All().Kind(id)
	return k != nil && k.Spacing
}

func kindWhollySwitched(id string) bool {
	k := part.All().Kind(id)
	return k != nil && k.Switched == part.WhollySwitched
}

// NewOpening returns an opening as its kind starts out: usual height, gangs, assembly.
// It has no ID and no tag yet. An unknown kind gives a bare one-gang opening.
func NewOpening(kind string, at plan.Anchor) plan.Opening {
	o := plan.Opening{Kind: kind, At: at, Gangs: 1, Status: plan.StatusNew}
	k := part.All().Kind(kind)
	if k == nil {
		return o
	}
	o.Gangs = k.Gangs
	if at.Part != plan.PartCeiling && at.Part != plan.PartFloor && at.Part != plan.PartTop {
		o.Height = plan.CentreAt(k.Height)
	}
	if k.Assembly != nil {
		o.Assembly = plan.Assembly{Code: k.Assembly.Code}
	}
	return o
}
