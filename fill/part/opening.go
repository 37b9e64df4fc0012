package part

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// NewOpening returns an opening as its kind starts out in a plan of the units: usual
// height, gangs, assembly. It has no ID and no tag yet. An unknown kind gives a bare one-gang opening.
func NewOpening(units unit.System, kind string, at plan.Anchor) plan.Opening {
	o := plan.Opening{Kind: kind, At: at, Gangs: 1, Status: plan.StatusNew}
	k := All().Kind(kind)
	if k == nil {
		return o
	}
	o.Gangs = k.Gangs
	if at.Part != plan.PartCeiling && at.Part != plan.PartFloor && at.Part != plan.PartTop {
		o.Height = plan.CentreAt(k.UsualHeight(units))
	}
	if k.Assembly != nil {
		o.Assembly = plan.Assembly{Code: k.Assembly.Code}
	}
	return o
}

// ToKind is the edit that makes an opening one of another kind, as that starts out.
func ToKind(o *plan.Opening, kind string) edit.ChangeKind {
	fresh := NewOpening(unit.Imperial, kind, o.At) // the units tell of the height alone, which stays
	return edit.ChangeKind{ID: o.ID, Kind: kind, Gangs: fresh.Gangs, Assembly: fresh.Assembly}
}
